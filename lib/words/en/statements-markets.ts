import type { MarketRule } from "../../hazard/classify/hazard-rules.ts";
import type { StatementWording } from "../words.ts";
import { dateWords, listed, namesWithin, percent, sentence } from "./statements-phrases.ts";
import { metalWord } from "./statements-studio.ts";
import { hasValue, numberOf, textOf, textsOf, wordOf, type Values } from "./statement-params.ts";

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_RULINGS = {
  "lead-compound-not-as-paint": (v) =>
    forbidden(
      v,
      `it holds ${names(v)}, and ${textOf(v, "substance")} may not be placed on the market or used as paint ${inForce(v, `entry ${textOf(v, "entry")}`)}`,
    ),
  "lead-compound-not-identified": (v) =>
    forbidden(
      v,
      `which compound of lead ${names(v)} holds is not recorded, and carbonates and sulphates of lead may not be placed on the market or used as paint ${inForce(v)}`,
    ),
  "cmr-not-to-the-public": (v) =>
    forbidden(
      v,
      `a dry pigment that carries ${statements(v)} may not be supplied to the public ${inForce(v)}`,
    ),
  "needs-authorisation": (v) =>
    forbidden(
      v,
      `${names(v)} may be placed on the market and used only under an authorisation ${inForce(v)}`,
    ),
  "cmr-artists-paint-exempt": (v) =>
    sentence(
      `${statements(v)} would keep it from the public ${inForce(v)}; that artists' paints are exempt is quoted from memory`,
    ),
  "restricted-to-professional-users": (v) =>
    sentence(`restricted to professional users, since it carries ${statements(v)} ${inForce(v)}`),
  "titanium-dioxide-without-h351": (v) =>
    sentence(`titanium dioxide bears no H351 here: its entry no longer stands ${since(v)}`),
  "offer-names-hazards": (v) =>
    sentence(
      `an offer that the public can take up unseen names its hazards ${inForce(v)}: ${statements(v)}`,
    ),
  "formula-identifier-wanted": (v) =>
    sentence(
      `poison centres ask for a unique formula identifier, UFI ${inForce(v)}; none is recorded`,
    ),
  "us-artists-paint-exempt-labelled": (v) =>
    sentence(
      `it holds lead (${names(v)}); artists' paints are exempt from the ban on paint with more than ${percent(numberOf(v, "limit"))} of it ${inForce(v)}, but have to be labelled`,
    ),
  "us-review-on-record": (v) =>
    sentence(
      `art materials need a toxicologist's review of the formulation ${inForce(v)}; one is on record`,
    ),
  "us-review-wanted": (v) =>
    sentence(
      `art materials need a toxicologist's review of the formulation ${inForce(v)}; none is recorded`,
    ),
  "proposition-65": (v) =>
    sentence(
      `California lists ${listed(textsOf(v, "substances").map(metalWord))} ${inForce(v, "Proposition 65")}, and a warning may be due`,
    ),
  "acts-not-known-here": () =>
    "The acts of this market are not known here: ask before offering it there.",
} as const satisfies Record<MarketRule, StatementWording>;

function names(values: Values): string {
  return namesWithin(textsOf(values, "names"));
}

function statements(values: Values): string {
  return listed(textsOf(values, "statements"));
}

/** Since when, and whether the act was read. */
function since(values: Values, ...before: readonly string[]): string {
  const recalled =
    wordOf(values, "standing", { read: "", memory: "" }) === "memory" ? ", quoted from memory" : "";
  return `(${[...before, `since ${dateWords(textOf(values, "since"))}`].join(" ")}${recalled})`;
}

function inForce(values: Values, entry?: string): string {
  return since(values, entry === undefined ? "in force" : `${entry}, in force`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
function forbidden(values: Values, words: string): string {
  const plain = (name: string): string => textOf(values, name).trim().replace(/\.$/, "");
  const unless = hasValue(values, "basis")
    ? `sold only to ${plain("buyers")}; legal basis: ${plain("basis")}`
    : "no legal basis is recorded, so it is not offered here";
  return sentence(`${words}; ${unless}`);
}
