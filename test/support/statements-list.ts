import { isFigure } from "../../lib/quantities/figure.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { within } from "../../lib/words/languages/en.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { sentencePatterns, type SaidOnce } from "./sentence-patterns.ts";

/** Where the list lies that a reviewer reads. */
export const STATEMENTS_FILE = "test/sheet/statements.txt";

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

interface Said {
  /** Section of the sheet: "drying". */
  readonly section: string;
  readonly text: string;
}

/**
 * Everything that the sheets state, section by section: each sentence once, its figures and names
 * that differ from sheet to sheet as letters, and below it the sheets that say it with what
 * stands in them for each letter. A changed rule shows as a changed sentence or a changed figure.
 */
export function statementsList(sheets: readonly Sheet[]): string {
  const bySection = new Map<string, SaidOnce[]>();
  for (const sheet of sheets)
    for (const { section, text } of distinct(saidIn(sheet, "")))
      bySection.set(section, [
        ...(bySection.get(section) ?? []),
        { slug: sheet.slug, text, names: namesIn(sheet) },
      ]);
  const parts = [...bySection].map(([section, said]) =>
    [
      section,
      ...sentencePatterns(
        said,
        sheets.map(({ slug }) => slug),
      ),
    ].join("\n"),
  );
  return `${parts.join("\n\n")}\n`;
}

/** What a sentence may name that another sheet has others of: pigments, whites, what is in the oil. */
function namesIn({ pigments, tints, vehicle, additions }: Sheet): string[] {
  return [
    ...pigments.map(({ name }) => name),
    ...tints.map(({ white }) => white.name),
    ...(vehicle === undefined ? [] : [vehicle.name]),
    ...additions.map(({ name }) => name),
  ].map(within);
}

function saidIn(value: unknown, section: string): Said[] {
  if (isFigure(value) || typeof value !== "object" || value === null) return [];
  if (isStatement(value)) return [{ section, text: statementText(value, ENGLISH) }];
  return Object.entries(value).flatMap(([key, part]) =>
    REPEATING.has(key) ? [] : saidIn(part, section === "" ? key : section),
  );
}

function distinct(said: readonly Said[]): Said[] {
  return [...new Map(said.map((one) => [`${one.section}: ${one.text}`, one])).values()];
}
