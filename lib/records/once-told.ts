import type { Diagnostic } from "../diagnostics/diagnostic.ts";

/**
 * The same faults, a slip told once: what is missing of every reading is told at the first, beside an error the
 * doubts about the same value say no more, and an uncertainty is not held against a value that is none.
 *
 * @param found in the order in which they are printed.
 */
export function onceTold(found: readonly Diagnostic[]): Diagnostic[] {
  const inError = new Set(
    found.filter(({ severity }) => severity === "error").map(({ place }) => keyOf(place)),
  );
  const sound = found.filter(({ severity, rule, place }) =>
    rule === "records/uncertainty"
      ? !valuePaths(place.path).some((path) => inError.has(keyOf({ ...place, path })))
      : severity === "error" || !inError.has(keyOf(place)),
  );
  return MISSING_RULES.reduce(missingOnce, sound);
}

type Place = Diagnostic["place"];

function keyOf({ file, path }: Pick<Place, "file" | "path">): string {
  return `${file} ${path}`;
}

/** Of `densityGPerCm3.uncertainty` the value that it belongs to, written either way. */
function valuePaths(path: string): string[] {
  const amount = path.replace(/\.uncertainty$/, "");
  return [amount, `${amount}.value`];
}

/** What a reading lacks where neither record, file nor workshop says it. */
const MISSING_RULES = ["records/geometry", "records/scale"] as const;

/** What more than one reading lacks is missing of the workshop: told at the first, with how many more there are. */
function missingOnce(found: readonly Diagnostic[], rule: string): Diagnostic[] {
  const isMissing = (one: Diagnostic): boolean => one.rule === rule && one.actual === "nothing";
  const lacking = found.filter(isMissing);
  const [first] = lacking;
  if (first === undefined || lacking.length === 1) return [...found];
  const more = lacking.length - 1;
  return found.flatMap((one) =>
    one === first
      ? [{ ...one, hint: `at ${more === 1 ? "1 more reading" : `${more} more readings`} too` }]
      : isMissing(one)
        ? []
        : [one],
  );
}
