/** What Spanish has alone: phrases that sentences of several sciences share, its lists and days. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { upperFirst } from "../letter-case.ts";
import { isOneDay, printedNumbers } from "../number-text.ts";
import { dayIn, lists, printedFigures, withUnit } from "../phrases.ts";

export { lowerFirst } from "../letter-case.ts";
export { bracketed, sentence, within, withUnit } from "../phrases.ts";

export const ABOUT: string = "alrededor de";

/** Between what is named and what is said of it. */
export const COLON: string = ": ";
export const SEMICOLON: string = "; ";

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

export function dayCount(days: Quantity): string {
  return withUnit(dayNumbers(days), isOneDay(days) ? "día" : "días");
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

/** "a, b y c"; "e" before i-, "u" before o-. */
export const { listed, namesWithin } = lists({
  joint: (before, next) => (before === "and" ? andBefore(next) : orBefore(next)),
});

function andBefore(text: string): string {
  return /^h?[ií](?![aeou])/i.test(text) ? "e" : "y";
}

function orBefore(text: string): string {
  return /^(?:h?[oó]|8)/i.test(text) ? "u" : "o";
}

/** "2009-06-01" as "1 de junio de 2009". */
export const dateWords = dayIn("es-ES");

/** A white's name where its neighbours are whites as well: "Zinc White" as "Zinc", "Blanco de cinc" as "Cinc". */
export function shortWhite(name: string): string {
  const short = name.replace(/\s+(?:white|blanco)$/i, "").replace(/^blanco de /i, "");
  return upperFirst(short);
}
