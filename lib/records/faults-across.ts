import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import type { Tables } from "../knowledge/tables.ts";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import { claimedNames } from "./claimed-names.ts";
import { columnFaults } from "./column-faults.ts";
import type { Faults } from "./fault.ts";
import { figureSlips } from "./figure-slips.ts";
import { marketFaults } from "./market-faults.ts";
import { paintFaults } from "./paint-faults.ts";
import { pairFaults } from "./pair-faults.ts";
import type { FileParsers, ParsedFiles } from "./parsed-files.ts";
import { priceSlips } from "./price-slips.ts";
import { referenceFaults } from "./references.ts";
import { siteFaults } from "./site-faults.ts";
import { standardRecipeFaults } from "./standard-recipe.ts";
import { casFaults } from "./substance-numbers.ts";
import { textLanguageFaults } from "./text-languages.ts";
import { translationFaults } from "./translation-faults.ts";
import { trialFaults } from "./trial-faults.ts";
import { tradeFaults } from "./vehicle-and-price-faults.ts";

/** Records as they are written, and what their rules ask besides. */
export interface WrittenRecords extends ParsedFiles {
  readonly today: string | undefined;
  /** Names of the reading files that some record has asked for. */
  readonly usedReadings: ReadonlySet<string>;
}

/** What the program knows. */
interface Known {
  readonly tables: Tables;
  readonly knowledge: Knowledge;
}

type Rule = (written: WrittenRecords, known: Known) => Iterable<Diagnostic>;

const BUILT_IN: ReadonlySet<string> = new Set(Object.keys(BIBLIOGRAPHY));

/** Records against one another, each rule by a name of its own. */
const RULES: Readonly<Record<string, Rule>> = {
  references: (written): Faults => referenceFaults(written, BUILT_IN, written.usedReadings),
  trade: tradeFaults,
  "CAS numbers": (written, { knowledge }) => casFaults(written, knowledge),
  paints: (written, { tables }) => paintFaults(written, tables),
  columns: columnFaults,
  prices: priceSlips,
  figures: (written, { tables }) => figureSlips(written, tables),
  trials: trialFaults,
  markets: marketFaults,
  "recipes of standards": standardRecipeFaults,
  "claimed names": claimedNames,
  "languages of texts": textLanguageFaults,
  translations: translationFaults,
  pairs: pairFaults,
  site: (written) => siteFaults(written, written.today),
};

/**
 * What is wrong between records.
 * @param written notes what is read of it, by which each rule is kept.
 * @param check a rule that read nothing of what was edited says what it said.
 */
export function faultsAcross(
  written: WrittenRecords,
  known: Known,
  check: ReturnType<FileParsers["checks"]>,
): Diagnostic[] {
  return Object.entries(RULES).flatMap(([name, rule]) =>
    check("rules across records", name, () => [...rule(written, known)]),
  );
}
