import type { DrierRow } from "../../drying/added-drier.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import { ends } from "../../quantities/interval.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import {
  CHEMISTRIES,
  DRIER_METALS,
  DRYING_CAUSES,
  DRYING_CLASSES,
  OILS,
  wordOf,
} from "./closed-words.ts";
import {
  bracketed,
  dayCount,
  degrees,
  listed,
  micrometres,
  namesWithin,
  of,
  percent,
  sentence,
  significant,
  timesTheDays,
  withUnit,
  within,
} from "./phrases.ts";

const ACTS: Readonly<Record<DrierRow["acts"], string>> = {
  surface: "sèche par la surface",
  through: "sèche dans la masse",
  auxiliary: "aide les autres siccatifs",
};

const CONDITIONS = {
  filmThicknessUm: "l’épaisseur du film",
  temperatureC: "la température",
} as const;

const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "au séchage",
  finish: "à l’aspect",
  "fat over lean": "à la règle du gras sur maigre",
  yellowing: "au jaunissement",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

/** Days to touch dry, layers, and the film with age. */
export const DRYING_RULINGS: WordingsOf<DryingStatement> = {
  "drying-class": ({ dryingClass, ...days }) =>
    sentence(`${DRYING_CLASSES[dryingClass]}\u202f: ${classed(days)}`),
  "drying-class-by-the-middle": ({ dryingClass, ...days }) =>
    sentence(`${DRYING_CLASSES[dryingClass]}, au milieu de l’intervalle\u202f: ${classed(days)}`),
  "pigment-chemistry-unknown": ({ pigments }) =>
    pigments.length === 0
      ? "Aucun pigment n’est consigné, et nous ne pouvons calculer son séchage."
      : `Nous ne savons pas ce que ${pigments.length > 1 ? "font" : "fait"} ${namesWithin(pigments)} au séchage de l’huile.`,
  "linseed-oil-alone": ({ days }) =>
    `L’huile de lin seule est sèche au toucher en ${dayCount(days)}.`,
  "linseed-sets-the-days": (oil) => sentence(`les jours partent de\u202f: ${oilShare(oil)}`),
  "oil-slower-than-linseed": ({ days, acting, ...oil }) =>
    `${sentence(
      `${oilShare(oil)}\u202f: sèche plus lentement que l’huile de lin (seule ${dayCount(days)})`,
    )}${acting === undefined ? "" : ` Compté à ${percent(acting)}\u202f: les pigments ralentissent déjà la peinture, et les deux effets ne se multiplient pas.`}`,
  "vehicle-not-stated": ({ factor }) =>
    `L’huile n’est pas consignée\u202f: l’huile de lin est la plus rapide, et avec la plus lente il faut ${timesTheDays(factor)}.`,
  "pigment-speeds-drying": (v) => speeds(pigmentShare(v), v),
  "white-speeds-drying": (v) => speeds(theWhite(v), v),
  "pigment-slows-drying": (v) => slows(pigmentShare(v), v),
  "white-slows-drying": (v) => slows(theWhite(v), v),
  "pigment-takes-no-part-in-drying": (v) => takesNoPart(pigmentShare(v), v),
  "white-takes-no-part-in-drying": (v) => takesNoPart(theWhite(v), v),
  "brown-earth-not-told": (v) =>
    sentence(
      `${pigmentShare(v)} peut être une terre d’ombre ou une terre de Sienne, et son manganèse, qui fait sécher l’huile, n’est pas consigné\u202f: les jours couvrent les deux cas (${alone(v)})`,
    ),
  "pigment-parts-not-recorded": ({ pigments, daysInLinseed }) =>
    `La part ${of(namesWithin(pigments))} n’est pas consignée\u202f: les jours vont de ceux du plus rapide seul à ceux du plus lent (dans l’huile de lin ${dayCount(daysInLinseed)}).`,
  "part-as-tried": (v) =>
    sentence(
      `${partShare(v)}\u202f: seul, sec au toucher en ${dayCount(v.daysAlone)}, comme essayé ici`,
    ),
  "part-by-the-rules": (v) =>
    sentence(
      `${partShare(v)}\u202f: seul, sec au toucher en ${dayCount(v.daysAlone)}, selon la règle empirique`,
    ),
  "added-drier": (v) => sentence(`${drier(v)} ${ACTS[v.acts]}`),
  "carbon-takes-up-drier": (v) =>
    sentence(`${drier(v)} ${ACTS[v.acts]}, mais le carbone en retient jusqu’à la moitié`),
  "film-as-classed": ({ filmThicknessUm }) =>
    `Calculé pour un film humide de ${micrometres(filmThicknessUm)}.`,
  "thick-film-slows": (v) => film(v),
  "thin-film-speeds": (v) => film(v),
  "temperature-as-classed": ({ temperatureC }) => `Calculé pour ${degrees(temperatureC)}.`,
  "cold-slows": (v) => room(v),
  "warmth-speeds": (v) => room(v),
  "trial-decides": (v) => sentence(trial(v)),
  "trial-decides-for-its-own-film": (v) =>
    sentence(`${trial(v)}\u202f; il vaut pour ce film et cette pièce`),
  "trial-without-conditions": (v) =>
    sentence(
      `${trial(v)}\u202f; sans ${listed(v.wanting.map((key) => CONDITIONS[key]))}, non ${v.wanting.length > 1 ? "consignées" : "consignée"}, nous ne savons pas pour quoi il vaut`,
    ),
  "trial-slower-than-expected": (v) =>
    `L’essai a été plus lent que la règle empirique\u202f: ${beside(v)}.`,
  "trial-faster-than-expected": (v) =>
    `L’essai a été plus rapide que la règle empirique\u202f: ${beside(v)}.`,
  "touch-dry-is-not-through-dry": ({ monthsBeforeVarnish }) =>
    `L’usage fait attendre le vernis ${significant(monthsBeforeVarnish, 2)} mois à un tableau. Même alors, il n’a pas fini de changer.`,
  "skins-and-stays-soft": (v) =>
    sentence(
      `${pigmentShare(v)} fait peau et reste mou dessous\u202f: une touche épaisse peut rider`,
    ),
  "driers-customary": ({ pigment }) =>
    `Les fabricants ajoutent souvent un siccatif à ${within(pigment)}\u202f; aucun n’est consigné dans cette peinture.`,
  "drier-is-lost-in-the-tube": ({ metals }) =>
    `Dans le tube, le carbone continue à retenir du siccatif (${listed(metals.map((metal) => DRIER_METALS[metal]))})\u202f: une peinture longtemps gardée peut sécher plus lentement qu’une fraîche.`,
  "holds-medium-not-known": ({ mediums, changes }) =>
    `Nous ne savons pas ce que ${mediums.length > 1 ? "font" : "fait"} ${namesWithin(mediums)} ${CHANGES[changes]}.`,

  "lean-film": (v) => `Maigre${oilOfFilm(v)}.`,
  "medium-fat-film": (v) => `Moyennement gras${oilOfFilm(v)}.`,
  "fat-film": (v) => `Gras${oilOfFilm(v)}.`,
  "zinc-out-of-underlayers": () =>
    "Pas dans les couches du dessous\u202f; dans celles du dessus, en couche mince.",
  "fast-and-fat-thinly-below": () =>
    "Pour les couches du dessous, en couche mince\u202f: sèche vite mais grasse, elle demande par-dessus une couche aussi grasse ou plus grasse.",
  "fast-for-lower-layers": () => "Pour les couches du dessous\u202f: elle sèche vite.",
  "medium-for-any-layer": () =>
    "Pour toute couche, sur une peinture sèche. Dans les couches du dessus, ajouter un peu de médium, pour que chacune soit aussi grasse que celle du dessous.",
  "slow-but-lean-dry-it-through": () =>
    "Pour les couches du dessus\u202f: la laisser sécher à cœur avant de peindre par-dessus, et ajouter un peu de médium sur une peinture plus grasse.",
  "slow-for-last-layers": () =>
    "Pour les dernières couches\u202f: tant qu’elle n’est pas sèche à cœur, ne rien mettre par-dessus qui sèche plus vite.",
  "oil-over-acrylic-ground": () =>
    "Laisser une préparation acrylique sécher quelques jours avant d’y peindre à l’huile\u202f; sèche au toucher ne suffit pas.",
  "never-acrylic-over-oil": () => "Ne jamais peindre à l’acrylique sur de l’huile.",
  "oil-ground-through-dry-first": () =>
    "Laisser une préparation à l’huile sécher à cœur avant d’y peindre.",
  "absorbent-ground-draws-oil": () =>
    "Une préparation à la colle et à la craie boit l’huile de la peinture, et la couleur s’embit.",
  "rigid-support-for-brittle-ground": () =>
    "Une préparation à la colle et à la craie est cassante\u202f: l’employer sur un support rigide.",

  "zinc-makes-brittle": (v) => sentence(`${pigmentShare(v)} rend le film cassant avec l’âge`),
  "zinc-soaps-may-part-layers": (v) =>
    sentence(
      `${pigmentShare(v)} forme des savons avec l’huile, et des peintures sur des couches de zinc ont craqué et se sont décollées`,
    ),
  "lead-makes-tough": (v) => sentence(`${pigmentShare(v)} fait un film solide et souple`),
  "lead-soaps": (v) =>
    sentence(
      `${pigmentShare(v)} forme des savons avec l’huile, qui peuvent rendre le film plus transparent avec l’âge, y pousser des grains ou le voiler de blanc`,
    ),
  "oil-rich-wrinkles-when-thick": ({ oilVolumeFraction, from }) =>
    `${ends(oilVolumeFraction)[0] < from ? "Peut être riche en huile" : "Riche en huile"} (${percent(oilVolumeFraction)} du film sec en volume)\u202f: à partir de ${percent(from)} une touche épaisse peut rider.`,
  "sinks-in-on-absorbent-ground-alone": () => `Ne s’embit que sur une préparation absorbante.`,
  "sinks-in-easily": () =>
    `S’embit facilement, par taches ternes\u202f: elle a peu d’huile en trop.`,
  "may-sink-in": () =>
    `Peut s’embire, par taches ternes, si elle a aussi peu d’huile que l’estimation le permet.`,
  "dull-of-itself": () => `Mate de nature\u202f: la nourrir d’huile ne la rendra pas brillante.`,
  "may-be-dull-of-itself": () =>
    `Peut être mate de nature, et alors la nourrir d’huile ne la rendra pas brillante, si elle a aussi peu d’huile que l’estimation le permet.`,
  "oiling-out": () =>
    "Où la couleur s’est embue pendant le travail, un peu d’huile frottée sur le film sec, puis essuyée, rend la profondeur. Ne pas finir un tableau ainsi\u202f; employer un vernis.",
  "yellows-most": ({ oil }) =>
    sentence(
      `${OILS[oil]}\u202f: c’est l’huile siccative qui jaunit le plus, et qui donne le film le plus solide`,
    ),
  "yellows-less": ({ oil }) =>
    sentence(`${OILS[oil]}\u202f: jaunit moins que l’huile de lin ordinaire`),
  "yellows-least": ({ oil }) =>
    sentence(
      `${OILS[oil]}\u202f: parmi les huiles qui jaunissent le moins, et donne un film plus faible, plus lent à sécher`,
    ),
  "drier-above-customary": ({ metal, percentOnOil, customaryPercent }) =>
    `${withUnit(significant(percentOnOil, 2), "%")} de ${DRIER_METALS[metal]} sur l’huile, c’est plus que les ${withUnit(significant(customaryPercent, 2), "%")} d’usage\u202f: le film peut faire peau et rider.`,
  "surface-drier-alone": ({ metals }) =>
    sentence(
      `${listed(metals.map((metal) => DRIER_METALS[metal]))} ${metals.length > 1 ? "sèchent" : "sèche"} par la surface, sans siccatif de masse à côté\u202f: une touche épaisse peut rider`,
    ),
};

