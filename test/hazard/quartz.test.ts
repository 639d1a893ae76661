import { describe, expect, test } from "vitest";
import { mayHoldQuartz, STATED_QUARTZ, type QuartzRow } from "../../lib/hazard/studio/quartz.ts";

const ROWS: readonly QuartzRow[] = [
  { colourIndexName: "PY 43", holds: "natural ochre" },
  { colourIndexName: "PW 18", holds: "natural chalk" },
  { colourIndexName: "PW 18:1", holds: "dolomite" },
];

/** basis: practice, no source: a paper that states any respirable quartz has said that there is some. */
describe("what a paper states goes before what the pigment is", () => {
  test.each([
    [0.001, STATED_QUARTZ],
    [0.9, STATED_QUARTZ],
    [1, STATED_QUARTZ],
    [100, STATED_QUARTZ],
    [0, undefined],
  ])("%d percent: %s", (respirableQuartzPercent, holds) => {
    expect(mayHoldQuartz({ colourIndexName: "PY 43", respirableQuartzPercent }, ROWS)).toBe(holds);
    expect(mayHoldQuartz({ respirableQuartzPercent }, ROWS)).toBe(holds);
  });
});

// Colour Index: what stands behind the colon is a form of what stands before it.
describe("where none is stated", () => {
  test.each([
    ["PY 43", "natural ochre"],
    ["PY 43:2", "natural ochre"],
    ["PW 18:1", "dolomite"],
    ["PW 18", "natural chalk"],
    ["PY 42", undefined],
    ["PY 4", undefined],
    [undefined, undefined],
  ])("%s: %s", (colourIndexName, holds) => {
    expect(mayHoldQuartz({ colourIndexName }, ROWS)).toBe(holds);
  });
});
