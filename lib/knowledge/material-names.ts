/** The words by which records' names tell what a thing is made of. */
import { z } from "zod";
import { evidence, listCell, patternCell, wording } from "./cells.ts";
import type { EvidencedRow, TableForm } from "./loaded-table.ts";

const MATERIALS = ["oil", "metal"] as const;

export interface MaterialName {
  readonly material: (typeof MATERIALS)[number];
  /** As the key of a record has it. */
  readonly named: string;
  /** Patterns of regular expressions, of which one is found in such a name. */
  readonly words: readonly string[];
}

export const NAME_TABLES = {
  materialNames: {
    file: "knowledge/material-names.yaml",
    row: z.strictObject({
      material: z.enum(MATERIALS),
      named: wording,
      words: listCell(patternCell),
      ...evidence,
    }),
    names: ({ material, named }) => [`${material}, ${named}`],
  } satisfies TableForm<MaterialName & EvidencedRow>,
};

/** Materials of a kind that a name speaks of, in the order of the table. */
export function namedMaterials(
  name: string,
  material: MaterialName["material"],
  table: readonly MaterialName[],
): string[] {
  return table
    .filter(
      (row) =>
        row.material === material && row.words.some((word) => new RegExp(word, "iu").test(name)),
    )
    .map(({ named }) => named);
}
