import { SINKING_LIMITS } from "../../drying/sinking-in.ts";
import { ends } from "../../quantities/interval.ts";
import type { StatementWording } from "../words.ts";
import {
  bracketed,
  dayCount,
  decimals,
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

const OILS = {
  linseed: "linseed oil",
  walnut: "walnut oil",
  safflower: "safflower oil",
  poppy: "poppy oil",
  "stand linseed": "linseed stand oil",
} as const;

const CAUSES = {
  "catalyses oxidation": "helps the oil take up oxygen",
  "takes no part": "takes no part",
  "binds into soaps": "it binds into soaps with the oil",
  "takes up radicals and drier":
    "its carbon takes up the radicals by which oil dries, and takes up drier",
  "brings no drying metal": "it brings no metal that dries oil",
} as const;

const DRIERS = {
  surface: "dries from the surface",
  through: "dries all through",
  auxiliary: "helps the other driers",
} as const;

const CONDITIONS = { filmThicknessUm: "film thickness", temperatureC: "temperature" } as const;

/** Days to touch dry, layers, and the film with age. */
export const DRYING_RULINGS = {
  "drying-class": (v) =>
    sentence(
      `${textOf(v, "dryingClass")}: touch dry in ${dayCount(quantityOf(v, "touchDryDays"))}${bracketed(classFilm(v))}`,
    ),
  "drying-class-by-the-middle": (v) =>
    sentence(
      `${textOf(v, "dryingClass")}: touch dry in ${dayCount(quantityOf(v, "touchDryDays"))}${bracketed(classFilm(v))}, by the middle of that range`,
    ),
  "pigment-chemistry-unknown": (v) => {
    const pigments = textsOf(v, "pigments");
    return pigments.length === 0
      ? "No pigment is recorded, so its drying is not reckoned."
      : `What ${namesWithin(pigments)} ${does(pigments)} to the drying of oil is not known here.`;
  },
  "linseed-oil-alone": (v) =>
    `Linseed oil alone is touch dry in ${dayCount(quantityOf(v, "days"))}.`,
  "linseed-sets-the-days": (v) => sentence(`${oilShare(v)} sets the days`),
  "oil-slower-than-linseed": (v) =>
    sentence(
      `${oilShare(v)} dries slower than linseed oil (alone ${dayCount(quantityOf(v, "days"))} against ${significant(quantityOf(v, "linseedDays"), 2)}): ${days(v)}`,
    ),
  "vehicle-not-stated": (v) =>
    `The oil is not recorded; from linseed to the slowest, it makes ${days(v)}.`,
  "pigment-speeds-drying": (v) => speeds(v, pigmentShare(v)),
  "white-speeds-drying": (v) => speeds(v, theWhite(v)),
  "pigment-slows-drying": (v) => slows(v, pigmentShare(v)),
  "white-slows-drying": (v) => slows(v, theWhite(v)),
  "pigment-takes-no-part-in-drying": (v) => takesNoPart(v, pigmentShare(v)),
  "white-takes-no-part-in-drying": (v) => takesNoPart(v, theWhite(v)),
  "added-drier": (v) => sentence(`${drier(v)} ${DRIERS[wordOf(v, "acts", DRIERS)]}: ${days(v)}`),
  "carbon-takes-up-drier": (v) =>
    sentence(
      `${drier(v)} ${DRIERS[wordOf(v, "acts", DRIERS)]}, but carbon takes up to half of it: ${days(v)}`,
    ),
  "film-as-classed": (v) =>
    `Reckoned for a wet film of ${micrometres(numberOf(v, "filmThicknessUm"))}.`,
  "thick-film-slows": (v) => film(v),
  "thin-film-speeds": (v) => film(v),
  "temperature-as-classed": (v) => `Reckoned for ${degrees(numberOf(v, "temperatureC"))}.`,
  "cold-slows": (v) => room(v),
  "warmth-speeds": (v) => room(v),
  "trial-decides": (v) =>
    sentence(`the workshop's own trial: ${trialDays(v)}${trialConditions(v)}`),
  "trial-decides-for-its-own-film": (v) =>
    sentence(
      `the workshop's own trial: ${trialDays(v)}${trialConditions(v)}; it holds for that film and room`,
    ),
  "trial-without-conditions": (v) =>
    sentence(
      `the workshop's own trial: ${trialDays(v)}${trialConditions(v)}; ${listed(textsOf(v, "wanting").map((key) => conditionWord(key)))} not recorded, so what it holds for is not known`,
    ),
  "trial-slower-than-expected": (v) =>
    `The trial was slower than the rules expect: touch dry in ${dayCount(quantityOf(v, "touchDryDays"))} against ${significant(quantityOf(v, "expectedDays"), 2)}.`,
  "trial-faster-than-expected": (v) =>
    `The trial was faster than the rules expect: touch dry in ${dayCount(quantityOf(v, "touchDryDays"))} against ${significant(quantityOf(v, "expectedDays"), 2)}.`,
  "touch-dry-is-not-through-dry": (v) =>
    `Touch dry is not through dry: a painting is customarily left ${significant(quantityOf(v, "monthsBeforeVarnish"), 2)} months before it is varnished. Through dry means that a film bears a varnish, not that it has done changing.`,
  "skins-and-stays-soft": (v) =>
    `Skins over and stays soft below${bracketed(listed(textsOf(v, "pigments")))}.`,
  "driers-customary": (v) =>
    `Makers customarily add a drier to blacks of this kind${bracketed(listed(textsOf(v, "pigments")))}.`,

  "lean-film": (v) => `Lean: ${oilOfFilm(v)}.`,
  "medium-fat-film": (v) => `Medium fat: ${oilOfFilm(v)}.`,
  "fat-film": (v) => `Fat: ${oilOfFilm(v)}.`,
  "zinc-out-of-underlayers": () =>
    "Keep it out of underlayers, and thin above: zinc makes the film brittle, and paint over zinc underlayers has cracked and come away.",
  "fast-and-fat-thinly-below": () =>
    "For lower layers, put on thinly: it dries fast, but it is fat, so what goes over it has to be as fat or fatter.",
  "fast-for-lower-layers": () => "For lower layers: it dries fast.",
  "medium-for-any-layer": () =>
    "For any layer, over what is dry: with a little medium in the upper ones, so that each is as fat as the one below.",
  "slow-but-lean-dry-it-through": () =>
    "For upper layers, though it is lean: it dries slowly, so let it dry through before anything goes over it, and add a little medium where it lies over fatter paint.",
  "slow-for-last-layers": () =>
    "For the last layers: it dries slowly, and nothing that dries faster goes over it until it is dry through.",
  "holds-medium-not-known": (v) =>
    `It holds ${within(textOf(v, "medium"))}; what that does to drying, finish, yellowing and fat over lean is not known here.`,
  "fat-over-lean": (v) => `${over(v)} is fat over lean, as it should be (${oils(v)}).`,
  "lean-over-fat": (v) => `${over(v)} is lean over fat (${oils(v)}) and may crack.`,
  "equally-fat": (v) => `${over(v)}: the two are equally fat (${oils(v)}).`,
  "fast-over-slow-cracks": (v) =>
    `${textOf(v, "upper")} (${textOf(v, "upperClass")}) over ${textOf(v, "lower")} (${textOf(v, "lowerClass")}) may crack: let the lower layer dry through first.`,
  "oil-over-acrylic-ground": () =>
    "An acrylic ground takes oil colour when it has dried for some days, not as soon as it is dry to the touch.",
  "never-acrylic-over-oil": () => "Acrylic never goes over oil colour.",
  "oil-ground-through-dry-first": () =>
    "An oil ground has to be through dry before it is painted on.",
  "absorbent-ground-draws-oil": () =>
    "A ground of glue and chalk draws oil out of the paint, which sinks in.",
  "rigid-support-for-brittle-ground": () =>
    "A ground of glue and chalk is brittle and wants a rigid support.",

  "zinc-makes-brittle": (v) => sentence(`${pigmentShare(v)} makes the film brittle with age`),
  "zinc-soaps-may-part-layers": (v) =>
    sentence(`${pigmentShare(v)} forms soaps with the oil, which may part layers from one another`),
  "lead-makes-tough": (v) => sentence(`${pigmentShare(v)} makes a tough, flexible film`),
  "lead-soaps-turn-transparent": (v) =>
    sentence(
      `${pigmentShare(v)} forms soaps with the oil, which may make the film more transparent with age, push up as grains or bloom on it as a white haze`,
    ),
  "carbon-skin-wrinkles-when-thick": (v) =>
    sentence(`${pigmentShare(v)} skins over first, so a thick stroke may wrinkle`),
  "oil-rich-wrinkles-when-thick": (v) =>
    `Oil is ${percent(quantityOf(v, "oilVolumeFraction"))} of the dry film by volume; from ${percent(numberOf(v, "from"))} a thick stroke may wrinkle.`,
  "sinks-in-on-absorbent-ground-alone": (v) =>
    `Oil enough to keep its gloss (${packing(v)}): it sinks in only on an absorbent ground.`,
  "sinks-in-easily": (v) =>
    isOneEndAlone(v)
      ? `At the drier end of the estimate (${packing(v)}) there is little oil to spare: it may sink in, in dull patches.`
      : `Little oil to spare (${packing(v)}): it sinks in easily, in dull patches.`,
  "dull-of-itself": (v) =>
    isOneEndAlone(v)
      ? `At the drier end of the estimate (${packing(v)}) the film holds voids: it may be dull of itself, which oiling out does not mend.`
      : `Dull of itself and not by sinking in (${packing(v)}): the film holds voids, and oiling out does not mend that.`,
  "oiling-out": () =>
    "Where it has sunk in while the picture is being painted, oiling out brings back the depth: a little oil rubbed over the dry film and wiped off. It is no finish for a picture: leave that to varnish.",
  "yellows-most": (v) =>
    sentence(
      `${OILS[wordOf(v, "oil", OILS)]} yellows most of the drying oils, and makes the toughest film`,
    ),
  "yellows-less": (v) =>
    sentence(`${OILS[wordOf(v, "oil", OILS)]} yellows less than plain linseed oil`),
  "yellows-least": (v) =>
    sentence(`${OILS[wordOf(v, "oil", OILS)]} yellows least, and makes a weaker, slower film`),
  "drier-above-customary": (v) =>
    `${withUnit(significant(numberOf(v, "percentOnOil"), 2), "%")} ${textOf(v, "metal")} on oil is more than the customary ${withUnit(significant(quantityOf(v, "customaryPercent"), 2), "%")}: the film may skin over and wrinkle.`,
  "surface-drier-alone": (v) =>
    sentence(
      `${listed(textsOf(v, "metals"))} ${textsOf(v, "metals").length > 1 ? "dry" : "dries"} from the surface with no through drier beside it: a thick stroke may wrinkle`,
    ),
} as const satisfies Record<string, StatementWording>;

function days(values: Values): string {
  return timesTheDays(quantityOf(values, "factor"));
}

function does(pigments: readonly string[]): string {
  return pigments.length > 1 ? "do" : "does";
}

function classFilm(values: Values): string {
  return `wet film of ${micrometres(numberOf(values, "filmThicknessUm"))} at ${degrees(numberOf(values, "temperatureC"))}`;
}

function shareOf(values: Values, whole: string): string {
  const share = hasValue(values, "massFraction") ? numberOf(values, "massFraction") : 1;
  return share < 1 ? bracketed(`${percent(share)} of the ${whole}`) : "";
}

function oilShare(values: Values): string {
  return `${OILS[wordOf(values, "oil", OILS)]}${shareOf(values, "oil")}`;
}

function pigmentShare(values: Values): string {
  return `${within(textOf(values, "pigment"))}${shareOf(values, "pigment")}`;
}

function theWhite(values: Values): string {
  const share = hasValue(values, "massFraction")
    ? `${percent(numberOf(values, "massFraction"))} of the pigment`
    : undefined;
  return `the white${bracketed(within(textOf(values, "pigment")), share)}`;
}

/** A share that nobody recorded leaves the factor wide open, and that is said. */
function unknownShare(values: Values): string {
  const share = quantityOf(values, "share");
  return typeof share === "number" ? "" : "; how much of it there is was not recorded";
}

function alone(values: Values): string {
  return `alone in linseed oil ${dayCount(quantityOf(values, "daysInLinseed"))}`;
}

function speeds(values: Values, subject: string): string {
  const cause = CAUSES[wordOf(values, "cause", CAUSES)];
  return sentence(
    `${subject} speeds drying, since its ${textOf(values, "chemistry")} ${cause} (${alone(values)}): ${days(values)}${unknownShare(values)}`,
  );
}

function slows(values: Values, subject: string): string {
  const cause = CAUSES[wordOf(values, "cause", CAUSES)];
  return sentence(
    `${subject} slows drying, since ${cause} (${alone(values)}): ${days(values)}${unknownShare(values)}`,
  );
}

function takesNoPart(values: Values, subject: string): string {
  return sentence(`${subject} takes no part in the drying (${alone(values)})`);
}

function drier(values: Values): string {
  return `${textOf(values, "metal")} drier (${withUnit(significant(numberOf(values, "percentOnOil"), 2), "%")} metal on oil)`;
}

function film(values: Values): string {
  return `A film of ${micrometres(numberOf(values, "filmThicknessUm"))} in place of ${micrometres(numberOf(values, "classFilmUm"))}: ${days(values)}.`;
}

function room(values: Values): string {
  return `At ${degrees(numberOf(values, "temperatureC"))} in place of ${degrees(numberOf(values, "classTemperatureC"))}: ${days(values)}.`;
}

function trialDays(values: Values): string {
  const through = hasValue(values, "throughDryDays")
    ? `, through dry in ${dayCount(quantityOf(values, "throughDryDays"))}`
    : "";
  return `touch dry in ${dayCount(quantityOf(values, "touchDryDays"))}${through}`;
}

function trialConditions(values: Values): string {
  return bracketed(
    hasValue(values, "filmThicknessUm")
      ? micrometres(numberOf(values, "filmThicknessUm"))
      : undefined,
    hasValue(values, "temperatureC") ? degrees(numberOf(values, "temperatureC")) : undefined,
    hasValue(values, "humidityPercent")
      ? `${withUnit(significant(numberOf(values, "humidityPercent"), 2), "%")} humidity`
      : undefined,
  );
}

function conditionWord(condition: string): string {
  return wordOf({ condition }, "condition", CONDITIONS) === "temperatureC"
    ? CONDITIONS.temperatureC
    : CONDITIONS.filmThicknessUm;
}

function oilOfFilm(values: Values): string {
  return `oil ${percent(quantityOf(values, "oilVolumeFraction"))} of the dry film by volume`;
}

function oils(values: Values): string {
  return `oil ${percent(quantityOf(values, "upperOil"))} over ${percent(quantityOf(values, "lowerOil"))} by volume`;
}

function over(values: Values): string {
  return `${textOf(values, "upper")} over ${textOf(values, "lower")}`;
}

/** Whether an estimate is judged by an end that its other end would not bear out. */
function isOneEndAlone(values: Values): boolean {
  const [lower, upper] = ends(quantityOf(values, "reducedPvc"));
  return SINKING_LIMITS.some(
    ({ reducedPvcMax }) => lower <= reducedPvcMax && reducedPvcMax < upper,
  );
}

function packing(values: Values): string {
  return `PVC ${decimals(quantityOf(values, "reducedPvc"), 2)} of the effective CPVC`;
}
