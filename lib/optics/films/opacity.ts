/**
 * Opacity class of a film: of a light paint by its contrast ratio, of a dark one by how much
 * light it scatters, since a dark film over black and over white reads alike by what it absorbs.
 *
 * @source iso-6504-3 for where the contrast ratio stops to tell; optics-practice for the classes.
 */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { Bound } from "../../quantities/figure.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { StatementOf } from "../../quantities/statement.ts";

/** Y [1] of a film over white, gloss excluded, up to which its contrast ratio gives no class. @source iso-6504-3 */
export const CONTRAST_RATIO_FROM_Y = 0.25;

/** Thickness [um] of the dried film that the classes are meant for, and how far [1] another may differ. */
export const OPACITY_FILM = { um: 75, tolerance: 0.2 } as const;

/**
 * Most opaque first; each row holds from its own limits up. The workshop's own reading of
 * common practice: no standard sets these words for artists' paint.
 *
 * `contrastRatioMin` is for light films. `scatteringPowerMin` is S X of a dark film: without
 * absorption the film would itself throw back S X / (1 + S X) of the light, here .90, .85 and .75.
 * @source optics-practice
 */
export const OPACITY_CLASSES = [
  { class: "opaque", contrastRatioMin: 0.98, scatteringPowerMin: 9 },
  { class: "semi-opaque", contrastRatioMin: 0.9, scatteringPowerMin: 17 / 3 },
  { class: "semi-transparent", contrastRatioMin: 0.6, scatteringPowerMin: 3 },
  { class: "transparent", contrastRatioMin: 0, scatteringPowerMin: 0 },
] as const;
export type OpacityClass = (typeof OPACITY_CLASSES)[number]["class"];

/** 1 opaque to 4 transparent; 0 of what is no class. */
export function opacityRank(word: string): number {
  return OPACITY_CLASSES.findIndex((row) => row.class === word) + 1;
}

/** From what scattering power S X [1] on a dark film is of a class, or below what it is of the last. */
export function scatteringPowerLimit(word: OpacityClass): {
  readonly from?: number;
  readonly below?: number;
} {
  const i = OPACITY_CLASSES.findIndex((row) => row.class === word);
  const [own, above] = [OPACITY_CLASSES[i], OPACITY_CLASSES[i - 1]];
  return own !== undefined && own.scatteringPowerMin > 0
    ? { from: own.scatteringPowerMin }
    : { below: above?.scatteringPowerMin ?? 0 };
}

export interface OpaqueFilm {
  /** Thickness [um] of the dried film, > 0. */
  readonly filmUm: number;
  /** Y [1] over white or of the masstone, gloss excluded, 0-4: above 1 of what fluoresces. */
  readonly luminance: number;
  /** Y over black to Y over white [1], 0-1.05; undefined where no film was drawn over both. */
  readonly contrastRatio: number | undefined;
  /** Standard uncertainty of the contrast ratio [1], >= 0. */
  readonly contrastUncertainty?: number | undefined;
  /** Where the contrast ratio is only what the true one does not pass. */
  readonly bound?: Bound | undefined;
  /** Range of S X [1], > 0; undefined where neither films nor let-downs tell it. */
  readonly scatteringPower: Interval | undefined;
}

export type OpacityStatement =
  | StatementOf<
      "opacity-by-contrast-ratio",
      {
        class: OpacityClass;
        contrastRatio: number;
        contrastRatioMin: number;
        /** Classes that it reaches into with its uncertainty, most transparent first. */
        spans: readonly OpacityClass[];
        filmUm: number;
        bound?: Bound;
      }
    >
  | StatementOf<
      "opacity-by-scattering",
      {
        class: OpacityClass;
        scatteringPower: Interval;
        /** Classes that the range reaches into beside what the ground as read leaves, most transparent first. */
        spans: readonly OpacityClass[];
        filmUm: number;
        luminance: number;
        /** Where the ground as read moved the class: what scattering alone would give, and the contrast ratio. */
        byScattering?: OpacityClass;
        contrastRatio?: number;
      }
    >
  | StatementOf<"too-dark-for-contrast-ratio", { contrastRatio: number; luminance: number }>
  | StatementOf<"film-not-comparable", { filmUm: number; wantedUm: number }>;

export interface OpacityRuling {
  /** Undefined where nothing gives a class. */
  readonly class: OpacityClass | undefined;
  /** Every class that what decides it reaches into, most transparent first. */
  readonly spans: readonly OpacityClass[];
  readonly reason: OpacityStatement | undefined;
}

/**
 * Opacity class of a film.
 *
 * @returns the class by contrast ratio from Y .25 up, below it by the geometric middle of the range
 *   of S X, but never more opaque than a contrast ratio that was read, which darkness only raises, and never
 *   semi-opaque where the film hides its ground; no class for a dark film whose S X is not told, or a film far from the wanted one.
 * @throws RangeError when a field is outside its domain, or NaN.
 */
