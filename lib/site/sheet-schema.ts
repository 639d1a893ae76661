import { FIGURE_TABLE, type FigureKind } from "../sheet/figure-table.ts";
import { FORMS, GEOMETRIES, LANGUAGES, MARKETS, RATIO_KINDS } from "../records/schema/terms.ts";

type Schema = Readonly<Record<string, unknown>>;

const TEXT = { type: "string" } as const;
const FLAG = { type: "boolean" } as const;
const NUMBER = { type: "number" } as const;
const TEXTS = { type: "array", items: TEXT } as const;
const STANDING = { enum: ["measured", "derived", "estimated", "stated"] } as const;
const STANDING_OR_NONE = {
  enum: ["measured", "derived", "estimated", "stated", "not stated"],
} as const;
const SIGN = { enum: ["faster", "none", "slower"] } as const;
const QUANTITY = {
  anyOf: [NUMBER, { type: "array", items: NUMBER, minItems: 2, maxItems: 2 }],
} as const;

/** Label elements of a dry pigment, drier or thinner on its own. */
const HANDLED_PARTS = {
  type: "array",
  items: {
    type: "object",
    required: [
      "slug",
      "name",
      "known",
      "signalWord",
      "pictograms",
      "hazardStatements",
      "precautionaryStatements",
      "supplemental",
      "texts",
    ],
  },
} as const;

/** What a figure looks like at its place, by kind. */
const FIGURE_SCHEMAS: Readonly<Record<FigureKind, Schema>> = {
  decimal: QUANTITY,
  significant: QUANTITY,
  share: QUANTITY,
  days: QUANTITY,
  word: TEXT,
  notation: { type: ["string", "null"] },
  series: { type: "array", items: NUMBER },
};

const SCREEN_FLAGS = (prefix: string): [string, Schema][] =>
  ["srgb", "displayP3"].map((screen) => [`${prefix}.${screen}.inGamut`, FLAG]);
const DRAWN_FROM = (...keys: readonly string[]): Schema => ({
  type: "array",
  items: {
    type: "object",
    required: keys,
    additionalProperties: false,
    properties: Object.fromEntries(keys.map((key) => [key, NUMBER])),
  },
});
const MIXTURE_FACTS: Readonly<Record<string, Schema>> = Object.fromEntries<Schema>([
  ...[
    "components.*.slug",
    "components.*.name",
    "components.*.paint.slug",
    "components.*.paint.name",
    "whites.*.white.slug",
    "whites.*.white.name",
    "leastLightfast",
    "whites.*.pair.first",
    "whites.*.pair.second",
  ].map((fact): [string, Schema] => [`mixture.${fact}`, TEXT]),
  ["mixture.refusals", TEXTS],
  ["mixture.whites.*.steps.*.massRatio", { type: "string", pattern: "^[0-9.]+:[0-9.]+$" }],
  ["mixture.whites.*.steps.*.uncertainty", NUMBER],
  ["mixture.whites.*.fresh.uncertainty", NUMBER],
  ...SCREEN_FLAGS("mixture.whites.*.steps.*"),
  ...SCREEN_FLAGS("mixture.whites.*.fresh"),
  ["mixture.whites.*.pair.greys", DRAWN_FROM("share", "a", "b")],
  ...["drifts.*", "singleBlack"].flatMap((who): [string, Schema][] => [
    [`mixture.whites.*.${who}.slug`, TEXT],
    [`mixture.whites.*.${who}.name`, TEXT],
    [`mixture.whites.*.${who}.sentences`, TEXTS],
    [`mixture.whites.*.${who}.path`, DRAWN_FROM("loss", "a", "b")],
    [`mixture.whites.*.${who}.losses.*.slug`, TEXT],
    ...SCREEN_FLAGS(`mixture.whites.*.${who}.losses.*`),
  ]),
]);

