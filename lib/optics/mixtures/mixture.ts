/**
 * Mixtures of colours that were let down in one and the same white: only there are
 * their K and S in one unit (the white's own S, per unit of mass ratio), and add.
 *
 * @source duncan-1940
 */
import { requirePositive } from "../../quantities/positive.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { NotReached } from "../tints/equal-lightness.ts";
import type { UnlikeReadings } from "../unlike-readings.ts";
import { sameGrid, type Spectrum } from "../../quantities/spectrum.ts";
import type { LadderModel } from "../tints/ladder.ts";
import { masstoneReflectance } from "../kubelka-munk.ts";
import {
  predictionUncertainty,
  withOwn,
  type Doubts,
  type PredictionUncertainty,
} from "../fit/prediction-uncertainty.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import {
  keptWithin,
  plainReadings,
  readingsRange,
  tintReadings,
  type ReadingsRange,
} from "../tints/tint-model.ts";
import { readingOf } from "../tints/tint-reading.ts";
import { at } from "../../quantities/at.ts";
import { median } from "../../quantities/median.ts";

/** A colour in a mixture, by its ladder in the common white, and its part by mass of the kind that was weighed. */
export interface MassPart {
  readonly ladder: LadderModel;
  readonly parts: number;
}

/** Colours that mix: parts brought to a sum of 1. */
export interface Mixture {
  readonly parts: readonly MassPart[];
  /** What the drawdowns of its colours and their white read: no mixture of them reads beyond. */
  readonly readings: ReadingsRange;
}

/** A mixture, or a let-down of it, as its components predict it. */
export interface MixedTint {
  /** Mixture to white by mass [1]; Infinity for the mixture itself. */
  readonly massRatio: number;
  readonly spectrum: Spectrum;
  /** D65/10. */
  readonly lab: Lab;
  /** How far the nearest drawdown of a component is, Delta-E00, and what widens the law by it. */
  readonly nearestDeltaE00: number;
  readonly doubts: Doubts;
  /** What a standard error of each K, S and part moves, Delta-E00. */
  readonly ownDeltaE00: number;
  readonly uncertainty: PredictionUncertainty;
}

/**
 * Colours made ready to be mixed by mass.
 * @param parts by mass of paint where paint was weighed, of pigment where pigment was, each >= 0.
 * @returns the mixture; rules `whites-differ`, `ratio-kinds-differ`, `geometries-differ`, `surfaces-differ`.
 * @throws RangeError when a part is negative or NaN, or all are 0, or the fits are not of one workshop's grid.
 * @source duncan-1940
 */
export function mixture(parts: readonly MassPart[]): Mixture | UnlikeReadings {
  const total = parts.reduce((sum, part) => sum + part.parts, 0);
  for (const { parts: share } of parts)
    if (!(share >= 0)) throw domainError("part by mass", share, "part >= 0");
  const [first] = parts;
  if (first === undefined || !(total > 0 && total < Infinity))
    throw domainError("sum of parts by mass", total, "0 < sum < Infinity");
  const { fit, white } = first.ladder;
  for (const { ladder: other } of parts) {
    if (other.white.slug !== white.slug)
      return { rule: "whites-differ", values: { sample: other.white.slug, reference: white.slug } };
    if (other.white.ratioKind !== white.ratioKind)
      return {
        rule: "ratio-kinds-differ",
        values: { sample: other.white.ratioKind, reference: white.ratioKind },
      };
    if (!sameGrid(other.fit.grid, fit.grid))
      throw new RangeError("The fits of a mixture are of several grids; right would be one");
    if (other.fit.geometry !== fit.geometry)
      return {
        rule: "geometries-differ",
        values: { sample: other.fit.geometry, reference: fit.geometry },
      };
    const [one, against] = [other.fit.surface.surface, fit.surface.surface];
    if (one.k1 !== against.k1 || one.k2 !== against.k2 || one.index !== against.index)
      return { rule: "surfaces-differ", values: {} };
  }
  const ranges = parts.flatMap(({ ladder: { model }, parts: share }) =>
    share > 0 ? [model.readings.least, model.readings.most] : [],
  );
  return {
    parts: parts.map(({ ladder, parts: share }) => ({ ladder, parts: share / total })),
    readings: readingsRange(ranges),
  };
}

