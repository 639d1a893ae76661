import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { FINISHES, OIL_CLASSES, OIL_WAYS, wordOf } from "./closed-words.ts";
import { pigmentWord } from "../pigment-words.ts";
import {
  bracketed,
  decimals,
  gramsTo100,
  listed,
  micrometres,
  millilitres,
  namesWithin,
  of,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";

const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "un carbone fin",
  fine: "un pigment fin",
  coarse: "un pigment grossier",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** Oil demand, packing, finish, dispersion, the batch at the slab. */
export const FORMULATION_RULINGS: WordingsOf<FormulationStatement> = {
  "medium-holds-solvent": ({ mediums }) =>
    `On ignore quelle part ${of(namesWithin(mediums))} s’en va en séchant\u202f: il s’y trouve un solvant, et tout est compté comme film.`,
  "oil-index-class": ({ oilIndexClass, oilIndexGPer100g, suchAs }) =>
    `Un indice d’huile ${OIL_CLASSES[oilIndexClass]}\u202f: ${gramsTo100(oilIndexGPer100g)} en masse${suchAs.length === 0 ? "" : `, dans la même classe que ${listed(suchAs.map((one) => pigmentWord(one, "fr")))} dans la table de Church`}.`,
  "oil-index-class-of-an-estimate": ({ oilIndexClass, oilIndexGPer100g, spans }) =>
    `Un indice d’huile ${OIL_CLASSES[oilIndexClass]}, jugé au milieu de l’estimation (${gramsTo100(oilIndexGPer100g)} en masse)\u202f; l’estimation va ${fromTo(spans, OIL_CLASSES)}.`,
  "working-paint-takes-more-than-rub-out": ({ ratio, oilAbsorptionGPer100g }) =>
    `Une peinture prête à l’emploi demande ${significant(ratio, 2)} fois l’huile de la prise d’huile (${gramsTo100(oilAbsorptionGPer100g)}), et l’indice d’huile en est estimé.`,
  "rub-out-takes-less-than-working-paint": ({ ratio, oilIndexGPer100g }) =>
    `Une peinture prête à l’emploi demande ${significant(ratio, 2)} fois l’huile de la prise d’huile, et celle-ci est estimée d’après l’indice d’huile (${gramsTo100(oilIndexGPer100g)}).`,
  "oil-index-below-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g }) =>
    `L’indice d’huile (${gramsTo100(oilIndexGPer100g)}) est au-dessous de la prise d’huile (${gramsTo100(oilAbsorptionGPer100g)}), où le pigment se tient tout juste\u202f: l’un des deux chiffres est douteux.`,
  "oil-index-far-above-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g, ratio, reach }) =>
    `L’indice d’huile (${gramsTo100(oilIndexGPer100g)}) est ${significant(ratio, 2)} fois la prise d’huile (${gramsTo100(oilAbsorptionGPer100g)})\u202f; le plus qu’on connaisse est ${significant(reach[1], 2)} fois, et l’un des deux chiffres est donc douteux.`,
  "oil-absorption-by-rub-out": ({ way, standard }) =>
    `Prise d’huile par ${OIL_WAYS[way]} (${standard}), celle dont on calcule la CPVC.`,
  "oil-absorption-rubbed-out": ({ method }) =>
    `Prise d’huile par empâtage (${method}), sans norme nommée\u202f: celle dont on calcule la CPVC.`,
  "oil-absorption-reads-higher": ({ standard, way }) =>
    `La prise d’huile selon ${standard} (${OIL_WAYS[way]}) donne plus qu’un empâtage au couteau, et la CPVC en sort trop basse.`,
  "oil-absorption-method-unknown": ({ method }) =>
    `Comment la méthode employée pour la prise d’huile (${method}) se compare à un empâtage au couteau, nous ne le savons pas.`,
  "oil-absorption-method-not-stated": () =>
    "La méthode de la prise d’huile n’est pas consignée, et les méthodes diffèrent.",
  "handbook-range": ({ range, colourIndexName, kinds }) =>
    `Les manuels donnent ${significant(range, 3)} pour ${colourIndexName}${bracketed(listed(kinds.map((kind) => pigmentWord(kind, "fr"))))}.`,

  "high-oil-demand-low-cpvc": (v) =>
    `En volume, sa demande en huile est élevée\u202f: ${fillsTheGaps(v)}, et la CPVC est basse (${percent(v.cpvc)}).`,
  "middling-oil-demand": (v) =>
    `En volume, sa demande en huile est moyenne\u202f: ${fillsTheGaps(v)}, et la CPVC est de ${percent(v.cpvc)}.`,
  "low-oil-demand-high-cpvc": (v) =>
    `En volume, sa demande en huile est faible\u202f: ${fillsTheGaps(v)}, et la CPVC est haute (${percent(v.cpvc)}).`,
  "oil-alike": (v) =>
    `Les deux demandent à peu près autant d’huile, à ${times(v.massRatio)} près en masse et à ${times(v.volumeRatio)} près par volume de pigment.`,
  "oil-differs-by-mass-alone": ({ massRatio, volumeRatio, more, less }) =>
    more !== undefined && less !== undefined
      ? `${more} demande ${times(massRatio)} l’huile ${of(less)} en masse\u202f; par volume de pigment les deux se tiennent à ${times(volumeRatio)} près. L’essentiel de l’écart est le poids du pigment.`
      : `L’une demande ${times(massRatio)} l’huile de l’autre en masse, mais seulement ${times(volumeRatio)} par volume de pigment\u202f: l’essentiel de l’écart est le poids du pigment.`,
  "oil-differs-by-volume-alone": ({ massRatio, volumeRatio }) =>
    `L’une demande ${times(volumeRatio)} l’huile de l’autre par volume de pigment, bien qu’en masse (${times(massRatio)}) cela se voie à peine.`,
  "oil-differs-both-ways": ({ massRatio, volumeRatio }) =>
    `L’une demande ${times(massRatio)} l’huile de l’autre en masse, et ${times(volumeRatio)} par volume de pigment.`,

  "oil-in-excess": (v) => finish(v, "l’huile est en excès"),
  "oil-little-in-excess": (v) => finish(v, "l’huile est un peu en excès"),
  "oil-just-fills": (v) => finish(v, "l’huile comble tout juste les vides"),
  "film-holds-voids": (v) => finish(v, "le film a des vides, qui le rendent mat et plus pâle"),
  "clumps-make-voids": ({ finish: expected, reducedPvc, reducedPvcOpened }) =>
    sentence(
      `${FINISHES[expected]} à prévoir malgré son huile\u202f: broyée à fond, sa CPV serait de ${decimals(reducedPvcOpened, 2)} de la CPVC, mais les amas retiennent de l’huile\u202f; elle est de ${decimals(reducedPvc, 2)} et le film a des vides`,
    ),
  "finish-not-told": ({ reducedPvc }) =>
    `Nous ne pouvons dire quel aspect prévoir\u202f: la CPV est de ${decimals(reducedPvc, 2)} de la CPVC effective, ce qui peut aller du brillant au mat.`,
  "gloss-measured": ({ finish: measured, gloss60, betterAngle }) =>
    sentence(
      `${FINISHES[measured]} selon la mesure\u202f: ${withUnit(significant(gloss60, 2), "unités de brillance")} à 60\u00b0${betterAngle === undefined ? "" : `\u202f; ${betterAngle}\u00b0 en diraient plus`}`,
    ),
  "glossier-than-expected": ({ measured, expected }) =>
    `Mesuré ${FINISHES[measured]} là où l’on attendait ${expectedText(expected)}\u202f: l’indice d’huile consigné est peut-être trop bas, ou la pâte mieux broyée qu’il n’est noté.`,
  "duller-than-expected": ({ measured, expected }) =>
    `Mesuré ${FINISHES[measured]} là où l’on attendait ${expectedText(expected)}\u202f: des amas retiennent peut-être de l’huile, ou la préparation l’a bue.`,

  "agglomerates-hold-oil": ({ particle, factor }) =>
    sentence(
      `${GRAINS[particle]} reste en partie en amas, qui retiennent de l’huile\u202f: la pâte se comporte comme si sa CPVC était de ${decimals(factor, 2)} de la pleine`,
    ),
  "pigment-opened": () =>
    "Broyé à fond\u202f: aucun amas ne retient d’huile, et la pleine CPVC compte.",
  "coarse-pigment-opens": () =>
    "Un pigment grossier se broie à la molette aussi bien qu’à la machine\u202f: la pleine CPVC compte.",
  "dispersion-unknown": ({ particle, factor }) =>
    `Comment il a été broyé n’est pas consigné\u202f: des amas ${of(GRAINS[particle])} retiennent de l’huile, et la pâte peut se comporter comme si sa CPVC était de ${decimals(factor, 2)} de la pleine.`,
  "fineness-shows-the-grain": ({ finenessOfGrindUm }) =>
    `La jauge marque ${micrometres(finenessOfGrindUm)}, ce qui est le grain d’un pigment grossier\u202f; elle ne montre pas si la pâte est bien broyée.`,
  "opened-as-if-milled": (v) =>
    `À la molette, et broyé aussi fin qu’à la machine\u202f: ${gauge(v)}.`,
  "opened-by-fineness": (v) => `Bien broyé\u202f: ${gauge(v)}.`,
  "milled-but-not-opened": (v) => `À la machine, mais pas broyé à fond\u202f: ${gauge(v)}.`,
  "not-opened-by-fineness": (v) => `Pas broyé à fond\u202f: ${gauge(v)}.`,

  "body-short": () => "Corps court\u202f: la pâte casse et reste où le couteau la pose.",
  "body-long": () => "Corps long\u202f: la pâte s’étire et suit le couteau.",
  "body-stiff": () => "Corps ferme\u202f: la pâte résiste au couteau.",
  "body-ropy": () => "Corps filant\u202f: la pâte s’étire en fils.",
  "oil-stays-in": () => "L’huile reste dans la pâte.",
  "oil-parts-slightly": () => "Un peu d’huile se sépare de la pâte.",
  "oil-parts-markedly": () => "L’huile se sépare de la pâte\u202f: pétrir le tube avant l’emploi.",

  "paste-loosens-under-the-muller": ({ fraction }) =>
    `Garder ${percent(fraction)} de l’huile et ne l’ajouter qu’à la fin, au besoin\u202f: une pâte se relâche sous la molette.`,
  "paste-loosens-down-to-rub-out": ({ fraction, oilAbsorptionGPer100g }) =>
    `Garder ${percent(fraction)} de l’huile et l’ajouter à la fin\u202f: une pâte se relâche sous la molette, mais au-dessous de la prise d’huile (${gramsTo100(oilAbsorptionGPer100g)}) elle ne se tient pas.`,
  "rub-out-takes-all-the-oil": ({ oilAbsorptionGPer100g }) =>
    `Ne pas garder d’huile\u202f: la prise d’huile (${gramsTo100(oilAbsorptionGPer100g)}) la prend toute.`,
  "loss-on-slab": ({ fraction }) =>
    `Compter ${percent(fraction)} pour la peinture qui reste sur le marbre et la molette.`,
  "loss-on-mill": ({ fraction }) =>
    `Compter ${percent(fraction)} pour la peinture qui reste sur les cylindres.`,
  "loss-on-slab-or-mill": ({ fraction }) =>
    `Compter ${percent(fraction)} pour la peinture qui reste sur le marbre ou la broyeuse.`,
  "loss-of-lots": ({ fraction, lots }) =>
    lots === 1
      ? `Compter ${percent(fraction)}\u202f: c’est ce qu’a perdu notre seul lot.`
      : `Compter ${percent(fraction)}\u202f: c’est ce qu’ont perdu nos ${lots} lots.`,
  "lots-lighter-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Notre seul lot pèse" : `Nos ${lots} lots pèsent`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, alors que de ce qui y entre on attendrait ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}\u202f: il s’y trouve de l’air, ou un indice d’huile ou une masse volumique de pigment consignés sont inexacts. C’est la pesée qui compte.`,
  "lots-heavier-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Notre seul lot pèse" : `Nos ${lots} lots pèsent`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, alors que de ce qui y entre on attendrait ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}\u202f: un indice d’huile ou une masse volumique de pigment consignés sont inexacts. C’est la pesée qui compte.`,
  "fills-the-jar": (v) =>
    `${filling(v)} remplit un pot de ${millilitres(v.jarMl)}, même une fois tassé.`,
  "fills-until-it-settles": (v) =>
    `${filling(v)} remplit un pot de ${millilitres(v.jarMl)} au moment où on le verse, mais plus une fois tassé.`,
  "does-not-fill-the-jar": (v) => `${filling(v)} ne remplit pas un pot de ${millilitres(v.jarMl)}.`,
};

/** From the first to the last class that an estimate reaches into. */
function fromTo(spans: readonly string[], words: Readonly<Record<string, string>>): string {
  return `de ${wordOf(words, spans[0] ?? "")} à ${wordOf(words, spans.at(-1) ?? "")}`;
}

function expectedText(finishes: readonly string[]): string {
  return listed(
    finishes.map((one) => wordOf(FINISHES, one)),
    "or",
  );
}

function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} d’huile comblent les vides de 100\u00a0cm\u00b3 de pigment`;
}

function times(ratio: number): string {
  return `${decimals(ratio, 1)} fois`;
}

function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach = spans.length > 1 ? `\u202f; l’estimation va ${fromTo(spans, FINISHES)}` : "";
  return sentence(
    `${FINISHES[expected]} à prévoir\u202f: la CPV est de ${decimals(reducedPvc, 2)} de la CPVC effective, donc ${because}${reach}`,
  );
}

function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `la jauge marque ${micrometres(finenessOfGrindUm)} (jusqu’à ${micrometres(limitUm)} on le compte pour bien broyé)`;
}

function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} ${of(within(pigment))} sec occupent ${withUnit(significant(takenMl, 2), "ml")}, tassé ou non\u202f: cela`;
}
