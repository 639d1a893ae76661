import { setImmediate as turn } from "node:timers/promises";
import { hashedAssets, withHashedNames } from "./hashed-names.ts";
import { keptFiles, keptPages, type PagesOf } from "./kept-pages.ts";
import { knownFiles } from "./known-files.ts";
import { listFilesInManifest } from "./output-manifest.ts";
import { followingBuilds } from "./reload-script.ts";
import { renderedPages } from "./rendered-pages.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { PictureToDraw } from "../pictures/drawn-picture.ts";
import { begunPictures, PICTURE_MODULES, type BegunPictures } from "../pictures/kept-pictures.ts";
import type { SitePicture } from "../pictures/site-pictures.ts";
import { contentHash } from "../kept/content-hash.ts";
import { assetsOf, isAsset } from "./site-assets.ts";
import type { DataFile, Site } from "./site.ts";
import type { ServedPages } from "./site-task.ts";
import type { PageEntry } from "./page-entry.ts";
import type { WorkThreads } from "./work-threads.ts";
import { writtenFiles, type WrittenFiles } from "./written-files.ts";

/** Eleventy holds all that it renders until all of it is written: so many pages are handed to it at a time. Our own choice. */
const PAGES_AT_ONCE = 100;

/** Fewer are rendered at a time where somebody may ask for one meanwhile. Our own choice. */
const SERVED_AT_ONCE = 8;
/** Likewise of files that are brought. Our own choice. */
const BROUGHT_AT_ONCE = 64;

/** What of a site there is only after a while: a page that waits for it is made once it is there. */
export interface LaterSite {
  readonly isWaiting: (page: string) => boolean;
  readonly whole: () => Promise<Site>;
}

/** Where and how a site is written. */
export interface Writing extends PagesOf {
  /** Without it all of the site is there. */
  readonly later?: LaterSite;
  /** What is written by now, as papers. */
  readonly written?: WrittenFiles;
  /** Of pictures and pages; without it each is made. */
  readonly cache?: WorkCache;
  /** That pictures are drawn in; without it here, on threads of their library's. */
  readonly threads?: WorkThreads | undefined;
  /** Who serves pages while they are made, and says which are wanted first. */
  readonly served?: ServedPages | undefined;
}

/** Render every page with Eleventy and write data, styles and fonts beside them, all below `dir`. */
export async function writeSite(site: Site, writing: Writing): Promise<void> {
  await (await begunSite(site, writing)).rest();
}

/** A site whose styles, scripts and fonts are written. */
export interface BegunSite {
  /** Make those of these pages that there are not yet, as many as go at once. */
  readonly pages: (paths: readonly string[]) => Promise<void>;
  /** Write the data, and make all pages that wait for nothing, those first that are wanted by then. */
  readonly sooner: () => Promise<void>;
  /** Make all others, and write down what there is. */
  readonly rest: () => Promise<void>;
}

/**
 * On screen alone there are no pictures to pass on, and pages follow the builds. A page that would
 * come out as in the earlier output is taken from there.
 */
