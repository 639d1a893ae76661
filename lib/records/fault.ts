import type { Complaint } from "../diagnostics/complaint.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { amountEnds } from "./amount-ends.ts";
import type { AmountRecord } from "./schema/amount.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

/** What is wrong, without its place: an error, where it names no other severity. */
export type Fault = Omit<Complaint, "severity"> & Partial<Pick<Complaint, "severity">>;

/** What is wrong with records, one fault after another as they are found. */
export type Faults = Iterable<Diagnostic>;

/** What is wrong at a place of a record. */
export function faultAt(
  place: Diagnostic["place"],
  { severity = "error", rule, ...fault }: Fault,
): Diagnostic {
  return { severity, rule, place, ...fault };
}

/** What is wrong with a file as a whole: it is told at its first line. */
export function fileFault(file: string, fault: Fault): Diagnostic {
  return faultAt({ file, line: 1, column: 1, path: "" }, fault);
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
