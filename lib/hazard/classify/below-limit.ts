/**
 * What ingredients state and a mixture holds too little of: each with its share,
 * and with the share from which it would count, where one substance alone has one.
 */
import { type LeftOut, inhalationRoute } from "./applicable-classifications.ts";
import type { Classification } from "./classification.ts";
import { GENERIC_LIMITS, groupKey } from "./cut-offs.ts";
import { countedFraction, type Finding } from "./finding.ts";
import type { HazardFrame } from "./frame.ts";
import { classElements } from "./hazard-class.ts";
import { statementMeaning, type AcuteRoute } from "../texts/hazard-statement.ts";
import {
  ACUTE_RELEVANT,
  acuteUpTo,
  ateMix,
  ateUnit,
  isAcute,
  pointEstimate,
} from "./acute-toxicity.ts";
import { reaches } from "./limit.ts";
import type { Part } from "./composition.ts";
import { REPRODUCTION_LIMITS } from "./reproduction.ts";
import { ASPIRATION_RULES, SUM_RULES } from "./sum-rules.ts";

interface Member {
  readonly part: Part;
  readonly by: Classification;
}

/**
 * A line for each statement that no finding of its family answers; substances
 * that count together share one.
 * @param saidElsewhere what is left out for another cause.
 */
export function belowLimits(
  parts: readonly Part[],
  findings: readonly Finding[],
  saidElsewhere: readonly LeftOut[],
  frame: HazardFrame,
): LeftOut[] {
  const groups = new Map<string, Member[]>();
  for (const part of parts.filter(({ massFraction }) => massFraction > 0)) {
    for (const by of part.classifications) {
      const isSaid = saidElsewhere.some(
        ({ statement, values }) =>
          statement === by.statement && "ingredient" in values && values.ingredient === part.slug,
      );
      if (isSaid || findings.some((finding) => answers(finding, part, by))) continue;
      const key = `${by.statement} ${groupKey(part, by)}`;
      groups.set(key, [...(groups.get(key) ?? []), { part, by }]);
    }
  }
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
        ...(limits.length === 0 ? {} : { limit: Math.min(...limits) }),
        ...acuteEstimate(members, frame),
      },
    };
  });
}

/** What members of one acute statement bring a mixture to, where they are enough of it to be reckoned with. */
function acuteEstimate(
  members: readonly Member[],
  frame: HazardFrame,
): Pick<Extract<LeftOut, { readonly rule: "below-its-limit" }>["values"], "ate" | "upTo" | "unit"> {
  const toxic = members.flatMap(({ part, by }) => {
    const { hazardClass } = by;
    const route = acuteRouteOf(part, by);
    return isAcute(hazardClass) && route !== undefined
      ? [
          {
            massFraction: part.massFraction,
            ate: by.ate ?? pointEstimate(hazardClass, route),
            route,
          },
        ]
      : [];
  });
  const [first] = toxic;
  const ate = ateMix(toxic);
  if (first === undefined || ate === undefined) return {};
  const { route } = first;
  const upTo = acuteUpTo(route, frame);
  return ate > upTo && toxic.every(({ massFraction }) => reaches(massFraction, ACUTE_RELEVANT))
    ? { ate, upTo, unit: ateUnit(route) }
    : {};
}

function acuteRouteOf(part: Part, by: Classification): AcuteRoute | undefined {
  const { route } = statementMeaning(by.statement);
  return by.route ?? (route === "inhalation" ? inhalationRoute(part) : route);
}

function answers(finding: Finding, part: Part, by: Classification): boolean {
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
    .filter((rule) => rule.frame === undefined || rule.frame === frame)
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
