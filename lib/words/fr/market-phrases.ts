import type { InForce } from "../../hazard/markets/market-statements.ts";
import { SUBSTANCES, wordOf } from "../closed-sets.ts";
import { dateWords, sentence } from "./phrases.ts";
import { metalWord } from "./studio-phrases.ts";

export function substanceWord(substance: string): string {
  return wordOf(SUBSTANCES, metalWord(substance), "fr");
}

/** Since when, and whether the act was read. */
export function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", cité de mémoire" : "";
  return `(${[...before, `depuis le ${dateWords(from)}`].join(" ")}${recalled})`;
}

export function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "en vigueur" : `${entry}, en vigueur`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
export function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "aucune base légale n’est consignée, et la vente n’est donc pas proposée ici"
      : `vente réservée à\u202f: ${plain(buyers)}\u202f; base légale\u202f: ${plain(basis)}`;
  return sentence(`${words}\u202f; ${unless}`);
}
