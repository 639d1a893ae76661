/**
 * What each market's acts say of a colour: a sale that is forbidden unless a legal
 * basis and a class of buyer are on record, or a line that the offer must carry.
 */
import { given } from "../../quantities/given.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import { actOf, type Act, type ActKey, type HazardMarket } from "../classify/legislation.ts";
import type { PaintForm } from "../classify/frame.ts";
import { passes } from "../classify/limit.ts";
import { isSubstance, type SubstanceName } from "../classify/substance.ts";
import { metalIn, mixtureParts, type Ingredient, type Part } from "../classify/composition.ts";
import { HAZARD_STATEMENTS, isHazardCode } from "../texts/hazard-statement.ts";
import { singleStatements } from "../texts/single-statements.ts";

/** Why a colour may be sold where the general rule forbids it, and to whom; both must say something. */
export interface LegalBasis {
  readonly market: HazardMarket;
  readonly basis: string;
  readonly buyers: string;
}

export interface Sale {
  readonly ingredients: readonly Ingredient[];
  readonly form: PaintForm;
  /** Statements that stand on the label: the maker's, else the worked-out ones. */
  readonly hazardStatements: readonly string[];
  readonly publicSale: boolean;
  readonly legalBasis: readonly LegalBasis[];
  /** Whether a toxicologist's review, dated, is on record. */
  readonly reviewed: boolean;
  /** Whether the record gives a unique formula identifier. */
  readonly hasFormulaIdentifier: boolean;
}

export type MarketEffect = "forbidden unless" | "line";

/** What the rules find in a composition, before it is held against one market's acts. */
interface MarketFindings {
  readonly "lead-compound-not-as-paint": Named & {
    readonly substance: SubstanceName;
    readonly entry: string;
  };
  readonly "lead-compound-not-identified": Named;
  readonly "leaded-paint-by-declaration": Partial<InForce>;
  readonly "lead-limits-at-work": typeof LEAD_AT_WORK;
  readonly "substance-of-very-high-concern": Named;
  readonly "cadmium-in-other-paints": Named & { readonly limit: number };
  readonly "cmr-not-to-the-public": Stating;
  readonly "cmr-artists-paint-exempt": Stating;
  readonly "restricted-to-professional-users": Stating;
  readonly "needs-authorisation": Named;
  readonly "titanium-dioxide-without-h351": Named;
  readonly "offer-names-hazards": Stating;
  readonly "formula-identifier-wanted": Partial<InForce>;
  readonly "us-artists-paint-exempt-labelled": Named & { readonly limit: number };
  readonly "us-review-on-record": Partial<InForce>;
  readonly "us-review-wanted": Partial<InForce>;
  readonly "proposition-65": { readonly substances: readonly string[] };
}

/** Slugs and names of ingredients. */
interface Named {
  readonly ingredients: readonly string[];
  readonly names: readonly string[];
}
interface Stating {
  readonly statements: readonly string[];
}

/** Since when the act applies, how far it is known, and of a forbidden sale the basis on record. */
export interface InForce {
  readonly since: string;
  readonly standing: "read" | "memory";
  readonly basis?: string;
  readonly buyers?: string;
}

type MarketRule = keyof MarketFindings;

export type MarketStatement =
  | { readonly [R in MarketRule]: StatementOf<R, MarketFindings[R] & InForce> }[MarketRule]
  | StatementOf<"acts-not-known-here", Readonly<Record<string, never>>>;

export type MarketRuling = MarketStatement & {
  readonly market: HazardMarket;
  /** Absent for a market whose acts are not known here. */
  readonly act?: ActKey;
  readonly effect: MarketEffect;
  /** Of a forbidden sale: whether the record gives legal basis and class of buyer. */
  readonly met: boolean;
  readonly legalBasis?: LegalBasis;
};

/**
 * Every ruling for one market, the forbidding ones first.
 * @throws RangeError as {@link mixtureParts} does.
 */
export function marketRulings(
  sale: Sale,
  market: HazardMarket,
  acts: readonly Act[],
): MarketRuling[] {
  const parts = mixtureParts({
    ingredients: sale.ingredients,
    form: sale.form,
    frame: "EU CLP",
    publicSale: sale.publicSale,
  }).atMost.filter(({ massFraction }) => massFraction > 0);
  if (market === "other")
    return [{ market, effect: "line", met: true, rule: "acts-not-known-here", values: {} }];
  const found = [
    ...leadPaint(parts),
    ...cadmiumPaint(parts),
    ...highConcern(parts),
    ...carcinogensToThePublic(sale),
    ...authorisation(parts),
    ...titaniumDioxide(parts),
    ...offers(sale),
    ...unitedStates(parts, sale),
  ];
  const rulings = found
    .map((each) => ({ found: each, act: actOf(each.act, acts) }))
    .filter(({ act }) => act.markets.includes(market))
    .map(({ found: each, act }) => marketRuling(each, act, market, sale));
  return rulings.toSorted(
    (one, other) => Number(one.effect === "line") - Number(other.effect === "line"),
  );
}

