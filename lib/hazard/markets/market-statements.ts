/**
 * What each market's acts say of a colour: a sale that is forbidden unless a legal
 * basis and a class of buyer are on record, or a line that the offer must carry.
 */
import type { Statement } from "../../quantities/statement.ts";
import { ACTS, actStanding, type ActKey, type HazardMarket } from "../classify/legislation.ts";
import type { MarketRule } from "../classify/hazard-rules.ts";
import type { PaintForm } from "../classify/frame.ts";
import { passes } from "../classify/limit.ts";
import { isSubstance, type SubstanceName } from "../classify/substance.ts";
import { mixtureParts, type Ingredient, type Part } from "../classify/composition.ts";
import { HAZARD_STATEMENTS, isHazardCode } from "../texts/hazard-statement.ts";
import { singleStatements } from "../label/stated-label.ts";

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

export interface MarketRuling extends Statement {
  readonly rule: MarketRule;
  readonly market: HazardMarket;
  /** Absent for a market whose acts are not known here. */
  readonly act?: ActKey;
  readonly effect: MarketEffect;
  /** Of a forbidden sale: whether the record gives legal basis and class of buyer. */
  readonly met: boolean;
  readonly legalBasis?: LegalBasis;
}

/**
 * Every ruling for one market, the forbidding ones first.
 * @throws RangeError as {@link mixtureParts} does.
 */
export function marketRulings(sale: Sale, market: HazardMarket): MarketRuling[] {
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
    ...carcinogensToThePublic(sale),
    ...authorisation(parts),
    ...titaniumDioxide(parts),
    ...offers(sale),
    ...unitedStates(parts, sale),
  ];
  const rulings = found
    .filter(({ act }) => (ACTS[act].markets as readonly HazardMarket[]).includes(market))
    .map((found) => marketRuling(found, market, sale));
  return rulings.toSorted(
    (one, other) => Number(one.effect === "line") - Number(other.effect === "line"),
  );
}

/** Whether nothing stands against a sale in the market of these rulings; if not: no price, no card, no offer there. */
export function mayBeSold(rulings: readonly MarketRuling[]): boolean {
  return rulings.every(({ effect, met }) => effect === "line" || met);
}

interface Found {
  readonly act: ActKey;
  readonly effect: MarketEffect;
  readonly rule: MarketRule;
  readonly values: Statement["values"];
}

function marketRuling(
  { act, effect, rule, values }: Found,
  market: HazardMarket,
  sale: Sale,
): MarketRuling {
  const { source, since } = ACTS[act];
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
      standing: actStanding(act),
      ...(isForbidding && basis !== undefined ? { basis: basis.basis, buyers: basis.buyers } : {}),
    },
    ...(isForbidding && basis !== undefined ? { legalBasis: basis } : {}),
  };
}

/** The same finding under an act of the Union and under its British twin. */
function inBoth(union: ActKey, britain: ActKey, found: Omit<Found, "act">): Found[] {
  return [
    { ...found, act: union },
    { ...found, act: britain },
  ];
}

function slugs(parts: readonly Part[]): {
  readonly ingredients: readonly string[];
  readonly names: readonly string[];
} {
  return { ingredients: parts.map(({ slug }) => slug), names: parts.map(({ name }) => name) };
}

/** Entries 16 and 17: carbonates and sulphates; no limit, no exemption of artists' paints, dry pigment meant for paint included. */
function leadPaint(parts: readonly Part[]): Found[] {
  const entries = [
    ["lead carbonates", "16"],
    ["lead sulphates", "17"],
  ] as const satisfies readonly (readonly [SubstanceName, string])[];
  const named = entries.flatMap(([substance, entry]) => {
    const members = parts.filter((part) => isSubstance(part, substance));
    return members.length === 0
      ? []
      : inBoth("reach-lead-paint", "uk-reach-lead-paint", {
          effect: "forbidden unless",
          rule: "lead-compound-not-as-paint",
          values: { substance, entry, ...slugs(members) },
        });
  });
  const unnamed = parts.filter(
    (part) =>
      part.metals.lead !== undefined &&
      part.casNumber === undefined &&
      part.colourIndexName === undefined,
  );
  if (unnamed.length === 0) return named;
  return [
    ...named,
    ...inBoth("reach-lead-paint", "uk-reach-lead-paint", {
      effect: "forbidden unless",
      rule: "lead-compound-not-identified",
      values: slugs(unnamed),
    }),
  ];
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
  const members = parts.filter((part) => isSubstance(part, "lead chromate pigments"));
  return members.length === 0
    ? []
    : inBoth("reach-authorisation", "uk-reach-authorisation", {
        effect: "forbidden unless",
        rule: "needs-authorisation",
        values: slugs(members),
      });
}

function titaniumDioxide(parts: readonly Part[]): Found[] {
  const members = parts.filter((part) => isSubstance(part, "titanium dioxide"));
  if (members.length === 0) return [];
  return (["titanium-dioxide-annulled", "titanium-dioxide-delisted"] as const).map((act) => ({
    act,
    effect: "line",
    rule: "titanium-dioxide-without-h351",
    values: slugs(members),
  }));
}

function offers({ hazardStatements, publicSale, hasFormulaIdentifier }: Sale): Found[] {
  const statements = hazardStatements.flatMap(singleStatements);
  if (statements.length === 0) return [];
  const named: Found[] = publicSale
    ? [
        {
          act: "clp-distance-offer",
          effect: "line",
          rule: "offer-names-hazards",
          values: { statements },
        },
      ]
    : [];
  const counts = statements.some((statement) => /^H[23]/.test(statement));
  return counts && !hasFormulaIdentifier
    ? [
        ...named,
        { act: "clp-poison-centre", effect: "line", rule: "formula-identifier-wanted", values: {} },
      ]
    : named;
}

/** Lead in the dry film above which the US ban would apply, mass fraction (90 ppm). */
export const US_LEAD_LIMIT = 0.00009;

function unitedStates(parts: readonly Part[], { form, reviewed }: Sale): Found[] {
  const leaded = parts.filter(({ metals }) => metals.lead !== undefined);
  const isUnknown = leaded.some(({ metals }) => metals.lead === "present");
  const lead = leaded.reduce(
    (sum, { metals, massFraction }) =>
      sum + (typeof metals.lead === "number" ? metals.lead * massFraction : 0),
    0,
  );
  const listed = propositionSubstances(parts, form);
  return [
    ...(isUnknown || passes(lead, US_LEAD_LIMIT)
      ? [
          {
            act: "us-lead-paint",
            effect: "line",
            rule: "us-artists-paint-exempt-labelled",
            values: { ...slugs(leaded), limit: US_LEAD_LIMIT },
          } as const,
        ]
      : []),
    {
      act: "us-art-materials",
      effect: "line",
      rule: reviewed ? "us-review-on-record" : "us-review-wanted",
      values: {},
    },
    ...(listed.length === 0
      ? []
      : [
          {
            act: "us-proposition-65",
            effect: "line",
            rule: "proposition-65",
            values: { substances: listed },
          } as const,
        ]),
  ];
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
