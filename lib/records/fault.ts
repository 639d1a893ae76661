import type { Complaint } from "../diagnostics/complaint.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { amountEnds } from "./amount-ends.ts";
import type { AmountRecord } from "./schema/amount.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

/** What is wrong, without its place: an error, where it names no other severity. */
export type Fault = Omit<Complaint, "severity"> & Partial<Pick<Complaint, "severity">>;

/** What is wrong with records, one fault after another as they are found. */
export type Faults = Iterable<Diagnostic>;

type Place = Diagnostic["place"];
/** What a rule says of a place. */
type Said = Omit<Complaint, "severity" | "rule">;

/** What is wrong at a place of a record. */
export function faultAt(place: Place, { severity = "error", rule, ...fault }: Fault): Diagnostic {
  return { severity, rule, place, ...fault };
}

/** An error at a place of a record. */
export function errorAt(place: Place, rule: Fault["rule"], said: Said): Diagnostic {
  return faultAt(place, { rule, ...said });
}

/** A warning at a place of a record. */
export function warningAt(place: Place, rule: Fault["rule"], said: Said): Diagnostic {
  return faultAt(place, { severity: "warning", rule, ...said });
}

/** A note at a place of a record: what `check` alone lists. */
export function noteAt(place: Place, rule: Fault["rule"], said: Said): Diagnostic {
  return faultAt(place, { severity: "note", rule, ...said });
}

/** Where a file as a whole is complained of: at its first line. */
export function fileStart(file: string): Place {
  return { file, line: 1, column: 1, path: "" };
}

/** What a share in percent would be, had it been given as a fraction. */
export function fractionHint(percent: number): string {
  return `${Number((100 * percent).toPrecision(3))} %, if it was given as a fraction`;
}

/** What is wrong with one end of an amount: its other end says no more. */
export function* firstFault(
  { place }: YamlRecord,
  amount: AmountRecord | undefined,
  path: RecordPath,
  faultOf: (value: number) => Fault | undefined,
): Faults {
  for (const end of amountEnds(amount, path)) {
    const fault = faultOf(end.value);
    if (fault === undefined) continue;
    yield faultAt(place(end.path), fault);
    return;
  }
}
