import type { MixtureStatement } from "../../optics/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { HUE_NOUNS } from "./closed-sets.ts";
import { decimals, micrometres, namesWithin, percent, within } from "./phrases.ts";

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS: WordingsOf<MixtureStatement> = {
  "drift-not-seen": (v) => `${losing(v)} ist keine Änderung zu sehen (${change(v)}).`,
  "drift-grows-lighter": (v) => `${losing(v)} wird die Farbe nur heller (${change(v)}).`,
  "drift-grows-darker": (v) => `${losing(v)} wird die Farbe nur dunkler (${change(v)}).`,
  "drift-grows-duller": (v) => `${losing(v)} wird die Farbe stumpfer (${change(v)}).`,
  "drift-grows-stronger": (v) => `${losing(v)} wird die Farbe kräftiger (${change(v)}).`,
  "drift-goes-toward": (v) =>
    `${losing(v)} geht die Farbe nach ${HUE_NOUNS[v.toward]} (${change(v)}).`,
  "parts-not-recorded": () => "Keine Vorhersage: die Teile der Pigmente sind nicht aufgezeichnet.",
  "component-not-let-down": (v) =>
    `Keine Vorhersage: keine Farbe aus ${namesWithin(v.components, "or")} allein hat Aufhellungen, die sich anpassen lassen.`,
  "no-common-white": (v) =>
    `Keine Vorhersage: ${namesWithin(v.components)} wurden nicht in ein und demselben Weiß aufgehellt.`,
  "oil-of-paint-not-known": (v) =>
    `Keine Vorhersage: wie viel Öl in ${namesWithin(v.paints)} steckt, ist nicht bekannt, Pigment lässt sich daher nicht in Farbe umrechnen.`,

  "particle-size-not-known": (v) =>
    `Die Theorie sagt nichts über ${within(v.pigment)}: die Korngröße ist nicht aufgezeichnet.`,
  "particle-too-coarse": (v) =>
    `Die Theorie sagt nichts über ${within(v.pigment)}: das Korn (${micrometres(v.sizeUm)}) liegt über ${micrometres(v.limitUm)}, und darüber streut ein Korn wie eine ebene Fläche.`,
  "absorption-not-known": (v) =>
    `Die Theorie sagt nichts über ${within(v.pigment)}: wie stark der Stoff absorbiert, wissen wir nicht.`,
  "refractive-index-not-known": (v) =>
    `Die Theorie sagt nichts über ${within(v.pigment)}: der Brechungsindex ist nicht aufgezeichnet.`,
  "theory-bluer": (v) =>
    `Nach der Theorie ist ${within(v.first)} blauer als ${within(v.second)} bei L* ${lightness(v)}, in ${percent(v.bluerShare)} der gerechneten Fälle (b* niedriger um ${amount(v)}).`,
  "theory-warmer": (v) =>
    `Nach der Theorie ist ${within(v.first)} wärmer als ${within(v.second)} bei L* ${lightness(v)}, in ${percent(1 - v.bluerShare)} der gerechneten Fälle (b* höher um ${amount(v)}).`,
  "theory-all-bluer": (v) =>
    `Nach der Theorie ist ${v.first} blauer als ${v.second}, ${v.how === "with" ? "mit" : "in"} ${namesWithin(v.members)} bei L* ${lightness(v)}, in ${percent(v.bluerShare)} der gerechneten Fälle oder mehr (b* niedriger um ${amount(v)}).`,
  "theory-sign-not-known": (v) =>
    `Die Theorie kann nicht sagen, ob ${within(v.first)} oder ${within(v.second)} bei L* ${lightness(v)} blauer ist (Unterschied in b* ${span(v.change, 1)}).`,
  "theory-leans": (v) =>
    `Nach der Theorie neigt ${within(v.black)} in ${within(v.white)} bei L* ${lightness(v)} zu ${v.blueShare >= 0.5 ? "Blau" : "einem warmen Ton"} (b* ${span(v.b, 0)}).`,
  "theory-lean-not-known": (v) =>
    `Die Theorie kann nicht sagen, wohin ${within(v.black)} in ${within(v.white)} bei L* ${lightness(v)} neigt (b* ${span(v.b, 0)}).`,
};

function losing(v: { readonly component: string; readonly loss: number }): string {
  return `Hat ${within(v.component)} ${percent(v.loss)} an Stärke verloren,`;
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

/** Ends that may be negative: "-4 bis 3", since a dash between them would be read as another minus. */
function span([low, high]: Interval, places: number): string {
  return `${decimals(low, places)} bis ${decimals(high, places)}`;
}
