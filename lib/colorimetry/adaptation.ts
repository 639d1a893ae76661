import {
  WHITE_POINTS,
  requireFinite,
  type LabViewing,
  type SummedViewing,
  type Xyz,
} from "./viewing.ts";
import { certain } from "../quantities/at.ts";

type Triple = readonly [number, number, number];

/** CAT16: XYZ to sharpened cone responses, and its inverse (to be multiplied out as printed, row by row). */
const CAT16: readonly Triple[] = [
  [0.401288, 0.650173, -0.051461],
  [-0.250268, 1.204414, 0.045854],
  [-0.002079, 0.048952, 0.953127],
];
const CAT16_INVERSE: readonly Triple[] = [
  [1.862067855087233, -1.0112546305316845, 0.14918677544445172],
  [0.3875265432361372, 0.6214474419314753, -0.008973985167612521],
  [-0.01584149884933386, -0.03412293802851557, 1.0499644368778496],
];

/**
 * The colour that looks under one white as another does under its own: CAT16 with
 * an eye wholly used to both (D = 1).
 *
 * @param xyz finite, perfect diffuser 100, under `from`.
 * @returns XYZ under `to`; the white of `from` becomes the white of `to`.
 * @throws RangeError when a value is NaN or infinite.
 * @validity Says how a light is *seen*, not what the sample's spectrum gives under it:
 *   a Lab adapted from D65 to C only approaches the Lab measured under C.
 * @source li-2017 : CAT16 (matrix from memory, checked against an independent library)
 */
export function adaptedXyz(
  xyz: Xyz,
  from: LabViewing | SummedViewing,
  to: LabViewing | SummedViewing,
): Xyz {
  requireFinite("tristimulus value", [xyz.X, xyz.Y, xyz.Z]);
  const [given, source, target] = [xyz, WHITE_POINTS[from], WHITE_POINTS[to]].map(({ X, Y, Z }) =>
    product(CAT16, [X, Y, Z]),
  );
  if (given === undefined || source === undefined || target === undefined)
    throw new Error("There are not three responses");
  const [X, Y, Z] = product(CAT16_INVERSE, [
    (given[0] * target[0]) / source[0],
    (given[1] * target[1]) / source[1],
    (given[2] * target[2]) / source[2],
  ]);
  return { X, Y, Z };
}

function product(matrix: readonly Triple[], [x, y, z]: Triple): Triple {
  const [first, second, third] = matrix.map((row) => row[0] * x + row[1] * y + row[2] * z);
  return [certain(first), certain(second), certain(third)];
}
