import type { AmountRecord } from "./schema/amount.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Every number of an amount with its place: one, or an estimate's two ends. */
export function amountEnds(
  amount: AmountRecord | undefined,
  path: RecordPath,
): { readonly value: number; readonly path: RecordPath }[] {
  if (amount === undefined) return [];
  if (typeof amount === "number") return [{ value: amount, path }];
  if (typeof amount.value === "number") return [{ value: amount.value, path: [...path, "value"] }];
  return amount.value.map((value, i) => ({ value, path: [...path, "value", i] }));
}
