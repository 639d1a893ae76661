import { glossaryFaults, type Setting, type Term } from "./glossary.ts";

export const GLOSSARY: readonly Term[] = [
  { english: "masstone", said: "tono pleno", instead: /tono (?:puro|masa)|pleno tono/ },
  { english: "tint, let-down", said: "rebaje", instead: /degradaci|degradad|aclarado/ },
  { english: "drawdown", said: "aplicación", instead: /drawdown|tirada/i },
  { english: "oil absorption", said: "absorción de aceite", instead: /toma de aceite/ },
  { english: "oil demand", said: "consumo de aceite", instead: /(?:demanda|nivel) de aceite/i },
  { english: "opacity chart", said: "carta de contraste", instead: /carta de opacidad|cartulina/ },
  { english: "contrast ratio", said: "relación de contraste", instead: /raz[oó]n de contraste/ },
  {
    english: "tinting strength",
    said: "poder colorante",
    instead: /fuerza colorante|poder tintóreo|intensidad colorante/,
  },
  {
    english: "lightfastness",
    said: "solidez a la luz",
    instead: /(?:resistencia|estabilidad) a la luz/,
  },
  { english: "drier", said: "secante", instead: /desecante|sicativo/ },
  { english: "vehicle", said: "aglutinante", instead: /vehículo|ligante/ },
  { english: "muller", said: "moleta", instead: /piedra de moler/ },
  { english: "slab", said: "losa", instead: /mármol|plancha de vidrio/ },
  { english: "thickness", said: "espesor", instead: /grosor/i },
  { english: "fineness of grind", said: "finura de molienda", instead: /finura de molturación/ },
  { english: "body", said: "consistencia", instead: /cuerpo (?:corto|largo|firme|filamentoso)/i },
  { english: "reading", said: "medición", instead: /lectura/i },
  { english: "to sink in", said: "rechuparse", instead: /embeber/ },
  { english: "to skin over", said: "formar piel", instead: /hac(?:e|er) piel/ },
  { english: "recorded", said: "registrado", instead: /consignad|(?:no|según) consta/ },
  { english: "handling", said: "manipulación", instead: /manej/i },
  { english: "dusty", said: "levanta polvo", instead: /pulverulent/ },
  { english: "wiped up wet", said: "en húmedo", instead: /en mojado/ },
  { english: "madder", said: "granza", instead: /(?<!\p{L})rubia(?!\p{L})/u },
  { english: "standard", said: "patrón", instead: /estándar/ },
  {
    english: "you",
    said: "usted",
    instead: /(?<!\p{L})(?:tú|tus?|ti|tuy[oa]s?|vuestr[oa]s?|elige|pulsa|escribe)(?!\p{L})/iu,
  },
];

/** As the Ortografía of the Academies has it; "Alba" stands where a figure is put in. */
const SETTING: Setting = [
  [
    "a space that breaks before a unit",
    /(?<!\/\d*)(?:\d|Alba) (?:%|[gl]|kg|ml|mm|cm[²³]?|µm|nm|°C|kB|MB)(?![\p{L}\d’])/u,
  ],
  ["a decimal point", /(?<![\d.])\d+\.\d+\s?(?:%|g|ml|µm|días)/],
  ["a straight quotation mark", /"/],
  ["a question without its first mark", /^[^¿]*\?/],
  ["a space before a stop", /\s[;,?!](?:\s|$)/],
  ["an article not drawn together", /(?<!\p{L})(?:de|a) el(?!\p{L})/u],
];

/** Where a Spanish text has another word than the glossary's, or is not set as Spanish print is. */
export function spanishFaults(text: string): string[] {
  return glossaryFaults(text, GLOSSARY, SETTING);
}
