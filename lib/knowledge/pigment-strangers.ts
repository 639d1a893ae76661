import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { at } from "../quantities/at.ts";
import type { EvidencedRow, LoadedTable, TableForm } from "./loaded-table.ts";
import type { PigmentRow } from "./pigment-tables.ts";
import { tableFault } from "./written-table.ts";

/** A table of a science, with what its rows speak of. */
export interface ScienceTable<Row extends EvidencedRow = EvidencedRow> {
  readonly form: Pick<TableForm<Row>, "pigments">;
  readonly table: LoadedTable<Row>;
}

/**
 * Names that lead nowhere: a pigment or class that a science's table speaks of and pigments.csv
 * lacks, and a class of pigments.csv that no science speaks of.
 */
export function pigmentStrangers(
  pigments: LoadedTable<PigmentRow>,
  sciences: readonly ScienceTable[],
): Diagnostic[] {
  const classes = new Set(pigments.rows.flatMap(({ class: of }) => of ?? []));
  const known = new Set([
    ...pigments.rows.map(({ colourIndexName }) => colourIndexName),
    ...classes,
  ]);
  const spoken = sciences.flatMap(({ form, table }) =>
    table.rows.flatMap((row, i) =>
      (form.pigments?.(row) ?? []).map((name) => ({ name, place: at(table.places, i) })),
    ),
  );
  const named = new Set(spoken.map(({ name }) => name));
  return [
    ...spoken
      .filter(({ name }) => !known.has(name))
      .map(({ name, place }) =>
        tableFault(place("pigments"), {
          subject: "pigment",
          actual: name,
          expected: "a Colour Index name or a class that lib/knowledge/pigments.csv has",
          hint: nearestHint(name, known),
        }),
      ),
    ...pigments.rows.flatMap(({ class: of }, i) =>
      of === undefined || named.has(of)
        ? []
        : tableFault(at(pigments.places, i)("class"), {
            subject: "class",
            actual: of,
            expected: "a class that some science has a row for",
            hint: nearestHint(
              of,
              [...classes].filter((one) => named.has(one)),
            ),
          }),
    ),
  ];
}
