import { expect, test } from "vitest";
import { whenRead } from "../../lib/quantities/when-read.ts";

test("is worked out when it is read, once, and only what is read", () => {
  const asked: string[] = [];
  const of = whenRead<{ readonly one: number; readonly other: string }>({
    one: () => asked.push("one"),
    other: () => String(asked.push("other")),
  });
  expect(Object.keys(of)).toEqual(["one", "other"]);
  expect(asked).toEqual([]);
  expect([of.other, of.other]).toEqual(["1", "1"]);
  expect(asked).toEqual(["other"]);
  expect({ ...of }).toEqual({ one: 2, other: "1" });
});

test("throws each time what it throws", () => {
  const of = whenRead<{ readonly one: number }>({
    one: () => {
      throw new RangeError("no such figure");
    },
  });
  expect(() => of.one).toThrow("no such figure");
  expect(() => of.one).toThrow("no such figure");
});