export async function begunSite(site: Site, writing: Writing): Promise<BegunSite> {
  const { dir, earlierDir, kind, output, cache, served, later } = writing;
  const { written = writtenFiles(dir, earlierDir, knownFiles(cache, output, kind)) } = writing;
  const assets = hashedAssets(await assetsOf(site, output));
  for (const { path, bytes } of assets.files) written.write(path, bytes);
  // They are drawn while pages are made.
  const pictures =
    kind === "paper" ? writtenPictures(site.pictures?.() ?? [], writing, written) : undefined;
  const base = site.base ?? "/";
  const kept = keptPages(cache, writing, base, assets.paths, written);
  const all = site.pages.map(({ path }) => path);
  const left = new Map(site.pages.map((page) => [page.path, page]));
  const most = served === undefined ? PAGES_AT_ONCE : SERVED_AT_ONCE;
  let isDataThere = false;
  const tell = (made: readonly string[]): void => served?.made({ output, made, all, isDataThere });
  // From now on pages are waited for, and so wanted.
  tell([]);
  const isSooner = (path: string): boolean => later?.isWaiting(path) !== true;
  const data = async (): Promise<void> => {
    if (isDataThere) return;
    await makeWanted(isSooner);
    let count = 0;
    for (const write of dataWrites(site, written)) {
      write();
      if (++count % BROUGHT_AT_ONCE === 0) await makeWanted(isSooner);
    }
    if (later === undefined) writeFiles(site.manifests(), written);
    isDataThere = true;
    tell([]);
  };
  /** Of these pages as many as are rendered at a time. */
  const make = async (paths: readonly string[]): Promise<void> => {
    // Here and after each page it is heard what threads have done meanwhile, and they are asked for what waited for it.
    await turn();
    const made: string[] = [];
    const pages: PageEntry[] = [];
    for (const path of paths) {
      const page = left.get(path);
      if (page === undefined) continue;
      left.delete(path);
      made.push(path);
      if (kept.isTaken(page)) page.letGo();
      else pages.push(page);
      if (pages.length === most || (served !== undefined && made.length === BROUGHT_AT_ONCE)) break;
    }
    for await (const [{ path }, html] of renderedPages({ ...site, pages }, dir)) {
      const folder = path.replace(/index\.html$/, "");
      const whole = kind === "screen" ? followingBuilds(html) : html;
      written.write(
        path,
        withHashedNames(whole, folder, base, assets, (asset) => kept.names(path, asset)),
      );
      await turn();
    }
    for (const page of pages) page.letGo();
    tell(made);
  };
  /** Those of these that somebody waits for or looks at by now. */
  const makeWanted = async (isMade: (path: string) => boolean): Promise<void> => {
    for (;;) {
      const wanted = (await served?.wanted())?.[output] ?? [];
      const some = wanted.filter((path) => left.has(path) && isMade(path));
      if (some.length === 0) return;
      await make(some);
    }
  };
  const makeAll = async (isMade: (path: string) => boolean): Promise<void> => {
    for (;;) {
      const own = [...left.keys()].filter(isMade);
      if (own.length === 0) return;
      await makeWanted(isMade);
      await make(own);
    }
  };
  const sooner = async (): Promise<void> => {
    await data();
    await makeAll(isSooner);
  };
  return {
    pages: make,
    sooner,
    rest: async () => {
      await sooner();
      // Before their thread ends with the papers.
      await pictures?.done();
      const whole = (await later?.whole()) ?? site;
      if (later !== undefined) writeFiles(whole.manifests(), written);
      for (const page of whole.pages) if (left.has(page.path)) left.set(page.path, page);
      await makeAll(() => true);
      kept.keep(whole.pages);
      written.removeOthers();
      listFilesInManifest(dir, written.hashes);
      written.keepKnown();
    },
  };
}

/** Drawn are those that show something else than the earlier output's. */
function writtenPictures(
  pictures: readonly SitePicture[],
  writing: Writing,
  written: WrittenFiles,
): BegunPictures {
  const { cache, threads } = writing;
  const keyed = pictures.map((picture) => ({
    picture,
    path: picture.path,
    key: () => contentHash([JSON.stringify(picture.of)]).toString("hex"),
  }));
  const kept = keptFiles<(typeof keyed)[number]>(
    cache,
    writing,
    { what: "pictures", made: drawingKey },
    written,
  );
  const left = keyed.filter((one) => !kept.isTaken(one)).map(({ picture }) => picture);
  const beside =
    threads?.areThere === true
      ? (asked: PictureToDraw) => threads.ask("picture", asked)
      : undefined;
  const begun = begunPictures(left, "png", cache, written.write, beside);
  return {
    done: async () => {
      await begun.done();
      kept.keep(keyed);
    },
  };
}

function drawingKey({ programPart }: WorkCache): string | undefined {
  const parts = PICTURE_MODULES.map(programPart);
  return parts.every((part) => part !== undefined) ? parts.join(" ") : undefined;
}

/** Data and papers, and what tells of them. */
export function writeData(site: SiteData, written: WrittenFiles): void {
  for (const write of dataWrites(site, written)) write();
  writeFiles(site.manifests(), written);
}

type SiteData = Pick<Site, "files" | "manifests" | "papers" | "photographs">;

/** What writes them, one after another: a file is made, written and let go before the next is made. */
function* dataWrites(
  { files, papers = [], photographs = [] }: SiteData,
  written: WrittenFiles,
): Generator<() => void> {
  // What is an asset goes out under a name of its own.
  for (const file of files()) if (!isAsset(file.path)) yield () => writeFiles([file], written);
  for (const file of [...papers, ...photographs]) yield () => written.put(file);
}

function writeFiles(files: readonly DataFile[], written: WrittenFiles): void {
  for (const file of files)
    if (file.hash === undefined || !written.bring(file.path, file.hash))
      written.write(file.path, file.text);
}
