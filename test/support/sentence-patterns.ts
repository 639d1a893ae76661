/** A sentence as one sheet says it. */
export interface SaidOnce {
  readonly slug: string;
  readonly text: string;
  /** Names in it that other sheets have others for. */
  readonly names: readonly string[];
}

interface Taken {
  readonly slug: string;
  /** What stands in each place that may differ, in order. */
  readonly values: readonly string[];
}

/** A number as it is printed, or a range of two; not what belongs to the code of a standard, such as D4303. */
const NUMBER = /(?<![\p{L}\d./-])[−-]?\d+(?:[.,\u202f]\d+)*(?:[–-]\d+(?:\.\d+)?)?(?![\p{L}\d/])/u;
/** A hazard statement's code, such as H360Df. */
const HAZARD_CODE = /(?<!\p{L})(?:EUH|H)\d{3}[A-Za-z]*/u;

/** Stands for a place in a sentence while it is looked up. */
const PLACE = "\u0000";
/** Places that follow one another in a list: how many there are is no matter of the sentence. */
const LISTED = new RegExp(`${PLACE}(?:, ${PLACE})*(?: and ${PLACE})`, "g");

/**
 * Each sentence once with the sheets that say it: two lines a sentence. What is the same in
 * all of them stands in the sentence; what differs is a letter there, and stands beside each sheet.
 * @param slugs of all sheets.
 */
export function sentencePatterns(said: readonly SaidOnce[], slugs: readonly string[]): string[] {
  const patterns = new Map<string, Taken[]>();
  for (const one of said) {
    const { pattern, values } = patternOf(withItsOwnNames(one, said));
    patterns.set(pattern, [...(patterns.get(pattern) ?? []), { slug: one.slug, values }]);
  }
  return [...patterns].flatMap(([pattern, taken]) => printed(pattern, taken, slugs));
}

/** Without a name that a sheet without such a thing says too: a ground of chalk is no pigment of the paint. */
function withItsOwnNames(one: SaidOnce, said: readonly SaidOnce[]): SaidOnce {
  const alike = said.filter(({ text }) => text === one.text);
  return {
    ...one,
    names: one.names.filter((name) => alike.every(({ names }) => names.includes(name))),
  };
}

function patternOf({ text, names }: SaidOnce): { pattern: string; values: string[] } {
  const values: string[] = [];
  const alternatives = [
    ...names
      .filter((name) => name !== "")
      .toSorted((one, other) => other.length - one.length)
      .map((name) => name.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)),
    HAZARD_CODE.source,
    NUMBER.source,
  ];
  const places = text.replaceAll(new RegExp(alternatives.join("|"), "giu"), (found) => {
    values.push(found);
    return PLACE;
  });
  return listsAsOne(places, values);
}

function listsAsOne(
  places: string,
  values: readonly string[],
): { pattern: string; values: string[] } {
  const merged: string[] = [];
  let taken = 0;
  const take = (count: number): string => {
    merged.push(values.slice(taken, taken + count).join(" and "));
    taken += count;
    return PLACE;
  };
  const pattern = places.replaceAll(new RegExp(`${LISTED.source}|${PLACE}`, "g"), (found) =>
    take(found.split(PLACE).length - 1),
  );
  return { pattern, values: merged };
}

function printed(pattern: string, taken: readonly Taken[], slugs: readonly string[]): string[] {
  const [first] = taken;
  if (first === undefined) return [];
  const differs = first.values.map((value, i) =>
    taken.some(({ values }) => values[i]?.toLowerCase() !== value.toLowerCase()),
  );
  let place = -1;
  let letter = -1;
  const sentence = pattern.replaceAll(PLACE, () => {
    place += 1;
    if (differs[place] !== true) return first.values[place] ?? "";
    letter += 1;
    return `[${String.fromCharCode(97 + letter)}]`;
  });
  return [`  ${sentence}`, `    ${tellers(taken, differs, slugs)}`];
}

function tellers(
  taken: readonly Taken[],
  differs: readonly boolean[],
  slugs: readonly string[],
): string {
  if (differs.includes(true))
    return taken
      .map(({ slug, values }) => `${slug} (${values.filter((_, i) => differs[i]).join("; ")})`)
      .join(", ");
  const silent = slugs.filter((slug) => !taken.some((one) => one.slug === slug));
  if (silent.length === 0) return "every sheet";
  return silent.length < taken.length / 2
    ? `every sheet but ${silent.join(", ")}`
    : taken.map(({ slug }) => slug).join(", ");
}
