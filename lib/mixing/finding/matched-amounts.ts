/**
 * Amounts of a few paints whose mixture comes nearest to a colour, by two-constant Kubelka-Munk:
 * a match by spectrum to start from, then one by tristimulus values, refined by damped least squares.
 * An amount is sought by its logarithm, so that none can be negative.
 *
 * @source allen-1974, walowit-1987
 */
import type { Lab } from "../../colorimetry/viewing.ts";
import type { MatchProblem } from "./match-problem.ts";
import { at } from "../../quantities/at.ts";
import { solved } from "./small-system.ts";

export interface MatchedAmounts {
  /** Parts by mass of each paint, of a sum of 1. */
  readonly amounts: readonly number[];
  /** As the two-constant model reads it, D65/10. */
  readonly lab: Lab;
  /** Distance from what was sought by the problem's metric, about Delta-E00. */
  readonly distance: number;
}

const ITERATIONS_MAX = 14;
/** An amount changes by no more than this factor at once (ln). */
const STEP_MAX = 1.2;
/** Nearer than this a further step tells nothing [Delta-E00]. */
const FOUND = 0.005;
/** Share by mass [1] under which a paint counts as not there: nobody measures out a part in more than two hundred on a palette. Common practice, no source. */
export const SHARE_MIN = 5e-3;

/**
 * @param members indices into the problem's K and S; 0 is the white.
 * @param sought the Lab to come to: the target, or where the model has to point so that the drawdowns' own reading meets it.
 * @param from amounts to start from; else a match by spectrum.
 * @returns undefined where an amount vanishes: the match is one of fewer paints.
 */
export function matchedAmounts(
  problem: MatchProblem,
  members: readonly number[],
  sought: Lab,
  from?: readonly number[],
): MatchedAmounts | undefined {
  const m = members.length;
  const paints = memberPaints(problem, members);
  let logs = (from ?? spectralStart(problem, paints)).map((amount) => Math.log(amount));
  const jacobian = new Float64Array(3 * m);
  let at = plainLab(problem, paints, logs, jacobian);
  let distance = metricDistance(problem, at, sought);
  let damping = 1e-3;
  for (let iteration = 0; iteration < ITERATIONS_MAX && distance > FOUND && m > 1; iteration++) {
    const step = dampedStep(problem, at, sought, jacobian, m, damping);
    if (step === undefined) break;
    const longest = Math.max(...step.map(Math.abs));
    const scale = longest > STEP_MAX ? STEP_MAX / longest : 1;
    const tried = logs.map((log, i) => log + scale * (step[i] ?? 0));
    const next = new Float64Array(3 * m);
    const lab = plainLab(problem, paints, tried, next);
    const reached = metricDistance(problem, lab, sought);
    if (reached < distance) {
      const gain = distance - reached;
      [logs, at, distance] = [tried, lab, reached];
      jacobian.set(next);
      damping = Math.max(damping / 4, 1e-9);
      if (vanishing(logs)) return undefined;
      if (gain < 1e-4) break;
    } else {
      damping *= 8;
      if (damping > 1e6) break;
    }
  }
  const sum = logs.reduce((total, log) => total + Math.exp(log), 0);
  return { amounts: logs.map((log) => Math.exp(log) / sum), lab: at, distance };
}

function vanishing(logs: readonly number[]): boolean {
  const sum = logs.reduce((total, log) => total + Math.exp(log), 0);
  return logs.some((log) => Math.exp(log) < SHARE_MIN * sum);
}

/** K and S of the members alone, by wavelength and then by member: what is gone through thousands of times lies in one row. */
interface MemberPaints {
  readonly count: number;
  readonly K: Float64Array;
  readonly S: Float64Array;
}

function memberPaints({ K, S, theta }: MatchProblem, members: readonly number[]): MemberPaints {
  const count = members.length;
  const inOneRow = (all: readonly Float64Array[]): Float64Array => {
    const row = new Float64Array(theta.length * count);
    for (const [j, member] of members.entries()) {
      const own = at(all, member);
      for (let i = 0; i < own.length; i++) row[count * i + j] = own[i] ?? 0;
    }
    return row;
  };
  return { count, K: inOneRow(K), S: inOneRow(S) };
}

/**
 * A match by spectrum: K = theta S summed over the paints at each wavelength, the first paint held at 1.
 * Paints that it would take a negative amount of start with a little.
 */
function spectralStart(
  { theta, thetaWeights }: MatchProblem,
  { count, K, S }: MemberPaints,
): number[] {
  const free = count - 1;
  const sums = new Float64Array(free * free);
  const right = new Float64Array(free);
  const strengths = new Float64Array(free);
  const apart = new Float64Array(count);
  let wanted = 0;
  for (let i = 0; i < theta.length; i++) {
    const weight = thetaWeights[i] ?? 0;
    for (let j = 0; j < count; j++)
      apart[j] = (K[count * i + j] ?? 0) - (theta[i] ?? 0) * (S[count * i + j] ?? 0);
    const own = apart[0] ?? 0;
    wanted += weight * Math.abs(own);
    for (let row = 0; row < free; row++) {
      const ofOne = apart[row + 1] ?? 0;
      strengths[row] = (strengths[row] ?? 0) + weight * Math.abs(ofOne);
      right[row] = (right[row] ?? 0) - weight * ofOne * own;
      for (let column = 0; column < free; column++)
        sums[free * row + column] =
          (sums[free * row + column] ?? 0) + weight * ofOne * (apart[column + 1] ?? 0);
    }
  }
  const matrix = Array.from({ length: free }, (_, row) =>
    Array.from(sums.subarray(free * row, free * (row + 1)), (value, column) =>
      row === column ? value * (1 + 1e-9) : value,
    ),
  );
  const found = solved(matrix, [...right]);
  return [
    1,
    ...Array.from(strengths, (strength, j) => {
      const little = (0.2 * wanted) / Math.max(strength, 1e-12) / free;
      const amount = found?.[j] ?? little;
      return Math.min(Math.max(amount > 0 ? amount : little, 1e-5), 1e5);
    }),
  ];
}

