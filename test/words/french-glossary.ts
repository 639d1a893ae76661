import { glossaryFaults, type Setting, type Term } from "./glossary.ts";

export const GLOSSARY: readonly Term[] = [
  { english: "masstone", said: "ton plein", instead: /ton pur|ton masse|pleine teinte/ },
  {
    english: "tint, let-down",
    said: "dégradé",
    instead: /ton rabattu|éclaircissement|coupage/,
  },
  { english: "to let down", said: "couper de blanc", instead: /dégrad(?:ée|er|ant)/ },
  { english: "drawdown", said: "application", instead: /touche d’essai|drawdown/i },
  { english: "oil absorption", said: "prise d’huile", instead: /absorption d(?:’huile|e l’huile)/ },
  {
    english: "oil demand",
    said: "besoin en huile",
    instead: /(?:demande|niveau) (?:en|d)[ ’]huile/i,
  },
  { english: "opacity chart", said: "carte de contraste", instead: /carte d’opacité/ },
  {
    english: "tinting strength",
    said: "pouvoir colorant",
    instead: /force colorante|pouvoir tinctorial|puissance colorante/,
  },
  {
    english: "lightfastness",
    said: "solidité à la lumière",
    instead: /(?:résistance|stabilité) à la lumière/,
  },
  { english: "to turn", said: "virer", instead: /tourne (?:nettement|fortement|légèrement|vers)/ },
  { english: "drier", said: "siccatif", instead: /sécheur|agent de séchage/ },
  { english: "vehicle", said: "liant", instead: /véhicule/ },
  { english: "muller", said: "molette", instead: /meule|pilon/ },
  { english: "slab", said: "marbre", instead: /dalle|plaque de verre/ },
  { english: "fineness of grind", said: "finesse de broyage", instead: /finesse de mouture/ },
  { english: "body", said: "consistance", instead: /corps (?:court|long|ferme|filant)/i },
  { english: "PVC, CPVC", said: "CPV, CPVC", instead: /(?<!C)PVC|CVP/ },
  { english: "to wrinkle", said: "se rider", instead: /(?<!se )rider|friser/ },
  { english: "to skin over", said: "former une peau", instead: /fai(?:t|re) peau/ },
  { english: "to sink in", said: "s’emboire", instead: /s’emb(?:it|ire)/ },
  { english: "record", said: "relevé", instead: /registre/ },
  { english: "recorded", said: "consigné", instead: /enregistr/ },
  { english: "handling", said: "manipulation", instead: /mani(?:er|ement)(?!\p{L})/u },
  { english: "wiped up wet", said: "à l’humide", instead: /essuyer mouillé/i },
  { english: "maroon", said: "grenat", instead: /marron/ },
  {
    english: "safety data sheet",
    said: "fiche de données de sécurité",
    instead: /fiche de sécurité|FDS/,
  },
  { english: "you", said: "vous", instead: /(?<!\p{L})(?:[Tt]u|[Tt]oi|[Tt]es)(?!\p{L})/u },
];

/** As the Imprimerie nationale's rules have it; "Alba" stands where a figure is put in. */
const SETTING: Setting = [
  [
    "a space that breaks before a unit",
    /(?<!\/\d*)(?:\d|Alba) (?:%|[gl]|kg|ml|mm|cm[²³]?|µm|nm|°C|ko|Mo)(?![\p{L}\d’])/u,
  ],
  ["a decimal point", /(?<![\d.])\d+\.\d+\s?(?:%|g|ml|µm|jours)/],
  ["a straight quotation mark or apostrophe", /"|(?<!\p{L})(?:[ldjnmcst]|qu)'\p{L}/iu],
  ["a guillemet without its space", /«[^\u202f\u00a0]|[^\u202f\u00a0]»/],
  ["a word not elided", /(?<!\p{L})(?:[dlns]e|la|que) (?!Alba)[aeiouàâéèêîôœ]\p{L}/iu],
];

/** Where a French text has another word than the glossary's, or is not set as French print is. */
export function frenchFaults(text: string): string[] {
  return glossaryFaults(text, GLOSSARY, SETTING);
}