/** Whether nothing stands against a sale in the market of these rulings; if not: no price, no card, no offer there. */
export function mayBeSold(rulings: readonly MarketRuling[]): boolean {
  return rulings.every(({ effect, met }) => effect === "line" || met);
}

/** Whether a market says the same of every paint, so that no paint is told from another by it. */
export function saidOfEveryPaint(rule: MarketStatement["rule"]): boolean {
  return rule === "us-review-wanted" || rule === "acts-not-known-here";
}

type Found = {
  readonly [R in MarketRule]: {
    readonly act: ActKey;
    readonly effect: MarketEffect;
    readonly rule: R;
    readonly values: MarketFindings[R];
  };
}[MarketRule];
/** A finding that two acts share. */
type Finding = Found extends infer F ? (F extends Found ? Omit<F, "act"> : never) : never;

function marketRuling(
  { act, effect, rule, values }: Found,
  { source, since, standing }: Act,
  market: HazardMarket,
  sale: Sale,
): MarketRuling {
  const basis = sale.legalBasis.find(
    (each) => each.market === market && each.basis.trim() !== "" && each.buyers.trim() !== "",
  );
  const isForbidding = effect === "forbidden unless";
  return {
    market,
    act,
    effect,
    met: !isForbidding || basis !== undefined,
    rule,
    source,
    values: {
      ...values,
      since,
      standing,
      ...(isForbidding && basis !== undefined ? { basis: basis.basis, buyers: basis.buyers } : {}),
    },
    ...(isForbidding && basis !== undefined ? { legalBasis: basis } : {}),
    // The rule and its own values were paired in `found`; the compiler cannot follow a pair through a spread.
  } as MarketRuling;
}

/** The same finding under two acts: one of the Union and its British twin. */
function inBoth(union: ActKey, britain: ActKey, found: Finding): Found[] {
  return [
    { ...found, act: union },
    { ...found, act: britain },
  ];
}

function slugs(parts: readonly Part[]): Named {
  return { ingredients: parts.map(({ slug }) => slug), names: parts.map(({ name }) => name) };
}

/**
 * Limits of lead at work: in air over eight hours [mg/m3], in blood [ug/100 ml] until and after a date.
 * @source directive-2024-869
 */
export const LEAD_AT_WORK = {
  airMgPerM3: 0.03,
  bloodUgPer100Ml: 30,
  until: "2028-12-31",
  bloodAfterUgPer100Ml: 15,
} as const;

/** Cadmium as metal from which entry 23 keeps paints of the tariff codes 3208 and 3209 off the market, mass fraction. */
const CADMIUM_LIMIT = 0.0001;

function cadmiumPaint(parts: readonly Part[]): Found[] {
  const members = parts.filter(({ metals }) => metals.cadmium !== undefined);
  return members.length === 0
    ? []
    : inBoth("reach-cadmium", "uk-reach-cadmium", {
        effect: "line",
        rule: "cadmium-in-other-paints",
        values: { ...slugs(members), limit: CADMIUM_LIMIT },
      });
}

/** Substances on the candidate list that artists' colours are made of. */
function highConcern(parts: readonly Part[]): Found[] {
  const found = (substance: SubstanceName, act: ActKey): Found[] =>
    ofSubstance(parts, substance, (values) => [
      { act, effect: "line", rule: "substance-of-very-high-concern", values },
    ]);
  return [
    ...found("lead compounds of very high concern", "reach-candidate-list"),
    ...found("lead chromate pigments", "reach-candidate-list-chromates"),
  ];
}

/** What is found of a substance where the mixture holds it. */
function ofSubstance(
  parts: readonly Part[],
  substance: SubstanceName,
  found: (named: Named) => Found[],
): Found[] {
  const members = parts.filter((part) => isSubstance(part, substance));
  return members.length === 0 ? [] : found(slugs(members));
}

/** Entries 16 and 17: carbonates and sulphates; no limit, no exemption of artists' paints, dry pigment meant for paint included. */
function leadPaint(parts: readonly Part[]): Found[] {
  const entryOf = (substance: SubstanceName, entry: string): Found[] =>
    ofSubstance(parts, substance, (named) => [
      ...inBoth("reach-lead-paint", "uk-reach-lead-paint", {
        effect: "forbidden unless",
        rule: "lead-compound-not-as-paint",
        values: { substance, entry, ...named },
      }),
      { act: "gb-leaded-paint", effect: "line", rule: "leaded-paint-by-declaration", values: {} },
    ]);
  const leaded = parts.filter((part) => part.metals.lead !== undefined);
  const unnamed = leaded.filter(
    ({ casNumber, colourIndexName }) => casNumber === undefined && colourIndexName === undefined,
  );
  return given<Found>([
    ...entryOf("lead carbonates", "16"),
    ...entryOf("lead sulphates", "17"),
    leaded.length > 0 && {
      act: "lead-at-work",
      effect: "line",
      rule: "lead-limits-at-work",
      values: LEAD_AT_WORK,
    },
    ...(unnamed.length === 0
      ? []
      : inBoth("reach-lead-paint", "uk-reach-lead-paint", {
          effect: "forbidden unless",
          rule: "lead-compound-not-identified",
          values: slugs(unnamed),
        })),
  ]);
}

