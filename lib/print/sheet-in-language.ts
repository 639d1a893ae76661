import type { Records } from "../records/records.ts";
import type { Language } from "../quantities/languages.ts";
import type { Sheet } from "../sheet/sheet.ts";

/**
 * The language that what is said but once stands in: the page's own where it is one of the
 * languages asked for, else the first of them.
 */
export function leadingLanguage(languages: readonly Language[], own: Language): Language {
  const [first = own] = languages;
  return languages.includes(own) ? own : first;
}

/** The sheet with names as their records translate them; what nobody translated keeps its name. */
export function sheetNamedIn(sheet: Sheet, language: Language, records: Records): Sheet {
  const { pigments, vehicles, colours } = records;
  const named = <P extends { readonly slug: string; readonly name: string }>(
    part: P,
    all: ReadonlyMap<string, { readonly record: Translated }>,
  ): P => {
    const name = all.get(part.slug)?.record.translations?.[language]?.name;
    return name === undefined ? part : { ...part, name };
  };
  const { vehicle } = sheet;
  return {
    ...named(sheet, colours),
    pigments: sheet.pigments.map((part) => named(part, pigments)),
    ...(vehicle !== undefined && { vehicle: named(vehicle, vehicles) }),
    additions: sheet.additions.map((part) => named(part, vehicles)),
    tints: sheet.tints.map((tint) => ({ ...tint, white: named(tint.white, colours) })),
  };
}

interface Translated {
  readonly translations?:
    { readonly [L in Language]?: { readonly name?: string | undefined } | undefined } | undefined;
}
