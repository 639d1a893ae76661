/** Batches and fills of the demonstration's own paints: arithmetic worked by hand from the records, which are invented. */
import { describe, expect, test } from "vitest";
import { batchBetween } from "../../lib/formulation/batch-between.ts";
import { spannedRecipe } from "../../lib/pages/batch-view.ts";
import { heldMassG } from "../../lib/formulation/container-fill.ts";
import { valueText } from "../../lib/present/figure-text.ts";
import { isKnown, sourceFigure, type Figure } from "../../lib/quantities/figure.ts";
import { figureRow } from "../../lib/sheet/figure-table.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { ends, type Quantity } from "../../lib/quantities/interval.ts";
import { pigmentVolumeConcentration } from "../../lib/formulation/pvc.ts";
import type { BatchSize } from "../../lib/sheet/oil/batch-lines.ts";
import { SHEETS, sheetOf } from "./demonstration-sheets.ts";

function valueOf(figure: Figure<Quantity> | undefined): readonly [number, number] {
  if (figure === undefined || !isKnown(figure)) throw new Error("Unexpected absence of a figure");
  return ends(figure.value);
}
function size(slug: string, pigmentG: number): BatchSize {
  const found = sheetOf(slug).batch?.sizes.find((one) => one.pigmentG === pigmentG);
  if (found === undefined) throw new Error(`Unexpected absence of a batch of ${pigmentG} g`);
  return found;
}

describe("100 g of lamp black: 99 g of oil, .4 % of it drier, at 38, 14 and 31 a kilogram", () => {
  const made = size("lamp-black", 100);
  test("drier .396 g, held back 9.9 to 19.8 g, the rest at first", () => {
    expect(valueOf(made.oilG)).toEqual([99, 99]);
    expect(valueOf(made.additions[0]?.massG)[0]).toBeCloseTo(0.396, 12);
    expect(valueOf(made.oilHeldBackG).map((mass) => mass.toFixed(3))).toEqual(["9.900", "19.800"]);
    expect(valueOf(made.oilAtFirstG).map((mass) => mass.toFixed(3))).toEqual(["79.200", "89.100"]);
  });
  // Its two lots weigh 1.215 and 1.216; of 801.8 and 800.6 g weighed in 755 and 765 came off.
  test("paint 199.396 g at 1.2155 = 164.04 ml; 4.4 to 5.8 % stay on the slab", () => {
    expect(valueOf(made.paintMl)[0]).toBeCloseTo(164.0444, 3);
    expect(valueOf(made.yieldMl).map((ml) => ml.toFixed(1))).toEqual(["154.5", "156.7"]);
    expect(made.tubes.map(({ ml, count }) => [ml, ...valueOf(count)])).toEqual([
      [40, 3, 3],
      [120, 1, 1],
    ]);
  });
  test("costs 3.80 + 1.386 + .0123", () => {
    expect(valueOf(made.cost)[0]).toBeCloseTo(5.198276, 6);
    expect(made.unpriced).toEqual([]);
  });
});

describe("a batch", () => {
  test("is worked out wherever oil, densities and parts are known, and nowhere else", () => {
    for (const { slug, oil, batch, pigments } of SHEETS) {
      expect(batch !== undefined, slug).toBe(
        isKnown(oil.oilIndexGPer100g) &&
          isKnown(oil.paintDensityGPerCm3) &&
          pigments.every(({ massFraction }) => isKnown(massFraction)),
      );
    }
    expect(sheetOf("slate-grey").batch).toBeUndefined();
    expect(SHEETS.filter(({ batch }) => batch !== undefined).length).toBeGreaterThan(30);
  });
  test("of several pigments weighs each by its parts: 7 of ultramarine to 13 of umber", () => {
    expect(
      size("umber-ultramarine-black", 1000).pigments.map(({ slug, massG }) => [
        slug,
        valueOf(massG)[0],
      ]),
    ).toEqual([
      ["ultramarine", 350],
      ["burnt-umber", 650],
    ]);
  });

  test.each(
    SHEETS.flatMap((sheet) =>
      sheet.batch === undefined ? [] : [{ slug: sheet.slug, sheet, batch: sheet.batch }],
    ),
  )("$slug: the browser's reckoner comes to the same", ({ sheet, batch }) => {
    const recipe = spannedRecipe(batch, sheet);
    for (const one of batch.sizes) {
      const tube = one.tubes[0];
      const reckoned = batchBetween(recipe, { pigmentG: one.pigmentG }, tube?.ml ?? 40);
      for (const key of [
        "oilG",
        "oilAtFirstG",
        "oilHeldBackG",
        "paintMl",
        "lossMl",
        "yieldMl",
      ] as const)
        close(reckoned[key], one[key]);
      one.pigments.forEach(({ massG }, i) => close(reckoned.pigments[i], massG));
      one.additions.forEach(({ massG }, i) => close(reckoned.additions[i], massG));
      if (tube !== undefined) close(reckoned.tubes, tube.count);
      if (one.cost !== undefined) close(reckoned.cost, one.cost);
    }
  });
});

function close(one: Quantity | undefined, figure: Figure<Quantity>): void {
  const [[lower, upper], [least, most]] = [ends(one ?? NaN), valueOf(figure)];
  expect(lower).toBeCloseTo(least, 9);
  expect(upper).toBeCloseTo(most, 9);
}

