/** What the search of a large range is sent: how much of it, and that everything can still be found. */
import { expect, test } from "vitest";
import type { SearchDocument } from "../../lib/blocks/search-document.ts";
import {
  searchedLetters,
  searchPartPath,
  searchParts,
  SENT_AT_ONCE,
} from "../../lib/pages/search-parts.ts";

const FAMILIES = ["Bone Black", "Raw Umber", "Titanium White", "Cobalt Blue"];

/** A range whose names differ by one word alone, all of them in one oil. */
function documents(count: number): SearchDocument[] {
  return Array.from({ length: count }, (_, id) => ({
    id,
    kind: "colour",
    title: `${FAMILIES[id % FAMILIES.length]} ${id}`,
    words: "linseed oil",
    text: "",
    href: `colours/${id}/`,
  }));
}

test("a range that is sent at once has no parts", () => {
  expect(searchParts(documents(SENT_AT_ONCE)).size).toBe(0);
  expect(searchParts(documents(SENT_AT_ONCE + 1)).size).toBeGreaterThan(0);
});

test("each document is in the part of a word that is its own", () => {
  const parts = searchParts(documents(3000));
  for (const { id, title } of documents(3000)) {
    const found = searchedLetters(title).flatMap((letter) => parts.get(letter) ?? []);
    expect(found.some((one) => one.id === id)).toBe(true);
  }
});

test("the part of a word that all share is as large for twice as many", () => {
  const size = (count: number): number => searchParts(documents(count)).get("l")?.length ?? 0;
  expect(size(2000)).toBe(200);
  expect(size(4000)).toBe(200);
});

test("a letter has a file of its own name, any other sign one by its number", () => {
  expect(searchedLetters("Éarth  PBk-9")).toEqual(["é", "p", "9"]);
  expect(searchPartPath("p")).toBe("search/p.js");
  expect(searchPartPath("é")).toBe("search/u00e9.js");
  expect(searchPartPath("/")).toBe("search/u002f.js");
});
