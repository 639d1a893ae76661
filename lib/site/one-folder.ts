import { sitemap } from "./sitemap.ts";
import { pageAt } from "./page-entry.ts";
import type { Site } from "./site.ts";

/** What a site has once for all its languages. */
const ONCE = /^(schema\/|sitemap\.xml$|404\.html$|_headers$|robots\.txt$|\.well-known\/)/;

/** A site with the pages, data and papers of its other languages in their folders, and all their pages in its list for search engines. */
export function inOneFolder({ translated = [], ...site }: Site, siteAddress?: string): Site {
  if (translated.length === 0) return site;
  const below = <T extends { readonly path: string }>(
    of: (one: Site) => readonly T[] | undefined,
  ): T[] =>
    translated.flatMap(({ folder, site: one }) =>
      (of(one) ?? [])
        .filter(({ path }) => !ONCE.test(path))
        .map((entry) => ({ ...entry, path: `${folder}${entry.path}` })),
    );
  const pages = [
    ...site.pages,
    ...translated.flatMap(({ folder, site: one }) =>
      one.pages
        .filter(({ path }) => !ONCE.test(path))
        .map((page) => pageAt(`${folder}${page.path}`, page)),
    ),
  ];
  return {
    ...site,
    scripts: translated.flatMap(({ folder, site: { language } }) =>
      language === undefined ? [] : [{ folder, language }],
    ),
    pages,
    files: () => [
      ...site
        .files()
        .map((file) =>
          file.path === "sitemap.xml" && siteAddress !== undefined
            ? { ...file, text: sitemap(siteAddress, pages) }
            : file,
        ),
      ...below(({ files }) => files()),
    ],
    assets: () => [...(site.assets?.() ?? []), ...below(({ assets }) => assets?.())],
    papers: [...(site.papers ?? []), ...below(({ papers }) => papers)],
  };
}

/** A site and the same in its other languages. */
export function allLanguages(site: Site): readonly Site[] {
  return [site, ...(site.translated ?? []).map(({ site: one }) => one)];
}
