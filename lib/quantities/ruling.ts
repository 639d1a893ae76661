import type { SourceKey } from "../sources/source.ts";
import type { Standing } from "./figure.ts";
import type { Range } from "./range.ts";

export type RulingValue = number | string | Range | readonly string[];

/**
 * A sentence that a science chose, before it is worded: which rule spoke and the
 * values it spoke of. Only lib/present turns it into words of a language.
 */
export interface Ruling {
  readonly rule: string;
  readonly values: Readonly<Record<string, RulingValue>>;
  readonly standing?: Standing;
  readonly source?: SourceKey;
}

export function isRuling(value: unknown): value is Ruling {
  return typeof value === "object" && value !== null && "rule" in value && "values" in value;
}
