import { readingStem } from "./readings/reading-endings.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { RecordPath } from "./yaml-record.ts";

/** One place in a record that asks for columns of a reading file, and what they are to it. */
export interface AskedColumns {
  readonly path: RecordPath;
  /** "masstone", "let-down 1:5 in titanium-white". */
  readonly as: string;
  readonly part:
    "masstone" | "masstone over black" | "tint" | "tint over black" | "film" | "ground";
  /** The file's name without its ending. */
  readonly file: string;
  readonly columns: readonly string[];
}

/** A drawdown as a record gives it, and where. */
type Drawdown<P = AskedColumns["part"]> = Pick<AskedColumns, "path" | "as"> & {
  readonly part: P;
  readonly form: ReadingForm;
};

/** Masstone and let-downs of a colour or a lot. */
export function drawdowns({
  masstone,
  tints = [],
}: {
  readonly masstone?: ReadingForm | undefined;
  readonly tints?:
    readonly (ReadingForm & { readonly white: string; readonly massRatio: string })[] | undefined;
}): Drawdown<"masstone" | "tint">[] {
  return [
    ...(masstone === undefined
      ? []
      : [{ path: ["masstone"], as: "masstone", part: "masstone" as const, form: masstone }]),
    ...tints.map((form, i) => ({
      path: ["tints", i],
      as: `let-down ${form.massRatio} in ${form.white}`,
      part: "tint" as const,
      form,
    })),
  ];
}

/** The columns that a drawdown is read from; nothing for what is no spectrum of a file. */
export function askedColumns({ form, ...use }: Drawdown): AskedColumns[] {
  if (!("reading" in form)) return [];
  const columns = typeof form.column === "string" ? [form.column] : form.column;
  return [
    {
      ...use,
      file: readingStem(form.reading),
      columns: columns.map((column) => column.normalize("NFC")),
    },
  ];
}

/** One column of one file, told from all others. */
export function columnKey({ file }: AskedColumns, column: string): string {
  return JSON.stringify([file, column]);
}
