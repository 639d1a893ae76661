import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { faultAt, type Fault, type Faults } from "./fault.ts";
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
export function* columnFaults({ workshop, colours }: ParsedFiles): Faults {
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
  for (const one of uses) {
    const twice = one.columns.find((column, i) => one.columns.indexOf(column) < i);
    if (twice !== undefined)
      yield fault(one, {
        message: `The column ${twice} stands twice among the readings that are averaged`,
        actual: twice,
        expected: "each column once",
      });
    const taken = [...new Set(one.columns)].flatMap((column) => {
      const key = JSON.stringify([one.file, column]);
      const before = first.get(key);
      if (before === undefined) first.set(key, one);
      return before === undefined ? [] : [{ column, before }];
    });
    for (const { column, before } of taken.slice(0, 1)) yield sharedFault(one, before, column);
  }
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

function sharedFault(one: Use, before: Use, column: string): Diagnostic {
  if (one.from !== before.from)
    return fault(one, {
      severity: one.part === "ground" || before.part === "ground" ? "error" : "warning",
      message: `The column ${column} of ${one.file} is ${one.as} here and ${before.as} of ${before.from.slug}`,
      actual: column,
      expected: "a column of this colour's own drawdowns",
      hint: "is it the file of the other colour?",
    });
  const mayHide = [one.part, before.part].sort().join() === "film,masstone";
  return fault(one, {
    severity: mayHide ? "warning" : "error",
    message: `The column ${column} of ${one.file} is ${one.as} and ${before.as} at once`,
    actual: column,
    expected: "a column of its own for each drawdown",
  });
}

function fault({ from, path }: Use, what: Omit<Fault, "rule">): Diagnostic {
  return faultAt(from.yaml.place([...path, "column"]), {
    rule: "records/column-used-twice",
    ...what,
  });
}
