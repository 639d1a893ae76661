import type { StatementOf } from "../quantities/statement.ts";

/** Two places in L*a*b*: how far the first lies from the second [Delta-E*ab], and which way. */
export interface PlacesApart {
  readonly one: string;
  readonly other: string;
  /** Of the first: a yellow that has less of it is no bluer for that. */
  readonly a: number;
  readonly b: number;
  readonly lighter: number;
  readonly redder: number;
  readonly yellower: number;
  readonly distance: number;
}

/** What two colours of several are compared by as a ratio. */
export const TIMES = ["strength", "whitens", "parts", "oilByMass", "oilByVolume"] as const;
export type Times = (typeof TIMES)[number];

/** Said of a difference between the nearer ends of estimates. */
interface NearerEnds {
  readonly atLeast?: "the nearer ends";
}

/** Everything that is said of colours side by side. */
export type ComparisonStatement =
  | StatementOf<"compared-masstones", PlacesApart>
  | StatementOf<"compared-tints", PlacesApart & { readonly L: number }>
  | StatementOf<
      "compared-ratio",
      NearerEnds & {
        readonly of: Times;
        readonly more: string;
        readonly less: string;
        readonly ratio: number;
      }
    >
  | StatementOf<
      "compared-days",
      NearerEnds & { readonly earlier: string; readonly later: string; readonly days: number }
    >
  | StatementOf<"compared-within", { readonly apart: number; readonly borne: number }>
  | StatementOf<"compared-within-share", { readonly share: number; readonly borne: number }>
  | StatementOf<"compared-too-close", Record<string, never>>
  | StatementOf<"compared-no-lightness", Record<string, never>>
  | StatementOf<"compared-one-expected", Record<string, never>>
  | StatementOf<"compared-otherwise-known", { readonly names: readonly string[] }>
  | StatementOf<"compared-shows-ground", { readonly names: readonly string[] }>
  | StatementOf<"compared-not-stated", { readonly names: readonly string[] }>;