/** Statements of carcinogens, mutagens and toxicants for reproduction of category 1A and 1B. */
function isCategoryOne(statement: string): boolean {
  return (
    isHazardCode(statement) &&
    HAZARD_STATEMENTS[statement].classes.some(
      (of) => of === "Carc. 1" || of === "Muta. 1" || of === "Repr. 1",
    )
  );
}

/** Entries 28 to 30; artists' paints are exempt (memory), a dry pigment is not a paint. */
function carcinogensToThePublic({ hazardStatements, form, publicSale }: Sale): Found[] {
  const statements = hazardStatements.flatMap(singleStatements).filter(isCategoryOne);
  if (statements.length === 0) return [];
  const values = { statements };
  if (form !== "powder")
    return inBoth("reach-cmr-public", "uk-reach-cmr-public", {
      effect: "line",
      rule: "cmr-artists-paint-exempt",
      values,
    });
  return inBoth(
    "reach-cmr-public",
    "uk-reach-cmr-public",
    publicSale
      ? { effect: "forbidden unless", rule: "cmr-not-to-the-public", values }
      : { effect: "line", rule: "restricted-to-professional-users", values },
  );
}

function authorisation(parts: readonly Part[]): Found[] {
  const found = (substance: SubstanceName, act: ActKey): Found[] =>
    ofSubstance(parts, substance, (values) =>
      inBoth(act, "uk-reach-authorisation", {
        effect: "forbidden unless",
        rule: "needs-authorisation",
        values,
      }),
    );
  return [
    ...found("lead chromate pigments", "reach-authorisation"),
    ...found("chromates under authorisation", "reach-authorisation-chromates"),
  ];
}

function titaniumDioxide(parts: readonly Part[]): Found[] {
  return ofSubstance(parts, "titanium dioxide", (values) =>
    inBoth("titanium-dioxide-annulled", "titanium-dioxide-delisted", {
      effect: "line",
      rule: "titanium-dioxide-without-h351",
      values,
    }),
  );
}

function offers({ hazardStatements, publicSale, hasFormulaIdentifier }: Sale): Found[] {
  const statements = hazardStatements.flatMap(singleStatements);
  const counts = statements.some((statement) => /^H[23]/.test(statement));
  return given<Found>([
    statements.length > 0 &&
      publicSale && {
        act: "clp-distance-offer",
        effect: "line",
        rule: "offer-names-hazards",
        values: { statements },
      },
    counts &&
      !hasFormulaIdentifier && {
        act: "clp-poison-centre",
        effect: "line",
        rule: "formula-identifier-wanted",
        values: {},
      },
  ]);
}

/** Lead in the dry film above which the US ban would apply, mass fraction (90 ppm). */
export const US_LEAD_LIMIT = 0.00009;

function unitedStates(parts: readonly Part[], { form, reviewed }: Sale): Found[] {
  const leaded = parts.filter(({ metals }) => metals.lead !== undefined);
  const { massFraction: lead, isUnknown } = metalIn(leaded, "lead");
  const listed = propositionSubstances(parts, form);
  return given<Found>([
    (isUnknown || passes(lead, US_LEAD_LIMIT)) && {
      act: "us-lead-paint",
      effect: "line",
      rule: "us-artists-paint-exempt-labelled",
      values: { ...slugs(leaded), limit: US_LEAD_LIMIT },
    },
    {
      act: "us-art-materials",
      effect: "line",
      rule: reviewed ? "us-review-on-record" : "us-review-wanted",
      values: {},
    },
    listed.length > 0 && {
      act: "us-proposition-65",
      effect: "line",
      rule: "proposition-65",
      values: { substances: listed },
    },
  ]);
}

/** Carbon black and titanium dioxide are listed as airborne particles only: of a powder, not of a paste. */
function propositionSubstances(parts: readonly Part[], form: PaintForm): string[] {
  const metals = (["lead", "cadmium", "chromate"] as const).filter((metal) =>
    parts.some((part) => part.metals[metal] !== undefined),
  );
  const airborne =
    form !== "powder"
      ? []
      : (["carbon black", "titanium dioxide"] as const).filter((name) =>
          parts.some((part) => isSubstance(part, name)),
        );
  return [...metals, ...airborne];
}
