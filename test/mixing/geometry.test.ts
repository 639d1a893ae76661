import { describe, expect, test } from "vitest";
import { foundMixes } from "../../lib/mixing/finding/found-mixes.ts";
import { readTarget } from "../../lib/mixing/finding/target.ts";
import { FIT_FORMAT } from "../../lib/mixing/fits/packed-fit.ts";
import { mixingRange } from "../../lib/mixing/mixing-range.ts";
import { predictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { DATA } from "./demonstration-range.ts";

/** Readings with the gloss in them, and those without: a mixture of either is found again from itself. */
describe.each(["d/8 included", "d/8 excluded", "45/0"] as const)("read at %s", (geometry) => {
  const range = mixingRange({
    ...DATA,
    format: FIT_FORMAT,
    paints: DATA.paints.map((paint) =>
      paint.fit === undefined ? paint : { ...paint, fit: { ...paint.fit, geometry } },
    ),
  });

  test("a mixture is the recipe of its own reading", () => {
    const mix = {
      by: "mass" as const,
      colours: [{ slug: "raw-umber", parts: 1 }],
      white: { slug: "titanium-white", parts: 4 },
    };
    const made = predictedMix(mix, range);
    if (isStatement(made)) throw new Error(made.rule);
    const target = readTarget("made", "reading", made);
    const [found] = [
      ...foundMixes(
        {
          target,
          white: "titanium-white",
          colours: ["raw-umber"],
          mustHold: [],
          coloursMost: 1,
          without: [],
          isWhiteFree: false,
        },
        range,
      ),
    ];
    expect(found?.deltaE00).toBeLessThan(0.1);
    expect(found?.mix.white.parts).toBeCloseTo(0.8, 2);
  });
});
