/** Phrases that sentences of several sciences share, in German: figures with their units, lists, days. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { significant as significantInEnglish, within, withUnit } from "../en/statements-phrases.ts";
import { decimalText, quantityText } from "../number-text.ts";

export { bracketed, sentence, within, withUnit } from "../en/statements-phrases.ts";

export const ABOUT = "etwa";

/** A count of days stands after "in" or alone. */
export type DayCase = "nominative" | "dative";

const JOINED = { and: "und", or: "oder" } as const;

export function decimals(quantity: Quantity, places: number): string {
  return quantityText(quantity, (value) => decimalText(value, places), ABOUT);
}

/** To significant digits, without zeros after the last one that counts. */
export function significant(quantity: Quantity, digits: number): string {
  return quantityText(quantity, (value) => significantInEnglish(value, digits), ABOUT);
}

/** A fraction 0-1 as "2.5 %"; two significant digits are all that a recipe or an estimate bears, three from 100 on. */
export function percent(fraction: Quantity, digits = 2): string {
  const share = (value: number): string =>
    significantInEnglish(value * 100, value > 0.995 ? 3 : digits);
  return withUnit(quantityText(fraction, share, ABOUT), "%");
}

export function dayCount(days: Quantity, inCase: DayCase = "nominative"): string {
  const text = significant(days, 2);
  if (text === "1") return withUnit(text, "Tag");
  return withUnit(text, inCase === "dative" ? "Tagen" : "Tage");
}

export function gramsTo100(grams: Quantity): string {
  return withUnit(significant(grams, 2), "g/100 g");
}

export function micrometres(um: Quantity): string {
  return withUnit(significant(um, 2), "\u00b5m");
}

export function degrees(celsius: Quantity): string {
  return withUnit(decimals(celsius, 0), "\u00b0C");
}

/** "das 1.3–1.6-Fache der Tage"; of what shortens them "30–50 % der Tage". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "dieselben Tage";
  return most <= 1 && least < 1 ? `${percent(factor)} der Tage` : `das ${text}-Fache der Tage`;
}

/** "a, b und c"; with semicolons where a name has a comma of its own. */
export function listed(texts: readonly string[], before: keyof typeof JOINED = "and"): string {
  const [last = ""] = texts.slice(-1);
  const stop = texts.length > 2 && texts.some((text) => text.includes(",")) ? ";" : ",";
  return texts.length < 2
    ? last
    : `${texts.slice(0, -1).join(`${stop} `)}${stop === ";" ? stop : ""} ${JOINED[before]} ${last}`;
}

export function namesWithin(names: readonly string[], before: keyof typeof JOINED = "and"): string {
  return listed(names.map(within), before);
}

/** "2009-06-01" as "1. Juni 2009". */
export function dateWords(isoDate: string): string {
  return DAY.format(new Date(`${isoDate}T00:00:00Z`));
}

const DAY = new Intl.DateTimeFormat("de-DE", {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});
