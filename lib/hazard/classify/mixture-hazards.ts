/**
 * The classes of a mixture: every rule run over its parts, then the most severe
 * of each family kept.
 */
import { grouped } from "../../quantities/grouped.ts";
import { acuteOutcomes, type AcuteOutcome } from "./acute-toxicity.ts";
import { acuteRoutes, applicableParts, type LeftOut } from "./applicable-classifications.ts";
import { belowLimits } from "./below-limit.ts";
import { cutOffFindings } from "./cut-offs.ts";
import type { Finding } from "./finding.ts";
import { classElements } from "./hazard-class.ts";
import { HAZARD_CODES } from "../texts/hazard-statement.ts";
import type { Composition, Part } from "./composition.ts";
import { physicalOutcome } from "./physical-hazards.ts";
import { reproductionFindings } from "./reproduction.ts";
import { sumFindings } from "./weighted-sums.ts";

export interface MixtureHazards {
  /** One a family, in the order of a label. */
  readonly findings: readonly Finding[];
  readonly acute: readonly AcuteOutcome[];
  readonly leftOut: readonly LeftOut[];
  /** The parts with the classifications that count. */
  readonly parts: readonly Part[];
}

/**
 * Classes of the parts at their given fractions.
 * @param unaccounted share of the mixture that no part accounts for, 0-1.
 */
export function mixtureHazards(
  given: readonly Part[],
  mixture: Composition,
  unaccounted: number,
): MixtureHazards {
  const { parts, leftOut } = applicableParts(given, mixture.form, mixture.frame);
  const acute = acuteOutcomes(parts, acuteRoutes(mixture.form), mixture.frame, unaccounted);
  const physical = physicalOutcome(parts, mixture);
  const all = [
    ...physical.findings,
    ...acute.flatMap(({ finding }) => (finding === undefined ? [] : [finding])),
    ...cutOffFindings(parts),
    ...reproductionFindings(parts),
    ...sumFindings(parts, mixture.frame),
  ];
  const findings = worstOfEachFamily(all);
  const setAside = [...leftOut, ...physical.leftOut];
  return {
    findings,
    acute,
    leftOut: [...setAside, ...belowLimits(parts, findings, setAside, acute, mixture.frame)],
    parts,
  };
}

/** Acute toxicity is one family a route of exposure, and H335 and H336 stand side by side. */
function familyOf({ hazardClass, statement, route }: Finding): string {
  const { family } = classElements(hazardClass);
  if (route !== undefined) return `${family} ${route}`;
  return hazardClass === "STOT SE 3" ? `${family} ${statement}` : family;
}

function worstOfEachFamily(findings: readonly Finding[]): Finding[] {
  const families = grouped(findings.map((finding) => [familyOf(finding), finding] as const));
  const kept = [...families.values()].map((family) => {
    const rank = Math.min(...family.map(({ hazardClass }) => classElements(hazardClass).rank));
    return joined(family.filter(({ hazardClass }) => classElements(hazardClass).rank === rank));
  });
  return inOrder(kept);
}

function inOrder(findings: readonly Finding[]): Finding[] {
  return findings.toSorted(
    (one, other) => HAZARD_CODES.indexOf(one.statement) - HAZARD_CODES.indexOf(other.statement),
  );
}

/** Findings of one class: all their reasons, and the statement that covers all of them (H350 before H350i). */
function joined(same: readonly Finding[]): Finding {
  const [first] = inOrder(same) as [Finding, ...Finding[]];
  const traces = same.flatMap((finding) =>
    finding.traces.map((trace) => ({ ...trace, statement: first.statement })),
  );
  return { ...first, traces, certain: same.some(({ certain }) => certain) };
}
