import type { StatementTrace } from "../classify/finding.ts";

/**
 * The reasons of a pure substance, or of a mixture that its supplier classifies
 * as a whole: no limit decides what is there to a hundred per cent.
 * @param slug of the one ingredient.
 */
export function suppliersTraces(traces: readonly StatementTrace[], slug: string): StatementTrace[] {
  return traces.map((trace) => {
    const { statement, shares } = trace;
    const isItsOwn =
      shares.length > 0 &&
      shares.every((share) => share.slug === slug && share.statement === statement);
    return isItsOwn
      ? { statement, rule: "as-its-supplier-states", values: { ingredients: [slug] }, shares }
      : trace;
  });
}
