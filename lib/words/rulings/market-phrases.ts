import type { InForce } from "../../hazard/markets/market-statements.ts";
import type { InEach } from "../in-each.ts";
import { inEach } from "../phrases-in-each.ts";

/** Since when, and whether the act was read. @param before what stands in front of that. */
export function since({ since: from, standing }: InForce, before?: InEach): InEach {
  return inEach((p, language) => {
    const lead = before === undefined ? "" : `${before[language]} `;
    const recalled = standing === "memory" ? FROM_MEMORY[language] : "";
    return `(${lead}${SINCE[language]} ${p.dateWords(from)}${recalled})`;
  });
}

const SINCE: InEach = { en: "since", de: "seit dem", fr: "depuis le", es: "desde el" };
const FROM_MEMORY: InEach = {
  en: ", from memory",
  de: ", aus dem Gedächtnis",
  fr: ", de mémoire",
  es: ", de memoria",
};

/** @param entry of the act. */
export function inForce(act: InForce, entry?: InEach): InEach {
  const lead = entry && inEach((_, language) => `${entry[language]},`);
  return since(act, lead);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
export function forbidden({ basis, buyers }: InForce, words: InEach): InEach {
  const unless = basis === undefined || buyers === undefined ? NO_BASIS : soldTo(buyers, basis);
  return inEach((p, language) => p.sentence(`${words[language]}${p.SEMICOLON}${unless[language]}`));
}

const NO_BASIS: InEach = {
  en: "no legal basis is recorded, so it is not offered here",
  de: "eine Rechtsgrundlage ist nicht aufgezeichnet; die Farbe wird hier daher nicht angeboten",
  fr: "aucune base légale n’est consignée, et la vente n’est donc pas proposée ici",
  es: "no hay ninguna base legal registrada, así que aquí no se ofrece",
};

function soldTo(...told: readonly [buyers: string, basis: string]): InEach {
  const [buyers, basis] = told.map((text) => text.trim().replace(/\.$/, ""));
  return {
    en: `sold only to ${buyers}; legal basis: ${basis}`,
    de: `Verkauf nur an: ${buyers}; Rechtsgrundlage: ${basis}`,
    fr: `vente réservée à\u202f: ${buyers}\u202f; base légale\u202f: ${basis}`,
    es: `venta reservada a: ${buyers}; base legal: ${basis}`,
  };
}
