import { wavelengthsNm } from "../quantities/spectrum.ts";
import { summationWeights } from "./summation-weights.ts";
import type { Viewing, Xyz } from "./viewing.ts";
import { at } from "../quantities/at.ts";

/** Fine enough that the solid of a reading of any grid lies in it within a thousandth. */
const GRID = { startNm: 380, stepNm: 10, count: 41 } as const;

type Vector = readonly [number, number, number];

/** A face of the solid: its outward normal, and how far it lies out along it. */
interface Face {
  readonly normal: Vector;
  readonly reach: number;
}

const facesByViewing = new Map<Viewing, readonly Face[]>();

/**
 * How far a colour lies outside the solid of all colours that a reflecting surface can have
 * without fluorescence: R between 0 and 1 at each wavelength.
 *
 * The solid is the sum of the segments from 0 to each wavelength's own X, Y, Z. Its faces are
 * normal to the cross products of these in pairs, and the farthest point along a normal n is
 *
 *     h(n) = Sum max(0, n . w(l))
 *
 * @param xyz Y of the perfect diffuser is 100.
 * @returns the largest distance from a face outward [1, on the scale of Y]; 0 within the solid.
 * @source macadam-1935, cie-15-2018
 * @example outsideOptimal({ X: 95, Y: 100, Z: 109 }, "D65/10") < 1 // true: the perfect diffuser
 */
export function outsideOptimal({ X, Y, Z }: Xyz, viewing: Viewing): number {
  const faces = facesByViewing.get(viewing) ?? facesOf(viewing);
  facesByViewing.set(viewing, faces);
  return Math.max(0, ...faces.map(({ normal, reach }) => dot(normal, [X, Y, Z]) - reach));
}

function facesOf(viewing: Viewing): Face[] {
  const weights = summationWeights(GRID, viewing);
  const segments = wavelengthsNm(GRID).map((_, i): Vector => [
    at(weights.X, i),
    at(weights.Y, i),
    at(weights.Z, i),
  ]);
  return segments.flatMap((one, i) =>
    segments.slice(i + 1).flatMap((other): Face[] => {
      const cross: Vector = [
        one[1] * other[2] - one[2] * other[1],
        one[2] * other[0] - one[0] * other[2],
        one[0] * other[1] - one[1] * other[0],
      ];
      const length = Math.hypot(...cross);
      if (length < 1e-12) return [];
      return [length, -length].map((scale) => {
        const normal: Vector = [cross[0] / scale, cross[1] / scale, cross[2] / scale];
        const reach = segments.reduce((sum, one) => sum + Math.max(0, dot(normal, one)), 0);
        return { normal, reach };
      });
    }),
  );
}

function dot(one: Vector, other: Vector): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}
