/**
 * What a studio rule sees of a paint or a powder, and the reason it finds there.
 *
 * @source practice-hazard
 */
import type { Statement } from "../../quantities/statement.ts";
import type { CautionReason } from "../classify/hazard-rules.ts";
import type { LabelLine } from "../label/label-elements.ts";
import { reaches } from "../classify/limit.ts";
import { METALS, type Metal } from "./metal-content.ts";
import { mixtureParts, type Ingredient, type Part } from "../classify/composition.ts";
import { singleStatements } from "../label/stated-label.ts";

/** Metals whose dust calls for the highest filter, and whose paint is never sanded dry. */
export const DUST_METALS = METALS;
/** Metals whose fume or spray must not arise at all. */
export const FUME_METALS: readonly Metal[] = ["lead", "cadmium", "chromate"];
/** Share of metal from which these rules speak: the limit of a carcinogen; driers stay below (this project's rule). */
export const STUDIO_METAL_FROM = 0.001;

export const LIGHT_FILTER_NOT_ENOUGH =
  /^H(300|301|310|311|330|331|332|334|340|341|350i?|351|360[DFdf]*|361[df]*|362|370|371|372|373)$/;
export const UNBORN = /^H(360[DFdf]*|361[df]*|362)$/;
export const SKIN = /^H(310|311|312|314|315|317)$/;
export const EYES = /^H(314|318|319)$/;
export const VAPOURS = /^H(224|225|226|330|331|332|334|335|336)$/;
export const BURNS = /^H(224|225|226|228|251|252)$/;
export const WATER = /^H4\d\d$/;
export const SPECIAL_WASTE = /^H(30[01]|31[01]|33[01]|340|350i?|360[DFdf]*|372|373|400|410|411)$/;

/** What a rule sees of a material: metals, statements, whether data are missing. */
export interface Material {
  readonly metals: readonly Metal[];
  readonly statements: readonly string[];
  /** Ingredients without hazard data. */
  readonly unknown: readonly string[];
}

/** Why a caution is given. */
export interface StudioReason extends Statement {
  readonly rule: CautionReason;
}

/** @throws RangeError as {@link mixtureParts} does. */
export function material(
  ingredients: readonly Ingredient[],
  hazardStatements: readonly string[],
): Material {
  const parts = mixtureParts({
    ingredients,
    form: "paste",
    frame: "EU CLP",
    publicSale: false,
  }).atMost.filter(({ massFraction }) => massFraction > 0);
  return {
    metals: DUST_METALS.filter((metal) => metalCounts(parts, metal)),
    statements: hazardStatements.flatMap(singleStatements),
    unknown: parts.filter(({ known }) => !known).map(({ slug }) => slug),
  };
}

/**
 * Lead, cadmium or chromate in an ingredient of which the supplier states no
 * hazard to health: told beside the label, because the studio treats it as what it holds.
 *
 * @throws RangeError as {@link mixtureParts} does.
 */
export function unclassifiedMetals(ingredients: readonly Ingredient[]): LabelLine[] {
  const { atMost } = mixtureParts({
    ingredients,
    form: "paste",
    frame: "EU CLP",
    publicSale: false,
  });
  const silent = atMost.filter(
    ({ known, massFraction, classifications }) =>
      known &&
      massFraction > 0 &&
      !classifications.some(({ statement }) => statement.startsWith("H3")),
  );
  const metals = FUME_METALS.filter((metal) => metalCounts(silent, metal));
  return metals.length === 0
    ? []
    : [{ rule: "metal-not-classified", values: { metals }, source: "practice-hazard" }];
}

function metalCounts(parts: readonly Part[], metal: Metal): boolean {
  if (parts.some(({ metals }) => metals[metal] === "present")) return true;
  const share = parts.reduce(
    (sum, { metals, massFraction }) =>
      sum + (typeof metals[metal] === "number" ? metals[metal] * massFraction : 0),
    0,
  );
  return reaches(share, STUDIO_METAL_FROM);
}

/** The first reason that a material gives: its metals, a statement, missing data; undefined for none. */
export function reasonOf(
  { metals, statements, unknown }: Material,
  which: readonly Metal[],
  pattern: RegExp | undefined,
  orUnknown = false,
): StudioReason | undefined {
  const found = metals.filter((metal) => which.includes(metal));
  if (found.length > 0) return { rule: "holds-metal", values: { metals: found } };
  const stated = pattern === undefined ? [] : statements.filter((code) => pattern.test(code));
  if (stated.length > 0) return { rule: "states-hazard", values: { statements: stated } };
  return orUnknown && unknown.length > 0
    ? { rule: "hazard-data-missing", values: { ingredients: unknown } }
    : undefined;
}
