import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { moneyFormat } from "../money-format.ts";
import { HANDLING as ENGLISH } from "../en/handling.ts";
import { listed } from "./phrases.ts";

const LANGUAGE_NAMES: Readonly<Record<string, string>> = {
  en: "Englisch",
  fr: "Französisch",
  de: "Deutsch",
  es: "Spanisch",
};

/** What a sheet says of handling that no ruling says. */
export const HANDLING: AnyWords<PageWords["handling"]> = {
  stated: "Nach Angabe des Herstellers",
  workedOut: "Errechnet aus den Daten der Lieferanten",
  notClassified: "Noch nicht eingestuft",
  precautions: "Sicherheitshinweise",
  markets: "Wo sie verkauft werden darf",
  nothing:
    "Trockenes Pigment und Schleifstaub aus der Luft und aus der Lunge halten, Farbe aus dem Mund. Die Papiere unserer Lieferanten verlangen keine Warnung auf dem Etikett; das heißt nicht, dass sie nicht schaden kann.",
  nothingStated:
    "Trockenes Pigment und Schleifstaub aus der Luft und aus der Lunge halten, Farbe aus dem Mund. Das Etikett des Herstellers gibt keine Gefahr an; das heißt nicht, dass sie nicht schaden kann.",
  unknownInShort: "Als gefährlich behandeln",
  basisStated: (frame: string, date: string) => `Nach Angabe des Herstellers, ${frame}, ${date}.`,
  basisUnknown:
    "Noch nicht eingestuft: bevor dieses Papier hier ist, lässt sich kein Etikett errechnen.",
  basisWorkedOut: (frame: string, edition: string) =>
    `Errechnet aus den Daten der Lieferanten nach ${frame} (${edition}). Das Etikett des Herstellers geht vor.`,
  classification: (classes: readonly string[]) => `Eingestuft als ${listed(classes)}.`,
  dryPigment: (name: string) => `${name}, trocken`,
  dryNothing:
    "Den Staub aus der Luft und aus der Lunge halten. Das Papier des Lieferanten stuft nichts ein; das heißt nicht, dass es nicht schaden kann.",
  /** @param isGrave whether its dust calls for more than the mask that does for any pigment. */
  general: (isGrave: boolean) =>
    `Wie bei jeder Farbe: das trockene Pigment als stark staubend behandeln, zuerst mit Absaugung und ${isGrave ? "bei diesem zusätzlich mit einer Maske FFP3, P3 oder P100" : "zusätzlich mit einer Maske, mindestens FFP2"}. Kein Essen daneben, kein Pinsel im Mund, nicht für den Gebrauch durch Kinder. Nicht trocken schleifen; nass aufwischen; nichts in den Ausguss gießen. Ölgetränkte Lappen können sich selbst entzünden: einzeln im Freien ausbreiten oder in Wasser in einer geschlossenen Metalldose aufbewahren.`,
  generalLink: "Was für jede Farbe gilt, und warum",
  addition: (name: string) => `${name}, bevor es in der Farbe ist`,
  why: "Warum jeder Hinweis hier steht",
  leftOut: "Was Lieferanten angeben und dieses Etikett nicht trägt",
  languages: (languages: readonly string[]) =>
    `Dasselbe auf ${listed(languages.map((language) => LANGUAGE_NAMES[language] ?? language))}`,
  languageNames: ENGLISH.languageNames,
  languageNote:
    "Der amtliche Wortlaut ist der des Amtsblatts; diese Texte wurden in einem Auszug daraus gelesen, und was ein amtlicher Text offenlässt, ist hier ergänzt. Was markiert ist, ist zu prüfen, bevor es auf ein Etikett kommt.",
  toReview: ENGLISH.toReview,
  toReviewPlain: "Übersetzung zu prüfen",
  checks: "Wo das Etikett des Herstellers und unsere Rechnung voneinander abweichen",
  ufi: (ufi: string) => `Eindeutiger Rezepturidentifikator (UFI): ${ufi}`,
  review: (by: string, date: string) => `Geprüft von ${by}, ${date}.`,
  dataSheet: (date: string | undefined) =>
    date === undefined ? "Sicherheitsdatenblatt" : `Sicherheitsdatenblatt vom ${date}`,
  poisonCentre: (line: string) =>
    `Bei Verschlucken oder Einatmen: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
  noPoisonCentre:
    "Bei Verschlucken oder Einatmen fragen Sie das Giftinformationszentrum Ihres Landes oder einen Arzt.",
  marketNames: {
    EU: "Europäische Union",
    GB: "Großbritannien",
    NI: "Nordirland",
    US: "Vereinigte Staaten",
    other: "Anderswo",
  },
  offer: {
    price: (amount: number, currency: string) => moneyFormat("de-DE", currency).format(amount),
    markets: {
      EU: "Europäische Union",
      GB: "Großbritannien",
      NI: "Nordirland",
      US: "Vereinigte Staaten",
      other: "andere Länder",
    },
  },
};
