import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { OilAbsorptionMethod } from "../../formulation/oil-absorption-method.ts";
import type { Finish } from "../../formulation/finish.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { FINISH_WORDS, OIL_INDEX_WORDS } from "./closed-sets.ts";
import { pigmentWord } from "../pigment-words.ts";
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

/** Whose clumps hold oil, after "Agglomerate". */
const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "feinen Kohlenstoffs",
  fine: "eines feinen Pigments",
  coarse: "eines groben Pigments",
};

const WAYS: Readonly<Record<OilAbsorptionMethod["way"], string>> = {
  "spatula rub-out": "Anreiben mit dem Spatel",
  "palette-knife rub-out": "Anreiben mit dem Palettenmesser",
  "stirred to a soft ball": "Rühren zur weichen Kugel",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** Oil demand, packing, finish, dispersion, the batch at the slab. */
export const FORMULATION_RULINGS: WordingsOf<FormulationStatement> = {
  "medium-holds-solvent": ({ mediums }) =>
    `Wie viel von ${namesWithin(mediums)} wegtrocknet, ist nicht bekannt: Lösemittel ist darin, und alles ist als Film gerechnet.`,
  "oil-index-class": ({ oilIndexClass, oilIndexGPer100g, suchAs }) =>
    `Ölindex ${OIL_INDEX_WORDS[oilIndexClass]}: ${gramsTo100(oilIndexGPer100g)} nach Masse${suchAs.length === 0 ? "" : `, in einer Klasse mit ${listed(suchAs.map((name) => pigmentWord(name, "de")))} in Churchs Tabelle`}.`,
  "oil-index-class-of-an-estimate": ({ oilIndexClass, oilIndexGPer100g, spans }) =>
    `Ölindex ${OIL_INDEX_WORDS[oilIndexClass]}, nach der Mitte der Schätzung beurteilt (${gramsTo100(oilIndexGPer100g)} nach Masse); die Schätzung reicht ${fromTo(spans.map((each) => OIL_INDEX_WORDS[each]))}.`,
  "working-paint-takes-more-than-rub-out": ({ ratio, oilAbsorptionGPer100g }) =>
    `Eine gebrauchsfertige Farbe nimmt das ${significant(ratio, 2)}-Fache der Ölzahl auf (${gramsTo100(oilAbsorptionGPer100g)}); daraus ist der Ölindex geschätzt.`,
  "rub-out-takes-less-than-working-paint": ({ ratio, oilIndexGPer100g }) =>
    `Eine gebrauchsfertige Farbe nimmt das ${significant(ratio, 2)}-Fache der Ölzahl auf; die Ölzahl ist aus dem Ölindex geschätzt (${gramsTo100(oilIndexGPer100g)}).`,
  "oil-index-below-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g }) =>
    `Der Ölindex (${gramsTo100(oilIndexGPer100g)}) liegt unter der Ölzahl (${gramsTo100(oilAbsorptionGPer100g)}), bei der das Pigment gerade eben zusammenhält: einer der beiden Werte ist zweifelhaft.`,
  "oil-index-far-above-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g, ratio, reach }) =>
    `Der Ölindex (${gramsTo100(oilIndexGPer100g)}) ist das ${significant(ratio, 2)}-Fache der Ölzahl (${gramsTo100(oilAbsorptionGPer100g)}); das Höchste, was bekannt ist, ist das ${significant(reach[1], 2)}-Fache, einer der beiden Werte ist also zweifelhaft.`,
  "oil-absorption-by-rub-out": ({ way, standard }) =>
    `Ölzahl durch ${WAYS[way]} (${standard}), die Art, aus der die KPVK errechnet wird.`,
  "oil-absorption-rubbed-out": ({ method }) =>
    `Ölzahl durch Anreiben (${method}), ohne Angabe einer Norm: die Art, aus der die KPVK errechnet wird.`,
  "oil-absorption-reads-higher": ({ standard, way }) =>
    `Die Ölzahl nach ${standard} (${WAYS[way]}) liegt höher als beim Anreiben, die KPVK kommt daher zu niedrig heraus.`,
  "oil-absorption-method-unknown": ({ method }) =>
    `Wie sich das Verfahren der Ölzahl (${method}) zum Anreiben verhält, wissen wir nicht.`,
  "oil-absorption-method-not-stated": () =>
    "Das Verfahren der Ölzahl ist nicht aufgezeichnet, und Verfahren unterscheiden sich.",
  "handbook-range": ({ range, colourIndexName, kinds }) =>
    `Handbücher nennen ${significant(range, 3)} für ${colourIndexName}${bracketed(listed(kinds.map((kind) => pigmentWord(kind, "de"))))}.`,

  "high-oil-demand-low-cpvc": (v) =>
    `Nach Volumen ist der Ölbedarf hoch: ${fillsTheGaps(v)}, die KPVK ist daher niedrig (${percent(v.cpvc)}).`,
  "middling-oil-demand": (v) =>
    `Nach Volumen ist der Ölbedarf mittel: ${fillsTheGaps(v)}, die KPVK liegt bei ${percent(v.cpvc)}.`,
  "low-oil-demand-high-cpvc": (v) =>
    `Nach Volumen ist der Ölbedarf niedrig: ${fillsTheGaps(v)}, die KPVK ist daher hoch (${percent(v.cpvc)}).`,
  "oil-alike": (v) =>
    `Die beiden nehmen etwa gleich viel Öl auf: nach Masse unterscheiden sie sich höchstens um das ${fold(v.massRatio)}, nach Volumen des Pigments höchstens um das ${fold(v.volumeRatio)}.`,
  "oil-differs-by-mass-alone": ({ massRatio, volumeRatio, more, less }) =>
    more !== undefined && less !== undefined
      ? `${more} nimmt nach Masse ${times(massRatio)} so viel Öl auf wie ${less}; nach Volumen des Pigments unterscheiden sich die beiden höchstens um das ${fold(volumeRatio)}. Der Unterschied ist vor allem das Gewicht des Pigments.`
      : `Die eine nimmt nach Masse ${times(massRatio)} so viel Öl auf wie die andere, nach Volumen des Pigments nur ${times(volumeRatio)} so viel: der Unterschied ist vor allem das Gewicht des Pigments.`,
  "oil-differs-by-volume-alone": ({ massRatio, volumeRatio }) =>
    `Die eine nimmt nach Volumen des Pigments ${times(volumeRatio)} so viel Öl auf wie die andere, auch wenn es sich nach Masse (${times(massRatio)}) kaum zeigt.`,
  "oil-differs-both-ways": ({ massRatio, volumeRatio }) =>
    `Die eine nimmt nach Masse ${times(massRatio)} so viel Öl auf wie die andere, nach Volumen des Pigments ${times(volumeRatio)} so viel.`,

  "oil-in-excess": (v) => finish(v, "Öl ist im Überschuss"),
  "oil-little-in-excess": (v) => finish(v, "Öl ist leicht im Überschuss"),
  "oil-just-fills": (v) => finish(v, "das Öl füllt die Lücken gerade"),
  "film-holds-voids": (v) => finish(v, "der Film hat Hohlräume, die ihn matt und heller machen"),
  "clumps-make-voids": ({ finish: expected, reducedPvc, reducedPvcOpened }) =>
    sentence(
      `${FINISH_WORDS[expected]} zu erwarten, trotz ihres Öls: vollständig dispergiert läge die PVK bei ${decimals(reducedPvcOpened, 2)} der KPVK, doch Agglomerate halten Öl fest; so liegt sie bei ${decimals(reducedPvc, 2)}, und der Film hat Hohlräume`,
    ),
  "finish-not-told": ({ reducedPvc }) =>
    `Welcher Glanzgrad zu erwarten ist, lässt sich nicht sagen: die PVK liegt bei ${decimals(reducedPvc, 2)} der wirksamen KPVK, das kann alles von glänzend bis matt heißen.`,
  "gloss-measured": ({ finish: measured, gloss60, betterAngle }) =>
    sentence(
      `${FINISH_WORDS[measured]} nach Messung: ${withUnit(significant(gloss60, 2), "Glanzeinheiten")} bei 60\u00b0${betterAngle === undefined ? "" : `; ${betterAngle}\u00b0 sagte mehr`}`,
    ),
  "glossier-than-expected": ({ measured, expected }) =>
    `${asRead(measured, expected)}: der aufgezeichnete Ölindex kann zu niedrig sein, oder die Paste besser dispergiert als aufgezeichnet.`,
  "duller-than-expected": ({ measured, expected }) =>
    `${asRead(measured, expected)}: Agglomerate können Öl festhalten, oder der Grund hat es herausgezogen.`,

  "agglomerates-hold-oil": ({ particle, factor }) =>
    `Ein Teil bleibt als Agglomerate ${GRAINS[particle]}, die Öl festhalten: die Paste verhält sich, als läge ihre KPVK bei ${decimals(factor, 2)} der vollen.`,
  "pigment-opened": () =>
    "Vollständig dispergiert: keine Agglomerate halten Öl fest, und die volle KPVK gilt.",
  "coarse-pigment-opens": () =>
    "Ein grobes Pigment lässt sich von Hand so gut anreiben wie auf der Walze: die volle KPVK gilt.",
  "dispersion-unknown": ({ particle, factor }) =>
    `Wie angerieben wurde, ist nicht aufgezeichnet: Agglomerate ${GRAINS[particle]} halten Öl fest, die Paste kann sich daher verhalten, als läge ihre KPVK bei ${decimals(factor, 2)} der vollen.`,
  "fineness-shows-the-grain": ({ finenessOfGrindUm }) =>
    `Das Grindometer zeigt ${micrometres(finenessOfGrindUm)}, das Korn eines groben Pigments; wie gut die Paste dispergiert ist, zeigt es nicht.`,
  "opened-as-if-milled": (v) => `Von Hand angerieben, so fein wie von der Walze: ${gauge(v)}.`,
  "opened-by-fineness": (v) => `Gut dispergiert: ${gauge(v)}.`,
  "milled-but-not-opened": (v) => `Gewalzt, aber nicht vollständig dispergiert: ${gauge(v)}.`,
  "not-opened-by-fineness": (v) => `Nicht vollständig dispergiert: ${gauge(v)}.`,

  "body-short": () => "Kurze Konsistenz: die Paste reißt ab und steht, wo der Spachtel sie lässt.",
  "body-long": () => "Lange Konsistenz: die Paste zieht sich und fließt dem Spachtel nach.",
  "body-stiff": () => "Steife Konsistenz: die Paste widersteht dem Spachtel.",
  "body-ropy": () => "Fadenziehende Konsistenz: die Paste zieht Fäden.",
  "oil-stays-in": () => "Das Öl bleibt in der Paste.",
  "oil-parts-slightly": () => "Ein wenig Öl scheidet sich von der Paste ab.",
  "oil-parts-markedly": () =>
    "Öl scheidet sich von der Paste ab: die Tube vor Gebrauch durchkneten.",

  "paste-loosens-under-the-muller": ({ fraction }) =>
    `Halten Sie ${percent(fraction)} des Öls zurück und geben Sie es zuletzt zu, nur wenn nötig: eine Paste wird unter dem Läufer weicher.`,
  "paste-loosens-down-to-rub-out": ({ fraction, oilAbsorptionGPer100g }) =>
    `Halten Sie ${percent(fraction)} des Öls zurück und geben Sie es zuletzt zu: eine Paste wird unter dem Läufer weicher, doch unter der Ölzahl (${gramsTo100(oilAbsorptionGPer100g)}) hält sie nicht zusammen.`,
  "rub-out-takes-all-the-oil": ({ oilAbsorptionGPer100g }) =>
    `Halten Sie kein Öl zurück: die Ölzahl (${gramsTo100(oilAbsorptionGPer100g)}) verlangt alles.`,
  "loss-on-slab": ({ fraction }) =>
    `Rechnen Sie mit ${percent(fraction)} Farbe, die auf Reibplatte und Läufer bleibt.`,
  "loss-on-mill": ({ fraction }) =>
    `Rechnen Sie mit ${percent(fraction)} Farbe, die auf den Walzen bleibt.`,
  "loss-on-slab-or-mill": ({ fraction }) =>
    `Rechnen Sie mit ${percent(fraction)} Farbe, die auf Reibplatte oder Walzen bleibt.`,
  "loss-of-lots": ({ fraction, lots }) =>
    lots === 1
      ? `Rechnen Sie mit ${percent(fraction)} Verlust: so viel verlor unsere eine Charge.`
      : `Rechnen Sie mit ${percent(fraction)} Verlust: so viel verloren unsere ${lots} Chargen.`,
  "lots-lighter-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Unsere eine Charge wiegt" : `Unsere ${lots} Chargen wiegen`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, und aus dem, was darin ist, folgten ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}: es ist Luft darin, oder ein aufgezeichneter Ölindex oder eine Pigmentdichte stimmt nicht. Es gilt, was gewogen wurde.`,
  "lots-heavier-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Unsere eine Charge wiegt" : `Unsere ${lots} Chargen wiegen`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, und aus dem, was darin ist, folgten ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}: ein aufgezeichneter Ölindex oder eine Pigmentdichte stimmt nicht. Es gilt, was gewogen wurde.`,
  "fills-the-jar": (v) =>
    `${filling(v)} das füllt ein Glas von ${millilitres(v.jarMl)}, auch wenn es sich gesetzt hat.`,
  "fills-until-it-settles": (v) =>
    `${filling(v)} das füllt ein Glas von ${millilitres(v.jarMl)}, wenn es frisch geschüttet ist, aber nicht mehr, wenn es sich gesetzt hat.`,
  "does-not-fill-the-jar": (v) =>
    `${filling(v)} das füllt ein Glas von ${millilitres(v.jarMl)} nicht.`,
};

