import type { InForce } from "../../hazard/markets/market-statements.ts";
import { dateWords, sentence } from "./phrases.ts";

/** Since when, and whether the act was read. */
export function since({ since: from, standing }: InForce, ...before: readonly string[]): string {
  const recalled = standing === "memory" ? ", aus dem Gedächtnis zitiert" : "";
  return `(${[...before, `seit dem ${dateWords(from)}`].join(" ")}${recalled})`;
}

export function inForce(act: InForce, entry?: string): string {
  return since(act, entry === undefined ? "in Kraft" : `${entry}, in Kraft`);
}

/** Legal basis and buyers as the record words them, which may be a sentence of its own. */
export function forbidden({ basis, buyers }: InForce, words: string): string {
  const plain = (text: string): string => text.trim().replace(/\.$/, "");
  const unless =
    basis === undefined || buyers === undefined
      ? "eine Rechtsgrundlage ist nicht aufgezeichnet; die Farbe wird hier daher nicht angeboten"
      : `Verkauf nur an: ${plain(buyers)}; Rechtsgrundlage: ${plain(basis)}`;
  return sentence(`${words}; ${unless}`);
}
