/** What values of closed sets are called within sentences; the English is the value itself, but where it is given. */
import type { DrierMetal } from "../drying/added-drier.ts";
import type { Chemistry, DryingCause } from "../drying/chemistry-drying.ts";
import type { DryingClass } from "../drying/drying-class.ts";
import type { Oil } from "../drying/oils.ts";
import type { Dispersion } from "../formulation/dispersion.ts";
import type { Finish } from "../formulation/finish.ts";
import type { OilAbsorptionMethod } from "../formulation/oil-absorption-method.ts";
import type { OilIndexClass } from "../formulation/oil-index-class.ts";
import type { HazardFrame } from "../hazard/classify/frame.ts";
import type { SignalWord } from "../hazard/classify/hazard-class.ts";
import type { SubstanceName } from "../hazard/classify/substance.ts";
import type { Metal } from "../hazard/studio/metal-content.ts";
import type { OpacityClass } from "../optics/films/opacity.ts";
import type { Geometry } from "../optics/fit/measurement.ts";
import type { ColourWord } from "../optics/tints/hue-word.ts";
import type { Expectation } from "../permanence/expected-lightfastness.ts";
import type { ExposedForm } from "../permanence/exposure.ts";
import type { SeenChange } from "../permanence/grey-scale.ts";
import type { Bound } from "../quantities/figure.ts";
import type { Language } from "../quantities/languages.ts";
import type { InEach, InOthers } from "./in-each.ts";

/** As a quality: "rot", "rouge". */
export const HUES: Readonly<Record<ColourWord, InOthers>> = {
  red: { de: "rot", fr: "rouge", es: "rojo" },
  orange: { de: "orange", fr: "orange", es: "naranja" },
  brown: { de: "braun", fr: "brun", es: "pardo" },
  yellow: { de: "gelb", fr: "jaune", es: "amarillo" },
  "yellow-green": { de: "gelbgrün", fr: "vert-jaune", es: "verde amarillento" },
  olive: { de: "oliv", fr: "olive", es: "oliva" },
  green: { de: "grün", fr: "vert", es: "verde" },
  "blue-green": { de: "blaugrün", fr: "bleu-vert", es: "verde azulado" },
  blue: { de: "blau", fr: "bleu", es: "azul" },
  violet: { de: "violett", fr: "violet", es: "violeta" },
  purple: { de: "purpurn", fr: "pourpre", es: "púrpura" },
};

/** What a finger finds of a film that is not dry to the touch. */
export const NOT_DRY: Readonly<Record<"wet" | "tacky", InEach>> = {
  wet: { en: "wet", de: "nass", fr: "humide", es: "húmeda" },
  tacky: { en: "tacky", de: "klebrig", fr: "collant", es: "pegajosa" },
};

/** What label elements are worked out by. */
export const FRAMES: Readonly<Record<HazardFrame, InOthers>> = {
  "EU CLP": { de: "EU CLP", fr: "CLP (UE)", es: "CLP (UE)" },
  "UN GHS": { de: "UN GHS", fr: "SGH (ONU)", es: "SGA (ONU)" },
};

/** As a direction: German names it alone, after its "zu" or "nach". */
export const TOWARD: Readonly<Record<ColourWord, InOthers>> = {
  red: { de: "Rot", fr: "vers le rouge", es: "hacia el rojo" },
  orange: { de: "Orange", fr: "vers l’orange", es: "hacia el naranja" },
  brown: { de: "Braun", fr: "vers le brun", es: "hacia el pardo" },
  yellow: { de: "Gelb", fr: "vers le jaune", es: "hacia el amarillo" },
  "yellow-green": { de: "Gelbgrün", fr: "vers le vert-jaune", es: "hacia el verde amarillento" },
  olive: { de: "Oliv", fr: "vers l’olive", es: "hacia el oliva" },
  green: { de: "Grün", fr: "vers le vert", es: "hacia el verde" },
  "blue-green": { de: "Blaugrün", fr: "vers le bleu-vert", es: "hacia el verde azulado" },
  blue: { de: "Blau", fr: "vers le bleu", es: "hacia el azul" },
  violet: { de: "Violett", fr: "vers le violet", es: "hacia el violeta" },
  purple: { de: "Purpur", fr: "vers le pourpre", es: "hacia el púrpura" },
};

