import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { askedColumns, columnKey, drawdowns, type AskedColumns } from "./asked-columns.ts";
import { errorAt, type Fault, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { remembered } from "../quantities/remembered.ts";
import type { ColourRecord } from "./schema/colour.ts";
import { GROUNDS } from "./schema/terms.ts";

interface Use extends AskedColumns {
  readonly from: Parsed<unknown>;
}

/**
 * A column that stands for two things. Within a colour one of the two is a slip, but for a film
 * that may hide as the masstone does; of two colours one most likely has the other's file.
 */
export function* columnFaults({ workshop, colours }: ParsedFiles): Faults {
  const grounds = workshop?.record.grounds;
  const uses = [
    ...GROUNDS.flatMap((ground) =>
      workshop === undefined || grounds === undefined
        ? []
        : askedColumns({
            path: ["grounds", ground],
            as: `chart's ${ground} half`,
            part: "ground",
            form: grounds[ground],
          }).map((asked): Use => ({ ...asked, from: workshop })),
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
      const key = columnKey(one, column);
      const before = first.get(key);
      if (before === undefined) first.set(key, one);
      return before === undefined ? [] : [{ column, before }];
    });
    for (const { column, before } of taken.slice(0, 1)) yield sharedFault(one, before, column);
  }
}

/** Drawdowns of a colour, each with the same over black where it was read so too, and films. */
const usesOf = remembered((colour: Parsed<ColourRecord>): readonly Use[] =>
  [
    ...drawdowns(colour.record).flatMap((drawdown) => {
      const { path, as, form } = drawdown;
      const overBlack = "overBlack" in form ? form.overBlack : undefined;
      return [
        drawdown,
        ...(overBlack === undefined
          ? []
          : [
              {
                path: [...path, "overBlack"],
                as: `${as} over black`,
                part: "film" as const,
                form: overBlack,
              },
            ]),
      ];
    }),
    ...(colour.record.films ?? []).map((form, i) => ({
      path: ["films", i],
      as: `film of ${form.filmThicknessUm} um over ${form.ground}`,
      part: "film" as const,
      form,
    })),
  ]
    .flatMap(askedColumns)
    .map((asked) => ({ ...asked, from: colour })),
);

function sharedFault(one: Use, before: Use, column: string): Diagnostic {
  if (one.from !== before.from)
    return fault(one, {
      severity: one.part === "ground" || before.part === "ground" ? "error" : "warning",
      message: `The column ${column} of ${one.file} is the ${one.as} here and the ${before.as} of ${before.from.slug}`,
      actual: column,
      expected: "a column of this colour's own drawdowns",
      hint: "is it the file of the other colour?",
    });
  return fault(one, {
    severity: mayBeOneFilm(one, before) ? "warning" : "error",
    message: `The column ${column} of ${one.file} is the ${one.as} and the ${before.as} at once`,
    actual: column,
    expected: "a column of its own for each drawdown",
  });
}

/** A film of `films` that hides may be the drawdown of the masstone, over white or over black. */
function mayBeOneFilm(one: Use, other: Use): boolean {
  const parts = [one.part, other.part].sort().join();
  const from = [one.path[0], other.path[0]].sort().join();
  return parts === "film,masstone" || (parts === "film,film" && from === "films,masstone");
}

function fault({ from, path }: Use, what: Omit<Fault, "rule">): Diagnostic {
  return errorAt(from.yaml.place([...path, "column"]), "records/column-used-twice", {
    ...what,
  });
}
