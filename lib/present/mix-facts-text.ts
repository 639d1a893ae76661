/** What is known of a mixture beside its colour, in words. */
import type { JudgedMix } from "../mixing/finding/judged-mix.ts";
import type { Told } from "../mixing/reach/hull.ts";
import { OPACITY_FILM } from "../optics/films/opacity.ts";
import { decimalText } from "../words/number-text.ts";
import type { MixFacts } from "../mixing/prediction/mix-facts.ts";
import { MIXING_PAGES as TEXT } from "../words/en/mixing-pages.ts";

type Row = readonly [name: string, said: string];

export function factRows(
  facts: MixFacts,
  contrast: JudgedMix["contrast"],
  currency: string | undefined,
): Row[] {
  const { notations } = TEXT.bench;
  return [
    [notations.lasts, lastsText(facts)],
    [notations.dries, driesText(facts)],
    [notations.hides, hidesText(contrast)],
    [notations.warning, warningText(facts)],
    [notations.price, priceText(facts, currency)],
  ];
}

export function lastsText({ lightfastness }: MixFacts): string {
  const { text, of, unknown } = lightfastness;
  const known = text === undefined ? [] : [TEXT.facts.weakest(text, of ?? "")];
  return [...known, ...(unknown.length === 0 ? [] : [TEXT.facts.unknown(unknown)])].join("; ");
}

export function driesText({ dryingDays, dryingUnknown }: MixFacts): string {
  if (dryingDays === undefined) return TEXT.facts.unknown(dryingUnknown);
  return `${TEXT.facts.days(dryingDays)}, ${TEXT.facts.daysEstimate}`;
}

/** Of a film as thick as sheets judge opacity by. */
export function hidesText(contrast: JudgedMix["contrast"]): string {
  return contrast === undefined
    ? TEXT.facts.notKnown
    : TEXT.facts.contrast(
        decimalText(Math.min(contrast.ratio, 1), 2),
        decimalText(Math.max(contrast.uncertainty, 0.01), 2),
        TEXT.micrometres(OPACITY_FILM.um),
      );
}

export function warningText({ signal, metals, warningUnknown }: MixFacts): string {
  const said = TEXT.facts.warning(signal, metals);
  return warningUnknown.length === 0 ? said : `${said}; ${TEXT.facts.unknown(warningUnknown)}`;
}

export function priceText(
  { pricePer10Ml, restricted }: MixFacts,
  currency: string | undefined,
): string {
  if (restricted.length > 0) return TEXT.facts.restricted(restricted);
  if (pricePer10Ml === undefined || currency === undefined) return TEXT.facts.notKnown;
  return TEXT.facts.price(
    new Intl.NumberFormat("en-GB", { style: "currency", currency }).format(pricePer10Ml),
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
