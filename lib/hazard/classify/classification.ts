/**
 * One classification of an ingredient, as its supplier states it, read into the
 * closed lists: code, class, route, estimate, factor, specific limits.
 */
import { given } from "../../quantities/given.ts";
import { isOneOf } from "../../quantities/members.ts";
import type { SourceKey } from "../../sources/source.ts";
import { nearestWord } from "../../diagnostics/nearest-word.ts";
import {
  HAZARD_CLASS_NAMES,
  isHazardClass,
  sameSeverity,
  type HazardClass,
} from "./hazard-class.ts";
import {
  HAZARD_CODES,
  isHazardCode,
  isHazardStatement,
  statementMeaning,
  type AcuteRoute,
  type HazardCode,
} from "../texts/hazard-statement.ts";
import { METALS, type Metal } from "../studio/metal-content.ts";
import { singleStatements } from "../texts/single-statements.ts";
import {
  ENTRAINED_SUPPLEMENTS,
  isEntrainedSupplement,
  SUPPLEMENTAL_CODES,
  type EntrainedSupplement,
} from "../texts/supplemental-code.ts";

/** As a record may give it; only the code is required. */
export interface ClassificationForm {
  readonly statement: string;
  readonly hazardClass?: string | undefined;
  /** Of an acute toxicity; "dust" beside another class says that only inhaled dust carries it. */
  readonly route?: string | undefined;
  /** Acute toxicity estimate: mg/kg, or mg/l over 4 h for dust and vapour. */
  readonly ate?: number | undefined;
  /** Multiplying factor of Aquatic Acute 1 or Chronic 1, >= 1. */
  readonly mFactor?: number | undefined;
  readonly specificLimits?: readonly SpecificLimitForm[] | undefined;
  /** Substances of one name count together against a limit (a group entry's salts). */
  readonly sumGroup?: string | undefined;
  /** The limit is on the metal in the mixture, not on the compound (Annex VI, note 1). */
  readonly countedAs?: string | undefined;
  readonly source?: SourceKey | undefined;
}

export interface SpecificLimitForm {
  readonly hazardClass?: string | undefined;
  /** Mass fraction from which the class applies. */
  readonly from: number;
  readonly statement?: string | undefined;
}

export interface SpecificLimit {
  readonly hazardClass: HazardClass;
  readonly from: number;
  readonly statement?: HazardCode;
}

export interface Classification {
  readonly statement: HazardCode;
  readonly hazardClass: HazardClass;
  readonly route?: AcuteRoute;
  readonly ate?: number;
  readonly mFactor: number;
  readonly specificLimits: readonly SpecificLimit[];
  readonly sumGroup?: string;
  readonly countedAs?: Metal;
  readonly source?: SourceKey;
}

/** A statement that only comes along with an ingredient: no class of the frame. */
export interface Supplement {
  readonly statement: EntrainedSupplement;
  readonly source?: SourceKey;
}

/** What is wrong in a record's classification, ready for a diagnostic; `path` is inside the classification. */
export interface HazardFault {
  readonly path: readonly (string | number)[];
  /** One sentence in plain words, without its full stop. */
  readonly message: string;
  readonly actual: string;
  readonly expected: string;
  readonly nearest?: string;
  /** Set where a build goes on: what states it counts as not classified, or a maker's label shows it as stated. */
  readonly severity?: "warning";
}

/** Whether a code is of the closed lists: a hazard statement, or a supplement that comes along. */
export function isKnownStatement(statement: string): boolean {
  return isHazardCode(statement) || isEntrainedSupplement(statement);
}

function fault(
  path: HazardFault["path"],
  message: string,
  actual: unknown,
  expected: string,
  known: readonly string[] = [],
): HazardFault {
  const nearest = typeof actual === "string" ? nearestWord(actual, known) : undefined;
  return {
    path,
    message,
    actual: String(actual),
    expected,
    ...(nearest !== undefined && { nearest }),
  };
}

/** The house sentence of a fault, for a value that should never have got this far. */
function faultError({ message, nearest }: HazardFault): RangeError {
  return new RangeError(`${message}${nearest === undefined ? "" : `; nearest: ${nearest}`}`);
}

/** A code alone is short for a classification with nothing else said. */
function asForm(stated: string | ClassificationForm): ClassificationForm {
  return typeof stated === "string" ? { statement: stated } : stated;
}

/**
 * Everything wrong in one classification as a record gives it.
 * @returns empty when {@link classification} will accept it.
 */
export function classificationFaults(stated: string | ClassificationForm): HazardFault[] {
  const form = asForm(stated);
  const { statement } = form;
  if (isEntrainedSupplement(statement)) return [];
  if (!isHazardCode(statement)) return [statementFault(statement)];
  const allowed: readonly string[] = statementMeaning(statement).classes;
  const routes = routesOf(statement);
  const { hazardClass, route, ate, mFactor, countedAs, specificLimits = [] } = form;
  return given([
    hazardClass !== undefined &&
      !allowed.includes(hazardClass) &&
      fault(
        ["hazardClass"],
        `${statement} is not a statement of the class ${hazardClass}, but of ${allowed.join(" or ")}`,
        hazardClass,
        allowed.join(" | "),
        allowed,
      ),
    route !== undefined &&
      !routes.includes(route) &&
      fault(
        ["route"],
        `${statement} is not about the route ${route}, but about ${routes.join(" or ")}`,
        route,
        routes.join(" | "),
        routes,
      ),
    ate !== undefined &&
      !(ate > 0 && ate < Infinity) &&
      fault(
        ["ate"],
        `The acute toxicity estimate is ${ate}, and lies above 0`,
        ate,
        "0 < ATE < Infinity",
      ),
    mFactor !== undefined &&
      !(mFactor >= 1 && mFactor < Infinity) &&
      fault(
        ["mFactor"],
        `The M-factor is ${mFactor}, and is 1 or more`,
        mFactor,
        "1 <= M < Infinity",
      ),
    countedAs !== undefined &&
      !isOneOf(METALS, countedAs) &&
      fault(
        ["countedAs"],
        `No limit is counted as ${countedAs}, but as ${METALS.join(" or ")}`,
        countedAs,
        METALS.join(" | "),
        METALS,
      ),
    ...specificLimits.flatMap((limit, i) => limitFaults(limit, ["specificLimits", i])),
  ]);
}

