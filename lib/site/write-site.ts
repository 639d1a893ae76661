import { mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import configure from "../../eleventy.config.ts";
import type { EleventyConfig, EleventyOptions, EleventyRun } from "./eleventy-types.ts";
import { hashedAssets, withHashedNames } from "./hashed-names.ts";
import { OutputFault } from "./output-fault.ts";
import { keptPages, type PagesOf } from "./kept-pages.ts";
import { listFilesInManifest } from "./output-manifest.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import { followingBuilds } from "./reload-script.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { eachPicture } from "../pictures/kept-pictures.ts";
import { assetsOf, isAsset } from "./site-assets.ts";
import type { Site } from "./site.ts";

const TEMPLATES_INPUT = join(PACKAGE_ROOT, "templates", "entry");

/** Eleventy holds all that it renders until all of it is written: so many pages are handed to it at a time. Our own choice. */
const PAGES_AT_ONCE = 250;

/** Where and how a site is written. */
export interface Writing extends PagesOf {
  /** Of pictures and pages; without it each is made. */
  readonly cache?: WorkCache;
}

/**
 * Render every page with Eleventy and write data, styles and fonts beside them, all below `dir`.
 * On screen alone there are no pictures to pass on, and pages follow the builds. A page that would
 * come out as in the earlier output is taken from there.
 */
export async function writeSite(site: Site, writing: Writing): Promise<void> {
  const { dir, kind, output, cache } = writing;
  const assets = hashedAssets(assetsOf(site, output));
  writeData(site, dir);
  for (const { path, bytes } of assets.files) writeBelow(dir, path, bytes);
  if (kind === "paper")
    await eachPicture(site.pictures ?? [], "png", cache, (path, bytes) =>
      writeBelow(dir, path, bytes),
    );
  const base = site.base ?? "/";
  const kept = keptPages(cache, writing, [base, ...[...assets.paths].flat()]);
  for (let from = 0; from < site.pages.length; from += PAGES_AT_ONCE) {
    const some = site.pages.slice(from, from + PAGES_AT_ONCE);
    const pages = some.filter((page) => !kept.isTaken(page));
    if (pages.length > 0)
      await renderPages({ ...site, pages }, { dir, kind }, (html, page) =>
        withHashedNames(html, page, base, assets),
      );
    for (const page of some) page.letGo();
  }
  kept.keep(site.pages);
  listFilesInManifest(dir);
}

async function renderPages(
  site: Site,
  { dir, kind }: Pick<Writing, "dir" | "kind">,
  finished: (html: string, page: string) => string,
): Promise<void> {
  const eleventy = await newEleventy(dir, (config) => {
    configure(config, () => site);
    if (kind === "screen") config.addTransform("follow builds", followingBuilds);
  });
  eleventy.disableLogger();
  await eleventy.write();
  const absent = site.pages.filter(({ path }) => !isWritten(join(dir, path)));
  if (absent.length > 0)
    throw new OutputFault(
      `${site.pages.length - absent.length} pages of ${site.pages.length} were written; these are missing: ${absent
        .slice(0, 3)
        .map(({ path }) => path)
        .join(", ")}`,
    );
  // Not a transform of Eleventy, which tells on standard error how long a slow one took.
  for (const { path } of site.pages) {
    const file = join(dir, path);
    writeFileSync(file, finished(readFileSync(file, "utf8"), path.replace(/index\.html$/, "")));
  }
}

/** A template that could not be read leaves a page without a letter in it, and no other complaint. */
function isWritten(file: string): boolean {
  return (statSync(file, { throwIfNoEntry: false })?.size ?? 0) > 1;
}

/** Named as text: the package has no types to be found. */
const ELEVENTY: string = "@11ty/eleventy";

async function newEleventy(
  dir: string,
  config: (config: EleventyConfig) => unknown,
): Promise<EleventyRun> {
  const { default: Eleventy } = (await import(ELEVENTY)) as {
    default: new (input: string, output: string, options: EleventyOptions) => EleventyRun;
  };
  return new Eleventy(TEMPLATES_INPUT, dir, {
    configPath: false,
    source: "script",
    quietMode: true,
    runMode: "build",
    config,
  });
}

/** Data and papers; what is an asset goes out under a name of its own. */
export function writeData(site: Site, dir: string): void {
  for (const { path, text } of site.files) if (!isAsset(path)) writeBelow(dir, path, text);
  for (const { path, bytes } of [...(site.papers ?? []), ...(site.photographs ?? [])])
    writeBelow(dir, path, bytes);
}

function writeBelow(dir: string, path: string, content: string | Uint8Array): void {
  const file = join(dir, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, content);
}
