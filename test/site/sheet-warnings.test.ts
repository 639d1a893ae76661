import { expect, test } from "vitest";
import { ENGLISH } from "../../lib/words/english.ts";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { sheetWarnings } from "../../lib/site/sheet-warnings.ts";
import { soundRecords } from "../support/sound-records.ts";

const LEGAL = `legalBasis: [{ market: EU, basis: "a restoration permit", buyers: "restorers who hold one", date: 2026-01-01 }]\n`;

/** Basic lead carbonate on sale in the Union. REACH Annex XVII, entry 16, as read second-hand: not as paint, but for restoration where permitted. */
function complaints(more: string): string[] {
  const records = soundRecords({
    "workshop.yaml": "name: My workshop\nmarkets: [EU]\n",
    "pigments/lead-white.yaml":
      "name: Lead white\ncolourIndexName: PW 1\ncasNumber: 1319-46-6\nhazards: [H302, H360Df, H373, H410]\n",
    "colours/lead-white.md": `---\nname: Lead White\npigments: [{ pigment: lead-white }]\n${more}---\n`,
  });
  return sheetWarnings(allSheets(records), records, ENGLISH).map(
    ({ severity, rule, message }) => `${severity} ${rule} ${message}`,
  );
}

test("lead white as paint without a legal basis may not be sold in the Union", () => {
  expect(complaints("")).toEqual([
    expect.stringMatching(/^error sheet\/not-for-sale The colour may not be sold in EU without /),
  ]);
});

test("with a legal basis and a class of buyer it may", () => {
  expect(complaints(LEGAL)).toEqual([]);
});

test("a legal basis where nothing restricts a colour takes it off the general sale, and is told", () => {
  const records = soundRecords({
    "workshop.yaml": "name: My workshop\nmarkets: [EU]\n",
    "pigments/ochre.yaml": "name: Ochre\ncolourIndexName: PY 43\nhazards: []\n",
    "colours/ochre.md": `---\nname: Ochre\npigments: [{ pigment: ochre }]\n${LEGAL}---\n`,
  });
  expect(sheetWarnings(allSheets(records), records, ENGLISH).map(formatDiagnostic)).toEqual([
    "content/colours/ochre.md:4:24 warning Nothing known here restricts this colour in EU, and its legalBasis takes it off the general sale there sheet/legal-basis",
  ]);
});

test("the maker's label against the reckoning, and a label older than the frame's edition", () => {
  const labelled = (label: string) => complaints(`${LEGAL}label: { ${label} }\n`);
  const same =
    "frame: EU CLP, signalWord: Danger, pictograms: [GHS07, GHS08, GHS09], hazardStatements: [H302, H360Df, H373, H410], supplemental: [EUH201]";
  expect(labelled(`${same}, date: 2026-01-01`)).toEqual([]);
  // Regulation (EU) 2023/707, Article 2: in force on the twentieth day after 31 March 2023.
  expect(labelled(`${same}, date: 2023-04-20`)).toEqual([]);
  expect(labelled(`${same}, date: 2023-04-19`)).toEqual([
    expect.stringMatching(
      /^warning sheet\/label-differs The maker.s label and the reckoning differ: The label is of 19 April 2023, and the edition of 20 April 2023 /,
    ),
  ]);
  expect(
    labelled(`${same.replace("H302, ", "").replace("Danger", "Warning")}, date: 2026-01-01`),
  ).toEqual([
    "warning sheet/label-differs The maker's label and the reckoning differ: The maker states the signal word Warning; worked out it is Danger",
    expect.stringMatching(/^warning sheet\/label-differs .*H302/),
  ]);
});

// church-1915, by working-oil.test.ts: no paint on record takes more than 4.1 times the rub-out figure of its pigment.
test("an oil index that no paint has is told of the tube, and not again of what is mixed from it", () => {
  const tube = (name: string, oil: number): string =>
    `---\nname: ${name}\npigments: [{ pigment: ${name} }]\noilIndexGPer100g: ${oil}\n---\n`;
  const pigment = (name: string): string =>
    `name: ${name}\noilAbsorptionGPer100g: 32\ndensityGPerCm3: 3.1\nhazards: []\n`;
  const records = soundRecords({
    "workshop.yaml": "name: My workshop\nvehicle: linseed\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
    "pigments/one.yaml": pigment("one"),
    "pigments/two.yaml": pigment("two"),
    "colours/one.md": tube("one", 260),
    "colours/two.md": tube("two", 200),
    "colours/both.md":
      "---\nname: Both\npigments: [{ pigment: one, paintParts: 1 }, { pigment: two, paintParts: 1 }]\n---\n",
  });
  const lines = sheetWarnings(allSheets(records), records, ENGLISH).map(formatDiagnostic);
  expect(lines.map((line) => line.split(" ")[0])).toEqual([
    "content/colours/one.md:4:19",
    "content/colours/two.md:4:19",
  ]);
});

/** What an estimate contradicts of a colour, each line with its place. */
function placed(more: string): string[] {
  const records = soundRecords({
    "workshop.yaml": "name: My workshop\nvehicle: linseed\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
    "pigments/ochre.yaml":
      "name: Ochre\ncolourIndexName: PY 43\ndensityGPerCm3: 3.1\noilAbsorptionGPer100g: { value: 34, method: ISO 787-5, standing: measured }\nhazards: []\n",
    "colours/ochre.md": `---\nname: Ochre\npigments: [{ pigment: ochre }]\n${more}---\n`,
  });
  return sheetWarnings(allSheets(records), records, ENGLISH).map((one) =>
    formatDiagnostic(one).replaceAll("\u00a0", " "),
  );
}

