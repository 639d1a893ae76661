import type { RulingWording } from "../words.ts";
import { dateWords, listed, namesWithin, percent, sentence } from "./rulings-phrases.ts";
import { hasValue, numberOf, textOf, textsOf, wordOf, type Values } from "./rulings-values.ts";

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_RULINGS = {
  "lead-compound-not-as-paint": (v) => forbidden(v, `${textOf(v, "substance")} may not be placed on the market or used as paint (entry ${textOf(v, "entry")}), and it holds ${names(v)}`),
  "lead-compound-not-identified": (v) => forbidden(v, `${names(v)} is a lead compound that is not identified, and carbonates and sulphates of lead may not be placed on the market or used as paint`),
  "cmr-not-to-the-public": (v) => forbidden(v, `a dry pigment that carries ${statements(v)} may not be supplied to the public`),
  "needs-authorisation": (v) => forbidden(v, `${names(v)} may be placed on the market and used only under an authorisation`),
  "cmr-artists-paint-exempt": (v) => line(v, `${statements(v)} would keep it from the public, but artists' paints are exempt`),
  "restricted-to-professional-users": (v) => line(v, `restricted to professional users, since it carries ${statements(v)}`),
  "titanium-dioxide-without-h351": (v) => line(v, "titanium dioxide bears no H351 here: the entry no longer stands"),
  "offer-names-hazards": (v) => line(v, `an offer that the public can take up unseen names its hazards: ${statements(v)}`),
  "formula-identifier-wanted": (v) => line(v, "poison centres ask for a unique formula identifier (UFI), and none is recorded"),
  "us-artists-paint-exempt-labelled": (v) => line(v, `with ${names(v)} it holds lead above ${percent(numberOf(v, "limit"))}; artists' paints are exempt from the ban on lead paint, but have to be labelled`),
  "us-review-on-record": (v) => line(v, "a toxicologist's review of the formulation is on record"),
  "us-review-wanted": (v) => line(v, "art materials need a toxicologist's review of the formulation, and none is recorded"),
  "proposition-65": (v) => line(v, `California lists ${listed(textsOf(v, "substances"))} (Proposition 65), for which a warning may be due`),
  "acts-not-known-here": () => "The acts of this market are not known here: ask before offering it there.",
} as const satisfies Record<string, RulingWording>;

function names(values: Values): string {
  return namesWithin(textsOf(values, "names"));
}

function statements(values: Values): string {
  return listed(textsOf(values, "statements"));
}

/** Since when, and whether the act was read. */
function dated(values: Values): string {
  const recalled = wordOf(values, "standing", { read: "", memory: "" }) === "memory" ? "; quoted from memory" : "";
  return `(since ${dateWords(textOf(values, "since"))}${recalled})`;
}

function line(values: Values, words: string): string {
  return sentence(`${words} ${dated(values)}`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
function forbidden(values: Values, words: string): string {
  const plain = (name: string): string => textOf(values, name).trim().replace(/\.$/, "");
  const unless = hasValue(values, "basis") ? `sold to ${plain("buyers")} on this basis: ${plain("basis")}` : "no legal basis is recorded, so it is not offered here";
  return sentence(`${words} ${dated(values)}; ${unless}`);
}
