/** Figures on the demonstration's sheets, each worked by hand from its records, which are invented. */
import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { ends } from "../../lib/quantities/interval.ts";
import { figureEntry } from "../../lib/sheet/figure-entries.ts";
import { sheetOf } from "./demonstration-sheets.ts";

interface ByHand {
  readonly colour: string;
  readonly figure: string;
  /** As the record goes into it. */
  readonly worked: string;
  /** To the last digit that is written here; two ends of an estimate. */
  readonly value: number | readonly [number, number] | string;
}

const BY_HAND: readonly ByHand[] = [
  // derived: 99 g of oil to 100 g of pigment, .4 % of it drier.
  {
    colour: "lamp-black",
    figure: "oil.pigmentMassFraction",
    worked: "100 / (100 + 99 + 0.396)",
    value: 0.501515,
  },
  // derived: its two lots weigh 1.215 and 1.216 g/ml.
  {
    colour: "lamp-black",
    figure: "oil.pigmentGPerMl",
    worked: "1.2155 x 0.501515",
    value: 0.60959,
  },
  {
    colour: "lamp-black",
    figure: "fill.fillings.paint.holds.40-ml.massG",
    worked: "40 x 1.2155",
    value: 48.62,
  },
  {
    colour: "lamp-black",
    figure: "fill.fillings.paint.takesMlPer100g",
    worked: "100 / 1.2155",
    value: 82.271,
  },
];

/** Half of the last digit that a value is written to. */
function tolerance(value: number): number {
  return 0.5 * 10 ** -(String(value).split(".")[1]?.length ?? 0);
}

describe("a figure is as worked by hand", () => {
  test("some are", () => expect(BY_HAND.length).toBeGreaterThan(3));
  test.each(BY_HAND)("$colour $figure = $worked", ({ colour, figure: path, value }) => {
    const figure = figureEntry(sheetOf(colour), path)?.figure;
    if (figure === undefined || !isKnown(figure)) throw new Error(`${colour} has no ${path}`);
    if (typeof value === "string") return expect(figure.value).toBe(value);
    const found = ends(figure.value as number | readonly [number, number]);
    for (const [i, end] of ends(value).entries())
      expect(Math.abs((found[i] ?? NaN) - end), found.join(" to ")).toBeLessThanOrEqual(
        tolerance(end),
      );
  });
});
