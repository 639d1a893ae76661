/**
 * Blue wool references, ISO 105-B02: 1 (most fugitive) to 8. A scale of its own,
 * not a category: a customary correspondence exists, and belongs to neither standard.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { LightfastnessCategory } from "./lightfastness.ts";
import { certain } from "../quantities/at.ts";

export type BlueWoolReference = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** A reading on this scale, kept apart from categories by its type. */
export interface BlueWool {
  readonly scale: "blue wool";
  readonly reference: BlueWoolReference;
}

export interface BlueWoolCorrespondence {
  readonly category: LightfastnessCategory;
  readonly references: readonly BlueWoolReference[];
}

export type BlueWoolStatement = StatementOf<
  "blue-wool-is-another-scale",
  { reference: BlueWoolReference; category: LightfastnessCategory }
>;

/** @source memory-permanence */
export const BLUE_WOOL_CORRESPONDENCE: readonly BlueWoolCorrespondence[] = [
  { category: "I", references: [7, 8] },
  { category: "II", references: [6] },
  { category: "III", references: [4, 5] },
  { category: "IV", references: [2, 3] },
  { category: "V", references: [1] },
];

/**
 * @param reference whole number 1-8.
 * @throws RangeError for anything else: a half or a ninth step is of another scale.
 * @source iso-105-b02
 */
export function blueWool(reference: number): BlueWool {
  if (!isReference(reference))
    throw domainError("blue wool reference", reference, "a whole number 1 to 8");
  return { scale: "blue wool", reference };
}

/** The category that a reference is customarily set beside, with its row: a comparison, never a rating. */
export function customaryCategory({ reference }: BlueWool): {
  readonly row: BlueWoolCorrespondence;
  readonly reason: BlueWoolStatement;
} {
  const row = certain(
    BLUE_WOOL_CORRESPONDENCE.find(({ references }) => references.includes(reference)),
  );
  return {
    row,
    reason: estimated(
      "blue-wool-is-another-scale",
      { reference, category: row.category },
      "memory-permanence",
    ),
  };
}

function isReference(reference: number): reference is BlueWoolReference {
  return Number.isInteger(reference) && reference >= 1 && reference <= 8;
}
