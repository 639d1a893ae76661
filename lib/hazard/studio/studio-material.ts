/**
 * What a studio rule sees of a paint or a powder, and the reason it finds there.
 *
 * @source practice-hazard
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { reaches } from "../classify/limit.ts";
import { METALS, metalRow, type Metal, type MetalRow, type MetalTables } from "./metal-content.ts";
import { metalIn, mixtureParts, type Ingredient, type Part } from "../classify/composition.ts";
import { metalAdvice, type MetalAdvice } from "../texts/contents-line.ts";
import { singleStatements } from "../texts/single-statements.ts";
import type { Dustiness } from "./dustiness.ts";
import type { GasGivenOff } from "./gas-given-off.ts";
import type { PigmentNature } from "./pigment-nature.ts";

export const LIGHT_FILTER_NOT_ENOUGH =
  /^H(300|301|310|311|330|331|332|334|340|341|350i?|351|360[DFdf]*|361[df]*|362|370|371|372|373)$|^EUH38[01]$/;
export const UNBORN = /^H(360[DFdf]*|361[df]*|362)$|^EUH38[01]$/;
export const SKIN = /^H(310|311|312|314|315|317)$/;
export const EYES = /^H(314|318|319)$/;
export const VAPOURS = /^H(224|225|226|330|331|332|334|335|336)$/;
export const BURNS = /^H(222|223|224|225|226|228|251|252)$/;
export const WATER = /^H4[01]\d$|^EUH4[345][01]$/;
export const SPECIAL_WASTE =
  /^H(30[01]|31[01]|33[01]|340|350i?|360[DFdf]*|372|373|400|410|411)$|^EUH(380|4[345][01])$/;

/** Why a caution is given. */
export type StudioReason =
  | StatementOf<"holds-metal", { readonly metals: readonly Metal[] }>
  | StatementOf<"states-hazard", { readonly statements: readonly string[] }>
  | StatementOf<"hazard-data-missing", { readonly ingredients: readonly string[] }>
  | StatementOf<"holds-sensitiser", { readonly names: readonly string[] }>
  | StatementOf<"may-hold-quartz", { readonly what: string }>
  | StatementOf<
      "quartz-in-the-paint",
      { readonly pigments: readonly string[]; readonly known: "stated" | "not known" }
    >
  | StatementOf<
      "hazard-of-its-dust",
      { readonly pigments: readonly string[]; readonly statements: readonly string[] }
    >
  | StatementOf<
      "dustiness",
      {
        readonly class: Dustiness | "not known";
        readonly bulkDensityLooseGPerMl?: Quantity;
        readonly bulkDensityTappedGPerMl?: Quantity;
        readonly particleSizeUm?: Quantity;
      }
    >
  | StatementOf<
      "dust-can-burn",
      { readonly nature: Exclude<PigmentNature, "mineral"> | "not known" }
    >
  | StatementOf<"gives-off-gas", { readonly gases: readonly GasOfPigments[] }>
  | StatementOf<"nuisance-dust", Readonly<Record<string, never>>>
  | StatementOf<"paint-is-no-food", Readonly<Record<string, never>>>
  | StatementOf<"film-turns-to-dust", Readonly<Record<string, never>>>
  | StatementOf<"droplets-are-breathed-in", Readonly<Record<string, never>>>
  | StatementOf<"drying-oil", Readonly<Record<string, never>>>
  | StatementOf<"dust-goes-up-again", Readonly<Record<string, never>>>
  | StatementOf<"paint-and-oil-foul-water", Readonly<Record<string, never>>>;

/** A gas with the names of the pigments that can give it off. */
export type GasOfPigments = GasGivenOff & { readonly names: readonly string[] };

/** Metals beside a label that does not speak of them. */
export type ContainsMetalStatement = StatementOf<
  "contains-metal",
  {
    readonly metals: readonly Metal[];
    /** What to leave: spraying, sanding, heating. */
    readonly advice: MetalAdvice;
  }
>;

/** What a rule sees of a material: metals, statements, whether data are missing. */
export interface Material {
  readonly metals: readonly MetalRow[];
  readonly statements: readonly string[];
  /** Ingredients without hazard data. */
  readonly unknown: readonly string[];
}

