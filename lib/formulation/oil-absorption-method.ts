/**
 * Methods of finding the oil absorption. The figure is "no exact physical
 * constant" (Gettens & Stout 1942): lot, oil and rubbing move it, so the method
 * stands beside it.
 */
import type { SourceKey } from "../sources/source.ts";
import type { StatementOf } from "../quantities/statement.ts";

export interface OilAbsorptionMethod {
  /** The standard as a record names it. */
  readonly standard: string;
  readonly way: "spatula rub-out" | "palette-knife rub-out" | "stirred to a soft ball";
  /** Whether the CPVC equation is meant for it. */
  readonly forCpvc: boolean;
  readonly source: SourceKey;
}

const OIL_ABSORPTION_METHODS: readonly OilAbsorptionMethod[] = [
  { standard: "ASTM D281", way: "spatula rub-out", forCpvc: true, source: "astm-d281" },
  { standard: "ISO 787-5", way: "palette-knife rub-out", forCpvc: true, source: "iso-787-5" },
  { standard: "ASTM D1483", way: "stirred to a soft ball", forCpvc: false, source: "astm-d1483" },
];

/** The workshop's own words for a rub-out to no standard. */
const RUB_OUT = /\brub(bed)?[ -]?out\b|\bspatula\b|\bpalette[ -]knife\b/i;

export type OilAbsorptionStatement =
  | StatementOf<
      "oil-absorption-by-rub-out" | "oil-absorption-reads-higher",
      { readonly standard: string; readonly way: OilAbsorptionMethod["way"] }
    >
  | StatementOf<
      "oil-absorption-rubbed-out" | "oil-absorption-method-unknown",
      { readonly method: string }
    >
  | StatementOf<"oil-absorption-method-not-stated", Record<string, never>>;

/**
 * What a figure's method says of it.
 *
 * @param method text of the record, which may hold more than the standard's name.
 * @returns a rub-out, to a standard or not; a method that reads higher, so that the CPVC
 *   comes out too low; or a method not known here.
 */
export function oilAbsorptionMethodStatement(method: string | undefined): OilAbsorptionStatement {
  if (method === undefined)
    return { rule: "oil-absorption-method-not-stated", values: {}, source: "gettens-stout-1942" };
  const spelled = method.replaceAll(/[\s-]+/g, "").toUpperCase();
  const row = OIL_ABSORPTION_METHODS.find(({ standard }) =>
    spelled.includes(standard.replaceAll(/[\s-]+/g, "")),
  );
  if (row === undefined && RUB_OUT.test(method))
    return { rule: "oil-absorption-rubbed-out", values: { method }, source: "gettens-stout-1942" };
  if (row === undefined)
    return {
      rule: "oil-absorption-method-unknown",
      values: { method },
      source: "gettens-stout-1942",
    };
  return {
    rule: row.forCpvc ? "oil-absorption-by-rub-out" : "oil-absorption-reads-higher",
    values: { standard: row.standard, way: row.way },
    source: row.source,
  };
}
