/**
 * Supplemental statements (EUH) of the EU frame.
 *
 * @source clp-annex-2-memory
 * @source practice-hazard : from which share an ingredient's own supplement comes along
 */
import type { LeftOut } from "../classify/applicable-classifications.ts";
import { sameSeverity, type HazardClass } from "../classify/hazard-class.ts";
import {
  traceShare,
  type Finding,
  type StatementTrace,
  type TraceShare,
} from "../classify/finding.ts";
import { passes, reaches } from "../classify/limit.ts";
import { metalIn, type Composition, type Part } from "../classify/composition.ts";
import { elicitationLimit, elicitationTraces } from "../classify/sensitisers.ts";
import {
  ENTRAINED_SUPPLEMENTS,
  SUPPLEMENTAL_CODES,
  type EntrainedSupplement,
} from "../texts/supplemental-code.ts";

/** Lead as metal in a paint above which the label says so, mass fraction: exceeding, not reaching. */
const LEAD_LIMIT = 0.0015;
/** Below this content of the package the short warning stands for the long one [ml]. */
const SHORT_LEAD_WARNING_BELOW_ML = 125;

/** From which fraction an ingredient's own supplement comes along (common practice, no source). */
const ENTRAINED_FROM = 0.01;
/** Dryness of the skin takes more (common practice, no source). */
const DRYNESS_FROM = 0.1;

/** Every EUH statement of the mixture with its reason, in the order of the codes; none in the UN frame. */
export function supplementalTraces(
  parts: readonly Part[],
  findings: readonly Finding[],
  mixture: Composition,
): StatementTrace[] {
  if (mixture.frame !== "EU CLP") return [];
  const traces = [
    ...entrained(parts, findings),
    ...leadWarning(parts, mixture),
    ...elicitationTraces(parts),
    ...dataSheetOnRequest(parts, findings, mixture),
  ];
  return traces.toSorted((one, other) => order(one.statement) - order(other.statement));
}

function order(statement: string): number {
  return (SUPPLEMENTAL_CODES as readonly string[]).indexOf(statement);
}

interface Entrained {
  readonly statement: EntrainedSupplement;
  readonly members: readonly Part[];
  readonly massFraction: number;
  readonly limit: number;
}

/** Supplements that ingredients state, with what there is of these, and from which share they come along. */
function stated(parts: readonly Part[]): Entrained[] {
  return ENTRAINED_SUPPLEMENTS.flatMap((statement) => {
    const members = parts.filter(
      ({ supplements, massFraction }) =>
        massFraction > 0 && supplements.some((each) => each.statement === statement),
    );
    if (members.length === 0) return [];
    return {
      statement,
      members,
      massFraction: members.reduce((sum, part) => sum + part.massFraction, 0),
      limit: statement === "EUH066" ? DRYNESS_FROM : ENTRAINED_FROM,
    };
  });
}

/** What says more than dryness of the skin. */
function saysMore(findings: readonly Finding[]): string | undefined {
  return findings.find(({ statement }) => statement === "H314" || statement === "H315")?.statement;
}

function entrained(parts: readonly Part[], findings: readonly Finding[]): StatementTrace[] {
  return stated(parts)
    .filter(({ statement }) => statement !== "EUH066" || saysMore(findings) === undefined)
    .filter(({ massFraction, limit }) => reaches(massFraction, limit))
    .map(({ statement, members, massFraction, limit }) => ({
      statement,
      rule: "as-its-ingredients",
      source: "practice-hazard",
      values: { massFraction, limit, ingredients: members.map(({ slug }) => slug) },
      shares: members.map((part) => traceShare(part)),
    }));
}

/** Supplements that ingredients state and the label does not carry, with the cause; none in the UN frame, which has no EUH statement. */
export function supplementsLeftOut(
  parts: readonly Part[],
  findings: readonly Finding[],
  { frame }: Pick<Composition, "frame">,
): LeftOut[] {
  if (frame !== "EU CLP") return [];
  const by = saysMore(findings);
  return stated(parts).flatMap(({ statement, members, massFraction, limit }): LeftOut[] => {
    if (!reaches(massFraction, limit))
      return [
        {
          statement,
          rule: "below-its-limit",
          values: { ingredients: members.map(({ slug }) => slug), massFraction, limit },
        },
      ];
    return statement === "EUH066" && by !== undefined
      ? [{ statement, rule: "covered-by", values: { by } }]
      : [];
  });
}

/** Lead in a paint, by metal; a lead compound whose share of metal is not known counts as over the limit. */
function leadWarning(parts: readonly Part[], { form, packageMl }: Composition): StatementTrace[] {
  if (form === "powder") return [];
  const members = parts.filter(
    ({ metals, massFraction }) => metals.lead !== undefined && massFraction > 0,
  );
  const { massFraction: lead, isUnknown } = metalIn(members, "lead");
  if (!isUnknown && !passes(lead, LEAD_LIMIT)) return [];
  const isSmall = packageMl !== undefined && packageMl < SHORT_LEAD_WARNING_BELOW_ML;
  return [
    {
      statement: isSmall ? "EUH201A" : "EUH201",
      rule: isUnknown ? "lead-share-not-stated" : "lead-as-metal",
      source: "clp-annex-2-memory",
      values: {
        massFraction: lead,
        limit: LEAD_LIMIT,
        ingredients: members.map(({ slug }) => slug),
        ...(packageMl !== undefined && { packageMl, shortBelowMl: SHORT_LEAD_WARNING_BELOW_ML }),
      },
      shares: members.map((part) => traceShare(part)),
    },
  ];
}

/** Classes whose traces call for a data sheet on request, and from which fraction; sensitisers have their elicitation limits. */
const TRACES: readonly { readonly like: HazardClass; readonly from: number }[] = [
  { like: "Carc. 2", from: 0.001 },
  { like: "Repr. 1", from: 0.001 },
  { like: "Repr. 2", from: 0.001 },
  { like: "Lact.", from: 0.001 },
];
const ANY_HAZARD_FROM = 0.01;
/** Of a substance with a limit in workplace air. */
const WORKPLACE_LIMIT_FROM = 0.01;

function dataSheetOnRequest(
  parts: readonly Part[],
  findings: readonly Finding[],
  { publicSale }: Composition,
): StatementTrace[] {
  if (findings.length > 0 || publicSale) return [];
  const members = parts.filter(callsForDataSheet);
  if (members.length === 0) return [];
  const shares: TraceShare[] = members.map((part) => traceShare(part, part.classifications[0]));
  return [
    {
      statement: "EUH210",
      rule: "traces-in-an-unclassified-mixture",
      source: "clp-annex-2-memory",
      values: { ingredients: members.map(({ slug }) => slug) },
      shares,
    },
  ];
}

function callsForDataSheet(part: Part): boolean {
  if (part.workplaceLimit && reaches(part.massFraction, WORKPLACE_LIMIT_FROM)) return true;
  return part.classifications.some((by) => {
    const trace =
      elicitationLimit(by) ??
      TRACES.find(({ like }) => sameSeverity(like, by.hazardClass))?.from ??
      ANY_HAZARD_FROM;
    const isHealthOrAquatic = /^(H[34]|EUH(3|4[345]))/.test(by.statement);
    return isHealthOrAquatic && reaches(part.massFraction, trace);
  });
}