/** @throws RangeError as {@link mixtureParts} does. */
export function material(
  ingredients: readonly Ingredient[],
  hazardStatements: readonly string[],
  tables: MetalTables,
): Material {
  const parts = presentParts(ingredients);
  return {
    metals: countedMetals(parts, tables),
    statements: hazardStatements.flatMap(singleStatements),
    unknown: parts
      .filter(({ known, unread }) => !known || unread.length > 0)
      .map(({ slug }) => slug),
  };
}

/**
 * Metals that no statement of the label speaks for: their supplier states no hazard
 * to health, or it stays below its limit. The label itself then says that they are
 * there and what to leave, since the studio treats a material as what it holds.
 *
 * @param hazardStatements on the label.
 * @throws RangeError as {@link mixtureParts} does.
 */
export function containedMetals(
  ingredients: readonly Ingredient[],
  hazardStatements: readonly string[],
  tables: MetalTables,
): ContainsMetalStatement[] {
  const speaks = hazardStatements.some((statement) => statement.startsWith("H3"));
  const silent = presentParts(ingredients).filter(
    ({ known, classifications }) =>
      known && !(speaks && classifications.some(({ statement }) => statement.startsWith("H3"))),
  );
  const rows = countedMetals(silent, tables);
  return [...new Set(rows.map(metalAdvice))].map((advice) => ({
    rule: "contains-metal",
    values: {
      metals: rows.filter((row) => metalAdvice(row) === advice).map(({ metal }) => metal),
      advice,
    },
    source: "practice-hazard",
  }));
}

function presentParts(ingredients: readonly Ingredient[]): Part[] {
  return mixtureParts({
    ingredients,
    form: "paste",
    frame: "EU CLP",
    publicSale: false,
  }).atMost.filter(({ massFraction }) => massFraction > 0);
}

function countedMetals(parts: readonly Part[], tables: MetalTables): MetalRow[] {
  return METALS.map((metal) => metalRow(metal, tables)).filter((row) => metalCounts(parts, row));
}

function metalCounts(parts: readonly Part[], { metal, countsFrom }: MetalRow): boolean {
  const { massFraction, isUnknown } = metalIn(parts, metal);
  return isUnknown || reaches(massFraction, countsFrom);
}

/** The first reason that a material gives: its metals, a statement, missing data; undefined for none. */
export function reasonOf(
  { metals, statements, unknown }: Material,
  which: (row: MetalRow) => boolean,
  pattern: RegExp | undefined,
  orUnknown = false,
): StudioReason | undefined {
  const found = metals.filter(which);
  if (found.length > 0)
    return { rule: "holds-metal", values: { metals: found.map(({ metal }) => metal) } };
  const stated = pattern === undefined ? [] : statements.filter((code) => pattern.test(code));
  if (stated.length > 0) return { rule: "states-hazard", values: { statements: stated } };
  return orUnknown && unknown.length > 0
    ? { rule: "hazard-data-missing", values: { ingredients: unknown } }
    : undefined;
}

export const graveDust = ({ dust }: MetalRow): boolean => dust === "grave";
export const noHeat = ({ heat }: MetalRow): boolean => heat === "never";
export const forSkin = ({ skin }: MetalRow): boolean => skin;
export const forUnborn = ({ unborn }: MetalRow): boolean => unborn;
export const specialWaste = ({ waste }: MetalRow): boolean => waste === "special";
export const anyMetal = (): boolean => true;
export const noMetal = (): boolean => false;

/** A gas, a metal or a dust that harms, and that no statement of the paint's label tells: a caution keeps such a reason on paper. */
const POISONS: ReadonlySet<string> = new Set<StudioReason["rule"]>([
  "gives-off-gas",
  "holds-metal",
  "may-hold-quartz",
  "quartz-in-the-paint",
  "hazard-of-its-dust",
]);

export function isPoison({ rule }: { readonly rule: string }): boolean {
  return POISONS.has(rule);
}

/** Reasons that hold for every colour alike; whatever else is a reason is particular to this one. */
export function isGeneralReason({ rule, values }: StudioReason): boolean {
  switch (rule) {
    case "nuisance-dust":
    case "paint-is-no-food":
    case "film-turns-to-dust":
    case "droplets-are-breathed-in":
    case "drying-oil":
    case "dust-goes-up-again":
    case "paint-and-oil-foul-water":
      return true;
    case "dustiness":
      return values.class !== "very dusty";
    default:
      return false;
  }
}
