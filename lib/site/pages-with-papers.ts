import type { AnyPageView } from "./all-pages.ts";
import { orderPath } from "../pages/catalogue-pages.ts";
import type { DownloadView } from "../present/views.ts";
import type { Paper } from "./asked-papers.ts";
import { pageWith } from "./page-entry.ts";
import { manifestWithPapers } from "./published-data.ts";
import type { RangeToPrint, Site } from "./site.ts";

/** The page that leads to the range on paper. */
const GRID_PATH = orderPath("grid");

/** Papers that a page may lead to. */
export function papersBeside(page: string, range: readonly string[]): string[] {
  const folder = page.replace(/(?:bench\/)?index\.html$/, "");
  return [`${folder}sheet.pdf`, `${folder}cards.pdf`, ...(page === GRID_PATH ? range : [])];
}

/** Pages that lead to the papers, with their sizes; the manifest that knows of them. */
export function withPapers(
  site: Site,
  isWaiting: (page: string) => boolean,
  papers: readonly Paper[],
  range: readonly string[],
  { context: { words } }: RangeToPrint,
): Site {
  const text = words.pages.sheetPaper.downloads;
  const sizes = new Map(papers.map(({ path, size }) => [path, text.kilobytes(size)]));
  const link = (path: string, href: string, note: (size: string) => string): DownloadView[] => {
    const size = sizes.get(path);
    return size === undefined
      ? []
      : [{ text: path.split("/").at(-1) ?? path, href, note: note(size) }];
  };
  const withLinks = (path: string, view: AnyPageView): AnyPageView => {
    if (view.kind === "sheet")
      return {
        ...view,
        actions: [
          ...link(path.replace("index.html", "sheet.pdf"), "sheet.pdf", text.sheet).map(
            ({ href }) => ({ text: words.pages.sheetPage.print, href }),
          ),
          ...view.actions,
        ],
      };
    if (view.kind === "bench")
      return {
        ...view,
        downloads: [
          ...link(path.replace("bench/index.html", "sheet.pdf"), "../sheet.pdf", text.sheet),
          ...view.downloads,
        ],
      };
    if (view.kind === "cards")
      return {
        ...view,
        downloads: [
          ...link(path.replace("index.html", "cards.pdf"), "cards.pdf", words.pages.cards.page.pdf),
          ...view.downloads,
        ],
      };
    if (path === GRID_PATH && view.kind === "catalogue-grid")
      return {
        ...view,
        downloads: [
          ...range.flatMap((part) =>
            link(part, `../${part}`, range.length === 1 ? text.range : text.rangePart),
          ),
          ...view.downloads,
        ],
      };
    return view;
  };
  return {
    ...site,
    pages: site.pages.map((page) =>
      isWaiting(page.path)
        ? pageWith(
            page,
            ({ site: frame, view }) => ({ site: frame, view: withLinks(page.path, view) }),
            papersBeside(page.path, range).map((path) => `${path} ${sizes.get(path) ?? ""}`),
          )
        : page,
    ),
    manifests: () =>
      site.manifests().map(({ path, text }) => ({
        path,
        text: manifestWithPapers(
          text,
          papers.map(({ path: own, key, hash }) => ({ path: own, key, hash })),
        ),
      })),
  };
}
