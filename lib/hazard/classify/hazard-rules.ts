/**
 * Every rule that this science rules by, so that a language can be held to have a
 * sentence for each. Beside a rule stand the values it speaks of.
 */

/** Why a statement stands on a label. Most also give `hazardClass` and `ingredients` (slugs). */
export const TRACE_RULES = [
  "ate-mix", // route, ateMix, limit, unit, unknownFraction
  "cut-off", // massFraction, limit, limitKind, countedAs, group
  "cut-off-summed", // the same, over several ingredients that count together
  "weighted-sum", // weightedSum, limit, limitKind
  "flash-point", // flashPointC
  "flash-point-not-stated", // massFraction
  "as-its-ingredient", // massFraction
  "as-its-ingredients", // massFraction, limit
  "elicitation", // substance, massFraction, limit
  "lead-as-metal", // massFraction, limit, packageMl?, shortBelowMl?
  "lead-share-not-stated", // the same
  "traces-in-an-unclassified-mixture",
  "as-its-supplier-states",
] as const;

/** Why a statement of an ingredient does not stand on the label: ingredient, name, form, frame. */
export const LEFT_OUT_RULES = [
  "entry-annulled",
  "category-not-in-frame",
  "dust-not-from-a-paste",
  "vapour-not-from-a-powder",
  "not-a-liquid",
  "flash-point-decides",
  "flammable-trace",
  "too-viscous-to-aspirate",
  "needs-a-test-of-the-mixture",
  "below-its-limit", // ingredients, massFraction, limit?
  "covered-by", // by
] as const;

/** Lines beside the label elements. */
export const LABEL_LINE_RULES = [
  "unknown-acute-toxicity", // routes, massFraction, ingredients
  "no-hazard-data", // ingredient, name, massFraction
  "total-short-of-the-whole", // unaccounted
  "metal-not-classified", // metals
  "small-package", // packageMl, upToMl, statements
] as const;

/** Why a precautionary statement was chosen: answers (statements). */
export const PRECAUTION_RULES = [
  "children-first",
  "disposal-for-the-public",
  "by-severity",
] as const;

/** Where a stated label and the worked-out one part. */
export const DIFFERENCE_RULES = [
  "frame-differs",
  "signal-word-differs", // stated, workedOut
  "pictogram-not-stated",
  "pictogram-not-worked-out",
  "supplement-not-stated",
  "supplement-not-worked-out", // code
  "statement-not-stated", // statement, certain, ingredients
  "statement-differs", // stated, workedOut, certain, ingredients
  "statement-not-worked-out",
  "statement-annulled", // statement
  "not-of-the-frame", // statement, frame
  "older-than-the-edition", // statement, replacement, edition
  "label-older-than-the-edition", // date, edition, asOf
  "too-many-precautions", // count, atMost
] as const;

/** What a market's acts say; all give since and standing, a met prohibition basis and buyers. */
export const MARKET_RULES = [
  "lead-compound-not-as-paint", // substance, entry, ingredients, names
  "lead-compound-not-identified", // ingredients, names
  "cmr-not-to-the-public",
  "cmr-artists-paint-exempt",
  "restricted-to-professional-users", // statements
  "needs-authorisation",
  "titanium-dioxide-without-h351", // ingredients, names
  "offer-names-hazards", // statements
  "formula-identifier-wanted",
  "us-artists-paint-exempt-labelled", // ingredients, names, limit
  "us-review-on-record",
  "us-review-wanted",
  "proposition-65", // substances
  "acts-not-known-here",
] as const;

/** Cautions of the studio; those of weighing and mulling give pigments (slugs). */
export const CAUTION_RULES = [
  "captured-exhaust-first",
  "no-draught-across-powder",
  "respirator-ffp2",
  "respirator-p3",
  "no-ignition-source",
  "gloves",
  "eye-protection",
  "pregnant-or-nursing-keep-away",
  "workplace-lead-rules",
  "children-keep-away",
  "no-food-in-the-room",
  "no-food-no-brush-in-mouth",
  "fresh-air",
  "no-dry-sanding",
  "never-sand-dry",
  "spray-only-with-captured-exhaust",
  "no-spraying-no-heating",
  "no-heating-of-oil",
  "wet-wipe-no-sweeping",
  "wash-hands",
  "oily-rags",
  "not-down-the-drain",
  "hazardous-waste",
] as const;

/** Why a caution is given. */
export const CAUTION_REASONS = [
  "holds-metal", // metals
  "states-hazard", // statements
  "hazard-data-missing", // ingredients
  "holds-sensitiser", // names
  "dustiness", // class, bulkDensityLooseGPerMl?, bulkDensityTappedGPerMl?, particleSizeUm?
  "dust-can-burn", // nature
  "nuisance-dust",
  "paint-is-no-food",
  "film-turns-to-dust",
  "droplets-are-breathed-in",
  "drying-oil",
  "dust-goes-up-again",
  "paint-and-oil-foul-water",
] as const;

export type TraceRule = (typeof TRACE_RULES)[number];
export type LeftOutRule = (typeof LEFT_OUT_RULES)[number];
export type LabelLineRule = (typeof LABEL_LINE_RULES)[number];
export type PrecautionRule = (typeof PRECAUTION_RULES)[number];
export type DifferenceRule = (typeof DIFFERENCE_RULES)[number];
export type MarketRule = (typeof MARKET_RULES)[number];
export type CautionRule = (typeof CAUTION_RULES)[number];
export type CautionReason = (typeof CAUTION_REASONS)[number];

export const HAZARD_RULES: readonly string[] = [
  ...TRACE_RULES,
  ...LEFT_OUT_RULES,
  ...LABEL_LINE_RULES,
  ...PRECAUTION_RULES,
  ...DIFFERENCE_RULES,
  ...MARKET_RULES,
  ...CAUTION_RULES,
  ...CAUTION_REASONS,
];
