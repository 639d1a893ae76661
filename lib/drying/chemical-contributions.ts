/**
 * What pigments and added driers together do to drying.
 *
 * All of them bear on one reaction, so they do not simply multiply:
 *  - each acts in the share that its amount gives it (full from a small amount
 *    for drying metals and fine carbon);
 *  - the strongest of the driers acts in full, any further one by half; the same
 *    for the retarders;
 *  - a pigment that takes no part only counts in so far as nothing else does;
 *  - a fine carbon takes up added drier, which then acts by half to full.
 *
 * @source practice-drying : a rule of this project.
 */
import type { Interval, Quantity } from "../quantities/interval.ts";
import type { StatementValue } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";
import { drierDose, type AddedDrier } from "./added-drier.ts";
import { chemistryRow, type Chemistry, type DryingEffect } from "./chemistry-drying.ts";
import { contribution, inPart, ratio, type Contribution } from "./contribution.ts";
import { LINSEED_DAYS } from "./vehicle-drying.ts";

export interface ChemicalPart {
  /** As the sheet names it. */
  readonly name: string;
  readonly chemistry: Chemistry;
  /** Share of the dry pigment by mass, 0-1; undefined when the parts are not recorded. */
  readonly massFraction: number | undefined;
  /** Whether it is the white that the colour is tinted with. */
  readonly white: boolean;
}

/** Share in which a further drier, or a further retarder, acts beside a stronger one. */
export const FURTHER_SHARE = 0.5;

interface Actor {
  readonly effect: DryingEffect;
  readonly factor: Interval;
  /** Share that its amount gives it [1]; a range when the amount is not known. */
  readonly share: Quantity;
  readonly rule: string;
  readonly values: Readonly<Record<string, StatementValue>>;
  readonly source: SourceKey;
}

export function chemicalContributions(
  pigments: readonly ChemicalPart[],
  driers: readonly AddedDrier[],
): Contribution[] {
  const carbon = pigments.some(({ chemistry }) => chemistry === "fine carbon");
  const actors = [
    ...pigments.map(pigmentActor),
    ...driers.map((drier) => drierActor(drier, carbon)),
  ].toSorted((one, other) => strength(other) - strength(one));
  const strongestShare = Math.max(
    0,
    ...actors.filter(({ effect }) => effect !== "neutral").map(({ share }) => leastShare(share)),
  );
  const seen = new Set<DryingEffect>();
  return actors.map((actor) => {
    const first = !seen.has(actor.effect);
    seen.add(actor.effect);
    const beside =
      actor.effect === "neutral" ? (first ? 1 - strongestShare : 0) : first ? 1 : FURTHER_SHARE;
    return weighed(actor, beside);
  });
}

function weighed(
  { effect, factor, share, rule, values, source }: Actor,
  beside: number,
): Contribution {
  const sign = effect === "neutral" ? "none" : effect === "drier" ? "faster" : "slower";
  const moved =
    typeof share === "number"
      ? inPart(factor, share * beside)
      : spanned(inPart(factor, share[0] * beside), inPart(factor, share[1] * beside));
  return contribution(rule, sign, moved, { ...values, share, beside }, source);
}

function pigmentActor({ name, chemistry, massFraction, white }: ChemicalPart): Actor {
  const { effect, daysInLinseed, fullFromMassFraction, cause, source } = chemistryRow(chemistry);
  const what =
    effect === "drier"
      ? "speeds-drying"
      : effect === "retarder"
        ? "slows-drying"
        : "takes-no-part-in-drying";
  return {
    effect,
    source,
    factor: ratio(daysInLinseed, LINSEED_DAYS),
    share: massFraction === undefined ? [0, 1] : Math.min(1, massFraction / fullFromMassFraction),
    rule: `${white ? "white" : "pigment"}-${what}`,
    values: {
      pigment: name,
      chemistry,
      cause,
      daysInLinseed,
      ...(massFraction === undefined ? {} : { massFraction }),
    },
  };
}

function drierActor(drier: AddedDrier, carbon: boolean): Actor {
  const { row, share } = drierDose(drier);
  return {
    effect: row.metal === "zinc" ? "retarder" : "drier",
    source: "memory-drying",
    factor: row.factor,
    share: carbon ? [share * FURTHER_SHARE, share] : share,
    rule: carbon ? "carbon-takes-up-drier" : "added-drier",
    values: { metal: drier.metal, percentOnOil: drier.percentOnOil, acts: row.acts },
  };
}

function strength({ factor: [lower, upper], share }: Actor): number {
  return Math.abs(Math.log(lower * upper)) * leastShare(share);
}

/** An amount that is not known ranks by half its reach. */
function leastShare(share: Quantity): number {
  return typeof share === "number" ? share : (share[0] + share[1]) / 2;
}

function spanned([a, b]: Interval, [c, d]: Interval): Interval {
  return [Math.min(a, c), Math.max(b, d)];
}
