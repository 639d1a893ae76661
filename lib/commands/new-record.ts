import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { basename, dirname, extname, join, relative, resolve, sep } from "node:path";
import { codeOf } from "../diagnostics/error-code.ts";
import { andNearest, nearestWord } from "../diagnostics/nearest-word.ts";
import type { CommandOptions } from "./command-options.ts";
import { lotStarter } from "./new-lot.ts";
import { name as recordName } from "../records/schema/amount.ts";
import { slugOf } from "../records/slug-of.ts";
import { starter, STARTER_FORMS, type StarterKind } from "./starters.ts";
import { PACKAGE_ROOT } from "../site/package-root.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { asked, complaint } from "./told.ts";

/** Write a commented starter record; never over one that is there. What is to be filled in is said in one line. */
export function newRecord(
  { contentDir, date }: Pick<CommandOptions, "contentDir" | "date">,
  words: readonly string[],
): number {
  const [kind, name, ...rest] = words;
  if (kind === undefined || !isKind(kind)) {
    const near = kind === undefined ? undefined : nearestWord(kind, Object.keys(STARTER_FORMS));
    return complaint(
      `${kind === undefined ? "A new record" : `There is no starter record of a ${kind}: one`} is written by: ${asked(STARTER_FORMS[near !== undefined && isKind(near) ? near : "colour"])}; kinds are ${Object.keys(STARTER_FORMS).join(", ")}`,
    );
  }
  if (name === undefined || rest.length > 0)
    return complaint(`A new ${kind} is written by: ${asked(STARTER_FORMS[kind])}`);
  if (!recordName.safeParse(name).success)
    return complaint(`The name has ${name.trim().length} characters; right would be 1 to 80`);
  const slug = slugOf(name);
  if (slug === "")
    return complaint(`The name "${name}" has no letters or digits, and no file can be called so`);
  if (kind !== "workshop" && !existsSync(join(contentDir, "workshop.yaml")))
    return complaint(
      `The content folder ${contentDir} has no workshop.yaml: ${asked(STARTER_FORMS.workshop)} writes one`,
    );
  const known = {
    pigments: namesIn(join(contentDir, "pigments")),
    colours: namesIn(join(contentDir, "colours")),
  };
  const today = date ?? new Date().toISOString().slice(0, 10);
  if (kind === "trial" && !known.colours.includes(slug))
    return complaint(`There is no colour ${slug}${andNearest(slug, known.colours)}`);
  const begun =
    kind === "lot" ? lotStarter(contentDir, slug, today) : starter(kind, name, slug, known, today);
  if ("refusal" in begun) return complaint(begun.refusal);
  const { path, text, toFillIn } = begun;
  const file = join(contentDir, path);
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, withSchema(text, kind, file), { flag: "wx" });
  } catch (error) {
    const there = codeOf(error) === "EEXIST";
    return complaint(
      there
        ? `${file} is there already, and was left as it is`
        : `${file} can't be written: ${String(error)}`,
    );
  }
  process.stdout.write(`${file}\n`);
  if (toFillIn !== undefined) process.stdout.write(`to fill in: ${toFillIn}\n`);
  return 0;
}

/** The record with the line by which an editor finds its schema: the first, or in a file of front matter the first of that. */
function withSchema(text: string, kind: StarterKind, file: string): string {
  const schema = join(PACKAGE_ROOT, "assets", "schema", `${kind}.schema.json`);
  const from = relative(dirname(resolve(file)), schema)
    .split(sep)
    .join("/");
  const line = `# yaml-language-server: $schema=${from}\n`;
  const opening = extname(file) === ".md" ? "---\n" : "";
  return `${opening}${line}${text.slice(opening.length)}`;
}

function isKind(word: string): word is StarterKind {
  return Object.hasOwn(STARTER_FORMS, word);
}

/** Names of the records in a folder, without their endings; none where there is no folder. */
function namesIn(folder: string): string[] {
  return existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => /\.(ya?ml|md)$/.test(name))
        .map((name) => basename(name, extname(name)))
        .sort(slugOrder)
    : [];
}
