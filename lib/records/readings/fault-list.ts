import type { Diagnostic } from "../../diagnostics/diagnostic.ts";

/** A place in a text, both from 1; a byte order mark has no column. */
export interface Spot {
  readonly line: number;
  readonly column: number;
}

/** One complaint about a reading file, before it knows its file. Severity is error unless said. */
export interface Fault {
  readonly severity?: "error" | "warning";
  /** Rule of this room, without `readings/`. */
  readonly rule: string;
  readonly at: Spot;
  /** Column and wavelength, as in `masstone[520 nm]`. */
  readonly path?: string;
  readonly subject: string;
  readonly actual: string;
  readonly expected: string;
  readonly hint?: string;
}

/** The complaints about one file so far. */
export interface FaultList {
  readonly diagnostics: readonly Diagnostic[];
  readonly add: (fault: Fault) => void;
  readonly errorCount: () => number;
  /** Whether so many faults were found that reading on helps nobody. */
  readonly isFull: () => boolean;
}

/** So many faults of one file are told one by one; a broken file has thousands. */
const MOST_FAULTS = 50;

/** An empty list of complaints about a file, named as printed. */
export function faultList(file: string): FaultList {
  const diagnostics: Diagnostic[] = [];
  let errors = 0;
  const push = ({
    severity = "error",
    rule,
    at,
    path = "",
    subject,
    actual,
    expected,
    hint,
  }: Fault): void => {
    if (severity === "error") errors++;
    diagnostics.push({
      severity,
      rule: `readings/${rule}`,
      place: { file, line: at.line, column: at.column, path: clipped(path) },
      subject,
      actual: clipped(actual),
      expected,
      ...(hint === undefined ? {} : { hint: clipped(hint) }),
    });
  };
  return {
    diagnostics,
    add: (fault) => {
      if (diagnostics.length < MOST_FAULTS) push(fault);
      else if (diagnostics.length === MOST_FAULTS) {
        push({
          rule: "many-faults",
          at: fault.at,
          subject: "number of faults",
          actual: `more than ${MOST_FAULTS}`,
          expected: "a sound file",
          hint: "the rest are left out",
        });
      }
    },
    errorCount: () => errors,
    isFull: () => diagnostics.length > MOST_FAULTS,
  };
}

const LONGEST_QUOTE = 80;

/** What a file says, cut to what fits in one line. */
function clipped(text: string): string {
  return text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}...` : text;
}
