/** Whether the paints that a mixture would be reckoned from carry it, and in which whites. */
import type { StatementOf } from "../../quantities/statement.ts";
import type { PredictingFit, FitRefusal } from "../fit/colour-fit.ts";

/** Why nothing is predicted of a mixture. */
export type NotMixed =
  | StatementOf<"parts-not-recorded", Record<string, never>>
  | StatementOf<"component-not-let-down" | "no-common-white", { components: readonly string[] }>;

export type OilNotKnown = StatementOf<"oil-of-paint-not-known", { paints: readonly string[] }>;

/** A pigment of a mixture, with the fit of a paint made of it alone. */
export interface MixedComponent {
  readonly name: string;
  /** Part by mass of the dry pigment; undefined when nobody wrote it down. */
  readonly parts: number | undefined;
  /** Undefined: no paint is made of this pigment alone. */
  readonly fit: PredictingFit | FitRefusal | undefined;
}

/**
 * Whites in which every component was let down, in the order of the first's.
 * @returns their slugs, at least one; rules `parts-not-recorded`, `component-not-let-down` (with the names), `no-common-white`.
 */
export function commonWhites(components: readonly MixedComponent[]): readonly string[] | NotMixed {
  if (components.some(({ parts }) => parts === undefined))
    return { rule: "parts-not-recorded", values: {} };
  const missing = components.filter(({ fit }) => fit?.kind !== "fit").map(({ name }) => name);
  if (missing.length > 0)
    return { rule: "component-not-let-down", values: { components: missing } };
  const [first = [], ...others] = components.map(({ fit }) =>
    fit?.kind === "fit" ? fit.whites.map(({ slug }) => slug) : [],
  );
  const common = first.filter((slug) => others.every((slugs) => slugs.includes(slug)));
  return common.length > 0
    ? common
    : { rule: "no-common-white", values: { components: components.map(({ name }) => name) } };
}

/**
 * Which paints cannot be reckoned by weight, since nobody knows how much of them is oil.
 * @param paints pigment by mass of each paint [1]; undefined where its oil is not known.
 * @returns `oil-of-paint-not-known` with the names; undefined when all are known.
 */
export function unknownOilRuling(
  paints: readonly { readonly name: string; readonly pigmentFraction: number | undefined }[],
): OilNotKnown | undefined {
  const unknown = paints
    .filter(({ pigmentFraction }) => pigmentFraction === undefined)
    .map(({ name }) => name);
  return unknown.length === 0
    ? undefined
    : { rule: "oil-of-paint-not-known", values: { paints: unknown } };
}
