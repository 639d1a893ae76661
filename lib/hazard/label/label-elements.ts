/**
 * The label elements of a mixture, worked out from its ingredients: signal word,
 * pictograms, statements, each with its reason.
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { AcuteOutcome } from "../classify/acute-toxicity.ts";
import type { LeftOut } from "../classify/applicable-classifications.ts";
import type { Finding, StatementTrace } from "../classify/finding.ts";
import { FRAME_EDITIONS, type HazardFrame, type PaintForm } from "../classify/frame.ts";
import {
  classElements,
  type HazardClass,
  type PictogramCode,
  type SignalWord,
} from "../classify/hazard-class.ts";
import type { AcuteRoute, HazardCode } from "../texts/hazard-statement.ts";
import { reaches } from "../classify/limit.ts";
import { mixtureHazards } from "../classify/mixture-hazards.ts";
import { mixtureParts, type Composition, type MixtureParts } from "../classify/composition.ts";
import { chosenPrecautions, type ChosenPrecaution } from "./precautionary-choice.ts";
import { labelStatements, pictograms, signalWord } from "../classify/precedence.ts";
import { smallPackageReduction, type SmallPackage } from "./small-package.ts";
import type { PrecautionRow } from "../texts/precautionary-statement.ts";
import type { SupplementalCode } from "../texts/supplemental-code.ts";
import { supplementalTraces, supplementsLeftOut } from "./supplemental-statements.ts";
import { given } from "../../quantities/given.ts";

export interface MixtureClass {
  readonly hazardClass: HazardClass;
  readonly statement: HazardCode;
  readonly route?: AcuteRoute;
  /** False when it holds only at the upper end of a fraction, or for want of a flash point or viscosity. */
  readonly certain: boolean;
}

/** What a label cannot tell: ingredients without data, shares that nobody accounts for, codes that no list knows. */
export type GapStatement =
  | StatementOf<
      "no-hazard-data",
      { readonly ingredient: string; readonly name: string; readonly massFraction: Quantity }
    >
  | StatementOf<"total-short-of-the-whole", { readonly unaccounted: number }>
  | StatementOf<
      "statement-not-known",
      { readonly statements: readonly string[]; readonly name: string }
    >;
export type UnknownToxicityStatement = StatementOf<
  "unknown-acute-toxicity",
  {
    readonly routes: readonly AcuteRoute[];
    readonly massFraction: number;
    readonly ingredients: readonly string[];
  }
>;

export interface LabelElements {
  readonly basis: "worked out";
  readonly frame: HazardFrame;
  readonly edition: string;
  readonly form: PaintForm;
  readonly classes: readonly MixtureClass[];
  readonly signalWord: SignalWord | null;
  readonly pictograms: readonly PictogramCode[];
  /** In the order of a label, those that another one covers left out. */
  readonly hazardStatements: readonly HazardCode[];
  readonly precautionaryStatements: readonly ChosenPrecaution[];
  readonly supplemental: readonly SupplementalCode[];
  /** Names that EUH208 lists. */
  readonly sensitisers: readonly string[];
  /** Why each H and EUH statement stands there. */
  readonly traces: readonly StatementTrace[];
  /** What ingredients state and the mixture does not carry, with the cause. */
  readonly leftOut: readonly LeftOut[];
  /** "x % of the mixture consists of ingredients of unknown acute toxicity": a line of the label, a route each. */
  readonly unknownAcuteToxicity: readonly UnknownToxicityStatement[];
  /** Ingredients without hazard data and shares that nobody accounts for: to be treated as hazardous. */
  readonly gaps: readonly GapStatement[];
  readonly smallPackage?: SmallPackage;
}

/**
 * Label elements of a paint, or of the dry pigment alone (fraction 1, a powder).
 * A fraction that is a range counts at its upper end; a class that its lower end
 * would not give is marked as not certain.
 *
 * @throws RangeError as {@link mixtureParts} does.
 */
export function labelElements(
  mixture: Composition,
  precautions: readonly PrecautionRow[],
): LabelElements {
  const parts = mixtureParts(mixture);
  const most = mixtureHazards(parts.atMost, mixture, parts.unaccounted);
  const isExact = parts.atMost.every(({ stated }) => typeof stated === "number");
  const least = isExact ? most : mixtureHazards(parts.atLeast, mixture, parts.unaccounted);
  const stated = labelStatements(most.findings);
  const supplements = supplementalTraces(most.parts, most.findings, mixture);
  const carried = most.findings.filter(({ statement }) => stated.statements.includes(statement));
  const chosen = chosenPrecautions(carried, mixture, precautions);
  const smallPackage = smallPackageReduction(carried, chosen, mixture);
  return {
    basis: "worked out",
    frame: mixture.frame,
    edition: FRAME_EDITIONS[mixture.frame].edition,
    form: mixture.form,
    classes: most.findings.map((finding) => mixtureClass(finding, least.findings)),
    signalWord: signalWord(most.findings) ?? null,
    pictograms: pictograms(most.findings),
    hazardStatements: stated.statements,
    precautionaryStatements: chosen,
    supplemental: [...new Set(supplements.map(({ statement }) => statement as SupplementalCode))],
    sensitisers: supplements.flatMap((trace) =>
      trace.rule === "elicitation" ? [trace.values.substance] : [],
    ),
    traces: [...most.findings.flatMap(({ traces }) => traces), ...supplements],
    leftOut: [
      ...most.leftOut,
      ...stated.leftOut,
      ...supplementsLeftOut(most.parts, most.findings, mixture),
    ],
    unknownAcuteToxicity: unknownLines(most.acute),
    gaps: gaps(parts),
    ...(smallPackage !== undefined && { smallPackage }),
  };
}

function mixtureClass(finding: Finding, least: readonly Finding[]): MixtureClass {
  const { hazardClass, statement, route } = finding;
  const holds = least.some(
    (other) =>
      other.statement === statement &&
      other.route === route &&
      classElements(other.hazardClass).rank <= classElements(hazardClass).rank,
  );
  return {
    hazardClass,
    statement,
    certain: finding.certain && holds,
    ...(route !== undefined && { route }),
  };
}

/** Routes with the same unknown ingredients share a line. */
function unknownLines(outcomes: readonly AcuteOutcome[]): UnknownToxicityStatement[] {
  const lines = new Map<
    string,
    { readonly routes: AcuteRoute[]; readonly unknown: AcuteOutcome["unknown"] }
  >();
  for (const { route, unknown } of outcomes) {
    if (unknown.slugs.length === 0) continue;
    const key = unknown.slugs.join(" ");
    const line = lines.get(key) ?? { routes: [], unknown };
    line.routes.push(route);
    lines.set(key, line);
  }
  return [...lines.values()].map(({ routes, unknown }) => ({
    rule: "unknown-acute-toxicity",
    source: "clp-1272-2008-memory",
    values: { routes, massFraction: unknown.massFraction, ingredients: unknown.slugs },
  }));
}

/** From which share on a total short of the whole is a gap, not rounding. */
const GAP_FROM = 0.001;

function gaps({ atMost, unaccounted }: MixtureParts): GapStatement[] {
  const unknown = atMost.flatMap(({ slug, name, stated, known, unread }): GapStatement[] =>
    given([
      !known && {
        rule: "no-hazard-data" as const,
        values: { ingredient: slug, name, massFraction: stated },
      },
      unread.length > 0 && {
        rule: "statement-not-known" as const,
        values: { statements: unread, name },
      },
    ]),
  );
  return reaches(unaccounted, GAP_FROM)
    ? [...unknown, { rule: "total-short-of-the-whole", values: { unaccounted } }]
    : unknown;
}
