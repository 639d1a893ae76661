/**
 * What the label of a small package may leave out, where the whole can be had neither on it nor
 * on a fold-out label, a tie-on tag or an outer package (Article 29). A page or a card never does:
 * this is for the label on the tube alone.
 *
 * @source clp-small-packages : Annex I, 1.5.2.1
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { Finding } from "../classify/finding.ts";
import type { HazardClass } from "../classify/hazard-class.ts";
import type { Composition } from "../classify/composition.ts";
import type { ChosenPrecaution } from "./precautionary-choice.ts";

/** Largest contents of a small package, inclusive [ml]. */
export const SMALL_PACKAGE_ML = 125;

/** Hazard and linked precautionary statements may go: 1.5.2.1.1. */
const MAY_GO: readonly HazardClass[] = [
  "Flam. Liq. 2",
  "Flam. Liq. 3",
  "Flam. Sol. 1",
  "Flam. Sol. 2",
  "Self-heat. 2",
  "Water-react. 1",
  "Water-react. 2",
  "Water-react. 3",
  "Ox. Sol. 2",
  "Ox. Sol. 3",
  "Skin Irrit. 2",
  "Eye Irrit. 2",
  "Aquatic Acute 1",
  "Aquatic Chronic 1",
  "Aquatic Chronic 2",
];
/** The same, but only where the public cannot buy it. */
const MAY_GO_IN_TRADE: readonly HazardClass[] = [
  "Acute Tox. 4",
  "STOT SE 2",
  "STOT SE 3",
  "STOT RE 2",
];
/** Linked precautionary statements alone may go: 1.5.2.1.2, 3). */
const PRECAUTIONS_MAY_GO: readonly HazardClass[] = ["Aquatic Chronic 3", "Aquatic Chronic 4"];

export type SmallPackageStatement = StatementOf<
  "small-package",
  {
    readonly packageMl: number;
    readonly upToMl: number;
    /** Hazard statements, then precautionary ones. */
    readonly statements: readonly string[];
  }
>;
export type SmallPackage = SmallPackageStatement & {
  readonly mayLeaveOut: readonly string[];
};

/**
 * Statements that the label of this package may leave out in the EU frame. A precautionary statement
 * goes only when every hazard that it was chosen for may; a general one (P1xx) and one on disposal
 * stay.
 * @param findings those whose statements the label carries.
 * @param precautions chosen for these findings.
 * @returns undefined when none may.
 */
export function smallPackageReduction(
  findings: readonly Finding[],
  precautions: readonly ChosenPrecaution[],
  { frame, packageMl, publicSale }: Composition,
): SmallPackage | undefined {
  if (frame !== "EU CLP" || packageMl === undefined || packageMl > SMALL_PACKAGE_ML)
    return undefined;
  const classes = publicSale ? MAY_GO : [...MAY_GO, ...MAY_GO_IN_TRADE];
  const codesOf = (these: readonly HazardClass[]): string[] =>
    findings
      .filter(({ hazardClass }) => these.includes(hazardClass))
      .map(({ statement }) => statement);
  const hazards = codesOf(classes);
  const answered = [...hazards, ...codesOf(PRECAUTIONS_MAY_GO)];
  const mayLeaveOut = [
    ...hazards,
    ...precautions
      .filter(
        ({ statement, rule, values }) =>
          rule === "by-severity" &&
          !statement.startsWith("P1") &&
          values.answers.every((code) => answered.includes(code)),
      )
      .map(({ statement }) => statement),
  ];
  if (mayLeaveOut.length === 0) return undefined;
  return {
    mayLeaveOut,
    rule: "small-package",
    values: { packageMl, upToMl: SMALL_PACKAGE_ML, statements: mayLeaveOut },
    source: "clp-small-packages",
  };
}
