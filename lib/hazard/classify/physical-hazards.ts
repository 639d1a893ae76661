/**
 * Flammable liquids, aspiration, and the physical classes that only a test of the
 * mixture itself can settle.
 *
 * @source clp-1272-2008-memory : Annex I, 2.6 and 3.10
 */
import { findingBy, traceShare, type Finding } from "./finding.ts";
import type { LeftOut, PhysicalLeftOutStatement } from "./applicable-classifications.ts";
import { isOfFrame } from "./frame.ts";
import { classElements, type HazardClass } from "./hazard-class.ts";
import type { HazardCode } from "../texts/hazard-statement.ts";
import { reaches } from "./limit.ts";
import type { Composition, Part } from "./composition.ts";
import { ASPIRATION_RULES } from "./sum-rules.ts";
import { ruleFindings } from "./weighted-sums.ts";

/** An ingredient of this fraction is the mixture, for the classes that do not add up. */
const PRACTICALLY_ALONE = 0.99;
/** Below this fraction a flammable ingredient is left to the flash point (common practice, no source). */
const FLAMMABLE_FROM = 0.01;
const MEMORY = "clp-1272-2008-memory";

export interface PhysicalOutcome {
  readonly findings: readonly Finding[];
  readonly leftOut: readonly LeftOut[];
}

/** Physical classes of the mixture, and those of its ingredients that do not carry over, with the cause. */
export function physicalOutcome(parts: readonly Part[], mixture: Composition): PhysicalOutcome {
  const flammable = flammableLiquid(parts, mixture);
  const aspiration = aspirationOutcome(parts, mixture);
  const others = otherPhysical(parts);
  return {
    findings: [...flammable.findings, ...aspiration.findings, ...others.findings],
    leftOut: [...flammable.leftOut, ...aspiration.leftOut, ...others.leftOut],
  };
}

function withFamily(
  parts: readonly Part[],
  families: readonly string[],
): { part: Part; by: Part["classifications"][number] }[] {
  return parts.flatMap((part) =>
    part.classifications
      .filter((by) => families.includes(classElements(by.hazardClass).family))
      .map((by) => ({ part, by })),
  );
}

function left(part: Part, statement: HazardCode, rule: PhysicalLeftOutStatement["rule"]): LeftOut {
  return { statement, rule, values: { ingredient: part.slug, name: part.name }, source: MEMORY };
}

interface FlammableClass {
  readonly hazardClass: HazardClass;
  readonly statement: HazardCode;
}

/**
 * Class of a flammable liquid from its closed-cup flash point and initial boiling point.
 * @returns undefined above 60 degrees C (93 in the UN frame).
 */
export function flammableLiquidClass(
  flashPointC: number,
  initialBoilingPointC: number | undefined,
  frame: Composition["frame"],
): FlammableClass | undefined {
  if (flashPointC < 23) {
    const boilsLow = initialBoilingPointC !== undefined && initialBoilingPointC <= 35;
    return boilsLow
      ? { hazardClass: "Flam. Liq. 1", statement: "H224" }
      : { hazardClass: "Flam. Liq. 2", statement: "H225" };
  }
  if (flashPointC <= 60) return { hazardClass: "Flam. Liq. 3", statement: "H226" };
  return frame === "UN GHS" && flashPointC <= 93
    ? { hazardClass: "Flam. Liq. 4", statement: "H227" }
    : undefined;
}

