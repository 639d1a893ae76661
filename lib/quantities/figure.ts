import type { SourceKey } from "../sources/source.ts";
import type { Interval } from "./interval.ts";

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

export type Amount = number | Interval | string | readonly number[];

export interface Known<V extends Amount> {
  readonly standing: Standing;
  readonly value: V;
  /** Symbol of the unit, "1" for a plain number, "" for a word. */
  readonly unit: string;
  readonly method: string;
  readonly inputs: readonly FigurePath[];
  readonly source?: SourceKey;
  /** Standard uncertainty, in the unit of the value. */
  readonly uncertainty?: number;
  /** The weakest root the figure rests on; its own standing when it is a root. */
  readonly restsOn: Standing;
}

export interface NotStated {
  readonly standing: "not stated";
  readonly reason: string;
  /** Figures or record fields that would be needed. */
  readonly wanting: readonly FigurePath[];
}

/** Value, unit, standing, method, inputs and source as one thing, so that evidence cannot drift from the number. */
export type Figure<V extends Amount = Amount> = Known<V> | NotStated;

/** A figure with its place, as an input to another. */
export interface FigureRef<V extends Amount = Amount> {
  readonly path: FigurePath;
  readonly figure: Figure<V>;
}

export function isKnown<V extends Amount>(figure: Figure<V>): figure is Known<V> {
  return figure.standing !== "not stated";
}

/** Whether a value found in a sheet is a figure: the one test that the walk over a sheet makes. */
export function isFigure(value: unknown): value is Figure {
  if (typeof value !== "object" || value === null || !("standing" in value)) return false;
  return "restsOn" in value || "wanting" in value;
}

/** What a root figure carries beside its value. */
export interface RootDetails {
  readonly unit: string;
  readonly method: string;
  readonly source?: SourceKey | undefined;
  readonly uncertainty?: number | undefined;
  readonly inputs?: readonly FigurePath[] | undefined;
}

/** A figure that something outside the calculation vouches for: a reading, a supplier, a rule. */
export function sourceFigure<V extends Amount>(
  standing: RootStanding,
  value: V,
  details: RootDetails,
): Known<V> {
  return {
    standing,
    value,
    unit: details.unit,
    method: details.method,
    inputs: details.inputs ?? [],
    ...(details.source === undefined ? {} : { source: details.source }),
    ...(details.uncertainty === undefined ? {} : { uncertainty: details.uncertainty }),
    restsOn: standing,
  };
}

/** The plain admission that nothing is known, with what would be needed. */
export function notStated(reason: string, wanting: readonly FigurePath[] = []): NotStated {
  return { standing: "not stated", reason, wanting };
}