export const OPACITIES: Readonly<Record<OpacityClass, InOthers>> = {
  opaque: { de: "deckend", fr: "opaque", es: "opaca" },
  "semi-opaque": { de: "halbdeckend", fr: "semi-opaque", es: "semiopaca" },
  "semi-transparent": { de: "halblasierend", fr: "semi-transparent", es: "semitransparente" },
  transparent: { de: "lasierend", fr: "transparent", es: "transparente" },
};

/** From one class to another, over all between. */
export function fromTo(from: string, to: string): InEach {
  return {
    en: `${from} to ${to}`,
    de: `${from} bis ${to}`,
    fr: `de ${from} à ${to}`,
    es: `de ${from} a ${to}`,
  };
}

/** Of a paint whose readings or estimate reach into two classes; semi-opaque is left out of what hides its ground. */
export const BETWEEN_OPACITIES: readonly {
  readonly classes: readonly [OpacityClass, OpacityClass];
  readonly text: InEach;
}[] = [
  {
    classes: ["transparent", "semi-transparent"],
    text: {
      en: "transparent or nearly so",
      de: "lasierend oder fast",
      fr: "transparent ou presque",
      es: "transparente o casi",
    },
  },
  {
    classes: ["semi-transparent", "semi-opaque"],
    text: {
      en: "neither transparent nor opaque",
      de: "weder lasierend noch deckend",
      fr: "ni transparent ni opaque",
      es: "ni transparente ni opaca",
    },
  },
  {
    classes: ["semi-opaque", "opaque"],
    text: {
      en: "opaque or nearly so",
      de: "deckend oder fast",
      fr: "opaque ou presque",
      es: "opaca o casi",
    },
  },
  {
    classes: ["semi-transparent", "opaque"],
    text: {
      en: "semi-transparent to opaque",
      de: "halblasierend bis deckend",
      fr: "de semi-transparent à opaque",
      es: "de semitransparente a opaca",
    },
  },
  {
    classes: ["transparent", "opaque"],
    text: {
      en: "transparent to opaque",
      de: "lasierend bis deckend",
      fr: "de transparent à opaque",
      es: "de transparente a opaca",
    },
  },
];

export const FINISHES: Readonly<Record<Finish, InOthers>> = {
  gloss: { de: "glänzend", fr: "brillant", es: "brillante" },
  "semi-gloss": { de: "seidenglänzend", fr: "demi-brillant", es: "semibrillante" },
  satin: { de: "seidenmatt", fr: "satiné", es: "satinado" },
  matte: { de: "matt", fr: "mat", es: "mate" },
};

export const DRYING_CLASSES: Readonly<Record<DryingClass, InOthers>> = {
  fast: { de: "schnell", fr: "rapide", es: "rápido" },
  medium: { de: "mittel", fr: "moyen", es: "medio" },
  slow: { de: "langsam", fr: "lent", es: "lento" },
  "very slow": { de: "sehr langsam", fr: "très lent", es: "muy lento" },
};

/** Of the oil index. */
export const OIL_CLASSES: Readonly<Record<OilIndexClass, InOthers>> = {
  "very low": { de: "sehr niedrig", fr: "très faible", es: "muy bajo" },
  low: { de: "niedrig", fr: "faible", es: "bajo" },
  medium: { de: "mittel", fr: "moyen", es: "medio" },
  high: { de: "hoch", fr: "élevé", es: "alto" },
  "very high": { de: "sehr hoch", fr: "très élevé", es: "muy alto" },
};

/** Of the lightfastness. */
export const EXPECTED: Readonly<Record<Expectation, InOthers>> = {
  excellent: { de: "ausgezeichnet", fr: "excellente", es: "excelente" },
  "very good": { de: "sehr gut", fr: "très bonne", es: "muy buena" },
  fair: { de: "mäßig", fr: "moyenne", es: "mediana" },
  poor: { de: "gering", fr: "faible", es: "escasa" },
  fugitive: { de: "sehr gering", fr: "fugace", es: "fugaz" },
};

