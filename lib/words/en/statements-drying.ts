import type { DrierRow } from "../../drying/added-drier.ts";
import type { DryingCause } from "../../drying/chemistry-drying.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import type { Oil } from "../../drying/oils.ts";
import { ends } from "../../quantities/interval.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import {
  bracketed,
  dayCount,
  degrees,
  listed,
  micrometres,
  namesWithin,
  percent,
  sentence,
  significant,
  timesTheDays,
  withUnit,
  within,
} from "./phrases.ts";

export const OILS: Readonly<Record<Oil, string>> = {
  linseed: "linseed oil",
  walnut: "walnut oil",
  safflower: "safflower oil",
  poppy: "poppy oil",
  "stand linseed": "linseed stand oil",
};

const CAUSES: Readonly<Record<DryingCause, string>> = {
  "catalyses oxidation": "helps the oil take up oxygen",
  "takes no part": "takes no part",
  "binds into soaps": "it binds into soaps with the oil",
  "takes up radicals": "its carbon takes up the radicals by which oil dries, and takes up drier",
  "brings no drying metal": "it brings no metal that dries oil",
};

const ACTS: Readonly<Record<DrierRow["acts"], string>> = {
  surface: "dries from the surface",
  through: "dries all through",
  auxiliary: "helps the other driers",
};

const CONDITIONS = { filmThicknessUm: "film thickness", temperatureC: "temperature" } as const;

const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "drying",
  finish: "the finish",
  "fat over lean": "fat over lean",
  yellowing: "yellowing",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

