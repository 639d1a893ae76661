import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import {
  bracketed,
  decimals,
  gramsTo100,
  listed,
  micrometres,
  millilitres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";

const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "fine carbon",
  fine: "a fine pigment",
  coarse: "a coarse pigment",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** Oil demand, packing, finish, dispersion, the batch at the slab. */
export const FORMULATION_RULINGS: WordingsOf<FormulationStatement> = {
  "medium-holds-solvent": ({ mediums }) =>
    `We do not know how much of ${namesWithin(mediums)} dries away: ${mediums.length > 1 ? "they hold" : "it holds"} a solvent, and all is reckoned as film.`,
  "oil-index-class": ({ oilIndexClass, oilIndexGPer100g, suchAs }) =>
    `A ${oilIndexClass} oil index: ${gramsTo100(oilIndexGPer100g)} by mass${suchAs.length === 0 ? "" : `, in one class with ${listed(suchAs)} in Church's table`}.`,
  "oil-index-class-of-an-estimate": ({ oilIndexClass, oilIndexGPer100g, spans }) =>
    `A ${oilIndexClass} oil index, judged by the middle of the estimate (${gramsTo100(oilIndexGPer100g)} by mass); the estimate runs ${fromTo(spans)}.`,
  "working-paint-takes-more-than-rub-out": ({ ratio, oilAbsorptionGPer100g }) =>
    `A working paint takes ${significant(ratio, 2)} times the oil of the rub-out figure (${gramsTo100(oilAbsorptionGPer100g)}), and the oil index is estimated from that.`,
  "rub-out-takes-less-than-working-paint": ({ ratio, oilIndexGPer100g }) =>
    `A working paint takes ${significant(ratio, 2)} times the oil of a rub-out, and the rub-out figure is estimated from the oil index (${gramsTo100(oilIndexGPer100g)}).`,
  "oil-index-below-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g }) =>
    `The oil index (${gramsTo100(oilIndexGPer100g)}) lies below the rub-out figure (${gramsTo100(oilAbsorptionGPer100g)}), at which the pigment only just holds together: one of the two is doubtful.`,
  "oil-index-far-above-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g, ratio, reach }) =>
    `The oil index (${gramsTo100(oilIndexGPer100g)}) is ${significant(ratio, 2)} times the rub-out figure (${gramsTo100(oilAbsorptionGPer100g)}); the most on record is ${significant(reach[1], 2)} times, so one of the two is doubtful.`,
  "oil-absorption-by-rub-out": ({ way, standard }) =>
    `Oil absorption by ${way} (${standard}), the kind that CPVC is worked out from.`,
  "oil-absorption-rubbed-out": ({ method }) =>
    `Oil absorption by rub-out (${method}), no standard named: the kind that CPVC is worked out from.`,
  "oil-absorption-reads-higher": ({ standard, way }) =>
    `Oil absorption by ${standard} (${way}) reads higher than a rub-out, so the CPVC comes out too low.`,
  "oil-absorption-method-unknown": ({ method }) =>
    `How the method used for the oil absorption (${method}) compares with a rub-out, we do not know.`,
  "oil-absorption-method-not-stated": () =>
    "The method of the oil absorption is not recorded, and methods differ.",
  "handbook-range": ({ range, colourIndexName, kinds }) =>
    `Handbooks give ${significant(range, 3)} for ${colourIndexName}${bracketed(namesWithin(kinds))}.`,

  "high-oil-demand-low-cpvc": (v) =>
    `By volume its oil demand is high: ${fillsTheGaps(v)}, so the CPVC is low (${percent(v.cpvc)}).`,
  "middling-oil-demand": (v) =>
    `By volume its oil demand is middling: ${fillsTheGaps(v)}, and the CPVC is ${percent(v.cpvc)}.`,
  "low-oil-demand-high-cpvc": (v) =>
    `By volume its oil demand is low: ${fillsTheGaps(v)}, so the CPVC is high (${percent(v.cpvc)}).`,
  "oil-alike": (v) =>
    `The two take about the same oil, within ${times(v.massRatio)} by mass and ${times(v.volumeRatio)} by volume of pigment.`,
  "oil-differs-by-mass-alone": ({ massRatio, volumeRatio, more, less }) =>
    more !== undefined && less !== undefined
      ? `${more} takes ${times(massRatio)} the oil of ${less} by mass; by volume of pigment the two lie within ${times(volumeRatio)} of each other. Most of the difference is the weight of the pigment.`
      : `One takes ${times(massRatio)} the oil of the other by mass, but only ${times(volumeRatio)} by volume of pigment: most of the difference is the weight of the pigment.`,
  "oil-differs-by-volume-alone": ({ massRatio, volumeRatio }) =>
    `One takes ${times(volumeRatio)} the oil of the other by volume of pigment, though by mass (${times(massRatio)}) it hardly shows.`,
  "oil-differs-both-ways": ({ massRatio, volumeRatio }) =>
    `One takes ${times(massRatio)} the oil of the other by mass, and ${times(volumeRatio)} by volume of pigment.`,

  "oil-in-excess": (v) => finish(v, "oil is in excess"),
  "oil-little-in-excess": (v) => finish(v, "oil is a little in excess"),
  "oil-just-fills": (v) => finish(v, "oil just fills the gaps"),
  "film-holds-voids": (v) => finish(v, "the film holds voids, which make it matte and paler"),
  "clumps-make-voids": ({ finish: expected, reducedPvc, reducedPvcOpened }) =>
    sentence(
      `${expected} expected in spite of its oil: fully ground, its PVC would be ${decimals(reducedPvcOpened, 2)} of the CPVC, but clumps hold oil, so it is ${decimals(reducedPvc, 2)} and the film holds voids`,
    ),
  "finish-not-told": ({ reducedPvc }) =>
    `We cannot say which finish to expect: the PVC is ${decimals(reducedPvc, 2)} of the effective CPVC, which may mean anything from gloss to matte.`,
  "gloss-measured": ({ finish: measured, gloss60, betterAngle }) =>
    sentence(
      `${measured} by measurement: ${withUnit(significant(gloss60, 2), "gloss units")} at 60\u00b0${betterAngle === undefined ? "" : `; ${betterAngle}\u00b0 would tell more`}`,
    ),
  "glossier-than-expected": ({ measured, expected }) =>
    `Read as ${measured} where ${listed(expected, "or")} was expected: the oil index on record may be too low, or the paste better ground than recorded.`,
  "duller-than-expected": ({ measured, expected }) =>
    `Read as ${measured} where ${listed(expected, "or")} was expected: clumps may hold oil, or the ground drew it out.`,

  "agglomerates-hold-oil": ({ particle, factor }) =>
    sentence(
      `${GRAINS[particle]} stays partly in clumps, which hold oil: the paste behaves as if its CPVC were ${decimals(factor, 2)} of the full one`,
    ),
  "pigment-opened": () => "Fully ground: no clumps hold oil, and the full CPVC counts.",
  "coarse-pigment-opens": () =>
    "A coarse pigment grinds out by hand as well as by mill: the full CPVC counts.",
  "dispersion-unknown": ({ particle, factor }) =>
    `How it was ground is not recorded: clumps of ${GRAINS[particle]} hold oil, so the paste may behave as if its CPVC were ${decimals(factor, 2)} of the full one.`,
  "fineness-shows-the-grain": ({ finenessOfGrindUm }) =>
    `The gauge reads ${micrometres(finenessOfGrindUm)}, which is the grain of a coarse pigment; it does not show how well the paste is ground.`,
  "opened-as-if-milled": (v) => `Mulled, and ground as fine as from a mill: ${gauge(v)}.`,
  "opened-by-fineness": (v) => `Well ground: ${gauge(v)}.`,
  "milled-but-not-opened": (v) => `Milled, but not fully ground: ${gauge(v)}.`,
  "not-opened-by-fineness": (v) => `Not fully ground: ${gauge(v)}.`,

  "body-short": () => "Short body: the paste breaks off and stands where the knife leaves it.",
  "body-long": () => "Long body: the paste draws out and flows after the knife.",
  "body-stiff": () => "Stiff body: the paste resists the knife.",
  "body-ropy": () => "Ropy body: the paste draws out in strings.",
  "oil-stays-in": () => "The oil stays in the paste.",
  "oil-parts-slightly": () => "A little oil separates from the paste.",
  "oil-parts-markedly": () => "Oil separates from the paste: knead the tube before use.",

  "paste-loosens-under-the-muller": ({ fraction }) =>
    `Hold back ${percent(fraction)} of the oil and add it last, only if needed: a paste loosens under the muller.`,
  "paste-loosens-down-to-rub-out": ({ fraction, oilAbsorptionGPer100g }) =>
    `Hold back ${percent(fraction)} of the oil and add it last: a paste loosens under the muller, but below the rub-out figure (${gramsTo100(oilAbsorptionGPer100g)}) it does not hold together.`,
  "rub-out-takes-all-the-oil": ({ oilAbsorptionGPer100g }) =>
    `Hold no oil back: the rub-out figure (${gramsTo100(oilAbsorptionGPer100g)}) takes all of it.`,
  "loss-on-slab": ({ fraction }) => `Allow ${percent(fraction)} for paint left on slab and muller.`,
  "loss-on-mill": ({ fraction }) => `Allow ${percent(fraction)} for paint left on the rolls.`,
  "loss-on-slab-or-mill": ({ fraction }) =>
    `Allow ${percent(fraction)} for paint left on slab or mill.`,
  "loss-of-lots": ({ fraction, lots }) =>
    lots === 1
      ? `Allow ${percent(fraction)}: so much our one lot lost.`
      : `Allow ${percent(fraction)}: so much our ${lots} lots lost.`,
  "lots-lighter-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Our one lot weighs" : `Our ${lots} lots weigh`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, and from what is in them ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")} would follow: they hold air, or an oil index or a pigment\u2019s density on record is off. What was weighed counts.`,
  "lots-heavier-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Our one lot weighs" : `Our ${lots} lots weigh`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, and from what is in them ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")} would follow: an oil index or a pigment\u2019s density on record is off. What was weighed counts.`,
  "fills-the-jar": (v) =>
    `${filling(v)} it fills a jar of ${millilitres(v.jarMl)} even when it has settled.`,
  "fills-until-it-settles": (v) =>
    `${filling(v)} it fills a jar of ${millilitres(v.jarMl)} when just poured, but not once it has settled.`,
  "does-not-fill-the-jar": (v) =>
    `${filling(v)} it does not fill a jar of ${millilitres(v.jarMl)}.`,
};

/** From the first to the last class that an estimate reaches into. */
function fromTo(spans: readonly string[]): string {
  return `from ${spans[0] ?? ""} to ${spans.at(-1) ?? ""}`;
}

function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} of oil fill the gaps of 100\u00a0cm\u00b3 of pigment`;
}

function times(ratio: number): string {
  return `${decimals(ratio, 1)} times`;
}

function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach = spans.length > 1 ? `; the estimate reaches ${fromTo(spans)}` : "";
  return sentence(
    `${expected} expected: PVC is ${decimals(reducedPvc, 2)} of the effective CPVC, so ${because}${reach}`,
  );
}

function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `the gauge reads ${micrometres(finenessOfGrindUm)} (up to ${micrometres(limitUm)} counts as well ground)`;
}

function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} of dry ${within(pigment)} take ${withUnit(significant(takenMl, 2), "ml")}, from settled to poured:`;
}