function flammableLiquid(parts: readonly Part[], mixture: Composition): PhysicalOutcome {
  const members = withFamily(parts, ["flammable liquid"]);
  if (mixture.form !== "liquid") {
    return {
      findings: [],
      leftOut: members.map(({ part, by }) => left(part, by.statement, "not-a-liquid")),
    };
  }
  if (mixture.flashPointC !== undefined) {
    const given = flammableLiquidClass(
      mixture.flashPointC,
      mixture.initialBoilingPointC,
      mixture.frame,
    );
    const leftOut = members
      .filter(({ by }) => by.statement !== given?.statement)
      .map(({ part, by }) => left(part, by.statement, "flash-point-decides"));
    if (given === undefined) return { findings: [], leftOut };
    const values = {
      hazardClass: given.hazardClass,
      flashPointC: mixture.flashPointC,
      ingredients: members.map(({ part }) => part.slug),
    };
    const trace = {
      statement: given.statement,
      rule: "flash-point" as const,
      values,
      source: MEMORY,
      shares: members.map(({ part, by }) => traceShare(part, by)),
    } as const;
    return { leftOut, findings: [findingBy(given.hazardClass, trace)] };
  }
  const counted = members.filter(({ part }) => reaches(part.massFraction, FLAMMABLE_FROM));
  const worst = counted.toSorted(
    (one, other) =>
      classElements(one.by.hazardClass).rank - classElements(other.by.hazardClass).rank,
  )[0];
  const leftOut = members
    .filter(({ part }) => !reaches(part.massFraction, FLAMMABLE_FROM))
    .map(({ part, by }) => left(part, by.statement, "flammable-trace"));
  return {
    leftOut,
    findings:
      worst === undefined ? [] : [asIngredient(worst.part, worst.by, "flash-point-not-stated")],
  };
}

/** The mixture takes on the class of one ingredient; certain only when that ingredient is all there is. */
function asIngredient(
  part: Part,
  by: Part["classifications"][number],
  otherwise: "as-its-ingredient" | "flash-point-not-stated" = "as-its-ingredient",
): Finding {
  const isAlone = reaches(part.massFraction, PRACTICALLY_ALONE);
  const { statement, hazardClass } = by;
  return findingBy(
    hazardClass,
    {
      statement,
      rule: isAlone ? "as-its-ingredient" : otherwise,
      source: MEMORY,
      values: { hazardClass, ingredients: [part.slug], massFraction: part.massFraction },
      shares: [traceShare(part, by)],
    },
    isAlone,
  );
}

function aspirationOutcome(parts: readonly Part[], mixture: Composition): PhysicalOutcome {
  const { form, frame, kinematicViscosityMm2PerS: viscosity } = mixture;
  const members = withFamily(parts, ["aspiration"]);
  if (form !== "liquid")
    return {
      findings: [],
      leftOut: members.map(({ part, by }) => left(part, by.statement, "not-a-liquid")),
    };
  const rules = ASPIRATION_RULES.filter((rule) => isOfFrame(rule, frame));
  const thin = rules.filter(
    ({ viscosityUpTo }) => viscosity === undefined || reaches(viscosityUpTo, viscosity),
  );
  const findings = thin
    .flatMap((rule) => ruleFindings(parts, rule))
    .map((finding) => ({ ...finding, certain: viscosity !== undefined || isAlone(parts) }));
  const thick = rules
    .filter((rule) => !thin.includes(rule))
    .flatMap((rule) => members.filter(({ by }) => rule.gives === by.hazardClass));
  return {
    findings,
    leftOut: thick.map(({ part, by }) => left(part, by.statement, "too-viscous-to-aspirate")),
  };
}

function isAlone(parts: readonly Part[]): boolean {
  return parts.some((part) => reaches(part.massFraction, PRACTICALLY_ALONE));
}

const NEEDS_A_TEST = [
  "flammable solid",
  "self-heating",
  "water-reactive",
  "oxidising solid",
  "corrosive to metals",
  "aerosol",
  "gas under pressure",
];

function otherPhysical(parts: readonly Part[]): PhysicalOutcome {
  const members = withFamily(parts, NEEDS_A_TEST);
  return {
    findings: members
      .filter(({ part }) => reaches(part.massFraction, PRACTICALLY_ALONE))
      .map(({ part, by }) => asIngredient(part, by)),
    leftOut: members
      .filter(({ part }) => !reaches(part.massFraction, PRACTICALLY_ALONE))
      .map(({ part, by }) => left(part, by.statement, "needs-a-test-of-the-mixture")),
  };
}
