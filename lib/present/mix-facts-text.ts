/** What is known of a mixture beside its colour, in words. */
import type { JudgedMix } from "../mixing/finding/judged-mix.ts";
import type { Told } from "../mixing/reach/hull.ts";
import { OPACITY_FILM } from "../optics/films/opacity.ts";
import { decimalText } from "../words/number-text.ts";
import type { MixFacts } from "../mixing/prediction/mix-facts.ts";
import type { Words } from "../words/words.ts";

type MixText = Words["pages"]["mixing"];

/** What mixtures are told in, and in which language prices are written. */
export interface MixWords {
  readonly text: MixText;
  readonly language: string;
}

type Row = readonly [name: string, said: string];

export function factRows(
  facts: MixFacts,
  contrast: JudgedMix["contrast"],
  currency: string | undefined,
  words: MixWords,
): Row[] {
  const { text } = words;
  const { notations } = text.bench;
  return [
    [notations.lasts, lastsText(facts, text)],
    [notations.dries, driesText(facts, text)],
    [notations.hides, hidesText(contrast, text)],
    [notations.warning, warningText(facts, text)],
    [notations.price, priceText(facts, currency, words)],
  ];
}

export function lastsText({ lightfastness }: MixFacts, { facts }: MixText): string {
  const { text, of, unknown } = lightfastness;
  const known = text === undefined ? [] : [facts.weakest(text, of ?? "")];
  return [...known, ...(unknown.length === 0 ? [] : [facts.unknown(unknown)])].join("; ");
}

export function driesText({ dryingDays, dryingUnknown }: MixFacts, { facts }: MixText): string {
  if (dryingDays === undefined) return facts.unknown(dryingUnknown);
  return `${facts.days(dryingDays)}, ${facts.daysEstimate}`;
}

/** Of a film as thick as sheets judge opacity by. */
export function hidesText(contrast: JudgedMix["contrast"], text: MixText): string {
  return contrast === undefined
    ? text.facts.notKnown
    : text.facts.contrast(
        decimalText(Math.min(contrast.ratio, 1), 2),
        decimalText(Math.max(contrast.uncertainty, 0.01), 2),
        text.micrometres(OPACITY_FILM.um),
      );
}

export function warningText(
  { signal, metals, warningUnknown }: MixFacts,
  { facts }: MixText,
): string {
  const said = facts.warning(signal, metals);
  return warningUnknown.length === 0 ? said : `${said}; ${facts.unknown(warningUnknown)}`;
}

export function priceText(
  { pricePer10Ml, restricted }: MixFacts,
  currency: string | undefined,
  { text, language }: MixWords,
): string {
  if (restricted.length > 0) return text.facts.restricted(restricted);
  if (pricePer10Ml === undefined || currency === undefined) return text.facts.notKnown;
  return text.facts.price(
    new Intl.NumberFormat(language === "en" ? "en-GB" : language, {
      style: "currency",
      currency,
    }).format(pricePer10Ml),
  );
}

/** A share with what it may be off, 68 % [1]: "12 % \u00b12". */
export function percentText({ value, p68 }: Told): string {
  return `${decimalText(100 * value, 0)}\u00a0% \u00b1${decimalText(Math.max(100 * p68, 1), 0)}`;
}

/** A difference with its 68 % [Delta-E00]. */
export function differenceText(difference: number, p68: number): string {
  return `\u0394E\u00a0${decimalText(difference, 1)} \u00b1${decimalText(Math.max(p68, 0.1), 1)}`;
}
