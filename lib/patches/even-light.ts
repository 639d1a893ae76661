import { Matrix, solve } from "ml-matrix";
import { at } from "../quantities/at.ts";
import type { Point } from "./quadrilateral.ts";

/** A spot of a bare ground, and how much light came from there. */
export interface BareSpot {
  readonly at: Point;
  /** Mean light of the three channels, 0 to 1. */
  readonly light: number;
}

/** Light that falls on a place, as a share of the mean over the spots. */
export type LightFall = (x: number, y: number) => number;

/** Spots that a curved fall of light takes; below, it is taken for even. */
const LEAST_SPOTS = 6;
const DARKEST = 1e-4;

/**
 * How light falls off over a picture, by spots of one bare ground: the logarithm of light as a
 * plane of x and y, which says what one lamp or one window does over a sheet of paper; a bow in it
 * would have to be guessed wherever there is no bare ground.
 * @param spots of a ground that is alike everywhere; fewer than six, or all in a line, and light counts as even.
 */
export function lightFall(spots: readonly BareSpot[]): LightFall {
  const usable = spots.filter(({ light }) => light > DARKEST);
  if (usable.length < LEAST_SPOTS) return () => 1;
  const mean = (of: (spot: BareSpot) => number): number =>
    usable.reduce((sum, spot) => sum + of(spot), 0) / usable.length;
  const [middleX, middleY] = [mean((spot) => spot.at[0]), mean((spot) => spot.at[1])];
  const size = Math.max(
    ...usable.map((spot) => Math.hypot(spot.at[0] - middleX, spot.at[1] - middleY)),
    1,
  );
  const rows = usable.map((spot) => [
    1,
    (spot.at[0] - middleX) / size,
    (spot.at[1] - middleY) / size,
  ]);
  const found = solve(
    new Matrix(rows),
    Matrix.columnVector(usable.map(({ light }) => Math.log(light))),
    true,
  ).to1DArray();
  const level = Math.log(mean(({ light }) => light));
  return (x, y) =>
    Math.exp(
      at(found, 0) -
        level +
        (at(found, 1) * (x - middleX)) / size +
        (at(found, 2) * (y - middleY)) / size,
    );
}