/**
 * Parts by mass from parts by volume.
 * @param densities [g/cm3], of what was weighed, one a part, > 0.
 * @throws RangeError when a density is not positive, or their count is not that of the parts.
 */
export function massParts(volumeParts: readonly number[], densities: readonly number[]): number[] {
  if (volumeParts.length !== densities.length)
    throw domainError("count of densities", densities.length, `${volumeParts.length}, one a part`);
  return volumeParts.map((parts, i) => {
    const density = at(densities, i);
    requirePositive("density", density, "g/cm3");
    return parts * density;
  });
}

/**
 * Parts of component paints by mass that bring parts of dry pigment, and the mass of
 * them that one of the mixture's own paint stands for: 1 where the oil is alike.
 * @param pigmentFractions pigment by mass in each component's paint [1], and `ownFraction` in the mixture's, 0 < f <= 1.
 * @throws RangeError when a fraction is outside its domain or NaN, or the counts differ.
 */
export function paintParts(
  pigmentParts: readonly number[],
  pigmentFractions: readonly number[],
  ownFraction: number,
): { readonly parts: number[]; readonly massScale: number } {
  if (pigmentParts.length !== pigmentFractions.length)
    throw domainError(
      "count of mass fractions",
      pigmentFractions.length,
      `${pigmentParts.length}, one a part`,
    );
  for (const fraction of [...pigmentFractions, ownFraction])
    if (!(fraction > 0 && fraction <= 1))
      throw domainError("mass fraction of pigment", fraction, "0 < fraction <= 1");
  const parts = pigmentParts.map((part, i) => part / at(pigmentFractions, i));
  const sum = (values: readonly number[]): number =>
    values.reduce((total, value) => total + value, 0);
  return { parts, massScale: (sum(parts) * ownFraction) / sum(pigmentParts) };
}

/** K and S of a component by wavelength, and its share by mass [1]. */
interface Component extends Pick<LadderModel["white"], "K" | "S"> {
  readonly SAlone: LadderModel["white"]["SAlone"] | undefined;
  readonly share: number;
}

/** What is left of each component's strength [1], and factors on K and S that an uncertainty tries. */
interface Change {
  readonly left?: readonly number[] | undefined;
  readonly K?: readonly number[] | undefined;
  readonly S?: readonly number[] | undefined;
}

/**
 * A mixture let down in its white, as its components predict it.
 *
 *     K = Sum c_i K_i, S = Sum c_i S_i, theta = (Kw + r K)/(1 + r S)
 *
 * The miss of each component's own model goes along by its share of K + S, so that a
 * colour mixed with itself is that colour.
 *
 * @param massRatio r, mixture to white by mass [1], > 0; Infinity for the mixture itself.
 * @param left what is left of each component's K and S [1], 0 <= left; all of it when absent.
 * @returns the tint; its uncertainty grows with the distance from the nearest drawdown of any component, and with
 *   how well K, S and the parts are known.
 * @throws RangeError when the ratio is not positive, or `left` is outside its domain.
 * @source duncan-1940, oil-paint-outs
 */
export function mixedTint(mixed: Mixture, massRatio: number, left?: readonly number[]): MixedTint {
  const spectrum = mixedSpectrum(mixed, massRatio, { left });
  const lab = spectrumLab(spectrum);
  const nearestDeltaE00 = nearestDrawdown(mixed, lab);
  const doubts = doubtsOf(mixed);
  const ownDeltaE00 = movedByErrors(mixed, massRatio, left, lab);
  return {
    massRatio,
    spectrum,
    lab,
    nearestDeltaE00,
    doubts,
    ownDeltaE00,
    uncertainty: withOwn(predictionUncertainty(nearestDeltaE00, doubts), ownDeltaE00),
  };
}

/** Lab (D65/10) of the same without its uncertainty, for a path of many steps. */
export function mixedLab(mixed: Mixture, massRatio: number, left?: readonly number[]): Lab {
  const { grid, values } = mixedSpectrum(mixed, massRatio, { left });
  return spectrumLab({ grid, values });
}

/** What the same reads, in the geometry of its colours' fits. */
export function mixedReading(mixed: Mixture, massRatio: number): Spectrum {
  return mixedSpectrum(mixed, massRatio, {});
}

