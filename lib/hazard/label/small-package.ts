/**
 * What the label of a small package may leave out. A page or a card never does:
 * this is for the label on the tube alone.
 *
 * @source clp-1272-2008-memory : Annex I, 1.5.2
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { Finding } from "../classify/finding.ts";
import type { HazardClass } from "../classify/hazard-class.ts";
import type { HazardCode } from "../texts/hazard-statement.ts";
import type { Composition } from "../classify/composition.ts";

/** Largest contents of a small package, inclusive [ml]. */
export const SMALL_PACKAGE_ML = 125;

/** Hazard and linked precautionary statements may go. */
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

export type SmallPackageStatement = StatementOf<
  "small-package",
  {
    readonly packageMl: number;
    readonly upToMl: number;
    readonly statements: readonly HazardCode[];
  }
>;
export type SmallPackage = SmallPackageStatement & { readonly mayLeaveOut: readonly HazardCode[] };

/** Statements that the label of this package may leave out in the EU frame; undefined when none may. */
export function smallPackageReduction(
  findings: readonly Finding[],
  { frame, packageMl, publicSale }: Composition,
): SmallPackage | undefined {
  if (frame !== "EU CLP" || packageMl === undefined || packageMl > SMALL_PACKAGE_ML)
    return undefined;
  const classes = publicSale ? MAY_GO : [...MAY_GO, ...MAY_GO_IN_TRADE];
  const mayLeaveOut = findings
    .filter(({ hazardClass }) => classes.includes(hazardClass))
    .map(({ statement }) => statement);
  if (mayLeaveOut.length === 0) return undefined;
  return {
    mayLeaveOut,
    rule: "small-package",
    values: { packageMl, upToMl: SMALL_PACKAGE_ML, statements: mayLeaveOut },
    source: "clp-1272-2008-memory",
  };
}
