/** Phrases that sentences of several sciences share: figures with their units, lists, names as they stand within a sentence. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { printedNumbers } from "../number-text.ts";
import { dayIn, printedFigures, within, withUnit } from "../phrases.ts";

export { lowerFirst } from "../letter-case.ts";
export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "environ";

/** Between what is named and what is said of it. */
export const COLON: string = "\u202f: ";
export const SEMICOLON: string = "\u202f; ";

export const NUMBERS = printedNumbers(",");

export const {
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
  return withUnit(significant(days, 2), ends(days)[1] < 2 ? "jour" : "jours");
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

/** "a, b et c"; with semicolons where a name has a comma of its own. */
export function listed(texts: readonly string[], before: "and" | "or" = "and"): string {
  const [last = ""] = texts.slice(-1);
  const joint = before === "and" ? " et " : " ou ";
  const stop = texts.length > 2 && texts.some((text) => text.includes(",")) ? "\u202f; " : ", ";
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(stop)}${joint}${last}`;
}

export function namesWithin(names: readonly string[], before: "and" | "or" = "and"): string {
  return listed(names.map(within), before);
}

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
