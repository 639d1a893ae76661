/** Phrases that sentences of several sciences share: figures with their units, lists, names as they stand within a sentence. */
import { ends, type Quantity } from "../../quantities/interval.ts";
import { decimalText, quantityText, significantText } from "../number-text.ts";

const SPACE = "\u00a0";
const ABOUT = "about";

export function decimals(quantity: Quantity, places: number): string {
  return quantityText(quantity, (value) => decimalText(value, places), ABOUT);
}

/** To significant digits, without zeros after the last one that counts: an estimate's 3 days are not 3.0. */
export function significant(quantity: Quantity, digits: number): string {
  return quantityText(quantity, (value) => tidy(value, digits), ABOUT);
}

function tidy(value: number, digits: number): string {
  return significantText(value, digits)
    .replace(/(\.\d*?)0+$/, "$1")
    .replace(/\.$/, "");
}

/** A fraction 0-1 as "2.5 %"; two significant digits are all that a recipe or an estimate bears, three from 100 on. */
export function percent(fraction: Quantity, digits = 2): string {
  return `${quantityText(fraction, (value) => tidy(value * 100, value > 0.995 ? 3 : digits), ABOUT)}${SPACE}%`;
}

/** A figure with its unit, kept on one line. */
export function withUnit(figure: string, unit: string): string {
  return `${figure}${SPACE}${unit}`;
}

export function dayCount(days: Quantity): string {
  const text = significant(days, 2);
  return withUnit(text, text === "1" ? "day" : "days");
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

/** "1.3-1.6 times the days"; of what shortens them "30-50 % of the days". */
export function timesTheDays(factor: Quantity): string {
  const [least, most] = ends(factor);
  const text = significant(factor, 2);
  if (text === "1") return "the same days";
  return most <= 1 && least < 1 ? `${percent(factor)} of the days` : `${text} times the days`;
}

/** "a, b and c"; with semicolons where a name has a comma of its own. */
export function listed(texts: readonly string[], before: "and" | "or" = "and"): string {
  const [last = ""] = texts.slice(-1);
  const stop = texts.length > 2 && texts.some((text) => text.includes(",")) ? ";" : ",";
  return texts.length < 2
    ? last
    : `${texts.slice(0, -1).join(`${stop} `)}${stop === ";" ? stop : ""} ${before} ${last}`;
}

/**
 * The name of a pigment, paint or white inside a sentence: as its record has it, capitals and order
 * kept, since nobody but its author knows which of them are a place's or a maker's. An address
 * stands for a name that is not on record: "titanium-white" is "titanium white".
 */
export function within(name: string): string {
  return /^[a-z0-9]+(-[a-z0-9]+)+$/.test(name) ? name.replaceAll("-", " ") : name;
}

export function namesWithin(names: readonly string[], before: "and" | "or" = "and"): string {
  return listed(names.map(within), before);
}

/** A sentence out of its words: capital letter and full stop. */
export function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** Small print of a sentence, left out when there is none. */
export function bracketed(...parts: readonly (string | undefined)[]): string {
  const said = parts.filter((part) => part !== undefined && part !== "");
  return said.length === 0 ? "" : ` (${said.join(", ")})`;
}

/** "2009-06-01" as "1 June 2009". */
export function dateWords(isoDate: string): string {
  return DAY.format(new Date(`${isoDate}T00:00:00Z`));
}

const DAY = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});