/** What an eye that saw both halves would say of a change. */
export const CHANGES: Readonly<Record<SeenChange, InOthers>> = {
  unchanged: { de: "unverändert", fr: "inchangé", es: "sin cambio" },
  "hardly changed": { de: "kaum verändert", fr: "à peine changé", es: "apenas cambiado" },
  "changed slightly": {
    de: "leicht verändert",
    fr: "légèrement changé",
    es: "ligeramente cambiado",
  },
  changed: { de: "verändert", fr: "changé", es: "cambiado" },
  "changed much": { de: "stark verändert", fr: "beaucoup changé", es: "muy cambiado" },
  "changed greatly": {
    de: "sehr stark verändert",
    fr: "complètement changé",
    es: "cambiado por completo",
  },
};

/** The paint alone or let down. */
export const FORMS: Readonly<Record<ExposedForm | "let-down", InOthers>> = {
  masstone: { de: "Vollton", fr: "ton plein", es: "tono pleno" },
  tint: { de: "Aufhellung", fr: "dégradé", es: "rebaje" },
  "let-down": { de: "Aufhellung", fr: "dégradé", es: "rebaje" },
};

/** The same with their articles. */
export const THE_FORM: Readonly<Record<keyof typeof FORMS, InEach>> = {
  masstone: { en: "the masstone", de: "der Vollton", fr: "le ton plein", es: "el tono pleno" },
  tint: { en: "the tint", de: "die Aufhellung", fr: "le dégradé", es: "el rebaje" },
  "let-down": { en: "the let-down", de: "die Aufhellung", fr: "le dégradé", es: "el rebaje" },
};

export const OILS: Readonly<Record<Oil, InEach>> = {
  linseed: { en: "linseed oil", de: "Leinöl", fr: "huile de lin", es: "aceite de linaza" },
  walnut: { en: "walnut oil", de: "Walnussöl", fr: "huile de noix", es: "aceite de nuez" },
  safflower: {
    en: "safflower oil",
    de: "Safloröl",
    fr: "huile de carthame",
    es: "aceite de cártamo",
  },
  poppy: { en: "poppy oil", de: "Mohnöl", fr: "huile d’œillette", es: "aceite de adormidera" },
  "stand linseed": {
    en: "linseed stand oil",
    de: "Leinstandöl",
    fr: "standolie de lin",
    es: "standoil de linaza",
  },
};

/** As the tables of label texts have them. */
export const METALS: Readonly<Record<Metal | DrierMetal, InOthers>> = {
  lead: { de: "Blei", fr: "plomb", es: "plomo" },
  cadmium: { de: "Cadmium", fr: "cadmium", es: "cadmio" },
  mercury: { de: "Quecksilber", fr: "mercure", es: "mercurio" },
  arsenic: { de: "Arsen", fr: "arsenic", es: "arsénico" },
  chromate: { de: "sechswertiges Chrom", fr: "chrome hexavalent", es: "cromo hexavalente" },
  nickel: { de: "Nickel", fr: "nickel", es: "níquel" },
  cobalt: { de: "Cobalt", fr: "cobalt", es: "cobalto" },
  antimony: { de: "Antimon", fr: "antimoine", es: "antimonio" },
  barium: { de: "lösliches Barium", fr: "baryum soluble", es: "bario soluble" },
  manganese: { de: "Mangan", fr: "manganèse", es: "manganeso" },
  copper: { de: "Kupfer", fr: "cuivre", es: "cobre" },
  zirconium: { de: "Zirkonium", fr: "zirconium", es: "circonio" },
  calcium: { de: "Calcium", fr: "calcium", es: "calcio" },
  zinc: { de: "Zink", fr: "zinc", es: "cinc" },
};

