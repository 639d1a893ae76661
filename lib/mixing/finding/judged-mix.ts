/** A found mixture with all that it is chosen by: its ±, what lamps make of it, and what is known of its tubes. */
import type { ByLamp } from "../../colorimetry/lamps.ts";
import { lamplight } from "../../colorimetry/lamplight.ts";
import { metamerism } from "../../colorimetry/metamerism.ts";
import type { JudgingObserver } from "../../colorimetry/viewing.ts";
import { isStatement, notRefused } from "../../quantities/statement.ts";
import { opacityRank } from "../../optics/films/opacity.ts";
import type { Mix } from "../mix.ts";
import type { MixingPaint } from "../mixing-paint.ts";
import type { MixingRange } from "../mixing-range.ts";
import { mixFacts, type MixFacts } from "../prediction/mix-facts.ts";
import { mixOpacity, type MixOpacity } from "../prediction/mix-opacity.ts";
import { predictedMix, type PredictedMix } from "../prediction/predicted-mix.ts";
import { finishedSpectrum, shownLab, type Shown } from "../prediction/seen-mix.ts";
import type { FoundMix } from "./found-mixes.ts";
import type { Target } from "./target.ts";

export interface JudgedMix extends FoundMix {
  /** Of the difference, 68 % [Delta-E00]: the prediction's and the target's own. */
  readonly p68: number;
  /** Whether it may as well be the target, as far as the figures tell. */
  readonly isWithin: boolean;
  readonly shown: Shown;
  /** Under each lamp [Delta-E00]: how it parts from the target, where the target was read; else how far it changes by itself. */
  readonly lamps: { readonly kind: "parts" | "shifts"; readonly deltaE00: ByLamp };
  readonly facts: MixFacts;
  /** Of a film as sheets judge by; absent where films do not tell. */
  readonly opacity?: MixOpacity;
}

/** What a mixture has to be beside its colour; absent: anything. */
export interface MixLimits {
  /** Metals that no paint of it holds. */
  readonly withoutMetals: readonly string[];
  /** Worst lightfastness of any of its paints, 1 excellent to 5. */
  readonly lightfastness?: number;
  /** Latest day that it is touch dry. */
  readonly days?: number;
  /** Most transparent, 1 opaque to 4. */
  readonly opacity?: number;
  /** Of 10 ml. */
  readonly price?: number;
  /** No paint with a signal word, or that nobody classified. */
  readonly isUnlabelled: boolean;
}

/** Whether a paint may be in a mixture at all. */
export function paintPasses(
  { facts, isDiscontinued = false }: MixingPaint,
  limits: MixLimits,
): boolean {
  const { withoutMetals, lightfastness, isUnlabelled } = limits;
  return (
    !isDiscontinued &&
    !facts.metals.some((metal) => withoutMetals.includes(metal)) &&
    (withoutMetals.length === 0 || !facts.warning.isUnknown) &&
    (lightfastness === undefined || (facts.lightfastness?.rank ?? Infinity) <= lightfastness) &&
    (!isUnlabelled || (facts.warning.signal === null && !facts.warning.isUnknown))
  );
}

/** Whether a mixture keeps to limits that only the whole of it tells; what is not known does not. */
export function mixPasses(
  mix: Mix,
  { days, opacity, price }: MixLimits,
  range: MixingRange,
): boolean {
  if (days === undefined && opacity === undefined && price === undefined) return true;
  const facts = mixFacts(mix, range);
  if (days !== undefined && !((facts.dryingDays?.[1] ?? Infinity) <= days)) return false;
  if (price !== undefined && !((facts.pricePer10Ml ?? Infinity) <= price)) return false;
  if (opacity === undefined) return true;
  const prediction = predictedMix(mix, range);
  const found = isStatement(prediction) ? undefined : mixOpacity(prediction, range);
  return found !== undefined && opacityRank(found.class) <= opacity;
}

/** @throws RangeError for a mixture that the range does not predict: it was found by the same models. */
export function judgedMix(found: FoundMix, target: Target, range: MixingRange): JudgedMix {
  const prediction = notRefused(predictedMix(found.mix, range));
  const p68 = Math.hypot(prediction.uncertainty.p68, target.p68);
  const opacity = mixOpacity(prediction, range);
  return {
    ...found,
    p68,
    isWithin: found.deltaE00 <= p68,
    shown: shownLab(found.lab),
    lamps: lampsOf(prediction, target, range.data.observer),
    facts: mixFacts(prediction.mass, range),
    ...(opacity !== undefined && { opacity }),
  };
}

function lampsOf(
  prediction: PredictedMix,
  target: Target,
  observer: JudgingObserver,
): JudgedMix["lamps"] {
  const spectrum = finishedSpectrum(prediction.spectrum, prediction, "glossy");
  if (target.spectrum === undefined)
    return { kind: "shifts", deltaE00: lamplight(spectrum, observer).deltaE00 };
  return { kind: "parts", deltaE00: metamerism(target.spectrum, spectrum, observer).index };
}

/** What recipes can be put in order by. */
export const ORDERS = ["fewest", "nearest", "drying", "lightfastness", "lamps", "price"] as const;
export type RecipeOrder = (typeof ORDERS)[number];

/** Before by the order, then those within the ± first, then the nearest. */
export function byOrder(order: RecipeOrder): (one: JudgedMix, other: JudgedMix) => number {
  const key: Readonly<Record<RecipeOrder, (one: JudgedMix) => number>> = {
    fewest: ({ mix }) => mix.colours.length,
    nearest: () => 0,
    drying: ({ facts }) => facts.dryingDays?.[1] ?? Infinity,
    lightfastness: ({ facts }) =>
      facts.lightfastness.unknown.length > 0 ? 6 : (facts.lightfastness.rank ?? 6),
    lamps: ({ lamps }) => Math.round(2 * Math.max(...Object.values(lamps.deltaE00))) / 2,
    price: ({ facts }) => facts.pricePer10Ml ?? Infinity,
  };
  const of = key[order];
  return (one, other) =>
    Number(other.isWithin) - Number(one.isWithin) ||
    compared(of(one), of(other)) ||
    one.deltaE00 - other.deltaE00;
}

function compared(one: number, other: number): number {
  return one === other ? 0 : one - other;
}
