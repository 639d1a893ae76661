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
  /** Trade name of the thing complained of, e.g. "reflectance factor". */
  readonly subject: string;
  /** What the record says, and what would have been accepted, as printed. */
  readonly actual: string;
  readonly expected: string;
  /** Key in the bibliography of the text that sets the limit. */
  readonly source?: string;
  /** What would help: the nearest known word, or what to do. */
  readonly hint?: string;
}

/**
 * Print a diagnostic on one line: place, severity, sentence, rule, source.
 *
 * @example
 * content/pigments/pb29.yaml:14:9 error Unexpected reflectance factor `1.2`
 * at spectra[0].values[3], expected `0 < R <= 1` optics/reflectance-domain (kubelka-munk-1931)
 */
export function formatDiagnostic({
  severity,
  rule,
  place,
  subject,
  actual,
  expected,
  source,
  hint,
}: Diagnostic): string {
  const where = `${place.file}:${place.line}:${place.column}`;
  const at = place.path === "" ? "" : ` at ${place.path}`;
  const help = hint === undefined ? "" : `; ${hint}`;
  const cited = source === undefined ? "" : ` (${source})`;
  return oneLine(
    `${where} ${severity} Unexpected ${subject} \`${actual}\`${at}, expected \`${expected}\`${help} ${rule}${cited}`,
  );
}

/** A record may hold line breaks or terminal controls; a printed complaint may not. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " ");
}

/** Same sentence, for a value that should never have reached a compute function. */
export function domainError(subject: string, actual: number, expected: string): RangeError {
  return new RangeError(`Unexpected ${subject} \`${actual}\`, expected \`${expected}\``);
}
