import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import type * as esbuild from "esbuild";
import { importPackage, madeBesideProgram } from "../kept/beside-program.ts";
import type { Language } from "../quantities/languages.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import { rowsInOneLanguage } from "./rows-in-one-language.ts";

/** A style sheet or browser script in one file with all that it imports. */
export interface BrowserAsset {
  /** Below the site's `assets/`: `scripts/site.js`. */
  readonly path: string;
  readonly text: string;
}

/** What stands in for a package in a browser: a table of 20 kB for one of 125, and a parser without Node's buffers. */
const BROWSER_ALIASES = {
  munsell: join(PACKAGE_ROOT, "lib", "mixing", "notation", "compact-munsell.ts"),
  "csv-parse/sync": "csv-parse/browser/esm/sync",
};

const ASSETS = join(PACKAGE_ROOT, "assets");
/** Style sheets that a page asks for; the others are parts of these. */
const STYLES = ["site.css", "workshop.css"];

const ofProgram = new Map<Language, Promise<readonly BrowserAsset[]>>();

/** Every style sheet and browser script of both outputs, its words in a language; bundled once a version of the program. */
export async function browserAssets(language: Language = "en"): Promise<readonly BrowserAsset[]> {
  const own =
    ofProgram.get(language) ??
    madeBesideProgram(`browser-assets-${language}`, sources(), async () => bundled(language));
  ofProgram.set(language, own);
  return own;
}

/** Scripts that say something: what those of one language differ in from those of another. */
export async function wordedScripts(
  language: Language,
  from: Language,
): Promise<readonly BrowserAsset[]> {
  const others = new Map((await browserAssets(from)).map(({ path, text }) => [path, text]));
  return (await browserAssets(language)).filter(({ path, text }) => others.get(path) !== text);
}

function* sources(): Generator<string | Uint8Array> {
  for (const folder of ["scripts", "styles"])
    for (const name of readdirSync(join(ASSETS, folder), { recursive: true, encoding: "utf8" }))
      if (/\.(?:ts|css|json)$/.test(name)) yield* [name, readFileSync(join(ASSETS, folder, name))];
}

async function bundled(language: Language): Promise<BrowserAsset[]> {
  const { build, stop } = (await importPackage("esbuild")) as typeof esbuild;
  const common = {
    bundle: true,
    minify: true,
    write: false,
    tsconfigRaw: {},
    // A stand-in is looked for from here, wherever the command was given.
    absWorkingDir: PACKAGE_ROOT,
    outbase: ASSETS,
    outdir: ASSETS,
    logLevel: "silent",
  } as const;
  const styles = await build({
    ...common,
    entryPoints: STYLES.map((name) => join(ASSETS, "styles", name)),
    external: ["*.woff2"],
  });
  const scripts = await build({
    ...common,
    entryPoints: readdirSync(join(ASSETS, "scripts"))
      .filter((name) => name.endsWith(".ts"))
      .sort()
      .map((name) => join(ASSETS, "scripts", name)),
    // Not modules, which no browser loads for a page opened from a folder.
    format: "iife",
    platform: "browser",
    target: "es2022",
    alias: BROWSER_ALIASES,
    plugins: [await rowsInOneLanguage(language)],
    define: { "import.meta.language": JSON.stringify(language) },
  });
  // Its process would stand beside the build's to the end.
  await stop();
  return [...styles.outputFiles, ...scripts.outputFiles].map(({ path, text }) => ({
    path: relative(ASSETS, path),
    text,
  }));
}
