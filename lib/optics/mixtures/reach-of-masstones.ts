/** What colours can be mixed of paints of which no more than the masstone is known. */
import { deltaE00, deltaEab } from "../../colorimetry/difference.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import { summationWeights } from "../../colorimetry/summation-weights.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { at } from "../../quantities/at.ts";
import { leastAt } from "../../quantities/golden-section.ts";
import { sameGrid, type Spectrum } from "../../quantities/spectrum.ts";

/** A step that gains less than this is the last [Delta-E]. */
const GAIN = 1e-3;
const STEPS_MAX = 200;
/** How far X, Y and Z are moved to see what a difference does [1, of 100]. */
const MOVED = 1e-4;

/** X, Y, Z. */
type Vector = readonly [number, number, number];
type Metric = (one: Lab, other: Lab) => number;

/**
 * The colour nearest to one asked for that any mixture of some paints may have, in whatever parts, and
 * however strong each of them is.
 *
 * K and S add by parts, so at each wavelength K/S of a mixture lies between the least and the greatest of
 * its paints', and its reflectance between theirs. Every spectrum between these is let count, though
 * a mixture reaches few of them: a colour that none of them has is none of a mixture's.
 *
 *     K/S = Sum c_i K_i / Sum c_i S_i
 *
 * @param masstones reflectance factors [1], at least one, all on one grid.
 * @param lab D65/10.
 * @returns D65/10; where `lab` lies between them, it within half a Delta-E00.
 * @throws RangeError when there is no masstone, or their grids differ.
 * @validity Paints that hide, read in one geometry; no pearl, no metal, nothing that fluoresces.
 * @source duncan-1940
 */
export function nearestBetween(masstones: readonly Spectrum[], lab: Lab): Lab {
  const [first] = masstones;
  if (first === undefined) throw domainError("count of masstones", 0, "at least one");
  if (!masstones.every(({ grid }) => sameGrid(grid, first.grid)))
    throw new RangeError("Masstones are on several grids; right would be one");
  const weights = summationWeights(first.grid, "D65/10");
  const stretches = first.values.map((_, i) => {
    const read = masstones.map(({ values }) => Math.max(at(values, i), 0));
    const unit: Vector = [at(weights.X, i), at(weights.Y, i), at(weights.Z, i)];
    return { least: Math.min(...read), most: Math.max(...read), unit };
  });
  /** The farthest of these spectra along a direction. */
  const farthest = (along: Vector): Vector =>
    stretches.reduce<Vector>(
      (sum, { least, most, unit }) => plus(sum, unit, dot(along, unit) > 0 ? most : least),
      [0, 0, 0],
    );
  // By CIE 1976 first, which has one valley; from there by what differences are told in.
  const begun = nearest(farthest([0, 1, 0]), farthest, lab, deltaEab);
  return labOf(nearest(begun, farthest, lab, deltaE00));
}

/** Frank and Wolfe's way through a convex body: again and again towards its farthest point down the slope. */
function nearest(
  from: Vector,
  farthest: (along: Vector) => Vector,
  lab: Lab,
  metric: Metric,
): Vector {
  const miss = (xyz: Vector): number => metric(lab, labOf(xyz));
  let found = from;
  for (let step = 0; step < STEPS_MAX; step++) {
    const before = miss(found);
    if (before < GAIN) break;
    const slope = ([0, 1, 2] as const).map((axis) => {
      const moved = found.map((value, i) => (i === axis ? value + MOVED : value));
      return before - miss(vector(moved));
    });
    const towards = plus(farthest(vector(slope)), found, -1);
    const share = leastAt((t) => miss(plus(found, towards, t)), 0, 1, 1e-6);
    const next = plus(found, towards, share);
    if (!(before - miss(next) > GAIN)) break;
    found = next;
  }
  return found;
}

function labOf([X, Y, Z]: Vector): Lab {
  return xyzToLab({ X, Y, Z }, "D65/10");
}

function vector([X = NaN, Y = NaN, Z = NaN]: readonly number[]): Vector {
  return [X, Y, Z];
}

function plus(one: Vector, other: Vector, times: number): Vector {
  return [one[0] + times * other[0], one[1] + times * other[1], one[2] + times * other[2]];
}

function dot(one: Vector, other: Vector): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}
