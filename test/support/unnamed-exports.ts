/** What is exported and that nothing names: of a science, mostly a rule that was written and put into no list. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { filesIn } from "./files-in.ts";

interface ModuleText {
  /** From the root: `lib/drying/film-defects.ts`. */
  readonly file: string;
  readonly text: string;
}

interface Export {
  readonly file: string;
  readonly name: string;
}

/** What of the project may name what a module exports, its tests left out. */
export function moduleTexts(root: string): ModuleText[] {
  return ["lib", "assets/scripts"].flatMap((folder) =>
    filesIn(join(root, folder))
      .filter((file) => file.endsWith(".ts"))
      .map((file) => join(folder, file))
      .map((file) => ({ file, text: readFileSync(join(root, file), "utf8") })),
  );
}

/** Functions and constants that one of `files` exports, of which none of `all` has a word beyond that. */
export function unnamedExports(files: readonly string[], all: readonly ModuleText[]): Export[] {
  const times = new Map<string, number>();
  for (const { text } of all)
    for (const [word] of text.matchAll(/\w+/g)) times.set(word, (times.get(word) ?? 0) + 1);
  return all
    .filter(({ file }) => files.includes(file))
    .flatMap(({ file, text }) =>
      [...text.matchAll(/^export (?:function|const) (\w+)/gm)].map(([, name = ""]) => ({
        file,
        name,
      })),
    )
    .filter(({ name }) => times.get(name) === 1);
}