export function opacityRuling(film: OpaqueFilm): OpacityRuling {
  requireFilm(film);
  const {
    filmUm,
    luminance,
    contrastRatio,
    contrastUncertainty = 0,
    bound,
    scatteringPower,
  } = film;
  if (Math.abs(filmUm / OPACITY_FILM.um - 1) > OPACITY_FILM.tolerance)
    return none({
      rule: "film-not-comparable",
      values: { filmUm, wantedUm: OPACITY_FILM.um },
      source: "optics-practice",
    });
  if (luminance > CONTRAST_RATIO_FROM_Y) {
    if (contrastRatio === undefined) return none();
    const row = rowFrom("contrastRatioMin", contrastRatio);
    const spans = classesWithin(
      [contrastRatio - contrastUncertainty, contrastRatio + contrastUncertainty],
      (ratio) => rowFrom("contrastRatioMin", ratio).class,
    );
    return {
      class: row.class,
      spans,
      reason: {
        rule: "opacity-by-contrast-ratio",
        values: {
          class: row.class,
          contrastRatio,
          contrastRatioMin: row.contrastRatioMin,
          spans,
          filmUm,
          ...(bound !== undefined && { bound }),
        },
        source: "optics-practice",
      },
    };
  }
  if (scatteringPower === undefined)
    return contrastRatio === undefined
      ? none()
      : none({
          rule: "too-dark-for-contrast-ratio",
          values: { contrastRatio, luminance },
          source: "iso-6504-3",
        });
  const [least, most] = scatteringPower;
  const byScattering = rowFrom("scatteringPowerMin", Math.sqrt(least * most)).class;
  // A film that hid its ground leaves of a thinner one only the least contrast ratio, which caps no class.
  const shown = bound === "at least" ? undefined : contrastRatio;
  const word = besideGround(byScattering, shown, contrastRatio);
  const scattered = classesWithin(
    scatteringPower,
    (power) => rowFrom("scatteringPowerMin", power).class,
  );
  const spans = [
    ...new Set(
      scattered.map((one) => (one === byScattering ? word : asItsGroundShows(one, shown))),
    ),
  ];
  return {
    class: word,
    spans,
    reason: {
      rule: "opacity-by-scattering",
      values: {
        class: word,
        scatteringPower,
        spans,
        filmUm,
        luminance,
        ...(contrastRatio === undefined || word === byScattering
          ? {}
          : { byScattering, contrastRatio }),
      },
      source: "optics-practice",
    },
  };
}

/**
 * The class by scattering, moved to where the ground as read leaves it.
 * @param shown contrast ratio as read; undefined where only its least is told.
 * @param least contrast ratio as read, or its least.
 */
function besideGround(
  byScattering: OpacityClass,
  shown: number | undefined,
  least: number | undefined,
): OpacityClass {
  const word = asItsGroundShows(byScattering, shown);
  const hides = least !== undefined && rowFrom("contrastRatioMin", least).class === "opaque";
  return hides && word === "semi-opaque" ? "opaque" : word;
}

/** The class by scattering, or the more transparent one that the ground shows through as. */
function asItsGroundShows(
  byScattering: OpacityClass,
  contrastRatio: number | undefined,
): OpacityClass {
  if (contrastRatio === undefined) return byScattering;
  const byContrast = rowFrom("contrastRatioMin", contrastRatio).class;
  return opacityRank(byContrast) > opacityRank(byScattering) ? byContrast : byScattering;
}

function none(reason?: OpacityStatement): OpacityRuling {
  return { class: undefined, spans: [], reason };
}

/** Every class from that of one end of a range to that of the other, most transparent first. */
function classesWithin(
  [least, most]: Interval,
  classOf: (value: number) => OpacityClass,
): OpacityClass[] {
  const [first, last] = [opacityRank(classOf(least)), opacityRank(classOf(most))];
  return OPACITY_CLASSES.map((row) => row.class)
    .slice(last - 1, first)
    .toReversed();
}

function rowFrom(
  limit: "contrastRatioMin" | "scatteringPowerMin",
  value: number,
): (typeof OPACITY_CLASSES)[number] {
  return OPACITY_CLASSES.find((row) => value >= row[limit]) ?? OPACITY_CLASSES[3];
}

function requireFilm({
  filmUm,
  luminance,
  contrastRatio,
  contrastUncertainty = 0,
  scatteringPower,
}: OpaqueFilm): void {
  requirePositive("film thickness", filmUm, "um", "X");
  if (!(luminance >= 0 && luminance <= 4))
    throw domainError("luminous reflectance", luminance, "0 <= Y <= 4");
  if (contrastRatio !== undefined && !(contrastRatio >= 0 && contrastRatio <= 1.05))
    throw domainError("contrast ratio", contrastRatio, "0 <= ratio <= 1.05");
  if (!(contrastUncertainty >= 0 && contrastUncertainty < Infinity))
    throw domainError("uncertainty of the contrast ratio", contrastUncertainty, "0 <= u");
  for (const end of scatteringPower ?? [])
    if (!(end > 0 && end < Infinity)) throw domainError("scattering power S X", end, "0 < S X");
}
