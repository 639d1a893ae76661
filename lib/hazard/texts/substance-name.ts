/** Names of substances that a label gives, by language. */
import type { StatementLanguage } from "./statement-texts.ts";

export interface SubstanceNameRow {
  readonly casNumber: string;
  /** As English labels name it; a record may name it otherwise. */
  readonly en: string;
  readonly fr: string;
  readonly de: string;
  readonly es: string;
}

/** What a record calls a substance in other languages. */
export type NamesByLanguage = { readonly [L in StatementLanguage]?: string | undefined };

/** A substance as a record names it. */
export interface NamedSubstance {
  readonly name: string;
  readonly names?: NamesByLanguage | undefined;
  readonly casNumber?: string | undefined;
}

/**
 * A substance's name in a language: as its record has it, else by its CAS number, else by the name itself, in
 * whatever language that is.
 * @returns undefined when no row names it: the record's own name then stands.
 */
export function substanceName(
  { name, names, casNumber }: NamedSubstance,
  language: StatementLanguage,
  rows: readonly SubstanceNameRow[],
): string | undefined {
  const own = names?.[language];
  if (own !== undefined) return own;
  const known = name.toLowerCase();
  const row =
    rows.find((each) => each.casNumber === casNumber) ??
    rows.find(({ en, fr, de, es }) =>
      [en, fr, de, es].some((each) => each.toLowerCase() === known),
    );
  return row?.[language];
}
