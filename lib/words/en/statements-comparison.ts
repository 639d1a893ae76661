import type { ComparisonStatement, PlacesApart, Times } from "../../collection/statements.ts";
import { comparedWays, type ComparedWay } from "../compared-ways.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { dayCount, decimals, listed, percent, sentence, significant, within } from "./phrases.ts";

/** How many times as much of what, between the names of the two. */
const TIMES: Readonly<Record<Times, (ratio: string, less: string) => string>> = {
  strength: (ratio, less) => `is ${times(ratio)} as strong as ${less}`,
  whitens: (ratio, less) => `takes ${times(ratio)} as much as ${less} to whiten alike`,
  parts: (ratio, less) => `takes ${times(ratio)} the white that ${less} takes`,
  oilByMass: (ratio, less) => `takes ${times(ratio)} the oil of ${less}`,
  oilByVolume: (ratio, less) => `takes ${times(ratio)} the oil of ${less}`,
};

/** "1.5 times", "at least twice". */
function times(ratio: string): string {
  return /(^|\s)2$/.test(ratio) ? ratio.replace(/2$/, "twice") : `${ratio} times`;
}

/** Colours side by side: by how much they differ, or why it cannot be told. */
export const COMPARISON_RULINGS: WordingsOf<ComparisonStatement> = {
  "compared-masstones": (v) =>
    sentence(
      `${within(v.one)} is ${ways(v)} than ${within(v.other)} (colour difference \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-tints": (v) =>
    sentence(
      `${within(v.one)} is ${ways(v)} than ${within(v.other)} (colour difference \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-ratio": (v) =>
    sentence(
      `${within(v.more)} ${TIMES[v.of](`${atLeast(v)}${significant(v.ratio, 2)}`, within(v.less))}`,
    ),
  "compared-days": (v) =>
    sentence(
      `${within(v.earlier)} is dry ${atLeast(v)}${dayCount(Math.round(v.days))} before ${within(v.later)}`,
    ),
  "compared-within": (v) =>
    `Too close to call (colour difference \u0394E*ab ${decimals(v.apart, 1)}; our readings can tell ${decimals(v.borne, 1)}).`,
  "compared-within-share": (v) =>
    `Too close to call (${percent(v.share, 1)} apart; such figures can tell ${percent(v.borne, 1)}).`,
  "compared-too-close": () => "Too close to call: the ranges overlap or nearly touch.",
  "compared-no-lightness": () => "Not tried at the same lightness.",
  "compared-one-expected": () => "The same word, but for one it is only an expectation.",
  "compared-otherwise-known": (v) =>
    `Not compared: found by another method for ${listed(v.names.map(within))}.`,
  "compared-shows-ground": (v) =>
    `Not compared: ${listed(v.names.map(within))} ${v.names.length === 1 ? "was read on a film that shows its" : "were read on films that show their"} ground.`,
  "compared-not-stated": (v) => `Not known of ${listed(v.names.map(within))}.`,
};

const WAYS: Readonly<Record<ComparedWay, string>> = {
  lighter: "lighter",
  darker: "darker",
  yellower: "yellower",
  bluer: "bluer",
  "less yellow": "less yellow",
  "less blue": "less blue",
  redder: "redder",
  greener: "greener",
  "less red": "less red",
  "less green": "less green",
};

function atLeast({ atLeast: ends }: { readonly atLeast?: string }): string {
  return ends === undefined ? "" : "at least ";
}

/** "darker and bluer": the ways that make up the distance. */
function ways(places: PlacesApart): string {
  return listed(comparedWays(places).map((way) => WAYS[way]));
}
