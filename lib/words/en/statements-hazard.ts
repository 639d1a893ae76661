import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import {
  bracketed,
  dateWords,
  degrees,
  listed,
  millilitres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";
import { MARKET_WORDINGS } from "./statements-markets.ts";
import { metalWord, STUDIO_WORDINGS } from "./statements-studio.ts";

const ROUTES = {
  oral: "swallowed",
  dermal: "on the skin",
  dust: "breathed in as dust",
  vapour: "breathed in as vapour",
} as const;
const LIMIT_KINDS = {
  generic: "the general limit",
  specific: "the substance's own limit",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

/** Why each statement stands on a label or was left out, what is not known, and where the maker's label and the reckoning part. */
const LABEL_WORDINGS: WordingsOf<LabelStatement> = {
  "ate-mix": ({ hazardClass, route, ingredients, ateMix, limit, unit, unknownFraction }) =>
    `${hazardClass}, ${ROUTES[route]}, from ${named(ingredients)}: the estimate for the mixture is ${withUnit(significant(ateMix, 3), unit)}, ${limit === undefined ? "for which no limit is stated" : `the limit ${withUnit(significant(limit, 3), unit)}`}${unknownFraction > 0 ? `, with ${percent(unknownFraction)} of unknown toxicity` : ""}.`,
  "cut-off": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} from ${percent(limit)} (${LIMIT_KINDS[limitKind]}): ${named(ingredients)} at ${percent(massFraction)}${counted(countedAs)}.`,
  "cut-off-summed": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} from ${percent(limit)} (${LIMIT_KINDS[limitKind]}): ${named(ingredients)}, together ${percent(massFraction)}${counted(countedAs)}.`,
  "weighted-sum": ({ hazardClass, limit, limitKind, ingredients, weightedSum }) =>
    `${hazardClass} from a weighted sum of ${percent(limit)}: ${named(ingredients)}, weighted ${percent(weightedSum)}${limitKind === "specific" ? bracketed("by a limit of the substance's own") : ""}.`,
  "flash-point": ({ hazardClass, flashPointC }) =>
    `${hazardClass} by the flash point of the mixture, ${degrees(flashPointC)}.`,
  "flash-point-not-stated": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass}, as ${named(ingredients)} (${percent(massFraction)}) has it: the flash point of the mixture is not recorded.`,
  "as-its-ingredient": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass}, as ${named(ingredients)} has it, which is practically all of it (${percent(massFraction)}).`,
  "as-its-ingredients": ({ ingredients, limit, massFraction }) =>
    `Comes along with ${named(ingredients)} from ${percent(limit)} on: ${percent(massFraction)}.`,
  elicitation: ({ substance, hazardClass, massFraction, limit }) =>
    sentence(
      `${within(substance)} (${hazardClass}) at ${percent(massFraction)}: from ${percent(limit)} on anyone already allergic to it may react`,
    ),
  "lead-as-metal": ({ massFraction, ingredients, limit, ...size }) =>
    `Lead, as metal, is ${percent(massFraction)} of the paint (${named(ingredients)}), above ${percent(limit)}${shortForm(size)}.`,
  "lead-share-not-stated": ({ ingredients, limit, ...size }) =>
    `Holds lead in a share that is not stated (${named(ingredients)}), so it counts as above ${percent(limit)}${shortForm(size)}.`,
  "traces-in-an-unclassified-mixture": ({ ingredients }) =>
    `Not classified, but ${named(ingredients)} in it means that a safety data sheet must be given on request.`,
  "as-its-supplier-states": ({ ingredients }) =>
    sentence(`As the supplier of ${named(ingredients)} states it`),

  "below-its-limit": ({ ingredients, massFraction, ...what }) =>
    `Left out: ${named(ingredients)}, ${ingredients.length > 1 ? "together " : ""}${percent(massFraction)} of it, ${belowWhat(what)}.`,
  "covered-by": ({ by }) => `Left out, since ${by} says more.`,
  "entry-annulled": ({ name }) => `Left out: annulled for ${within(name)}.`,
  "category-not-in-frame": ({ name, frame }) =>
    `Left out: stated for ${within(name)}, and no category of ${frame}.`,
  "dust-not-from-a-paste": ({ name }) =>
    `Left out: stated for the dust of ${within(name)}, and a paste gives off none.`,
  "vapour-not-from-a-powder": ({ name }) =>
    `Left out: stated for the vapour of ${within(name)}, and a powder gives off none.`,
  "not-a-liquid": ({ name }) =>
    `Left out: stated for ${within(name)} as a liquid, and this is not one.`,
  "flash-point-decides": ({ name }) =>
    `Left out: stated for ${within(name)}, but the flash point of the mixture decides.`,
  "flammable-trace": ({ name }) =>
    `Left out: there is too little of ${within(name)} to count; the flash point of the mixture would tell.`,
  "too-viscous-to-aspirate": ({ name }) =>
    `Left out: stated for ${within(name)}, and the mixture is too thick to be drawn into the lungs.`,
  "needs-a-test-of-the-mixture": ({ name }) =>
    `Left out: stated for ${within(name)}, and only a test of the mixture itself would tell.`,

  "by-severity": ({ answers }) => `Chosen by severity, for ${listed(answers)}.`,
  "children-first": ({ answers }) =>
    `Comes first for whatever the public can buy${bracketed(listed(answers))}.`,
  "disposal-for-the-public": ({ answers }) =>
    `Disposal has its place on whatever the public can buy${bracketed(listed(answers))}.`,
  "small-package": ({ packageMl, upToMl, statements }) =>
    `The label of a package of ${millilitres(packageMl)} (up to ${millilitres(upToMl)}) may leave out ${listed(statements)} where neither it nor a fold-out label, a tie-on tag or a box can bear the whole; a page or card never does.`,

  "unknown-acute-toxicity": ({ massFraction, routes, ingredients }) =>
    `${percent(massFraction)} of the mixture consists of ingredients of unknown acute toxicity (${listed(
      routes.map((route) => ROUTES[route]),
      "or",
    )}): ${named(ingredients)}.`,
  "no-hazard-data": ({ name }) =>
    `No hazard data recorded for ${within(name)}; treat as hazardous. Wanted: its supplier's safety data sheet, sections 2 and 3.`,
  "total-short-of-the-whole": ({ unaccounted }) =>
    `${percent(unaccounted)} of the mixture is not accounted for; treat it as hazardous.`,
  "statement-not-known": ({ statements, name }) =>
    `The supplier of ${within(name)} states ${listed(statements)}, which is on none of our lists: look it up, and treat as hazardous.`,

  "contains-metal": ({ metals, advice }) =>
    `Contains ${listed(metals.map(metalWord))}. ${METAL_ADVICE[advice]}`,
  "child-resistant-fastening": ({ classes }) =>
    `Sold to the public, its package needs a child-resistant fastening (${listed(classes.map(classByRoute))}).`,
  "tactile-warning": ({ classes }) =>
    `Sold to the public, its package needs a tactile warning of danger (${listed(classes.map(classByRoute))}).`,

  "frame-differs": ({ stated, workedOut }) =>
    `The maker's label is by ${stated}, and it is worked out here by ${workedOut}.`,
  "signal-word-differs": ({ stated, workedOut }) =>
    `The maker states ${stated === "none" ? "no signal word" : `the signal word ${stated}`}; worked out it is ${workedOut}.`,
  "pictogram-not-stated": ({ code }) => missing(code),
  "pictogram-not-worked-out": ({ code }) => excess(code),
  "supplement-not-stated": ({ code }) => missing(code),
  "supplement-not-worked-out": ({ code }) => excess(code),
  "statement-not-stated": ({ statement, ingredients, certain }) =>
    missing(`${statement} (${named(ingredients)}${uncertain(certain)})`),
  "statement-not-worked-out": ({ statement }) => excess(statement),
  "statement-differs": ({ stated, workedOut, ingredients, certain }) =>
    `The maker states ${stated}; worked out it is ${workedOut} (${named(ingredients)}${uncertain(certain)}).`,
  "statement-annulled": ({ statement }) => `${statement} was annulled and belongs on no label.`,
  "not-of-the-frame": ({ statement, frame }) => `${statement} is no statement of ${frame}.`,
  "older-than-the-edition": ({ statement, edition, replacement }) =>
    `${statement} is older than the edition (${edition}), which has ${replacement}.`,
  "label-older-than-the-edition": ({ date, asOf, edition }) =>
    `The label is of ${dateWords(date)}, and the edition of ${dateWords(asOf)} (${edition}): check it against that.`,
  "too-many-precautions": ({ count, atMost }) =>
    `${count} precautionary statements, where a label has room for ${atMost}.`,
};

