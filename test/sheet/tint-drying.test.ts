import { describe, expect, test } from "vitest";
import { chemistryOf } from "../support/known.ts";
import { notStated, sourceFigure, type Figure } from "../../lib/quantities/figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import type { AdditionPart, VehiclePart } from "../../lib/sheet/pigments/pigment-figures.ts";
import type { DryingPart } from "../../lib/sheet/drying/drying-parts.ts";
import type { DryingPaint } from "../../lib/sheet/drying/drying-question.ts";
import { mixtureQuestion } from "../../lib/sheet/drying/tint-drying.ts";

const stated = <V extends Quantity>(value: V): Figure<V> =>
  sourceFigure("stated", value, { unit: "", method: "made up", inputs: [] });
const part = (name: string, colourIndexName: string): DryingPart => ({
  slug: name,
  name,
  massFraction: 1,
  notes: [],
  ...chemistryOf(colourIndexName),
});
const oil = (name: "linseed" | "safflower"): VehiclePart => ({
  slug: name,
  name,
  oil: name,
  densityGPerCm3: stated(0.93),
});
const drier: AdditionPart = {
  slug: "drier",
  name: "drier",
  kind: "drier",
  oil: undefined,
  metals: [{ slug: "cobalt", percentOfOil: stated(0.05) }],
  percentOfOil: stated(1),
  densityGPerCm3: stated(1),
};
const paint = (
  parts: readonly DryingPart[],
  vehicle: VehiclePart | undefined,
  mainOilGPer100g: Figure<Quantity>,
  additions: readonly AdditionPart[] = [],
): DryingPaint => ({ parts, vehicle, additions, mainOilGPer100g });

const BLACK = paint([part("black", "PBk 6")], oil("linseed"), stated(100));
const WHITE = paint([part("white", "PW 6")], oil("safflower"), stated(25));

describe("1 part of a paint with its own mass of oil to 20 of a white with a quarter, worked by hand", () => {
  // In a gram of the black .5 g pigment and .5 g oil; in 20 g of the white 16 g and 4 g.
  test("mixes pigments .5 to 16 and oils .5 to 4", () => {
    const { pigments, oils } = mixtureQuestion(BLACK, WHITE, 20);
    expect(pigments.map(({ name, white }) => [name, white])).toEqual([
      ["black", false],
      ["white", true],
    ]);
    expect(pigments[0]?.massFraction).toBeCloseTo(0.5 / 16.5, 12);
    expect(pigments[1]?.massFraction).toBeCloseTo(16 / 16.5, 12);
    expect(oils.map(({ oil: name }) => name)).toEqual(["linseed", "safflower"]);
    expect(oils[0]?.massFraction).toBeCloseTo(0.5 / 4.5, 12);
    expect(oils[1]?.massFraction).toBeCloseTo(4 / 4.5, 12);
  });
  test("thins the colour's drier by the white's oil, what was added counted with the paint", () => {
    const { addedDriers } = mixtureQuestion(
      paint([part("black", "PBk 6")], oil("linseed"), stated(100), [drier]),
      WHITE,
      20,
    );
    // 100 pigment + 100 oil + 1 drier: in a gram 100/201 g of oil, against 4 g.
    const share = 100 / 201 / (100 / 201 + 4);
    expect(addedDriers).toHaveLength(1);
    expect(addedDriers?.[0]?.percentOnOil).toBeCloseTo(0.05 * share, 12);
  });
  test("of one oil in both makes one", () =>
    expect(mixtureQuestion(BLACK, { ...WHITE, vehicle: oil("linseed") }, 20).oils).toEqual([
      { oil: "linseed", massFraction: 1 },
    ]));
});

describe("what is not known is left open", () => {
  test("oil of one paint: no shares, no drier", () => {
    const question = mixtureQuestion(
      paint([part("black", "PBk 6")], oil("linseed"), notStated("nothing"), [drier]),
      WHITE,
      20,
    );
    expect(question.pigments.map(({ massFraction }) => massFraction)).toEqual([
      undefined,
      undefined,
    ]);
    expect(question.oils).toEqual([]);
    expect(question.addedDriers).toEqual([]);
  });
  test("a white known as a pigment alone", () =>
    expect(
      mixtureQuestion(BLACK, paint([part("white", "PW 6")], undefined, notStated("nothing")), 20)
        .oils,
    ).toEqual([]));
});
