import type { ComparisonStatement, PlacesApart, Times } from "../../collection/statements.ts";
import { comparedWays, type ComparedWay } from "../compared-ways.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import {
  dayCount,
  decimals,
  listed,
  of,
  percent,
  sentence,
  significant,
  than,
  within,
} from "./phrases.ts";

/** How many times as much of what, between the names of the two. */
const TIMES: Readonly<Record<Times, (ratio: string, less: string) => string>> = {
  strength: (ratio, less) => `colore ${ratio} fois plus ${than(less)}`,
  whitens: (ratio, less) => `demande ${ratio} fois autant ${than(less)} pour blanchir de même`,
  parts: (ratio, less) => `demande ${ratio} fois le blanc que demande ${less}`,
  oilByMass: (ratio, less) => `demande ${ratio} fois l’huile ${of(less)}`,
  oilByVolume: (ratio, less) => `demande ${ratio} fois l’huile ${of(less)}`,
};

/** Colours side by side: by how much they differ, or why it cannot be told. */
export const COMPARISON_RULINGS: WordingsOf<ComparisonStatement> = {
  "compared-masstones": (v) =>
    sentence(
      `${within(v.one)} est ${ways(v)} ${than(within(v.other))} (écart de couleur \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-tints": (v) =>
    sentence(
      `${within(v.one)} est ${ways(v)} ${than(within(v.other))} (écart de couleur \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-ratio": (v) =>
    sentence(
      `${within(v.more)} ${TIMES[v.of](`${atLeast(v)}${significant(v.ratio, 2)}`, within(v.less))}`,
    ),
  "compared-days": (v) =>
    sentence(
      `${within(v.earlier)} est sec ${atLeast(v)}${dayCount(Math.round(v.days))} avant ${within(v.later)}`,
    ),
  "compared-within": (v) =>
    `Trop proche pour trancher (écart de couleur \u0394E*ab ${decimals(v.apart, 1)}\u202f; nos mesures distinguent ${decimals(v.borne, 1)}).`,
  "compared-within-share": (v) =>
    `Trop proche pour trancher (écart de ${percent(v.share, 1)}\u202f; de tels chiffres distinguent ${percent(v.borne, 1)}).`,
  "compared-too-close": () =>
    "Trop proche pour trancher\u202f: les intervalles se recouvrent ou se touchent presque.",
  "compared-no-lightness": () => "Non essayé à la même clarté.",
  "compared-one-expected": () => "Le même mot, mais pour l’un ce n’est qu’une prévision.",
  "compared-otherwise-known": (v) =>
    `Non comparé\u202f: trouvé par une autre méthode pour ${listed(v.names.map(within))}.`,
  "compared-shows-ground": (v) =>
    `Non comparé\u202f: ${listed(v.names.map(within))}, ${v.names.length === 1 ? "mesuré sur un film qui laisse voir son" : "mesurés sur des films qui laissent voir leur"} fond.`,
  "compared-not-stated": (v) => `Inconnu pour ${listed(v.names.map(within))}.`,
};

const WAYS: Readonly<Record<ComparedWay, string>> = {
  lighter: "plus clair",
  darker: "plus sombre",
  yellower: "plus jaune",
  bluer: "plus bleu",
  "less yellow": "moins jaune",
  "less blue": "moins bleu",
  redder: "plus rouge",
  greener: "plus vert",
  "less red": "moins rouge",
  "less green": "moins vert",
};

function atLeast({ atLeast: ends }: { readonly atLeast?: string }): string {
  return ends === undefined ? "" : "au moins ";
}

/** "plus sombre et plus bleu": the ways that make up the distance. */
function ways(places: PlacesApart): string {
  return listed(comparedWays(places).map((way) => WAYS[way]));
}
