import type { SourceKey } from "../sources/source.ts";
import {
  isKnown,
  knownFigure,
  notStated,
  weakestRoot,
  type Amount,
  type Figure,
  type FigureDetails,
  type Input,
  type Known,
  type NotStated,
} from "./figure.ts";
import { ends, isInterval, midpoint, type Interval, type Quantity } from "./interval.ts";
import { certain } from "./at.ts";

/** How a figure is worked out. A rule of thumb is `estimated`, an equation `derived` (the default). */
export interface Method {
  readonly name: string;
  readonly unit: string;
  readonly standing?: "derived" | "estimated";
  readonly source?: SourceKey;
  /** Of a range that is narrower than what the inputs' uncertainties come to: its middle with both. */
  readonly middleOfNarrow?: true;
  /** What went in beside the figures that are computed with: the readings of a fit. */
  readonly beside?: readonly Input[];
}

export type Inputs = Readonly<Record<string, Figure<Quantity>>>;
export type Values<I extends Inputs> = { readonly [K in keyof I]: number };

/**
 * The only way from figures to a figure: standing, inputs and absence follow
 * from what went in. An absent input makes the result absent; an estimate's two
 * ends go through at every combination of ends (right for a `compute` that is
 * monotone in each input); uncertainties add in quadrature by finite difference.
 *
 * @param compute plain arithmetic on the inputs' values, each in its own unit.
 * @returns a number, or a range as soon as one input is a range; see `middleOfNarrow`.
 */
export function derivedFigure<I extends Inputs>(
  method: Method,
  inputs: I,
  compute: (values: Values<I>) => number,
): Figure<Quantity> {
  const known = knownInputs(method, inputs);
  if ("reason" in known) return known;
  const at = (quantities: readonly number[]): number =>
    compute(Object.fromEntries(known.names.map((name, i) => [name, quantities[i]])) as Values<I>);

  const results = corners(known.figures.map((figure) => ends(figure.value))).map(at);
  const isRange = known.figures.some((figure) => isInterval(figure.value));
  const uncertainty =
    isRange && method.middleOfNarrow !== true ? undefined : propagated(known.figures, at);
  if (!isRange)
    return outcome<Quantity>(method, known.figures, certain(results[0]), { uncertainty });
  const range: Interval = [Math.min(...results), Math.max(...results)];
  const half = (range[1] - range[0]) / 2;
  return uncertainty === undefined || half >= uncertainty
    ? outcome<Quantity>(method, known.figures, range)
    : outcome<Quantity>(method, known.figures, midpoint(range), {
        uncertainty: Math.hypot(uncertainty, half / Math.sqrt(3)),
      });
}

/**
 * A ruling on figures: a word of a closed set, chosen by a science from values
 * that may be ranges or words. Absence and standing follow as in {@link derivedFigure}.
 *
 * @param reaching every word that the values reach into, in order; without it the chosen one alone.
 */
export function classifiedFigure<W extends Amount, I extends Readonly<Record<string, Figure>>>(
  method: Method,
  inputs: I,
  choose: (values: { readonly [K in keyof I]: I[K] extends Figure<infer V> ? V : never }) => W,
  reaching?: (values: Parameters<typeof choose>[0]) => readonly string[],
): Figure<W> {
  const known = knownInputs(method, inputs);
  if ("reason" in known) return known;
  const values = Object.fromEntries(
    known.names.map((name, i) => [name, known.figures[i]?.value]),
  ) as Parameters<typeof choose>[0];
  return outcome(method, known.figures, choose(values), { reaches: reaching?.(values) });
}

function outcome<V extends Amount>(
  { name, unit, source, standing = "derived", beside = [] }: Method,
  figures: readonly Known<Amount>[],
  value: V,
  more: Pick<FigureDetails, "uncertainty" | "reaches"> = {},
): Known<V> {
  const restsOn = weakestRoot([
    ...figures.map((figure) => figure.restsOn),
    ...(standing === "estimated" ? [standing] : []),
  ]);
  const inputs = [...figures, ...beside];
  return knownFigure(standing, value, { unit, method: name, source, ...more, inputs }, restsOn);
}

function knownInputs<V extends Amount>(
  { beside = [] }: Method,
  inputs: Readonly<Record<string, Figure<V>>>,
): NotStated | { readonly names: readonly string[]; readonly figures: readonly Known<V>[] } {
  const all = Object.values(inputs);
  const figures = all.filter(isKnown);
  if (figures.length === all.length) return { names: Object.keys(inputs), figures };
  // Two inputs may want the same, each for itself: it is said once.
  const absent = all.flatMap((figure) => (isKnown(figure) ? [] : [figure]));
  const reasons = new Set(absent.flatMap(({ reason }) => reason.split("; ")));
  const wanting = new Set(absent.flatMap((figure) => figure.wanting));
  return notStated([...reasons].join("; "), [...wanting], [...all, ...beside]);
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
  const values = figures.map((figure) => midpoint(figure.value));
  const centre = at(values);
  const parts = figures.map(
    ({ uncertainty = 0 }, i) =>
      at(values.map((value, j) => (i === j ? value + uncertainty : value))) - centre,
  );
  return Math.hypot(...parts);
}
