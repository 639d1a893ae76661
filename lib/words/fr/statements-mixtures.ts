import type { MixtureStatement } from "../../optics/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { TOWARD } from "./closed-words.ts";
import { decimals, micrometres, namesWithin, of, percent, within } from "./phrases.ts";

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS: WordingsOf<MixtureStatement> = {
  "drift-not-seen": (v) => `${losing(v)} aucun changement ne se voit (${change(v)}).`,
  "drift-grows-lighter": (v) => `${losing(v)} elle ne fait que s’éclaircir (${change(v)}).`,
  "drift-grows-darker": (v) => `${losing(v)} elle ne fait que s’assombrir (${change(v)}).`,
  "drift-grows-duller": (v) => `${losing(v)} sa couleur se ternit (${change(v)}).`,
  "drift-grows-stronger": (v) => `${losing(v)} sa couleur s’avive (${change(v)}).`,
  "drift-goes-toward": (v) => `${losing(v)} elle tourne ${TOWARD[v.toward]} (${change(v)}).`,
  "parts-not-recorded": () =>
    "Rien n’est prévu\u202f: les parts de ses pigments ne sont pas consignées.",
  "component-not-let-down": (v) =>
    `Rien n’est prévu\u202f: aucune peinture ${of(namesWithin(v.components, "or"))} seul n’a de dégradés qui puissent être ajustés.`,
  "no-common-white": (v) =>
    `Rien n’est prévu\u202f: ${namesWithin(v.components)} n’ont pas été dégradés dans un seul et même blanc.`,
  "oil-of-paint-not-known": (v) =>
    `Rien n’est prévu\u202f: on ne sait pas combien d’huile contient ${namesWithin(v.paints)}, et le pigment ne peut être converti en peinture.`,

  "particle-size-not-known": (v) =>
    `La théorie ne dit rien ${of(within(v.pigment))}\u202f: la taille de son grain n’est pas consignée.`,
  "particle-too-coarse": (v) =>
    `La théorie ne dit rien ${of(within(v.pigment))}\u202f: son grain (${micrometres(v.sizeUm)}) dépasse ${micrometres(v.limitUm)}, au-delà de quoi un grain diffuse comme une surface plane.`,
  "absorption-not-known": (v) =>
    `La théorie ne dit rien ${of(within(v.pigment))}\u202f: nous ne savons pas combien sa matière absorbe.`,
  "refractive-index-not-known": (v) =>
    `La théorie ne dit rien ${of(within(v.pigment))}\u202f: son indice de réfraction n’est pas consigné.`,
  "theory-bluer": (v) =>
    `Selon la théorie, ${within(v.first)} est plus bleu que ${within(v.second)} à L* ${lightness(v)}, dans ${percent(v.bluerShare)} des cas essayés (b* plus bas de ${amount(v)}).`,
  "theory-warmer": (v) =>
    `Selon la théorie, ${within(v.first)} est plus chaud que ${within(v.second)} à L* ${lightness(v)}, dans ${percent(1 - v.bluerShare)} des cas essayés (b* plus haut de ${amount(v)}).`,
  "theory-all-bluer": (v) =>
    `Selon la théorie, ${v.first} est plus bleu que ${v.second}, ${v.how === "in" ? "dans" : "avec"} ${namesWithin(v.members)} à L* ${lightness(v)}, dans ${percent(v.bluerShare)} des cas essayés ou plus (b* plus bas de ${amount(v)}).`,
  "theory-sign-not-known": (v) =>
    `La théorie ne peut dire lequel est le plus bleu, ${within(v.first)} ou ${within(v.second)}, à L* ${lightness(v)} (écart de b*\u202f: ${span(v.change, 1)}).`,
  "theory-leans": (v) =>
    `Selon la théorie, ${within(v.black)} tire ${v.blueShare >= 0.5 ? "vers le bleu" : "vers le chaud"} dans ${within(v.white)} à L* ${lightness(v)} (b* ${span(v.b, 0)}).`,
  "theory-lean-not-known": (v) =>
    `La théorie ne peut dire de quel côté tire ${within(v.black)} dans ${within(v.white)} à L* ${lightness(v)} (b* ${span(v.b, 0)}).`,
};

function losing(v: { readonly component: string; readonly loss: number }): string {
  return `Quand ${within(v.component)} a perdu ${percent(v.loss)} de sa force,`;
}

function change(v: { readonly deltaE00: number }): string {
  return `\u0394E00\u00a0${decimals(v.deltaE00, 1)}`;
}

function lightness(v: { readonly L: number }): string {
  return decimals(v.L, 0);
}

/** A change without its sign, which the words around it give. */
function amount({ change: [low, high] }: { readonly change: Interval }): string {
  const [least, most] = [Math.abs(low), Math.abs(high)];
  return decimals([Math.min(least, most), Math.max(least, most)], 1);
}

/** Ends that may be negative: "-4 à 3", since a dash between them would be read as another minus. */
function span([low, high]: Interval, places: number): string {
  return `${decimals(low, places)} à ${decimals(high, places)}`;
}
