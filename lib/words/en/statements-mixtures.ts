import { ends } from "../../quantities/interval.ts";
import type { StatementWording } from "../words.ts";
import {
  decimals,
  micrometres,
  namesWithin,
  percent,
  sentence,
  within,
} from "./statements-phrases.ts";
import { numberOf, quantityOf, textOf, textsOf, wordOf, type Values } from "./statement-params.ts";
import { certain } from "../../quantities/at.ts";

const HOW = { with: "with", in: "in" } as const;

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS = {
  "drift-not-seen": (v) => `${losing(v)} no change is seen (${change(v)}).`,
  "drift-grows-lighter": (v) => `${losing(v)} it only grows lighter (${change(v)}).`,
  "drift-grows-darker": (v) => `${losing(v)} it only grows darker (${change(v)}).`,
  "drift-goes-toward": (v) => `${losing(v)} it goes toward ${textOf(v, "toward")} (${change(v)}).`,
  "geometries-differ": (v) =>
    `They cannot be worked out together: one was read ${textOf(v, "sample")}, the other ${textOf(v, "reference")}.`,
  "parts-not-recorded": () =>
    "Nothing is predicted: the parts of its pigments are not in the record.",
  "component-not-let-down": (v) =>
    `Nothing is predicted: no paint of ${namesWithin(textsOf(v, "components"), "or")} alone has let-downs that can be fitted.`,
  "no-common-white": (v) =>
    `Nothing is predicted: ${namesWithin(textsOf(v, "components"))} were not let down in one and the same white.`,
  "oil-of-paint-not-known": (v) =>
    `Nothing is predicted: how much oil is in ${namesWithin(textsOf(v, "paints"))} is not known, so pigment cannot be converted to paint.`,

  "particle-size-not-known": (v) =>
    `Theory says nothing of ${within(textOf(v, "pigment"))}: the size of its grain is not recorded.`,
  "particle-too-coarse": (v) =>
    `Theory says nothing of ${within(textOf(v, "pigment"))}: its grain (${micrometres(quantityOf(v, "sizeUm"))}) is over ${micrometres(numberOf(v, "limitUm"))}, above which a grain scatters like a flat surface.`,
  "absorption-not-known": (v) =>
    `Theory says nothing of ${within(textOf(v, "pigment"))}: we do not know how strongly its substance absorbs.`,
  "refractive-index-not-known": (v) =>
    `Theory says nothing of ${within(textOf(v, "pigment"))}: its refractive index is not recorded.`,
  "theory-bluer": (v) =>
    `By theory ${within(textOf(v, "first"))} is bluer than ${within(textOf(v, "second"))} at L* ${lightness(v)}, in ${percent(numberOf(v, "bluerShare"))} of the cases tried (b* lower by ${amount(v)}).`,
  "theory-warmer": (v) =>
    `By theory ${within(textOf(v, "first"))} is warmer than ${within(textOf(v, "second"))} at L* ${lightness(v)}, in ${percent(1 - numberOf(v, "bluerShare"))} of the cases tried (b* higher by ${amount(v)}).`,
  "theory-all-bluer": (v) =>
    `By theory ${textOf(v, "first")} is bluer than ${textOf(v, "second")}, ${HOW[wordOf(v, "how", HOW)]} ${namesWithin(textsOf(v, "members"))} at L* ${lightness(v)}, in ${percent(numberOf(v, "bluerShare"))} of the cases tried or more (b* lower by ${amount(v)}).`,
  "theory-sign-not-known": (v) =>
    `Theory cannot say whether ${within(textOf(v, "first"))} or ${within(textOf(v, "second"))} is the bluer at L* ${lightness(v)} (b* differs by ${span(v, "change", 1)}).`,
  "theory-leans": (v) =>
    `By theory ${within(textOf(v, "black"))} leans ${numberOf(v, "blueShare") >= 0.5 ? "blue" : "warm"} in ${within(textOf(v, "white"))} at L* ${lightness(v)} (b* ${span(v, "b", 0)}).`,
  "theory-lean-not-known": (v) =>
    `Theory cannot say which way ${within(textOf(v, "black"))} leans in ${within(textOf(v, "white"))} at L* ${lightness(v)} (b* ${span(v, "b", 0)}).`,
} as const satisfies Record<string, StatementWording>;

function losing(v: Values): string {
  return sentence(
    `when ${within(textOf(v, "component"))} has lost ${percent(numberOf(v, "loss"))} of its strength,`,
  ).replace(/\.$/, "");
}

function change(v: Values): string {
  return `\u0394E00\u00a0${decimals(numberOf(v, "deltaE00"), 1)}`;
}

function lightness(v: Values): string {
  return decimals(numberOf(v, "L"), 0);
}

/** A change without its sign, which the words around it give. */
function amount(v: Values): string {
  const [low, high] = ends(quantityOf(v, "change"))
    .map(Math.abs)
    .toSorted((one, other) => one - other);
  return decimals([certain(low), certain(high)], 1);
}

/** Ends that may be negative: "-4 to 3", since a dash between them would be read as another minus. */
function span(v: Values, key: string, places: number): string {
  const [low, high] = ends(quantityOf(v, key));
  return `${decimals(low, places)} to ${decimals(high, places)}`;
}
