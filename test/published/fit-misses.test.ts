/** Drawdowns that no paint gives, told from those that a fit merely meets badly. Source: reconstructed-oil-paints. */
import { expect, test } from "vitest";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { sheetWarnings } from "../../lib/site/sheet-warnings.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { soundRecords } from "../support/sound-records.ts";
import { measuredPaint } from "./measured-paints.ts";
import { oilPaintRecords } from "./oil-paint-folder.ts";

/** Let-downs of a measured Prussian blue in zinc white, under one masstone or another: test/published/oil-paints. */
function fitComplaints(masstone: string): string[] {
  const ids = ["07A", masstone, "13B", "13C", "13G"];
  const rows = wavelengthsNm(measuredPaint("07A").overWhite.spectrum.grid).map((nm, i) =>
    [nm, ...ids.map((id) => measuredPaint(id).overWhite.spectrum.values[i])].join(","),
  );
  const tint = (id: string, ratio: string): string =>
    `  - { white: zinc, massRatio: "${ratio}", ratioKind: paint, reading: paints, column: ${id} }`;
  const records = soundRecords({
    "workshop.yaml": "name: Test\nreadings: { scale: factor, geometry: d/8 included }\n",
    "readings/paints.csv": `nm,${ids.join(",")}\n${rows.join("\n")}\n`,
    "pigments/zinc.yaml": "name: Zinc\n",
    "pigments/blue.yaml": "name: Blue\n",
    "colours/zinc.md":
      "---\nname: Zinc\npigments: [{ pigment: zinc }]\nmasstone: { reading: paints, column: 07A }\n---\n",
    "colours/blue.md": `---\nname: Blue\npigments: [{ pigment: blue }]\nmasstone: { reading: paints, column: ${masstone} }\ntints:\n${[tint("13C", "50.7:49.3"), tint("13B", "6.3:93.7"), tint("13G", "1.1:98.9")].join("\n")}\n---\n`,
  });
  return sheetWarnings(allSheets(records), records, ENGLISH)
    .filter(({ rule }) => rule === "sheet/fit-misses")
    .map(({ message, hint, place }) => `${place.line} ${message}; ${hint ?? ""}`);
}

test("a fit that misses far beyond reading and weighing is told at the let-downs, with the likely slip", () => {
  expect(fitComplaints("13A")).toEqual([]);
  // The masstone of a cochineal in the place of the blue's own.
  expect(fitComplaints("04A")).toEqual([
    expect.stringMatching(
      /^6 The fit misses the drawdowns by \d+ times what reading and weighing explain; let-downs in each other's columns, a ratio written white to colour, or a masstone of another paint$/,
    ),
  ]);
});

// basis: derived; reconstructed-oil-paints: the eosin lake's let-down of 50 to 50 as published reads Y .69 times as high over black as over white: a film.
test("where let-downs show their ground and the chart was not read, that is told and no slip", () => {
  const texts = oilPaintRecords("07F");
  const workshop = (texts["workshop.yaml"] ?? "").replace(/^grounds.*\n/m, "");
  const records = soundRecords({ ...texts, "workshop.yaml": workshop });
  const found = sheetWarnings(allSheets(records), records, ENGLISH).filter(({ rule }) =>
    ["sheet/fit-misses", "sheet/suspect-drawdown"].includes(rule),
  );
  expect(found.map(({ rule }) => rule)).toContain("sheet/fit-misses");
  for (const { hint } of found)
    expect(hint).toMatch(
      /^[\d.]+:[\d.]+ in (?:zinc-white|barium-sulphate) lets its ground show \(contrast ratio 0\.\d\d\), and no coat that hides reads so; grounds in workshop\.yaml/,
    );
});