function mixedSpectrum(
  { parts, readings }: Mixture,
  massRatio: number,
  { left, K: factorsK, S: factorsS }: Change,
): Spectrum {
  const [first] = parts;
  if (first === undefined) throw domainError("count of components", 0, "at least one");
  if (!(massRatio > 0)) throw domainError("mass ratio", massRatio, "0 < ratio <= Infinity");
  if (left !== undefined && left.length !== parts.length)
    throw domainError("count of strengths left", left.length, `${parts.length}, one a component`);
  for (const share of left ?? [])
    if (!(share >= 0 && share < Infinity))
      throw domainError("strength left", share, "0 <= strength < Infinity");
  const { grid } = first.ladder.fit;
  const { form, whiteRatio } = first.ladder.model;
  const misses = parts.map(({ ladder }) => {
    const [drawn, plain] = [
      tintReadings(ladder.model, massRatio),
      plainReadings(ladder.model, massRatio),
    ];
    return drawn.map((reading, i) =>
      Math.log(Math.max(reading, 1e-6) / Math.max(plain[i] ?? NaN, 1e-6)),
    );
  });
  const colourShare = massRatio === Infinity ? 1 : massRatio / (1 + massRatio);
  // Read once, and not at each wavelength: whoever hands a ladder out may note what is read of it.
  const components = parts.map(({ ladder: { white }, parts: share }): Component => {
    const { K, S, SAlone } = white;
    return { K, S, SAlone, share };
  });
  const values = new Array<number>(grid.count);
  const alone = new Float64Array(components.length);
  for (let i = 0; i < values.length; i++) {
    let K = 0;
    let S = 0;
    let miss = 0;
    let weight = 0;
    strengthsAlone(components, i, colourShare, alone);
    for (let j = 0; j < components.length; j++) {
      const own = at(components, j);
      const amount = own.share * (left?.[j] ?? 1) * (alone[j] ?? NaN);
      const k = amount * (own.K[i] ?? NaN) * (factorsK?.[j] ?? 1);
      const s = amount * (own.S[i] ?? NaN) * (factorsS?.[j] ?? 1);
      K += k;
      S += s;
      miss += (k + s) * (misses[j]?.[i] ?? NaN);
      weight += k + s;
    }
    const theta =
      massRatio === Infinity ? K / S : (at(whiteRatio, i) + massRatio * K) / (1 + massRatio * S);
    values[i] =
      readingOf(form, masstoneReflectance(theta)) * Math.exp(weight > 0 ? miss / weight : 0);
  }
  return { grid, values: keptWithin(values, readings) };
}

/**
 * What K and S of each component are to be multiplied by where little white is in the mixture:
 * by its S alone against that of its let-downs, relative to the mixture's own mean, so that a
 * colour mixed with itself stays that colour.
 * @param alone is filled with them: asked at each wavelength of thousands of mixtures.
 */
function strengthsAlone(
  components: readonly Component[],
  i: number,
  colourShare: number,
  alone: Float64Array,
): void {
  let sum = 0;
  let total = 0;
  for (let j = 0; j < components.length; j++) {
    const { K, S, SAlone, share } = at(components, j);
    const change = ((SAlone?.[i] ?? S[i] ?? NaN) / (S[i] ?? NaN)) ** colourShare;
    const weight = share * ((K[i] ?? NaN) + (S[i] ?? NaN));
    alone[j] = change;
    sum += weight * change;
    total += weight;
  }
  for (let j = 0; j < alone.length; j++) alone[j] = ((alone[j] ?? NaN) * total) / sum;
}

