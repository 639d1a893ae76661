import { specificLimit, type Classification } from "./classification.ts";
import { countedFraction, findingBy, traceShare, type Finding } from "./finding.ts";
import { isOfFrame, type HazardFrame } from "./frame.ts";
import { reaches } from "./limit.ts";
import type { Part } from "./composition.ts";
import { SUM_RULES, type SumRule, type SumTerm } from "./sum-rules.ts";

interface Contribution {
  readonly part: Part;
  readonly by: Classification;
  /** What the ingredient adds to the weighted sum, in the terms of the rule's limit. */
  readonly amount: number;
  readonly isSpecific: boolean;
}

/** Every class that a sum over the ingredients gives, in the frame. */
export function sumFindings(parts: readonly Part[], frame: HazardFrame): Finding[] {
  return SUM_RULES.filter((rule) => isOfFrame(rule, frame)).flatMap((rule) =>
    ruleFindings(parts, rule),
  );
}

/**
 * One rule held against the parts. An ingredient counts once, by the heaviest of
 * its classifications; its specific limit, where it has one for this outcome,
 * takes the place of weight and generic limit:
 *
 *     sum(Ci weighti / limit) >= 1, or Ci / specific limiti for such an ingredient
 */
export function ruleFindings(parts: readonly Part[], rule: SumRule): Finding[] {
  const counted = parts.flatMap((part) =>
    heaviest(part.classifications.flatMap((by) => contributions(part, by, rule))),
  );
  const sum = counted.reduce((total, { amount }) => total + amount, 0);
  if (!reaches(sum, rule.limit)) return [];
  return [
    findingBy(rule.gives, {
      statement: rule.statement,
      rule: "weighted-sum",
      source: rule.source,
      values: {
        hazardClass: rule.gives,
        weightedSum: sum,
        limit: rule.limit,
        limitKind: counted.some(({ isSpecific }) => isSpecific) ? "specific" : "generic",
        ingredients: counted.map(({ part }) => part.slug),
      },
      shares: counted.map(({ part, by }) => traceShare(part, by)),
    }),
  ];
}

function contributions(part: Part, by: Classification, rule: SumRule): Contribution[] {
  if (rule.ofStatement !== undefined && by.statement !== rule.ofStatement) return [];
  const term = rule.terms.find(({ of }) => of.includes(by.hazardClass));
  if (term === undefined) return [];
  const fraction = countedFraction(part, by);
  const own = specificLimit(by, rule.gives, rule.statement);
  if (own !== undefined)
    return [{ part, by, amount: (fraction / own) * rule.limit, isSpecific: true }];
  const m = term.byMFactor === true ? by.mFactor : 1;
  return isRelevant(fraction, term, m)
    ? [{ part, by, amount: fraction * term.weight * m, isSpecific: false }]
    : [];
}

function isRelevant(fraction: number, term: SumTerm, m: number): boolean {
  return reaches(fraction, term.relevantFrom / m);
}

function heaviest(contributions: readonly Contribution[]): Contribution[] {
  return contributions.toSorted((one, other) => other.amount - one.amount).slice(0, 1);
}
