import type { StatementOf } from "../../quantities/statement.ts";
import { predictionUncertainty, type Doubts } from "./prediction-uncertainty.ts";

/**
 * When a let-down is held to be a bad drawdown: a wrong ratio, a knife not wiped,
 * a reading of another card.
 * @source oil-paint-outs : 90 % of honest let-downs there are predicted within 4.6
 */
const SUSPECT_LIMITS = {
  /**
   * Least Delta-E00 between it and what the others predict: for one between two others the 68 % figure
   * and not less than the first; for one at an end, where honest ones miss further, the 90 % figure and
   * not less than the second.
   */
  betweenMin: 3,
  endMin: 5,
  /** How many times worse it is than the others once it is left out. */
  timesOthersMin: 3,
  /** Others that agree better than this are taken for this: two drawdowns can agree by chance. */
  othersFloor: 1,
} as const;

/** Other let-downs of its own white tell a let-down as well without films. */
const LIKE_ITS_OWN: Doubts = { hasFilms: true };

/** A let-down left out: how far the others miss it, and how well they then agree among themselves. */
export interface LeftOutTint {
  readonly tint: string;
  readonly white: string;
  /** Delta-E00 between it and the prediction without it. */
  readonly leaveOneOut: number;
  /** Delta-E00 between it and the nearest other let-down in its white. */
  readonly nearest: number;
  /** Whether others stand on both sides of it. */
  readonly isBetween: boolean;
  /** Largest residual Delta-E00 of the other let-downs in its white, without it; undefined for a single other. */
  readonly others: number | undefined;
}

/** A let-down that others contradict: by how much [Delta-E00], and from where on that is told. */
export type SuspectStatement = StatementOf<
  "suspect-drawdown" | "drawdowns-disagree",
  {
    tint: string;
    white: string;
    leaveOneOutDeltaE00: number;
    limit: number;
    /** How well the others then agree; absent for a single other. */
    othersDeltaE00?: number;
  }
>;

/** Whether a let-down counts: all do but one that the others contradict. */
export function isUsed({ suspect }: { readonly suspect?: SuspectStatement | undefined }): boolean {
  return suspect?.rule !== "suspect-drawdown";
}

/**
 * The one let-down in a white that the others contradict, if there is one.
 *
 * A bad drawdown drags the fit, so that its neighbours look bad as well; it is
 * known by this, that without it the rest agree.
 *
 * @param tints all let-downs in one white that were left out in turn.
 * @param doubts what of the drawdowns widens the law that a let-down is judged by.
 * @returns rule `suspect-drawdown`; `drawdowns-disagree` for each of only two that
 *   contradict each other, since nothing tells which is wrong; by name of the let-down.
 */
export function suspects(
  tints: readonly LeftOutTint[],
  doubts: Doubts = LIKE_ITS_OWN,
): ReadonlyMap<string, SuspectStatement> {
  const limits = SUSPECT_LIMITS;
  const limitOf = ({ nearest, isBetween }: LeftOutTint): number => {
    const { p68, p90 } = predictionUncertainty(nearest, doubts);
    return isBetween ? Math.max(limits.betweenMin, p68) : Math.max(limits.endMin, p90);
  };
  const isBad = (tint: LeftOutTint): boolean => tint.leaveOneOut >= limitOf(tint);
  const excess = (tint: LeftOutTint): number => tint.leaveOneOut - limitOf(tint);
  const verdict = (
    tint: LeftOutTint,
    rule: SuspectStatement["rule"],
  ): [string, SuspectStatement] => [
    tint.tint,
    {
      rule,
      source: "oil-paint-outs",
      values: {
        tint: tint.tint,
        white: tint.white,
        leaveOneOutDeltaE00: tint.leaveOneOut,
        limit: limitOf(tint),
        ...(tint.others !== undefined && { othersDeltaE00: tint.others }),
      },
    },
  ];
  if (tints.length < 3) {
    // One figure for both: the worse of the two, since each is missed by the other.
    const [worst] = tints.toSorted((one, other) => excess(other) - excess(one));
    return new Map(
      worst === undefined || !isBad(worst)
        ? []
        : tints.map(({ tint, white }) => verdict({ ...worst, tint, white }, "drawdowns-disagree")),
    );
  }
  // The odd one is sought first and judged after: a bad one at an end can lift a good one between over its lower limit.
  const [odd] = tints.toSorted((one, other) => oddness(other) - oddness(one));
  if (odd === undefined || !isBad(odd) || oddness(odd) < limits.timesOthersMin) return new Map();
  return new Map([verdict(odd, "suspect-drawdown")]);
}

/** How many times worse it is than the others without it. */
function oddness({ leaveOneOut, others = Infinity }: LeftOutTint): number {
  return leaveOneOut / Math.max(others, SUSPECT_LIMITS.othersFloor);
}
