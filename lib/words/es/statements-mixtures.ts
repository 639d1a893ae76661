import type { MixtureStatement } from "../../optics/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { TOWARD } from "./closed-words.ts";
import { decimals, micrometres, namesWithin, percent, within } from "./phrases.ts";

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS: WordingsOf<MixtureStatement> = {
  "drift-not-seen": (v) => `${losing(v)} no se ve ningún cambio (${change(v)}).`,
  "drift-grows-lighter": (v) => `${losing(v)} solo se aclara (${change(v)}).`,
  "drift-grows-darker": (v) => `${losing(v)} solo se oscurece (${change(v)}).`,
  "drift-grows-duller": (v) => `${losing(v)} su color se apaga (${change(v)}).`,
  "drift-grows-stronger": (v) => `${losing(v)} su color se aviva (${change(v)}).`,
  "drift-goes-toward": (v) => `${losing(v)} vira ${TOWARD[v.toward]} (${change(v)}).`,
  "parts-not-recorded": () =>
    "No se prevé nada: las partes de sus pigmentos no están en el registro.",
  "component-not-let-down": (v) =>
    `No se prevé nada: ninguna pintura de ${namesWithin(v.components, "or")} solo tiene rebajes que puedan ajustarse.`,
  "no-common-white": (v) =>
    `No se prevé nada: ${namesWithin(v.components)} no se rebajaron en un mismo blanco.`,
  "oil-of-paint-not-known": (v) =>
    `No se prevé nada: no se sabe cuánto aceite hay en ${namesWithin(v.paints)}, y el pigmento no puede convertirse en pintura.`,

  "particle-size-not-known": (v) =>
    `La teoría no dice nada de ${within(v.pigment)}: el tamaño de su grano no está registrado.`,
  "particle-too-coarse": (v) =>
    `La teoría no dice nada de ${within(v.pigment)}: su grano (${micrometres(v.sizeUm)}) pasa de ${micrometres(v.limitUm)}, por encima de lo cual un grano dispersa como una superficie plana.`,
  "absorption-not-known": (v) =>
    `La teoría no dice nada de ${within(v.pigment)}: no sabemos cuánto absorbe su materia.`,
  "refractive-index-not-known": (v) =>
    `La teoría no dice nada de ${within(v.pigment)}: su índice de refracción no está registrado.`,
  "theory-bluer": (v) =>
    `Según la teoría, ${within(v.first)} es más azul que ${within(v.second)} a L* ${lightness(v)}, en el ${percent(v.bluerShare)} de los casos probados (b* más bajo en ${amount(v)}).`,
  "theory-warmer": (v) =>
    `Según la teoría, ${within(v.first)} es más cálido que ${within(v.second)} a L* ${lightness(v)}, en el ${percent(1 - v.bluerShare)} de los casos probados (b* más alto en ${amount(v)}).`,
  "theory-all-bluer": (v) =>
    `Según la teoría, ${v.first} es más azul que ${v.second}, ${v.how === "in" ? "en" : "con"} ${namesWithin(v.members)} a L* ${lightness(v)}, en el ${percent(v.bluerShare)} de los casos probados o más (b* más bajo en ${amount(v)}).`,
  "theory-sign-not-known": (v) =>
    `La teoría no puede decir cuál es más azul, ${within(v.first)} o ${within(v.second)}, a L* ${lightness(v)} (diferencia de b*: ${span(v.change, 1)}).`,
  "theory-leans": (v) =>
    `Según la teoría, ${within(v.black)} tira ${v.blueShare >= 0.5 ? "al azul" : "a lo cálido"} en ${within(v.white)} a L* ${lightness(v)} (b* ${span(v.b, 0)}).`,
  "theory-lean-not-known": (v) =>
    `La teoría no puede decir hacia dónde tira ${within(v.black)} en ${within(v.white)} a L* ${lightness(v)} (b* ${span(v.b, 0)}).`,
};

function losing(v: { readonly component: string; readonly loss: number }): string {
  return `Cuando ${within(v.component)} ha perdido el ${percent(v.loss)} de su fuerza,`;
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

/** Ends that may be negative: "-4 a 3", since a dash between them would be read as another minus. */
function span([low, high]: Interval, places: number): string {
  return `${decimals(low, places)} a ${decimals(high, places)}`;
}
