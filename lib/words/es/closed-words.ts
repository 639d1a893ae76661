/** Spanish of the closed sets of words that come into the wordings as values. */
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

/** "hacia el azul" */
export const TOWARD: Readonly<Record<HueWord, string>> = {
  red: "hacia el rojo",
  brown: "hacia el pardo",
  yellow: "hacia el amarillo",
  olive: "hacia el oliva",
  green: "hacia el verde",
  "blue-green": "hacia el verde azulado",
  blue: "hacia el azul",
  violet: "hacia el violeta",
  purple: "hacia el púrpura",
};

/** "azul" */
export const HUES: Readonly<Record<HueWord, string>> = {
  red: "rojo",
  brown: "pardo",
  yellow: "amarillo",
  olive: "oliva",
  green: "verde",
  "blue-green": "verde azulado",
  blue: "azul",
  violet: "violeta",
  purple: "púrpura",
};

/** Of the drying. */
export const DRYING_CLASSES: Readonly<Record<DryingClass, string>> = {
  fast: "rápido",
  medium: "medio",
  slow: "lento",
  "very slow": "muy lento",
};

/** Of the oil index. */
export const OIL_CLASSES: Readonly<Record<OilIndexClass, string>> = {
  "very low": "muy bajo",
  low: "bajo",
  medium: "medio",
  high: "alto",
  "very high": "muy alto",
};

export const OPACITIES: Readonly<Record<OpacityClass, string>> = {
  opaque: "opaca",
  "semi-opaque": "semiopaca",
  "semi-transparent": "semitransparente",
  transparent: "transparente",
};

export const FINISHES: Readonly<Record<Finish, string>> = {
  gloss: "brillante",
  "semi-gloss": "semibrillante",
  satin: "satinado",
  matte: "mate",
};

/** Of the lightfastness. */
export const EXPECTED: Readonly<Record<Expectation, string>> = {
  excellent: "excelente",
  "very good": "muy buena",
  fair: "mediana",
  poor: "escasa",
  fugitive: "fugaz",
};

export const OILS: Readonly<Record<Oil, string>> = {
  linseed: "aceite de linaza",
  walnut: "aceite de nuez",
  safflower: "aceite de cártamo",
  poppy: "aceite de adormidera",
  "stand linseed": "standoil de linaza",
};

export const DRIER_METALS: Readonly<Record<DrierMetal, string>> = {
  cobalt: "cobalto",
  manganese: "manganeso",
  lead: "plomo",
  zirconium: "circonio",
  calcium: "calcio",
  zinc: "cinc",
};

/** Metals as the tables of label texts have them. */
export const METALS: Readonly<Record<string, string>> = {
  lead: "plomo",
  cadmium: "cadmio",
  mercury: "mercurio",
  arsenic: "arsénico",
  chromate: "cromo hexavalente",
  nickel: "níquel",
  cobalt: "cobalto",
  antimony: "antimonio",
  barium: "bario soluble",
  manganese: "manganeso",
  copper: "cobre",
};

export const CHEMISTRIES: Readonly<Record<Chemistry, string>> = {
  lead: "plomo",
  cobalt: "cobalto",
  manganese: "manganeso",
  "manganese trace": "manganeso en trazas",
  "brown earth": "tierra parda",
  "iron cyanide": "cianuro de hierro",
  "iron oxide": "óxido de hierro",
  aluminosilicate: "aluminosilicato",
  "chromium oxide": "óxido de cromo",
  "copper chromite": "cromito de cobre",
  "inert extender": "carga inerte",
  phthalocyanine: "ftalocianina",
  "titanium dioxide": "dióxido de titanio",
  "zinc oxide": "óxido de cinc",
  "mercury sulphide": "sulfuro de mercurio",
  "cadmium sulphide": "sulfuro de cadmio",
  "coarse carbon": "carbono grueso",
  "fine carbon": "carbono fino",
  organic: "pigmento orgánico",
};

export const DRYING_CAUSES: Readonly<Record<DryingCause, string>> = {
  "catalyses oxidation": "ayuda al aceite a tomar oxígeno",
  "takes no part": "no interviene",
  "binds into soaps": "forma jabones con el aceite",
  "takes up radicals":
    "su carbono capta los radicales por los que seca el aceite, y retiene el secante",
  "brings no drying metal": "no aporta ningún metal secante",
};

export const OIL_WAYS: Readonly<Record<OilAbsorptionMethod["way"], string>> = {
  "spatula rub-out": "amasado con espátula",
  "palette-knife rub-out": "amasado con cuchillo de paleta",
  "stirred to a soft ball": "agitación hasta bola blanda",
};

/** The paint alone or let down. */
export const FORMS: Readonly<Record<string, string>> = {
  masstone: "tono pleno",
  tint: "rebaje",
  "let-down": "rebaje",
};

export const GEOMETRIES: Readonly<Record<string, string>> = {
  "45/0": "45/0",
  "d/8 excluded": "d/8, brillo excluido",
  "d/8 included": "d/8, brillo incluido",
};

/** By what parts are counted. */
export const MEASURES: Readonly<Record<string, string>> = { volume: "volumen", weight: "peso" };

/** A word of a closed set; one that is in none of them stands as it is. */
export function wordOf(words: Readonly<Record<string, string>>, word: string): string {
  return words[word] ?? word;
}
