/** What French has alone: phrases that sentences of several sciences share, its lists and days. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { upperFirst } from "../letter-case.ts";
import { printedNumbers } from "../number-text.ts";
import { dayIn, lists, printedFigures, withUnit } from "../phrases.ts";

export { lowerFirst } from "../letter-case.ts";
export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "environ";

/** Between what is named and what is said of it. */
export const COLON: string = "\u202f: ";
export const SEMICOLON: string = "\u202f; ";

export const NUMBERS = printedNumbers(",");

export const {
  dayNumbers,
  decimals,
  significant,
  percent,
  gramsTo100,
  micrometres,
  degrees,
  millilitres,
  deltaE00Text,
  deltaEabText,
  lightnessText,
  labText,
  surfaceConstants,
} = printedFigures(ABOUT, NUMBERS);

/** Plural from 2 on, as French counts. */
export function dayCount(days: Quantity): string {
  return withUnit(dayNumbers(days), ends(days)[1] < 1.75 ? "jour" : "jours");
}

/** "1.3-1.6 fois le nombre de jours"; of what shortens them "30-50 % du nombre de jours". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "autant de jours";
  return most <= 1 && least < 1
    ? `${percent(factor)} du nombre de jours`
    : `${text} fois le nombre de jours`;
}

/** "a, b et c". */
export const { listed, namesWithin } = lists({
  joint: (before) => ({ and: "et", or: "ou" })[before],
  semicolon: SEMICOLON,
});

/** "de" before a name, elided before a vowel: "d'Alizarin Crimson". */
export function of(name: string): string {
  return `${beginsWithVowel(name) ? "d\u2019" : "de "}${name}`;
}

/** "que" before a name, elided before a vowel: "qu'Iron Oxide Black". */
export function than(name: string): string {
  return `${beginsWithVowel(name) ? "qu\u2019" : "que "}${name}`;
}

function beginsWithVowel(name: string): boolean {
  return /^[aeiou\u00e0\u00e2\u00e9\u00e8\u00ea\u00ee\u00f4\u0153]/i.test(name);
}

/** "2009-06-01" as "1 juin 2009"; the first of a month as "1er". */
const day = dayIn("fr-FR");

export function dateWords(isoDate: string): string {
  return day(isoDate).replace(/^1 /, "1er ");
}

/** A name of a record put in after "de": "de Alba" is "d\u2019Alba". */
export function elided(text: string): string {
  return text.replace(/\bde (?=[aeiouàâéèêîôœ])/g, "d\u2019");
}

/** A white's name where its neighbours are whites as well: "Zinc White" as "Zinc", "Blanc de zinc" as "Zinc". */
export function shortWhite(name: string): string {
  const short = name
    .replace(/\s+(?:white|blanc)$/i, "")
    .replace(/^blanc (?:de |du |d['\u2019])/i, "");
  return upperFirst(short);
}
