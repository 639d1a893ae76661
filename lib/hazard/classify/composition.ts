/**
 * What a paint, a dry pigment, a medium or a thinner is made of, as hazard rules
 * see it: ingredients by mass, each with its suppliers' classifications.
 */
import type { NamesByLanguage } from "../texts/substance-name.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { grouped } from "../../quantities/grouped.ts";
import { ends, type Quantity } from "../../quantities/interval.ts";
import type { SourceKey } from "../../sources/source.ts";
import {
  classification,
  isKnownStatement,
  type Classification,
  type ClassificationForm,
  type Supplement,
} from "./classification.ts";
import type { HazardFrame, PaintForm } from "./frame.ts";
import type { AcuteRoute } from "../texts/hazard-statement.ts";
import { isEntrainedSupplement } from "../texts/supplemental-code.ts";
import { METALS, type Metal, type MetalShares } from "../studio/metal-content.ts";
import type { PigmentIdentity, SubstanceName } from "./substance.ts";

/** What is known of one route beyond the classes: an estimate without a class, a limit test passed, or nothing. */
export interface AcuteDatum {
  readonly route: AcuteRoute;
  /** mg/kg (oral, dermal) or mg/l over 4 h (dust, vapour), > 0. */
  readonly ate: number | "above the limit dose" | "unknown";
  readonly source?: SourceKey | undefined;
}

export interface Ingredient extends PigmentIdentity {
  readonly slug: string;
  readonly name: string;
  /** In other languages, where its record has it. */
  readonly names?: NamesByLanguage | undefined;
  /** Of the mixture, 0-1; a range where that is all that is known. */
  readonly massFraction: Quantity;
  /** "none stated" (or an empty list): the supplier states no hazard; left out: no hazard data at all. */
  readonly classifications?: readonly (string | ClassificationForm)[] | "none stated" | undefined;
  readonly acuteToxicity?: readonly AcuteDatum[] | undefined;
  /** Metals in the ingredient, mass fraction of metal; left out, none is known. */
  readonly metals?: MetalShares | undefined;
  /** What rules name it by; left out, none of them does. */
  readonly substances?: readonly SubstanceName[] | undefined;
  /** Whether the EU sets a limit for it in workplace air (for EUH210). */
  readonly workplaceLimit?: boolean | undefined;
}

export interface Composition {
  readonly ingredients: readonly Ingredient[];
  readonly form: PaintForm;
  readonly frame: HazardFrame;
  /** Whether the general public can buy it. */
  readonly publicSale: boolean;
  /** Contents of the package; left out, none of the reductions for small packages applies. */
  readonly packageMl?: number | undefined;
  readonly flashPointC?: number | undefined;
  readonly initialBoilingPointC?: number | undefined;
  /** At 40 degrees C, for aspiration. */
  readonly kinematicViscosityMm2PerS?: number | undefined;
}

/** An ingredient at one fraction, its classifications read. */
export interface Part extends PigmentIdentity {
  readonly slug: string;
  readonly name: string;
  readonly massFraction: number;
  /** As the mixture gave it: a range stays one in a reason. */
  readonly stated: Quantity;
  /** False: no hazard data recorded. */
  readonly known: boolean;
  readonly classifications: readonly Classification[];
  readonly supplements: readonly Supplement[];
  /** Codes that its supplier states and no list here knows. */
  readonly unread: readonly string[];
  readonly acuteToxicity: readonly AcuteDatum[];
  readonly metals: MetalShares;
  readonly substances: readonly SubstanceName[];
  readonly workplaceLimit: boolean;
}

/** The parts at the upper and at the lower end of their fractions, in an order that does not depend on the mixture's. */
export interface MixtureParts {
  readonly atMost: readonly Part[];
  readonly atLeast: readonly Part[];
  /** Share of the mixture that no ingredient accounts for, at least. */
  readonly unaccounted: number;
}

/** What each share that is stated to three digits may add to a total by its rounding [1]. */
export const SHARE_ROUNDING = 0.0005;

/**
 * The parts of a mixture, checked.
 *
 * @throws RangeError for a fraction outside 0-1, a total over 1 by more than shares are rounded, a package or an
 *   estimate that is not positive, a limit on a metal whose share is not known,
 *   and for everything that {@link classification} refuses.
 */
export function mixtureParts(mixture: Composition): MixtureParts {
  positive("package size", mixture.packageMl, "ml");
  positive("kinematic viscosity", mixture.kinematicViscosityMm2PerS, "mm2/s");
  finite("flash point", mixture.flashPointC);
  finite("initial boiling point", mixture.initialBoilingPointC);
  const merged = mergedIngredients(mixture.ingredients);
  const total = (end: 0 | 1): number =>
    merged.reduce((sum, ingredient) => sum + ends(ingredient.massFraction)[end], 0);
  const least = total(0);
  if (!(least <= 1 + SHARE_ROUNDING * merged.length + 1e-9))
    throw domainError("total of mass fractions", least, "total <= 1");
  const parts = merged.map(partOf);
  const at = (end: 0 | 1): Part[] =>
    parts.map((part) => ({ ...part, massFraction: Math.min(1, ends(part.stated)[end]) }));
  return { atMost: at(1), atLeast: at(0), unaccounted: Math.max(0, 1 - total(1)) };
}

