import { readFileSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "../..");

export const README = readFileSync(join(ROOT, "README.md"), "utf8");

/** One section below a heading: its text up to the next heading of the same rank or a higher one. */
export function section(heading: string): string {
  const rank = /^#+/.exec(heading)?.[0].length ?? 0;
  const start = README.indexOf(`\n${heading}\n`);
  if (start < 0) throw new Error(`Unexpected README without \`${heading}\``);
  const body = README.slice(start + heading.length + 2);
  const end = new RegExp(`^#{1,${rank}} `, "m").exec(body)?.index ?? body.length;
  return body.slice(0, end);
}

export interface Step {
  readonly heading: string;
  /** The workshop's folder after this step: the files by their path in it. */
  readonly files: Readonly<Record<string, string>>;
  /** What the sheets then say, as the README quotes it. */
  readonly quotes: readonly string[];
}

/** A name in code at the start of a line, told to be written or added to, and the fenced block that follows. */
const FILE = /^(Add to )?`mine\/([^`]+)`[^\n]*\n\n(?:<details>[^\n]*\n\n)?```\w+\n([\s\S]*?)```$/gm;

/** The steps in their order, as a newcomer takes them with the text as printed. */
export function steps(): Step[] {
  const found = section("## A sheet of your own")
    .split(/^### /m)
    .slice(1)
    .map((text): [string, string] => [text.split("\n")[0] ?? "", text]);
  const files: Record<string, string> = {};
  return found.map(([heading, text]) => {
    for (const [, adds, path = "", block = ""] of text.matchAll(FILE)) {
      if (adds === undefined) files[path] = block;
      else if (files[path] === undefined)
        throw new Error(`The addition to is ${path}, expected a file that an earlier step writes`);
      else
        files[path] = path.endsWith(".md") ? beforeItsEnd(files[path], block) : files[path] + block;
    }
    return {
      heading,
      files: { ...files },
      quotes: [...text.matchAll(/^> (.+)$/gm)].map(([, quote = ""]) =>
        quote.replaceAll("\\*", "*"),
      ),
    };
  });
}

/** Above the second line of three hyphens. */
function beforeItsEnd(record: string, addition: string): string {
  const end = record.indexOf("\n---", 4) + 1;
  return record.slice(0, end) + addition + record.slice(end);
}

/** Codes in the first column of the tables of a section: `` | `a`, `b` | ``. */
export function firstColumn(heading: string): string[] {
  return section(heading)
    .split("\n")
    .filter((line) => line.startsWith("| `"))
    .flatMap((line) =>
      [...(line.split(" | ")[0] ?? "").matchAll(/`([^`]+)`/g)].map(([, code = ""]) => code),
    );
}
