const COLLATORS = new Map<string, Intl.Collator>();

/**
 * Names in the order in which a reader of a language looks for them: figures by their size, so that
 * "Ochre 2" comes before "Ochre 10", and capitals and accents beside their plain letter. By the
 * collation of Unicode (UTS 35, part 5) with its numeric setting, `kn`.
 * @param language of the page, as BCP 47 writes it.
 * @returns what `sort` takes; 0 of equal texts alone.
 */
export function nameOrder(language: string): (one: string, other: string) => number {
  const collator = COLLATORS.get(language) ?? new Intl.Collator(language, { numeric: true });
  COLLATORS.set(language, collator);
  return (one, other) => collator.compare(one, other) || (one < other ? -1 : one > other ? 1 : 0);
}

/** Slugs, which are of no language: "ochre", "ochre-2", "ochre-10". */
export const slugOrder = nameOrder("en");

/** Files by what stands before the ending: "ochre.md" before "ochre-2.md". */
export function fileOrder(one: string, other: string): number {
  return slugOrder(stemOf(one), stemOf(other)) || slugOrder(one, other);
}

function stemOf(file: string): string {
  return file.replace(/\.[^./]+$/, "");
}
