import { expect, test } from "vitest";
import { bodiesIn, namedValues, withBodies } from "../../lib/kept/kept-bodies.ts";

const BODIES = ["the first", "", "zwölf Gramm"].map((text) => Buffer.from(text));

test("each body is read as it was written, an empty one too, and beyond the last there is nothing", () => {
  // As it is read from a file: in the middle of other bytes.
  const within = Buffer.concat([Buffer.from("seal"), withBodies({ of: "paint" }, BODIES)]);
  const { head, body } = bodiesIn<{ readonly of: string }>(within.subarray(4));
  expect(head).toEqual({ of: "paint" });
  expect([0, 1, 2, 3].map((i) => Buffer.from(body(i)).toString())).toEqual([
    "the first",
    "",
    "zwölf Gramm",
    "",
  ]);
});

test("a value is made when its name is first asked for, and once", () => {
  const made: number[] = [];
  const values = namedValues(["bone", "lamp"], (i) => {
    made.push(i);
    return { place: i };
  });
  expect([values.size, made]).toEqual([2, []]);
  const lamp = values.get("lamp");
  expect(lamp).toEqual({ place: 1 });
  expect(values.get("soot")).toBeUndefined();
  expect([...values].map(([name]) => name)).toEqual(["bone", "lamp"]);
  expect([values.get("lamp") === lamp, made]).toEqual([true, [1, 0]]);
});
