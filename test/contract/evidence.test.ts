import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { FIGURE_TABLE, isPrivatePath } from "../../lib/sheet/figure-table.ts";
import { BIBLIOGRAPHY } from "../../lib/sources/bibliography.ts";
import { publishedSheets, type Json } from "./published.ts";
import { sheetLeaves } from "./sheet-leaves.ts";

interface Evidence {
  readonly figure: string;
  readonly value: unknown;
  readonly unit: string;
  readonly standing: string;
  readonly restsOn: string;
  readonly inputs: readonly string[];
  readonly source?: string;
}

const SHEETS = publishedSheets().map(({ slug, sheet }) => ({
  slug,
  leaves: sheetLeaves(sheet),
  evidence: evidenceOf(sheet),
  notStated: (sheet["notStated"] as readonly { figure: string }[]).map(({ figure }) => figure),
}));

function evidenceOf(sheet: Json): readonly Evidence[] {
  return sheet["evidence"] as readonly Evidence[];
}

/**
 * Numbers that are no figures: facts of the record, what a row of a table is for, what
 * a picture is drawn from. Every other number of a sheet has its evidence.
 */
const PLAIN_NUMBERS = new Set([
  "schemaVersion",
  ...["curve", "glossExcludedCurve"].flatMap((curve) =>
    ["grid.startNm", "grid.stepNm", "grid.count", "values"].map(
      (part) => `notations.masstone.${curve}.${part}`,
    ),
  ),
  ...["tints", "expectedTints"].flatMap((tints) => [
    `${tints}.*.steps.*.colourShare`,
    `${tints}.*.steps.*.uncertainty`,
  ]),
  "optics.glaze.*.filmUm",
  "optics.hidingCurve.*.filmUm",
  "optics.hidingCurve.*.contrastRatio",
  ...["", "additions.*.", "dryPigment.*."].map(
    (owner) => `cautions.${owner}traces.*.shares.*.massFraction`,
  ),
  "fill.fillings.*.holds.*.ml",
  "offer.sizes.*.ml",
  "offer.sizes.*.price",
  "offer.sizes.*.unitPrice.ml",
  "offer.sizes.*.unitPrice.price",
  "drying.inWhites.*.whiteParts",
  "optics.extender.volumes",
  "optics.fit.grid.startNm",
  "optics.fit.grid.stepNm",
  "optics.fit.grid.count",
  "mixture.whites.*.steps.*.uncertainty",
  "mixture.whites.*.fresh.uncertainty",
  ...["share", "a", "b"].map((drawn) => `mixture.whites.*.pair.greys.*.${drawn}`),
  ...["drifts.*", "singleBlack"].flatMap((who) =>
    ["loss", "a", "b"].map((drawn) => `mixture.whites.*.${who}.path.*.${drawn}`),
  ),
]);
/** How two sheets compare: the range's, outside the revision; the figures compared have their evidence in each sheet. */
const COMPARISON = /^neighbours\./;

/** Words of the contract that are figures: notations, classes, categories. */
const FIGURE_WORDS = new Set([
  ...["notations.masstone", "tints.*.steps.*", "expectedTints.*.steps.*"].flatMap((at) =>
    ["munsell.hue", "munsell.text", "srgb.hex", "displayP3.css", "oklch.css"].map(
      (word) => `${at}.${word}`,
    ),
  ),
  ...["srgb.hex", "displayP3.css", "oklch.css"].flatMap((word) => [
    `tints.*.atL.*.${word}`,
    `optics.glaze.*.${word}`,
    `optics.gloss.depths.*.${word}`,
  ]),
  "notations.masstone.nbsName",
  "optics.opacityClass",
  "oil.oilIndexClass",
  "oil.finish",
  "drying.class",
  "permanence.category",
  "permanence.expectation",
]);

/** Rooms of a content folder; an input that is no figure of the sheet is a path in one of these. */
const ROOMS = ["pigments", "vehicles", "colours", "readings", "sources", "workshop"];
const SOURCES = new Set([
  ...Object.keys(BIBLIOGRAPHY),
  ...readdirSync("content/sources").map((file) => file.replace(/\.yaml$/, "")),
]);
const ROOTS = ["measured", "stated", "estimated"];

