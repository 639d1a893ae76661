import { isFigure } from "../../lib/quantities/figure.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { within } from "../../lib/words/en/statements-phrases.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";

/** Where the list lies that a reviewer reads. */
export const STATEMENTS_FILE = "test/sheet/statements.txt";

/** Sheets that say a sentence word for word from which on it is listed once, at the head. */
const SHARED_FROM = 4;
/** Sheets that are named beside such a sentence; more are counted. */
const NAMED_TO = 12;

/** Parts of a sheet that say for each of its whites, or of each figure's fit, what the sheet says once already. */
const REPEATING: ReadonlySet<string> = new Set([
  "inWhites",
  "contributions",
  "trials",
  "fit",
  "mixture",
  "batch",
  "fill",
  "notations",
]);

/** A pigment's name in a caution: "Weigh and mull bone black" is the same caution as of any other. */
function ofAnyPigment(text: string, sheet: Sheet): string {
  return sheet.pigments.reduce(
    (said, { name }) => said.replaceAll(within(name), "(pigment)"),
    text,
  );
}

interface Said {
  /** Section of the sheet: "drying". */
  readonly section: string;
  readonly text: string;
}

/**
 * Everything that the sheets state, in words: first what several sheets say word for word, with
 * the colours that say it, then sheet by sheet what is left, so that a changed rule shows as
 * changed sentences and a sheet can be read for sentences that contradict each other.
 */
export function statementsList(sheets: readonly Sheet[]): string {
  const bySheet = sheets.map((sheet) => ({
    sheet,
    said: distinct(
      saidIn(sheet, "").map(({ section, text }) => ({
        section,
        text: section === "cautions" ? ofAnyPigment(text, sheet) : text,
      })),
    ),
  }));
  const tellers = new Map<string, string[]>();
  for (const { sheet, said } of bySheet)
    for (const one of said) {
      const key = lineOf(one);
      tellers.set(key, [...(tellers.get(key) ?? []), sheet.slug]);
    }
  // Cautions differ by the pigment's name alone: all of them stand at the head.
  const isShared = (one: Said): boolean =>
    one.section === "cautions" || (tellers.get(lineOf(one))?.length ?? 0) >= SHARED_FROM;
  const shared = distinct(bySheet.flatMap(({ said }) => said.filter(isShared))).toSorted(
    (one, other) => one.section.localeCompare(other.section),
  );
  const head = [
    "What several sheets say word for word",
    ...shared.flatMap((one) => [
      lineOf(one),
      `    ${tellersText(tellers.get(lineOf(one)) ?? [], sheets.length)}`,
    ]),
  ];
  const sheetParts = bySheet.map(({ sheet, said }) =>
    [sheet.slug, ...said.filter((one) => !isShared(one)).map(lineOf)].join("\n"),
  );
  return `${[head.join("\n"), ...sheetParts].join("\n\n")}\n`;
}

function lineOf({ section, text }: Said): string {
  return `  ${section}: ${text}`;
}

function tellersText(slugs: readonly string[], all: number): string {
  if (slugs.length === all) return "every sheet";
  return slugs.length > NAMED_TO ? `${slugs.length} sheets` : slugs.join(", ");
}

function saidIn(value: unknown, section: string): Said[] {
  if (isFigure(value) || typeof value !== "object" || value === null) return [];
  if (isStatement(value)) return [{ section, text: statementText(value, ENGLISH) }];
  return Object.entries(value).flatMap(([key, part]) =>
    REPEATING.has(key) ? [] : saidIn(part, section === "" ? key : section),
  );
}

function distinct(said: readonly Said[]): Said[] {
  return [...new Map(said.map((one) => [lineOf(one), one])).values()];
}
