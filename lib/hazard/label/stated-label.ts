/**
 * The label elements that the maker states: held to the closed lists, and against
 * what the composition comes to. The maker's stand; differences are said.
 */
import { given } from "../../quantities/given.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import { nearestWord } from "../../diagnostics/nearest-word.ts";
import type { HazardFault } from "../classify/classification.ts";
import { FRAME_EDITIONS, HAZARD_FRAMES, type HazardFrame } from "../classify/frame.ts";
import {
  classElements,
  HAZARD_CLASS_NAMES,
  PICTOGRAM_CODES,
  SIGNAL_WORDS,
} from "../classify/hazard-class.ts";
import {
  HAZARD_CODES,
  isHazardCode,
  isHazardStatement,
  statementMeaning,
  type HazardCode,
} from "../texts/hazard-statement.ts";
import type { LabelElements } from "./label-elements.ts";
import { precaution, type PrecautionRow } from "../texts/precautionary-statement.ts";
import { isGrave, PRECAUTIONS_AT_MOST } from "./precautionary-choice.ts";
import { COVERED_BY } from "../classify/precedence.ts";
import { singleStatements } from "../texts/single-statements.ts";
import type { StatementTexts } from "../texts/statement-texts.ts";
import { SUPPLEMENTAL_CODES, WITHDRAWN_SUPPLEMENTS } from "../texts/supplemental-code.ts";

export interface StatedLabel {
  readonly frame: string;
  readonly signalWord: string | null;
  readonly pictograms: readonly string[];
  /** "H302", or several in one: "H302+H332". */
  readonly hazardStatements: readonly string[];
  readonly precautionaryStatements?: readonly string[] | undefined;
  readonly supplemental?: readonly string[] | undefined;
  /** Classes and categories that the maker puts the paint in. */
  readonly classification?: readonly string[] | undefined;
  /** Substances that EUH208 names; it cannot be printed without. */
  readonly sensitisers?: readonly string[] | undefined;
  /** Of the label, ISO. */
  readonly date?: string | undefined;
  /** Unique formula identifier: four groups of four. */
  readonly ufi?: string | undefined;
}

interface Differs {
  readonly stated: string;
  readonly workedOut: string;
}
interface Code {
  readonly code: string;
}
interface Uncertain {
  readonly certain: "yes" | "no";
  readonly ingredients: readonly string[];
}

/** Where a stated label and the worked-out one part, or the stated one is not of its edition. */
export type LabelDifference =
  | StatementOf<"frame-differs", Differs>
  | StatementOf<"signal-word-differs", Differs>
  | StatementOf<"pictogram-not-stated", Code>
  | StatementOf<"pictogram-not-worked-out", Code>
  | StatementOf<"supplement-not-stated", Code>
  | StatementOf<"supplement-not-worked-out", Code>
  | StatementOf<"statement-not-stated", Uncertain & { readonly statement: string }>
  | StatementOf<"statement-differs", Differs & Uncertain>
  | StatementOf<"statement-not-worked-out", { readonly statement: string }>
  | StatementOf<"statement-annulled", { readonly statement: string }>
  | StatementOf<"not-of-the-frame", { readonly statement: string; readonly frame: HazardFrame }>
  | StatementOf<
      "older-than-the-edition",
      { readonly statement: string; readonly replacement: string; readonly edition: string }
    >
  | StatementOf<
      "label-older-than-the-edition",
      { readonly date: string; readonly edition: string; readonly asOf: string }
    >
  | StatementOf<"too-many-precautions", { readonly count: number; readonly atMost: number }>;

/** Digits and capitals of a UFI: those that can be mistaken for another are not used (memory). */
const UFI = /^[0-9ACDEFGHJKMNPQRSTUVWXY]{4}(-[0-9ACDEFGHJKMNPQRSTUVWXY]{4}){3}$/;

