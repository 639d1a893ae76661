/** Measured oil paints written down as a workshop would, over both halves of the chart. Source: reconstructed-oil-paints. */
import { describe, expect, test } from "vitest";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { allFits, allSheets } from "../../lib/sheet/all-sheets.ts";
import { drawdownRecords } from "../../lib/sheet/record-inputs.ts";
import { measuredPaint } from "./measured-paints.ts";
import { soundRecords } from "../support/sound-records.ts";

const LADDERS = { cochineal: ["04A", "04B", "04C"], "eosin-lake": ["01A", "01B", "01C"] } as const;
const IDS = ["07A", ...Object.values(LADDERS).flat()];

function readings(): string {
  const columns = IDS.flatMap((id) => {
    const { overBlack, overWhite } = measuredPaint(id);
    return [
      [`${id} over white`, overWhite],
      [`${id} over black`, overBlack],
    ] as const;
  });
  const { chartBlack, chartWhite } = measuredPaint("07A");
  const all = [...columns, ["chart black", chartBlack], ["chart white", chartWhite]] as const;
  const rows = wavelengthsNm(chartBlack.spectrum.grid).map((nm, i) =>
    [nm, ...all.map(([, reading]) => reading.spectrum.values[i])].join(","),
  );
  return `${["nm," + all.map(([name]) => name).join(","), ...rows].join("\n")}\n`;
}

const both = (id: string): string =>
  `reading: paints, column: ${id} over white, overBlack: { reading: paints, column: ${id} over black }`;

function records(isChartRead: boolean) {
  const colour = (name: string, [masstone, ...tints]: readonly string[]): string => `---
name: ${name}
pigments: [{ pigment: ${name} }]
masstone: { ${both(masstone ?? "")} }
tints:
${tints
  .map((id) => {
    const white = measuredPaint(id).parts.get("zinc white") ?? NaN;
    const ratio = `${((1 - white) * 100).toFixed(1)}:${(white * 100).toFixed(1)}`;
    return `  - { white: zinc-white, massRatio: "${ratio}", ratioKind: paint, ${both(id)} }`;
  })
  .join("\n")}
---
`;
  const grounds =
    "grounds: { black: { reading: paints, column: chart black }, white: { reading: paints, column: chart white } }\n";
  return soundRecords({
    "workshop.yaml": `name: Test\nreadings: { scale: factor, geometry: d/8 included }\n${isChartRead ? grounds : ""}`,
    "readings/paints.csv": readings(),
    "colours/zinc-white.md": `---\nname: Zinc White\npigments: [{ pigment: zinc-oxide }]\nmasstone: { ${both("07A")} }\n---\n`,
    "pigments/zinc-oxide.yaml": "name: Zinc oxide\n",
    ...Object.fromEntries(
      Object.entries(LADDERS).flatMap(([name, ids]) => [
        [`colours/${name}.md`, colour(name, ids)],
        [`pigments/${name}.yaml`, `name: ${name}\n`],
      ]),
    ),
  });
}

describe("drawdowns recorded over both halves", () => {
  const known = records(true);
  const fits = allFits(known);

  test.each(["cochineal", "eosin-lake"])(
    "hand the films of %s and of its white to the fit",
    (slug) => {
      const fit = fits.get(slug);
      expect(fit?.kind).toBe("fit");
      if (fit?.kind !== "fit") return;
      expect(fit.whites.map(({ hasFilms }) => hasFilms)).toEqual([true]);
    },
  );

  // Y over black to over white of the readings themselves: .165 of the eosin lake, .984 of the cochineal.
  test("take R-infinity from both grounds where the masstone is a film, and say so", () => {
    const [lake, cochineal] = [fits.get("eosin-lake"), fits.get("cochineal")];
    if (lake?.kind !== "fit" || cochineal?.kind !== "fit") throw new Error("No fit");
    expect(lake.masstone.filmContrast).toBeCloseTo(0.165, 2);
    expect(cochineal.masstone.filmContrast).toBeUndefined();
    const said = new Map(
      allSheets(known).map(({ slug, optics }) => [slug, optics.reasons.map(({ rule }) => rule)]),
    );
    expect(said.get("eosin-lake")).toContain("masstone-by-both-grounds");
    expect(said.get("cochineal")).not.toContain("masstone-by-both-grounds");
  });

  test("name the chart among what the fit was made from", () => {
    const roots = drawdownRecords(known.colours.get("cochineal"), known);
    expect(roots).toContainEqual({ kind: "workshop", slug: "workshop" });
  });

  test("without a chart that was read tell the fit nothing, and the masstone is called a film", () => {
    const blind = records(false);
    const fit = allFits(blind).get("eosin-lake");
    if (fit?.kind !== "fit") throw new Error("No fit");
    expect(fit.whites.map(({ hasFilms }) => hasFilms)).toEqual([false]);
    const sheet = allSheets(blind).find(({ slug }) => slug === "eosin-lake");
    expect(sheet?.optics.reasons.map(({ rule }) => rule)).toContain("masstone-is-a-film");
  });
});
