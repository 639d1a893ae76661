import { expect, test } from "vitest";
import { rowOf } from "../../lib/pages/colour-rows.ts";
import { strengthGroups } from "../../lib/pages/strength-order-page.ts";
import { at } from "../../lib/quantities/at.ts";
import { CONTEXT } from "../print/demonstration-cards.ts";

/** Of a group the head over the parts of white, and what stands beside those of each colour. */
function whitesOf(id: string) {
  const group = strengthGroups(CONTEXT).find((one) => one.id === id);
  if (group === undefined) throw new Error(`There is no group ${id}`);
  const notes = group.items.flatMap((worded, nth) => {
    const cell = group.cells(rowOf(worded, CONTEXT), nth + 1).at(-1);
    const note = typeof cell === "object" && "note" in cell ? cell.note : undefined;
    return note === undefined ? [] : [[worded.sheet.slug, note]];
  });
  return { head: at(group.columns, group.columns.length - 1), notes };
}

test("the white that parts are of stands in the head, and another beside its own parts", () => {
  const head = { head: "White to L* 50, tube to tube, in Titanium White", numeric: true };
  expect(whitesOf("ranked")).toEqual({ head, notes: [] });
  expect(whitesOf("not-compared")).toEqual({ head, notes: [["raw-sienna", "in Lead White"]] });
});
