/** Phrases that sentences of several sciences share, in German: figures with their units, lists, days. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { printedNumbers } from "../number-text.ts";
import * as letterCase from "../letter-case.ts";
import { dayIn, printedFigures, within, withUnit } from "../phrases.ts";

export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "etwa";

/** Between what is named and what is said of it. */
export const COLON: string = ": ";
export const SEMICOLON: string = "; ";

export const NUMBERS = printedNumbers(",");

export const {
  decimals,
  significant,
  percent,
  micrometres,
  degrees,
  millilitres,
  deltaE00Text,
  deltaEabText,
  lightnessText,
  labText,
  surfaceConstants,
} = printedFigures(ABOUT, NUMBERS);

export function gramsTo100(grams: Quantity): string {
  return withUnit(significant(grams, 2), "g/100\u00a0g");
}

/** A count of days stands after "in" or alone. */
export type DayCase = "nominative" | "dative";

const JOINED = { and: "und", or: "oder" } as const;

export function dayCount(days: Quantity, inCase: DayCase = "nominative"): string {
  const text = significant(days, 2);
  if (text === "1") return withUnit(text, "Tag");
  return withUnit(text, inCase === "dative" ? "Tagen" : "Tage");
}

/** "das 1.3–1.6-Fache der Tage"; of what shortens them "30–50 % der Tage". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "dieselben Tage";
  return most <= 1 && least < 1 ? `${percent(factor)} der Tage` : `das ${text}-Fache der Tage`;
}

/** "a, b und c"; with semicolons where a name has a comma of its own, as "0,2" has none. */
export function listed(texts: readonly string[], before: keyof typeof JOINED = "and"): string {
  const [last = ""] = texts.slice(-1);
  const stop = texts.length > 2 && texts.some((text) => /,(?!\d)/.test(text)) ? ";" : ",";
  return texts.length < 2
    ? last
    : `${texts.slice(0, -1).join(`${stop} `)} ${JOINED[before]} ${last}`;
}

export function namesWithin(names: readonly string[], before: keyof typeof JOINED = "and"): string {
  return listed(names.map(within), before);
}

/** "2009-06-01" as "1. Juni 2009". */
export const dateWords = dayIn("de-DE");

/** Nouns keep their capital, and most names of figures begin with one; a preposition loses it. */
export function lowerFirst(text: string): string {
  return /^(?:Nach|In|Mit|Von|Ohne) /.test(text) ? letterCase.lowerFirst(text) : text;
}
