import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { readingStem } from "./readings/reading-stem.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { RecordPath } from "./yaml-record.ts";

/** One place in a record that asks for a column, and what the column is to it. */
interface Use {
  readonly from: Parsed<unknown>;
  readonly path: RecordPath;
  /** "the masstone", "the let-down 1:5 in titanium-white". */
  readonly as: string;
  readonly part: "masstone" | "tint" | "film" | "ground";
  readonly file: string;
  readonly columns: readonly string[];
}

/**
 * A column that stands for two things. Within a colour one of the two is a slip, but for a film
 * that may hide as the masstone does; of two colours one most likely has the other's file.
 */
export function columnFaults({ workshop, colours }: ParsedFiles): Diagnostic[] {
  const uses = [
    ...(["black", "white"] as const).flatMap((ground) =>
      workshop === undefined
        ? []
        : use(
            workshop,
            ["grounds", ground],
            `the chart's ${ground} half`,
            "ground",
            workshop.record.grounds?.[ground],
          ),
    ),
    ...[...colours.values()].flatMap((colour) => usesOf(colour)),
  ];
  const first = new Map<string, Use>();
  return uses.flatMap((one) => {
    const twice = one.columns.filter((column, i) => one.columns.indexOf(column) < i);
    const taken = [...new Set(one.columns)].flatMap((column) => {
      const key = JSON.stringify([one.file, column]);
      const before = first.get(key);
      if (before === undefined) first.set(key, one);
      return before === undefined ? [] : [{ column, before }];
    });
    return [
      ...twice
        .slice(0, 1)
        .map((column) =>
          fault(
            one,
            "error",
            `The column ${column} stands twice among the readings that are averaged`,
            column,
            "each column once",
          ),
        ),
      ...taken.slice(0, 1).flatMap(({ column, before }) => sharedFault(one, before, column)),
    ];
  });
}

function usesOf(
  colour: Parsed<{
    readonly masstone?: ReadingForm | undefined;
    readonly tints?:
      readonly (ReadingForm & { readonly white: string; readonly massRatio: string })[] | undefined;
    readonly films?:
      | readonly (ReadingForm & { readonly ground: string; readonly filmThicknessUm: number })[]
      | undefined;
  }>,
): Use[] {
  const { masstone, tints = [], films = [] } = colour.record;
  return [
    ...useOverBoth(colour, ["masstone"], "the masstone", "masstone", masstone),
    ...tints.flatMap((tint, i) =>
      useOverBoth(
        colour,
        ["tints", i],
        `the let-down ${tint.massRatio} in ${tint.white}`,
        "tint",
        tint,
      ),
    ),
    ...films.flatMap((film, i) =>
      use(
        colour,
        ["films", i],
        `the film of ${film.filmThicknessUm} um over ${film.ground}`,
        "film",
        film,
      ),
    ),
  ];
}

/** A drawdown and, where it was read over black too, that reading. */
function useOverBoth(
  from: Parsed<unknown>,
  path: RecordPath,
  as: string,
  part: Use["part"],
  form: ReadingForm | undefined,
): Use[] {
  const overBlack = form !== undefined && "overBlack" in form ? form.overBlack : undefined;
  return [
    ...use(from, path, as, part, form),
    ...use(from, [...path, "overBlack"], `${as} over black`, "film", overBlack),
  ];
}

function use(
  from: Parsed<unknown>,
  path: RecordPath,
  as: string,
  part: Use["part"],
  form: ReadingForm | undefined,
): Use[] {
  if (form === undefined || !("reading" in form)) return [];
  const columns = typeof form.column === "string" ? [form.column] : form.column;
  return [
    {
      from,
      path,
      as,
      part,
      file: readingStem(form.reading),
      columns: columns.map((column) => column.normalize("NFC")),
    },
  ];
}

function sharedFault(one: Use, before: Use, column: string): Diagnostic[] {
  const { file } = one;
  if (one.from !== before.from)
    return [
      fault(
        one,
        one.part === "ground" || before.part === "ground" ? "error" : "warning",
        `The column ${column} of ${file} is ${one.as} here and ${before.as} of ${before.from.slug}`,
        column,
        "a column of this colour's own drawdowns",
        "is it the file of the other colour?",
      ),
    ];
  const mayHide = [one.part, before.part].sort().join() === "film,masstone";
  return [
    fault(
      one,
      mayHide ? "warning" : "error",
      `The column ${column} of ${file} is ${one.as} and ${before.as} at once`,
      column,
      "a column of its own for each drawdown",
    ),
  ];
}

function fault(
  { from, path }: Use,
  severity: Diagnostic["severity"],
  message: string,
  actual: string,
  expected: string,
  hint?: string,
): Diagnostic {
  return {
    severity,
    rule: "records/column-used-twice",
    place: from.yaml.place([...path, "column"]),
    message,
    actual,
    expected,
    ...(hint === undefined ? {} : { hint }),
  };
}
