/** Figures on the demonstration's sheets, each worked by hand from its records, which are invented. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { certain } from "../../lib/quantities/at.ts";
import { isKnown, type FigurePath } from "../../lib/quantities/figure.ts";
import { ends } from "../../lib/quantities/interval.ts";
import type { Declared } from "../../lib/sheet/declaration.ts";
import { figureEntry } from "../../lib/sheet/figure-entries.ts";
import { pathBelow } from "../../lib/sheet/figure-path.ts";
import type { ByHand } from "../../lib/sheet/found.ts";
import { SHEET } from "../../lib/sheet/sheet.ts";
import type { ColourRecord } from "../../lib/records/schema/colour.ts";
import { RECORDS, sheetOf } from "./demonstration-sheets.ts";

/** Of figures that several declarations share a function for, or that are found in the list that they stand in. */
const BY_HAND: readonly ByHand[] = [
  ["lamp-black.vehicle.densityGPerCm3", "as recorded", 0.931],
  ["lamp-black.vehicle.pricePerKg", "as recorded", 14],
  ["lamp-black.pigments.lamp-black.densityGPerCm3", "as recorded", 1.8],
  ["lamp-black.pigments.lamp-black.oilAbsorptionGPer100g", "as recorded", 72],
  ["lamp-black.pigments.lamp-black.bulkDensityLooseGPerMl", "as recorded", 0.16],
  ["lamp-black.pigments.lamp-black.bulkDensityTappedGPerMl", "as recorded", 0.27],
  ["lamp-black.pigments.lamp-black.pricePerKg", "as recorded", 38],
  ["lamp-black.additions.cobalt-zirconium-drier.densityGPerCm3", "as recorded", 0.95],
  ["lamp-black.additions.cobalt-zirconium-drier.pricePerKg", "as recorded", 31],
  ["lamp-black.batch.sizes.100-g.oilG", "its oil index", 99],
  ["lamp-black.batch.sizes.100-g.oilHeldBackG", "a tenth to a fifth of 99", [9.9, 19.8]],
  ["lamp-black.batch.sizes.100-g.oilAtFirstG", "99 less that", [79.2, 89.1]],
  ["lamp-black.batch.sizes.100-g.paintG", "100 + 99 + 0.396", 199.396],
  ["lamp-black.batch.sizes.100-g.paintMl", "199.396 / 1.2155", 164.044],
  ["lamp-black.fill.fillings.paint.takesMlPer100g", "100 / 1.2155", 82.271],
  ["lamp-black.drying.trials.0.filmThicknessUm", "as recorded", 75],
  ["lamp-black.drying.trials.0.temperatureC", "as recorded", 20],
  ["lamp-black.drying.trials.0.humidityPercent", "as recorded", 55],
];

/** What else holds a figure that is found and has no example: a test that asks for it, or for what it is made of by that name. */
const HELD_BY: Readonly<Record<string, readonly (readonly [figure: FigurePath, name?: string])[]>> =
  {
    "test/sheet/hazards-of-the-demonstration.test.ts": [["pigments.*.formula"]],
    "test/sheet/opacity-expected.test.ts": [["pigments.*.expectedOpacity"]],
    "test/sheet/chip-by-eye.test.ts": [["notations.masstone.nbsName"]],
    "test/colorimetry/lamplight.test.ts": [
      ["notations.masstone.lamplight.deltaE00"],
      ["notations.masstone.lamplight.ledDeltaE00", "led"],
      ["notations.masstone.lamplight.fluorescentDeltaE00", "fluorescent"],
    ],
    "test/sheet/films-beside-truth.test.ts": [
      ["optics.contrastRatio"],
      ["optics.hidingFilmUm"],
      ["optics.fit.k1"],
      ["optics.fit.k2"],
    ],
    "test/sheet/opacity-of-the-demonstration.test.ts": [
      ["optics.scatteringPower"],
      ["optics.opacityClass"],
    ],
    "test/sheet/tints-of-the-demonstration.test.ts": [
      ["optics.gloss.glossyL"],
      ["optics.gloss.matteL"],
    ],
    "test/optics/gloss-depth.test.ts": [
      ["notations.masstone.glossExcludedL", "readingInGeometry"],
      ["optics.gloss.glossyValue", "value"],
      ["optics.gloss.matteValue", "value"],
      ["optics.gloss.depths.*.L"],
      ["optics.gloss.depths.*.value"],
    ],
    "test/optics/two-constant-fit.test.ts": [["optics.fit.weightedResidual", "chiSquare"]],
    "test/optics/fitted-colour.test.ts": [
      ["optics.fit.masstoneResidualDeltaE00", "residualDeltaE00"],
    ],
    "test/sheet/optics-of-the-demonstration.test.ts": [
      ["optics.extender.fromL"],
      ["optics.extender.toL"],
    ],
    "test/sheet/mixtures-of-the-demonstration.test.ts": [
      ["mixture.whites.*.pair.neutralShare"],
      ["mixture.whites.*.pair.neutralChroma"],
    ],
    "test/formulation/dispersion.test.ts": [["oil.dispersionFactor", "dispersionFactorRuling"]],
    "test/sheet/medium-with-solvent.test.ts": [["oil.oilBeforeFat"]],
    "test/sheet/weighed-as-paint.test.ts": [["oil.mainOilGPer100g"]],
    "test/sheet/no-contradictions.test.ts": [["oil.finish"]],
    "test/formulation/batch.test.ts": [["batch.holdBack"]],
    "test/sheet/lot-weights.test.ts": [["batch.loss"]],
    "test/sheet/batch-and-fill.test.ts": [["batch.sizes.*.lossMl"], ["batch.sizes.*.yieldMl"]],
    "test/sheet/drying-trials.test.ts": [["drying.class"], ["drying.inWhites.*.class"]],
    "test/sheet/paint-as-made.test.ts": [["drying.expectedDays"]],
    "test/drying/drying-estimate.test.ts": [["drying.linseedDays", "linseed"]],
    "test/sheet/permanence.test.ts": [["permanence.expectation"], ["permanence.blueWool"]],
  };