/** Mass fraction of a metal in a mixture as far as it is told, and whether some part holds it in an amount that nobody knows. */
export function metalIn(
  parts: readonly Part[],
  metal: Metal,
): { readonly massFraction: number; readonly isUnknown: boolean } {
  const shares = parts.map(({ metals, massFraction }) => {
    const share = metals[metal];
    return typeof share === "number" ? share * massFraction : 0;
  });
  return {
    massFraction: shares.reduce((sum, share) => sum + share, 0),
    isUnknown: parts.some(({ metals }) => metals[metal] === "present"),
  };
}

/** The same ingredients in a mixture of which they make up `massFraction`: a pigment's parts in the paint. */
export function dilutedIngredients(
  ingredients: readonly Ingredient[],
  massFraction: Quantity,
): Ingredient[] {
  fractionEnds("mass fraction", massFraction);
  return ingredients.map((ingredient) => ({
    ...ingredient,
    massFraction: product(ingredient.massFraction, massFraction),
  }));
}

function product(one: Quantity, other: Quantity): Quantity {
  if (typeof one === "number" && typeof other === "number") return one * other;
  const [[lower, upper], [otherLower, otherUpper]] = [ends(one), ends(other)];
  return [lower * otherLower, upper * otherUpper];
}

function fractionEnds(subject: string, fraction: Quantity): readonly [number, number] {
  const [lower, upper] = ends(fraction);
  for (const end of [lower, upper]) {
    if (!(end >= 0 && end <= 1)) throw domainError(subject, end, "0 <= fraction <= 1");
  }
  if (!(lower <= upper)) throw domainError(`lower end of ${subject}`, lower, `lower <= ${upper}`);
  return [lower, upper];
}

/** One substance named twice counts once, with both fractions; sorted, so that no sum depends on the order given. */
function mergedIngredients(ingredients: readonly Ingredient[]): Ingredient[] {
  const bySame = grouped(
    ingredients.map(({ massFraction, ...rest }) => {
      fractionEnds(`mass fraction of ${rest.slug}`, massFraction);
      return [JSON.stringify([rest.slug, canonical(rest)]), { ...rest, massFraction }] as const;
    }),
  );
  return [...bySame]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([, same]) => merged(same));
}

/** A copy whose keys stand in order, so that the same data always prints the same. */
function canonical(value: unknown): unknown {
  if (Array.isArray(value))
    return value
      .map(canonical)
      .map((item) => JSON.stringify(item))
      .sort();
  if (typeof value !== "object" || value === null) return value;
  return Object.entries(value)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([key, item]) => [key, canonical(item)]);
}

function merged(same: readonly Ingredient[]): Ingredient {
  const [first] = same as readonly [Ingredient];
  if (same.length === 1) return first;
  const total = (end: 0 | 1): number =>
    same
      .map(({ massFraction }) => ends(massFraction)[end])
      .sort((a, b) => a - b)
      .reduce((sum, fraction) => sum + fraction, 0);
  const [lower, upper] = [total(0), total(1)];
  return { ...first, massFraction: lower === upper ? lower : [lower, upper] };
}

function partOf(ingredient: Ingredient): Part {
  const { classifications: stated, acuteToxicity = [] } = ingredient;
  const read =
    stated === undefined || stated === "none stated"
      ? []
      : stated
          .filter(isReadable)
          .map(classification)
          .sort((one, other) => (one.statement < other.statement ? -1 : 1));
  for (const { ate } of acuteToxicity) {
    if (typeof ate === "number" && !(ate > 0 && ate < Infinity))
      throw domainError("acute toxicity estimate", ate, "0 < ATE < Infinity");
  }
  const metals = ingredient.metals ?? {};
  for (const metal of METALS) {
    const share = metals[metal];
    if (typeof share === "number" && !(share >= 0 && share <= 1))
      throw domainError(`share of ${metal} in ${ingredient.slug}`, share, "0 <= share <= 1");
  }
  const classifications = read.filter(
    (each): each is Classification => !isEntrainedSupplement(each.statement),
  );
  for (const { countedAs, statement } of classifications) {
    if (countedAs !== undefined && typeof metals[countedAs] !== "number") {
      throw new RangeError(
        `The share of ${countedAs} in ${ingredient.slug} is not stated; right would be a mass fraction, because ${statement} counts the metal`,
      );
    }
  }
  return {
    slug: ingredient.slug,
    name: ingredient.name,
    casNumber: ingredient.casNumber,
    substances: ingredient.substances ?? [],
    colourIndexName: ingredient.colourIndexName,
    massFraction: ends(ingredient.massFraction)[1],
    stated: ingredient.massFraction,
    known: stated !== undefined,
    classifications,
    supplements: read.filter((each): each is Supplement => isEntrainedSupplement(each.statement)),
    acuteToxicity,
    unread: unreadCodes(stated),
    metals,
    workplaceLimit: ingredient.workplaceLimit ?? false,
  };
}

function isReadable(stated: string | ClassificationForm): boolean {
  return isKnownStatement(statementOf(stated));
}

function unreadCodes(stated: Ingredient["classifications"]): string[] {
  if (stated === undefined || stated === "none stated") return [];
  return stated.filter((each) => !isReadable(each)).map(statementOf);
}

function statementOf(stated: string | ClassificationForm): string {
  return typeof stated === "string" ? stated : stated.statement;
}

function positive(subject: string, value: number | undefined, unit: string): void {
  if (value !== undefined && !(value > 0 && value < Infinity))
    throw domainError(subject, value, `${subject} > 0 ${unit}`);
}

function finite(subject: string, value: number | undefined): void {
  if (value !== undefined && !Number.isFinite(value))
    throw domainError(subject, value, "a finite temperature [degrees C]");
}
