import type { InForce, MarketStatement } from "../../hazard/markets/market-statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { wordOf } from "./closed-words.ts";
import { NUMBERS, dateWords, listed, namesWithin, percent, sentence, withUnit } from "./phrases.ts";
import { metalWord } from "./statements-studio.ts";

/** Substances that the acts are named after, as the tables have them; another stands as it is. */
const SUBSTANCES: Readonly<Record<string, string>> = {
  "lead carbonates": "carbonates de plomb",
  "lead sulphates": "sulfates de plomb",
  "lead compounds of very high concern": "composés du plomb extrêmement préoccupants",
  "lead chromate pigments": "pigments au chromate de plomb",
  "chromates under authorisation": "chromates soumis à autorisation",
  "titanium dioxide": "dioxyde de titane",
  "carbon black": "noir de carbone",
};

/** What the acts of one market say of a sale there; the market stands beside the sentence. */
export const MARKET_WORDINGS: WordingsOf<MarketStatement> = {
  "lead-compound-not-as-paint": ({ names, substance, entry, ...act }) =>
    forbidden(
      act,
      `contient ${namesWithin(names)}\u202f; ces substances (${wordOf(SUBSTANCES, substance)}) ne peuvent être mises sur le marché ni utilisées comme peinture ${inForce(act, `entrée ${entry}`)}`,
    ),
  "lead-compound-not-identified": ({ names, ...act }) =>
    forbidden(
      act,
      `quel composé du plomb contient ${namesWithin(names)} n’est pas consigné, et les carbonates et sulfates de plomb ne peuvent être mis sur le marché ni utilisés comme peinture ${inForce(act)}`,
    ),
  "leaded-paint-by-declaration": (act) =>
    sentence(
      `il n’y a pas de licence\u202f: l’acheteur signe une déclaration d’usage, le fournisseur l’envoie avec un avis à l’autorité compétente du patrimoine et peut livrer trois semaines plus tard au plus tôt, sauf opposition de cette autorité\u202f; uniquement pour restaurer ou entretenir des œuvres d’art antérieures à 1992, des bâtiments classés des plus hauts grades et des monuments classés ${inForce(act)}`,
    ),
  "lead-limits-at-work": ({ airMgPerM3, bloodUgPer100Ml, until, bloodAfterUgPer100Ml, ...act }) =>
    sentence(
      `au travail, le plomb dans l’air reste au-dessous de ${withUnit(NUMBERS.plain(airMgPerM3), "mg/m\u00b3")} sur huit heures, et dans le sang au-dessous de ${withUnit(NUMBERS.plain(bloodUgPer100Ml), "\u00b5g/100 ml")} jusqu’au ${dateWords(until)}, de ${withUnit(NUMBERS.plain(bloodAfterUgPer100Ml), "\u00b5g/100 ml")} ensuite ${inForce(act)}\u202f; un pays peut fixer une limite plus basse`,
    ),
  "substance-of-very-high-concern": ({ names, ...act }) =>
    sentence(
      `${namesWithin(names)} figure sur la liste des substances extrêmement préoccupantes ${inForce(act)}\u202f: la fiche de données de sécurité le dit à qui l’achète pour son travail`,
    ),
  "cadmium-in-other-paints": ({ names, limit, ...act }) =>
    sentence(
      `contient ${namesWithin(names)}\u202f; l’entrée 23 interdit ${percent(limit)} et plus de cadmium dans les peintures des codes douaniers 3208 et 3209 ${inForce(act)}, et les couleurs pour artistes en tubes et en pots ont leur propre code, 3213\u202f: faites confirmer celui de votre peinture avant de vendre`,
    ),
  "cmr-not-to-the-public": ({ statements, ...act }) =>
    forbidden(
      act,
      `un pigment sec qui porte ${listed(statements)} ne peut être fourni au grand public ${inForce(act)}`,
    ),
  "needs-authorisation": ({ names, ...act }) =>
    forbidden(
      act,
      `${namesWithin(names)} ne peut être mis sur le marché ni utilisé que sous autorisation ${inForce(act)}`,
    ),
  "cmr-artists-paint-exempt": ({ statements, ...act }) =>
    sentence(
      `${listed(statements)} l’écarterait du grand public ${inForce(act)}\u202f; que les peintures pour artistes en sont exemptées est cité de mémoire`,
    ),
  "restricted-to-professional-users": ({ statements, ...act }) =>
    sentence(
      `réservé aux utilisateurs professionnels, puisqu’il porte ${listed(statements)} ${inForce(act)}`,
    ),
  "titanium-dioxide-without-h351": (act) =>
    sentence(
      `le dioxyde de titane ne porte pas ici de H351\u202f: son entrée ne vaut plus ${since(act)}`,
    ),
  "offer-names-hazards": ({ statements, ...act }) =>
    sentence(
      `vendu au grand public par correspondance ou en ligne, l’annonce doit en montrer les dangers ${inForce(act)}\u202f: ${listed(statements)}`,
    ),
  "formula-identifier-wanted": (act) =>
    sentence(
      `les centres antipoison demandent un identifiant unique de formulation, UFI ${inForce(act)}\u202f; aucun n’est consigné`,
    ),
  "us-artists-paint-exempt-labelled": ({ names, limit, ...act }) =>
    sentence(
      `contient du plomb (${namesWithin(names)})\u202f; les peintures pour artistes sont exemptées de l’interdiction des peintures qui en ont plus de ${percent(limit)} ${inForce(act)}, mais doivent être étiquetées`,
    ),
  "us-review-on-record": (act) =>
    sentence(
      `le matériel pour artistes demande l’examen de la formule par un toxicologue ${inForce(act)}\u202f; un examen est consigné`,
    ),
  "us-review-wanted": (act) =>
    sentence(
      `le matériel pour artistes demande l’examen de la formule par un toxicologue ${inForce(act)}\u202f; aucun n’est consigné`,
    ),
  "proposition-65": ({ substances, ...act }) =>
    sentence(
      `la Californie inscrit sur sa liste ${listed(substances.map(substanceWord))} ${inForce(act, "Proposition 65")}, et un avertissement peut être dû`,
    ),
  "acts-not-known-here": () =>
    "Nous ne connaissons pas les règles ailleurs\u202f: renseignez-vous avant de l’y proposer.",
};

function substanceWord(substance: string): string {
  return wordOf(SUBSTANCES, metalWord(substance));
}

/** Since when, and whether the act was read. */
function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", cité de mémoire" : "";
  return `(${[...before, `depuis le ${dateWords(from)}`].join(" ")}${recalled})`;
}

function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "en vigueur" : `${entry}, en vigueur`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "aucune base légale n’est consignée, et il n’est donc pas proposé ici"
      : `vendu seulement à\u202f: ${plain(buyers)}\u202f; base légale\u202f: ${plain(basis)}`;
  return sentence(`${words}\u202f; ${unless}`);
}
