import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { published, publishedSheets, type Json } from "./published.ts";
import {
  either,
  flag,
  keys,
  listOf,
  mapOf,
  matching,
  number,
  oneOf,
  quantity,
  range,
  text,
} from "./shape.ts";

/*
 * The output contract, written out a second time by hand from its text in the design:
 * what other programs rely on is held against neither our schemas nor our types.
 */
const STANDING = oneOf("measured", "derived", "estimated", "stated");
const STANDING_OR_NONE = oneOf("measured", "derived", "estimated", "stated", "not stated");
const VIEWINGS = ["C/2", "D65/2", "D65/10", "D50/2", "A/10"];
const GEOMETRY = oneOf("45/0", "d/8 included", "d/8 excluded");
const COLOUR_INDEX_NAME = matching(/^[PN](Bk|Br|B|G|M|O|R|V|W|Y) \d{1,3}(:\d)?$/);
const HUE = /(?:10|\d)(?:\.\d+)?(?:R|YR|Y|GY|G|BG|B|PB|P|RP)/.source;

/** `N 1.2/`, `N 6.3/(PB 0.2)`, `5PB 3.1/1.2`; a chip by eye has whole steps. */
const MUNSELL_TEXT = matching(
  new RegExp(
    `^(?:N \\d+(?:\\.\\d)?/(?:\\((?:R|YR|Y|GY|G|BG|B|PB|P|RP) \\d\\.\\d\\))?|${HUE} \\d+(?:\\.\\d)?/\\d+(?:\\.\\d)?)$`,
  ),
);
const MUNSELL = keys({
  hue: either(oneOf(null), matching(new RegExp(`^${HUE}$`))),
  value: number,
  chroma: number,
  text: MUNSELL_TEXT,
});
const LAB = keys({ L: number, a: number, b: number });
const SCREEN = {
  "srgb?": keys({ hex: matching(/^#[0-9a-f]{6}$/), inGamut: flag }),
  "displayP3?": keys({ css: matching(/^color\(display-p3( [\d.]+){3}\)$/), inGamut: flag }),
  "oklch?": keys({ css: matching(/^oklch\([\d.]+% [\d.]+ (?:[\d.]+|none)\)$/) }),
};

const MASSTONE = keys({
  "geometry?": GEOMETRY,
  standing: STANDING,
  xyz: mapOf(VIEWINGS, keys({ X: number, Y: number, Z: number })),
  lab: mapOf(VIEWINGS, LAB),
  "munsell?": MUNSELL,
  "nbsName?": text,
  ...SCREEN,
});

const TINT = keys({
  white: keys({ slug: text, name: text, "colourIndexName?": COLOUR_INDEX_NAME }),
  standing: STANDING,
  massRatioKind: oneOf("pigment", "paint"),
  steps: listOf(
    keys({
      massRatio: matching(/^\d+(\.\d+)?:\d+(\.\d+)?$/),
      lab: mapOf(VIEWINGS, LAB),
      "munsell?": MUNSELL,
      standing: STANDING,
      "uncertainty?": number,
    }),
  ),
  atL: mapOf(["70", "50", "30"], keys({ a: number, b: number })),
  sentence: text,
});

const CODE = /(?:EUH|H|P)\d{3}[A-Za-z]{0,2}/.source;
const CODES = listOf(matching(new RegExp(`^${CODE}(?:\\+${CODE})*$`)));

const SHEET = keys({
  slug: matching(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  name: text,
  revision: matching(/^[0-9a-f]{8}$/),
  pigments: listOf(
    keys({
      slug: text,
      name: text,
      colourIndexName: COLOUR_INDEX_NAME,
      "colourIndexNumber?": matching(/^\d{5}(:\d)?$/),
      "casNumber?": matching(/^\d{2,7}-\d{2}-\d$/),
      "massFraction?": number,
    }),
  ),
  notations: keys({ "masstone?": MASSTONE }),
  tints: listOf(TINT),
  optics: keys({
    "tintingStrength?": quantity,
    "contrastRatio?": quantity,
    "hidingFilmUm?": quantity,
    "opacityClass?": text,
  }),
  oil: keys({
    "oilAbsorptionGPer100g?": quantity,
    "oilIndexGPer100g?": quantity,
    "oilIndexClass?": text,
    "cpvc?": quantity,
    "effectiveCpvc?": quantity,
    "pvc?": quantity,
    "reducedPvc?": quantity,
    "finish?": text,
  }),
  drying: keys({
    "class?": oneOf("fast", "medium", "slow", "very slow"),
    "touchDryDays?": range,
    standing: STANDING_OR_NONE,
    reasons: listOf(text),
  }),
  permanence: keys({
    "category?": oneOf("I", "II", "III", "IV", "V"),
    "deltaEab?": number,
    standing: STANDING_OR_NONE,
    reasons: listOf(text),
  }),
  cautions: keys({
    frame: text,
    basis: oneOf("stated by the maker", "worked out"),
    signalWord: oneOf("Danger", "Warning", null),
    pictograms: listOf(matching(/^GHS0[1-9]$/)),
    hazardStatements: CODES,
    precautionaryStatements: CODES,
    supplemental: CODES,
    restrictions: listOf(keys({ market: text, text })),
    studio: listOf(keys({ operation: text, text })),
  }),
  evidence: listOf(
    keys({
      figure: text,
      value: either(quantity, text, listOf(number)),
      unit: matching(/^/),
      standing: STANDING,
      restsOn: STANDING,
      method: text,
      inputs: listOf(text),
      "source?": text,
      "uncertainty?": number,
      "bound?": oneOf("at least", "at most"),
      // Beside a displayed figure stands its finished text.
      text,
    }),
  ),
  notStated: listOf(keys({ figure: text, reason: text, wanting: listOf(text) })),
});

const CATALOGUE = keys({
  schemaVersion: number,
  workshop: keys({ name: text }),
  colours: listOf(keys({ slug: text, name: text, url: text, sheet: text })),
});

const SHEETS = publishedSheets();

describe("catalogue.json", () => {
  const catalogue = published("catalogue.json");

  test("has the contract's fields", () => {
    expect(CATALOGUE(catalogue, "")).toEqual([]);
  });

  test("names every colour that has a sheet, by addresses relative to itself", () => {
    const colours = catalogue["colours"] as readonly { slug: string; url: string; sheet: string }[];
    expect(colours.map(({ slug }) => slug).toSorted()).toEqual(SHEETS.map(({ slug }) => slug));
    for (const { url, sheet } of colours) {
      expect(existsSync(join(inject("siteDir"), url, "index.html")), url).toBe(true);
      expect(existsSync(join(inject("siteDir"), sheet)), sheet).toBe(true);
    }
  });
});

describe("the output", () => {
  test.each([
    "catalogue.json",
    "catalogue.csv",
    "figures.csv",
    "manifest.json",
    "schema/sheet.schema.json",
    "schema/catalogue.schema.json",
    "schema/manifest.schema.json",
  ])("holds %s", (file) => {
    expect(existsSync(join(inject("siteDir"), file))).toBe(true);
  });

  test.each([
    "answers/index.html",
    "cards/index.html",
    "cards/cards.pdf",
    "range.pdf",
    "colours/lamp-black/sheet.pdf",
  ])("holds %s, which is no stub", (file) => {
    expect(statSync(join(inject("siteDir"), file)).size).toBeGreaterThan(2000);
  });
});

describe.each(SHEETS)("colours/$slug/sheet.json", ({ slug, sheet }) => {
  test("has the contract's fields, each of its kind", () => {
    expect(SHEET(sheet, "")).toEqual([]);
    expect(sheet["slug"]).toBe(slug);
  });

  test("gives fractions of dry pigment of all or of none; they sum to 1", () => {
    const fractions = (sheet["pigments"] as readonly { massFraction?: number }[]).map(
      ({ massFraction }) => massFraction,
    );
    const known = fractions.filter((fraction) => fraction !== undefined);
    expect([0, fractions.length]).toContain(known.length);
    if (known.length > 0)
      expect(known.reduce((sum, fraction) => sum + fraction, 0)).toBeCloseTo(1, 12);
  });

  test("claims no hue below chroma .05, and prints a colour without one as a neutral", () => {
    for (const { hue, chroma, text: printed } of munsells(sheet)) {
      if (chroma < 0.05) expect(hue, printed).toBeNull();
      if (hue === null) expect(printed).toMatch(/^N /);
    }
  });

  test("says of every figure either what it is or why it is not stated, never both", () => {
    const stated = new Set(
      (sheet["evidence"] as readonly { figure: string }[]).map(({ figure }) => figure),
    );
    const notStated = (sheet["notStated"] as readonly { figure: string }[]).map(
      ({ figure }) => figure,
    );
    expect(notStated.filter((figure) => stated.has(figure))).toEqual([]);
    expect(new Set(notStated).size).toBe(notStated.length);
    for (const figure of [
      "oil.cpvc",
      "oil.finish",
      "oil.oilIndexGPer100g",
      "drying.class",
      "permanence.category",
      "optics.tintingStrength",
      "optics.opacityClass",
    ]) {
      expect(stated.has(figure) || notStated.includes(figure), figure).toBe(true);
    }
  });
});

/** Every Munsell notation of a sheet, of the masstone and of each let-down. */
function munsells(sheet: Json): { hue: string | null; chroma: number; text: string }[] {
  type Holder = { munsell?: { hue: string | null; chroma: number; text: string } };
  const { masstone } = sheet["notations"] as { masstone?: Holder };
  const steps = (sheet["tints"] as readonly { steps: readonly Holder[] }[]).flatMap(
    ({ steps: all }) => all,
  );
  return [masstone, ...steps].flatMap((holder) => holder?.munsell ?? []);
}
