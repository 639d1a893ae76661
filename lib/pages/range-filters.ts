import { keysOf } from "../quantities/members.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Words } from "../words/words.ts";
import type { RowFilters } from "./colour-row.ts";

/** What a visitor may narrow the range by, each with its test; a figure that is not known meets none, nor does one that reaches beyond. */
const FILTERS = {
  opaque: ({ optics }: Sheet) => has(optics.opacityClass, "opaque", "semi-opaque"),
  transparent: ({ optics }: Sheet) => has(optics.opacityClass, "transparent", "semi-transparent"),
  fast: ({ drying }: Sheet) => has(drying.class, "fast"),
  slow: ({ drying }: Sheet) => has(drying.class, "slow", "very slow"),
  lightfast: ({ permanence }: Sheet) => has(permanence.category, "I", "II"),
  unwarned: ({ cautions }: Sheet) =>
    cautions.signalWord === null &&
    cautions.hazardStatements.length + cautions.supplemental.length === 0 &&
    cautions.unknown.length + cautions.notClassified.length === 0,
} as const satisfies Record<string, (sheet: Sheet) => boolean>;

const KEYS = keysOf(FILTERS);

function has(figure: Figure<string>, ...words: readonly string[]): boolean {
  if (!isKnown(figure)) return false;
  const { value, reaches = [value] } = figure;
  return reaches.every((word) => words.includes(word));
}

/** Filters that a colour meets, and the whites that it was let down in. */
export function rowFilters(sheet: Sheet): RowFilters {
  const whites = sheet.tints.map(({ white: { slug, name } }) => [slug, name] as const);
  return {
    tags: [...KEYS.filter((key) => FILTERS[key](sheet)), ...whites.map(([slug]) => `in-${slug}`)],
    whites,
  };
}

/** Those that some colours meet and others do not. */
export function filterChoices(
  words: Words,
  rows: readonly RowFilters[],
): { readonly tag: string; readonly text: string }[] {
  const { filterNames, inThisWhite } = words.pages.catalogue;
  const whites = new Map(rows.flatMap((row) => row.whites));
  const choices = [
    ...KEYS.map((key) => ({ tag: key, text: filterNames[key] })),
    ...[...whites].map(([slug, name]) => ({ tag: `in-${slug}`, text: inThisWhite(name) })),
  ];
  const counts = new Map<string, number>();
  for (const tag of rows.flatMap(({ tags }) => [...new Set(tags)]))
    counts.set(tag, (counts.get(tag) ?? 0) + 1);
  return choices.filter(({ tag }) => {
    const count = counts.get(tag) ?? 0;
    return count > 0 && count < rows.length;
  });
}
