import type { Interval } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";

/** Everything that may be said of a photograph's colours. */
export type PhotographStatement =
  | StatementOf<
      "photograph-corrected",
      { readonly patches: number; readonly median: number; readonly largest: number }
    >
  | StatementOf<"photograph-not-corrected", { readonly median: number; readonly limit: number }>
  | StatementOf<"photograph-as-it-came", Readonly<Record<string, never>>>
  | StatementOf<"light-evened", { readonly percent: number }>
  | StatementOf<
      "colour-of-photograph",
      { readonly L: Interval; readonly a: Interval; readonly b: Interval }
    >
  | StatementOf<"photograph-beside-reading", { readonly deltaE00: number }>
  | StatementOf<"texture-in-read-colour", Readonly<Record<string, never>>>;
