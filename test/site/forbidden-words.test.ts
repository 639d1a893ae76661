import { readFileSync } from "node:fs";
import { join } from "node:path";
import PdfDocument from "pdfkit";
import { describe, expect, inject, test } from "vitest";
import { forbiddenWords } from "../support/known.ts";
import { STATEMENT_LANGUAGES } from "../../lib/hazard/texts/statement-texts.ts";
import { readPdf } from "../support/read-pdf.ts";
import { siteFiles, sitePages } from "./site-pages.ts";

/**
 * Words that a sheet never prints on its own authority (the issue; common
 * practice), looked for in every language of the labels in all that is published,
 * whatever language it is in: a claim in the wrong language is one all the same.
 * A toxicologist's dated review is quoted, and so spared.
 */
function found(text: string): string[] {
  return STATEMENT_LANGUAGES.flatMap((language) =>
    forbiddenWords(text, language).map(
      ({ word, start }) =>
        `${language}: ${word} in "${text.slice(Math.max(0, start - 40), start + 40)}"`,
    ),
  );
}

const LOOKED_THROUGH = new Set<string>();

/** What is found in pieces of text of which each may make a claim by itself; a piece that stands on many pages is looked through once. */
function foundFirst(pieces: readonly string[]): string[] {
  const first = [...new Set(pieces)].filter((piece) => !LOOKED_THROUGH.has(piece));
  for (const piece of first) LOOKED_THROUGH.add(piece);
  return found(first.join("\n\n"));
}

/** Where one text of a page ends and another begins. */
const END_OF_TEXT = /<\/(?:p|li|t[dh]|d[dt]|h[1-6]|figcaption|title|summary|caption)>/;

/** What a reader of a page reads or hears, by its texts: text, text alternatives and the description for search engines. */
function readable(html: string): string[] {
  const spoken = [...html.matchAll(/\s(?:alt|aria-label|title|content)="([^"]*)"/g)].map(
    ([, text = ""]) => text,
  );
  const texts = html
    .replace(/<(script|style)\b[\s\S]*?<\/\1>/g, " ")
    .replace(/<q>[\s\S]*?<\/q>/g, " ")
    .split(END_OF_TEXT)
    .map((text) => text.replace(/<[^>]*>/g, " "));
  return [...texts, ...spoken].map((text) =>
    text
      .replaceAll("&amp;", "&")
      .replaceAll("&#39;", "'")
      .replaceAll("&quot;", '"')
      .replaceAll("&nbsp;", " "),
  );
}

/** Every text in data but the paths of figures: numbers claim nothing. */
function phrases(value: unknown): string[] {
  if (typeof value === "string") return /^\S+\.\S+$/.test(value) ? [] : [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(phrases) : [];
}

describe("no page of the demonstration makes a claim that nobody has reviewed", () => {
  test.each(sitePages())("$file", ({ html }) => expect(foundFirst(readable(html))).toEqual([]));
});

describe("nor does its data", () => {
  const files = siteFiles().filter(
    (file) => /\.(json|csv|xml|txt|webmanifest)$/.test(file) && !file.startsWith("schema/"),
  );
  test("there is some", () => expect(files.length).toBeGreaterThan(39));
  test.each(files)("%s", (file) => {
    const text = readFileSync(join(inject("siteDir"), file), "utf8");
    expect(foundFirst(file.endsWith(".json") ? phrases(JSON.parse(text)) : [text])).toEqual([]);
  });
});

/** The texts of a paper in its reading order, a line break being a blank; what a review says is quoted. */
async function printed(bytes: Uint8Array): Promise<string> {
  const { pages } = await readPdf(bytes);
  return pages
    .map(({ texts }) => texts.map(({ text }) => text).join(" "))
    .join("\n")
    .replace(/\u201c[^\u201d]*\u201d/g, " ");
}

describe("nor do its papers: sheets, the range, shelf cards", () => {
  const isSheet = (file: string): boolean => file.endsWith("/sheet.pdf");
  const papers = siteFiles().filter((file) => file.endsWith(".pdf"));
  // The range has every sheet in it, as it was laid out for its own paper.
  const files = papers.filter((file) => !isSheet(file) || file.includes("/lead-white/"));
  test("there are a sheet for each colour, the range and the cards", () => {
    expect(papers.filter(isSheet).length).toBeGreaterThan(30);
    expect(files).toEqual(
      expect.arrayContaining(["range.pdf", "cards/cards.pdf", "colours/lead-white/sheet.pdf"]),
    );
  });
  test.each(files)("%s", async (file) => {
    const text = await printed(readFileSync(join(inject("siteDir"), file)));
    expect(text.length).toBeGreaterThan(200);
    expect(found(text)).toEqual([]);
  });

  test("a claim would be found on paper, though a line breaks within it", async () => {
    const pdf = new PdfDocument({ size: [200, 200] });
    const chunks: Uint8Array[] = [];
    const done = new Promise<Uint8Array>((resolve) => {
      pdf.on("data", (chunk: Uint8Array) => chunks.push(chunk));
      pdf.on("end", () => {
        resolve(Buffer.concat(chunks));
      });
    });
    pdf.text("This white is not", 10, 20).text("hazardous; ein ungiftiges Weiß.", 10, 40);
    pdf.end();
    expect(found(await printed(await done)).map((line) => line.replace(/ in .*/s, ""))).toEqual([
      "en: not hazardous",
      "de: ungiftiges",
    ]);
  });
});

test("a claim would be found in what a page says, in any of the languages, in the first of the pages that say it", () => {
  const pieces = readable(
    '<p>A <b>non-toxic</b>&nbsp;white, <i lang="de">ungiftig</i></p><img alt="Perfectly safe"><q>safe</q>',
  );
  expect(foundFirst(pieces).map((line) => line.replace(/ in .*/s, ""))).toEqual([
    "en: non-toxic",
    "en: safe",
    "de: ungiftig",
  ]);
  expect(foundFirst(pieces)).toEqual([]);
});
