import type { HANDLING as ENGLISH_HANDLING } from "../en/handling.ts";
import type { AnyWords } from "../any-words.ts";
import { moneyFormat } from "../money-format.ts";
import { listed } from "./phrases.ts";

const LANGUAGE_NAMES: Readonly<Record<string, string>> = {
  en: "inglés",
  fr: "francés",
  de: "alemán",
  es: "español",
};

/** What a sheet says of handling that no ruling says. */
export const HANDLING: AnyWords<typeof ENGLISH_HANDLING> = {
  stated: "Tal como las declara el fabricante",
  workedOut: "Calculadas a partir de los datos de los proveedores",
  notClassified: "Aún sin clasificar",
  precautions: "Consejos de prudencia",
  markets: "Dónde puede venderse",
  nothing:
    "Mantener el pigmento seco y el polvo de lijado fuera del aire y de los pulmones, y la pintura fuera de la boca. Los documentos de nuestros proveedores no piden ninguna advertencia en la etiqueta; eso no quiere decir que no pueda hacer daño.",
  nothingStated:
    "Mantener el pigmento seco y el polvo de lijado fuera del aire y de los pulmones, y la pintura fuera de la boca. La etiqueta del fabricante no declara ningún peligro; eso no quiere decir que no pueda hacer daño.",
  unknownInShort: "Tratar como peligroso",
  basisStated: (frame, date) => `Tal como las declara el fabricante, ${frame}, ${date}.`,
  basisUnknown:
    "Aún sin clasificar: no puede calcularse ninguna etiqueta antes de que ese documento esté aquí.",
  basisWorkedOut: (frame, edition) =>
    `Calculadas a partir de los datos de los proveedores según ${frame} (${edition}). Prevalece la etiqueta del fabricante.`,
  classification: (classes) => `Clasificado como ${listed(classes)}.`,
  dryPigment: (name) => `${name}, seco`,
  dryNothing:
    "Mantener su polvo fuera del aire y de los pulmones. El documento del proveedor no clasifica nada; eso no quiere decir que no pueda hacer daño.",
  /** @param isGrave whether its dust calls for more than the mask that does for any pigment. */
  general: (isGrave) =>
    `Como con todo color: tratar el pigmento seco como muy pulverulento, con un extractor primero y ${isGrave ? "además, con este, una mascarilla FFP3, P3 o P100" : "además una mascarilla FFP2 como mínimo"}. Sin comida al lado, sin pincel en la boca, no para uso de un niño. No lijarlo en seco; limpiar en mojado; no verter nada por el desagüe. Los trapos empapados de aceite pueden prenderse solos: extenderlos uno a uno al aire libre, o guardarlos en agua en una lata metálica cerrada.`,
  generalLink: "Lo que vale para todo color, y por qué",
  addition: (name) => `${name}, antes de estar en la pintura`,
  why: "Por qué está aquí cada indicación",
  leftOut: "Lo que declaran los proveedores y esta etiqueta no lleva",
  languages: (languages) =>
    `Lo mismo en ${listed(languages.map((language) => LANGUAGE_NAMES[language] ?? language))}`,
  languageNames: {
    en: "English",
    fr: "Fran\u00e7ais",
    de: "Deutsch",
    es: "Espa\u00f1ol",
  },
  languageNote:
    "El texto oficial es el del Diario Oficial; estos textos se leyeron en un extracto de él, y lo que un texto oficial deja abierto se completa aquí. Lo marcado debe revisarse antes de ir a una etiqueta.",
  toReview: {
    fr: "traduction à vérifier",
    de: "Übersetzung zu prüfen",
    es: "traducción por revisar",
  },
  toReviewPlain: "traducción por revisar",
  checks: "Dónde difieren la etiqueta del fabricante y nuestro cálculo",
  ufi: (ufi) => `Identificador único de fórmula (UFI): ${ufi}`,
  review: (by, date) => `Revisado por ${by}, ${date}.`,
  dataSheet: (date) =>
    date === undefined ? "Ficha de datos de seguridad" : `Ficha de datos de seguridad del ${date}`,
  poisonCentre: (line) => `Si se traga o se inhala: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
  noPoisonCentre:
    "Si se traga o se inhala, consulte al centro de toxicología de su país o a un médico.",
  marketNames: {
    EU: "Unión Europea",
    GB: "Gran Bretaña",
    NI: "Irlanda del Norte",
    US: "Estados Unidos",
    other: "En otros lugares",
  },
  offer: {
    price: (amount, currency) => moneyFormat("es-ES", currency).format(amount),
    markets: {
      EU: "la Unión Europea",
      GB: "Gran Bretaña",
      NI: "Irlanda del Norte",
      US: "los Estados Unidos",
      other: "otros países",
    },
  },
};
