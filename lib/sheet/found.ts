/** How a declared figure is found, beside its declaration. */
import { at } from "../quantities/at.ts";
import {
  classifiedFigure,
  derivedFigure,
  type Inputs,
  type Method,
  type Values,
} from "../quantities/derived-figure.ts";
import { isKnown, notStated, type Figure, type FigurePath } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import {
  figureForm,
  type Declared,
  type Members,
  type PartsOf,
  type Section,
  type SectionOf,
} from "./declaration.ts";

/** Figures of a section by their keys, which another is found from. */
export type Amounts<K extends string> = Readonly<Record<K, Figure<Quantity>>>;

/** A declared part with how it is found: from what its section is handed, and from the other parts of the section. */
export type Found<D extends Declared, C> = D & {
  readonly found: (from: C) => unknown;
  readonly byHand?: ByHand;
};

/**
 * The figure on a sheet of the demonstration, as its records say it or as it is worked from them, to the
 * last digit that is written here; two ends of an estimate. `test/sheet/by-hand.test.ts` holds it.
 * @example ["lamp-black.oil.pigmentMassFraction", "100 / (100 + 99 + 0.396)", 0.501515]
 */
export type ByHand = readonly [
  fact: `${string}.${string}`,
  worked: string,
  value: number | readonly [number, number] | string,
];

/** An optional part may be found missing. */
type MayBe<D extends Declared> =
  SectionOf<D> | (D extends { readonly isOptional: true } ? undefined : never);

/**
 * A part found from whatever `how` asks for: records, tables, figures of other sections, and figures of
 * its own section by their keys. It is made from the figures and records that `how` hands on.
 */
export function found<D extends Declared, C>(
  part: D,
  how: (from: C) => MayBe<D>,
  byHand?: ByHand,
): Found<D, C> {
  return { ...part, found: how, ...(byHand !== undefined && { byHand }) };
}

/** A declared figure that follows from the values of others. */
export type Following<D extends Declared, C> = Found<D, C> & {
  readonly follows: (inputs: Inputs, from: C) => Figure;
  /** Absent where a test of its own holds it. */
  readonly example?: Example<string, number | string>;
};

/** Worked by hand, or as a source has it: from these values that comes out. `test/sheet/found.test.ts` holds it. */
export type Example<From extends string, V> = readonly [
  from: Readonly<Record<From, number>>,
  value: V,
];

/** How it follows; its unit is that of its declaration. */
type Way = Omit<Method, "unit">;
/** The same, named by what its section is handed. */
type WayOf<C> = Omit<Way, "name"> & {
  readonly name: string | ((from: C) => string);
  readonly byHand?: ByHand;
};

/**
 * A number that follows from figures of its own section, declared with how.
 * @param keys of these in the section.
 * @param compute plain arithmetic on their values, each in its own unit.
 */
export function following<D extends Declared<Figure<Quantity>>, const From extends string>(
  part: D,
  keys: readonly From[],
  way: Way & { readonly example: Example<From, number> },
  compute: (values: Readonly<Record<From, number>>) => number,
): Following<D, Amounts<From>> {
  return derived<D, Amounts<From>, Amounts<From>>(part, chosen(keys), way, compute);
}

/** The same from figures of any section, which `inputs` chooses and names; `compute` may ask for more of what its section is handed. */
export function derived<D extends Declared<Figure<Quantity>>, C, I extends Inputs>(
  part: D,
  inputs: (from: C) => I,
  {
    example,
    byHand,
    name,
    ...way
  }: WayOf<C> & { readonly example?: Example<keyof I & string, number> },
  compute: (values: Values<I>, from: C) => number,
): Following<D, C> {
  const { unit } = figureForm(part);
  const follows = (figures: Inputs, from: C): Figure =>
    derivedFigure(
      { ...way, unit, name: typeof name === "string" ? name : name(from) },
      figures as I,
      (values) => compute(values, from),
    );
  return {
    ...part,
    ...(example !== undefined && { example }),
    ...(byHand !== undefined && { byHand }),
    follows,
    found: (from) => follows(inputs(from), from),
  };
}

/** Why a range may tell no word, and which figures would. */
export interface Untold {
  readonly reason: string;
  readonly wanting: readonly FigurePath[];
}

