import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { askedColumns, columnKey, drawdowns, type AskedColumns } from "./asked-columns.ts";
import { errorAt, warningAt, type Fault, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { remembered } from "../quantities/remembered.ts";
import type { ColourRecord } from "./schema/colour.ts";
import { grouped } from "../quantities/grouped.ts";
import { GROUNDS } from "./schema/terms.ts";

interface Use extends AskedColumns {
  readonly from: Parsed<unknown>;
}

/**
 * A column that stands for two things. Within a colour one of the two is a slip, but for a film
 * that may hide as the masstone does; of two colours one most likely has the other's file.
 */
export function* columnFaults({ workshop, colours, readings }: ParsedFiles): Faults {
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
  const shared: Shared[] = [];
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
    for (const { column, before } of taken.slice(0, 1))
      if (one.from === before.from) yield twiceFault(one, before, column);
      else shared.push(accused({ one, other: before, column }));
  }
  const ofTwo = grouped(
    shared.map((found) => [JSON.stringify([found.one.from.file, found.other.from.file]), found]),
  );
  for (const [found, ...more] of ofTwo.values())
    if (found !== undefined) yield sharedFault(found, more.length);
  for (const colour of colours.values()) {
    const { slug } = colour;
    const others = usesOf(colour).find(({ file }) => file !== slug && colours.has(file));
    const isTold = shared.some(({ one }) => one.from === colour && one.file === others?.file);
    if (others !== undefined && !isTold && readings.has(slug)) yield othersFileFault(others, slug);
  }
}

/** Two records that ask for one column; the first of them is told of it. */
interface Shared {
  readonly one: Use;
  readonly other: Use;
  readonly column: string;
}

/** A file that bears one record's name is that record's, and the other has it by a slip. */
function accused({ one, other, column }: Shared): Shared {
  return one.file === one.from.slug ? { one: other, other: one, column } : { one, other, column };
}

/** Drawdowns of a colour, each with the same over black where it was read so too, and films. */
const usesOf = remembered((colour: Parsed<ColourRecord>): readonly Use[] =>
  [
    ...drawdowns(colour.record).flatMap((drawdown) => {
      const { path, as, part, form } = drawdown;
      const overBlack = "overBlack" in form ? form.overBlack : undefined;
      return [
        drawdown,
        ...(overBlack === undefined
          ? []
          : [
              {
                path: [...path, "overBlack"],
                as: `${as} over black`,
                part: `${part} over black` as const,
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

/** @param more further columns that the two share. */
function sharedFault({ one, other, column }: Shared, more: number): Diagnostic {
  const further = more === 0 ? "" : `, and so are ${more} more of its columns`;
  return fault(one, {
    severity: one.part === "ground" || other.part === "ground" ? "error" : "warning",
    message: `The column ${column} of ${one.file} is the ${one.as} here and the ${other.as} of ${other.from.slug}${further}`,
    actual: column,
    expected: "a column of this colour's own drawdowns",
    hint: "is it the file of the other colour?",
  });
}

/** Files are named for their colours where a colour has one of its own: another's is most likely a slip. */
function othersFileFault({ as, file, from, path }: Use, slug: string): Diagnostic {
  return warningAt(from.yaml.place([...path, "reading"]), "records/file-of-another", {
    message: `The ${as} of ${slug} is read from the file ${file}, which bears another colour's name, and there is a file ${slug}`,
    actual: file,
    expected: slug,
    hint: `reading: ${slug}?`,
  });
}

function twiceFault(one: Use, before: Use, column: string): Diagnostic {
  return fault(one, {
    severity: mayBeOneFilm(one, before) ? "warning" : "error",
    message: `The column ${column} of ${one.file} is the ${one.as} and the ${before.as} at once`,
    actual: column,
    expected: "a column of its own for each drawdown",
  });
}

/** A film of `films` that hides may be the drawdown of the masstone, over white or over black. */
function mayBeOneFilm({ part: one }: Use, { part: other }: Use): boolean {
  const beside = one === "film" ? other : one;
  return (
    (one === "film" || other === "film") &&
    (beside === "masstone" || beside === "masstone over black")
  );
}

function fault({ from, path }: Use, what: Omit<Fault, "rule">): Diagnostic {
  return errorAt(from.yaml.place([...path, "column"]), "records/column-used-twice", {
    ...what,
  });
}
