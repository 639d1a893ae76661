/**
 * One complaint about one place in one record. Rules collect these and the
 * build prints them all at once, so an author fixes a sheet in one pass.
 * A function given a value outside its domain throws `RangeError` instead:
 * that is a fault in our code, because records are checked before compute.
 */
export interface Diagnostic {
  /** A note is something to complete or to review, which `check` alone lists. */
  readonly severity: "error" | "warning" | "note";
  /** Rule that speaks, `room/rule-name`, e.g. `optics/reflectance-domain`. */
  readonly rule: `${string}/${string}`;
  /** Where: repository path of the record, and the YAML path inside it. */
  readonly place: {
    readonly file: string;
    readonly line: number;
    readonly column: number;
    readonly path: string;
  };
  /** What is wrong, as one sentence in plain words without its full stop. */
  readonly message: string;
  /** What the record says, and what would have been accepted, for programs. */
  readonly actual?: string;
  readonly expected?: string;
  /** Key in the bibliography of the text that sets the limit. */
  readonly source?: string;
  /** What would help: the nearest known word, or the likely slip. */
  readonly hint?: string | undefined;
}

/**
 * Print a diagnostic on one line: place, severity, sentence, rule, source.
 *
 * @example
 * content/colours/pb29.md:14:9 error Column masstone is not in drawdowns.csv; nearest: mastone records/missing-column
 */
export function formatDiagnostic({
  severity,
  rule,
  place,
  message,
  source,
  hint,
}: Diagnostic): string {
  const help = hint === undefined ? "" : `; ${hint}`;
  const cited = source === undefined ? "" : ` (${source})`;
  return oneLine(
    `${place.file}:${place.line}:${place.column} ${severity} ${cut(message, LONGEST_SENTENCE)}${cut(help, LONGEST_SENTENCE)} ${rule}${cited}`,
  );
}

const LONGEST_SENTENCE = 600;
const LONGEST_QUOTE = 80;

/** What a record says, cut to what fits in one line. */
export function excerpt(text: string): string {
  return cut(text, LONGEST_QUOTE);
}

function cut(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most)}...` : text;
}

/** A record may hold line breaks, terminal controls or marks that turn the writing round; a printed complaint may not. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, " ");
}

/** Same kind of sentence, for a value that should never have reached a compute function. */
export function domainError(subject: string, actual: number, expected: string): RangeError {
  return new RangeError(`The ${subject} is ${actual}; right would be ${expected}`);
}
