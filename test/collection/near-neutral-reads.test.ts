import { expect, test } from "vitest";
import { isNearNeutral } from "../../lib/collection/near-neutrals.ts";
import { followed } from "../../lib/kept/followed.ts";
import { readBy } from "../../lib/kept/reads.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";

const GREY = { sentence: { rule: "stays-near-neutral" } };
const COLOUR = { sentence: { rule: "stays-a-colour" } };

test.each<[string, Partial<Record<"family" | "tints", unknown>>, boolean, string[]]>([
  ["a black is one where it was let down", { family: "black", tints: [GREY] }, true, ["tints"]],
  ["a black that was not is none", { family: "black", tints: [] }, false, ["tints"]],
  ["of no family one goes by its tints", { tints: [COLOUR, GREY] }, true, ["tints"]],
  ["of no family and no grey it is none", { tints: [COLOUR] }, false, ["tints"]],
  ["a red is none, whatever its tints do", { family: "red", tints: [GREY] }, false, []],
])("%s", (_, sheet, expected, further) => {
  const noting = followed(sheet as unknown as Sheet, { keys: {} }, "sheet").value;
  const { value, names } = readBy(() => isNearNeutral(noting));
  expect(value).toBe(expected);
  expect([...names]).toEqual(["sheet/family", ...further.map((one) => `sheet/${one}`)]);
});
