import type { DecimalMark, PrintedNumbers } from "./number-text.ts";
import { METHOD_TEXTS, type MethodTexts } from "./en/methods.ts";

/** A text of sheet.json with its slots: "handbook range for {a}". */
interface Form {
  readonly english: keyof MethodTexts;
  readonly pattern: RegExp;
  readonly slots: readonly string[];
}

const SLOT = /\{([a-z])\}/g;

/** Longer texts first, so that the one that says most of a method is found. */
const FORMS: readonly Form[] = METHOD_TEXTS.toSorted(
  (one, other) => other.replace(SLOT, "").length - one.replace(SLOT, "").length,
).map((english) => ({
  english,
  pattern: new RegExp(
    `^${english
      .replaceAll("\u2019", "'")
      .replace(/[.*+?^$()|[\]\\/]/g, "\\$&")
      .replace(SLOT, "(.+?)")}$`,
    "u",
  ),
  slots: [...english.matchAll(SLOT)].map(([, slot = ""]) => slot),
}));

/** How a figure was found, in a language: each of its parts, parted by semicolons, unless a part is a record's own words. */
export function methodText(
  method: string,
  texts: MethodTexts,
  { mark }: Pick<PrintedNumbers, "mark">,
  semicolon = "; ",
): string {
  const parts = method.split("; ").map((part) => partText(part, texts, mark));
  return parts.every((part) => part !== undefined) ? parts.join(semicolon) : method;
}

function partText(part: string, texts: MethodTexts, mark: DecimalMark): string | undefined {
  for (const { english, pattern, slots } of FORMS) {
    const found = pattern.exec(part);
    if (found !== null)
      return texts[english].replace(SLOT, (_, slot: string) =>
        (found[slots.indexOf(slot) + 1] ?? "").replace(/^\d+\.\d+$/, (number) =>
          number.replace(".", mark),
        ),
      );
  }
  return undefined;
}
