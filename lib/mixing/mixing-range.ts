/** The paints of a range made ready to be mixed: fits unpacked when they are first asked for, once. */
import { readWhenAsked } from "../kept/reads.ts";
import { certain } from "../quantities/at.ts";
import type { PredictingFit } from "../optics/fit/colour-fit.ts";
import type { Measurement, SurfaceConstants } from "../optics/fit/measurement.ts";
import type { FilmCoefficients } from "../optics/films/film-coefficients.ts";
import { ladderInPaint } from "../optics/tints/ladder-in-paint.ts";
import { ladderModel, type LadderModel } from "../optics/tints/ladder.ts";
import { remembered } from "../quantities/remembered.ts";
import { isStatement } from "../quantities/statement.ts";
import { FIT_FORMAT, unpackedFit } from "./fits/packed-fit.ts";
import { REFLECTANCE_STEPS, RELATIVE_STEPS, unpackedNumbers } from "./fits/packed-numbers.ts";
import type { MixStatement } from "./mix.ts";
import type { MixingData, MixingPaint, PackedReading } from "./mixing-paint.ts";

export interface MixingRange {
  readonly data: MixingData;
  readonly paint: (slug: string) => MixingPaint | undefined;
  /** A colour's ladder in a white, counted in paint where its share of pigment tells. */
  readonly ladder: (slug: string, white: string) => LadderModel | MixStatement;
  readonly fit: (slug: string) => PredictingFit | undefined;
  readonly masstone: (slug: string) => Measurement | undefined;
  readonly film: (slug: string) => FilmCoefficients | undefined;
  readonly grounds: { readonly black: Measurement; readonly white: Measurement } | undefined;
  /** Of the films that its fits were read from. */
  readonly surface: SurfaceConstants | undefined;
  /** Whites in which at least one colour was let down, those of most colours first. */
  readonly whites: readonly MixingPaint[];
}

/** @throws RangeError when the data were packed in another format. */
export function mixingRange(data: MixingData): MixingRange {
  if (data.format !== FIT_FORMAT)
    throw new RangeError(`The data are of format ${data.format}; right would be ${FIT_FORMAT}`);
  const paints = new Map(data.paints.map((paint) => [paint.slug, paint]));
  const fit = once((slug: string) => {
    const packed = paints.get(slug)?.fit;
    return packed && unpackedFit(packed);
  });
  const surface = data.paints.find((paint) => paint.fit !== undefined)?.fit?.surface.surface;
  return {
    data,
    paint: (slug) => paints.get(slug),
    fit,
    ladder: twice((slug, white) => ladderOf(slug, white, paints, fit)),
    masstone: once((slug: string) => {
      const packed = paints.get(slug)?.masstone;
      return packed && { ...measurement(packed), ...(surface !== undefined && { surface }) };
    }),
    surface,
    film: once((slug: string) => filmOf(paints.get(slug))),
    grounds:
      data.grounds === undefined
        ? undefined
        : { black: measurement(data.grounds.black), white: measurement(data.grounds.white) },
    whites: whitesOf(data, paints),
  };
}

function ladderOf(
  slug: string,
  white: string,
  paints: ReadonlyMap<string, MixingPaint>,
  fitOf: (slug: string) => PredictingFit | undefined,
): LadderModel | MixStatement {
  const paint = paints.get(slug);
  const name = paint?.name ?? slug;
  const fit = fitOf(slug);
  if (fit === undefined)
    return { rule: "paint-not-fitted", values: { paint: name, reason: paint?.refusal ?? "" } };
  const own = fit.whites.find((one) => one.slug === white);
  const whitePaint = paints.get(white);
  if (own === undefined)
    return {
      rule: "paint-not-let-down-in",
      values: { paint: name, white: whitePaint?.name ?? white },
    };
  const ladder = ladderModel(fit, white);
  if (own.ratioKind === "paint") return ladder;
  const lacking = [paint, whitePaint].find((one) => one?.pigmentMassFraction === undefined);
  return lacking === undefined
    ? ladderInPaint(
        ladder,
        certain(paint?.pigmentMassFraction),
        certain(whitePaint?.pigmentMassFraction),
      )
    : { rule: "pigment-share-not-recorded", values: { paint: lacking.name } };
}

function whitesOf(data: MixingData, paints: ReadonlyMap<string, MixingPaint>): MixingPaint[] {
  const counts = new Map<string, number>();
  for (const { fit } of data.paints)
    for (const { slug } of fit?.whites ?? []) counts.set(slug, (counts.get(slug) ?? 0) + 1);
  return [...counts]
    .toSorted(([, one], [, other]) => other - one)
    .flatMap(([slug]) => paints.get(slug) ?? []);
}

/** Of a paint that is not here its slug. */
export function paintName(slug: string, range: MixingRange): string {
  return range.paint(slug)?.name ?? slug;
}

/** Of those colours that were let down in a white, in their order. */
export function laddersIn(
  white: string,
  slugs: readonly string[],
  range: MixingRange,
): LadderModel[] {
  return slugs.flatMap((slug) => {
    const ladder = range.ladder(slug, white);
    return isStatement(ladder) ? [] : [ladder];
  });
}

/** Colours that mix with each other in a white: let down in it, and read alike with most of those that were. */
export const mixableColours = remembered(
  (range: MixingRange, white: string): readonly MixingPaint[] => {
    const ladders = range.data.paints.flatMap((paint) => {
      const ladder = range.ladder(paint.slug, white);
      return isStatement(ladder) ? [] : [{ paint, key: readAs(ladder) }];
    });
    const counts = new Map<string, number>();
    for (const { key } of ladders) counts.set(key, (counts.get(key) ?? 0) + 1);
    const [most] = [...counts].toSorted(([, one], [, other]) => other - one);
    return ladders.filter(({ key }) => key === most?.[0]).map(({ paint }) => paint);
  },
);

/** Geometry, surface, grid and kind of ratio: what two paints must have in common to be mixed. */
function readAs({ fit: { geometry, surface, grid }, white }: LadderModel): string {
  const { k1, k2 } = surface.surface;
  return [geometry, k1, k2, grid.startNm, grid.stepNm, grid.count, white.ratioKind].join(" ");
}

function measurement({ grid, geometry, values }: PackedReading): Measurement {
  return { spectrum: { grid, values: unpackedNumbers(values, REFLECTANCE_STEPS) }, geometry };
}

function filmOf(paint: MixingPaint | undefined): FilmCoefficients | undefined {
  if (paint?.film === undefined) return undefined;
  const { grid, K, S, surface, scaleUncertainty } = paint.film;
  const coefficients = (packed: readonly number[]): number[] =>
    unpackedNumbers(packed, RELATIVE_STEPS);
  return {
    grid,
    K: coefficients(K),
    S: coefficients(S),
    surface,
    scaleUncertainty,
    atLeast: [],
  };
}

/** Whoever is given what was made before has read what it was made from. */
function once<T>(compute: (key: string) => T): (key: string) => T {
  const known = new Map<string, () => T>();
  return (key) => {
    const own = known.get(key) ?? readWhenAsked(() => compute(key));
    known.set(key, own);
    return own();
  };
}

function twice<T>(compute: (one: string, other: string) => T): (one: string, other: string) => T {
  const known = once((one) => once((other) => compute(one, other)));
  return (one, other) => known(one)(other);
}