/** Whatever a stated label holds that is of no closed list; empty when it can be printed. */
export function statedLabelFaults(
  label: StatedLabel,
  lists: { readonly precautions: readonly PrecautionRow[]; readonly texts: StatementTexts },
): HazardFault[] {
  const {
    precautionaryStatements: precautions = [],
    supplemental = [],
    classification = [],
    sensitisers = [],
  } = label;
  const nameless = supplemental.indexOf("EUH208");
  return given([
    ...unknownWordFault(["frame"], "frame", label.frame, HAZARD_FRAMES),
    ...(label.signalWord === null
      ? []
      : unknownWordFault(["signalWord"], "signal word", label.signalWord, SIGNAL_WORDS)),
    ...label.pictograms.flatMap((code, i) =>
      unknownWordFault(["pictograms", i], "pictogram", code, PICTOGRAM_CODES),
    ),
    ...label.hazardStatements.flatMap((stated, i) =>
      singleStatements(stated).flatMap((code) =>
        unreckonedAsWarning(
          code,
          unknownWordFault(["hazardStatements", i], "statement code", code, HAZARD_CODES),
        ),
      ),
    ),
    ...precautions.flatMap((code, i) =>
      precautionFaults(["precautionaryStatements", i], code, label.frame, lists),
    ),
    ...supplemental.flatMap((code, i) =>
      unreckonedAsWarning(
        code,
        unknownWordFault(["supplemental", i], "statement code", code, SUPPLEMENTAL_CODES),
      ),
    ),
    ...classification.flatMap((name, i) =>
      unknownWordFault(["classification", i], "hazard class", name, HAZARD_CLASS_NAMES),
    ),
    nameless >= 0 &&
      sensitisers.length === 0 && {
        path: ["supplemental", nameless],
        message:
          "EUH208 stands without the substances it names: give their names under sensitisers",
        actual: "EUH208",
        expected: "their names under sensitisers",
      },
    ...formulaIdentifierFaults(label.ufi),
  ]);
}

/** @param ufi of a label, stated or worked out. */
export function formulaIdentifierFaults(ufi: string | undefined): HazardFault[] {
  return ufi === undefined || UFI.test(ufi)
    ? []
    : [
        {
          path: ["ufi"],
          message: `${ufi} is no unique formula identifier: that is four groups of four digits and capitals, without B, I, L, O and Z`,
          actual: ufi,
          expected: "four groups of four digits and capitals, without B, I, L, O and Z",
        },
      ];
}

/** A hazard statement that nothing is worked out from is shown as stated; a code that the law does not know is a slip of the pen. */
function unreckonedAsWarning(code: string, faults: readonly HazardFault[]): readonly HazardFault[] {
  return isHazardStatement(code) ? asWarning(faults) : faults;
}

/** A code of neither list, whole or by its parts, is a slip of the pen; of UN GHS, whose newer codes no list here has, it is shown as stated. */
function precautionFaults(
  path: HazardFault["path"],
  code: string,
  frame: string,
  { precautions, texts }: Parameters<typeof statedLabelFaults>[1],
): HazardFault[] {
  const known = [...precautions.map((row) => row.code), ...texts.keys()].filter((one) =>
    /^P\d/.test(one),
  );
  const isKnown = code.split("+").every((part) => known.includes(part));
  const faults = isKnown ? [] : unknownWordFault(path, "statement code", code, known);
  return frame === "UN GHS" ? asWarning(faults) : faults;
}

/** A statement that no list here knows is shown as stated, and the build goes on. */
function asWarning(faults: readonly HazardFault[]): HazardFault[] {
  return faults.map((fault) => ({ ...fault, severity: "warning" }));
}

function unknownWordFault(
  path: HazardFault["path"],
  subject: string,
  word: string,
  known: readonly string[],
): HazardFault[] {
  if (known.includes(word)) return [];
  const nearest = nearestWord(word, known);
  const expected =
    known.length <= PICTOGRAM_CODES.length
      ? known.join(" | ")
      : `a code of the closed list, such as ${String(known[0])}`;
  const message = `There is no ${subject} ${word}`;
  return [{ path, message, actual: word, expected, ...(nearest !== undefined && { nearest }) }];
}

/**
 * Where the stated label and the worked-out one part, each way, as warnings to
 * print beside the maker's label. Precautionary statements are the maker's
 * choice and are only held to their number and edition.
 */
export function labelDifferences(
  stated: StatedLabel,
  workedOut: LabelElements,
  precautions: readonly PrecautionRow[],
): LabelDifference[] {
  const differs: LabelDifference[] = [];
  if (stated.frame !== workedOut.frame)
    differs.push({
      rule: "frame-differs",
      values: { stated: stated.frame, workedOut: workedOut.frame },
    });
  if (stated.signalWord !== workedOut.signalWord) {
    differs.push({
      rule: "signal-word-differs",
      values: { stated: stated.signalWord ?? "none", workedOut: workedOut.signalWord ?? "none" },
    });
  }
  differs.push(...listDifferences("pictogram", stated.pictograms, workedOut.pictograms));
  differs.push(...statementDifferences(stated, workedOut));
  differs.push(...listDifferences("supplement", stated.supplemental ?? [], workedOut.supplemental));
  differs.push(...editionFaults(stated, precautions));
  return differs;
}

function listDifferences(
  kind: "pictogram" | "supplement",
  stated: readonly string[],
  workedOut: readonly string[],
): LabelDifference[] {
  return [
    ...workedOut
      .filter((code) => !stated.includes(code))
      .map((code): LabelDifference => ({ rule: `${kind}-not-stated`, values: { code } })),
    ...stated
      .filter((code) => !workedOut.includes(code))
      .map((code): LabelDifference => ({ rule: `${kind}-not-worked-out`, values: { code } })),
  ];
}

