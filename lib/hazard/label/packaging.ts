/**
 * What the package of something sold to the public has to have beside its label.
 *
 * @source clp-packaging-belgium
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { HazardClass } from "../classify/hazard-class.ts";
import type { AcuteRoute } from "../texts/hazard-statement.ts";

interface Classes {
  /** "Asp. Tox. 1"; of an acute toxicity with its route, "Acute Tox. 2 dermal". */
  readonly classes: readonly string[];
}

export type PackagingStatement =
  StatementOf<"child-resistant-fastening", Classes> | StatementOf<"tactile-warning", Classes>;

const FASTENING = /^(Acute Tox\. [1-3]|STOT (SE|RE) 1|Skin Corr\. 1[ABC]?|Asp\. Tox\. 1)$/;
/** Category 1 of what changes genes, brings cancer or harms the unborn is not among these: the public is not sold it at all. */
const TACTILE =
  /^(Acute Tox\. [1-4]|Skin Corr\. 1[ABC]?|Muta\. 2$|Carc\. 2$|Repr\. 2$|Resp\. Sens\. |STOT (SE|RE) [12]$|Asp\. Tox\. 1|Flam\. (Gas|Liq|Sol)\. [12])/;

/** @param classes of what is in the package. */
export function packagingStatements(
  classes: readonly { readonly hazardClass: HazardClass; readonly route?: AcuteRoute }[],
): PackagingStatement[] {
  const rows = [
    ["child-resistant-fastening", FASTENING],
    ["tactile-warning", TACTILE],
  ] as const;
  return rows.flatMap(([rule, pattern]) => {
    const found = [
      ...new Set(
        classes
          .filter(({ hazardClass }) => pattern.test(hazardClass))
          .map(({ hazardClass, route }) =>
            route === undefined ? hazardClass : `${hazardClass} ${route}`,
          ),
      ),
    ];
    return found.length === 0
      ? []
      : [{ rule, values: { classes: found }, source: "clp-packaging-belgium" }];
  });
}

/** Statements whose substances the label names (CLP, Article 18(3)(b)). */
const NAMES_ITS_SUBSTANCES =
  /^H(30[0-2]|304|31[0-2]|314|317|318|33[0-2]|334|335|336|34[01]|35[01]i?|36[0-2]|37[0-3])/;

/** Whether the substances that bring a statement about are to be named on the label. */
export function namesItsSubstances(statement: string): boolean {
  return NAMES_ITS_SUBSTANCES.test(statement);
}
