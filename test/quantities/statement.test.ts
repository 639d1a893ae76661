import { expect, test } from "vitest";
import { notRefused, type StatementOf } from "../../lib/quantities/statement.ts";

const refusal: StatementOf<"nothing-mixed", Record<string, never>> = {
  rule: "nothing-mixed",
  values: {},
};

test("what was reckoned is passed on; a statement of why it can't be is a fault of ours", () => {
  const mixed = { L: 50 };
  expect(notRefused(mixed)).toBe(mixed);
  expect(() => notRefused(refusal)).toThrow(new RangeError("Refused: nothing-mixed"));
});
