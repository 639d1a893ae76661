import { askedColumns, columnKey, drawdowns } from "./asked-columns.ts";
import { errorAt, warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/**
 * A lot that was given another lot's readings, or those of its colour, passes by them, whatever is in its
 * tubes. The retained standard may be read beside many lots, and the lot that is the standard is what its
 * colour was read from.
 */
export function* lotColumnFaults({ lots, colours }: ParsedFiles): Faults {
  const first = new Map<string, string>();
  for (const { slug, record, yaml } of lots.values()) {
    const { number } = record;
    const colour = colours.get(record.colour)?.record;
    const isStandard =
      colour?.standard === slug || colour?.lot?.toLowerCase() === number.toLowerCase();
    const ofColour = new Set(colour === undefined || isStandard ? [] : columnKeys(colour));
    const within = new Map<string, string>();
    for (const asked of drawdowns(record).flatMap(askedColumns)) {
      const { path, as, columns } = asked;
      const twin = columns.find((one) => within.has(columnKey(asked, one)));
      for (const one of columns) within.set(columnKey(asked, one), as);
      if (twin !== undefined)
        yield errorAt(yaml.place([...path, "column"]), "records/lot-column", {
          message: `The column ${twin} of lot ${number} is the ${as} and another drawdown of it at once`,
          actual: twin,
          expected: "a column for each drawdown",
        });
      const taken = columns.find((column) => first.has(columnKey(asked, column)));
      const column = taken ?? columns.find((one) => ofColour.has(columnKey(asked, one)));
      if (column === undefined) continue;
      const [why, hint] =
        taken === undefined
          ? [
              " of its colour, so that the lot is held against itself",
              `standard: ${slug} in the record of ${record.colour}, if the colour was read from this lot`,
            ]
          : [
              `, which lot ${first.get(columnKey(asked, taken)) ?? ""} was read from already`,
              "a record that was copied, and its column not changed?",
            ];
      yield warningAt(yaml.place([...path, "column"]), "records/lot-column", {
        message: `The ${as} of lot ${number} is the column ${column}${why}`,
        actual: column,
        expected: "a column of this lot's own drawdowns",
        hint,
      });
    }
    for (const key of columnKeys(record)) if (!first.has(key)) first.set(key, number);
  }
}

function columnKeys(record: Parameters<typeof drawdowns>[0]): string[] {
  return drawdowns(record)
    .flatMap(askedColumns)
    .flatMap((asked) => asked.columns.map((column) => columnKey(asked, column)));
}
