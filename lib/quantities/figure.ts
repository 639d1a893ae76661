import type { SourceKey } from "../sources/source.ts";
import { ends, type Interval, type Quantity } from "./interval.ts";
import { notesOn } from "./noted-on.ts";

/** Where a figure stands in its sheet, array members by slug: `tints.titanium-white.atL.50.b`. */
export type FigurePath = string;

/**
 * How a figure is known: `measured` the workshop's own reading, `derived` worked
 * out, `estimated` from a rule, a handbook range or memory, `stated` a supplier's word.
 */
export type Standing = "measured" | "derived" | "estimated" | "stated";

/** Every standing that a reader meets. */
export type StandingKind = Standing | "not stated";

/** Standings that can be a root: `derived` always rests on one of them. */
export type RootStanding = Exclude<Standing, "derived">;

/** That the true value does not pass a figure: no less, or no more. */
export type Bound = "at least" | "at most";

export type Amount = number | Interval | string | readonly number[];

export type RootKind = "colour" | "lot" | "pigment" | "vehicle" | "reading" | "source" | "workshop";

/** A record that figures are worked out of; of a colour's own record, by its key. */
export interface RecordRoot {
  readonly kind: RootKind;
  readonly slug: string;
  readonly field?: string;
}

/** What a figure was made from: other figures, or records. */
export type Input = Figure | RecordRoot;

/** Only this file makes a figure: neither a literal nor a copy by spread has the type. */
declare class Made {
  readonly #made: true;
}

export interface Known<V extends Amount> extends Made {
  readonly standing: Standing;
  readonly value: V;
  /** Symbol of the unit, "1" for a plain number, "" for a word. */
  readonly unit: string;
  readonly method: string;
  readonly source?: SourceKey;
  /** Standard uncertainty, in the unit of the value. */
  readonly uncertainty?: number;
  /** Present where the value is only what the true one does not pass. */
  readonly bound?: Bound;
  /** Of a class: every class that what it was chosen by reaches into, in their order, where these are several. */
  readonly reaches?: readonly string[];
  /** The weakest root the figure rests on; its own standing when it is a root. */
  readonly restsOn: Standing;
}

export interface NotStated extends Made {
  readonly standing: "not stated";
  readonly reason: string;
  /** Figures or record fields that would be needed. */
  readonly wanting: readonly FigurePath[];
}

/** Value, unit, standing, method, inputs and source as one thing, so that evidence cannot drift from the number. */
export type Figure<V extends Amount = Amount> = Known<V> | NotStated;

/** What each figure was made from. A value that is not in here is no figure, whatever it was cast to. */
const INPUTS = notesOn<object, readonly Input[]>();

function made<F extends Figure>(figure: Omit<F, keyof Made>, inputs: readonly Input[]): F {
  INPUTS.set(figure, inputs);
  return figure;
}

/** The figures and records that a figure was made from. @throws RangeError for what was put together by hand. */
export function inputsOf(figure: Figure): readonly Input[] {
  const inputs = INPUTS.get(figure);
  if (inputs === undefined) throw new RangeError("A figure put together by hand is none");
  return inputs;
}

/** A figure that was made before and kept, made from what it was made from then. */
export function keptFigure(figure: object, inputs: readonly Input[]): void {
  INPUTS.set(figure, inputs);
}

export function isKnown<V extends Amount>(figure: Figure<V>): figure is Known<V> {
  return figure.standing !== "not stated";
}

/** For whoever takes a value or none. */
export function knownValue<V extends Amount>(figure: Figure<V> | undefined): V | undefined {
  return figure !== undefined && isKnown(figure) ? figure.value : undefined;
}

/** Whether a value found in a sheet is a figure: the one test that the walk over a sheet makes. */
export function isFigure(value: unknown): value is Figure {
  return typeof value === "object" && value !== null && INPUTS.has(value);
}

/** What a figure carries beside its value. */
export interface FigureDetails {
  readonly unit: string;
  readonly method: string;
  readonly source?: SourceKey | undefined;
  readonly uncertainty?: number | undefined;
  readonly reaches?: readonly string[] | undefined;
  /** What it was made from. */
  readonly inputs: readonly Input[];
}

