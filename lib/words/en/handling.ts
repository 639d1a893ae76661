import { moneyFormat } from "../money-format.ts";
import { listed } from "./phrases.ts";

const LANGUAGE_NAMES: Readonly<Record<string, string>> = {
  en: "English",
  fr: "French",
  de: "German",
  es: "Spanish",
};

/** What a sheet says of handling that no ruling says. */
export const HANDLING = {
  stated: "As the maker states them",
  workedOut: "Worked out from suppliers' data",
  notClassified: "Not yet classified",
  precautions: "Precautions",
  markets: "Where it may be sold",
  nothing:
    "Keep dry pigment and sanding dust out of the air and out of the lungs, and paint out of mouths. Our suppliers' papers ask for no warning on the label; that does not mean it can do no harm.",
  nothingStated:
    "Keep dry pigment and sanding dust out of the air and out of the lungs, and paint out of mouths. The maker's label states no hazard; that does not mean it can do no harm.",
  unknownInShort: "Treat as hazardous",
  basisStated: (frame: string, date: string) => `As the maker states them, ${frame}, ${date}.`,
  basisUnknown: "Not yet classified: no label can be worked out before that paper is here.",
  basisWorkedOut: (frame: string, edition: string) =>
    `Worked out from the suppliers' data by ${frame} (${edition}). The maker's label prevails.`,
  classification: (classes: readonly string[]) => `Classified as ${listed(classes)}.`,
  dryPigment: (name: string) => `${name}, dry`,
  dryNothing:
    "Keep its dust out of the air and out of the lungs. The supplier's paper classifies nothing; that does not mean it can do no harm.",
  /** @param isGrave whether its dust calls for more than the mask that does for any pigment. */
  general: (isGrave: boolean) =>
    `As with every colour: treat the dry pigment as very dusty, with an extractor first and ${isGrave ? "on top of it, with this one, a mask of FFP3, P3 or P100" : "a mask of FFP2 at least on top of it"}. No food beside it, no brush in the mouth, not for a child's use. Do not sand it dry; wipe up wet; pour nothing down the drain. Rags soaked in oil can catch fire by themselves: spread them singly outdoors, or keep them in water in a closed metal can.`,
  generalLink: "What holds for every colour, and why",
  addition: (name: string) => `${name}, before it is in the paint`,
  why: "Why each statement stands here",
  leftOut: "What suppliers state and this label does not carry",
  languages: (languages: readonly string[]) =>
    `The same in ${listed(languages.map((language) => LANGUAGE_NAMES[language] ?? language))}`,
  languageNames: {
    en: "English",
    fr: "Fran\u00e7ais",
    de: "Deutsch",
    es: "Espa\u00f1ol",
  } as Readonly<Record<string, string>>,
  languageNote:
    "The official wording is the Official Journal's; these texts were read in an extraction from it, and what an official text leaves open is completed here. What is marked is to be reviewed before it goes on a label.",
  /** In the language whose text is missing, for whoever reads its block. */
  toReview: {
    fr: "traduction à vérifier",
    de: "Übersetzung zu prüfen",
    es: "traducción por revisar",
  } as Readonly<Record<string, string>>,
  toReviewPlain: "translation to be reviewed",
  checks: "Where the maker's label and our own working differ",
  ufi: (ufi: string) => `Unique formula identifier (UFI): ${ufi}`,
  review: (by: string, date: string) => `Reviewed by ${by}, ${date}.`,
  dataSheet: (date: string | undefined) =>
    date === undefined ? "Safety data sheet" : `Safety data sheet of ${date}`,
  poisonCentre: (line: string) =>
    `If it is swallowed or breathed in: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
  noPoisonCentre:
    "If it is swallowed or breathed in, ask the poison centre of your country or a doctor.",
  marketNames: {
    EU: "European Union",
    GB: "Great Britain",
    NI: "Northern Ireland",
    US: "United States",
    other: "Elsewhere",
  } as Readonly<Record<string, string>>,
  offer: {
    price: (amount: number, currency: string) => moneyFormat("en-GB", currency).format(amount),
    markets: {
      EU: "the European Union",
      GB: "Great Britain",
      NI: "Northern Ireland",
      US: "the United States",
      other: "other countries",
    } as Readonly<Record<string, string>>,
  },
} as const;
