/** CIEDE2000 about one colour as a plain sum of squares, for a least-squares search. */
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";

/** Lower triangle of G, with Delta-E00^2 = d^T G d for a small difference d of L*, a*, b*. */
export interface LabMetric {
  readonly LL: number;
  readonly aL: number;
  readonly aa: number;
  readonly bL: number;
  readonly ba: number;
  readonly bb: number;
}

/** Difference [L*, a*, b*] at which the metric is taken. */
const STEP = 0.5;

/** @source sharma-2005 : its curvature at zero, by differences */
export function labMetric(at: Lab): LabMetric {
  const square = (L: number, a: number, b: number): number => {
    const ahead = deltaE00(at, { L: at.L + L, a: at.a + a, b: at.b + b });
    const behind = deltaE00(at, { L: at.L - L, a: at.a - a, b: at.b - b });
    return (ahead ** 2 + behind ** 2) / 2 / STEP ** 2;
  };
  const [LL, aa, bb] = [square(STEP, 0, 0), square(0, STEP, 0), square(0, 0, STEP)];
  return {
    LL,
    aa,
    bb,
    aL: (square(STEP, STEP, 0) - LL - aa) / 2,
    bL: (square(STEP, 0, STEP) - LL - bb) / 2,
    ba: (square(0, STEP, STEP) - aa - bb) / 2,
  };
}