/** The plain parts of a sheet: facts of the record, sentences, lists of codes. Figures come from the figure table. */
const FACTS: Readonly<Record<string, Schema>> = {
  schemaVersion: { const: 1 },
  slug: TEXT,
  name: TEXT,
  revision: { type: "string", pattern: "^[0-9a-f]{8}$" },
  family: TEXT,
  recordDate: TEXT,
  dispersion: TEXT,
  "vehicle.slug": TEXT,
  "vehicle.name": TEXT,
  "vehicle.oil": TEXT,
  "pigments.*.slug": TEXT,
  "pigments.*.name": TEXT,
  "pigments.*.colourIndexName": TEXT,
  "pigments.*.colourIndexNumber": TEXT,
  "pigments.*.casNumber": TEXT,
  "additions.*.slug": TEXT,
  "additions.*.name": TEXT,
  "additions.*.kind": TEXT,
  "additions.*.oil": TEXT,
  "additions.*.metals.*.slug": TEXT,
  "notations.masstone.geometry": { enum: GEOMETRIES },
  "notations.masstone.standing": STANDING,
  "notations.masstone.srgb.inGamut": FLAG,
  "notations.masstone.displayP3.inGamut": FLAG,
  "notations.masstone.lamplight.sentence": TEXT,
  "notations.masstone.curve.grid.startNm": NUMBER,
  "notations.masstone.curve.grid.stepNm": NUMBER,
  "notations.masstone.curve.grid.count": NUMBER,
  "notations.masstone.curve.values": { type: "array", items: NUMBER },
  "notations.masstone.glossExcludedCurve": { type: "object" },
  "tints.*.white.slug": TEXT,
  "tints.*.white.name": TEXT,
  "tints.*.white.colourIndexName": TEXT,
  "tints.*.standing": STANDING,
  "tints.*.massRatioKind": { enum: RATIO_KINDS },
  "tints.*.sentence": TEXT,
  "tints.*.refusal": TEXT,
  "tints.*.steps.*.massRatio": { type: "string", pattern: "^[0-9.]+:[0-9.]+$" },
  "tints.*.steps.*.colourShare": NUMBER,
  "tints.*.steps.*.standing": STANDING,
  "tints.*.steps.*.geometry": { enum: GEOMETRIES },
  "tints.*.steps.*.uncertainty": NUMBER,
  "tints.*.steps.*.suspect": TEXT,
  "tints.*.steps.*.srgb.inGamut": FLAG,
  "tints.*.steps.*.displayP3.inGamut": FLAG,
  "tints.*.atL.*.srgb.inGamut": FLAG,
  "tints.*.atL.*.displayP3.inGamut": FLAG,
  "optics.glaze.*.filmUm": NUMBER,
  "optics.glaze.*.srgb.inGamut": FLAG,
  "optics.glaze.*.displayP3.inGamut": FLAG,
  "optics.gloss.sentence": TEXT,
  "optics.hidingCurve": {
    type: "array",
    items: { type: "object", required: ["filmUm", "contrastRatio"] },
  },
  "optics.gloss.depths.*.slug": TEXT,
  "optics.gloss.depths.*.finish": { enum: ["glossy", "satin", "matte"] },
  "optics.gloss.depths.*.specular": { enum: ["excluded", "included"] },
  "optics.gloss.depths.*.srgb.inGamut": FLAG,
  "optics.gloss.depths.*.displayP3.inGamut": FLAG,
  "optics.extender.colour.slug": TEXT,
  "optics.extender.colour.name": TEXT,
  "optics.extender.volumes": NUMBER,
  "optics.extender.sentence": TEXT,
  "optics.dispersion.other.slug": TEXT,
  "optics.dispersion.other.name": TEXT,
  "optics.dispersion.white.slug": TEXT,
  "optics.dispersion.white.name": TEXT,
  "optics.dispersion.sentence": TEXT,
  "optics.acrossWhites": TEXTS,
  "optics.fit.geometry": { enum: GEOMETRIES },
  "optics.fit.surface": TEXT,
  "optics.fit.quality": TEXT,
  "optics.fit.scattering": TEXT,
  "optics.fit.remarks": TEXTS,
  "optics.fit.leftOut": TEXTS,
  "optics.fit.grid.startNm": NUMBER,
  "optics.fit.grid.stepNm": NUMBER,
  "optics.fit.grid.count": NUMBER,
  "optics.fit.whites.*.white.slug": TEXT,
  "optics.fit.whites.*.white.name": TEXT,
  "optics.fit.whites.*.ratioKind": { enum: RATIO_KINDS },
  ...MIXTURE_FACTS,
  "optics.reasons": TEXTS,
  "oil.reasons": TEXTS,
  "oil.contradictions": TEXTS,
  "drying.standing": STANDING_OR_NONE,
  "drying.reasons": TEXTS,
  "drying.layering": TEXTS,
  "drying.filmHealth": TEXTS,
  "drying.contradictions": TEXTS,
  "drying.grounds": TEXTS,
  "drying.contributions.*.sentence": TEXT,
  "drying.contributions.*.sign": SIGN,
  "drying.trials.*.sentence": TEXT,
  "drying.trials.*.tintedWith.slug": TEXT,
  "drying.trials.*.tintedWith.name": TEXT,
  "drying.trials.*.method": TEXT,
  "drying.trials.*.date": TEXT,
  "drying.inWhites.*.white.slug": TEXT,
  "drying.inWhites.*.white.name": TEXT,
  "drying.inWhites.*.white.colourIndexName": TEXT,
  "drying.inWhites.*.whiteParts": NUMBER,
  "drying.inWhites.*.contributions.*.sentence": TEXT,
  "drying.inWhites.*.contributions.*.sign": SIGN,
  "batch.reasons": TEXTS,
  "batch.sizes.*.slug": TEXT,
  "batch.sizes.*.pigmentG": NUMBER,
  "batch.sizes.*.pigments.*.slug": TEXT,
  "batch.sizes.*.additions.*.slug": TEXT,
  "batch.sizes.*.tubes.*.slug": TEXT,
  "batch.sizes.*.tubes.*.ml": NUMBER,
  "batch.sizes.*.unpriced": TEXTS,
  "fill.sentences": TEXTS,
  "fill.fillings.*.slug": TEXT,
  "fill.fillings.*.pigment": TEXT,
  "fill.fillings.*.packing": { enum: ["paint", "poured", "tapped"] },
  "fill.fillings.*.holds.*.slug": TEXT,
  "fill.fillings.*.holds.*.ml": NUMBER,
  "permanence.standing": STANDING_OR_NONE,
  "permanence.reasons": TEXTS,
  "permanence.sensitivities": TEXTS,
  "permanence.basis": {
    enum: ["exposed under the standard", "own exposure", "stated", "expected", "not known"],
  },
  "permanence.weakest": TEXTS,
  "permanence.label": TEXT,
  "permanence.contradictions": TEXTS,
  "permanence.forms.*.slug": { enum: FORMS },
  "permanence.forms.*.underStandard": FLAG,
  "permanence.forms.*.standards": TEXTS,
  "permanence.forms.*.exposures": TEXTS,
  "cautions.frame": TEXT,
  "cautions.edition": TEXT,
  "cautions.basis": { enum: ["stated by the maker", "worked out"] },
  "cautions.signalWord": { enum: ["Danger", "Warning", null] },
  "cautions.classification": TEXTS,
  "cautions.pictograms": TEXTS,
  "cautions.hazardStatements": TEXTS,
  "cautions.precautionaryStatements": TEXTS,
  "cautions.supplemental": TEXTS,
  "cautions.sensitisers": TEXTS,
  "cautions.texts": {
    type: "object",
    additionalProperties: {
      type: "object",
      required: ["en"],
      properties: Object.fromEntries(LANGUAGES.map((language) => [language, TEXT])),
      additionalProperties: false,
    },
  },
  "cautions.traces": statementList("statement"),
  "cautions.leftOut": statementList("statement"),
  "cautions.unknown": TEXTS,
  "cautions.gaps": TEXTS,
  "cautions.notClassified": TEXTS,
  "cautions.unknownAcuteToxicity": TEXTS,
  "cautions.checks": TEXTS,
  "cautions.smallPackage": TEXT,
  "cautions.restrictions": statementList("market"),
  "cautions.studio": statementList("operation"),
  "cautions.notForSale": { type: "array", items: { enum: MARKETS } },
  "cautions.onLegalBasis": { type: "array", items: { enum: MARKETS } },
  "cautions.dryPigment": HANDLED_PARTS,
  "cautions.additions": HANDLED_PARTS,
  "cautions.maker.date": TEXT,
  "cautions.maker.dataSheet.url": TEXT,
  "cautions.maker.dataSheet.date": TEXT,
  "cautions.maker.ufi": TEXT,
  "cautions.maker.review.by": TEXT,
  "cautions.maker.review.date": TEXT,
  "cautions.maker.review.wording": TEXT,
  "offer.currency": TEXT,
  "offer.sizes": {
    type: "array",
    items: {
      type: "object",
      additionalProperties: false,
      required: ["ml"],
      properties: { ml: NUMBER, price: NUMBER },
    },
  },
  "offer.withheldFor": { type: "array", items: { enum: MARKETS } },
  neighbours: {
    type: "array",
    items: {
      type: "object",
      required: ["slug", "deltaE00"],
      properties: {
        slug: TEXT,
        deltaE00: NUMBER,
        samePigment: FLAG,
        metamerism: { type: "object" },
      },
    },
  },
  evidence: {
    type: "array",
    items: {
      type: "object",
      additionalProperties: false,
      required: ["figure", "value", "unit", "text", "standing", "restsOn", "method", "inputs"],
      properties: {
        figure: TEXT,
        value: {},
        unit: TEXT,
        text: TEXT,
        standing: STANDING,
        restsOn: STANDING,
        method: TEXT,
        inputs: TEXTS,
        source: TEXT,
        uncertainty: NUMBER,
      },
    },
  },
  notStated: {
    type: "array",
    items: {
      type: "object",
      additionalProperties: false,
      required: ["figure", "reason", "wanting"],
      properties: { figure: TEXT, reason: TEXT, wanting: TEXTS },
    },
  },
};