/** Labels, studio and markets. */
export const HAZARD_RULINGS = { ...LABEL_WORDINGS, ...STUDIO_WORDINGS, ...MARKET_WORDINGS };

function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(
      ingredients.map((slug) => (slug === UNACCOUNTED ? "what is not accounted for" : slug)),
    ),
  ]);
}

/** What a label says of a metal that no statement tells of; in other languages by the tables of label texts. */
const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "Do not spray, sand dry or heat.",
  "do not sand dry": "Do not sand dry; keep its dust and spray out of the lungs.",
  "do not heat": "Do not heat; nothing down the drain.",
};

/** "Acute Tox. 2 dermal" with its route in words; any other class as it is. */
function classByRoute(name: string): string {
  const [, hazardClass, route] = /^(.+) (oral|dermal|dust|vapour)$/.exec(name) ?? [];
  return hazardClass === undefined || route === undefined
    ? name
    : `${hazardClass} (${ROUTES[route as keyof typeof ROUTES]})`;
}

/** The least share that counts; of an acute toxicity the estimate, which decides; else that it is too little. */
function belowWhat({
  limit,
  ate,
  upTo,
  unit,
  others,
}: Omit<Of<"below-its-limit">, "ingredients" | "massFraction">): string {
  if (ate !== undefined && upTo !== undefined && unit !== undefined) {
    return `brings the mixture${others === undefined ? "" : `, with ${named(others)},`} to an estimate of ${withUnit(significant(ate, 2), unit)}, which is above ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined ? "is too little to count" : `stays below ${percent(limit)}`;
}

function counted(as: string): string {
  return as === "substance" ? "" : `, counted as ${as}`;
}

function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `; a package of ${millilitres(packageMl)} bears the short form`;
}

function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", not for certain" : "";
}

function missing(code: string): string {
  return sentence(`${code} is worked out, and is not on the maker's label`);
}

function excess(code: string): string {
  return sentence(`${code} is on the maker's label, and is not worked out`);
}
