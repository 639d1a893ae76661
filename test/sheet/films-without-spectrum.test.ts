import { expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { soundSheet } from "../support/sound-records.ts";

const LAB = "illuminant: D65, observer: 10, geometry: d/8 excluded";

/** Why a lake of three readings by a colorimeter, which gives L*a*b* alone, has no contrast ratio. */
function whyNotStated(films: string): string {
  const { optics } = soundSheet({
    "workshop.yaml": "name: Test\n",
    "pigments/madder.yaml": "name: Madder lake\ncolourIndexName: NR 9\n",
    "colours/madder.md": `---
name: Madder Lake
pigments: [{ pigment: madder }]
masstone: { lab: [6.7, 28.8, 8.4], ${LAB} }
${films}---
`,
  });
  const ratio = optics.contrastRatio;
  if (isKnown(ratio)) throw new Error("A contrast ratio out of nothing");
  return ratio.reason;
}

// Plain logic and no source: nobody is asked for films that are on record.
test("films that were read without a spectrum are not said to be missing", () => {
  expect(whyNotStated("")).toBe("no drawdown of known thickness over black and white");
  expect(
    whyNotStated(`films:
  - { ground: black, filmThicknessUm: 40, lab: [4.7, 21, 5.2], ${LAB} }
  - { ground: white, filmThicknessUm: 40, lab: [19.7, 51, 30.8], ${LAB} }
`),
  ).toBe("its films were read without a spectrum, and what a film hides is worked out from one");
});
