/**
 * Classes that a mixture takes on as soon as one ingredient (or one group that
 * counts together) reaches its limit: no adding up across substances.
 *
 * @source clp-1272-2008 : Tables 3.4.5, 3.5.2, 3.6.2, 3.7.2, 3.8.2, 3.9.4
 * @source clp-new-classes-2023 : endocrine disruption, persistence and mobility
 */
import { grouped } from "../../quantities/grouped.ts";
import { specificLimit, type Classification } from "./classification.ts";
import { countedFraction, findingBy, traceShare, type Finding } from "./finding.ts";
import type { HazardClass } from "./hazard-class.ts";
import type { HazardCode } from "../texts/hazard-statement.ts";
import { reaches } from "./limit.ts";
import type { Part } from "./composition.ts";
import { isSubstance, type SubstanceName } from "./substance.ts";
import type { SourceKey } from "../../sources/source.ts";

export interface GenericLimit {
  /** Class of the ingredient, and class that the mixture takes on. */
  readonly of: HazardClass;
  readonly gives: HazardClass;
  /** Mass fraction, inclusive. */
  readonly from: number;
  readonly statement: HazardCode;
  readonly source: SourceKey;
}

const READ = "clp-1272-2008",
  MEMORY = "clp-1272-2008-memory",
  NEW_CLASSES = "clp-new-classes-2023";

function itself(
  classes: readonly HazardClass[],
  from: number,
  statement: HazardCode,
  source: SourceKey,
): GenericLimit[] {
  return classes.map((of) => ({ of, gives: of, from, statement, source }));
}

/** Reproductive toxicity is not here: its two effects have limits of their own (reproduction.ts). */
export const GENERIC_LIMITS: readonly GenericLimit[] = [
  ...itself(["Muta. 1", "Muta. 1A", "Muta. 1B"], 0.001, "H340", READ),
  ...itself(["Muta. 2"], 0.01, "H341", READ),
  ...itself(["Carc. 1", "Carc. 1A", "Carc. 1B"], 0.001, "H350", READ),
  ...itself(["Carc. 2"], 0.01, "H351", READ),
  ...itself(["Lact."], 0.003, "H362", READ),
  ...itself(["Resp. Sens. 1", "Resp. Sens. 1B"], 0.01, "H334", READ),
  ...itself(["Resp. Sens. 1A"], 0.001, "H334", READ),
  ...itself(["Skin Sens. 1", "Skin Sens. 1B"], 0.01, "H317", READ),
  ...itself(["Skin Sens. 1A"], 0.001, "H317", READ),
  ...itself(["STOT SE 1"], 0.1, "H370", READ),
  { of: "STOT SE 1", gives: "STOT SE 2", from: 0.01, statement: "H371", source: READ },
  ...itself(["STOT SE 2"], 0.1, "H371", READ),
  ...itself(["STOT RE 1"], 0.1, "H372", READ),
  { of: "STOT RE 1", gives: "STOT RE 2", from: 0.01, statement: "H373", source: READ },
  ...itself(["STOT RE 2"], 0.1, "H373", READ),
  ...itself(["ED HH 1"], 0.001, "EUH380", NEW_CLASSES),
  ...itself(["ED HH 2"], 0.01, "EUH381", NEW_CLASSES),
  ...itself(["ED ENV 1"], 0.001, "EUH430", NEW_CLASSES),
  ...itself(["ED ENV 2"], 0.01, "EUH431", NEW_CLASSES),
  ...itself(["PBT"], 0.001, "EUH440", NEW_CLASSES),
  ...itself(["vPvB"], 0.001, "EUH441", NEW_CLASSES),
  ...itself(["PMT"], 0.001, "EUH450", NEW_CLASSES),
  ...itself(["vPvM"], 0.001, "EUH451", NEW_CLASSES),
  ...itself(["Ozone 1"], 0.001, "H420", MEMORY),
];

/** Every class of the mixture that a cut-off gives; families are sorted out later. */
export function cutOffFindings(parts: readonly Part[]): Finding[] {
  return GENERIC_LIMITS.flatMap((row) =>
    groupFindings(parts, {
      select: ({ hazardClass }) => hazardClass === row.of,
      gives: row.gives,
      statement: row.statement,
      genericFrom: row.from,
      source: row.source,
    }),
  );
}

export interface CutOff {
  readonly select: (by: Classification) => boolean;
  readonly gives: HazardClass;
  readonly statement: HazardCode;
  readonly genericFrom: number;
  readonly source: SourceKey;
}

interface Member {
  readonly part: Part;
  readonly by: Classification;
  readonly limit: number;
  readonly isSpecific: boolean;
}

/**
 * A cut-off held against each group: one substance, however many entries it has
 * (same CAS number), or substances that count together. In a group whose members
 * have limits of their own the reached shares of the limits add up.
 */
export function groupFindings(parts: readonly Part[], cutOff: CutOff): Finding[] {
  const groups = grouped(
    parts.flatMap((part) =>
      part.classifications.filter(cutOff.select).map((by): readonly [string, Member] => {
        const own = specificLimit(by, cutOff.gives, cutOff.statement);
        const limit = own ?? cutOff.genericFrom;
        return [groupKey(part, by), { part, by, limit, isSpecific: own !== undefined }];
      }),
    ),
  );
  return [...groups.values()].flatMap((members) => {
    const reached = members.reduce(
      (sum, { part, by, limit }) => sum + countedFraction(part, by) / limit,
      0,
    );
    return reaches(reached, 1) ? [groupFinding(cutOff, members)] : [];
  });
}

function groupFinding(cutOff: CutOff, members: readonly Member[]): Finding {
  // A supplier who writes H350i knows that only inhalation carries the hazard; one other voice makes it H350.
  const byInhalation =
    cutOff.statement === "H350" && members.every(({ by }) => by.statement === "H350i");
  const statement = byInhalation ? "H350i" : cutOff.statement;
  return findingBy(cutOff.gives, {
    statement,
    rule: members.length > 1 ? "cut-off-summed" : "cut-off",
    source: cutOff.source,
    values: {
      hazardClass: cutOff.gives,
      massFraction: members.reduce((sum, { part, by }) => sum + countedFraction(part, by), 0),
      limit: Math.min(...members.map(({ limit }) => limit)),
      limitKind: members.some(({ isSpecific }) => isSpecific) ? "specific" : "generic",
      countedAs: members[0]?.by.countedAs ?? "substance",
      ingredients: members.map(({ part }) => part.slug),
    },
    shares: members.map(({ part, by }) => traceShare(part, by)),
  });
}

/** Annex VI entries whose limit applies to the sum of their substances. */
const SUMMED_ENTRIES = [
  "2-ethylhexanoic acid and its salts",
] as const satisfies readonly SubstanceName[];

/** Members of one key count together against a limit. */
export function groupKey(part: Part, by: Classification): string {
  const entry = SUMMED_ENTRIES.find((name) => isSubstance(part, name));
  return by.sumGroup ?? entry ?? part.casNumber ?? part.slug;
}