/** No word of any closed set. */
const UNTOLD = "";

/**
 * A word of a closed set that follows from figures of its section, as {@link following}; values may be ranges.
 * @param choose undefined where the values tell none, for which `untold` says why.
 */
export function wordFollowing<D extends Declared<Figure<string>>, const From extends string>(
  part: D,
  keys: readonly From[],
  {
    example,
    untold,
    ...way
  }: Way & { readonly example: Example<From, string>; readonly untold?: Untold },
  choose: (values: Readonly<Record<From, Quantity>>) => string | undefined,
  reaching?: (values: Readonly<Record<From, Quantity>>) => readonly string[],
): Following<D, Amounts<From>> {
  const method: Method = { ...way, unit: figureForm(part).unit };
  const follows = (figures: Inputs): Figure => {
    const figure = classifiedFigure<string, Inputs>(
      method,
      figures,
      (values) => choose(values as Readonly<Record<From, Quantity>>) ?? UNTOLD,
      reaching && ((values) => reaching(values as Readonly<Record<From, Quantity>>)),
    );
    return untold !== undefined && isKnown(figure) && figure.value === UNTOLD
      ? notStated(untold.reason, untold.wanting, Object.values(figures))
      : figure;
  };
  return { ...part, example, follows, found: (from) => follows(chosen(keys)(from)) };
}

function chosen<From extends string>(
  keys: readonly From[],
): (section: Amounts<From>) => Amounts<From> {
  return (section) =>
    Object.fromEntries(keys.map((key) => [key, at(section, key)])) as Amounts<From>;
}

/** {@link found} and {@link derived} of a section whose parts are all found from the same. */
export interface FoundFrom<C> {
  readonly found: <D extends Declared>(
    part: D,
    how: (from: C) => MayBe<D>,
    byHand?: ByHand,
  ) => Found<D, C>;
  readonly derived: <D extends Declared<Figure<Quantity>>, I extends Inputs>(
    part: D,
    inputs: (from: C) => I,
    way: WayOf<C> & { readonly example?: Example<keyof I & string, number> },
    compute: (values: Values<I>, from: C) => number,
  ) => Following<D, C>;
}
export function foundFrom<C>(): FoundFrom<C> {
  return { found, derived };
}

type FoundKeys<M> = {
  [K in keyof M]: M[K] extends { readonly found: unknown } ? K : never;
}[keyof M];
/** All that the parts of a section ask for at once. */
type AskedBy<M> = {
  [K in keyof M]: M[K] extends Found<Declared, infer C> ? (from: C) => void : never;
}[keyof M] extends (from: infer All) => void
  ? All
  : never;

type OrUndefined<T> = {
  readonly [K in keyof T]: T[K] | (undefined extends T[K] ? undefined : never);
};

/**
 * What a section is handed: what its parts are found from and are not themselves, and the parts of which
 * the declaration does not say how they are found; an optional one may be undefined.
 */
export type Given<M extends Members> = Omit<AskedBy<M>, keyof M> &
  OrUndefined<PartsOf<Omit<M, FoundKeys<M>>>>;

/**
 * A section with each part that says how it is found worked out, whichever of them is declared first.
 * Where one is found from what its section has not, or is not handed, that does not compile.
 * @throws RangeError for a part that is found from itself.
 */
export function filled<const M extends Members>(
  { shape: { members } }: Section<M>,
  given: Given<M>,
): PartsOf<M> {
  const from: Record<string, unknown> = { ...given };
  const parts = Object.entries<Declared>(members);
  for (const [key, part] of parts) {
    if (!isFound(part)) continue;
    const settle = (get: () => unknown): unknown =>
      Object.defineProperty(from, key, { get, configurable: true, enumerable: true });
    settle(() => {
      settle(() => foundFromItself(key));
      const value = part.found(from as never);
      settle(() => value);
      return value;
    });
  }
  return Object.fromEntries(
    parts.flatMap(([key, { isOptional }]) =>
      from[key] === undefined && isOptional ? [] : [[key, from[key]]],
    ),
  ) as PartsOf<M>;
}

function foundFromItself(key: string): never {
  throw new RangeError(`${key} is found from itself`);
}

function isFound(part: Declared): part is Found<Declared, never> {
  return "found" in part;
}