/** Days to touch dry, layers, and the film with age. */
export const DRYING_RULINGS: WordingsOf<DryingStatement> = {
  "drying-class": ({ dryingClass, ...days }) => sentence(`${dryingClass}: ${classed(days)}`),
  "drying-class-by-the-middle": ({ dryingClass, ...days }) =>
    sentence(`${dryingClass}, by the middle of the range: ${classed(days)}`),
  "pigment-chemistry-unknown": ({ pigments }) =>
    pigments.length === 0
      ? "No pigment is recorded, so we cannot work out its drying."
      : `We do not know what ${namesWithin(pigments)} ${pigments.length > 1 ? "do" : "does"} to the drying of oil.`,
  "linseed-oil-alone": ({ days }) => `Linseed oil alone is touch dry in ${dayCount(days)}.`,
  "linseed-sets-the-days": (oil) => sentence(`${oilShare(oil)} sets the days`),
  "oil-slower-than-linseed": ({ days, acting, ...oil }) =>
    `${sentence(`${oilShare(oil)} dries slower than linseed oil (alone ${dayCount(days)})`)}${acting === undefined ? "" : ` Counted at ${percent(acting)} of that: its pigments slow the paint already, and the two do not multiply.`}`,
  "vehicle-not-stated": ({ factor }) =>
    `The oil is not recorded: linseed is the fastest, and the slowest makes it ${timesTheDays(factor)}.`,
  "pigment-speeds-drying": (v) => speeds(pigmentShare(v), v),
  "white-speeds-drying": (v) => speeds(theWhite(v), v),
  "pigment-slows-drying": (v) => slows(pigmentShare(v), v),
  "white-slows-drying": (v) => slows(theWhite(v), v),
  "pigment-takes-no-part-in-drying": (v) => takesNoPart(pigmentShare(v), v),
  "white-takes-no-part-in-drying": (v) => takesNoPart(theWhite(v), v),
  "brown-earth-not-told": (v) =>
    sentence(
      `${pigmentShare(v)} may be an umber or a sienna, and its manganese, which dries oil, is not recorded: the days cover both (${alone(v)})`,
    ),
  "pigment-parts-not-recorded": ({ pigments, daysInLinseed }) =>
    `How much there is of ${namesWithin(pigments)} is not recorded: the days run from those of the faster alone to those of the slower (in linseed oil ${dayCount(daysInLinseed)}).`,
  "part-as-tried": (v) =>
    sentence(`${partShare(v)}: touch dry alone in ${dayCount(v.daysAlone)}, as tried here`),
  "part-by-the-rules": (v) =>
    sentence(`${partShare(v)}: touch dry alone in ${dayCount(v.daysAlone)}, by rule of thumb`),
  "added-drier": (v) => sentence(`${drier(v)} ${ACTS[v.acts]}`),
  "carbon-takes-up-drier": (v) =>
    sentence(`${drier(v)} ${ACTS[v.acts]}, but carbon takes up to half of it`),
  "film-as-classed": ({ filmThicknessUm }) =>
    `Worked out for a wet film of ${micrometres(filmThicknessUm)}.`,
  "thick-film-slows": (v) => film(v),
  "thin-film-speeds": (v) => film(v),
  "temperature-as-classed": ({ temperatureC }) => `Worked out for ${degrees(temperatureC)}.`,
  "cold-slows": (v) => room(v),
  "warmth-speeds": (v) => room(v),
  "trial-decides": (v) => sentence(trial(v)),
  "trial-decides-for-its-own-film": (v) => sentence(`${trial(v)}; it holds for that film and room`),
  "trial-without-conditions": (v) =>
    sentence(
      `${trial(v)}; ${listed(v.wanting.map((key) => CONDITIONS[key]))} not recorded, so we do not know what it holds for`,
    ),
  "trial-slower-than-expected": (v) => `The trial was slower than the rule of thumb: ${beside(v)}.`,
  "trial-faster-than-expected": (v) => `The trial was faster than the rule of thumb: ${beside(v)}.`,
  "touch-dry-is-not-through-dry": ({ monthsBeforeVarnish }) =>
    `By custom a painting waits ${significant(monthsBeforeVarnish, 2)} months for its varnish, and even then it has not stopped changing.`,
  "skins-and-stays-soft": (v) =>
    sentence(`${pigmentShare(v)} skins over and stays soft below, so a thick stroke may wrinkle`),
  "driers-customary": ({ pigment }) =>
    `Makers often add a drier to ${within(pigment)}; none is recorded in this paint.`,
  "drier-is-lost-in-the-tube": ({ metals }) =>
    `In the tube carbon goes on taking up drier (${listed(metals)}): paint that has lain for long may dry slower than fresh paint.`,
  "holds-medium-not-known": ({ mediums, changes }) =>
    `We do not know what ${namesWithin(mediums)} ${mediums.length > 1 ? "do" : "does"} to ${CHANGES[changes]}.`,

  "lean-film": (v) => `Lean${oilOfFilm(v)}.`,
  "medium-fat-film": (v) => `Medium fat${oilOfFilm(v)}.`,
  "fat-film": (v) => `Fat${oilOfFilm(v)}.`,
  "zinc-out-of-underlayers": () => "Not for underlayers; in the upper layers, thinly.",
  "fast-and-fat-thinly-below": () =>
    "For lower layers, thinly: it dries fast but is fat, so what goes over it must be as fat or fatter.",
  "fast-for-lower-layers": () => "For lower layers: it dries fast.",
  "medium-for-any-layer": () =>
    "For any layer over dry paint. In the upper layers add a little medium, so that each is as fat as the one below.",
  "slow-but-lean-dry-it-through": () =>
    "For upper layers: let it dry through before you paint over it, and add a little medium over fatter paint.",
  "slow-for-last-layers": () =>
    "For the last layers: until it is dry through, put nothing over it that dries faster.",
  "oil-over-acrylic-ground": () =>
    "Let an acrylic ground dry for some days before you paint on it in oil; dry to the touch is not enough.",
  "never-acrylic-over-oil": () => "Never paint acrylic over oil.",
  "oil-ground-through-dry-first": () => "Let an oil ground dry through before you paint on it.",
  "absorbent-ground-draws-oil": () =>
    "A ground of glue and chalk draws oil out of the paint, and the colour sinks in.",
  "rigid-support-for-brittle-ground": () =>
    "A ground of glue and chalk is brittle: use it on a rigid support.",

  "zinc-makes-brittle": (v) => sentence(`${pigmentShare(v)} makes the film brittle with age`),
  "zinc-soaps-may-part-layers": (v) =>
    sentence(
      `${pigmentShare(v)} forms soaps with the oil, and paint over zinc underlayers has cracked and come away`,
    ),
  "lead-makes-tough": (v) => sentence(`${pigmentShare(v)} makes a tough, flexible film`),
  "lead-soaps": (v) =>
    sentence(
      `${pigmentShare(v)} forms soaps with the oil, which may make the film more transparent with age, push up grains through it or cloud it with a white haze`,
    ),
  "oil-rich-wrinkles-when-thick": ({ oilVolumeFraction, from }) =>
    `${ends(oilVolumeFraction)[0] < from ? "It may be rich in oil" : "Rich in oil"} (${percent(oilVolumeFraction)} of the dry film by volume): from ${percent(from)} on a thick stroke may wrinkle.`,
  "sinks-in-on-absorbent-ground-alone": () => `It sinks in only on an absorbent ground.`,
  "sinks-in-easily": () => `It sinks in easily, in dull patches: it has little oil to spare.`,
  "may-sink-in": () =>
    `It may sink in, in dull patches, if it holds as little oil as the estimate allows.`,
  "dull-of-itself": () => `It is matte by nature: oiling out will not make it glossy.`,
  "may-be-dull-of-itself": () =>
    `It may be matte by nature, and then oiling out will not make it glossy, if it holds as little oil as the estimate allows.`,
  "oiling-out": () =>
    "Where it has sunk in while you paint, oiling out brings back the depth: rub a little oil over the dry film and wipe it off. Do not finish a picture that way; use varnish.",
  "yellows-most": ({ oil }) =>
    sentence(`${OILS[oil]} yellows most of the drying oils, and makes the toughest film`),
  "yellows-less": ({ oil }) => sentence(`${OILS[oil]} yellows less than plain linseed oil`),
  "yellows-least": ({ oil }) =>
    sentence(`${OILS[oil]} is among the oils that yellow least, and makes a weaker, slower film`),
  "drier-above-customary": ({ metal, percentOnOil, customaryPercent }) =>
    `${withUnit(significant(percentOnOil, 2), "%")} ${metal} on oil is more than the customary ${withUnit(significant(customaryPercent, 2), "%")}: the film may skin over and wrinkle.`,
  "surface-drier-alone": ({ metals }) =>
    sentence(
      `${listed(metals)} ${metals.length > 1 ? "dry" : "dries"} from the surface with no through drier beside it: a thick stroke may wrinkle`,
    ),
};

