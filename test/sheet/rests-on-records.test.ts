/** What a figure was made of it names among its inputs: one that names no record, nor rests on one by another figure, is a constant. */
import { expect, test } from "vitest";
import {
  inputsOf,
  isFigure,
  isKnown,
  notStated,
  sourceFigure,
  type Figure,
} from "../../lib/quantities/figure.ts";
import { grouped } from "../../lib/quantities/grouped.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { WORKSHOP } from "../../lib/sheet/record-inputs.ts";
import { sheets } from "../support/demonstration.ts";

const RESTING = new Map<Figure, boolean>();

function restsOnRecords(figure: Figure): boolean {
  const known = RESTING.get(figure);
  if (known !== undefined) return known;
  const isResting = inputsOf(figure).some((input) => !isFigure(input) || restsOnRecords(input));
  RESTING.set(figure, isResting);
  return isResting;
}

/** Of one figure on many sheets, whether some name no record though what they say goes by it. */
function namesNoRecord(figures: readonly Figure[], sheetCount: number): boolean {
  const said = figures.map((one) => JSON.stringify(isKnown(one) ? one.value : one.reason));
  const isConstant = figures.length === sheetCount && new Set(said).size === 1;
  return !isConstant && !figures.every(restsOnRecords);
}

test("every figure that is not the same on all sheets names a record among its inputs", () => {
  const all = sheets();
  const figures = grouped(
    all.flatMap((sheet) =>
      figureEntries(sheet).map(({ row, figure }) => [row.pattern, figure] as const),
    ),
  );
  expect(figures.size).toBeGreaterThan(150);
  expect(
    [...figures]
      .filter(([, ofSheets]) => namesNoRecord(ofSheets, all.length))
      .map(([pattern]) => `${pattern}: its inputs name no record, as colourRecord(colour, "KEY")`),
  ).toEqual([]);
});

test("which tells one that differs, or is not everywhere, from a constant", () => {
  const days = (value: number, inputs: Parameters<typeof notStated>[2] = []): Figure =>
    sourceFigure("stated", value, { unit: "d", method: "by hand", inputs });
  expect(namesNoRecord([days(3), days(3)], 2)).toBe(false);
  expect(namesNoRecord([days(3), days(4)], 2)).toBe(true);
  expect(namesNoRecord([days(3)], 2)).toBe(true);
  expect(namesNoRecord([days(3), notStated("not in the records", [], [WORKSHOP])], 2)).toBe(true);
  expect(namesNoRecord([days(3, [WORKSHOP]), days(4, [days(1, [WORKSHOP])])], 2)).toBe(false);
});