/** Sentences that each belong to a statement, market or operation. */
function statementList(belongsTo: string): Schema {
  return {
    type: "array",
    items: {
      type: "object",
      required: [belongsTo, "rule", "text"],
      properties: { [belongsTo]: TEXT, rule: TEXT, text: TEXT },
    },
  };
}

const REQUIRED: Readonly<Record<string, readonly string[]>> = {
  "": [
    "schemaVersion",
    "slug",
    "name",
    "revision",
    "pigments",
    "additions",
    "notations",
    "tints",
    "optics",
    "oil",
    "fill",
    "drying",
    "permanence",
    "cautions",
    "evidence",
    "notStated",
  ],
  "pigments.*": ["slug", "name"],
  "tints.*": ["white", "standing", "massRatioKind", "steps", "atL", "sentence"],
  "tints.*.white": ["slug", "name"],
  "tints.*.steps.*": ["massRatio", "standing", "lab"],
  "notations.masstone": ["standing", "xyz", "lab"],
  drying: ["standing", "reasons"],
  permanence: ["standing", "reasons"],
  cautions: [
    "frame",
    "basis",
    "signalWord",
    "pictograms",
    "hazardStatements",
    "precautionaryStatements",
    "supplemental",
    "restrictions",
    "studio",
    "texts",
  ],
};

