import { sitemap } from "./sitemap.ts";
import { pageAt } from "./page-entry.ts";
import type { DataFile, Site } from "./site.ts";

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
  function* files(): Generator<DataFile> {
    for (const file of site.files())
      yield file.path === "sitemap.xml" && siteAddress !== undefined
        ? { ...file, text: sitemap(siteAddress, pages) }
        : file;
    for (const { folder, site: one } of translated)
      for (const file of one.files()) if (!ONCE.test(file.path)) yield fileAt(folder, file);
  }
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
    files,
    manifests: () => [...site.manifests(), ...below(({ manifests }) => manifests())],
    assets: () => [...(site.assets?.() ?? []), ...below(({ assets }) => assets?.())],
    papers: [...(site.papers ?? []), ...below(({ papers }) => papers)],
  };
}

/** The file in a folder; its text is not made for that. */
function fileAt(folder: string, file: DataFile): DataFile {
  return {
    path: `${folder}${file.path}`,
    ...(file.hash !== undefined && { hash: file.hash }),
    get text() {
      return file.text;
    },
  };
}

/** A site and the same in its other languages. */
export function allLanguages(site: Site): readonly Site[] {
  return [site, ...(site.translated ?? []).map(({ site: one }) => one)];
}