export const CHEMISTRIES: Readonly<Record<Chemistry, InOthers>> = {
  lead: { de: "Blei", fr: "plomb", es: "plomo" },
  cobalt: { de: "Cobalt", fr: "cobalt", es: "cobalto" },
  manganese: { de: "Mangan", fr: "manganèse", es: "manganeso" },
  "manganese trace": { de: "Manganspuren", fr: "manganèse en traces", es: "manganeso en trazas" },
  "brown earth": { de: "braune Erde", fr: "terre brune", es: "tierra parda" },
  "iron cyanide": { de: "Eisencyanid", fr: "cyanure de fer", es: "cianuro de hierro" },
  "iron oxide": { de: "Eisenoxid", fr: "oxyde de fer", es: "óxido de hierro" },
  aluminosilicate: { de: "Alumosilikat", fr: "aluminosilicate", es: "aluminosilicato" },
  "chromium oxide": { de: "Chromoxid", fr: "oxyde de chrome", es: "óxido de cromo" },
  "copper chromite": { de: "Kupferchromit", fr: "chromite de cuivre", es: "cromito de cobre" },
  "inert extender": { de: "inerter Füllstoff", fr: "charge inerte", es: "carga inerte" },
  phthalocyanine: { de: "Phthalocyanin", fr: "phtalocyanine", es: "ftalocianina" },
  "titanium dioxide": { de: "Titandioxid", fr: "dioxyde de titane", es: "dióxido de titanio" },
  "zinc oxide": { de: "Zinkoxid", fr: "oxyde de zinc", es: "óxido de cinc" },
  "mercury sulphide": {
    de: "Quecksilbersulfid",
    fr: "sulfure de mercure",
    es: "sulfuro de mercurio",
  },
  "cadmium sulphide": { de: "Cadmiumsulfid", fr: "sulfure de cadmium", es: "sulfuro de cadmio" },
  "coarse carbon": { de: "grober Kohlenstoff", fr: "carbone grossier", es: "carbono grueso" },
  "fine carbon": { de: "feiner Kohlenstoff", fr: "carbone fin", es: "carbono fino" },
  organic: { de: "organisches Pigment", fr: "pigment organique", es: "pigmento orgánico" },
};

/** What a pigment does to the oil, or why it slows it: after its name, or a colon. */
export const DRYING_CAUSES: Readonly<Record<DryingCause, InEach>> = {
  "catalyses oxidation": {
    en: "helps the oil take up oxygen",
    de: "Damit nimmt das Öl leichter Sauerstoff auf",
    fr: "aide l’huile à fixer l’oxygène",
    es: "ayuda al aceite a fijar el oxígeno",
  },
  "takes no part": {
    en: "takes no part",
    de: "Es ist unbeteiligt",
    fr: "n’intervient pas",
    es: "no interviene",
  },
  "binds into soaps": {
    en: "it binds into soaps with the oil",
    de: "Mit dem Öl entstehen Seifen",
    fr: "il forme des savons avec l’huile",
    es: "forma jabones con el aceite",
  },
  "takes up radicals": {
    en: "its carbon takes up the radicals by which oil dries, and takes up drier",
    de: "Der Kohlenstoff fängt die Radikale ab, durch die Öl trocknet, und nimmt Sikkativ auf",
    fr: "son carbone capte les radicaux par lesquels l’huile sèche, et retient le siccatif",
    es: "su carbono capta los radicales por los que seca el aceite, y retiene el secante",
  },
  "brings no drying metal": {
    en: "it brings no metal that dries oil",
    de: "Es fehlt ein Metall, das Öl trocknet",
    fr: "il n’apporte aucun métal siccatif",
    es: "no aporta ningún metal secante",
  },
};

export const OIL_WAYS: Readonly<Record<OilAbsorptionMethod["way"], InOthers>> = {
  "spatula rub-out": {
    de: "Anreiben mit dem Spatel",
    fr: "empâtage à la spatule",
    es: "amasado con espátula",
  },
  "palette-knife rub-out": {
    de: "Anreiben mit dem Palettenmesser",
    fr: "empâtage au couteau",
    es: "amasado con cuchillo de paleta",
  },
  "stirred to a soft ball": {
    de: "Rühren zur weichen Kugel",
    fr: "agitation jusqu’à la boule molle",
    es: "agitación hasta formar una bola blanda",
  },
};

/** Of a paint. */
export const DISPERSIONS: Readonly<Record<Dispersion, InOthers>> = {
  mulled: { de: "von Hand angerieben", fr: "broyée à la molette", es: "molida con moleta" },
  milled: { de: "gewalzt", fr: "broyée à la machine", es: "molida a máquina" },
};

/** By what parts are counted. */
export const MEASURES: Readonly<Record<"volume" | "weight", InOthers>> = {
  volume: { de: "nach Volumen", fr: "volume", es: "volumen" },
  weight: { de: "nach Gewicht", fr: "poids", es: "peso" },
};

/** Before a value that is only what the true one does not pass. */
export const BOUNDS: Readonly<Record<Bound, InEach>> = {
  "at least": { en: "at least", de: "mindestens", fr: "au moins", es: "al menos" },
  "at most": { en: "at most", de: "höchstens", fr: "au plus", es: "como máximo" },
};