function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `sec au toucher en ${dayCount(touchDryDays)} (film humide de ${micrometres(filmThicknessUm)} à ${degrees(temperatureC)})`;
}

function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil]}${shareOf(massFraction, "de l’huile")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "du pigment")}`;
}

function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

function theWhite({ pigment, massFraction }: NamedShare): string {
  return `le blanc${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} du pigment`,
  )}`;
}

function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `seul dans l’huile de lin ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} accélère le séchage\u202f: ${itsOwn(wordOf(CHEMISTRIES, v.chemistry))} ${DRYING_CAUSES[v.cause]} (${alone(v)})`,
  );
}

/** "son manganèse", "sa terre brune" */
function itsOwn(chemistry: string): string {
  return `${/^(?:terre|charge|phtalocyanine)/.test(chemistry) ? "sa" : "son"} ${chemistry}`;
}

function slows(subject: string, v: Acting): string {
  return sentence(`${subject} ralentit le séchage\u202f: ${DRYING_CAUSES[v.cause]} (${alone(v)})`);
}

function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} n’intervient pas dans le séchage (${alone(v)})`);
}

function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `le siccatif au ${DRIER_METALS[metal]} (${withUnit(significant(percentOnOil, 2), "%")} de métal sur l’huile)`;
}

function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `Un film de ${micrometres(filmThicknessUm)} au lieu de ${micrometres(classFilmUm)}\u202f: ${timesTheDays(factor)}.`;
}

function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `À ${degrees(temperatureC)} au lieu de ${degrees(classTemperatureC)}\u202f: ${timesTheDays(factor)}.`;
}

function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): string {
  const through = throughDryDays === undefined ? "" : `, sec à cœur en ${dayCount(throughDryDays)}`;
  const whose = toldBy === undefined ? "essai de l’atelier" : "essai rapporté par d’autres";
  return `${whose}\u202f: sec au toucher en ${dayCount(touchDryDays)}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} d’humidité`,
  )}`;
}

function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `sec au toucher en ${dayCount(touchDryDays)} contre ${significant(expectedDays, 2)}`;
}

function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", au milieu de l’estimation";
  return `${judged}\u202f: huile ${percent(oilVolumeFraction)} du film sec en volume`;
}
