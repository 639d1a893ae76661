/** Paints that two-constant theory does not hold for: nothing of them is predicted, and it is said why. Readings are invented. */
import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { allFits, allSheets } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

/** An orange that gives back `peak` from 600 nm on, let down in a white; and a film of it on a chart. */
function readings(peak: number): string {
  const orange = (share: number) => (nm: number) =>
    nm < 580 ? 0.08 + 0.8 * (1 - share) : nm < 600 ? 0.5 : 0.9 + (peak - 0.9) * share;
  const columns: Record<string, (nm: number) => number> = {
    orange: orange(1),
    "1:1": orange(0.7),
    "1:5": orange(0.4),
    white: () => 0.92,
    "film white": orange(0.9),
    "film black": (nm) => orange(0.9)(nm) * 0.8,
  };
  return [
    ["nm", ...Object.keys(columns)].join(","),
    ...WAVELENGTHS.map((nm) => [nm, ...Object.values(columns).map((of) => of(nm))].join(",")),
  ].join("\n");
}

function workshop(orange: string, peak = 0.9): RecordTexts {
  const read = (column: string): string => `reading: drawdowns, column: "${column}"`;
  return {
    "workshop.yaml": `name: Test
strengthReference: orange
readings: { scale: factor, geometry: d/8 excluded }
`,
    "readings/drawdowns.csv": readings(peak),
    "pigments/orange.yaml": `name: Signal orange\n${orange}`,
    "pigments/zinc.yaml": "name: Zinc oxide\ncolourIndexName: PW 4\n",
    "colours/zinc.md": `---\nname: Zinc White\npigments: [{ pigment: zinc }]\nmasstone: { ${read("white")} }\n---\n`,
    "colours/orange.md": `---
name: Orange
pigments: [{ pigment: orange }]
masstone: { ${read("orange")} }
tints:
  - { white: zinc, massRatio: "1:1", ratioKind: paint, ${read("1:1")} }
  - { white: zinc, massRatio: "1:5", ratioKind: paint, ${read("1:5")} }
films:
  - { ground: white, filmThicknessUm: 50, ${read("film white")} }
  - { ground: black, filmThicknessUm: 50, ${read("film black")} }
---
`,
    "colours/peach.md": `---
name: Peach
pigments: [{ pigment: orange, paintParts: 1 }, { pigment: zinc, paintParts: 4 }]
---
`,
  };
}

function sheets(orange: string, peak?: number): (slug: string) => Sheet {
  const found = allSheets(soundRecords(workshop(orange, peak)));
  return (slug) => {
    const sheet = found.find((one) => one.slug === slug);
    if (sheet === undefined) throw new Error(`No sheet of ${slug}`);
    return sheet;
  };
}

describe.each([
  ["effect: fluorescent\n", "pigment-fluoresces"],
  ["effect: metallic\n", "pigment-is-flakes"],
  ["effect: pearlescent\n", "pigment-is-flakes"],
  ["colourIndexName: PM 2\n", "pigment-is-flakes"],
])("of a paint with a pigment of %j", (record, rule) => {
  const sheet = sheets(record);
  const { tints, optics, notations } = sheet("orange");

  test("nothing is said of its depth glossy or matte", () => {
    expect(optics.gloss).toBeUndefined();
  });

  test("no let-down is predicted, what was read is shown, and its sheet says why", () => {
    expect(tints[0]?.steps.map(({ standing }) => standing)).toEqual(["measured", "measured"]);
    expect(tints[0]?.refusal).toMatchObject({ rule, values: { pigments: ["Signal orange"] } });
    expect(optics.notPredicted).toMatchObject({ rule });
  });

  test("no strength, and nothing of what its films hide", () => {
    const unlike = { reason: "two-constant theory does not hold for its pigments", wanting: [] };
    expect(optics.tintingStrength).toMatchObject(unlike);
    expect(optics.contrastRatio).toMatchObject(unlike);
    expect([optics.contrastRatio, optics.hidingFilmUm].map(isKnown)).toEqual([false, false]);
    expect(optics.reasons.map((one) => one.rule)).toContain(rule);
  });

  test("nothing of a mixture with it", () => {
    const { mixture, optics: mixed } = sheet("peach");
    expect(mixture?.whites).toEqual([]);
    expect(mixture?.refusals.map((one) => one.rule)).toEqual([rule]);
    expect(mixed.notPredicted).toMatchObject({ rule });
  });

  test("only what fluoresces is told in daylight alone", () => {
    const masstone = notations.masstone;
    expect("lamplight" in (masstone ?? {})).toBe(rule !== "pigment-fluoresces");
    expect("A/10" in (masstone?.lab ?? {})).toBe(rule !== "pigment-fluoresces");
    expect(masstone?.lab).toHaveProperty("D65/10");
  });

  test("the range has no fit of it, and the white keeps its own", () =>
    expect(allFits(soundRecords(workshop(record))).get("orange")).toMatchObject({
      kind: "refused",
      reasons: [{ rule }],
    }));
});

test("an ordinary pigment is predicted", () => {
  const sheet = sheets("colourIndexName: PO 20\n");
  expect(sheet("orange").tints[0]).not.toHaveProperty("refusal");
  expect(sheet("orange").optics).not.toHaveProperty("notPredicted");
  expect(sheet("peach").mixture?.refusals.map(({ rule }) => rule)).toEqual([
    "component-not-let-down",
  ]);
  expect(isKnown(sheet("orange").optics.contrastRatio)).toBe(true);
});

test("a let-down in a white of flakes is not fitted", () => {
  const texts = workshop("colourIndexName: PO 20\n");
  const records = soundRecords({
    ...texts,
    "pigments/zinc.yaml": "name: Zinc oxide\neffect: pearlescent\n",
  });
  const [tint] = allSheets(records).find(({ slug }) => slug === "orange")?.tints ?? [];
  expect(tint?.refusal).toMatchObject({ rule: "white-not-predicted", values: { white: "zinc" } });
});

describe("a reading above 100 %", () => {
  const told = (orange: string, peak: number): string[] => {
    const { content, home } = contentFolder(workshop(orange, peak));
    return loadRecords(content, home, "2026-06-30")
      .diagnostics.filter(({ rule }) => /above-white|reflectance-domain/.test(rule))
      .map(({ severity, place, rule }) => `${severity} ${place.path} ${rule}`);
  };
  const MASSTONE = "orange[600 nm]";

  test("is warned of where no pigment of the paint fluoresces, once a column", () => {
    expect(told("", 1.1).filter((one) => one.includes(MASSTONE))).toEqual([
      `warning ${MASSTONE} readings/above-white`,
    ]);
  });
  test("is refused above 120 % there", () =>
    expect(told("", 1.21)).toContain(`error ${MASSTONE} readings/reflectance-domain`));
  // basis: our own limit, for what an instrument's white may be off.
  test("by up to 2 % passes", () => expect(told("", 1.02)).toEqual([]));
  test("is taken of what fluoresces or mirrors, up to 400 %", () => {
    expect(told("effect: fluorescent\n", 1.8)).toEqual([]);
    expect(told("effect: pearlescent\n", 1.1)).toEqual([]);
    expect(told("effect: fluorescent\n", 4.1)).toContain(
      `error ${MASSTONE} readings/reflectance-domain`,
    );
  });
});