/** Of a label, as Annex I has them. @source clp-1272-2008 */
export const SIGNAL_WORDS: Readonly<Record<SignalWord, InEach>> = {
  Danger: { en: "Danger", de: "Gefahr", fr: "Danger", es: "Peligro" },
  Warning: { en: "Warning", de: "Achtung", fr: "Attention", es: "Atención" },
};

/** Geometries of a reading. */
export const GEOMETRIES: Readonly<Record<Geometry, InEach>> = {
  "45/0": { en: "45/0", de: "45/0", fr: "45/0", es: "45/0" },
  "d/8 excluded": {
    en: "d/8, shine excluded",
    de: "d/8, ohne Glanz",
    fr: "d/8, reflet exclu",
    es: "d/8, brillo excluido",
  },
  "d/8 included": {
    en: "d/8, shine included",
    de: "d/8, mit Glanz",
    fr: "d/8, reflet inclus",
    es: "d/8, brillo incluido",
  },
};

/** Substances that a rule names. */
export const SUBSTANCES: Readonly<Record<SubstanceName, InOthers>> = {
  "lead carbonates": { de: "Bleicarbonate", fr: "carbonates de plomb", es: "carbonatos de plomo" },
  "lead sulphates": { de: "Bleisulfate", fr: "sulfates de plomb", es: "sulfatos de plomo" },
  "lead compounds of very high concern": {
    de: "besonders besorgniserregende Bleiverbindungen",
    fr: "composés du plomb extrêmement préoccupants",
    es: "compuestos de plomo extremadamente preocupantes",
  },
  "lead chromate pigments": {
    de: "Bleichromatpigmente",
    fr: "pigments au chromate de plomb",
    es: "pigmentos de cromato de plomo",
  },
  "chromates under authorisation": {
    de: "zulassungspflichtige Chromate",
    fr: "chromates soumis à autorisation",
    es: "cromatos sujetos a autorización",
  },
  "titanium dioxide": { de: "Titandioxid", fr: "dioxyde de titane", es: "dióxido de titanio" },
  "carbon black": { de: "Industrieruß", fr: "noir de carbone", es: "negro de carbono" },
  "2-ethylhexanoic acid and its salts": {
    de: "2-Ethylhexansäure und ihre Salze",
    fr: "acide 2-éthylhexanoïque et ses sels",
    es: "ácido 2-etilhexanoico y sus sales",
  },
};

/** What may hold respirable quartz, as the table names it: after "It is", "Das ist", "C’est" or "Es". */
export const QUARTZ: Readonly<Record<string, InEach>> = {
  "natural sienna or umber": {
    en: "a natural sienna or umber",
    de: "natürliche Siena oder Umbra",
    fr: "une terre de Sienne ou d’ombre naturelle",
    es: "una siena o sombra natural",
  },
  "natural ochre": {
    en: "a natural ochre",
    de: "natürlicher Ocker",
    fr: "une ocre naturelle",
    es: "un ocre natural",
  },
  "natural red earth": {
    en: "a natural red earth",
    de: "natürliche rote Erde",
    fr: "une terre rouge naturelle",
    es: "una tierra roja natural",
  },
  "green earth": { en: "green earth", de: "Grüne Erde", fr: "une terre verte", es: "tierra verde" },
  "natural chalk or limestone": {
    en: "natural chalk or limestone",
    de: "natürliche Kreide oder Kalkstein",
    fr: "de la craie ou du calcaire naturels",
    es: "creta o caliza naturales",
  },
  kaolin: { en: "kaolin", de: "Kaolin", fr: "du kaolin", es: "caolín" },
  mica: { en: "mica", de: "Glimmer", fr: "du mica", es: "mica" },
  gypsum: { en: "gypsum", de: "Gips", fr: "du gypse", es: "yeso" },
  talc: { en: "talc", de: "Talk", fr: "du talc", es: "talco" },
  silica: { en: "silica", de: "Siliciumdioxid", fr: "de la silice", es: "sílice" },
};

/** What a value of a set is called in a language; one that is not in the set stands as it is. */
export function wordOf(
  set: Readonly<Record<string, Partial<InEach>>>,
  value: string,
  language: Language,
): string {
  return set[value]?.[language] ?? value;
}
