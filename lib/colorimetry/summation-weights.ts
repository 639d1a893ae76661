import { domainError } from "../diagnostics/diagnostic.ts";
import { wavelengthNm, type WavelengthGrid } from "../quantities/spectrum.ts";
import { cieTable } from "./cie-table.ts";
import { naturalSpline } from "./cubic-spline.ts";
import { WHITE_POINTS, type SummedViewing, type Xyz } from "./viewing.ts";

/** Coarsest step [nm] at which the product of illuminant, observer and reflectance is summed. */
const SUMMATION_STEP_NM = 5;

/** What a reflectance factor of 1 at each wavelength of a grid adds to X, Y and Z; shape (count) each. */
export interface SummationWeights {
  readonly X: Float64Array;
  readonly Y: Float64Array;
  readonly Z: Float64Array;
}

const CHANNELS = ["X", "Y", "Z"] as const;

/** Worked out once a grid and viewing: a reading to every notation has to stay under half a millisecond. */
const weightsByGrid = new Map<string, SummationWeights>();

/**
 * Weights that sum a reading on a grid to XYZ, so that its perfect diffuser is the CIE white.
 *
 * Between the readings a natural cubic spline stands in at steps of 5 nm or a
 * little less; past the ends of the grid its end value holds. Each channel is
 * scaled by itself: with one scale for all, a grid of 400-700 nm would give a
 * neutral 0.1 of false a* and b*.
 *
 * @param grid step of at most 20 nm, covering 400-700 nm.
 * @throws RangeError when the grid is coarser, or misses a part of 400-700 nm.
 * @source cie-15-2018 : calculation of tristimulus values, interpolation, extrapolation
 */
export function summationWeights(grid: WavelengthGrid, viewing: SummedViewing): SummationWeights {
  const key = `${viewing} ${grid.startNm} ${grid.stepNm} ${grid.count}`;
  const known = weightsByGrid.get(key);
  if (known !== undefined) return known;
  const weights = weightsOf(grid, viewing);
  weightsByGrid.set(key, weights);
  return weights;
}

function weightsOf(grid: WavelengthGrid, viewing: SummedViewing): SummationWeights {
  const { startNm, stepNm, count } = grid;
  if (!(stepNm > 0 && stepNm <= 20))
    throw domainError("wavelength step", stepNm, "0 < step <= 20 nm");
  if (!(startNm <= 400)) throw domainError("first wavelength", startNm, "first <= 400 nm");
  const endNm = wavelengthNm(grid, count - 1);
  if (!(endNm >= 700)) throw domainError("last wavelength", endNm, "last >= 700 nm");

  const parts = Math.ceil(stepNm / SUMMATION_STEP_NM);
  const fineStepNm = stepNm / parts;
  const table = cieTable(viewing);
  const first = Math.ceil((table.startNm - startNm) / fineStepNm);
  const last = Math.floor((table.endNm - startNm) / fineStepNm);
  const shares =
    parts === 1
      ? []
      : Array.from({ length: count }, (_, i) =>
          naturalSpline(
            0,
            parts,
            Array.from({ length: count }, (__, j) => (i === j ? 1 : 0)),
          ),
        );

  const sums = {
    X: new Float64Array(count),
    Y: new Float64Array(count),
    Z: new Float64Array(count),
  };
  const white = { X: 0, Y: 0, Z: 0 };
  for (let k = first; k <= last; k++) {
    const product = table.at(startNm + k * fineStepNm);
    const add = (i: number, part: number): void => {
      for (const channel of CHANNELS)
        sums[channel][i] = (sums[channel][i] ?? 0) + part * product[channel];
    };
    for (const channel of CHANNELS) white[channel] += product[channel];
    const own = Math.min(Math.max(k / parts, 0), count - 1);
    if (Number.isInteger(own)) add(own, 1);
    else for (const [i, share] of shares.entries()) add(i, share(k));
  }
  const scaled = (channel: keyof Xyz): Float64Array =>
    sums[channel].map((sum) => (sum * WHITE_POINTS[viewing][channel]) / white[channel]);
  return { X: scaled("X"), Y: scaled("Y"), Z: scaled("Z") };
}
