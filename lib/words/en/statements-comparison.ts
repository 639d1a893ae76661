import type { StatementWording } from "../words.ts";
import {
  dayCount,
  decimals,
  listed,
  percent,
  sentence,
  significant,
  within,
} from "./statements-phrases.ts";
import { hasValue, numberOf, textOf, textsOf, wordOf, type Values } from "./statement-params.ts";

/** How many times as much of what, between the names of the two. */
const TIMES: Readonly<Record<string, (ratio: string, less: string) => string>> = {
  strength: (ratio, less) => `is ${ratio} times as strong as ${less}`,
  parts: (ratio, less) => `takes ${ratio} times the white that ${less} takes`,
  oilByMass: (ratio, less) => `takes ${ratio} times the oil of ${less}`,
  oilByVolume: (ratio, less) => `takes ${ratio} times the oil of ${less}`,
};

/** Colours side by side: by how much they differ, or why it cannot be told. */
export const COMPARISON_RULINGS = {
  "compared-masstones": (v) =>
    sentence(
      `${named(v, "one")} is ${ways(v)} than ${named(v, "other")} (\u0394E*ab ${decimals(numberOf(v, "distance"), 1)})`,
    ),
  "compared-tints": (v) =>
    sentence(
      `${named(v, "one")} is ${ways(v)} than ${named(v, "other")} (${decimals(numberOf(v, "distance"), 1)} apart)`,
    ),
  "compared-ratio": (v) =>
    sentence(
      `${named(v, "more")} ${TIMES[wordOf(v, "of", TIMES)]?.(`${atLeast(v)}${significant(numberOf(v, "ratio"), 2)}`, named(v, "less")) ?? ""}`,
    ),
  "compared-days": (v) =>
    sentence(
      `${named(v, "earlier")} is dry ${atLeast(v)}${dayCount(Math.round(numberOf(v, "days")))} before ${named(v, "later")}`,
    ),
  "compared-within": (v) =>
    `Too close to call (${decimals(numberOf(v, "apart"), 1)} apart; our readings can tell ${decimals(numberOf(v, "borne"), 1)}).`,
  "compared-within-share": (v) =>
    `Too close to call (${percent(numberOf(v, "share"), 1)} apart; such figures can tell ${percent(numberOf(v, "borne"), 1)}).`,
  "compared-too-close": () => "Too close to call: the ranges overlap or touch.",
  "compared-no-lightness": () => "Not tried at the same lightness.",
  "compared-one-expected": () => "The same word, but for one it is only an expectation.",
  "compared-otherwise-known": (v) =>
    `Found another way for ${listed(textsOf(v, "names").map(within))}, so not compared.`,
  "compared-not-stated": (v) => `Not known of ${listed(textsOf(v, "names").map(within))}.`,
} as const satisfies Record<string, StatementWording>;

/** Less than this share of the distance is no direction worth a word. */
const WORTH_SAYING = 0.4;

function named(values: Values, name: string): string {
  return within(textOf(values, name));
}

function atLeast(values: Values): string {
  return hasValue(values, "atLeast") ? "at least " : "";
}

/** "darker and bluer": the ways that make up the distance. */
function ways(values: Values): string {
  const distance = numberOf(values, "distance");
  const way = (name: string, more: string, less: string): string[] => {
    const by = numberOf(values, name);
    return Math.abs(by) < WORTH_SAYING * distance ? [] : [by > 0 ? more : less];
  };
  return listed([
    ...way("lighter", "lighter", "darker"),
    ...way("yellower", "yellower", "bluer"),
    ...way("redder", "redder", "greener"),
  ]);
}