/** Every figure below a part, by where it stands. */
function figuresOf(part: Declared, pattern: string): (readonly [FigurePath, Declared])[] {
  const { shape } = part;
  switch (shape.form) {
    case "figure":
      return [[pattern, part]];
    case "members":
      return Object.entries(shape.members).flatMap(([key, one]) =>
        figuresOf(one, pathBelow(pattern, key)),
      );
    case "list":
    case "map":
      return figuresOf(shape.member, `${pattern}.*`);
    case "plain":
      return [];
  }
}
const FIGURES = figuresOf(SHEET, "");

/** basis: derived from the records of the colour, its pigment, its oil and its drier. */
const WORKED = [
  ...FIGURES.flatMap(([pattern, part]) =>
    "byHand" in part ? [{ pattern, byHand: part.byHand as ByHand }] : [],
  ),
  ...BY_HAND.map((byHand) => ({ pattern: undefined, byHand })),
].map(({ pattern, byHand: [fact, worked, value] }) => {
  const [, colour = "", figure = ""] = /^([^.]+)\.(.*)$/.exec(fact) ?? [];
  return { pattern, colour, figure, worked, value };
});

/** Declared with how they are found, and neither with an example nor as a key of the record. */
function foundWithoutExample(): FigurePath[] {
  return FIGURES.flatMap(([pattern, part]) =>
    "found" in part && !("example" in part || "recordKey" in part) ? [pattern] : [],
  );
}

/** Half of the last digit that a value is written to. */
function tolerance(value: number): number {
  return 0.5 * 10 ** -(String(value).split(".")[1]?.length ?? 0);
}

describe("a figure is as worked by hand", () => {
  test("some are", () => expect(WORKED.length).toBeGreaterThan(30));
  test.each(WORKED)("$colour $figure = $worked", ({ pattern, colour, figure: path, value }) => {
    const { figure, row } = figureEntry(sheetOf(colour), path) ?? {};
    expect(row?.pattern).toBe(pattern ?? row?.pattern);
    if (figure === undefined || !isKnown(figure)) throw new Error(`${colour} has no ${path}`);
    if (typeof value === "string") return expect(figure.value).toBe(value);
    const found = ends(figure.value as number | readonly [number, number]);
    for (const [i, end] of ends(value).entries())
      expect(Math.abs((found[i] ?? NaN) - end), found.join(" to ")).toBeLessThanOrEqual(
        tolerance(end),
      );
  });
});

describe("a figure that is declared as a key of the record", () => {
  const keyed = FIGURES.flatMap(([pattern, part]) =>
    "recordKey" in part ? [{ pattern, key: part.recordKey as keyof ColourRecord }] : [],
  );
  test("there are such", () => expect(keyed.length).toBeGreaterThan(3));
  test.each(keyed)("$pattern bears its name, and says what it says", ({ pattern, key }) => {
    expect(pattern.split(".").at(-1)).toBe(key);
    const said = [...RECORDS.colours.values()].flatMap(({ slug, record: { [key]: amount } }) =>
      amount === undefined ? [] : [[slug, amountOf(amount)] as const],
    );
    expect(said.length).toBeGreaterThan(0);
    for (const [slug, value] of said)
      expect(figureEntry(sheetOf(slug), pattern)?.figure, slug).toMatchObject({ value });
  });
});

/** Of an amount with more to it its value alone. */
function amountOf(amount: unknown): unknown {
  return typeof amount === "object" && amount !== null && "value" in amount ? amount.value : amount;
}

describe("each figure that is found is held by something", () => {
  const wanting = foundWithoutExample();
  const worked = WORKED.map(
    ({ colour, figure }) => certain(figureEntry(sheetOf(colour), figure)).row.pattern,
  );
  const elsewhere = Object.entries(HELD_BY).flatMap(([file, figures]) =>
    figures.map(([figure, name = certain(figure.split(".").at(-1))]) => ({ file, figure, name })),
  );
  test("by an example of its own, a value worked by hand, or a test that is named here", () => {
    const held = new Set([...worked, ...elsewhere.map(({ figure }) => figure)]);
    expect(wanting.filter((pattern) => !held.has(pattern))).toEqual([]);
  });
  test.each(elsewhere)("$figure by $name of $file", ({ file, figure, name }) => {
    expect(wanting).toContain(figure);
    expect(worked).not.toContain(figure);
    expect(readFileSync(file, "utf8")).toMatch(new RegExp(`\\b${name}\\b`));
  });
});
