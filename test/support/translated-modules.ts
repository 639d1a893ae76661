import { build, version } from "esbuild";
import { createHash, randomUUID } from "node:crypto";
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { parseSync } from "oxc-parser";
import { certain } from "../../lib/quantities/at.ts";
import { filesIn } from "./files-in.ts";

const FOLDERS = ["lib", "test", "assets/scripts"];
const AT_THE_ROOT = ["eleventy.config.ts"];
const KEPT = ".cache";

/** A stretch of a module's text and what stands there instead. */
interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Where an import leads: to the address of a file of ours; a package's name stays. */
type AddressOf = (name: string, source: string) => string | undefined;

/**
 * Every module of the project in a folder as JavaScript that Node loads by itself, under its own
 * path with .js behind it. `import.meta` goes on saying where the source lies, so that a module
 * finds the files beside it as before. The folder stays: only what was touched since is translated
 * anew, each script bearing the time of its source.
 * @param root the project; the folder lies below it, so that packages are found
 * @returns the folder's path from there
 */
export async function translatedModules(root: string): Promise<string> {
  const folder = ownFolder(root);
  const sources = new Set(sourcesOf(root));
  for (const script of scriptsIn(join(root, folder)))
    if (!sources.has(sourceOf(script))) rmSync(join(root, folder, script));
  const touched = new Map(
    [...sources].flatMap((file) => {
      const written = statSync(join(root, file)).mtime;
      const scriptAt = join(root, folder, scriptOf(file));
      const made = statSync(scriptAt, { throwIfNoEntry: false });
      return made?.mtime.getTime() === written.getTime() ? [] : [[file, written] as const];
    }),
  );
  const addressOf = addressIn(root, folder);
  for (const { file, text } of await translated(root, folder, [...touched.keys()])) {
    const script = join(root, folder, scriptOf(file));
    mkdirSync(dirname(script), { recursive: true });
    // Another run may be loading it.
    const aside = `${script}-${randomUUID()}`;
    writeFileSync(aside, withAddresses(text, join(root, file), addressOf));
    const written = certain(touched.get(file));
    utimesSync(aside, written, written);
    renameSync(aside, script);
  }
  return folder;
}

/** `test/optics/film.test.ts.js` of `test/optics/film.test.ts`, so that vitest finds it by the name of its source. */
export function scriptOf(file: string): string {
  return `${file}.js`;
}

function sourceOf(script: string): string {
  return script.replace(/\.js$/, "");
}

/** Named by all that scripts go by beside their sources; folders that went by other things are removed. */
function ownFolder(root: string): string {
  const madeBy = [root, version, readFileSync(import.meta.filename, "utf8")];
  const hash = createHash("sha256").update(madeBy.join("\0")).digest("hex").slice(0, 8);
  const own = `modules-${hash}`;
  mkdirSync(join(root, KEPT, own), { recursive: true });
  for (const other of readdirSync(join(root, KEPT)))
    if (/^modules-[0-9a-f]{8}$/.test(other) && other !== own)
      rmSync(join(root, KEPT, other), { recursive: true, force: true });
  return join(KEPT, own);
}

async function translated(
  root: string,
  folder: string,
  files: readonly string[],
): Promise<readonly { readonly file: string; readonly text: string }[]> {
  if (files.length === 0) return [];
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [...files],
    outbase: root,
    outdir: join(root, folder),
    outExtension: { ".js": ".ts.js" },
    write: false,
    format: "esm",
    platform: "node",
    target: "node20",
    sourcemap: "inline",
    sourcesContent: false,
    logLevel: "silent",
  });
  return outputFiles.map(({ path, text }) => ({
    file: sourceOf(relative(join(root, folder), path)),
    text,
  }));
}

function sourcesOf(root: string): string[] {
  return [
    ...AT_THE_ROOT,
    ...FOLDERS.flatMap((folder) => filesIn(join(root, folder)).map((file) => join(folder, file))),
  ].filter((file) => file.endsWith(".ts"));
}

function scriptsIn(folder: string): string[] {
  return filesIn(folder).filter((file) => file.endsWith(".ts.js"));
}

function addressIn(root: string, folder: string): AddressOf {
  return (name, source) => {
    if (!name.startsWith(".")) return undefined;
    const target = resolve(dirname(source), name);
    return pathToFileURL(
      target.endsWith(".ts") ? join(root, folder, scriptOf(relative(root, target))) : target,
    ).href;
  };
}

/** A translated module whose imports lead where those of its source do, and whose `import.meta` is its source's. */
function withAddresses(text: string, source: string, addressOf: AddressOf): string {
  const { module } = parseSync("module.js", text);
  const named = [
    ...module.staticImports,
    ...module.staticExports.flatMap(({ entries }) => entries),
    ...module.dynamicImports,
  ].flatMap(({ moduleRequest }) => moduleRequest ?? []);
  const meta = { url: pathToFileURL(source).href, filename: source, dirname: dirname(source) };
  const edits: Edit[] = [
    ...named.flatMap(({ start, end }) => {
      const [, name = ""] = /^"(.*)"$/.exec(text.slice(start, end)) ?? [];
      const address = addressOf(name, source);
      return address === undefined ? [] : [{ start, end, text: JSON.stringify(address) }];
    }),
    ...module.importMetas.map(({ start, end }) => ({
      start,
      end,
      text: `(${JSON.stringify(meta)})`,
    })),
  ];
  // Of `export { a, b } from "c"` each name brings the one "c".
  const byStart = new Map(edits.map((edit) => [edit.start, edit]));
  return [...byStart.values()]
    .sort((a, b) => b.start - a.start)
    .reduce((sum, edit) => sum.slice(0, edit.start) + edit.text + sum.slice(edit.end), text);
}
