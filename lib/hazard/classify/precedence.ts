/**
 * What a label leaves out because something on it says more.
 *
 * @source clp-1272-2008-memory : Articles 26 and 27, and Annex I
 */
import type { LeftOut } from "./applicable-classifications.ts";
import type { Finding } from "./finding.ts";
import {
  classElements,
  PICTOGRAM_CODES,
  type PictogramCode,
  type SignalWord,
} from "./hazard-class.ts";
import { inLabelOrder, type HazardCode } from "../texts/hazard-statement.ts";

/** A statement and those that cover it on a label. Other pairs exclude each other as classes of one family. */
export const COVERED_BY: readonly { readonly statement: HazardCode; readonly by: HazardCode }[] = [
  { statement: "H318", by: "H314" },
  { statement: "H319", by: "H314" },
  { statement: "H400", by: "H410" },
  { statement: "H401", by: "H410" },
  { statement: "H402", by: "H410" },
  { statement: "H401", by: "H411" },
  { statement: "H402", by: "H411" },
  { statement: "H402", by: "H412" },
];

export interface LabelStatements {
  readonly statements: readonly HazardCode[];
  readonly leftOut: readonly LeftOut[];
}

/** The statements that stand on the label, in its order, and those that another one covers. */
export function labelStatements(findings: readonly Finding[]): LabelStatements {
  const all = inLabelOrder(findings.map(({ statement }) => statement));
  const cover = (statement: HazardCode): HazardCode | undefined =>
    COVERED_BY.find((pair) => pair.statement === statement && all.includes(pair.by))?.by;
  return {
    statements: all.filter((statement) => cover(statement) === undefined),
    leftOut: all.flatMap((statement) => {
      const by = cover(statement);
      return by === undefined
        ? []
        : [{ statement, rule: "covered-by", values: { by }, source: "clp-1272-2008-memory" }];
    }),
  };
}

/** The graver word, once; undefined when no class carries one. */
export function signalWord(findings: readonly Finding[]): SignalWord | undefined {
  const words = findings.map(({ hazardClass }) => classElements(hazardClass).signalWord);
  return words.includes("Danger") ? "Danger" : words.find((word) => word !== undefined);
}

/** Families whose exclamation mark gives way to the corrosion drawing, and to the health hazard of a respiratory sensitiser. */
const IRRITATION = ["skin", "eye"];

/**
 * Pictograms by code. The exclamation mark (GHS07) gives way to the skull
 * (GHS06) wholly, to corrosion (GHS05) for skin and eye irritation, and to the
 * health hazard (GHS08) of a respiratory sensitiser for skin sensitisation and
 * skin and eye irritation.
 */
export function pictograms(findings: readonly Finding[]): PictogramCode[] {
  const drawn = findings.map(({ hazardClass }) => classElements(hazardClass));
  const has = (code: PictogramCode): boolean => drawn.some(({ pictogram }) => pictogram === code);
  const corrodes = drawn.some(
    ({ pictogram, family }) => pictogram === "GHS05" && IRRITATION.includes(family),
  );
  const sensitisesAirways = drawn.some(({ family }) => family === "respiratory sensitisation");
  const giving = new Set([
    ...(corrodes || sensitisesAirways ? IRRITATION : []),
    ...(sensitisesAirways ? ["skin sensitisation"] : []),
  ]);
  const exclaims =
    !has("GHS06") &&
    drawn.some(({ pictogram, family }) => pictogram === "GHS07" && !giving.has(family));
  return PICTOGRAM_CODES.filter((code) => (code === "GHS07" ? exclaims : has(code)));
}