describe("volumes with what was added", () => {
  test("a medium binds with the oil: chalk, 27 g of oil and a tenth of it stand oil", () => {
    const { oil, pigments, vehicle, additions } = sheetOf("chalk-medium");
    const [chalk, linseed, stand] = [
      valueOf(pigments[0]?.densityGPerCm3)[0],
      valueOf(vehicle?.densityGPerCm3)[0],
      valueOf(additions[0]?.densityGPerCm3)[0],
    ];
    const binderMl = 27 / linseed + 2.7 / stand;
    expect(valueOf(oil.pvc)[0]).toBeCloseTo(
      pigmentVolumeConcentration(100, chalk, 29.7, 29.7 / binderMl),
      12,
    );
    expect(valueOf(oil.pvc)[0]).toBeCloseTo(100 / chalk / (100 / chalk + binderMl), 12);
  });
  test("a thinner leaves: barytes with 15 g of oil and .45 g of spirit", () => {
    const { oil, pigments, vehicle, additions } = sheetOf("barytes-medium");
    const stays =
      100 / valueOf(pigments[0]?.densityGPerCm3)[0] + 15 / valueOf(vehicle?.densityGPerCm3)[0];
    const leaves = 0.45 / valueOf(additions[0]?.densityGPerCm3)[0];
    expect(valueOf(oil.volumeSolids)[0]).toBeCloseTo(stays / (stays + leaves), 12);
    expect(valueOf(oil.paintDensityGPerCm3)[0]).toBeCloseTo(115.45 / (stays + leaves), 12);
    expect(valueOf(oil.pigmentGPerMl)[0]).toBeCloseTo(100 / (stays + leaves), 12);
  });
  /** By hand: 100 g of barytes take 68/32 of their volume of oil before the film is fat; the spirit leaves it, but is in the tube. */
  test("oil that it takes before it is fat: barytes with 15 g of oil and .45 g of spirit", () => {
    const { oil, pigments, vehicle, additions } = sheetOf("barytes-medium");
    const barytes = 100 / valueOf(pigments[0]?.densityGPerCm3)[0];
    const linseed = 15 / valueOf(vehicle?.densityGPerCm3)[0];
    const spirit = 0.45 / valueOf(additions[0]?.densityGPerCm3)[0];
    expect(valueOf(oil.oilBeforeFat)[0]).toBeCloseTo(
      (2.125 * barytes - linseed) / (barytes + linseed + spirit),
      12,
    );
  });
  test("a medium counts as oil of the film: chalk, 27 g of oil and 2.7 g of stand oil", () => {
    const { oil, pigments, vehicle, additions } = sheetOf("chalk-medium");
    const chalk = 100 / valueOf(pigments[0]?.densityGPerCm3)[0];
    const binder =
      27 / valueOf(vehicle?.densityGPerCm3)[0] + 2.7 / valueOf(additions[0]?.densityGPerCm3)[0];
    expect(valueOf(oil.oilBeforeFat)[0]).toBeCloseTo(
      (2.125 * chalk - binder) / (chalk + binder),
      12,
    );
  });
  test("a paint that is fat takes none", () =>
    expect(valueOf(sheetOf("burnt-umber").oil.oilBeforeFat)).toEqual([0, 0]));
  test("of pigment and oil alone everything stays", () =>
    expect(valueOf(sheetOf("iron-oxide-black").oil.volumeSolids)).toEqual([1, 1]));
});

/** By hand: 60 x 3.91 = 234.6, which three digits print as 235. */
test("60 ml of a paint of 3.91 g/cm3 are printed as 235 g", () => {
  const figure = sourceFigure<Quantity>("measured", heldMassG(60, 3.91), {
    unit: "g",
    method: "made up",
    inputs: [],
  });
  const row = figureRow("fill.fillings.*.holds.*.massG");
  expect(valueText(row, figure, ENGLISH)).toBe("235");
});

describe("fill of black iron oxide: .88 g/ml poured, 1.31 tapped", () => {
  const { fillings, sentences } = sheetOf("iron-oxide-black").fill;
  test("118 ml hold 103.84 g poured and 154.58 g tapped; 100 g take 113.6 and 76.3 ml", () => {
    const dry = fillings.filter(({ pigment }) => pigment === "black-iron-oxide");
    expect(
      dry.map(({ packing, holds, takesMlPer100g }) => [
        packing,
        valueOf(holds.find(({ ml }) => ml === 118)?.massG)[0].toFixed(2),
        valueOf(takesMlPer100g)[0].toFixed(1),
      ]),
    ).toEqual([
      ["poured", "103.84", "113.6"],
      ["tapped", "154.58", "76.3"],
    ]);
  });
  test("a tube of its own size holds its volume times the paint's density", () => {
    const paint = fillings.find(({ packing }) => packing === "paint");
    expect(valueOf(paint?.holds.find(({ ml }) => ml === 40)?.massG)[0]).toBeCloseTo(
      40 * valueOf(sheetOf("iron-oxide-black").oil.paintDensityGPerCm3)[0],
      9,
    );
  });
  test("the sentence names the pigment", () =>
    expect(sentences[0]?.values).toMatchObject({
      pigment: "Black iron oxide",
      massG: 100,
      jarMl: 118,
    }));
});
