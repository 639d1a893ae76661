/**
 * What ingredients state and a mixture holds too little of: each with its share,
 * and with the share from which it would count, where one substance alone has one.
 */
import { grouped } from "../../quantities/grouped.ts";
import { type LeftOut, inhalationRoute } from "./applicable-classifications.ts";
import type { Classification } from "./classification.ts";
import { GENERIC_LIMITS, groupKey } from "./cut-offs.ts";
import { countedFraction, type Finding } from "./finding.ts";
import { isOfFrame, type HazardFrame } from "./frame.ts";
import { classElements } from "./hazard-class.ts";
import { statementMeaning, type AcuteRoute } from "../texts/hazard-statement.ts";
import { isAcute, type AcuteOutcome } from "./acute-toxicity.ts";
import type { Part } from "./composition.ts";
import { REPRODUCTION_LIMITS } from "./reproduction.ts";
import { ASPIRATION_RULES, SUM_RULES } from "./sum-rules.ts";

type BelowLimit = Extract<LeftOut, { readonly rule: "below-its-limit" }>["values"];

interface Member {
  readonly part: Part;
  readonly by: Classification;
}

/**
 * A line for each statement that no finding of its family answers; substances
 * that count together share one.
 * @param saidElsewhere what is left out for another cause.
 * @param acute what each route came to, of the same parts.
 */
export function belowLimits(
  parts: readonly Part[],
  findings: readonly Finding[],
  saidElsewhere: readonly LeftOut[],
  acute: readonly AcuteOutcome[],
  frame: HazardFrame,
): LeftOut[] {
  const isSaid = ({ part, by }: Member): boolean =>
    saidElsewhere.some(
      ({ statement, values }) =>
        statement === by.statement && "ingredient" in values && values.ingredient === part.slug,
    );
  const groups = grouped(
    parts
      .filter(({ massFraction }) => massFraction > 0)
      .flatMap((part) => part.classifications.map((by) => ({ part, by })))
      .filter((one) => !isSaid(one) && !findings.some((finding) => answers(finding, one)))
      .map((one) => [`${one.by.statement} ${groupKey(one.part, one.by)}`, one] as const),
  );
  return [...groups.values()].map((members): LeftOut => {
    const limits = members
      .map(({ by }) => countsFrom(by, frame))
      .filter((limit) => limit !== undefined);
    const statement = (members as [Member, ...Member[]])[0].by.statement;
    return {
      statement,
      rule: "below-its-limit",
      values: {
        ingredients: members.map(({ part }) => part.slug),
        massFraction: members.reduce((sum, { part, by }) => sum + countedFraction(part, by), 0),
        ...(limits.length > 0 && { limit: Math.min(...limits) }),
        ...acuteEstimate(members, acute),
      },
    };
  });
}

/**
 * What the mixture came to by the route of an acute statement, where a member was reckoned with:
 * the estimate that decided, over all ingredients and not over the members alone.
 */
function acuteEstimate(
  members: readonly Member[],
  acute: readonly AcuteOutcome[],
): Pick<BelowLimit, "ate" | "upTo" | "unit" | "others"> {
  const slugs = members.map(({ part }) => part.slug);
  const routes = members
    .filter(({ by }) => isAcute(by.hazardClass))
    .map(({ part, by }) => acuteRouteOf(part, by));
  const estimate = acute.find(({ route }) => routes.includes(route))?.estimate;
  if (estimate === undefined || !slugs.some((slug) => estimate.ingredients.includes(slug)))
    return {};
  const { ate, upTo, unit, ingredients } = estimate;
  const others = ingredients.filter((slug) => !slugs.includes(slug));
  return { ate, upTo, unit, ...(others.length > 0 && { others }) };
}

function acuteRouteOf(part: Part, by: Classification): AcuteRoute | undefined {
  const { route } = statementMeaning(by.statement);
  return by.route ?? (route === "inhalation" ? inhalationRoute(part) : route);
}

function answers(finding: Finding, { part, by }: Member): boolean {
  const { family } = classElements(by.hazardClass);
  if (classElements(finding.hazardClass).family !== family) return false;
  if (by.hazardClass === "STOT SE 3") return finding.statement === by.statement;
  if (finding.route === undefined) return true;
  return finding.route === acuteRouteOf(part, by);
}

/** The least share of one substance that gives the mixture any class of this family; none for an acute toxicity, whose estimate decides. */
function countsFrom(by: Classification, frame: HazardFrame): number | undefined {
  const { hazardClass, mFactor, specificLimits } = by;
  const generic = GENERIC_LIMITS.filter(({ of }) => of === hazardClass).map(({ from }) => from);
  const reproduction =
    classElements(hazardClass).family === classElements("Repr. 2").family
      ? [REPRODUCTION_LIMITS[hazardClass === "Repr. 2" ? 2 : 1]]
      : [];
  const sums = [...SUM_RULES, ...ASPIRATION_RULES]
    .filter((rule) => isOfFrame(rule, frame))
    .flatMap(({ limit, ofStatement, terms }) =>
      (ofStatement !== undefined && ofStatement !== by.statement ? [] : terms)
        .filter(({ of }) => of.includes(hazardClass))
        .map(({ weight, byMFactor, relevantFrom }) => {
          const m = byMFactor === true ? mFactor : 1;
          return Math.max(limit / (weight * m), relevantFrom / m);
        }),
    );
  const own = specificLimits.map(({ from }) => from);
  const limits = own.length > 0 ? own : [...generic, ...reproduction, ...sums];
  return limits.length === 0 ? undefined : Math.min(...limits);
}