/** A figure that something outside the calculation vouches for: a reading, a supplier, a rule. */
export function sourceFigure<V extends Amount>(
  standing: RootStanding,
  value: V,
  details: FigureDetails,
): Known<V> {
  return knownFigure(standing, value, details, standing);
}

/**
 * A figure that sums, tables or a fit gave rather than arithmetic on figures: it rests on
 * the weakest of what it was made from.
 */
export function computedFigure<V extends Amount>(
  standing: Standing,
  value: V,
  details: FigureDetails,
): Known<V> {
  const restsOn = standing === "derived" ? weakestIn(details.inputs) : standing;
  return knownFigure(standing, value, details, restsOn);
}

/** Of lists of inputs: all coordinates of a colour are made from one, which may name hundreds. */
const WEAKEST = new WeakMap<readonly Input[], Standing>();

function weakestIn(inputs: readonly Input[]): Standing {
  const weakest =
    WEAKEST.get(inputs) ??
    weakestRoot(
      inputs.flatMap((input) => (isFigure(input) && isKnown(input) ? [input.restsOn] : [])),
    );
  WEAKEST.set(inputs, weakest);
  return weakest;
}

/** The same figure where it stands for something else too: the oil absorption of a pigment as that of a paint of it alone. */
export function restated<V extends Amount>(figure: Figure<V>): Figure<V> {
  return made({ ...figure }, inputsOf(figure));
}

/** Without its uncertainty: money is said to the smallest coin. */
export function exactly<V extends Amount>(figure: Figure<V>): Figure<V> {
  if (!isKnown(figure)) return figure;
  const { standing, value, unit, method, source, restsOn } = figure;
  return knownFigure(standing, value, { unit, method, source, inputs: inputsOf(figure) }, restsOn);
}

/** Known only as a bound: of an estimate the end that is sure, of a figure with an uncertainty that figure, which may be off by as much. */
export function bounded(figure: Figure<Quantity>, bound: Bound | undefined): Figure<Quantity> {
  if (!isKnown(figure) || bound === undefined) return figure;
  const { uncertainty, value, ...rest } = figure;
  const [lower, upper] = ends(value);
  return made<Known<Quantity>>(
    {
      ...rest,
      value: bound === "at least" ? lower : upper,
      bound,
      ...(uncertainty === undefined || lower < upper ? {} : { uncertainty }),
    },
    inputsOf(figure),
  );
}

/** Taken over from another figure, which it names as its input: a trial in the place of an estimate. */
export function takenFrom<V extends Amount>(figure: Figure<V>, method?: string): Figure<V> {
  return isKnown(figure)
    ? made<Known<V>>({ ...figure, method: method ?? figure.method }, [figure])
    : figure;
}

/** The same with two ends, alike where it is one number. */
export function asInterval(figure: Figure<Quantity>): Figure<Interval> {
  return isKnown(figure)
    ? made<Known<Interval>>({ ...figure, value: ends(figure.value) }, inputsOf(figure))
    : figure;
}

/** The plain admission that nothing is known, with what would be needed. */
export function notStated(
  reason: string,
  wanting: readonly FigurePath[] = [],
  inputs: readonly Input[] = [],
): NotStated {
  return made<NotStated>({ standing: "not stated", reason, wanting }, inputs);
}

/** Weakest last: a chain is as good as its weakest root. */
const FIRMNESS: readonly Standing[] = ["measured", "stated", "estimated"];

/** The weakest root among standings; `measured` for none. */
export function weakestRoot<S extends Standing>(roots: readonly S[]): S | "measured" {
  return roots.reduce<S | "measured">(
    (weakest, root) => (FIRMNESS.indexOf(root) > FIRMNESS.indexOf(weakest) ? root : weakest),
    "measured",
  );
}

/** Of the sciences' results and {@link FigureDetails} one figure, with what it rests on. */
export function knownFigure<V extends Amount>(
  standing: Standing,
  value: V,
  { unit, method, source, uncertainty, reaches = [], inputs }: FigureDetails,
  restsOn: Standing,
): Known<V> {
  return made<Known<V>>(
    {
      standing,
      value,
      unit,
      method,
      ...(source !== undefined && { source }),
      ...(uncertainty !== undefined && { uncertainty }),
      ...(reaches.length >= 2 && { reaches }),
      restsOn,
    },
    inputs,
  );
}
