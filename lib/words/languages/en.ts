/** What English has alone: phrases that sentences of several sciences share, its lists and days. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { isOneDay, printedNumbers } from "../number-text.ts";
import * as letterCase from "../letter-case.ts";
import { dayIn, lists, printedFigures, withUnit } from "../phrases.ts";

export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "about";

/** Between what is named and what is said of it. */
export const COLON: string = ": ";
export const SEMICOLON: string = "; ";

export const NUMBERS = printedNumbers(".");

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

export function dayCount(days: Quantity): string {
  return withUnit(dayNumbers(days), isOneDay(days) ? "day" : "days");
}

/** "1.3-1.6 times the days"; of what shortens them "30-50 % of the days". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "the same days";
  return most <= 1 && least < 1 ? `${percent(factor)} of the days` : `${text} times the days`;
}

/** "a, b and c". */
export const { listed, namesWithin } = lists({
  joint: (before) => before,
  lastAfter: ";",
});

/** "2009-06-01" as "1 June 2009". */
export const dateWords = dayIn("en-GB");

/** Names that keep their capital inside a sentence. */
const PROPER = /^(Prussian|Venetian|Indian|Naples|Mars|Cologne|Pozzuoli|Verona|Paris)\b/;

export function lowerFirst(text: string): string {
  return PROPER.test(text) ? text : letterCase.lowerFirst(text);
}
