import type { StatementWording } from "../words.ts";
import {
  bracketed,
  decimals,
  gramsTo100,
  listed,
  micrometres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./statements-phrases.ts";
import {
  hasValue,
  numberOf,
  quantityOf,
  textOf,
  textsOf,
  wordOf,
  type Values,
} from "./statement-params.ts";

const GRAINS = {
  "fine carbon": "fine carbon",
  fine: "a fine pigment",
  coarse: "a coarse pigment",
} as const;

/** Oil demand, packing, finish, dispersion, the batch at the slab. */
export const FORMULATION_RULINGS = {
  "oil-index-class": (v) =>
    `A ${textOf(v, "oilIndexClass")} oil index: ${gramsTo100(quantityOf(v, "oilIndexGPer100g"))}, in one class with ${suchAs(v)}.`,
  "oil-index-class-of-an-estimate": (v) =>
    `A ${textOf(v, "oilIndexClass")} oil index by the middle of the estimate (${gramsTo100(quantityOf(v, "oilIndexGPer100g"))}), which reaches ${fromTo(v)}.`,
  "working-paint-takes-more-than-rub-out": (v) =>
    `A working paint takes ${ratio(v)} times the oil of the rub-out figure (${gramsTo100(quantityOf(v, "oilAbsorptionGPer100g"))}), and the oil index is estimated from that.`,
  "rub-out-takes-less-than-working-paint": (v) =>
    `A working paint takes ${ratio(v)} times the oil of a rub-out, and the rub-out figure is estimated from the oil index (${gramsTo100(quantityOf(v, "oilIndexGPer100g"))}).`,
  "oil-index-below-rub-out": (v) =>
    `The oil index (${gramsTo100(numberOf(v, "oilIndexGPer100g"))}) lies below the rub-out figure (${gramsTo100(numberOf(v, "oilAbsorptionGPer100g"))}), at which the pigment only just holds together: one of the two is doubtful.`,
  "oil-index-far-above-rub-out": (v) =>
    `The oil index (${gramsTo100(numberOf(v, "oilIndexGPer100g"))}) is ${significant(numberOf(v, "ratio"), 2)} times the rub-out figure (${gramsTo100(numberOf(v, "oilAbsorptionGPer100g"))}); up to ${reachOf(v)} times is known, so one of the two is doubtful.`,
  "oil-absorption-by-rub-out": (v) =>
    `Oil absorption by ${textOf(v, "way")} (${textOf(v, "standard")}), the kind that CPVC is reckoned from.`,
  "oil-absorption-rubbed-out": (v) =>
    `Oil absorption by rub-out (${textOf(v, "method")}) to no standard that is named: the kind that CPVC is reckoned from.`,
  "oil-absorption-reads-higher": (v) =>
    `Oil absorption by ${textOf(v, "standard")} (${textOf(v, "way")}) reads higher than a rub-out, so the CPVC comes out too low.`,
  "oil-absorption-method-unknown": (v) =>
    `How the method of the oil absorption (${textOf(v, "method")}) reads beside a rub-out is not known here.`,
  "oil-absorption-method-not-stated": () =>
    "The method of the oil absorption is not recorded, and methods differ.",
  "handbook-range": (v) =>
    `Handbooks range over ${significant(quantityOf(v, "range"), 3)} for ${textOf(v, "colourIndexName")}${bracketed(namesWithin(textsOf(v, "kinds")))}.`,

  "high-oil-demand-low-cpvc": (v) =>
    `High oil demand: it takes ${oilVolume(v)} to fill the gaps of 100\u00a0cm\u00b3 of pigment, so the CPVC is low (${percent(quantityOf(v, "cpvc"))}).`,
  "low-oil-demand-high-cpvc": (v) =>
    `Low oil demand: ${oilVolume(v)} fill the gaps of 100\u00a0cm\u00b3 of pigment, so the CPVC is high (${percent(quantityOf(v, "cpvc"))}).`,
  "oil-alike": (v) =>
    `The two take oil alike, within ${times(v, "massRatio")} by mass and ${times(v, "volumeRatio")} by volume of pigment.`,
  "oil-differs-by-mass-alone": (v) =>
    hasValue(v, "more")
      ? `${textOf(v, "more")} takes ${times(v, "massRatio")} the oil of ${textOf(v, "less")} by mass; by volume of pigment the two lie within ${times(v, "volumeRatio")} of each other. Most of the difference is the weight of the pigment.`
      : `One takes ${times(v, "massRatio")} the oil of the other by mass, but only ${times(v, "volumeRatio")} by volume of pigment: most of the difference is the weight of the pigment.`,
  "oil-differs-by-volume-alone": (v) =>
    `One takes ${times(v, "volumeRatio")} the oil of the other by volume of pigment, which by mass (${times(v, "massRatio")}) hardly shows.`,
  "oil-differs-both-ways": (v) =>
    `One takes ${times(v, "massRatio")} the oil of the other by mass, and ${times(v, "volumeRatio")} by volume of pigment.`,

  "oil-in-excess": (v) => finish(v, "oil is in excess"),
  "oil-little-in-excess": (v) => finish(v, "oil is a little in excess"),
  "oil-just-fills": (v) => finish(v, "oil just fills the gaps"),
  "film-holds-voids": (v) => finish(v, "the film holds voids, which make it matte and paler"),
  "gloss-measured-gloss": (v) => gloss(v),
  "gloss-measured-semi-gloss": (v) => gloss(v),
  "gloss-measured-satin": (v) => gloss(v),
  "gloss-measured-matte": (v) => gloss(v),
  "glossier-than-expected": (v) =>
    `Read as ${textOf(v, "measured")} where ${expected(v)} was expected: the oil index on record may be too low, or the paste better opened than recorded.`,
  "duller-than-expected": (v) =>
    `Read as ${textOf(v, "measured")} where ${expected(v)} was expected: clumps may hold oil, or the ground drew it.`,

  "agglomerates-hold-oil": (v) =>
    `${upper(GRAINS[wordOf(v, "particle", GRAINS)])} stays partly in clumps, which hold oil: the paste acts by ${factor(v)} of its CPVC.`,
  "pigment-opened": () => "Well opened: no clumps hold oil, and the paste acts by its full CPVC.",
  "dispersion-unknown": (v) =>
    decimals(quantityOf(v, "factor"), 2) === "1.00"
      ? `How it was opened is not recorded; ${GRAINS[wordOf(v, "particle", GRAINS)]} acts by its full CPVC either way.`
      : `How it was opened is not recorded: clumps of ${GRAINS[wordOf(v, "particle", GRAINS)]} hold oil, so the paste may act by ${factor(v)} of its CPVC.`,
  "fineness-shows-the-grain": (v) =>
    `The gauge reads ${grind(v)}, the grain of a coarse pigment; it does not tell how well the paste is opened.`,
  "opened-as-if-milled": (v) =>
    `Mulled, and opened as if milled: the gauge reads ${grind(v)} (up to ${limit(v)} counts as opened).`,
  "opened-by-fineness": (v) =>
    `Well opened: the gauge reads ${grind(v)} (up to ${limit(v)} counts as opened).`,
  "milled-but-not-opened": (v) =>
    `Milled, and not opened: the gauge reads ${grind(v)} (up to ${limit(v)} counts as opened).`,
  "not-opened-by-fineness": (v) =>
    `Not opened: the gauge reads ${grind(v)} (up to ${limit(v)} counts as opened).`,

  "body-short": () => "Short body: the paste breaks off and stands where the knife leaves it.",
  "body-long": () => "Long body: the paste draws out and flows after the knife.",
  "body-stiff": () => "Stiff body: the paste resists the knife.",
  "body-ropy": () => "Ropy body: the paste draws out in strings.",
  "oil-stays-in": () => "The oil stays in the paste.",
  "oil-parts-slightly": () => "A little oil parts from the paste.",
  "oil-parts-markedly": () => "Oil parts markedly from the paste.",

  "paste-loosens-under-the-muller": (v) =>
    `Hold back ${percent(quantityOf(v, "fraction"))} of the oil and add it last, if it is wanted: a paste loosens under the muller.`,
  "paste-loosens-down-to-rub-out": (v) =>
    `Hold back ${percent(quantityOf(v, "fraction"))} of the oil and add it last: a paste loosens under the muller, but below the rub-out figure (${gramsTo100(numberOf(v, "oilAbsorptionGPer100g"))}) it does not hold together.`,
  "rub-out-takes-all-the-oil": (v) =>
    `Hold no oil back: the rub-out figure (${gramsTo100(numberOf(v, "oilAbsorptionGPer100g"))}) takes all of it.`,
  "loss-on-slab": (v) =>
    `Allow ${percent(quantityOf(v, "fraction"))} for paint left on slab and muller.`,
  "loss-on-mill": (v) => `Allow ${percent(quantityOf(v, "fraction"))} for paint left on the rolls.`,
  "loss-on-slab-or-mill": (v) =>
    `Allow ${percent(quantityOf(v, "fraction"))} for paint left on slab or mill.`,
  "fills-the-jar": (v) => `${filling(v)} it fills a jar of ${jar(v)} even when it has settled.`,
  "fills-until-it-settles": (v) =>
    `${filling(v)} it fills a jar of ${jar(v)} as poured, and no longer when it has settled.`,
  "does-not-fill-the-jar": (v) => `${filling(v)} it does not fill a jar of ${jar(v)}.`,
} as const satisfies Record<string, StatementWording>;

function suchAs(values: Values): string {
  return listed(textsOf(values, "suchAs"));
}

/** From the first to the last class that an estimate reaches into. */
function fromTo(values: Values): string {
  const spans = textsOf(values, "spans");
  return `from ${spans[0] ?? ""} to ${spans.at(-1) ?? ""}`;
}

function ratio(values: Values): string {
  return significant(quantityOf(values, "ratio"), 2);
}

function reachOf(values: Values): string {
  const reach = quantityOf(values, "reach");
  return significant(typeof reach === "number" ? reach : reach[1], 2);
}

function oilVolume(values: Values): string {
  return `${withUnit(significant(quantityOf(values, "oilCm3Per100Cm3"), 2), "cm\u00b3")} of oil`;
}

function times(values: Values, name: string): string {
  return `${decimals(numberOf(values, name), 1)} times`;
}

function finish(values: Values, because: string): string {
  const reach =
    textsOf(values, "spans").length > 1 ? `; the estimate reaches ${fromTo(values)}` : "";
  return sentence(
    `${textOf(values, "finish")} expected: PVC is ${decimals(quantityOf(values, "reducedPvc"), 2)} of the effective CPVC, so ${because}${reach}`,
  );
}

function gloss(values: Values): string {
  const better = hasValue(values, "betterAngle")
    ? `; ${numberOf(values, "betterAngle")}\u00b0 would tell more`
    : "";
  return sentence(
    `${textOf(values, "finish")} by measurement: ${withUnit(significant(numberOf(values, "gloss60"), 2), "gloss units")} at 60\u00b0${better}`,
  );
}

function expected(values: Values): string {
  return listed(textsOf(values, "expected"), "or");
}

function factor(values: Values): string {
  return decimals(quantityOf(values, "factor"), 2);
}

function grind(values: Values): string {
  return micrometres(numberOf(values, "finenessOfGrindUm"));
}

function limit(values: Values): string {
  return micrometres(numberOf(values, "limitUm"));
}

function filling(values: Values): string {
  const dry = hasValue(values, "pigment") ? ` of dry ${within(textOf(values, "pigment"))}` : "";
  return `${withUnit(significant(numberOf(values, "massG"), 3), "g")}${dry} take ${withUnit(significant(quantityOf(values, "takenMl"), 2), "ml")}, from settled to poured:`;
}

function jar(values: Values): string {
  return withUnit(significant(numberOf(values, "jarMl"), 3), "ml");
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
