import type { EngineSource } from "./bibliography.ts";

declare const CITED: unique symbol;
/** A key that was read, in a table's row or a record, and is looked up there: a program writes none. */
export type CitedSource = string & { readonly [CITED]: true };
/** Name of a text in the bibliography: the engine's own keys and a workshop's share one key space. */
export type SourceKey = EngineSource | CitedSource;

/**
 * A text that figures rest on. `standing` says how it was used here: `read` (the
 * figure was seen in it or in a public copy of its table), `derived` (worked out
 * from an equation in it), `memory` (recalled without the text at hand),
 * `practice` (common practice of the trade, no text).
 */
export interface Source {
  readonly citation: string;
  /** How a page cites it in passing, where that does not follow from the citation. */
  readonly short?: string;
  readonly standing: "read" | "derived" | "memory" | "practice";
  /** What it is used for, and any caution, in a sentence. */
  readonly note?: string;
}

/** One science's part of the bibliography. */
export type Bibliography = Readonly<Record<string, Source>>;

/** A text whose figures were seen in it, or in a public copy of its table. @param note what it is used for. @param short how a page cites it in passing. */
export const read = textOf("read");
/** A text from an equation in which figures were worked out. */
export const derived = textOf("derived");
/** A text that was recalled without being at hand. */
export const recalled = textOf("memory");
/** What is common practice of the trade, without a text. */
export const practised = textOf("practice");

function textOf(standing: Source["standing"]) {
  return (citation: string, note?: string, short?: string): Source => ({
    ...(short !== undefined && { short }),
    citation,
    standing,
    ...(note !== undefined && { note }),
  });
}
