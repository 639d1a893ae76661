import { escapedMarkup } from "../exchange/escaped-markup.ts";
import type { PageEntry } from "./page-entry.ts";

/** Every page's whole address, for search engines; the page for lost visitors and pages of before left out. */
export function sitemap(
  siteAddress: string,
  pages: readonly Pick<PageEntry, "path" | "isUnlisted">[],
): string {
  const base = siteAddress.endsWith("/") ? siteAddress : `${siteAddress}/`;
  const entries = pages
    .filter(({ path, isUnlisted }) => path !== "404.html" && isUnlisted !== true)
    .map(
      ({ path }) =>
        `  <url><loc>${escapedMarkup(new URL(path.replace(/index\.html$/, ""), base).href)}</loc></url>`,
    );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${entries.join("\n")}\n</urlset>\n`;
}
