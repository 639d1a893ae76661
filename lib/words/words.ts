import type { Criteria } from "./lot-criteria.ts";
import type { Criterion } from "../lots/judgement.ts";
import type { Interval } from "../quantities/interval.ts";
import type { Language } from "../quantities/languages.ts";
import type { Family } from "../records/schema/terms.ts";
import type { PageWords } from "./pages/all-pages.ts";
import type { Bound, NotStated, Standing, StandingKind } from "../quantities/figure.ts";
import type { ComparisonStatement } from "../collection/statements.ts";
import type { Statement, WordingsOf } from "../quantities/statement.ts";
import type { ContributionWords } from "./contribution-name.ts";
import type { PrintedNumbers } from "./number-text.ts";
import type { TintWords } from "./tint-words.ts";
import type { FigureWord } from "../sheet/sheet.ts";

/** What the tables of knowledge say in English, in the language of the words that it comes with or in another: a formula stays. */
export type Substance = (named: string, language?: Language) => string;

/** What a ruling's values can be asked for while it is worded: numbers are raw, and worded by the language. */
export type StatementWording = (values: Statement["values"], substance: Substance) => string;

/** Everything that the pages say in one language, with what the tables of knowledge say in it. */
export interface Words extends OwnWords {
  /** What a pigment is made of or called. */
  readonly substance: Substance;
}

/** What this room says in one language. A reader's sentence stands elsewhere only as a row above the one page that says it. */
export interface OwnWords {
  readonly language: Language;
  /** "about", before an estimate whose two ends read alike. */
  readonly about: string;
  /** Before a value that is only what the true one does not pass. */
  readonly bounds: Readonly<Record<Bound, string>>;
  /** Classes that one thing reaches into, in their order, two or more: "medium or slow", "fast to slow". */
  readonly reach: (classes: readonly string[]) => string;
  /** The same of neighbours that have one short phrase, by their English; undefined of others. */
  readonly between: (classes: readonly string[]) => string | undefined;
  /** Between a head and what it heads, and between parts of a line that have commas of their own. */
  readonly colon: string;
  readonly semicolon: string;
  /** How a number is printed. */
  readonly numbers: PrintedNumbers;
  /** A list of numbers over wavelengths in a few words. */
  readonly series: (count: number, least: string, greatest: string) => string;
  /** Name of each figure by its key in the figure table. */
  readonly figures: Readonly<Record<FigureWord, string>>;
  readonly units: Readonly<Record<string, string>>;
  /** Those that read otherwise after a single one: "1 day". */
  readonly unitsOfOne: Readonly<Record<string, string>>;
  readonly standings: Readonly<
    Record<StandingKind, { readonly word: string; readonly gloss: string }>
  >;
  /** "partly from an estimate", of a figure worked out. */
  readonly restsOn: (root: Exclude<Standing, "measured">) => string;
  /** Why a figure is missing and what would be needed, in a sentence. */
  readonly absence: (missing: Pick<NotStated, "reason" | "wanting">) => string;
  /** How a figure was found; what a record says of it stays as it was written. */
  readonly method: (method: string) => string;
  /** Words that a sheet holds as they stand: of closed sets, names of rules, editions of a frame. */
  readonly factWords: Readonly<Record<string, string>>;
  /** Gloss of a figure whose name needs one, by the same key. */
  readonly glosses: Readonly<Record<string, string>>;
  /** Gloss of a trade term, by term as printed. */
  readonly trade: Readonly<Record<string, string>>;
  /** Words of closed sets: classes, finishes, families. */
  readonly terms: Readonly<Record<string, string>>;
  /** Heading of each family of colours; `other` of those that have none. */
  readonly families: Readonly<Record<Family | "other", string>>;
  /** "a, b and c" */
  readonly listed: (texts: readonly string[], before?: "and" | "or") => string;
  /** A text of ours as it goes on after a colon or a comma: with a small first letter, where the language allows it. */
  readonly lowerFirst: (text: string) => string;
  /** A name as it stands inside a sentence. */
  readonly nameWithin: (name: string) => string;
  readonly pages: PageWords;
  /** Headings of the studio's operations, by the hazard room's key. */
  readonly operations: Readonly<Record<string, string>>;
  readonly signalWords: Readonly<Record<"Danger" | "Warning", string>>;
  /** What each pictogram is called, by its code. */
  readonly pictograms: Readonly<Record<string, string>>;
  /** "3 November 2026" */
  readonly date: (isoDate: string) => string;
  /** What a colour does in its whites, of which sentences are made. */
  readonly tints: TintWords;
  /** What moves the days to dry. */
  readonly contributions: ContributionWords;
  /** What a lot is judged by: its name, and figures as they are given. */
  readonly criteria: Criteria;
  /** The limits of one of them. */
  readonly limits: (of: Criterion, limits: Interval) => string;
  /** What a comparison states, which a browser words as well. */
  readonly comparisons: WordingsOf<ComparisonStatement>;
  /** A sentence for each rule of each science. */
  readonly rulings: Readonly<Record<string, StatementWording>>;
}
