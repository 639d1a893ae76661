import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { pagesIn } from "./said.ts";
import { ENGLISH } from "../../lib/words/english.ts";

/** What asks for words: the program but for the words themselves, the templates, the scripts of pages. */
const READERS = ["lib", "templates", "assets/scripts"]
  .flatMap((room) =>
    readdirSync(room, { recursive: true, encoding: "utf8" }).map((file) => join(room, file)),
  )
  .filter((file) => /\.(?:ts|njk)$/.test(file))
  .filter((file) => !/^lib\/words\/(?:en|de|fr|es|rulings|pages)\//.test(file))
  .map((file) => readFileSync(file, "utf8"));

/** Names that a text asks something for: after a point, taken out of a value, or as one of a closed set. */
function askedNames(texts: readonly string[]): Set<string> {
  const asked = /\.(\w+)|[{,]\s*(\w+)\s*(?=[,}:])|"([\w -]*)"/g;
  return new Set(
    texts.flatMap((text) =>
      [...text.matchAll(asked)].map((match) => match[1] ?? match[2] ?? match[3] ?? ""),
    ),
  );
}

/** Paths of words that nobody asks for by that name, whatever they belong to. */
function unread(words: object, asked: ReadonlySet<string>, path = "pages"): string[] {
  return Object.entries(words).flatMap(([key, part]: [string, unknown]) => {
    const at = `${path}.${key}`;
    if (/^\w+$/.test(key) && !asked.has(key)) return [at];
    return typeof part === "object" && part !== null && !Array.isArray(part)
      ? unread(part, asked, at)
      : [];
  });
}

test("each word of the pages is asked for somewhere", () => {
  expect(READERS.length).toBeGreaterThan(500);
  expect(unread(pagesIn(ENGLISH), askedNames(READERS))).toEqual([]);
});

test("one that is only declared is named", () => {
  const asked = askedNames(['const { home: text } = words; say(text.lead, "paint");']);
  expect(unread({ home: { lead: "A", paint: "B", leads: "C" } }, asked)).toEqual([
    "pages.home.leads",
  ]);
});
