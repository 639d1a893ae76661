/** Longest word that is compared, in characters: a hostile record may hold longer ones, and nobody means them. */
const LONGEST_WORD = 120;

/**
 * The known word that an unknown one was most likely meant to be, for the hint
 * of a diagnostic. Letter case does not count. Near means at most one slip
 * (a letter added, left out, changed, or two neighbours swapped) for every three
 * letters of the longer word; the slips are the restricted Damerau-Levenshtein
 * distance (optimal string alignment).
 *
 * @param word what the record says.
 * @param known the closed vocabulary; of two equally near words the first is given.
 * @returns undefined when nothing is near.
 * @example nearestWord("titanium-whtie", ["zinc-white", "titanium-white"]) // "titanium-white"
 */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
  const written = folded(word);
  let nearest: { readonly word: string; readonly slips: number } | undefined;
  for (const candidate of known) {
    const meant = folded(candidate);
    const longer = Math.max(written.length, meant.length);
    if (longer > LONGEST_WORD) continue;
    const allowed = Math.min(Math.floor(longer / 3), (nearest?.slips ?? Infinity) - 1);
    if (Math.abs(written.length - meant.length) > allowed) continue;
    const slips = slipsBetween(written, meant);
    if (slips <= allowed) nearest = { word: candidate, slips };
  }
  return nearest?.word;
}

/** Characters without their case; cut just past the limit, so that a huge word costs nothing. */
function folded(word: string): string[] {
  return Array.from(
    word
      .slice(0, 2 * LONGEST_WORD + 2)
      .normalize("NFC")
      .toLowerCase(),
  );
}

/** Optimal string alignment distance: rows of the usual table, the last two kept for swaps. */
function slipsBetween(one: readonly string[], other: readonly string[]): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, j) => j);
  one.forEach((letter, i) => {
    const row = [i + 1];
    other.forEach((otherLetter, j) => {
      const changed = at(last, j) + (letter === otherLetter ? 0 : 1);
      const swapped =
        letter === other[j - 1] && one[i - 1] === otherLetter
          ? at(beforeLast, j - 1) + 1
          : Infinity;
      row.push(Math.min(at(last, j + 1) + 1, at(row, j) + 1, changed, swapped));
    });
    beforeLast = last;
    last = row;
  });
  return at(last, other.length);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Infinity;
}
