import type { MixtureStatement } from "../../optics/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals, micrometres, namesWithin, percent, sentence, within } from "./phrases.ts";

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS: WordingsOf<MixtureStatement> = {
  "drift-not-seen": (v) => `${losing(v)} no change is seen (${change(v)}).`,
  "drift-grows-lighter": (v) => `${losing(v)} it only grows lighter (${change(v)}).`,
  "drift-grows-darker": (v) => `${losing(v)} it only grows darker (${change(v)}).`,
  "drift-grows-duller": (v) => `${losing(v)} its colour grows duller (${change(v)}).`,
  "drift-grows-stronger": (v) => `${losing(v)} its colour grows stronger (${change(v)}).`,
  "drift-goes-toward": (v) => `${losing(v)} it goes toward ${v.toward} (${change(v)}).`,
  "parts-not-recorded": () =>
    "Nothing is predicted: the parts of its pigments are not in the record.",
  "component-not-let-down": (v) =>
    `Nothing is predicted: no paint of ${namesWithin(v.components, "or")} alone has let-downs that can be fitted.`,
  "no-common-white": (v) =>
    `Nothing is predicted: ${namesWithin(v.components)} were not let down in one and the same white.`,
  "oil-of-paint-not-known": (v) =>
    `Nothing is predicted: how much oil is in ${namesWithin(v.paints)} is not known, so pigment cannot be converted to paint.`,

  "particle-size-not-known": (v) =>
    `Theory says nothing of ${within(v.pigment)}: the size of its grain is not recorded.`,
  "particle-too-coarse": (v) =>
    `Theory says nothing of ${within(v.pigment)}: its grain (${micrometres(v.sizeUm)}) is over ${micrometres(v.limitUm)}, above which a grain scatters like a flat surface.`,
  "absorption-not-known": (v) =>
    `Theory says nothing of ${within(v.pigment)}: we do not know how strongly its substance absorbs.`,
  "refractive-index-not-known": (v) =>
    `Theory says nothing of ${within(v.pigment)}: its refractive index is not recorded.`,
  "theory-bluer": (v) =>
    `By theory ${within(v.first)} is bluer than ${within(v.second)} at L* ${lightness(v)}, in ${percent(v.bluerShare)} of the cases tried (b* lower by ${amount(v)}).`,
  "theory-warmer": (v) =>
    `By theory ${within(v.first)} is warmer than ${within(v.second)} at L* ${lightness(v)}, in ${percent(1 - v.bluerShare)} of the cases tried (b* higher by ${amount(v)}).`,
  "theory-all-bluer": (v) =>
    `By theory ${v.first} is bluer than ${v.second}, ${v.how} ${namesWithin(v.members)} at L* ${lightness(v)}, in ${percent(v.bluerShare)} of the cases tried or more (b* lower by ${amount(v)}).`,
  "theory-sign-not-known": (v) =>
    `Theory cannot say whether ${within(v.first)} or ${within(v.second)} is the bluer at L* ${lightness(v)} (b* differs by ${span(v.change, 1)}).`,
  "theory-leans": (v) =>
    `By theory ${within(v.black)} leans ${v.blueShare >= 0.5 ? "blue" : "warm"} in ${within(v.white)} at L* ${lightness(v)} (b* ${span(v.b, 0)}).`,
  "theory-lean-not-known": (v) =>
    `Theory cannot say which way ${within(v.black)} leans in ${within(v.white)} at L* ${lightness(v)} (b* ${span(v.b, 0)}).`,
};

function losing(v: { readonly component: string; readonly loss: number }): string {
  return sentence(
    `when ${within(v.component)} has lost ${percent(v.loss)} of its strength,`,
  ).replace(/\.$/, "");
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

/** Ends that may be negative: "-4 to 3", since a dash between them would be read as another minus. */
function span([low, high]: Interval, places: number): string {
  return `${decimals(low, places)} to ${decimals(high, places)}`;
}
