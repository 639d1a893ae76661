import { describe, expect, test } from "vitest";
import { forbiddenWords } from "../support/known.ts";
import { labelText } from "../../lib/pages/label-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SHEETS, sheetOf } from "../sheet/demonstration-sheets.ts";

const MAKER = {
  supplier: ["Saltreach Colourworks", "The Old Sail Loft", "020 7946 0199"],
  sizesMl: [40],
  languages: [],
};
const TEXTS = SHEETS.map((sheet) => ({
  slug: sheet.slug,
  sheet,
  text: labelText(sheet, MAKER, ENGLISH),
}));

describe.each(TEXTS)("label text of $slug", ({ sheet, text }) => {
  test("names every pigment with its Colour Index name, and the vehicle with what was added", () => {
    for (const { name, colourIndexName } of sheet.pigments) {
      expect(text).toContain(name);
      if (colourIndexName !== undefined) expect(text).toContain(colourIndexName);
    }
    for (const { name } of [
      ...(sheet.vehicle === undefined ? [] : [sheet.vehicle]),
      ...sheet.additions,
    ])
      expect(text.toLowerCase()).toContain(name.toLowerCase());
  });
  test("carries its hazards in full and what is not known of them", () => {
    const { cautions } = sheet;
    for (const code of [...cautions.hazardStatements, ...cautions.precautionaryStatements])
      expect(text).toContain(`${code} ${cautions.texts[code]?.en ?? ""}`);
    for (const code of [...cautions.pictograms, ...cautions.supplemental])
      expect(text).toContain(code);
    if (cautions.signalWord !== null) expect(text).toContain(cautions.signalWord);
    for (const name of cautions.unknown)
      expect(text.toLowerCase()).toContain(
        `no hazard data recorded for ${name.toLowerCase()}; treat as hazardous`,
      );
    if (cautions.unknown.length > 0)
      expect(text).toContain("Not yet classified, so not yet for sale.");
    for (const { values } of cautions.notClassified)
      expect(text).toContain(`Contains ${values.metals.join(" and ")}. Do not`);
  });
  test("leaves the lot blank", () => expect(text).toMatch(/^Lot: _+$/m));
  test("claims no category where none was tested or stated, and under the standard only where its exposures were made", () => {
    const line = text.split("\n").find((one) => one.startsWith("Lightfastness")) ?? "";
    const { basis } = sheet.permanence;
    if (basis === "expected" || basis === "not known")
      expect(line).toBe("Lightfastness not tested here.");
    if (basis === "own exposure") expect(line).toContain("not the standard's");
    if (basis === "stated") expect(line).toContain("as stated by others; not tested here");
    expect(/D\s?4303/.test(line)).toBe(basis === "exposed under the standard");
  });
  test("holds none of the words that may not be said", () =>
    expect(forbiddenWords(text, "en")).toEqual([]));
});

test("the demonstration has every kind: tested here, stated, expected, hazardous, unknown", () => {
  expect(new Set(SHEETS.map(({ permanence }) => permanence.basis))).toEqual(
    new Set(["own exposure", "stated", "expected"]),
  );
  expect(SHEETS.some(({ cautions }) => cautions.signalWord === "Danger")).toBe(true);
  expect(SHEETS.some(({ cautions }) => cautions.unknown.length > 0)).toBe(true);
});

test("sizes that nobody recorded are left blank", () => {
  expect(labelText(sheetOf("lamp-black"), { ...MAKER, sizesMl: [] }, ENGLISH)).toMatch(
    /^Contents: _+ ml$/m,
  );
});

test("in the workshop's further languages too, each under its own name, its substances in that language", () => {
  const text = labelText(
    sheetOf("lead-white"),
    { ...MAKER, languages: ["en", "fr", "de"] },
    ENGLISH,
  );
  expect(text).toContain(
    "\nFrançais\nDanger\nContient carbonate basique de plomb.\nH302 Nocif en cas d'ingestion.\n",
  );
  expect(text).toContain(
    "\nDeutsch\nGefahr\nEnthält basisches Bleicarbonat.\nH302 Gesundheitsschädlich bei Verschlucken.\n",
  );
  expect(text.match(/^H302 Harmful/gm)).toHaveLength(1);
  const unknown = labelText(sheetOf("vine-black"), { ...MAKER, languages: ["de"] }, ENGLISH);
  // By mass: 100 g of pigment in at least 44 g of oil, its estimated oil index, is 100/144.
  expect(unknown).toMatch(/^69\s% of the mixture consists of ingredient\(s\) of unknown acute/m);
  expect(sheetOf("vine-black").oil.oilIndexGPer100g).toMatchObject({
    value: [expect.closeTo(44, 0), expect.any(Number)],
  });
  expect(unknown).not.toContain("Deutsch");
});

test("metals that no statement tells of stand in every language; what is not classified in none but the page's", () => {
  const languages = ["en", "fr", "de", "es"] as const;
  const text = labelText(sheetOf("cadmium-red"), { ...MAKER, languages }, ENGLISH);
  expect(text).toContain("\nContains cadmium. Do not spray, sand dry or heat.\n");
  expect(text).toContain(
    "\nFrançais\nContient du cadmium. Ne pas pulvériser, ne pas poncer à sec, ne pas chauffer.\n",
  );
  expect(text).toContain(
    "\nDeutsch\nEnthält Cadmium. Nicht sprühen, nicht trocken schleifen, nicht erhitzen.\n",
  );
  expect(text).toContain(
    "\nEspañol\nContiene cadmio. No pulverizar, no lijar en seco, no calentar.\n",
  );
  for (const { sheet } of TEXTS) {
    const lines = labelText(sheet, { ...MAKER, languages }, ENGLISH).split("\n");
    for (const name of ["Français", "Deutsch", "Español"])
      if (lines.includes(name)) expect(lines[lines.indexOf(name) + 1], sheet.slug).not.toBe("");
  }
});

test("a sensitiser is named in the label's language", () => {
  const text = labelText(
    sheetOf("lamp-black"),
    { ...MAKER, languages: ["en", "fr", "de", "es"] },
    ENGLISH,
  );
  expect(text.match(/^EUH208 .*$/gm)).toEqual([
    "EUH208 Contains cobalt bis(2-ethylhexanoate). May produce an allergic reaction.",
    "EUH208 Contient bis(2-éthylhexanoate) de cobalt. Peut produire une réaction allergique.",
    "EUH208 Enthält Cobaltbis(2-ethylhexanoat). Kann allergische Reaktionen hervorrufen.",
    "EUH208 Contiene bis(2-etilhexanoato) de cobalto. Puede provocar una reacción alérgica.",
  ]);
});
