/**
 * How far the two halves of a drawdown lie from one another: one paint, one film, one sitting, two places. Of paints
 * that hid their chart, so that the ground tells them nothing.
 */
import { labUncertainty } from "../../lib/colorimetry/lab-uncertainty.ts";
import { HAND_HELD_NOISE, type ReadingNoise } from "../../lib/colorimetry/reading-noise.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { at } from "../../lib/quantities/at.ts";
import { inside, type FigureError } from "./figure-errors.ts";
import { MEASURED_PAINTS, type MeasuredPaint } from "./measured-paints.ts";

/** What one calibration errs by is in both halves alike, and parts them by nothing. */
const OF_ONE_SITTING: ReadingNoise = {
  ...HAND_HELD_NOISE,
  calibration: { zero: 0, scale: 0, tilt: 0 },
};

/** Darker over black than this, as a share of what is read over white, at any wavelength: there the ground shows. */
const SHOWN_BELOW = 0.97;

/** Standard uncertainties within which 95 % of a normal distribution lie. */
const NINETY_FIVE_PERCENT = 1.96;

const HIDING = [...MEASURED_PAINTS.values()].filter(({ overBlack, overWhite }) =>
  overBlack.spectrum.values.every(
    (value, i) => value > SHOWN_BELOW * at(overWhite.spectrum.values, i),
  ),
);

/** L*, a* and b* over black, held against those over white: by what two readings differ whose places do so much. */
export function halfErrors(
  place: number,
  paints: readonly MeasuredPaint[] = HIDING,
): FigureError[] {
  return paints.flatMap(({ id, overBlack, overWhite }) => {
    const [black, white] = [overBlack, overWhite].map(({ spectrum }) => spectrumLab(spectrum));
    const one = labUncertainty(overWhite.spectrum, "D65/10", OF_ONE_SITTING, [], place);
    return (["L", "a", "b"] as const).map((axis) => ({
      id: `${id} ${axis}*`,
      printed: black?.[axis] ?? NaN,
      truth: white?.[axis] ?? NaN,
      uncertainty: Math.SQRT2 * one[axis],
    }));
  });
}

/** The least a place does, in steps of .01, within which 68 and 95 % of the halves lie, as near as their count allows. */
export function leastPlace(paints: readonly MeasuredPaint[] = HIDING): number {
  for (let step = 0; step < 200; step++) {
    const place = step / 100;
    const errors = halfErrors(place, paints);
    const holds = (share: number, times: number): boolean =>
      Math.round(inside(errors, times) * errors.length) >= Math.round(share * errors.length);
    if (holds(0.68, 1) && holds(0.95, NINETY_FIVE_PERCENT)) return place;
  }
  throw new RangeError("No place up to 2 holds the halves");
}

/** Halves of each paint by what all others tell of a place: how many there are, and how many lie inside 68 and 95 %. */
export function nestedHalves(): Record<"count" | "inside68" | "inside95", number> {
  const errors = HIDING.flatMap((paint) => {
    const others = HIDING.filter(({ id }) => paintOf(id) !== paintOf(paint.id));
    return halfErrors(leastPlace(others), [paint]);
  });
  const within = (times: number): number => Math.round(inside(errors, times) * errors.length);
  return { count: errors.length, inside68: within(1), inside95: within(NINETY_FIVE_PERCENT) };
}

/** Drawdowns of one colour begin alike: 13A is Prussian blue, 13B is that in zinc white. */
function paintOf(id: string): string {
  return id.slice(0, 2);
}
