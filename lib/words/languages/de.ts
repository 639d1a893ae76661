/** What German has alone: phrases that sentences of several sciences share, its lists and days. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { isOneDay, printedNumbers } from "../number-text.ts";
import * as letterCase from "../letter-case.ts";
import { dayIn, lists, printedFigures, withUnit } from "../phrases.ts";

export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "etwa";

/** Between what is named and what is said of it. */
export const COLON: string = ": ";
export const SEMICOLON: string = "; ";

export const NUMBERS = printedNumbers(",");

export const {
  dayNumbers,
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

export function dayCount(days: Quantity, inCase: DayCase = "nominative"): string {
  const text = dayNumbers(days);
  if (isOneDay(days)) return withUnit(text, "Tag");
  return withUnit(text, inCase === "dative" ? "Tagen" : "Tage");
}

/** "das 1.3–1.6-Fache der Tage"; of what shortens them "30–50 % der Tage". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "dieselben Tage";
  return most <= 1 && least < 1 ? `${percent(factor)} der Tage` : `das ${text}-Fache der Tage`;
}

/** "a, b und c"; the comma of "0,2" is none that a name has. */
export const { listed, namesWithin } = lists({
  joint: (before) => ({ and: "und", or: "oder" })[before],
  ownComma: /,(?!\d)/,
});

/** "2009-06-01" as "1. Juni 2009". */
export const dateWords = dayIn("de-DE");

/** Nouns keep their capital, and most names of figures begin with one; a preposition loses it. */
export function lowerFirst(text: string): string {
  return /^(?:Nach|In|Mit|Von|Ohne) /.test(text) ? letterCase.lowerFirst(text) : text;
}

/** "titanium" of "titanium white", "Titan-" of "Titanweiß": before another white that says the rest. */
export function withoutWhite(name: string): string {
  return name.replace(/^(\S+) white$/i, "$1").replace(/^(\p{L}+)wei(?:ß|ss)$/iu, "$1-");
}