/**
 * A code that no class stands behind. One that the law does not know is a slip of the pen, and would take
 * a warning off; one that only nothing is worked out from leaves the substance not classified.
 */
function statementFault(statement: string): HazardFault {
  const parts = singleStatements(statement);
  if (parts.length > 1 && parts.every(isKnownStatement))
    return fault(
      ["statement"],
      `${statement} joins ${parts.length} statements, and each stands by itself: ${parts.join(", ")}`,
      statement,
      parts.join(", "),
    );
  if (isHazardStatement(statement) || isOneOf(SUPPLEMENTAL_CODES, statement))
    return {
      ...fault(
        ["statement"],
        `Nothing is worked out here from ${statement}, so what states it counts as not classified`,
        statement,
        "a hazard statement that a paint's label is worked out from, such as H302",
      ),
      severity: "warning",
    };
  return fault(
    ["statement"],
    `${statement} is no hazard statement of the frame, such as H302`,
    statement,
    "a hazard statement of the frame, such as H302",
    [...HAZARD_CODES, ...ENTRAINED_SUPPLEMENTS],
  );
}

function limitFaults(
  { hazardClass, from, statement }: SpecificLimitForm,
  path: HazardFault["path"],
): HazardFault[] {
  return given([
    !isHazardClass(hazardClass) &&
      fault(
        [...path, "hazardClass"],
        hazardClass === undefined
          ? "A limit needs its hazard class and category, such as Repr. 2"
          : `${hazardClass} is no hazard class and category, such as Repr. 2`,
        hazardClass,
        'a class and category, such as "Repr. 2"',
        HAZARD_CLASS_NAMES,
      ),
    !(from > 0 && from <= 1) &&
      fault(
        [...path, "from"],
        `The specific concentration limit is ${from}, and lies between 0 and 1`,
        from,
        "0 < limit <= 1",
      ),
    statement !== undefined &&
      !isHazardCode(statement) &&
      fault(
        [...path, "statement"],
        `${statement} is no hazard statement of the frame, such as H302`,
        statement,
        "a hazard statement of the frame, such as H302",
        HAZARD_CODES,
      ),
    isHazardCode(statement) &&
      isHazardClass(hazardClass) &&
      !statementMeaning(statement).classes.some((known) => known === hazardClass) &&
      fault(
        [...path, "statement"],
        `${statement} is not a statement of the class ${hazardClass}`,
        statement,
        "a statement of that class",
      ),
  ]);
}

function routesOf(statement: HazardCode): readonly string[] {
  const { route } = statementMeaning(statement);
  if (route === undefined) return ["dust"];
  return route === "inhalation" ? ["dust", "vapour"] : [route];
}

/**
 * A record's classification read into the closed lists; class and route follow
 * from the code where the record leaves them out (the most severe class that
 * carries the code).
 *
 * @throws RangeError for an unknown code (with the nearest known one), a class
 *   that does not carry it, an estimate of zero, a limit without a class.
 * @example classification("H302") // { statement: "H302", hazardClass: "Acute Tox. 4", route: "oral", ... }
 */
export function classification(stated: string | ClassificationForm): Classification | Supplement {
  const [first] = classificationFaults(stated);
  if (first !== undefined) throw faultError(first);
  const form = asForm(stated);
  const source = form.source === undefined ? {} : { source: form.source };
  if (isEntrainedSupplement(form.statement)) return { statement: form.statement, ...source };
  const statement = form.statement as HazardCode;
  const meaning = statementMeaning(statement);
  const route = form.route ?? (meaning.route === "inhalation" ? undefined : meaning.route);
  return {
    statement,
    mFactor: form.mFactor ?? 1,
    hazardClass: (form.hazardClass as HazardClass | undefined) ?? meaning.classes[0],
    specificLimits: (form.specificLimits ?? []) as readonly SpecificLimit[],
    ...(route !== undefined && { route: route as AcuteRoute }),
    ...(form.ate !== undefined && { ate: form.ate }),
    ...(form.sumGroup !== undefined && { sumGroup: form.sumGroup }),
    ...(form.countedAs !== undefined && { countedAs: form.countedAs as Metal }),
    ...source,
  };
}

/**
 * The specific limit of a classification for an outcome, if its record sets one:
 * the lowest of those that name the outcome's severity (and, if they name a
 * statement, that statement).
 */
export function specificLimit(
  of: Classification,
  outcome: HazardClass,
  statement: HazardCode,
): number | undefined {
  const limits = of.specificLimits.filter(
    (limit) =>
      sameSeverity(limit.hazardClass, outcome) &&
      (limit.statement === undefined || limit.statement === statement),
  );
  return limits.length === 0 ? undefined : Math.min(...limits.map((limit) => limit.from));
}