function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `touch dry in ${dayCount(touchDryDays)} (wet film of ${micrometres(filmThicknessUm)} at ${degrees(temperatureC)})`;
}

function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil]}${shareOf(massFraction, "oil")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} of the ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "pigment")}`;
}

function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

function theWhite({ pigment, massFraction }: NamedShare): string {
  return `the white${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} of the pigment`,
  )}`;
}

function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `alone in linseed oil ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} speeds drying, since its ${v.chemistry} ${CAUSES[v.cause]} (${alone(v)})`,
  );
}

function slows(subject: string, v: Acting): string {
  return sentence(`${subject} slows drying, since ${CAUSES[v.cause]} (${alone(v)})`);
}

function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} takes no part in the drying (${alone(v)})`);
}

function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `${metal} drier (${withUnit(significant(percentOnOil, 2), "%")} metal on oil)`;
}

function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `A film of ${micrometres(filmThicknessUm)} in place of ${micrometres(classFilmUm)}: ${timesTheDays(factor)}.`;
}

function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `At ${degrees(temperatureC)} in place of ${degrees(classTemperatureC)}: ${timesTheDays(factor)}.`;
}

function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): string {
  const through =
    throughDryDays === undefined ? "" : `, through dry in ${dayCount(throughDryDays)}`;
  const whose = toldBy === undefined ? "the workshop's own trial" : "a trial as stated by others";
  return `${whose}: touch dry in ${dayCount(touchDryDays)}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} humidity`,
  )}`;
}

function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `touch dry in ${dayCount(touchDryDays)} against ${significant(expectedDays, 2)}`;
}

function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", by the middle of the estimate";
  return `${judged}: oil ${percent(oilVolumeFraction)} of the dry film by volume`;
}
