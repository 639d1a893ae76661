/** A text with its slots, "Handbuchbereich für {a}"; a function where a language bends what stands in them. */
export type SlottedText = string | ((...slots: readonly string[]) => string);

/** An English text of sheet.json with its slots: "handbook range for {a}". */
interface Form {
  readonly text: SlottedText;
  readonly pattern: RegExp;
  readonly slots: readonly string[];
}

const SLOT = /\{([a-z])\}/g;

/**
 * Texts of a language by the English that a sheet says, a letter in braces standing for a name or a number.
 * @returns what an English text reads as; undefined for one that is not among them.
 */
export function slottedTexts(
  texts: Readonly<Record<string, SlottedText>>,
): (english: string) => string | undefined {
  const forms = formsOf(texts);
  return (english) => {
    for (const { pattern, text, slots } of forms) {
      const match = pattern.exec(english);
      if (match === null) continue;
      const found = match.slice(1);
      return typeof text === "function"
        ? text(...found)
        : text.replace(SLOT, (_, slot: string) => found[slots.indexOf(slot)] ?? "");
    }
    return undefined;
  };
}

/** Longer texts first, so that the one that says most is found. */
function formsOf(texts: Readonly<Record<string, SlottedText>>): readonly Form[] {
  return Object.entries(texts)
    .toSorted(([one], [other]) => other.replace(SLOT, "").length - one.replace(SLOT, "").length)
    .map(([english, text]) => ({
      text,
      pattern: new RegExp(
        `^${english
          .replaceAll("\u2019", "'")
          .replace(/[.*+?^$()|[\]\\/]/g, "\\$&")
          .replace(SLOT, "(.+?)")}$`,
        "u",
      ),
      slots: [...english.matchAll(SLOT)].map(([, slot = ""]) => slot),
    }));
}

/** A text of several parts, parted by semicolons, where each of them has a text; else as it is, a record's own words. */
export function allWorded(
  english: string,
  text: (part: string) => string | undefined,
  semicolon: string,
): string {
  const parts = english.split("; ").map(text);
  return parts.every((part) => part !== undefined) ? parts.join(semicolon) : english;
}
