/** How the widths of the law of uncertainty are chosen, and what they come to when nobody looks at the judged paint. */
import {
  predictionUncertainty,
  usualUncertainty,
  WIDER,
} from "../../lib/optics/fit/prediction-uncertainty.ts";
import type { PredictionError } from "./prediction-errors.ts";

export type Width = keyof typeof WIDER;

/** A width by all paints, and how many errors lie inside when it is chosen without their own paint. */
export interface ChosenWidth {
  readonly width: Width;
  readonly chosen: number;
  readonly count: number;
  readonly inside68: number;
  readonly inside90: number;
}

const STEP = 0.05;
const SHARES = [
  { share: 0.68, times: 1 },
  { share: 0.9, times: 1.645 },
] as const;

/**
 * The least width, in steps of .05 from 1, within which 68 % of the errors lie, as near as their count
 * allows, and 90 % within 1.645 times as much: first by all paints, then for each paint by the others alone.
 */
export function chosenWidth(width: Width, errors: readonly PredictionError[]): ChosenWidth {
  const judged = errors.map((error) => {
    const others = errors.filter(({ id }) => paintOf(id) !== paintOf(error.id));
    return { error, nested: leastWidth(width, others) };
  });
  const inside = (times: number): number =>
    judged.filter(
      ({ error, nested }) => error.deltaE00 <= times * uncertainty(error, width, nested),
    ).length;
  return {
    width,
    chosen: leastWidth(width, errors),
    count: errors.length,
    inside68: inside(1),
    inside90: inside(SHARES[1].times),
  };
}

function leastWidth(width: Width, errors: readonly PredictionError[]): number {
  for (let step = 0; step < 200; step++) {
    const tried = Number((1 + step * STEP).toFixed(2));
    const isEnough = SHARES.every(
      ({ share, times }) =>
        errors.filter((error) => error.deltaE00 <= times * uncertainty(error, width, tried))
          .length >= Math.round(share * errors.length),
    );
    if (isEnough) return tried;
  }
  throw new RangeError(`No ${width} up to 10 holds the errors`);
}

/**
 * 68 % as it would be printed under a width: for let-downs by the law alone, since what a workshop's left-out
 * let-downs tell is told in units of it; for mixtures with that, and with the errors of K, S and parts.
 */
function uncertainty(
  { distance, doubts: { experience, ...doubts }, own }: PredictionError,
  width: Width,
  tried: number,
): number {
  const widths = { ...WIDER, [width]: tried };
  if (width === "withoutFilms") return usualUncertainty(distance, doubts, widths);
  const known = experience === undefined ? doubts : { ...doubts, experience };
  return Math.hypot(predictionUncertainty(distance, known, widths).p68, own);
}

/** Drawdowns of one colour begin alike: 04B is cochineal in zinc white, 04D cochineal with black. */
function paintOf(id: string): string {
  return id.slice(0, 2);
}
