/** Phrases that no language changes, and figures as every language prints them. */
import type { Lab } from "../colorimetry/viewing.ts";
import type { Quantity } from "../quantities/interval.ts";
import { upperFirst } from "./letter-case.ts";
import { quantityText, type PrintedNumbers } from "./number-text.ts";

const SPACE = "\u00a0";

/**
 * Figures in sentences of a language.
 * @param about its word before an estimate whose two ends read alike.
 * @param numbers how it prints a number.
 */
export function printedFigures(about: string, numbers: PrintedNumbers) {
  const text = (quantity: Quantity, print: (value: number) => string): string =>
    quantityText(quantity, print, about);
  const decimals = (quantity: Quantity, places: number): string =>
    text(quantity, (value) => numbers.decimal(value, places));
  /** To significant digits, without zeros after the last one that counts: an estimate's 3 days are not 3.0. */
  const significant = (quantity: Quantity, digits: number): string =>
    text(quantity, (value) => tidy(numbers.significant(value, digits)));
  return {
    /** Whole days, and halves under three: no trial and no estimate bears more. */
    dayNumbers: (days: Quantity): string => text(days, numbers.days),
    decimals,
    significant,
    /** A fraction 0-1 as "2.5 %"; two significant digits are all that a recipe or an estimate bears, three from 100 on. */
    percent: (fraction: Quantity, digits = 2): string =>
      withUnit(
        text(fraction, (value) =>
          tidy(numbers.significant(value * 100, value > 0.995 ? 3 : digits)),
        ),
        "%",
      ),
    gramsTo100: (grams: Quantity): string => withUnit(significant(grams, 2), "g/100 g"),
    micrometres: (um: Quantity): string => withUnit(significant(um, 2), "\u00b5m"),
    degrees: (celsius: Quantity): string => withUnit(decimals(celsius, 0), "\u00b0C"),
    millilitres: (ml: Quantity): string => withUnit(significant(ml, 3), "ml"),
    deltaE00Text: (difference: number): string => `\u0394E00 ${decimals(difference, 1)}`,
    deltaEabText: (difference: number): string => `\u0394E*ab ${decimals(difference, 1)}`,
    lightnessText: (L: number): string => `L* ${decimals(L, 0)}`,
    labText: ({ L, a, b }: Lab): string =>
      `L* ${decimals(L, 1)}, a* ${decimals(a, 1)}, b* ${decimals(b, 1)}`,
    /** Constants of the surface, k1 and k2 [1]. */
    surfaceConstants: ({ k1, k2 }: { readonly k1: number; readonly k2: number }): string =>
      `k1 ${decimals(k1, 3)}, k2 ${decimals(k2, 3)}`,
  };
}

function tidy(text: string): string {
  return text.replace(/([.,]\d*?)0+$/, "$1").replace(/[.,]$/, "");
}

/** "2009-06-01" as a language writes a day. */
export function dayIn(locale: string): (isoDate: string) => string {
  const day = new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  return (isoDate) => day.format(new Date(`${isoDate}T00:00:00Z`));
}

/** A figure with its unit, kept on one line. */
export function withUnit(figure: string, unit: string): string {
  return `${figure}${SPACE}${unit}`;
}

/**
 * The name of a pigment, paint or white inside a sentence: as its record has it, capitals and order
 * kept, since nobody but its author knows which of them are a place's or a maker's. An address
 * stands for a name that is not on record: "titanium-white" is "titanium white".
 */
export function within(name: string): string {
  return /^[a-z0-9]+(-[a-z0-9]+)+$/.test(name) ? name.replaceAll("-", " ") : name;
}

/** How a language puts things in a list. */
interface Listing {
  /** Its word between the last two. @param next the last of them. */
  readonly joint: (before: "and" | "or", next: string) => string;
  /** A comma of a name's own, and what then parts names, with its spaces. */
  readonly ownComma?: RegExp;
  readonly semicolon?: string;
  /** What stands before the joint where semicolons do. */
  readonly lastAfter?: string;
}

/** Lists of a language: "a, b and c"; with semicolons where one of more than two has a comma of its own. */
export function lists({ joint, ownComma = /,/, semicolon = "; ", lastAfter = "" }: Listing) {
  const listed = (texts: readonly string[], before: "and" | "or" = "and"): string => {
    const [last = ""] = texts.slice(-1);
    if (texts.length < 2) return last;
    const isParted = texts.length > 2 && texts.some((text) => ownComma.test(text));
    const others = texts.slice(0, -1).join(isParted ? semicolon : ", ");
    return `${others}${isParted ? lastAfter : ""} ${joint(before, last)} ${last}`;
  };
  return {
    listed,
    /** Of names as they stand inside a sentence. */
    namesWithin: (names: readonly string[], before: "and" | "or" = "and"): string =>
      listed(names.map(within), before),
  };
}

/** A sentence out of its words: capital letter and full stop. */
export function sentence(words: string): string {
  return `${upperFirst(words)}.`;
}

/** Small print of a sentence, left out when there is none. */
export function bracketed(...parts: readonly (string | undefined)[]): string {
  const said = parts.filter((part) => part !== undefined && part !== "");
  return said.length === 0 ? "" : ` (${said.join(", ")})`;
}
