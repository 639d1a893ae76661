import type { RulingWording } from "../words.ts";
import { decimals, micrometres, namesWithin, percent, sentence, within } from "./rulings-phrases.ts";
import { numberOf, quantityOf, textOf, textsOf, type Values } from "./rulings-values.ts";

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS = {
  "drift-not-seen": (v) => `${losing(v)} no change is seen (${change(v)}).`,
  "drift-grows-lighter": (v) => `${losing(v)} it only grows lighter (${change(v)}).`,
  "drift-grows-darker": (v) => `${losing(v)} it only grows darker (${change(v)}).`,
  "drift-goes-toward": (v) => `${losing(v)} it goes toward ${textOf(v, "toward")} (${change(v)}).`,
  "geometries-differ": (v) => `They are not reckoned together: one was read ${textOf(v, "sample")}, the other ${textOf(v, "reference")}.`,
  "parts-not-recorded": () => "Nothing is predicted: the parts of its pigments are not in the record.",
  "component-not-let-down": (v) => `Nothing is predicted: no paint of ${namesWithin(textsOf(v, "components"), "or")} alone has let-downs that can be fitted.`,
  "no-common-white": (v) => `Nothing is predicted: ${namesWithin(textsOf(v, "components"))} were not let down in one and the same white.`,
  "oil-of-paint-not-known": (v) => `Nothing is predicted: how much oil is in ${namesWithin(textsOf(v, "paints"))} is not known, and pigment cannot be reckoned as paint.`,

  "particle-size-not-known": (v) => `Theory says nothing of ${within(textOf(v, "pigment"))}: the size of its grain is not recorded.`,
  "particle-too-coarse": (v) => `Theory says nothing of ${within(textOf(v, "pigment"))}: its grain (${micrometres(quantityOf(v, "sizeUm"))}) is over ${micrometres(numberOf(v, "limitUm"))}, where a grain scatters as a flat face does.`,
  "absorption-not-known": (v) => `Theory says nothing of ${within(textOf(v, "pigment"))}: how strongly its substance absorbs is not known here.`,
  "refractive-index-not-known": (v) => `Theory says nothing of ${within(textOf(v, "pigment"))}: its refractive index is not recorded.`,
  "theory-bluer": (v) => `By theory ${within(textOf(v, "first"))} is bluer than ${within(textOf(v, "second"))} at L* ${decimals(numberOf(v, "L"), 0)} in ${percent(numberOf(v, "bluerShare"))} of the cases tried${by(v)}.`,
  "theory-warmer": (v) => `By theory ${within(textOf(v, "first"))} is warmer than ${within(textOf(v, "second"))} at L* ${decimals(numberOf(v, "L"), 0)} in ${percent(1 - numberOf(v, "bluerShare"))} of the cases tried${by(v)}.`,
  "theory-sign-not-known": (v) => `Theory does not tell whether ${within(textOf(v, "first"))} or ${within(textOf(v, "second"))} is the bluer at L* ${decimals(numberOf(v, "L"), 0)}${by(v)}.`,
  "theory-leans": (v) => `By theory ${within(textOf(v, "black"))} leans ${numberOf(v, "blueShare") >= 0.5 ? "blue" : "warm"} in ${within(textOf(v, "white"))} at L* ${decimals(numberOf(v, "L"), 0)} (b* ${decimals(quantityOf(v, "b"), 0)}).`,
  "theory-lean-not-known": (v) => `Theory does not tell which way ${within(textOf(v, "black"))} leans in ${within(textOf(v, "white"))} at L* ${decimals(numberOf(v, "L"), 0)} (b* ${decimals(quantityOf(v, "b"), 0)}).`,
} as const satisfies Record<string, RulingWording>;

function losing(v: Values): string {
  return sentence(`when ${within(textOf(v, "component"))} has lost ${percent(numberOf(v, "loss"))} of its strength,`).replace(/\.$/, "");
}

function change(v: Values): string {
  return `\u0394E00\u00a0${decimals(numberOf(v, "deltaE00"), 1)}`;
}

function by(v: Values): string {
  return ` (b* differs by ${decimals(quantityOf(v, "change"), 1)})`;
}
