/** What is known of a mixture beside its colour, in words. */
import type { MixOpacity } from "../mixing/prediction/mix-opacity.ts";
import type { Told } from "../mixing/reach/hull.ts";
import { HIDING_CONTRAST_RATIO } from "../optics/films/hiding.ts";
import { OPACITY_FILM } from "../optics/films/opacity.ts";
import type { Interval } from "../quantities/interval.ts";
import { moneyFormat } from "../words/money-format.ts";
import { type PrintedNumbers, quantityText } from "../words/number-text.ts";
import type { MixFacts } from "../mixing/prediction/mix-facts.ts";
import type { Words } from "../words/words.ts";
import { given } from "../quantities/given.ts";

type MixText = Words["pages"]["mixing"];

/** What mixtures are told in, and in which language prices are written. */
export interface MixWords {
  readonly text: MixText;
  readonly numbers: PrintedNumbers;
  readonly language: string;
}

type Row = readonly [name: string, said: string];

export function factRows(
  facts: MixFacts,
  opacity: MixOpacity | undefined,
  currency: string | undefined,
  words: MixWords,
): Row[] {
  const { text } = words;
  const { notations } = text.bench;
  return [
    [notations.lasts, lastsText(facts, text)],
    [notations.dries, driesText(facts, text)],
    [notations.hides, hidesText(opacity, text, words.numbers)],
    [notations.warning, warningText(facts, text)],
    [notations.price, priceText(facts, currency, words)],
  ];
}

export function lastsText({ lightfastness }: MixFacts, { facts }: MixText): string {
  const { text, of, unknown } = lightfastness;
  const known = text === undefined ? [] : [facts.weakest(text, of ?? "")];
  return given([...known, unknown.length > 0 && facts.unknown(unknown)]).join(facts.semicolon);
}

export function driesText({ dryingDays, dryingUnknown }: MixFacts, { facts }: MixText): string {
  if (dryingDays === undefined) return facts.unknown(dryingUnknown);
  return `${facts.days(dryingDays)}, ${facts.daysEstimate}`;
}

/** Of a film as thick as sheets judge opacity by. */
export function hidesText(
  opacity: MixOpacity | undefined,
  text: MixText,
  numbers: PrintedNumbers,
): string {
  if (opacity === undefined) return text.facts.notKnown;
  const ratio = contrastRange(opacity);
  const [least, most] = ratio;
  const um = text.micrometres(OPACITY_FILM.um);
  if (opacity.isDark) return text.facts.dark(opacity.class, um, least >= HIDING_CONTRAST_RATIO);
  const verdict =
    least >= HIDING_CONTRAST_RATIO
      ? "hides"
      : most < HIDING_CONTRAST_RATIO
        ? "does not hide"
        : "may hide";
  return text.facts.hiding[verdict](contrastText(ratio, numbers), um);
}

/** What the contrast ratio [1] of a film may be, 68 %: no more than 1, at which no eye tells the two grounds apart. */
export function contrastRange({
  contrastRatio,
  contrastUncertainty,
}: Pick<MixOpacity, "contrastRatio" | "contrastUncertainty">): Interval {
  const either = Math.max(contrastUncertainty, 0.005);
  return [Math.min(contrastRatio - either, 1), Math.min(contrastRatio + either, 1)];
}

/** "0.94\u20130.96", "0.99\u20131": two places, the rest cut off, so that what falls short of the limit reads so. */
export function contrastText(ratio: Interval, numbers: PrintedNumbers): string {
  return quantityText(
    ratio,
    (end) => (end === 1 ? "1" : numbers.decimal(Math.floor(100 * end + ROUNDING) / 100, 2)),
    "",
  ).trim();
}

/** What sums of decimals are off by, in hundredths. */
const ROUNDING = 1e-9;

export function warningText(
  { signal, metals, warningUnknown }: MixFacts,
  { facts }: MixText,
): string {
  const warnings = given([
    signal !== null && facts.signals[signal],
    metals.length > 0 && facts.contains(metals),
  ]);
  const said = warnings.length === 0 ? facts.noWarning : warnings.join(facts.semicolon);
  return warningUnknown.length === 0
    ? said
    : `${said}${facts.semicolon}${facts.unknown(warningUnknown)}`;
}

export function priceText(
  { pricePer10Ml, restricted }: MixFacts,
  currency: string | undefined,
  { text, language }: Omit<MixWords, "numbers">,
): string {
  if (restricted.length > 0) return text.facts.restricted(restricted);
  if (pricePer10Ml === undefined || currency === undefined) return text.facts.notKnown;
  return text.facts.price(
    moneyFormat(language === "en" ? "en-GB" : language, currency).format(pricePer10Ml),
  );
}

/** A share with what it may be off, 68 % [1]: "12 % \u00b12", and "97 % +3 \u221213" where the \u00b1 would pass the whole. */
export function percentText({ value, p68 }: Told): string {
  const percent = Math.min(Math.round(100 * value), 100);
  const off = Math.max(Math.round(100 * p68), 1);
  const above = Math.min(off, 100 - percent);
  const told = above === off ? `\u00b1${off}` : `${above === 0 ? "" : `+${above} `}\u2212${off}`;
  return `${percent}\u00a0% ${told}`;
}

/** A difference with its 68 % [Delta-E00]. */
export function differenceText(difference: number, p68: number, numbers: PrintedNumbers): string {
  return `\u0394E00\u00a0${numbers.decimal(difference, 1)}\u00a0\u00b1${numbers.decimal(Math.max(p68, 0.1), 1)}`;
}
