import type { SourceKey } from "../sources/source.ts";
import {
  isKnown,
  notStated,
  type Amount,
  type Figure,
  type Known,
  type NotStated,
  type FigureRef,
  type Standing,
} from "./figure.ts";
import { ends, isInterval, type Quantity } from "./interval.ts";

/** How a figure is worked out. A rule of thumb is `estimated`, an equation `derived` (the default). */
export interface Method {
  readonly name: string;
  readonly unit: string;
  readonly standing?: "derived" | "estimated";
  readonly source?: SourceKey;
}

export type Inputs = Readonly<Record<string, FigureRef<Quantity>>>;
export type Values<I extends Inputs> = { readonly [K in keyof I]: number };

/** Weakest last: a chain is as good as its weakest root. */
const FIRMNESS: readonly Standing[] = ["measured", "stated", "estimated"];

/** The weakest root among standings; `measured` for none. */
export function weakestRoot(roots: readonly Standing[]): Standing {
  return roots.reduce<Standing>(
    (weakest, root) => (FIRMNESS.indexOf(root) > FIRMNESS.indexOf(weakest) ? root : weakest),
    "measured",
  );
}

/**
 * The only way from figures to a figure: standing, inputs and absence follow
 * from what went in. An absent input makes the result absent; an estimate's two
 * ends go through at every combination of ends (right for a `compute` that is
 * monotone in each input); uncertainties add in quadrature by finite difference.
 *
 * @param compute plain arithmetic on the inputs' values, each in its own unit.
 * @returns a number, or a range as soon as one input is a range.
 */
export function derivedFigure<I extends Inputs>(
  method: Method,
  inputs: I,
  compute: (values: Values<I>) => number,
): Figure<Quantity> {
  const known = knownInputs(inputs);
  if ("reason" in known) return known;
  const at = (quantities: readonly number[]): number =>
    compute(Object.fromEntries(known.names.map((name, i) => [name, quantities[i]])) as Values<I>);

  const results = corners(known.figures.map((figure) => ends(figure.value))).map(at);
  const isEstimate = known.figures.some((figure) => isInterval(figure.value));
  const value: Quantity = isEstimate
    ? [Math.min(...results), Math.max(...results)]
    : (results[0] ?? NaN);
  const uncertainty = isEstimate ? undefined : propagated(known.figures, at);
  return outcome(method, inputs, known.figures, value, uncertainty);
}

/**
 * A ruling on figures: a word of a closed set, chosen by a science from values
 * that may be ranges or words. Absence and standing follow as in {@link derivedFigure}.
 */
export function classifiedFigure<W extends Amount, I extends Readonly<Record<string, FigureRef>>>(
  method: Method,
  inputs: I,
  choose: (values: { readonly [K in keyof I]: I[K] extends FigureRef<infer V> ? V : never }) => W,
): Figure<W> {
  const known = knownInputs(inputs);
  if ("reason" in known) return known;
  const values = Object.fromEntries(known.names.map((name, i) => [name, known.figures[i]?.value]));
  return outcome(method, inputs, known.figures, choose(values as Parameters<typeof choose>[0]));
}

function outcome<V extends Amount>(
  method: Method,
  inputs: Readonly<Record<string, FigureRef>>,
  figures: readonly Known<Amount>[],
  value: V,
  uncertainty?: number,
): Known<V> {
  const standing = method.standing ?? "derived";
  return {
    standing,
    value,
    unit: method.unit,
    method: method.name,
    inputs: Object.values(inputs).map((input) => input.path),
    ...(method.source === undefined ? {} : { source: method.source }),
    ...(uncertainty === undefined ? {} : { uncertainty }),
    restsOn: weakestRoot([
      ...figures.map((figure) => figure.restsOn),
      ...(standing === "estimated" ? [standing] : []),
    ]),
  };
}

function knownInputs<V extends Amount>(
  inputs: Readonly<Record<string, FigureRef<V>>>,
): NotStated | { readonly names: readonly string[]; readonly figures: readonly Known<V>[] } {
  const names = Object.keys(inputs);
  const figures: Known<V>[] = [];
  const absent: FigureRef<V>[] = [];
  for (const input of Object.values(inputs)) {
    if (isKnown(input.figure)) figures.push(input.figure);
    else absent.push(input);
  }
  if (absent.length === 0) return { names, figures };
  // Two inputs may want the same, each for itself: it is said once.
  const reasons = new Set(
    absent.flatMap(({ figure }) => (isKnown(figure) ? [] : figure.reason.split("; "))),
  );
  const wanting = new Set(
    absent.flatMap(({ path, figure }) =>
      isKnown(figure) || figure.wanting.length === 0 ? [path] : figure.wanting,
    ),
  );
  return notStated([...reasons].join("; "), [...wanting]);
}

/** Every combination of one end of each range: 2^n rows for n true ranges. */
function corners(quantities: readonly (readonly [number, number])[]): number[][] {
  return quantities.reduce<number[][]>(
    (rows, [lower, upper]) =>
      lower === upper
        ? rows.map((row) => [...row, lower])
        : rows.flatMap((row) => [
            [...row, lower],
            [...row, upper],
          ]),
    [[]],
  );
}

function propagated(
  figures: readonly Known<Quantity>[],
  at: (values: readonly number[]) => number,
): number | undefined {
  if (figures.every((figure) => figure.uncertainty === undefined)) return undefined;
  const values = figures.map((figure) => ends(figure.value)[0]);
  const centre = at(values);
  const parts = figures.map(
    ({ uncertainty = 0 }, i) =>
      at(values.map((value, j) => (i === j ? value + uncertainty : value))) - centre,
  );
  return Math.hypot(...parts);
}
