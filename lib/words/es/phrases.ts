/** Phrases that sentences of several sciences share: figures with their units, lists, names as they stand within a sentence. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { printedNumbers } from "../number-text.ts";
import { dayIn, printedFigures, within, withUnit } from "../phrases.ts";

export { lowerFirst } from "../letter-case.ts";
export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "alrededor de";

/** Between what is named and what is said of it. */
export const COLON: string = ": ";
export const SEMICOLON: string = "; ";

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

export function dayCount(days: Quantity): string {
  return withUnit(significant(days, 2), significant(days, 2) === "1" ? "día" : "días");
}

/** "1.3-1.6 veces el número de días"; of what shortens them "el 30-50 % del número de días". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "el mismo número de días";
  return most <= 1 && least < 1
    ? `el ${percent(factor)} del número de días`
    : `${text} veces el número de días`;
}

/** "a, b y c"; with semicolons where a name has a comma of its own; "e" before i-, "u" before o-. */
export function listed(texts: readonly string[], before: "and" | "or" = "and"): string {
  const [last = ""] = texts.slice(-1);
  const joint = before === "and" ? andBefore(last) : orBefore(last);
  const stop = texts.length > 2 && texts.some((text) => text.includes(",")) ? "; " : ", ";
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(stop)} ${joint} ${last}`;
}

function andBefore(text: string): string {
  return /^h?[ií](?![aeou])/i.test(text) ? "e" : "y";
}

function orBefore(text: string): string {
  return /^(?:h?[oó]|8)/i.test(text) ? "u" : "o";
}

export function namesWithin(names: readonly string[], before: "and" | "or" = "and"): string {
  return listed(names.map(within), before);
}

/** "2009-06-01" as "1 de junio de 2009". */
export const dateWords = dayIn("es-ES");
