import type { RunView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { given } from "../quantities/given.ts";

/** "Bone black (PBk 9) · Cold-pressed linseed oil, mulled", the pigments linked. Names stand as their records have them, each where a name may begin with a capital. */
export function madeOf(sheet: Sheet, words: Words, root: string): RunView[] {
  const { madeOf: text } = words.pages.sheet;
  const pigments = sheet.pigments.flatMap(({ slug, name, colourIndexName }, i): RunView[] =>
    given([
      i !== 0 && { text: text.between },
      { text: name, href: `${root}pigments/${slug}/` },
      ...(colourIndexName === undefined
        ? []
        : [{ text: " (" }, { text: colourIndexName, index: true }, { text: ")" }]),
    ]),
  );
  if (sheet.vehicle === undefined) return pigments;
  const others = sheet.additions.filter(({ oil }) => oil === undefined).map(({ name }) => name);
  return [
    ...pigments,
    {
      text: [text[sheet.dispersion ?? "plain"](sheet.vehicle.name), ...others]
        .map((each) => `${text.between}${each}`)
        .join(""),
    },
  ];
}

/** A headline with what is not known of a medium in the paint. */
export function withMediumNote(sentence: string, sheet: Sheet, words: Words): string {
  const mediums = mediumsOf(sheet);
  return mediums.length === 0 ? sentence : `${sentence} ${words.pages.sheet.holdsMediums(mediums)}`;
}

/** Names of mediums in it that are no drying oil: wax paste, resin, egg. */
function mediumsOf({ additions }: Sheet): string[] {
  return additions
    .filter(({ kind, oil }) => kind === "medium" && oil === undefined)
    .map(({ name }) => name);
}

export function madeOfText(sheet: Sheet, words: Words): string {
  return madeOf(sheet, words, "")
    .map(({ text }) => text)
    .join("");
}
