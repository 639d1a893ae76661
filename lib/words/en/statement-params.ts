/** A ruling's values, read as what its wording needs: a wording that disagrees with its science stops the build. */
import { isInterval, type Quantity } from "../../quantities/interval.ts";
import type { Statement, StatementValue } from "../../quantities/statement.ts";

export type Values = Statement["values"];

/** @throws RangeError when the value is missing, NaN, infinite or no number. */
export function numberOf(values: Values, name: string): number {
  const value = values[name];
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw wrongValue(name, value, "a number");
}

/** One number or an estimate's two ends. @throws RangeError for anything else, or an end that is no finite number. */
export function quantityOf(values: Values, name: string): Quantity {
  const value = values[name];
  if (typeof value === "number" && Number.isFinite(value)) return value;
  if (isInterval(value) && value.every(Number.isFinite)) return value;
  throw wrongValue(name, value, "a number or an estimate's two ends");
}

/** @throws RangeError when the value is missing, empty or no text. */
export function textOf(values: Values, name: string): string {
  const value = values[name];
  if (typeof value === "string" && value !== "") return value;
  throw wrongValue(name, value, "a text");
}

/** The text if it is one of a closed set's words. @throws RangeError for any other. */
export function wordOf<W extends string>(
  values: Values,
  name: string,
  words: Readonly<Record<W, unknown>>,
): W {
  const text = textOf(values, name);
  if (Object.hasOwn(words, text)) return text as W;
  throw wrongValue(name, text, Object.keys(words).join(" | "));
}

/** A list of texts, each once, in order; it may be empty. @throws RangeError when the value is no list of texts. */
export function textsOf(values: Values, name: string): readonly string[] {
  const value = values[name];
  if (Array.isArray(value)) {
    const texts: readonly unknown[] = value;
    if (texts.every((text): text is string => typeof text === "string" && text !== ""))
      return [...new Set(texts)];
  }
  throw wrongValue(name, value, "a list of texts");
}

export function hasValue(values: Values, name: string): boolean {
  return values[name] !== undefined;
}

function wrongValue(name: string, value: StatementValue | undefined, expected: string): RangeError {
  return new RangeError(
    `The value of a ruling is ${value === undefined ? "undefined" : JSON.stringify(value)} at ${name}; right would be ${expected}`,
  );
}
