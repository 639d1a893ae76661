import type { ComparisonStatement, PlacesApart, Times } from "../../collection/statements.ts";
import { comparedWays, type ComparedWay } from "../compared-ways.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { dayCount, decimals, listed, percent, sentence, significant, within } from "./phrases.ts";

/** How many times as much of what, between the names of the two. */
const TIMES: Readonly<Record<Times, (ratio: string, less: string) => string>> = {
  strength: (ratio, less) => `ist ${ratio}-mal so farbstark wie ${less}`,
  whitens: (ratio, less) => `braucht ${ratio}-mal so viel wie ${less}, um gleich aufzuhellen`,
  parts: (ratio, less) => `nimmt ${ratio}-mal so viel Weiß auf wie ${less}`,
  oilByMass: (ratio, less) => `nimmt ${ratio}-mal so viel Öl auf wie ${less}`,
  oilByVolume: (ratio, less) => `nimmt ${ratio}-mal so viel Öl auf wie ${less}`,
};

/** Colours side by side: by how much they differ, or why it cannot be told. */
export const COMPARISON_RULINGS: WordingsOf<ComparisonStatement> = {
  "compared-masstones": (v) =>
    sentence(
      `${within(v.one)} ist ${ways(v)} als ${within(v.other)} (Farbabstand \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-tints": (v) =>
    sentence(
      `${within(v.one)} ist ${ways(v)} als ${within(v.other)} (Farbabstand \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-ratio": (v) =>
    sentence(
      `${within(v.more)} ${TIMES[v.of](`${atLeast(v)}${significant(v.ratio, 2)}`, within(v.less))}`,
    ),
  "compared-days": (v) =>
    sentence(
      `${within(v.earlier)} trocknet ${atLeast(v)}${dayCount(Math.round(v.days))} früher als ${within(v.later)}`,
    ),
  "compared-within": (v) =>
    `Zu nah beieinander (Farbabstand \u0394E*ab ${decimals(v.apart, 1)}; unsere Messungen unterscheiden ab ${decimals(v.borne, 1)}).`,
  "compared-within-share": (v) =>
    `Zu nah beieinander (Abstand ${percent(v.share, 1)}; solche Werte unterscheiden ab ${percent(v.borne, 1)}).`,
  "compared-too-close": () =>
    "Zu nah beieinander: die Bereiche überschneiden sich oder berühren sich fast.",
  "compared-no-lightness": () => "Nicht bei gleicher Helligkeit erprobt.",
  "compared-one-expected": () => "Dasselbe Wort, doch bei einer ist es nur eine Erwartung.",
  "compared-otherwise-known": (v) =>
    `Nicht verglichen: auf anderem Weg ermittelt für ${listed(v.names.map(within))}.`,
  "compared-shows-ground": (v) =>
    `Nicht verglichen: ${listed(v.names.map(within))} ${v.names.length === 1 ? "wurde an einem Film gemessen, der seinen Grund" : "wurden an Filmen gemessen, die ihren Grund"} durchscheinen ${v.names.length === 1 ? "lässt" : "lassen"}.`,
  "compared-not-stated": (v) => `Nicht bekannt für ${listed(v.names.map(within))}.`,
};

const WAYS: Readonly<Record<ComparedWay, string>> = {
  lighter: "heller",
  darker: "dunkler",
  yellower: "gelber",
  bluer: "blauer",
  "less yellow": "weniger gelb",
  "less blue": "weniger blau",
  redder: "röter",
  greener: "grüner",
  "less red": "weniger rot",
  "less green": "weniger grün",
};

function atLeast({ atLeast: ends }: { readonly atLeast?: string }): string {
  return ends === undefined ? "" : "mindestens ";
}

/** "dunkler und blauer": the ways that make up the distance. */
function ways(places: PlacesApart): string {
  return listed(comparedWays(places).map((way) => WAYS[way]));
}
