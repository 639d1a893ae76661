import type { ComparisonStatement, PlacesApart, Times } from "../../collection/statements.ts";
import { comparedWays, type ComparedWay } from "../compared-ways.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { dayCount, decimals, listed, percent, sentence, significant, within } from "./phrases.ts";

/** How many times as much of what, between the names of the two. */
const TIMES: Readonly<Record<Times, (ratio: string, less: string) => string>> = {
  strength: (ratio, less) => `colorea ${ratio} veces lo que ${less}`,
  whitens: (ratio, less) => `necesita ${ratio} veces lo que ${less} para blanquear igual`,
  parts: (ratio, less) => `admite ${ratio} veces el blanco que admite ${less}`,
  oilByMass: (ratio, less) => `lleva ${ratio} veces el aceite de ${less}`,
  oilByVolume: (ratio, less) => `lleva ${ratio} veces el aceite de ${less}`,
};

/** Colours side by side: by how much they differ, or why it cannot be told. */
export const COMPARISON_RULINGS: WordingsOf<ComparisonStatement> = {
  "compared-masstones": (v) =>
    sentence(
      `${within(v.one)} es ${ways(v)} que ${within(v.other)} (diferencia de color \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-tints": (v) =>
    sentence(
      `${within(v.one)} es ${ways(v)} que ${within(v.other)} (diferencia de color \u0394E*ab ${decimals(v.distance, 1)})`,
    ),
  "compared-ratio": (v) =>
    sentence(
      `${within(v.more)} ${TIMES[v.of](`${atLeast(v)}${significant(v.ratio, 2)}`, within(v.less))}`,
    ),
  "compared-days": (v) =>
    sentence(
      `${within(v.earlier)} está seco ${atLeast(v)}${dayCount(Math.round(v.days))} antes que ${within(v.later)}`,
    ),
  "compared-within": (v) =>
    `Demasiado cerca para decidir (diferencia de color \u0394E*ab ${decimals(v.apart, 1)}; nuestras mediciones distinguen ${decimals(v.borne, 1)}).`,
  "compared-within-share": (v) =>
    `Demasiado cerca para decidir (diferencia del ${percent(v.share, 1)}; tales cifras distinguen el ${percent(v.borne, 1)}).`,
  "compared-too-close": () =>
    "Demasiado cerca para decidir: los intervalos se solapan o casi se tocan.",
  "compared-no-lightness": () => "No probado a la misma claridad.",
  "compared-one-expected": () => "La misma palabra, pero para uno es solo una previsión.",
  "compared-otherwise-known": (v) =>
    `No comparado: hallado por otro método para ${listed(v.names.map(within))}.`,
  "compared-shows-ground": (v) =>
    `No comparado: ${listed(v.names.map(within))}, ${v.names.length === 1 ? "medido en una película que deja ver su" : "medidos en películas que dejan ver su"} fondo.`,
  "compared-not-stated": (v) => `No se sabe de ${listed(v.names.map(within))}.`,
};

const WAYS: Readonly<Record<ComparedWay, string>> = {
  lighter: "más claro",
  darker: "más oscuro",
  yellower: "más amarillo",
  bluer: "más azul",
  "less yellow": "menos amarillo",
  "less blue": "menos azul",
  redder: "más rojo",
  greener: "más verde",
  "less red": "menos rojo",
  "less green": "menos verde",
};

function atLeast({ atLeast: ends }: { readonly atLeast?: string }): string {
  return ends === undefined ? "" : "al menos ";
}

/** "más oscuro y más azul": the ways that make up the distance. */
function ways(places: PlacesApart): string {
  return listed(comparedWays(places).map((way) => WAYS[way]));
}