test("an oil index that its pigment's rub-out contradicts is told at its line, with the likely slip", () => {
  expect(placed("oilIndexGPer100g: 29\n")).toEqual([
    "content/colours/ochre.md:4:19 warning Record and estimate differ: The oil index (29 g/100 g) lies below the rub-out figure (34 g/100 g), at which the pigment only just holds together: one of the two is doubtful; 41 g/100 g if it was given in percent of the paint sheet/contradiction",
  ]);
  expect(placed("oilIndexGPer100g: 45\n")).toEqual([]);
});

test("of several trials the one that an estimate contradicts is told at its line", () => {
  const days = "filmThicknessUm: 75, temperatureC: 20 }";
  const [line, ...others] = placed(
    `oilIndexGPer100g: 45\ndryingTrials:\n  - { touchDryDays: 5, ${days}\n  - { touchDryDays: 96, ${days}\n`,
  );
  expect(others).toEqual([]);
  expect(line).toMatch(
    /^content\/colours\/ochre\.md:7:21 warning .* 96 days against .*; 4 days if it was timed in hours sheet\/contradiction$/,
  );
});

// CIE 15:2018: a flat .04 has L* 23.7 and a flat .3 has L* 61.7, between which a mixture of the two lies.
test("a mixture whose L*a*b* its pigments cannot give is told at its line, with what they give and within what", () => {
  const told = (masstone: string): string[] => {
    const rows = Array.from({ length: 31 }, (_, i) => [400 + 10 * i, 0.04, 0.3]);
    const records = soundRecords({
      "workshop.yaml": "name: My workshop\nreadings: { scale: factor, geometry: 45/0 }\n",
      "readings/read.csv": [["nm", "black", "grey"], ...rows]
        .map((row) => row.join(","))
        .join("\n"),
      ...Object.fromEntries(
        ["black", "grey"].flatMap((one) => [
          [`pigments/${one}.yaml`, `name: ${one}\nhazards: []\n`],
          [
            `colours/${one}.md`,
            `---\nname: ${one}\npigments: [{ pigment: ${one} }]\nmasstone: { reading: read, column: ${one} }\n---\n`,
          ],
        ]),
      ),
      "colours/slate.md": `---\nname: Slate\npigments: [{ pigment: black }, { pigment: grey }]\nmasstone: ${masstone}\n---\n`,
    });
    return sheetWarnings(allSheets(records), records, ENGLISH)
      .filter(({ rule }) => rule === "sheet/mixture-reading")
      .map((one) => formatDiagnostic(one).replaceAll("\u00a0", " "));
  };
  const lab = (L: number, a: number): string =>
    `{ lab: [${L}, ${a}, 0], illuminant: D65, observer: 10, geometry: 45/0 }`;
  expect(told(lab(95, 0))).toEqual([
    expect.stringMatching(
      /^content\/colours\/slate\.md:4:11 warning The masstone is recorded as L\* 95\.0, a\* 0\.0, b\* 0\.0 \(D65\/10\), and the nearest that its pigments give is L\* 61\.7, a\* 0\.0, b\* 0\.0: ΔE00 \d\d\.\d apart, where such a prediction is within 14\.2 nine times in ten; the reading of another colour, .* sheet\/mixture-reading$/,
    ),
  ]);
  expect(told(lab(61, 5))).toEqual([]);
  expect(told(lab(70, 0))).toEqual([]);
  expect(told("{ munsell: N 9.5/ }")).toEqual([]);
});

/** A black whose let-downs 1:5 differ by white, and a lot that was let down so. */
function letDownLot(white: string, column: string): string[] {
  const values = { black: 0.03, titanium: 0.3, zinc: 0.18, white: 0.85 };
  const rows = Array.from({ length: 31 }, (_, i) => [400 + 10 * i, ...Object.values(values)]);
  const tint = (of: string, read: string) =>
    `  - { white: ${of}, massRatio: "1:5", ratioKind: paint, reading: read, column: ${read} }\n`;
  const records = soundRecords({
    "workshop.yaml": "name: My workshop\nreadings: { scale: factor, geometry: d/8 excluded }\n",
    "readings/read.csv": [["nm", ...Object.keys(values)], ...rows]
      .map((row) => row.join(","))
      .join("\n"),
    ...Object.fromEntries(
      ["black", "titanium", "zinc"].flatMap((one) => [
        [`pigments/${one}.yaml`, `name: ${one}\nhazards: []\n`],
        [
          `colours/${one}.md`,
          `---\nname: ${one}\npigments: [{ pigment: ${one} }]\nmasstone: { reading: read, column: ${one === "black" ? "black" : "white"} }\n${one === "black" ? `tints:\n${tint("titanium", "titanium")}${tint("zinc", "zinc")}` : ""}---\n`,
        ],
      ]),
    ),
    "lots/b-1.yaml": `number: "B-1"\ncolour: black\ndate: 2026-01-01\npigments: [{ pigment: black, massG: 100 }]\nmasstone: { reading: read, column: black }\ntints:\n${tint(white, column)}`,
  });
  return sheetWarnings(allSheets(records), records, ENGLISH)
    .filter(({ rule }) => rule === "sheet/lot-white")
    .map((one) => formatDiagnostic(one).replaceAll("\u00a0", " "));
}

test("a lot's let-down that reads as its standard's does in another white, at its line", () => {
  expect(letDownLot("zinc", "titanium")).toEqual([
    expect.stringMatching(
      /^content\/lots\/b-1\.yaml:7:5 warning The lot B-1 is not judged\. The let-down is written down in zinc and reads as the standard does in titanium .* sheet\/lot-white$/,
    ),
  ]);
  expect(letDownLot("zinc", "zinc")).toEqual([]);
  expect(letDownLot("titanium", "titanium")).toEqual([]);
});
