import type { InForce, MarketStatement } from "../../hazard/markets/market-statements.ts";
import type { SubstanceName } from "../../hazard/classify/substance.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { NUMBERS, dateWords, listed, namesWithin, percent, sentence, withUnit } from "./phrases.ts";
import { inGerman } from "./closed-sets.ts";
import { metalWord } from "./statements-studio.ts";

/** Substances that a rule names. */
const SUBSTANCES: Readonly<Record<SubstanceName, string>> = {
  "lead carbonates": "Bleicarbonate",
  "lead sulphates": "Bleisulfate",
  "lead compounds of very high concern": "besonders besorgniserregende Bleiverbindungen",
  "lead chromate pigments": "Bleichromatpigmente",
  "chromates under authorisation": "zulassungspflichtige Chromate",
  "titanium dioxide": "Titandioxid",
  "carbon black": "Industrieruß",
  "2-ethylhexanoic acid and its salts": "2-Ethylhexansäure und ihre Salze",
};

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_WORDINGS: WordingsOf<MarketStatement> = {
  "lead-compound-not-as-paint": ({ names, substance, entry, ...act }) =>
    forbidden(
      act,
      `enthält ${namesWithin(names)}, und ${SUBSTANCES[substance]} dürfen weder in Verkehr gebracht noch als Farbe verwendet werden ${inForce(act, `Eintrag ${entry.replace(/^entry /, "")}`)}`,
    ),
  "lead-compound-not-identified": ({ names, ...act }) =>
    forbidden(
      act,
      `welche Bleiverbindung in ${namesWithin(names)} steckt, ist nicht aufgezeichnet, und Carbonate und Sulfate des Bleis dürfen weder in Verkehr gebracht noch als Farbe verwendet werden ${inForce(act)}`,
    ),
  "leaded-paint-by-declaration": (act) =>
    sentence(
      `eine Lizenz gibt es nicht: der Käufer unterschreibt eine Erklärung über die Verwendung, der Lieferant sendet sie mit einer Anzeige an die zuständige Denkmalbehörde und darf frühestens drei Wochen später liefern, wenn sie nicht widerspricht; nur zum Restaurieren oder Erhalten von Kunstwerken aus der Zeit vor 1992, denkmalgeschützten Gebäuden der höchsten Stufen und geschützten Denkmälern ${inForce(act)}`,
    ),
  "lead-limits-at-work": ({ airMgPerM3, bloodUgPer100Ml, until, bloodAfterUgPer100Ml, ...act }) =>
    sentence(
      `bei der Arbeit bleibt Blei in der Luft über acht Stunden unter ${withUnit(NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} und im Blut unter ${withUnit(NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100 ml")} bis ${dateWords(until)}, danach unter ${withUnit(NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100 ml")} ${inForce(act)}; ein Land kann niedrigere Grenzwerte festlegen`,
    ),
  "substance-of-very-high-concern": ({ names, ...act }) =>
    sentence(
      `${namesWithin(names)} steht auf der Liste der besonders besorgniserregenden Stoffe ${inForce(act)}: das Sicherheitsdatenblatt sagt es jedem, der beruflich kauft`,
    ),
  "cadmium-in-other-paints": ({ names, limit, ...act }) =>
    sentence(
      `enthält ${namesWithin(names)}; Eintrag 23 hält ${percent(limit)} und mehr Cadmium aus Farben der Zolltarifnummern 3208 und 3209 heraus ${inForce(act)}, und Künstlerfarben in Tuben und Gläsern haben eine eigene Nummer, 3213: lassen Sie sich die Nummer Ihrer Farbe bestätigen, bevor Sie sie verkaufen`,
    ),
  "cmr-not-to-the-public": ({ statements, ...act }) =>
    forbidden(
      act,
      `ein trockenes Pigment, das ${listed(statements)} trägt, darf nicht an die breite Öffentlichkeit abgegeben werden ${inForce(act)}`,
    ),
  "needs-authorisation": ({ names, ...act }) =>
    forbidden(
      act,
      `${namesWithin(names)}: nur mit Zulassung in Verkehr zu bringen und zu verwenden ${inForce(act)}`,
    ),
  "cmr-artists-paint-exempt": ({ statements, ...act }) =>
    sentence(
      `${listed(statements)} hielte sie von der breiten Öffentlichkeit fern ${inForce(act)}; dass Künstlerfarben ausgenommen sind, ist aus dem Gedächtnis zitiert`,
    ),
  "restricted-to-professional-users": ({ statements, ...act }) =>
    sentence(`nur für gewerbliche Anwender, da sie ${listed(statements)} trägt ${inForce(act)}`),
  "titanium-dioxide-without-h351": (act) =>
    sentence(`Titandioxid trägt hier kein H351: der Eintrag gilt nicht mehr ${since(act)}`),
  "offer-names-hazards": ({ statements, ...act }) =>
    sentence(
      `wird sie im Versand oder online an die breite Öffentlichkeit verkauft, muss das Angebot ihre Gefahren zeigen ${inForce(act)}: ${listed(statements)}`,
    ),
  "formula-identifier-wanted": (act) =>
    sentence(
      `die Giftinformationszentren verlangen einen eindeutigen Rezepturidentifikator, UFI ${inForce(act)}; keiner ist aufgezeichnet`,
    ),
  "us-artists-paint-exempt-labelled": ({ names, limit, ...act }) =>
    sentence(
      `enthält Blei (${namesWithin(names)}); Künstlerfarben sind vom Verbot von Farbe mit mehr als ${percent(limit)} davon ausgenommen ${inForce(act)}, müssen aber gekennzeichnet sein`,
    ),
  "us-review-on-record": (act) =>
    sentence(
      `bei Künstlermaterial muss ein Toxikologe die Rezeptur prüfen ${inForce(act)}; eine Prüfung liegt vor`,
    ),
  "us-review-wanted": (act) =>
    sentence(
      `bei Künstlermaterial muss ein Toxikologe die Rezeptur prüfen ${inForce(act)}; keine Prüfung ist aufgezeichnet`,
    ),
  "proposition-65": ({ substances, ...act }) =>
    sentence(
      `Kalifornien führt ${listed(substances.map((each) => inGerman(SUBSTANCES, metalWord(each))))} auf ${inForce(act, "Proposition 65")}, und ein Warnhinweis kann fällig sein`,
    ),
  "acts-not-known-here": () =>
    "Die Regeln anderswo kennen wir nicht: fragen Sie nach, bevor Sie dort anbieten.",
};

/** Since when, and whether the act was read. */
function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", aus dem Gedächtnis zitiert" : "";
  return `(${[...before, `seit ${dateWords(from)}`].join(" ")}${recalled})`;
}

function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "in Kraft" : `${entry}, in Kraft`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "keine Rechtsgrundlage ist aufgezeichnet, daher wird sie hier nicht angeboten"
      : `Verkauf nur an: ${plain(buyers)}; Rechtsgrundlage: ${plain(basis)}`;
  return sentence(`${words}; ${unless}`);
}
