import type { InForce } from "../../hazard/markets/market-statements.ts";
import { SUBSTANCES, wordOf } from "../closed-sets.ts";
import { dateWords, sentence } from "./phrases.ts";
import { metalWord } from "./studio-phrases.ts";

export function substanceWord(substance: string): string {
  return wordOf(SUBSTANCES, metalWord(substance), "es");
}

/** Since when, and whether the act was read. */
export function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", citado de memoria" : "";
  return `(${[...before, `desde el ${dateWords(from)}`].join(" ")}${recalled})`;
}

export function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "en vigor" : `${entry}, en vigor`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
export function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "no hay ninguna base legal registrada, así que aquí no se ofrece"
      : `venta reservada a: ${plain(buyers)}; base legal: ${plain(basis)}`;
  return sentence(`${words}; ${unless}`);
}
