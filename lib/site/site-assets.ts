import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join } from "node:path";
import type { Language } from "../quantities/languages.ts";
import { browserAssets, wordedScripts, type BrowserAsset } from "./browser-assets.ts";
import { FONT_FILES, FONT_LICENCES } from "./font-files.ts";
import type { Asset } from "./hashed-names.ts";
import type { OutputKind } from "./output-manifest.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
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

/** Whether a file of a site is one that pages load, and not data of its own. */
export function isAsset(path: string): boolean {
  return /^(?:[a-z]{2}\/)?assets\//.test(path);
}

/**
 * Everything that pages of an output load, below the site's root: styles, scripts and the data that scripts load as
 * such, and fonts from their packages, so that the site asks no other host for anything.
 */
export async function assetsOf(
  { assets, language = "en", scripts = [] }: Pick<Site, "assets" | "language" | "scripts">,
  output: OutputKind,
): Promise<Asset[]> {
  const inOthers: Asset[] = [];
  for (const { folder, language: other } of scripts)
    for (const script of await wordedScripts(other, language))
      inOthers.push(asText(script, folder));
  return [
    ...(await ofOutput(language, ASSETS[output])),
    ...inOthers,
    ...(assets?.() ?? []).map(({ path, text }) => ({ path, bytes: Buffer.from(text) })),
    { path: "assets/icon.svg", bytes: readFileSync(join(PACKAGE_ROOT, "assets", "icon.svg")) },
    ...fonts(),
  ];
}

async function ofOutput(language: Language, { scripts, styles }: OutputAssets): Promise<Asset[]> {
  return (await browserAssets(language))
    .filter(({ path }) => {
      const name = basename(path);
      return path.startsWith("scripts/") ? scripts(name) : styles.includes(name);
    })
    .map((one) => asText(one, ""));
}

function asText({ path, text }: BrowserAsset, folder: string): Asset {
  return { path: `${folder}assets/${path}`, bytes: Buffer.from(text) };
}

function fonts(): Asset[] {
  const { resolve } = createRequire(import.meta.url);
  const file = (specifier: string, name: string): Asset => ({
    path: `assets/fonts/${name}`,
    bytes: readFileSync(resolve(specifier)),
  });
  return [
    ...FONT_FILES.map((one) => file(one, basename(one))),
    ...FONT_LICENCES.map(([family, licence]) => file(licence, `${family}-licence.txt`)),
  ];
}
