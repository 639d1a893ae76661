import { deltaE00 } from "../colorimetry/difference.ts";
import { plainLab, predictedLab, setFit, type ReadySet, type ReadyTint } from "./set-fit.ts";
import type { LeftOutTint } from "./suspect.ts";

/**
 * Every let-down predicted from the others: the honest measure of a fit, since a
 * residual only tells how well it bends. A let-down alone in its white can't be left out.
 *
 * @returns in the order of the let-downs, those alone in their white left away.
 */
export function leftOutTints(set: ReadySet, tints: readonly ReadyTint[]): LeftOutTint[] {
  return tints.flatMap((left) => {
    const others = tints.filter((other) => other !== left);
    const inWhite = others.filter(({ tint }) => tint.white === left.tint.white);
    if (inWhite.length === 0) return [];
    // Another white's let-downs say next to nothing of this white's scale.
    const model = setFit(set, inWhite).models.get(left.tint.white);
    if (model === undefined) throw new Error(`Unexpected fit without its white ${left.tint.white}`);
    return [{
      tint: left.tint.id, white: left.tint.white,
      leaveOneOut: deltaE00(left.lab, predictedLab(set, model, left.tint.massRatio)),
      nearest: Math.min(...inWhite.map(({ lab }) => deltaE00(left.lab, lab))),
      isBetween: inWhite.some(({ tint }) => tint.massRatio < left.tint.massRatio) && inWhite.some(({ tint }) => tint.massRatio > left.tint.massRatio),
      others: inWhite.length < 2 ? undefined : Math.max(...inWhite.map(({ tint, lab }) => deltaE00(lab, plainLab(set, model, tint.massRatio)))),
    }];
  });
}
