import { excerpt, type Diagnostic } from "../../diagnostics/diagnostic.ts";

/** A place in a text, both from 1; a byte order mark has no column. */
export interface Spot {
  readonly line: number;
  readonly column: number;
}

/** The place of an offset in a text. */
export type Spotter = (offset: number) => Spot;

/** Where a text begins. */
export const TEXT_START: Spot = { line: 1, column: 1 };

/** What is said of a place of a file. */
interface Said {
  /** Column and wavelength, as in `masstone[520 nm]`. */
  readonly path?: string;
  /** One sentence in plain words, without its full stop. */
  readonly message: string;
  readonly actual?: string;
  readonly expected?: string;
  readonly hint?: string | undefined;
}

/** Complains of a place. @param rule of this room, without `readings/`. */
type Complain = (rule: string, at: Spot, said: Said) => void;

/** The complaints about one file so far. */
export interface FaultList {
  readonly diagnostics: readonly Diagnostic[];
  readonly error: Complain;
  readonly warning: Complain;
  readonly errorCount: () => number;
  /** Whether so many faults were found that reading on helps nobody. */
  readonly isFull: () => boolean;
}

/** So many faults of one file are told one by one; a broken file has thousands. */
const MOST_FAULTS = 50;

/** A file's text while it is read, with what says where in it something stands, and what is wrong with it. */
export interface ReadText {
  readonly text: string;
  readonly spot: Spotter;
  readonly faults: FaultList;
}

/** An empty list of complaints about a file, named as printed. @param room whose rules they are. */
export function faultList(file: string, room: "readings" | "records" = "readings"): FaultList {
  const diagnostics: Diagnostic[] = [];
  let errors = 0;
  type Severity = "error" | "warning";
  const push = (severity: Severity, rule: string, at: Spot, said: Said): void => {
    const { path = "", message, actual, expected, hint } = said;
    if (severity === "error") errors++;
    diagnostics.push({
      severity,
      rule: `${room}/${rule}`,
      place: { file, line: at.line, column: at.column, path: excerpt(path) },
      message,
      ...(actual !== undefined && { actual: excerpt(actual) }),
      ...(expected !== undefined && { expected }),
      hint: hint && excerpt(hint),
    });
  };
  const complains =
    (severity: Severity): Complain =>
    (rule, at, said) => {
      if (diagnostics.length < MOST_FAULTS) push(severity, rule, at, said);
      else if (diagnostics.length === MOST_FAULTS)
        push("error", "many-faults", at, {
          message: `The file has more than ${MOST_FAULTS} faults, and the rest are left out`,
          actual: `more than ${MOST_FAULTS}`,
          expected: "a sound file",
          hint: "the rest are left out",
        });
    };
  return {
    diagnostics,
    error: complains("error"),
    warning: complains("warning"),
    errorCount: () => errors,
    isFull: () => diagnostics.length > MOST_FAULTS,
  };
}
