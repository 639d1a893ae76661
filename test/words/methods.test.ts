import { describe, expect, test } from "vitest";
import { ENGLISH } from "../../lib/words/en/english.ts";
import { METHOD_TEXTS, type MethodTexts } from "../../lib/words/en/methods.ts";
import { methodText } from "../../lib/words/method-text.ts";
import { RECORDS, worked } from "../support/demonstration.ts";

/** What a method reads as where each of its parts has a text. */
const WORDED = "in words";
const MARKED = Object.fromEntries(METHOD_TEXTS.map((text) => [text, WORDED])) as MethodTexts;

/** The methods that records tell in words of their own, which nobody translates here. */
function toldMethods(value: unknown): string[] {
  if (value instanceof Map) return [...value.values()].flatMap(toldMethods);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    key === "method" && typeof part === "string" ? [part] : toldMethods(part),
  );
}

function unworded(methods: readonly string[], told: ReadonlySet<string>): string[] {
  return [...new Set(methods)].filter(
    (method) => !told.has(method) && methodText(method, MARKED, ENGLISH.numbers) === method,
  );
}

describe("how a figure was found, of every figure that a sheet of the demonstration publishes", () => {
  const methods = worked().published.flatMap(({ worded }) =>
    worded.plain.evidence.map(({ method }) => String(method)),
  );
  test("has a text in METHOD_TEXTS, which each language translates by type", () => {
    const { pigments, vehicles, colours } = RECORDS;
    const told = new Set(toldMethods([pigments, vehicles, colours]));
    expect(methods.length).toBeGreaterThan(1000);
    expect(unworded(methods, told)).toEqual([]);
  });
  test("and one without would be named, though another part of it has one", () => {
    expect(unworded(["as recorded", "by guess", "as recorded; by guess"], new Set())).toEqual([
      "by guess",
      "as recorded; by guess",
    ]);
  });
});
