import { domainError } from "../../diagnostics/diagnostic.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { leastAt } from "../../quantities/golden-section.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { LadderModel } from "../tints/ladder.ts";
import type { NotReached } from "../tints/equal-lightness.ts";
import type { UnlikeReadings } from "../unlike-readings.ts";
import { mixedLab, mixedRatioAt, mixture, pairGreys } from "./mixture.ts";

/** The grey of a pair that lies nearest to neutral at one lightness. */
export interface PairNeutral {
  /** Share of the first by mass [1]. */
  readonly share: number;
  readonly lab: Lab;
  /** C*ab [1]. */
  readonly chroma: number;
}

const STEPS = 20;
/** Share [1] to which the neutral is found. */
const FOUND = 1e-4;

/**
 * Where a pair lies nearest to neutral: the least C*ab over all shares, at one L*.
 * @returns the grey; rules of {@link mixture}, and `ladder-does-not-reach` when no mixture of the two has that L*.
 * @throws RangeError when L is outside its domain.
 */
export function pairNeutral(
  first: LadderModel,
  second: LadderModel,
  L: number,
): PairNeutral | UnlikeReadings | NotReached {
  const greys = pairGreys(first, second, L, STEPS);
  if (isStatement(greys)) return greys;
  const [least] = greys.toSorted((one, other) => chromaOf(one.lab) - chromaOf(other.lab));
  if (least === undefined) return { rule: "ladder-does-not-reach", values: { L } };
  const at = (share: number): PairNeutral | undefined => {
    const mixed = mixture([
      { ladder: first, parts: share },
      { ladder: second, parts: 1 - share },
    ]);
    const ratio = isStatement(mixed) ? mixed : mixedRatioAt(mixed, L);
    if (isStatement(mixed) || isStatement(ratio)) return undefined;
    const lab = mixedLab(mixed, ratio);
    return { share, lab, chroma: chromaOf(lab) };
  };
  let best: PairNeutral = { ...least, chroma: chromaOf(least.lab) };
  // C*ab has one least value between neighbouring steps.
  leastAt(
    (share) => {
      const tried = at(share);
      if (tried !== undefined && tried.chroma < best.chroma) best = tried;
      return tried?.chroma ?? Infinity;
    },
    Math.max(least.share - 1 / STEPS, 0),
    Math.min(least.share + 1 / STEPS, 1),
    FOUND,
  );
  return best;
}

function chromaOf({ a, b }: Lab): number {
  const chroma = Math.hypot(a, b);
  if (!(chroma >= 0)) throw domainError("C*ab", chroma, "0 <= C*ab");
  return chroma;
}
