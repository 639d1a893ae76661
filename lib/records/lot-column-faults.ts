import { faultAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { readingStem } from "./readings/reading-stem.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { RecordPath } from "./yaml-record.ts";

/** A drawdown of a lot or colour, by the columns that its record asks for. */
interface Drawdown {
  readonly path: RecordPath;
  /** "masstone", "let-down 1:5 in titanium-white". */
  readonly as: string;
  readonly columns: readonly { readonly column: string; readonly key: string }[];
}

/**
 * A lot that was given another lot's readings, or those of its colour, passes by them, whatever is in its
 * tubes. The retained standard may be read beside many lots, and the lot that is the standard is what its
 * colour was read from.
 */
export function* lotColumnFaults({ lots, colours }: ParsedFiles): Faults {
  const first = new Map<string, string>();
  for (const lot of lots.values()) {
    const { record, yaml } = lot;
    const colour = colours.get(record.colour);
    const ofColour =
      colour === undefined ||
      colour.record.standard === lot.slug ||
      colour.record.lot?.toLowerCase() === record.number.toLowerCase()
        ? new Set<string>()
        : new Set(drawdowns(colour).flatMap(({ columns }) => columns.map(({ key }) => key)));
    for (const { path, as, columns } of drawdowns(lot)) {
      const taken = columns.find(({ key }) => first.has(key));
      const shared = columns.find(({ key }) => ofColour.has(key));
      if (taken !== undefined)
        yield faultAt(yaml.place([...path, "column"]), {
          severity: "warning",
          rule: "records/lot-column",
          message: `The ${as} of lot ${record.number} is the column ${taken.column}, which lot ${first.get(taken.key) ?? ""} was read from already`,
          actual: taken.column,
          expected: "a column of this lot's own drawdowns",
          hint: "a record that was copied, and its column not changed?",
        });
      else if (shared !== undefined)
        yield faultAt(yaml.place([...path, "column"]), {
          severity: "warning",
          rule: "records/lot-column",
          message: `The ${as} of lot ${record.number} is the column ${shared.column} of its colour, so that the lot is held against itself`,
          actual: shared.column,
          expected: "a column of this lot's own drawdowns",
          hint: `standard: ${lot.slug} in the record of ${record.colour}, if the colour was read from this lot`,
        });
    }
    for (const { key } of drawdowns(lot).flatMap(({ columns }) => columns))
      if (!first.has(key)) first.set(key, record.number);
  }
}

function drawdowns({
  record: { masstone, tints = [] },
}: Parsed<{
  readonly masstone?: ReadingForm | undefined;
  readonly tints?:
    readonly (ReadingForm & { readonly white: string; readonly massRatio: string })[] | undefined;
}>): Drawdown[] {
  return [
    ...(masstone === undefined ? [] : drawdown(["masstone"], "masstone", masstone)),
    ...tints.flatMap((tint, i) =>
      drawdown(["tints", i], `let-down ${tint.massRatio} in ${tint.white}`, tint),
    ),
  ];
}

function drawdown(path: RecordPath, as: string, form: ReadingForm): Drawdown[] {
  if (!("reading" in form)) return [];
  const columns = (typeof form.column === "string" ? [form.column] : form.column).map((column) => ({
    column,
    key: JSON.stringify([readingStem(form.reading), column.normalize("NFC")]),
  }));
  return [{ path, as, columns }];
}
