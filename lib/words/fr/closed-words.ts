/** French of the closed sets of words that come into the wordings as values. */
import type { DryingClass } from "../../drying/drying-class.ts";
import type { Chemistry, DryingCause } from "../../drying/chemistry-drying.ts";
import type { DrierMetal } from "../../drying/added-drier.ts";
import type { Oil } from "../../drying/oils.ts";
import type { Finish } from "../../formulation/finish.ts";
import type { OilAbsorptionMethod } from "../../formulation/oil-absorption-method.ts";
import type { OilIndexClass } from "../../formulation/oil-index-class.ts";
import type { OpacityClass } from "../../optics/films/opacity.ts";
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { Expectation } from "../../permanence/expected-lightfastness.ts";

/** "vers le bleu" */
export const TOWARD: Readonly<Record<HueWord, string>> = {
  red: "vers le rouge",
  brown: "vers le brun",
  yellow: "vers le jaune",
  olive: "vers l’olive",
  green: "vers le vert",
  "blue-green": "vers le bleu-vert",
  blue: "vers le bleu",
  violet: "vers le violet",
  purple: "vers le pourpre",
};

/** "bleu" */
export const HUES: Readonly<Record<HueWord, string>> = {
  red: "rouge",
  brown: "brun",
  yellow: "jaune",
  olive: "olive",
  green: "vert",
  "blue-green": "bleu-vert",
  blue: "bleu",
  violet: "violet",
  purple: "pourpre",
};

/** Of the drying. */
export const DRYING_CLASSES: Readonly<Record<DryingClass, string>> = {
  fast: "rapide",
  medium: "moyen",
  slow: "lent",
  "very slow": "très lent",
};

/** Of the oil index. */
export const OIL_CLASSES: Readonly<Record<OilIndexClass, string>> = {
  "very low": "très faible",
  low: "faible",
  medium: "moyen",
  high: "élevé",
  "very high": "très élevé",
};

export const OPACITIES: Readonly<Record<OpacityClass, string>> = {
  opaque: "opaque",
  "semi-opaque": "semi-opaque",
  "semi-transparent": "semi-transparent",
  transparent: "transparent",
};

export const FINISHES: Readonly<Record<Finish, string>> = {
  gloss: "brillant",
  "semi-gloss": "demi-brillant",
  satin: "satiné",
  matte: "mat",
};

/** Of the lightfastness. */
export const EXPECTED: Readonly<Record<Expectation, string>> = {
  excellent: "excellente",
  "very good": "très bonne",
  fair: "moyenne",
  poor: "faible",
  fugitive: "fugace",
};

export const OILS: Readonly<Record<Oil, string>> = {
  linseed: "huile de lin",
  walnut: "huile de noix",
  safflower: "huile de carthame",
  poppy: "huile d’œillette",
  "stand linseed": "standolie de lin",
};

export const DRIER_METALS: Readonly<Record<DrierMetal, string>> = {
  cobalt: "cobalt",
  manganese: "manganèse",
  lead: "plomb",
  zirconium: "zirconium",
  calcium: "calcium",
  zinc: "zinc",
};

/** Metals as the tables of label texts have them, without their article. */
export const METALS: Readonly<Record<string, string>> = {
  lead: "plomb",
  cadmium: "cadmium",
  mercury: "mercure",
  arsenic: "arsenic",
  chromate: "chrome hexavalent",
  nickel: "nickel",
  cobalt: "cobalt",
  antimony: "antimoine",
  barium: "baryum soluble",
  manganese: "manganèse",
  copper: "cuivre",
};

export const CHEMISTRIES: Readonly<Record<Chemistry, string>> = {
  lead: "plomb",
  cobalt: "cobalt",
  manganese: "manganèse",
  "manganese trace": "manganèse en traces",
  "brown earth": "terre brune",
  "iron cyanide": "cyanure de fer",
  "iron oxide": "oxyde de fer",
  aluminosilicate: "aluminosilicate",
  "chromium oxide": "oxyde de chrome",
  "copper chromite": "chromite de cuivre",
  "inert extender": "charge inerte",
  phthalocyanine: "phtalocyanine",
  "titanium dioxide": "dioxyde de titane",
  "zinc oxide": "oxyde de zinc",
  "mercury sulphide": "sulfure de mercure",
  "cadmium sulphide": "sulfure de cadmium",
  "coarse carbon": "carbone grossier",
  "fine carbon": "carbone fin",
  organic: "pigment organique",
};

export const DRYING_CAUSES: Readonly<Record<DryingCause, string>> = {
  "catalyses oxidation": "aide l’huile à fixer l’oxygène",
  "takes no part": "n’intervient pas",
  "binds into soaps": "il forme des savons avec l’huile",
  "takes up radicals":
    "son carbone capte les radicaux par lesquels l’huile sèche, et retient le siccatif",
  "brings no drying metal": "il n’apporte aucun métal siccatif",
};

export const OIL_WAYS: Readonly<Record<OilAbsorptionMethod["way"], string>> = {
  "spatula rub-out": "empâtage à la spatule",
  "palette-knife rub-out": "empâtage au couteau",
  "stirred to a soft ball": "agitation jusqu’à la boule molle",
};

/** The paint alone or let down. */
export const FORMS: Readonly<Record<string, string>> = {
  masstone: "ton plein",
  tint: "dégradé",
  "let-down": "dégradé",
};

export const GEOMETRIES: Readonly<Record<string, string>> = {
  "45/0": "45/0",
  "d/8 excluded": "d/8, reflet exclu",
  "d/8 included": "d/8, reflet inclus",
};

/** By what parts are counted. */
export const MEASURES: Readonly<Record<string, string>> = { volume: "volume", weight: "poids" };

/** A word of a closed set; one that is in none of them stands as it is. */
export function wordOf(words: Readonly<Record<string, string>>, word: string): string {
  return words[word] ?? word;
}
