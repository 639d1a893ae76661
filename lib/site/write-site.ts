import { cpSync, mkdirSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import configure from "../../eleventy.config.ts";
import { browserAssets, wordedScripts } from "./browser-assets.ts";
import { FONT_FILES, FONT_LICENCES } from "./font-files.ts";
import type { EleventyConfig, EleventyOptions, EleventyRun } from "./eleventy-types.ts";
import { OutputFault } from "./output-fault.ts";
import { listFilesInManifest, type OutputKind } from "./output-manifest.ts";
import type { Language } from "../records/schema/terms.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import { followingBuilds } from "./reload-script.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { shareImages } from "./share-images.ts";
import type { SiteTask } from "./site-task.ts";
import type { Site } from "./site.ts";

/** Browser scripts and style sheets of one output, by file name. */
interface OutputAssets {
  readonly scripts: (name: string) => boolean;
  readonly styles: readonly string[];
}

/** Scripts of the workshop's own pages; the frame of every page needs one that both outputs have. */
const OF_WORKSHOP: readonly string[] = ["batch.js", "batch-sheet.js", "reply.js"];
const ASSETS: Readonly<Record<OutputKind, OutputAssets>> = {
  site: { scripts: (name) => !OF_WORKSHOP.includes(name), styles: ["site.css"] },
  workshop: {
    scripts: (name) => name === "site.js" || OF_WORKSHOP.includes(name),
    styles: ["site.css", "workshop.css"],
  },
};

const TEMPLATES_INPUT = join(PACKAGE_ROOT, "templates", "entry");

/**
 * Render every page with Eleventy and write data, styles and fonts beside them, all below `dir`.
 * On screen alone there are no pictures to pass on, and pages follow the builds.
 */
export async function writeSite(
  site: Site,
  dir: string,
  kind: SiteTask["kind"] = "paper",
  output: OutputKind = "site",
  cache?: WorkCache,
): Promise<void> {
  writeData(site, dir);
  if (kind === "paper")
    for (const { path, bytes } of await shareImages(site.sheets ?? [], cache))
      writeFileSync(join(dir, path), bytes);
  copyAssets(dir, ASSETS[output], site.language);
  for (const { folder, language } of site.scripts ?? [])
    for (const { path, text } of wordedScripts(language, site.language ?? "en")) {
      const file = join(dir, folder, "assets", path);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
    }
  const eleventy = await newEleventy(dir, (config) => {
    configure(config, () => site);
    if (kind === "screen") config.addTransform("follow builds", followingBuilds);
  });
  eleventy.disableLogger();
  await eleventy.write();
  const absent = site.pages.filter(({ path }) => !isWritten(join(dir, path)));
  if (absent.length === 0) listFilesInManifest(dir);
  else {
    throw new OutputFault(
      `${site.pages.length - absent.length} pages of ${site.pages.length} were written; these are missing: ${absent
        .slice(0, 3)
        .map(({ path }) => path)
        .join(", ")}`,
    );
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

export function writeData(site: Site, dir: string): void {
  const contents = [
    ...site.files.map(({ path, text }) => ({ path, content: text })),
    ...[...(site.papers ?? []), ...(site.photographs ?? [])].map(({ path, bytes }) => ({
      path,
      content: bytes,
    })),
  ];
  for (const { path, content } of contents) {
    const file = join(dir, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
}

/** The output's styles and scripts, and fonts from their packages: the site asks no other host for anything. */
function copyAssets(
  dir: string,
  { scripts, styles }: OutputAssets,
  language: Language | undefined,
): void {
  const to = join(dir, "assets");
  for (const folder of ["styles", "scripts", "fonts"])
    mkdirSync(join(to, folder), { recursive: true });
  for (const { path, text } of browserAssets(language)) {
    const name = basename(path);
    if (path.startsWith("scripts/") ? scripts(name) : styles.includes(name))
      writeFileSync(join(to, path), text);
  }
  cpSync(join(PACKAGE_ROOT, "assets", "icon.svg"), join(to, "icon.svg"));
  const require = createRequire(import.meta.url);
  for (const file of FONT_FILES) cpSync(require.resolve(file), join(to, "fonts", basename(file)));
  for (const [family, licence] of FONT_LICENCES)
    cpSync(require.resolve(licence), join(to, "fonts", `${family}-licence.txt`));
}