/** Members of these are a list; of every other starred parent, the values of a map. */
const LISTS = new Set([
  "pigments",
  "additions",
  "metals",
  "tints",
  "steps",
  "glaze",
  "sizes",
  "tubes",
  "fillings",
  "holds",
  "contributions",
  "trials",
  "inWhites",
  "forms",
  "depths",
  "whites",
  "components",
  "drifts",
  "losses",
]);

interface Tree {
  readonly children: Map<string, Tree>;
  schema?: Schema;
}

/** The published schema of sheet.json: the figure table's leaves and the facts beside them, and nothing else. */
export function sheetSchema(): object {
  const root: Tree = { children: new Map() };
  for (const { pattern, kind } of FIGURE_TABLE) place(root, pattern, FIGURE_SCHEMAS[kind]);
  for (const [pattern, schema] of Object.entries(FACTS)) place(root, pattern, schema);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "sheet",
    ...(objectSchema(root, "") as object),
  };
}

function place(root: Tree, pattern: string, schema: Schema): void {
  let node = root;
  for (const key of pattern.split(".")) {
    const next = node.children.get(key) ?? { children: new Map<string, Tree>() };
    node.children.set(key, next);
    node = next;
  }
  node.schema = schema;
}

function objectSchema(node: Tree, path: string): Schema {
  if (node.schema !== undefined) return node.schema;
  const starred = node.children.get("*");
  const own = path.split(".").at(-1) ?? "";
  const at = (key: string): string => (path === "" ? key : `${path}.${key}`);
  if (starred !== undefined) {
    const member = objectSchema(starred, at("*"));
    return LISTS.has(own)
      ? { type: "array", items: member }
      : { type: "object", additionalProperties: member };
  }
  return {
    type: "object",
    additionalProperties: false,
    required: REQUIRED[path] ?? [],
    properties: Object.fromEntries(
      [...node.children].map(([key, child]) => [key, objectSchema(child, at(key))]),
    ),
  };
}