/** Statements that speak of the same thing: one class family, one route. */
function aspect(code: HazardCode): string {
  const { classes, route } = statementMeaning(code);
  const { family } = classElements(classes[0]);
  return classes[0] === "STOT SE 3" ? `${family} ${code}` : `${family} ${route ?? ""}`;
}

function statementDifferences(
  { hazardStatements }: StatedLabel,
  workedOut: LabelElements,
): LabelDifference[] {
  const stated = hazardStatements.flatMap(singleStatements).filter(isHazardCode);
  const covered = (code: HazardCode): boolean =>
    COVERED_BY.some(({ statement, by }) => statement === code && stated.includes(by));
  const own = workedOut.hazardStatements;
  const missing = own
    .filter((code) => !stated.includes(code) && !covered(code))
    .map((code): LabelDifference => {
      const other = stated.find((each) => aspect(each) === aspect(code));
      const certain = workedOut.classes.some((each) => each.statement === code && each.certain)
        ? "yes"
        : "no";
      const ingredients = [
        ...new Set(
          workedOut.traces
            .filter((trace) => trace.statement === code)
            .flatMap((trace) => trace.shares.map(({ slug }) => slug)),
        ),
      ];
      return other === undefined
        ? { rule: "statement-not-stated", values: { statement: code, certain, ingredients } }
        : {
            rule: "statement-differs",
            values: { stated: other, workedOut: code, certain, ingredients },
          };
    });
  const excess = stated.filter(
    (code) =>
      !own.includes(code) && !covered(code) && !own.some((each) => aspect(each) === aspect(code)),
  );
  return [
    ...missing,
    ...excess.map((statement): LabelDifference => ({
      rule: "statement-not-worked-out",
      values: { statement },
    })),
  ];
}

/** Statements that do not belong to the edition of the label's frame, and more precautions than a label may bear. */
function editionFaults(
  stated: StatedLabel,
  precautions: readonly PrecautionRow[],
): LabelDifference[] {
  const { precautionaryStatements = [], supplemental = [] } = stated;
  const frame = HAZARD_FRAMES.find((each) => each === stated.frame);
  if (frame === undefined) return [];
  const withdrawn: readonly string[] = WITHDRAWN_SUPPLEMENTS;
  const { asOf, edition, source } = FRAME_EDITIONS[frame];
  return given([
    stated.date !== undefined &&
      stated.date < asOf && {
        rule: "label-older-than-the-edition" as const,
        values: { date: stated.date, edition, asOf },
        source,
      },
    ...precautionaryStatements.flatMap((code) => older(code, frame, precautions)),
    ...[...precautionaryStatements, ...stated.hazardStatements.flatMap(singleStatements)]
      .filter((code) => ![undefined, frame].includes(frameOf(code, precautions)))
      .map((statement): LabelDifference => ({
        rule: "not-of-the-frame",
        values: { statement, frame },
        source: FRAME_EDITIONS[frame].source,
      })),
    ...(frame === "EU CLP"
      ? []
      : supplemental.map((statement): LabelDifference => ({
          rule: "not-of-the-frame",
          values: { statement, frame },
          source: FRAME_EDITIONS[frame].source,
        }))),
    ...supplemental
      .filter((code) => withdrawn.includes(code))
      .map((statement): LabelDifference => ({
        rule: "statement-annulled",
        values: { statement },
        source: "cjeu-titanium-dioxide",
      })),
    precautionaryStatements.length > PRECAUTIONS_AT_MOST &&
      !statesGraveHazard(stated) && {
        rule: "too-many-precautions" as const,
        values: { count: precautionaryStatements.length, atMost: PRECAUTIONS_AT_MOST },
        source: "clp-article-28" as const,
      },
  ]);
}

/** Whether a statement of the label is of a class that more than six precautions are let stand for. */
function statesGraveHazard({ hazardStatements }: StatedLabel): boolean {
  return hazardStatements
    .flatMap(singleStatements)
    .filter(isHazardCode)
    .some((code) => statementMeaning(code).classes.some(isGrave));
}

/** The only frame that knows a code; undefined for a code of both. */
function frameOf(code: string, precautions: readonly PrecautionRow[]): HazardFrame | undefined {
  return isHazardCode(code)
    ? classElements(statementMeaning(code).classes[0]).frame
    : precaution(code, precautions)?.frame;
}

function older(
  code: string,
  frame: HazardFrame,
  precautions: readonly PrecautionRow[],
): LabelDifference[] {
  const now = precaution(code, precautions)?.replacedIn?.[frame];
  if (now === undefined) return [];
  const { edition, source } = FRAME_EDITIONS[frame];
  return [
    {
      rule: "older-than-the-edition",
      values: { statement: code, replacement: now, edition },
      source,
    },
  ];
}