/** What a standard error of each K, S and part moves, in quadrature, Delta-E00. */
function movedByErrors(
  mixed: Mixture,
  massRatio: number,
  left: readonly number[] | undefined,
  lab: Lab,
): number {
  const count = mixed.parts.length;
  const one = (j: number, factor: number): number[] =>
    Array.from({ length: count }, (_, i) => (i === j ? factor : 1));
  const moved = (change: Change): number => {
    const { grid, values } = mixedSpectrum(mixed, massRatio, { left, ...change });
    return deltaE00(lab, spectrumLab({ grid, values }));
  };
  // An error of K or S is mostly one of scale, alike at every wavelength.
  const squares = mixed.parts.map(({ ladder: { white }, parts: share }, j) => {
    if (share === 0) return 0;
    const [k, s] = [median(white.KUncertainty), median(white.SUncertainty)];
    // Weighing errs on one component against the others: of one alone only the ratio to the white.
    const weighed = 1 + DRAWDOWN_NOISE.massRatio;
    return (
      moved({ K: one(j, 1 + k) }) ** 2 +
      moved({ S: one(j, 1 + s) }) ** 2 +
      moved({ K: one(j, weighed), S: one(j, weighed) }) ** 2
    );
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
}

function nearestDrawdown({ parts }: Mixture, lab: Lab): number {
  return Math.min(
    ...parts
      .filter(({ parts: share }) => share > 0)
      .flatMap(({ ladder }) =>
        [ladder.fit.masstone, ...ladder.used].map((drawdown) => deltaE00(drawdown.lab, lab)),
      ),
  );
}

/** The greatest of its components' doubts. */
function doubtsOf({ parts }: Mixture): Doubts {
  const used = parts.filter(({ parts: share }) => share > 0).map(({ ladder }) => ladder.doubts);
  const experiences = used.flatMap(({ experience }) => experience ?? []);
  return {
    hasFilms: used.every(({ hasFilms }) => hasFilms === true),
    ...(experiences.length > 0 && {
      experience: experiences.reduce((one, other) => (other.p68 > one.p68 ? other : one)),
    }),
    ownMiss: Math.max(...used.map(({ ownMiss = 0 }) => ownMiss)),
    letDownNoise: Math.max(...used.map((doubts) => doubts.letDownNoise ?? 0)),
    masstoneContrast: Math.min(...used.map(({ masstoneContrast = 1 }) => masstoneContrast)),
    isMixture: used.length > 1,
  };
}

/** L* [1] within which a lightness is met. */
const MET = 0.005;

/**
 * The ratio at which a mixture has an L*: between its masstone and the palest it is asked for.
 * @param L L* (D65/10) [1], 0 < L < 100.
 * @returns mixture to white by mass [1]; rule `ladder-does-not-reach`.
 * @throws RangeError when L is outside its domain, or NaN.
 */
export function mixedRatioAt(mixed: Mixture, L: number): number | NotReached {
  if (!(L > 0 && L < 100)) throw domainError("lightness L*", L, "0 < L* < 100");
  let [low, high] = [Math.log(1e-5), Math.log(1e5)];
  const [palest, darkest] = [mixedLab(mixed, Math.exp(low)).L, mixedLab(mixed, Math.exp(high)).L];
  if (!(palest >= L && darkest <= L))
    return { rule: "ladder-does-not-reach", values: { L, palest, darkest } };
  for (let step = 0; step < 60; step++) {
    const between = (low + high) / 2;
    const at = mixedLab(mixed, Math.exp(between)).L - L;
    if (Math.abs(at) < MET) return Math.exp(between);
    if (at > 0) low = between;
    else high = between;
  }
  return Math.exp((low + high) / 2);
}

/** A grey of a pair: how much of the first, and where its tint at the L* asked for lies. */
export interface PairGrey {
  /** Share of the first by mass [1]. */
  readonly share: number;
  readonly lab: Lab;
}

/**
 * Tints of a pair at one L*, from all of the second to all of the first.
 * @param steps how many steps, >= 2.
 * @returns the greys in order of share, those that no ratio brings to that L* left away; rules of {@link mixture}.
 * @throws RangeError when L or the count is outside its domain.
 */
export function pairGreys(
  first: LadderModel,
  second: LadderModel,
  L: number,
  steps: number,
): PairGrey[] | UnlikeReadings {
  if (!(Number.isInteger(steps) && steps >= 2))
    throw domainError("count of steps", steps, "a whole number >= 2");
  const greys: PairGrey[] = [];
  for (let i = 0; i <= steps; i++) {
    const share = i / steps;
    const mixed = mixture([
      { ladder: first, parts: share },
      { ladder: second, parts: 1 - share },
    ]);
    if ("rule" in mixed) return mixed;
    const ratio = mixedRatioAt(mixed, L);
    if (typeof ratio === "number") greys.push({ share, lab: mixedLab(mixed, ratio) });
  }
  return greys;
}
