import type { HANDLING as ENGLISH_HANDLING } from "../en/handling.ts";
import type { AnyWords } from "../any-words.ts";
import { moneyFormat } from "../money-format.ts";
import { listed } from "./phrases.ts";

const LANGUAGE_NAMES: Readonly<Record<string, string>> = {
  en: "anglais",
  fr: "français",
  de: "allemand",
  es: "espagnol",
};

/** What a sheet says of handling that no ruling says. */
export const HANDLING: AnyWords<typeof ENGLISH_HANDLING> = {
  stated: "Telles que le fabricant les déclare",
  workedOut: "Calculées d’après les données des fournisseurs",
  notClassified: "Pas encore classé",
  precautions: "Conseils de prudence",
  markets: "Où la vente est permise",
  nothing:
    "Tenir le pigment sec et la poussière de ponçage hors de l’air et des poumons, et la peinture hors de la bouche. Les documents de nos fournisseurs ne demandent aucun avertissement sur l’étiquette\u202f; cela ne veut pas dire que le produit ne peut pas nuire.",
  nothingStated:
    "Tenir le pigment sec et la poussière de ponçage hors de l’air et des poumons, et la peinture hors de la bouche. L’étiquette du fabricant ne déclare aucun danger\u202f; cela ne veut pas dire que le produit ne peut pas nuire.",
  unknownInShort: "À traiter comme dangereux",
  basisStated: (frame, date) => `Telles que le fabricant les déclare, ${frame}, ${date}.`,
  basisUnknown:
    "Pas encore classé\u202f: aucune étiquette ne peut être calculée avant que ce document soit là.",
  basisWorkedOut: (frame, edition) =>
    `Calculées d’après les données des fournisseurs selon ${frame} (${edition}). L’étiquette du fabricant prévaut.`,
  classification: (classes) => `Classement\u202f: ${listed(classes)}.`,
  dryPigment: (name) => `${name}, sec`,
  dryNothing:
    "Tenir sa poussière hors de l’air et des poumons. Le document du fournisseur ne classe rien\u202f; cela ne veut pas dire que le produit ne peut pas nuire.",
  /** @param isGrave whether its dust calls for more than the mask that does for any pigment. */
  general: (isGrave) =>
    `Comme pour toute couleur\u202f: traiter le pigment sec comme très poussiéreux, avec une aspiration d’abord et ${isGrave ? "en plus, pour celui-ci, un masque FFP3, P3 ou P100" : "un masque FFP2 au moins en plus"}. Pas de nourriture à côté, pas de pinceau dans la bouche, pas entre les mains d’un enfant. Ne pas poncer à sec\u202f; essuyer mouillé\u202f; ne rien verser à l’égout. Les chiffons imbibés d’huile peuvent prendre feu d’eux-mêmes\u202f: les étaler un par un dehors, ou les garder dans l’eau dans un bidon métallique fermé.`,
  generalLink: "Ce qui vaut pour toute couleur, et pourquoi",
  addition: (name) => `${name}, avant d’être dans la peinture`,
  why: "Pourquoi chaque mention est là",
  leftOut: "Ce que les fournisseurs déclarent et que cette étiquette ne porte pas",
  languages: (languages) =>
    `Les mêmes en ${listed(languages.map((language) => LANGUAGE_NAMES[language] ?? language))}`,
  languageNames: {
    en: "English",
    fr: "Fran\u00e7ais",
    de: "Deutsch",
    es: "Espa\u00f1ol",
  },
  languageNote:
    "Le texte officiel est celui du Journal officiel\u202f; ces textes ont été lus dans un extrait qui en est tiré, et ce qu’un texte officiel laisse ouvert est complété ici. Ce qui est marqué est à revoir avant d’aller sur une étiquette.",
  toReview: {
    fr: "traduction à vérifier",
    de: "Übersetzung zu prüfen",
    es: "traducción por revisar",
  },
  toReviewPlain: "traduction à vérifier",
  checks: "Où l’étiquette du fabricant et notre calcul diffèrent",
  ufi: (ufi) => `Identifiant unique de formulation (UFI)\u202f: ${ufi}`,
  review: (by, date) => `Revu par ${by}, ${date}.`,
  dataSheet: (date) =>
    date === undefined ? "Fiche de données de sécurité" : `Fiche de données de sécurité du ${date}`,
  poisonCentre: (line) =>
    `En cas d’ingestion ou d’inhalation\u202f: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
  noPoisonCentre:
    "En cas d’ingestion ou d’inhalation, appeler le centre antipoison de votre pays ou un médecin.",
  marketNames: {
    EU: "Union européenne",
    GB: "Grande-Bretagne",
    NI: "Irlande du Nord",
    US: "États-Unis",
    other: "Ailleurs",
  },
  offer: {
    price: (amount, currency) => moneyFormat("fr-FR", currency).format(amount),
    markets: {
      EU: "l’Union européenne",
      GB: "la Grande-Bretagne",
      NI: "l’Irlande du Nord",
      US: "les États-Unis",
      other: "d’autres pays",
    },
  },
};
