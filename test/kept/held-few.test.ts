import { expect, test } from "vitest";
import { heldFew } from "../../lib/kept/held-few.ts";

test("of what is asked for by name those are held that were asked for last", () => {
  const made: string[] = [];
  const held = heldFew<string>(2);
  const asked = (name: string): string =>
    held(name, () => {
      made.push(name);
      return name.toUpperCase();
    });
  expect(["a", "b", "a", "a", "c"].map(asked)).toEqual(["A", "B", "A", "A", "C"]);
  expect(made).toEqual(["a", "b", "c"]);
  expect(["a", "c", "b"].map(asked)).toEqual(["A", "C", "B"]);
  expect(made).toEqual(["a", "b", "c", "b"]);
});
