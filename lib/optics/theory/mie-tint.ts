/** What theory alone says of a black in whites, at equal L*: an explanation, and never a colour's own figure. */
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { certain } from "../../quantities/at.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import { masstoneReflectance } from "../kubelka-munk.ts";
import { particleRuns, PARTICLE_GRID, type ParticleRun } from "./particle-runs.ts";
import type { ParticleModel } from "./particle-model.ts";
import { OIL_SURFACE, surfaceForm } from "../surface/surface.ts";
import { readingOf } from "../tints/tint-reading.ts";

/** L* (D65/10) at which the runs are taken. */
const THEORY_LIGHTNESSES = [70, 60, 50] as const;
export type TheoryLightness = (typeof THEORY_LIGHTNESSES)[number];

/** Share of runs that a band holds: from the 10th to the 90th in a hundred. */
const BAND = [0.1, 0.9] as const;

/** A quantity over the runs: the band that holds four runs in five, and the middle one. */
export interface Band {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** A black's tint in a white at one L*: a* and b* of each run, in the order of the runs. */
export interface TheoryTint {
  readonly white: string;
  readonly L: TheoryLightness;
  readonly aRuns: readonly number[];
  readonly bRuns: readonly number[];
  readonly a: Band;
  readonly b: Band;
}

/** What theory says of one black. */
export interface TheoryTints {
  readonly black: string;
  readonly tints: readonly TheoryTint[];
}

const SURFACE = surfaceForm("d/8 excluded", OIL_SURFACE);
const GRID: WavelengthGrid = PARTICLE_GRID;
/** L* [1] within which a lightness is met. */
const MET = 0.01;
const STEPS_MAX = 60;

/**
 * Tints of a black in whites at equal L*, over the unknowns of both.
 *
 * Read gloss excluded, through the surface of an oil film; the whites absorb nothing.
 *
 * @param whites runs by slug: made once by particleRuns and shared by every black.
 * @returns one member for each white and L*.
 * @validity shapes and crowding of particles are left out: only differences between whites are of use.
 * @source gate-1974, kubelka-munk-1931
 */
export function firstPrinciplesTints(
  black: ParticleModel,
  whites: ReadonlyMap<string, readonly ParticleRun[]>,
): TheoryTints {
  const [firstWhite] = whites.values();
  const runs = particleRuns(black, "black", firstWhite?.length);
  const tints = [...whites].flatMap(([white, ofWhite]) =>
    THEORY_LIGHTNESSES.map((L): TheoryTint => {
      const labs = runs.map((run, i) => {
        const other = ofWhite[i];
        if (other === undefined) throw new Error("The whites have unlike counts of runs");
        return theoryTintAt(run, other, L);
      });
      const [aRuns, bRuns] = [labs.map(({ a }) => a), labs.map(({ b }) => b)];
      return { white, L, aRuns, bRuns, a: band(aRuns), b: band(bRuns) };
    }),
  );
  return { black: black.slug, tints };
}

/**
 * A black let down in a white until it has an L*, as read gloss excluded from an oil film.
 *
 *     theta = (Kw + c Kb)/(Sw + c Sb)
 *
 * @param black, white K and S on 400-700 nm by 20 nm, in the same unit.
 * @param L L* (D65/10) [1], 0 < L < 100.
 * @throws RangeError when L is outside its domain, or no let-down of this black has it.
 */
export function theoryTintAt(black: ParticleRun, white: ParticleRun, L: number): Lab {
  if (!(L > 0 && L < 100)) throw domainError("lightness L*", L, "0 < L* < 100");
  const at = (logShare: number): Lab => {
    const c = Math.exp(logShare);
    return spectrumLab({
      grid: GRID,
      values: white.S.map((S, i) =>
        readingOf(
          SURFACE,
          masstoneReflectance(
            (certain(white.K[i]) + c * certain(black.K[i])) / (S + c * certain(black.S[i])),
          ),
        ),
      ),
    });
  };
  // From where black and white weigh alike, out to both sides.
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const middle = Math.log(mean(white.S) / mean(black.K));
  let [low, high] = [middle - 12, middle + 8];
  let [atLow, atHigh] = [at(low).L - L, at(high).L - L];
  if (!(atLow >= 0 && atHigh <= 0))
    throw domainError(
      "lightness L*",
      L,
      `${(atHigh + L).toFixed(1)} <= L* <= ${(atLow + L).toFixed(1)}, what let-downs of this black reach`,
    );
  let lab = at(high);
  for (let step = 0; step < STEPS_MAX; step++) {
    // Illinois: a false position whose stale end is halved.
    const between = (low * atHigh - high * atLow) / (atHigh - atLow);
    lab = at(between);
    const miss = lab.L - L;
    if (Math.abs(miss) < MET) break;
    if (miss * atHigh < 0) [low, atLow] = [high, atHigh];
    else atLow /= 2;
    [high, atHigh] = [between, miss];
  }
  return lab;
}

/** The band of a quantity over runs. @throws RangeError when there are none, or one is NaN. */
export function band(values: readonly number[]): Band {
  const sorted = values.toSorted((one, other) => one - other);
  if (!(sorted.length > 0 && sorted.every(Number.isFinite)))
    throw domainError("count of runs", sorted.length, "at least one, each a finite number");
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const [lower, upper] = [certain(sorted[Math.floor(place)]), certain(sorted[Math.ceil(place)])];
    return lower + (place - Math.floor(place)) * (upper - lower);
  };
  return { low: at(BAND[0]), middle: at(0.5), high: at(BAND[1]) };
}
