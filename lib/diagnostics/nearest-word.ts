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
 * @param known the closed vocabulary; of words equally near one of the same letters goes before one with
 * some too many or too few, and this before one with another letter; then the one that begins alike
 * for longer, then the first.
 * @returns undefined when nothing is near.
 * @example nearestWord("titanium-whtie", ["zinc-white", "titanium-white"]) // "titanium-white"
 */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
  const written = folded(word);
  let nearest: Candidate | undefined;
  for (const candidate of known) {
    const meant = folded(candidate);
    const longer = Math.max(written.length, meant.length);
    if (longer > LONGEST_WORD) continue;
    const allowed = Math.min(Math.floor(longer / 3), nearest?.slips ?? Infinity);
    if (Math.abs(written.length - meant.length) > allowed) continue;
    const slips = slipsBetween(written, meant);
    if (slips > allowed) continue;
    const alike = meant.findIndex((letter, i) => letter !== written[i]);
    const found = {
      word: candidate,
      slips,
      kind: slipKind(written, meant),
      alike: alike < 0 ? meant.length : alike,
    };
    if (nearest === undefined || isNearer(found, nearest)) nearest = found;
  }
  return nearest?.word;
}

/** The hint of a diagnostic that names it; undefined when nothing is near. */
export function nearestHint(word: string, known: Iterable<string>): string | undefined {
  const near = nearestWord(word, known);
  return near === undefined ? undefined : `nearest: ${near}`;
}

/** The same as the end of a sentence; empty when nothing is near. */
export function andNearest(word: string, known: Iterable<string>): string {
  const hint = nearestHint(word, known);
  return hint === undefined ? "" : `; ${hint}`;
}

interface Candidate {
  readonly word: string;
  readonly slips: number;
  readonly kind: 0 | 1 | 2;
  /** Letters that it has in common with the word from its beginning on. */
  readonly alike: number;
}

function isNearer(one: Candidate, other: Candidate): boolean {
  const order = one.slips - other.slips || one.kind - other.kind || other.alike - one.alike;
  return order < 0;
}

/** 0 of letters that were exchanged, 1 of letters too many or too few, 2 of a letter changed: how often a hand slips so, the most first. */
function slipKind(one: readonly string[], other: readonly string[]): 0 | 1 | 2 {
  const lengths = one.length - other.length;
  if (lengths === 0) return one.toSorted().join("") === other.toSorted().join("") ? 0 : 2;
  const [longer, shorter] = lengths > 0 ? [one, other] : [other, one];
  let met = 0;
  for (const letter of longer) if (letter === shorter[met]) met++;
  return met === shorter.length ? 1 : 2;
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
