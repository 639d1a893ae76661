import type { Verdict } from "../lots/judgement.ts";
import type { Words } from "../words/words.ts";

/** "Pass", "Near", "Fail", or that nothing was judged. */
export function verdictWord(verdict: Verdict | undefined, words: Words): string {
  return words.pages.lots.verdicts[verdict ?? "none"];
}

export function lotPath(slug: string): string {
  return `lots/${slug}/index.html`;
}

export function lotAddress(slug: string): string {
  return `lots/${slug}/`;
}

/** Batch sheet of a planned lot, with its own weights. */
export function lotBatchAddress(slug: string): string {
  return `${lotAddress(slug)}batch/`;
}

/** What to weigh to bring a lot back. */
export function correctionAddress(slug: string): string {
  return `${lotAddress(slug)}correction/`;
}

export function batchSheetPath(colour: string): string {
  return `batches/${colour}/index.html`;
}