/** From the first to the last class that an estimate reaches into. */
function fromTo(classes: readonly string[]): string {
  return `von ${classes[0] ?? ""} bis ${classes.at(-1) ?? ""}`;
}

function asRead(measured: Finish, expected: readonly Finish[]): string {
  return `Gemessen ${FINISH_WORDS[measured]}, erwartet ${listed(
    expected.map((each) => FINISH_WORDS[each]),
    "or",
  )}`;
}

function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} Öl füllen die Lücken von 100\u00a0cm\u00b3 Pigment`;
}

function times(ratio: number): string {
  return `${decimals(ratio, 1)}-mal`;
}

function fold(ratio: number): string {
  return `${decimals(ratio, 1)}-Fache`;
}

function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach =
    spans.length > 1
      ? `; die Schätzung reicht ${fromTo(spans.map((each) => FINISH_WORDS[each]))}`
      : "";
  return sentence(
    `${FINISH_WORDS[expected]} zu erwarten: die PVK liegt bei ${decimals(reducedPvc, 2)} der wirksamen KPVK, ${because}${reach}`,
  );
}

function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `das Grindometer zeigt ${micrometres(finenessOfGrindUm)} (bis ${micrometres(limitUm)} gilt als gut dispergiert)`;
}

function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} ${within(pigment)}, trocken, nehmen ${withUnit(significant(takenMl, 2), "ml")} ein, von gesetzt bis geschüttet:`;
}
