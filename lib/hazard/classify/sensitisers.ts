/**
 * Elicitation: someone already allergic reacts to less than it takes to classify
 * the mixture, so the label names the substance (EUH208).
 *
 * @source clp-1272-2008 : Table 3.4.6 and its note: one tenth of a specific limit that is below .1 %
 */
import { specificLimit, type Classification } from "./classification.ts";
import { countedFraction, traceShare, type StatementTrace } from "./finding.ts";
import { classElements, type HazardClass } from "./hazard-class.ts";
import { GENERIC_LIMITS } from "./cut-offs.ts";
import { reaches } from "./limit.ts";
import type { Part } from "./composition.ts";
import { certain } from "../../quantities/at.ts";

/** Generic elicitation limits, mass fraction, inclusive; by class as the supplier states it. */
const ELICITATION_LIMITS = {
  "Skin Sens. 1": 0.001,
  "Skin Sens. 1A": 0.0001,
  "Skin Sens. 1B": 0.001,
  "Resp. Sens. 1": 0.001,
  "Resp. Sens. 1A": 0.0001,
  "Resp. Sens. 1B": 0.001,
} as const satisfies Partial<Record<HazardClass, number>>;

function isSensitiser(hazardClass: HazardClass): hazardClass is keyof typeof ELICITATION_LIMITS {
  return Object.hasOwn(ELICITATION_LIMITS, hazardClass);
}

/** Elicitation limit of a sensitiser; undefined for any other class. */
export function elicitationLimit(by: Classification): number | undefined {
  const { hazardClass } = by;
  if (!isSensitiser(hazardClass)) return undefined;
  const own = specificLimit(by, hazardClass, by.statement);
  return own === undefined ? ELICITATION_LIMITS[hazardClass] : own / 10;
}

/**
 * One EUH208 trace a sensitiser that is present from its elicitation limit and
 * does not itself classify the mixture; the label already warns of those that do.
 */
export function elicitationTraces(parts: readonly Part[]): StatementTrace[] {
  return parts.flatMap((part): StatementTrace[] => {
    const reached = part.classifications.filter((by) => {
      const limit = elicitationLimit(by);
      return (
        limit !== undefined &&
        reaches(countedFraction(part, by), limit) &&
        !classifiesAlone(part, by)
      );
    });
    const [by] = reached;
    if (by === undefined) return [];
    return [
      {
        statement: "EUH208",
        rule: "elicitation",
        source: "clp-1272-2008",
        values: {
          hazardClass: by.hazardClass,
          substance: part.name,
          massFraction: countedFraction(part, by),
          limit: certain(elicitationLimit(by)),
          ingredients: [part.slug],
        },
        shares: [traceShare(part, by)],
      },
    ];
  });
}

function classifiesAlone(part: Part, by: Classification): boolean {
  const generic = GENERIC_LIMITS.find(
    ({ of, gives }) =>
      of === by.hazardClass && classElements(of).family === classElements(gives).family,
  );
  const limit = specificLimit(by, by.hazardClass, by.statement) ?? generic?.from ?? Infinity;
  return reaches(countedFraction(part, by), limit);
}
