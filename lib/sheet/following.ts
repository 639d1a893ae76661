import { at } from "../quantities/at.ts";
import { classifiedFigure, derivedFigure, type Method } from "../quantities/derived-figure.ts";
import { isKnown, notStated, type Figure, type FigurePath } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import { figureForm, type Declared, type PartsOf } from "./declaration.ts";

declare const FROM: unique symbol;

/** No word of any closed set. */
const UNTOLD = "";

/** A declared figure with how it follows from others of its section, whose keys are `From`. */
export type Following<D extends Declared, From extends string> = D & {
  readonly follows: (section: Readonly<Record<From, Figure<Quantity>>>) => Figure;
  readonly example: Example<From, number | string>;
  readonly [FROM]?: From;
};

/** Worked by hand, or as a source has it: from these values that comes out. `test/sheet/following.test.ts` holds it. */
export type Example<From extends string, V> = readonly [
  from: Readonly<Record<From, number>>,
  value: V,
];

/** How it follows; its unit is that of its declaration. */
type Way<From extends string, V> = Omit<Method, "unit"> & { readonly example: Example<From, V> };

/**
 * A number that follows from figures of its section, declared with how.
 * @param from keys of these in the section, each above it there.
 * @param compute plain arithmetic on their values, each in its own unit.
 */
export function following<D extends Declared<Figure<Quantity>>, const From extends string>(
  part: D,
  from: readonly From[],
  { example, ...way }: Way<From, number>,
  compute: (values: Readonly<Record<From, number>>) => number,
): Following<D, From> {
  const method: Method = { ...way, unit: figureForm(part).unit };
  return {
    ...part,
    example,
    follows: (section) => derivedFigure(method, inputsOf(section, from), compute),
  };
}

/** Why a range may tell no word, and which figures would. */
export interface Untold {
  readonly reason: string;
  readonly wanting: readonly FigurePath[];
}

/**
 * A word of a closed set that follows from figures of its section, as {@link following}; values may be ranges.
 * @param choose undefined where the values tell none, for which `untold` says why.
 */
export function wordFollowing<D extends Declared<Figure<string>>, const From extends string>(
  part: D,
  from: readonly From[],
  { example, untold, ...way }: Way<From, string> & { readonly untold?: Untold },
  choose: (values: Readonly<Record<From, Quantity>>) => string | undefined,
): Following<D, From> {
  const method: Method = { ...way, unit: figureForm(part).unit };
  return {
    ...part,
    example,
    follows: (section) => {
      const inputs: Readonly<Record<string, Figure<Quantity>>> = inputsOf(section, from);
      const figure = classifiedFigure<string, typeof inputs>(
        method,
        inputs,
        (values) => choose(values as Readonly<Record<From, Quantity>>) ?? UNTOLD,
      );
      return untold !== undefined && isKnown(figure) && figure.value === UNTOLD
        ? notStated(untold.reason, untold.wanting, Object.values(inputs))
        : figure;
    },
  };
}

function inputsOf<From extends string>(
  section: Readonly<Record<From, Figure<Quantity>>>,
  from: readonly From[],
): Readonly<Record<From, Figure<Quantity>>> {
  return Object.fromEntries(from.map((key) => [key, at(section, key)])) as Record<
    From,
    Figure<Quantity>
  >;
}

type Members = Readonly<Record<string, Declared>>;
type FollowingKeys<M> = {
  [K in keyof M]: M[K] extends { readonly follows: unknown } ? K : never;
}[keyof M];
type FromOf<M> = {
  [K in keyof M]: M[K] extends Following<Declared, infer From> ? From : never;
}[keyof M];

/** What a section is handed: all that does not follow from the rest. */
export type Given<M extends Members> = Omit<PartsOf<M>, FollowingKeys<M>>;

/**
 * The figures of a section in the order of their declaration, those that follow worked out from the rest.
 * Where one is declared to follow from what its section has not, that does not compile.
 */
export function withFollowing<const M extends Members>(
  members: FromOf<M> extends keyof M ? M : never,
  given: Given<M>,
): PartsOf<M> {
  const figures: Record<string, unknown> = {};
  for (const [key, part] of Object.entries<Declared>(members)) {
    figures[key] = isFollowing(part)
      ? part.follows(figures as Record<string, Figure<Quantity>>)
      : (given as Readonly<Record<string, unknown>>)[key];
  }
  return figures as PartsOf<M>;
}

function isFollowing(part: Declared): part is Following<Declared, string> {
  return "follows" in part;
}
