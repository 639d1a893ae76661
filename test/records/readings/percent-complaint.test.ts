/** basis: practice, no source: the brightest papers and paints read some percent above 100 % and none above 120 %. */
import { expect, test } from "vitest";
import { factorComplaint } from "../../../lib/records/readings/percent-complaint.ts";
import { csvText } from "./invented-reading.ts";
import { soundReading } from "./reading-faults.ts";

/** What is said of a file of one column that is taken for factors, where some of its values are these. */
function told(values: readonly number[]): string | undefined {
  const { columns } = soundReading("r/a.csv", csvText());
  const [column] = [...columns.values()];
  if (column === undefined) throw new Error("There is a column in the invented reading");
  return factorComplaint([{ ...column, values }], "a.csv")?.message;
}

test.each([
  ["all of it a percentage", [30, 50, 119.9]],
  ["the largest that there is", [30, 50, 120]],
  ["just above what a factor can be", [1.21, 1.21]],
  ["half of it", [0.3, 0.4, 30, 40]],
])("percent taken for factors: %s", (_, values) => {
  expect(told(values)).toBe(
    `The reading is taken in factors, and a.csv holds percent: its values go up to ${Math.max(...values)}`,
  );
});

/** basis: published. A channel of eight bits holds whole numbers of 0 to 255 (IEC 61966-2-1). */
test.each([
  ["all but one of them also a percentage", [0, 30, 121]],
  ["the largest that there is", [0, 128, 255]],
])("a picture's values taken for factors: %s", (_, values) => {
  expect(told(values)).toContain("most likely a picture's values of 0 to 255");
});

test.each([
  ["factors", [0.3, 0.5, 0.9]],
  ["more than eight bits hold", [0, 128, 256]],
  ["the largest that a factor can be", [1.2, 1.2]],
  ["one cell of percent, a slip", [0.3, 0.4, 0.5, 30]],
  ["a value that is no percentage either", [30, 50, 120.1]],
  ["nothing", []],
])("not so: %s", (_, values) => {
  expect(told(values)).toBeUndefined();
});
