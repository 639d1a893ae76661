import type {
  DifferenceRule,
  LabelLineRule,
  LeftOutRule,
  PrecautionRule,
  TraceRule,
} from "../../hazard/classify/hazard-rules.ts";
import type { StatementWording } from "../words.ts";
import {
  bracketed,
  dateWords,
  degrees,
  listed,
  percent,
  sentence,
  significant,
  withUnit,
  within,
} from "./statements-phrases.ts";
import { MARKET_RULINGS } from "./statements-markets.ts";
import { metalWord, STUDIO_RULINGS } from "./statements-studio.ts";
import {
  hasValue,
  numberOf,
  quantityOf,
  textOf,
  textsOf,
  wordOf,
  type Values,
} from "./statement-params.ts";

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

/** Why each statement stands on a label or was left out, what is not known, and where the maker's label and the reckoning part. */
const LABEL_RULINGS = {
  "ate-mix": (v) =>
    `${textOf(v, "hazardClass")}, ${ROUTES[wordOf(v, "route", ROUTES)]}, from ${ingredients(v)}: the estimate for the mixture is ${estimate(v, "ateMix")}, the limit ${estimate(v, "limit")}${numberOf(v, "unknownFraction") > 0 ? `, with ${percent(numberOf(v, "unknownFraction"))} of unknown toxicity` : ""}.`,
  "cut-off": (v) =>
    `${textOf(v, "hazardClass")} from ${percent(numberOf(v, "limit"))} (${LIMIT_KINDS[wordOf(v, "limitKind", LIMIT_KINDS)]}): ${ingredients(v)} at ${percent(quantityOf(v, "massFraction"))}${counted(v)}.`,
  "cut-off-summed": (v) =>
    `${textOf(v, "hazardClass")} from ${percent(numberOf(v, "limit"))} (${LIMIT_KINDS[wordOf(v, "limitKind", LIMIT_KINDS)]}): ${ingredients(v)}, together ${percent(quantityOf(v, "massFraction"))}${counted(v)}.`,
  "weighted-sum": (v) =>
    `${textOf(v, "hazardClass")} from a weighted sum of ${percent(numberOf(v, "limit"))}: ${ingredients(v)}, weighted ${percent(numberOf(v, "weightedSum"))}${wordOf(v, "limitKind", LIMIT_KINDS) === "specific" ? bracketed("by a limit of the substance's own") : ""}.`,
  "flash-point": (v) =>
    `${textOf(v, "hazardClass")} by the flash point of the mixture, ${degrees(numberOf(v, "flashPointC"))}.`,
  "flash-point-not-stated": (v) =>
    `${textOf(v, "hazardClass")}, as ${ingredients(v)} (${percent(numberOf(v, "massFraction"))}) has it: the flash point of the mixture is not recorded.`,
  "as-its-ingredient": (v) =>
    `${textOf(v, "hazardClass")}, as ${ingredients(v)} has it, which is practically all of it (${percent(numberOf(v, "massFraction"))}).`,
  "as-its-ingredients": (v) =>
    `Comes along with ${ingredients(v)} from ${percent(numberOf(v, "limit"))} on: ${percent(numberOf(v, "massFraction"))}.`,
  elicitation: (v) =>
    sentence(
      `${within(textOf(v, "substance"))} (${textOf(v, "hazardClass")}) at ${percent(numberOf(v, "massFraction"))}: from ${percent(numberOf(v, "limit"))} on anyone already allergic to it may react`,
    ),
  "lead-as-metal": (v) =>
    `Lead, as metal, is ${percent(numberOf(v, "massFraction"))} of the paint (${ingredients(v)}), above ${percent(numberOf(v, "limit"))}${shortForm(v)}.`,
  "lead-share-not-stated": (v) =>
    `Holds lead in a share that is not stated (${ingredients(v)}), so it counts as above ${percent(numberOf(v, "limit"))}${shortForm(v)}.`,
  "traces-in-an-unclassified-mixture": (v) =>
    `Not classified, but the traces of ${ingredients(v)} in it call for a data sheet on request.`,
  "as-its-supplier-states": (v) =>
    sentence(`As the supplier of ${within(ingredients(v))} states it`),

  "below-its-limit": (v) =>
    `Left out: ${ingredients(v)}, ${textsOf(v, "ingredients").length > 1 ? "together " : ""}${percent(numberOf(v, "massFraction"))} of it, ${hasValue(v, "limit") ? `stays below ${percent(numberOf(v, "limit"))}` : "is too little to count"}.`,
  "covered-by": (v) => `Left out, since ${textOf(v, "by")} says more.`,
  "entry-annulled": (v) => `Left out: annulled for ${name(v)}.`,
  "category-not-in-frame": (v) =>
    `Left out: stated for ${name(v)}, and no category of ${textOf(v, "frame")}.`,
  "dust-not-from-a-paste": (v) =>
    `Left out: stated for the dust of ${name(v)}, and a paste gives off none.`,
  "vapour-not-from-a-powder": (v) =>
    `Left out: stated for the vapour of ${name(v)}, and a powder gives off none.`,
  "not-a-liquid": (v) => `Left out: stated for ${name(v)} as a liquid, and this is none.`,
  "flash-point-decides": (v) =>
    `Left out: stated for ${name(v)}, but the flash point of the mixture decides.`,
  "flammable-trace": (v) =>
    `Left out: there is too little of ${name(v)} to count; the flash point of the mixture would tell.`,
  "too-viscous-to-aspirate": (v) =>
    `Left out: stated for ${name(v)}, and the mixture is too thick to be drawn into the lungs.`,
  "needs-a-test-of-the-mixture": (v) =>
    `Left out: stated for ${name(v)}, and only a test of the mixture itself would tell.`,

  "by-severity": (v) => `Chosen by severity, for ${listed(textsOf(v, "answers"))}.`,
  "children-first": (v) =>
    `Comes first for whatever the public can buy${bracketed(listed(textsOf(v, "answers")))}.`,
  "disposal-for-the-public": (v) =>
    `Disposal has its place on whatever the public can buy${bracketed(listed(textsOf(v, "answers")))}.`,
  "small-package": (v) =>
    `The label of a package of ${millilitres(v, "packageMl")} (up to ${millilitres(v, "upToMl")}) may leave out ${listed(textsOf(v, "statements"))}; a page or card never does.`,

  "unknown-acute-toxicity": (v) =>
    `${percent(numberOf(v, "massFraction"))} of the mixture consists of ingredients of unknown acute toxicity (${listed(
      textsOf(v, "routes").map((route) => ROUTES[wordOf({ route }, "route", ROUTES)]),
      "or",
    )}): ${ingredients(v)}.`,
  "no-hazard-data": (v) => `No hazard data recorded for ${name(v)}; treat as hazardous.`,
  "total-short-of-the-whole": (v) =>
    `${percent(numberOf(v, "unaccounted"))} of the mixture is not accounted for; treat it as hazardous.`,

  "metal-not-classified": (v) =>
    `Holds ${listed(textsOf(v, "metals").map(metalWord))}. No supplier states that as a hazard to health; in the studio handle it as any ${listed(textsOf(v, "metals").map(metalWord))} colour all the same.`,

  "frame-differs": (v) =>
    `The maker's label is by ${textOf(v, "stated")}, and it is worked out here by ${textOf(v, "workedOut")}.`,
  "signal-word-differs": (v) =>
    `The maker states ${textOf(v, "stated") === "none" ? "no signal word" : `the signal word ${textOf(v, "stated")}`}; worked out it is ${textOf(v, "workedOut")}.`,
  "pictogram-not-stated": (v) => missing(textOf(v, "code")),
  "pictogram-not-worked-out": (v) => excess(textOf(v, "code")),
  "supplement-not-stated": (v) => missing(textOf(v, "code")),
  "supplement-not-worked-out": (v) => excess(textOf(v, "code")),
  "statement-not-stated": (v) =>
    missing(`${textOf(v, "statement")} (${ingredients(v)}${uncertain(v)})`),
  "statement-not-worked-out": (v) => excess(textOf(v, "statement")),
  "statement-differs": (v) =>
    `The maker states ${textOf(v, "stated")}; worked out it is ${textOf(v, "workedOut")} (${ingredients(v)}${uncertain(v)}).`,
  "statement-annulled": (v) => `${textOf(v, "statement")} was annulled and belongs on no label.`,
  "not-of-the-frame": (v) => `${textOf(v, "statement")} is no statement of ${textOf(v, "frame")}.`,
  "older-than-the-edition": (v) =>
    `${textOf(v, "statement")} is older than the edition (${textOf(v, "edition")}), which has ${textOf(v, "replacement")}.`,
  "label-older-than-the-edition": (v) =>
    `The label is of ${dateWords(textOf(v, "date"))}, and the edition of ${dateWords(textOf(v, "asOf"))} (${textOf(v, "edition")}): check it against that.`,
  "too-many-precautions": (v) =>
    `${numberOf(v, "count")} precautionary statements, where a label has room for ${numberOf(v, "atMost")}.`,
} as const satisfies Record<
  TraceRule | LeftOutRule | LabelLineRule | PrecautionRule | DifferenceRule,
  StatementWording
