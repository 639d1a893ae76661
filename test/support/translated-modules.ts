import { build } from "esbuild";
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { parseSync } from "oxc-parser";

const FOLDERS = ["lib", "test", "assets/scripts"];
const AT_THE_ROOT = ["eleventy.config.ts"];

/** A stretch of a module's text and what stands there instead. */
interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Where an import leads: to the address of a file of ours; a package's name stays. */
type AddressOf = (name: string, source: string) => string | undefined;

/**
 * Write every module of the project into a folder as JavaScript that Node loads by itself, under its
 * own path with the ending .js. `import.meta` goes on saying where the source lies, so that a module
 * finds the files beside it as before.
 * @param root the project
 * @param folder below it, so that packages are found
 */
export async function translateModules(root: string, folder: string): Promise<void> {
  const sources = sourcesOf(root);
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [...sources],
    outbase: root,
    outdir: folder,
    write: false,
    format: "esm",
    platform: "node",
    target: "node20",
    sourcemap: "inline",
    sourcesContent: false,
    logLevel: "silent",
  });
  const addressOf: AddressOf = (name, source) => {
    if (!name.startsWith(".")) return undefined;
    const target = resolve(dirname(source), name);
    return pathToFileURL(
      sources.has(target) ? join(folder, scriptOf(relative(root, target))) : target,
    ).href;
  };
  for (const { path, text } of outputFiles) {
    const source = join(root, relative(folder, path).replace(/\.js$/, ".ts"));
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, withAddresses(text, source, addressOf));
  }
}

/** `lib/optics/films/film.js` of `lib/optics/films/film.ts`. */
export function scriptOf(file: string): string {
  return file.replace(/\.ts$/, ".js");
}

function sourcesOf(root: string): Set<string> {
  const found = FOLDERS.flatMap((name) =>
    readdirSync(join(root, name), { recursive: true, encoding: "utf8" }).map((file) =>
      join(name, file),
    ),
  );
  return new Set(
    [...AT_THE_ROOT, ...found]
      .filter((file) => file.endsWith(".ts"))
      .map((file) => join(root, file)),
  );
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
