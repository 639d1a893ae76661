import { expect, test } from "vitest";
import { textSpots } from "../../../lib/records/readings/text-spots.ts";

test.each([
  ["", 0, 1, 1],
  ["ab", 2, 1, 3],
  ["a\nb", 1, 1, 2],
  ["a\nb", 2, 2, 1],
  ["a\rb", 2, 2, 1],
  ["a\r\nb", 3, 2, 1],
  ["a\r\nb", 2, 1, 2],
  ["\n\n", 1, 2, 1],
  ["\n\n", 2, 3, 1],
  ["\r\r\n\n", 4, 4, 1],
])("%j at %s is line %s, column %s", (text, offset, line, column) => {
  expect(textSpots(text)(offset)).toEqual({ line, column });
});
