import { deltaE00 } from "../../colorimetry/difference.ts";
import {
  plainLab,
  predictedLab,
  setFit,
  type ReadySet,
  type ReadyTint,
} from "./fitted-drawdown-set.ts";
import type { LeftOutTint } from "./outlier-drawdown.ts";
import type { TintModel } from "../tints/tint-model.ts";

/** A let-down predicted from the others in its white. */
export interface LeftOutFit {
  readonly left: ReadyTint;
  readonly inWhite: readonly ReadyTint[];
  readonly model: TintModel;
  /** Between it and the prediction without it. */
  readonly deltaE00: number;
}

/**
 * Every let-down predicted from the others: the honest measure of a fit, since a
 * residual only tells how well it bends. A let-down alone in its white can't be left out.
 *
 * @returns in the order of the let-downs, those alone in their white left away.
 */
export function leftOutFits(set: ReadySet, tints: readonly ReadyTint[]): LeftOutFit[] {
  return tints.flatMap((left): LeftOutFit[] => {
    // Another white's let-downs say next to nothing of this white's scale.
    const inWhite = tints.filter((other) => other !== left && other.tint.white === left.tint.white);
    if (inWhite.length === 0) return [];
    const model = setFit(set, inWhite).models.get(left.tint.white);
    if (model === undefined) throw new Error(`The fit is without its white ${left.tint.white}`);
    return [
      {
        left,
        inWhite,
        model,
        deltaE00: deltaE00(left.lab, predictedLab(set, model, left.tint.massRatio)),
      },
    ];
  });
}

/** The same with what tells a bad drawdown from a hard one: how well the others agree without it. */
export function leftOutTints(set: ReadySet, fits: readonly LeftOutFit[]): LeftOutTint[] {
  return fits.map(({ left, inWhite, model, deltaE00: leaveOneOut }) => ({
    tint: left.tint.id,
    white: left.tint.white,
    leaveOneOut,
    nearest: Math.min(...inWhite.map(({ lab }) => deltaE00(left.lab, lab))),
    isBetween:
      inWhite.some(({ tint }) => tint.massRatio < left.tint.massRatio) &&
      inWhite.some(({ tint }) => tint.massRatio > left.tint.massRatio),
    others:
      inWhite.length < 2
        ? undefined
        : Math.max(
            ...inWhite.map(({ tint, fittedLab }) =>
              deltaE00(fittedLab, plainLab(set, model, tint.massRatio)),
            ),
          ),
  }));
}
