/** What the search of a large range is sent: in parts by the letter that a word begins with, fetched as they are typed. */
import type { SearchDocument } from "../blocks/search-document.ts";

/** More documents than these are sent in parts. Our own choice, by what a visitor waits for. */
export const SENT_AT_ONCE = 400;
/** Of a word that more documents share so many are filed under it: fewer are shown, and another word tells them apart. */
const OF_ONE_WORD = 200;

/** Documents by the letters that their words begin with; none of a few documents. */
export function searchParts(
  documents: readonly SearchDocument[],
): ReadonlyMap<string, readonly SearchDocument[]> {
  if (documents.length <= SENT_AT_ONCE) return new Map();
  const parts = new Map<string, Set<SearchDocument>>();
  const filed = new Map<string, number>();
  for (const document of documents) {
    for (const word of new Set(searchedWords(`${document.title} ${document.words}`))) {
      const count = (filed.get(word) ?? 0) + 1;
      filed.set(word, count);
      if (count > OF_ONE_WORD) continue;
      const letter = firstLetter(word);
      const part = parts.get(letter) ?? new Set();
      parts.set(letter, part.add(document));
    }
  }
  return new Map([...parts].map(([letter, part]) => [letter, [...part]]));
}

/** Letters of what is searched for: of each the part has to be there. */
export function searchedLetters(words: string): string[] {
  return [...new Set(searchedWords(words).map(firstLetter))];
}

/** "search/b.js" of a letter; what is none of a to z and no digit goes by its number. */
export function searchPartPath(letter: string): string {
  const name = /^[a-z0-9]$/.test(letter)
    ? letter
    : `u${(letter.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
  return `search/${name}.js`;
}

/** As the index in the browser cuts a text into words. */
function searchedWords(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[\n\r\p{Z}\p{P}]+/u)
    .filter((word) => word !== "");
}

function firstLetter(word: string): string {
  return String.fromCodePoint(word.codePointAt(0) ?? 0);
}
