import type { ClaimRecord } from "../records/schema/answer.ts";
import { pathParts, type RangeFigure } from "./figure-index.ts";

/** What is wrong with a claim, still without file and line. Numbers are as in sheet.json, to four digits. */
export interface ClaimFault {
  readonly rule: `claims/${string}`;
  /** Key of the claim that the fault stands at. */
  readonly key: string;
  /** One sentence in plain words, without its full stop. */
  readonly message: string;
  /** As the sheets have it today, and as the claim wants it. */
  readonly actual: string;
  readonly expected: string;
  readonly hint?: string | undefined;
}

/** A claim held against today's sheets. */
export interface Verdict {
  readonly claim: ClaimRecord;
  /** Figures that it speaks of, the claim's own first; of a ranking all that were compared. */
  readonly figures: readonly RangeFigure[];
  /** Colours that it speaks of. */
  readonly colours: readonly string[];
  readonly faults: readonly ClaimFault[];
}

/** A number or range as a fault prints it. */
export function plainText(value: unknown): string {
  if (typeof value === "number") return String(Number(value.toPrecision(4)));
  if (Array.isArray(value)) return [...new Set(value.map(plainText))].join(" to ");
  return String(value);
}

/** Colours that a claim is about, by what it says itself: of one on every colour those that it excepts. */
export function coloursOf(claim: ClaimRecord): readonly string[] {
  if ("every" in claim) return claim.but ?? [];
  return [pathParts("fact" in claim ? claim.fact : claim.figure).colour];
}