/** Lab of amounts by the plain model, and its slopes by the logarithm of each. */
function plainLab(
  { form, weights, white }: MatchProblem,
  { count: m, K, S }: MemberPaints,
  logs: readonly number[],
  jacobian: Float64Array,
): Lab {
  const { offset, gain, k2 } = form;
  const amounts = Float64Array.from(logs, Math.exp);
  const slopes = new Float64Array(3 * m);
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let i = 0; i < weights.X.length; i++) {
    let k = 0;
    let s = 0;
    for (let j = 0; j < m; j++) {
      const amount = amounts[j] ?? 0;
      k += amount * (K[m * i + j] ?? 0);
      s += amount * (S[m * i + j] ?? 0);
    }
    const theta = k / s;
    const root = Math.max(Math.sqrt(theta * (theta + 2)), 1e-9);
    const R = 1 / (1 + theta + root);
    const outer = 1 - k2 * R;
    const reading = offset + (gain * R) / outer;
    const slope = ((-R / root) * gain) / (outer * outer) / s;
    const wX = weights.X[i] ?? 0;
    const wY = weights.Y[i] ?? 0;
    const wZ = weights.Z[i] ?? 0;
    X += wX * reading;
    Y += wY * reading;
    Z += wZ * reading;
    for (let j = 0; j < m; j++) {
      const by = slope * (amounts[j] ?? 0) * ((K[m * i + j] ?? 0) - theta * (S[m * i + j] ?? 0));
      slopes[3 * j] = (slopes[3 * j] ?? 0) + wX * by;
      slopes[3 * j + 1] = (slopes[3 * j + 1] ?? 0) + wY * by;
      slopes[3 * j + 2] = (slopes[3 * j + 2] ?? 0) + wZ * by;
    }
  }
  const [x, y, z] = [X / white.X, Y / white.Y, Z / white.Z];
  const [fx, fy, fz] = [compressed(x), compressed(y), compressed(z)];
  const [dx, dy, dz] = [
    compressedSlope(x) / white.X,
    compressedSlope(y) / white.Y,
    compressedSlope(z) / white.Z,
  ];
  for (let j = 0; j < m; j++) {
    const [ofX, ofY, ofZ] = [
      dx * at(slopes, 3 * j),
      dy * at(slopes, 3 * j + 1),
      dz * at(slopes, 3 * j + 2),
    ];
    jacobian[3 * j] = 116 * ofY;
    jacobian[3 * j + 1] = 500 * (ofX - ofY);
    jacobian[3 * j + 2] = 200 * (ofY - ofZ);
  }
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

const EPSILON = (6 / 29) ** 3;

function compressed(t: number): number {
  return t > EPSILON ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29;
}

function compressedSlope(t: number): number {
  return t > EPSILON ? 1 / (3 * Math.cbrt(t) ** 2) : 1 / (3 * (6 / 29) ** 2);
}

function metricDistance({ metric }: MatchProblem, at: Lab, sought: Lab): number {
  const [L, a, b] = [at.L - sought.L, at.a - sought.a, at.b - sought.b];
  const { LL, aL, aa, bL, ba, bb } = metric;
  return Math.sqrt(
    Math.max(LL * L * L + aa * a * a + bb * b * b + 2 * (aL * L * a + bL * L * b + ba * a * b), 0),
  );
}

/** Levenberg's step on the logarithms of all amounts but the first, which stands for their sum. */
function dampedStep(
  { metric }: MatchProblem,
  at: Lab,
  sought: Lab,
  jacobian: Float64Array,
  m: number,
  damping: number,
): number[] | undefined {
  const { LL, aL, aa, bL, ba, bb } = metric;
  const miss = [sought.L - at.L, sought.a - at.a, sought.b - at.b];
  const weighed = (j: number): readonly [number, number, number] => {
    const [L, a, b] = [jacobian[3 * j] ?? 0, jacobian[3 * j + 1] ?? 0, jacobian[3 * j + 2] ?? 0];
    return [LL * L + aL * a + bL * b, aL * L + aa * a + ba * b, bL * L + ba * a + bb * b];
  };
  const matrix: number[][] = [];
  const right: number[] = [];
  for (let row = 1; row < m; row++) {
    const [L, a, b] = weighed(row);
    right.push(L * (miss[0] ?? 0) + a * (miss[1] ?? 0) + b * (miss[2] ?? 0));
    matrix.push(
      Array.from({ length: m - 1 }, (_, column) => {
        const at = 3 * (column + 1);
        const product =
          L * (jacobian[at] ?? 0) + a * (jacobian[at + 1] ?? 0) + b * (jacobian[at + 2] ?? 0);
        return column + 1 === row ? product * (1 + damping) + damping * 1e-3 : product;
      }),
    );
  }
  const step = solved(matrix, right);
  return step && [0, ...step];
}
