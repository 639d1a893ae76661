import { describe, expect, test } from "vitest";
import { REASONS } from "../../lib/words/absence.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { METHODS } from "../../lib/words/methods.ts";
import { allWorded, slottedTexts } from "../../lib/words/slotted-text.ts";
import { RECORDS, worked } from "../support/demonstration.ts";

/** What a text of a sheet reads as where each of its parts has a row. */
const WORDED = "in words";
function marked(rows: Readonly<Record<string, unknown>>): (english: string) => string | undefined {
  return slottedTexts(Object.fromEntries(Object.keys(rows).map((english) => [english, WORDED])));
}

function unworded(
  texts: readonly string[],
  rows: Readonly<Record<string, unknown>>,
  told: ReadonlySet<string> = new Set(),
): string[] {
  const text = marked(rows);
  return [...new Set(texts)].filter(
    (each) => !told.has(each) && allWorded(each, text, "; ") === each,
  );
}

/** The methods that records tell in words of their own, which nobody translates here. */
function toldMethods(value: unknown): string[] {
  if (value instanceof Map) return [...value.values()].flatMap(toldMethods);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    key === "method" && typeof part === "string" ? [part] : toldMethods(part),
  );
}

const PUBLISHED = worked().published.map(({ worded }) => worded.plain);

describe("of every figure that a sheet of the demonstration publishes", () => {
  test("how it was found has a row in figures/ or methods.ts", () => {
    const { pigments, vehicles, colours } = RECORDS;
    const told = new Set(toldMethods([pigments, vehicles, colours]));
    const methods = PUBLISHED.flatMap(({ evidence }) =>
      evidence.map(({ method }) => String(method)),
    );
    expect(methods.length).toBeGreaterThan(1000);
    expect(unworded(methods, METHODS, told)).toEqual([]);
  });
  test("its unit has a row in units.ts, or is a symbol that reads as it stands in every language", () => {
    const symbols = new Set(["%", "g", "ml", "mm", "nm", RECORDS.workshop.currency]);
    const units = PUBLISHED.flatMap(({ evidence }) =>
      evidence.flatMap(({ unit }) => (typeof unit === "string" ? [unit] : [])),
    );
    expect(
      [...new Set(units)].filter(
        (unit) => !symbols.has(unit) && !Object.hasOwn(ENGLISH.units, unit),
      ),
    ).toEqual([]);
  });
  test("why it is missing has a row in figures/ or absence.ts", () => {
    const reasons = PUBLISHED.flatMap(({ notStated }) => notStated.map(({ reason }) => reason));
    expect(reasons.length).toBeGreaterThan(100);
    expect(unworded(reasons, REASONS)).toEqual([]);
  });
  test("and one without would be named, though another part of it has one", () => {
    expect(unworded(["as recorded", "by guess", "as recorded; by guess"], METHODS)).toEqual([
      "by guess",
      "as recorded; by guess",
    ]);
  });
  test("a micrometre is printed with its sign, in every language", () => {
    const rows = Object.entries({ ...METHODS, ...REASONS }).map((row) => JSON.stringify(row));
    expect(rows.length).toBeGreaterThan(100);
    expect(rows.filter((row) => /[\d}] um\b/.test(row))).toEqual([]);
  });
});