describe.each(SHEETS)("colours/$slug/sheet.json", ({ leaves, evidence, notStated }) => {
  const paths = evidence.map(({ figure }) => figure);
  const valueAt = new Map(leaves.map(({ path, value }) => [path, value]));

  test("gives evidence of every leaf that is a figure", () => {
    const evident = new Set(paths);
    const figures = leaves.filter(({ pattern, value }) =>
      isNumeric(value)
        ? !PLAIN_NUMBERS.has(pattern) && !COMPARISON.test(pattern)
        : value !== null && FIGURE_WORDS.has(pattern),
    );
    expect(figures.length).toBeGreaterThan(0);
    expect(figures.filter(({ path }) => !evident.has(path)).map(({ path }) => path)).toEqual([]);
  });

  test("gives evidence once, of leaves that are there, with the value that stands there", () => {
    expect(paths.filter((path, i) => paths.indexOf(path) !== i)).toEqual([]);
    expect(paths.filter((path) => !valueAt.has(path))).toEqual([]);
    expect(
      evidence
        .filter(
          ({ figure, value }) => JSON.stringify(valueAt.get(figure)) !== JSON.stringify(value),
        )
        .map(({ figure }) => figure),
    ).toEqual([]);
  });

  test("names only paths that are there as inputs", () => {
    const known = new Set([...paths, ...notStated]);
    expect(
      evidence.flatMap(({ figure, inputs }) =>
        inputs
          .filter((input) => !known.has(input) && !ROOMS.includes(input.split(".")[0] ?? ""))
          .map((input) => `${figure} <- ${input}`),
      ),
    ).toEqual([]);
  });

  test("cites only sources that are in a bibliography", () => {
    expect(
      evidence
        .filter(({ source }) => source !== undefined && !SOURCES.has(source))
        .map(({ figure, source }) => `${figure} (${source ?? ""})`),
    ).toEqual([]);
  });

  test("rests a root on itself, and a derived figure on a root", () => {
    for (const { figure, standing, restsOn } of evidence) {
      if (ROOTS.includes(standing)) expect(restsOn, figure).toBe(standing);
      else expect([standing, ROOTS.includes(restsOn)], figure).toEqual(["derived", true]);
    }
  });

  test("keeps fractions in full and other numbers to six digits", () => {
    const shares = new Set(
      FIGURE_TABLE.filter(({ kind }) => kind === "share").map(({ pattern }) => pattern),
    );
    const long = leaves.filter(
      ({ path, pattern, value }) =>
        paths.includes(path) &&
        typeof value === "number" &&
        !shares.has(pattern) &&
        Number(value.toPrecision(6)) !== value,
    );
    expect(long.map(({ path }) => path)).toEqual([]);
  });
});

function isNumeric(value: unknown): boolean {
  return typeof value === "number" || Array.isArray(value);
}

/** Figures that stay in the workshop: test/site/two-outputs.test.ts holds where these stand. */
const WORKSHOP_ROWS = FIGURE_TABLE.filter(({ isPrivate }) => isPrivate);

describe("the figure table", () => {
  const filled = new Set(
    SHEETS.flatMap(({ leaves, evidence }) => {
      const evident = new Set(evidence.map(({ figure }) => figure));
      return leaves.filter(({ path }) => evident.has(path)).map(({ pattern }) => pattern);
    }),
  );

  test("of what is the workshop's alone has no leaf, no evidence and no gap on a demonstration sheet", () => {
    const rows = new Set(WORKSHOP_ROWS.map(({ pattern }) => pattern));
    expect(rows.size).toBeGreaterThan(10);
    for (const { slug, leaves, evidence, notStated } of SHEETS) {
      expect(
        leaves.filter(({ pattern }) => rows.has(pattern)).map(({ path }) => path),
        slug,
      ).toEqual([]);
      expect(
        [...evidence.map(({ figure }) => figure), ...notStated].filter(isPrivatePath),
        slug,
      ).toEqual([]);
    }
  });

  test("has a row for every figure that a sheet fills, and each row once", () => {
    const rows = FIGURE_TABLE.map(({ pattern }) => pattern);
    expect([...filled].filter((pattern) => !rows.includes(pattern))).toEqual([]);
    expect(rows.filter((pattern, i) => rows.indexOf(pattern) !== i)).toEqual([]);
  });

  test("gives each figure the unit of its row, money in the workshop's currency", () => {
    const units = new Map(
      FIGURE_TABLE.map(({ pattern, unit }) => [pattern, unit.replace("currency", "GBP")]),
    );
    for (const { slug, leaves, evidence } of SHEETS) {
      const patterns = new Map(leaves.map(({ path, pattern }) => [path, pattern]));
      expect(
        evidence
          .filter(({ figure, unit }) => units.get(patterns.get(figure) ?? "") !== unit)
          .map(({ figure, unit }) => `${slug} ${figure} ${unit}`),
      ).toEqual([]);
    }
  });
});