>;

/** Labels, studio and markets. */
export const HAZARD_RULINGS = { ...LABEL_RULINGS, ...STUDIO_RULINGS, ...MARKET_RULINGS } as const;

function ingredients(values: Values): string {
  const known = textsOf(values, "ingredients");
  return listed(
    known.map((slug) => (slug === UNACCOUNTED ? "what is not accounted for" : within(slug))),
  );
}

function name(values: Values): string {
  return within(textOf(values, "name"));
}

function estimate(values: Values, key: string): string {
  return withUnit(significant(numberOf(values, key), 3), textOf(values, "unit"));
}

function counted(values: Values): string {
  const as = textOf(values, "countedAs");
  return as === "substance" ? "" : `, counted as ${as}`;
}

function millilitres(values: Values, key: string): string {
  return withUnit(significant(numberOf(values, key), 3), "ml");
}

function shortForm(values: Values): string {
  if (
    !hasValue(values, "packageMl") ||
    numberOf(values, "packageMl") >= numberOf(values, "shortBelowMl")
  )
    return "";
  return `; a package of ${millilitres(values, "packageMl")} bears the short form`;
}

function uncertain(values: Values): string {
  return wordOf(values, "certain", { yes: "", no: "" }) === "no" ? ", not for certain" : "";
}

function missing(code: string): string {
  return sentence(`${code} is worked out, and is not on the maker's label`);
}

function excess(code: string): string {
  return sentence(`${code} is on the maker's label, and is not worked out`);
}
