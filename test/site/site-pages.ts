import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inject } from "vitest";
import { filesIn } from "../support/files-in.ts";

export interface SitePage {
  /** Below the output: `colours/bone-black/index.html`. */
  readonly file: string;
  readonly html: string;
  /** What kind of page it says it is: `sheet`. */
  readonly kind: string;
}

/** Every HTML page of the demonstration site, in order of file. */
export function sitePages(): SitePage[] {
  return pagesIn(inject("siteDir"));
}

/** Every page of the demonstration workshop's own. */
export function workshopPages(): SitePage[] {
  return pagesIn(inject("workshopDir"));
}

function pagesIn(dir: string): SitePage[] {
  const files = filesIn(dir).filter((file) => file.endsWith(".html"));
  if (files.length === 0) throw new Error("Unexpected site without a page");
  return files.map((file) => {
    const html = readFileSync(join(dir, file), "utf8");
    return { file, html, kind: /<body class="kind-([a-z-]+)"/.exec(html)?.[1] ?? "none" };
  });
}

/** Every file of the demonstration site, in order. */
export function siteFiles(): string[] {
  return filesIn(inject("siteDir"));
}

/** Every file of the demonstration workshop's own pages. */
export function workshopFiles(): string[] {
  return filesIn(inject("workshopDir"));
}

/** Sheets at both ends of completeness: many drawdowns in three whites, a chip by eye alone, nothing but a name and pigments. */
const SHEETS = [
  ...["lamp-black", "green-earth", "slate-grey"].flatMap((slug) => [
    `colours/${slug}/index.html`,
    `colours/${slug}/bench/index.html`,
  ]),
  // All of them are one table.
  ...["lamp-black", "slate-grey"].map((slug) => `colours/${slug}/evidence/index.html`),
];

/** The longest page of each kind, every page of text but for the colours' evidence, and three sheets with their bench pages, two with their evidence. */
export function pagesOfEachKind(): SitePage[] {
  const pages = sitePages();
  const others = pages.filter(
    ({ kind, file }) => !(file.startsWith("colours/") && ["sheet", "bench", "text"].includes(kind)),
  );
  return [
    ...others.filter(({ kind }) => kind === "text"),
    ...longestOf(
      others.filter(({ kind }) => kind !== "text"),
      ({ kind }) => kind,
    ),
    ...pages.filter(({ file }) => SHEETS.includes(file)),
  ];
}

/** The longest page of each of the workshop's folders. */
export function workshopPagesOfEachKind(): SitePage[] {
  return longestOf(workshopPages(), ({ file }) => file.replace(/\/.*/, ""));
}

function longestOf(pages: readonly SitePage[], key: (page: SitePage) => string): SitePage[] {
  const longest = new Map<string, SitePage>();
  for (const page of pages) {
    const known = longest.get(key(page));
    if (known === undefined || page.html.length > known.html.length) longest.set(key(page), page);
  }
  return [...longest.values()];
}
