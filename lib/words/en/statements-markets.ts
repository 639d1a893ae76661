import type { InForce, MarketStatement } from "../../hazard/markets/market-statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { dateWords, listed, namesWithin, percent, sentence, withUnit } from "./phrases.ts";
import { metalWord } from "./statements-studio.ts";

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_WORDINGS: WordingsOf<MarketStatement> = {
  "lead-compound-not-as-paint": ({ names, substance, entry, ...act }) =>
    forbidden(
      act,
      `it holds ${namesWithin(names)}, and ${substance} may not be placed on the market or used as paint ${inForce(act, `entry ${entry}`)}`,
    ),
  "lead-compound-not-identified": ({ names, ...act }) =>
    forbidden(
      act,
      `which compound of lead ${namesWithin(names)} holds is not recorded, and carbonates and sulphates of lead may not be placed on the market or used as paint ${inForce(act)}`,
    ),
  "leaded-paint-by-declaration": (act) =>
    sentence(
      `there is no licence: the buyer signs a declaration of the use, the supplier sends it with a notice to the competent heritage body and may supply three weeks later at the earliest, unless that body objects; only to restore or maintain works of art made before 1992, listed buildings of the highest grades and scheduled monuments ${inForce(act)}`,
    ),
  "lead-limits-at-work": ({ airMgPerM3, bloodUgPer100Ml, until, bloodAfterUgPer100Ml, ...act }) =>
    sentence(
      `at work, lead in the air stays below ${withUnit(String(airMgPerM3), "mg/m\u00b3")} over eight hours and in blood below ${withUnit(String(bloodUgPer100Ml), "\u00b5g/100 ml")} until ${dateWords(until)}, ${withUnit(String(bloodAfterUgPer100Ml), "\u00b5g/100 ml")} from then on ${inForce(act)}; a country may set a lower limit`,
    ),
  "substance-of-very-high-concern": ({ names, ...act }) =>
    sentence(
      `${namesWithin(names)} is on the list of substances of very high concern ${inForce(act)}: the safety data sheet says so to whoever buys it for work`,
    ),
  "cadmium-in-other-paints": ({ names, limit, ...act }) =>
    sentence(
      `it holds ${namesWithin(names)}; entry 23 keeps ${percent(limit)} and more of cadmium out of paints of the tariff codes 3208 and 3209 ${inForce(act)}, and artists' colours in tubes and jars have a code of their own, 3213: have the code of yours confirmed before you sell it`,
    ),
  "cmr-not-to-the-public": ({ statements, ...act }) =>
    forbidden(
      act,
      `a dry pigment that carries ${listed(statements)} may not be supplied to the public ${inForce(act)}`,
    ),
  "needs-authorisation": ({ names, ...act }) =>
    forbidden(
      act,
      `${namesWithin(names)} may be placed on the market and used only under an authorisation ${inForce(act)}`,
    ),
  "cmr-artists-paint-exempt": ({ statements, ...act }) =>
    sentence(
      `${listed(statements)} would keep it from the public ${inForce(act)}; that artists' paints are exempt is quoted from memory`,
    ),
  "restricted-to-professional-users": ({ statements, ...act }) =>
    sentence(
      `restricted to professional users, since it carries ${listed(statements)} ${inForce(act)}`,
    ),
  "titanium-dioxide-without-h351": (act) =>
    sentence(`titanium dioxide bears no H351 here: its entry no longer stands ${since(act)}`),
  "offer-names-hazards": ({ statements, ...act }) =>
    sentence(
      `if it is sold to the public by post or online, the listing must show its hazards ${inForce(act)}: ${listed(statements)}`,
    ),
  "formula-identifier-wanted": (act) =>
    sentence(
      `poison centres ask for a unique formula identifier, UFI ${inForce(act)}; none is recorded`,
    ),
  "us-artists-paint-exempt-labelled": ({ names, limit, ...act }) =>
    sentence(
      `it holds lead (${namesWithin(names)}); artists' paints are exempt from the ban on paint with more than ${percent(limit)} of it ${inForce(act)}, but have to be labelled`,
    ),
  "us-review-on-record": (act) =>
    sentence(
      `art materials need a toxicologist's review of the formulation ${inForce(act)}; one is on record`,
    ),
  "us-review-wanted": (act) =>
    sentence(
      `art materials need a toxicologist's review of the formulation ${inForce(act)}; none is recorded`,
    ),
  "proposition-65": ({ substances, ...act }) =>
    sentence(
      `California lists ${listed(substances.map(metalWord))} ${inForce(act, "Proposition 65")}, and a warning may be due`,
    ),
  "acts-not-known-here": () => "We do not know the rules elsewhere: ask before you offer it there.",
};

/** Since when, and whether the act was read. */
function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", quoted from memory" : "";
  return `(${[...before, `since ${dateWords(from)}`].join(" ")}${recalled})`;
}

function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "in force" : `${entry}, in force`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "no legal basis is recorded, so it is not offered here"
      : `sold only to ${plain(buyers)}; legal basis: ${plain(basis)}`;
  return sentence(`${words}; ${unless}`);
}
