/** Rows of texts as scripts are sent them: of all languages that stand beside one another, one is left. */
import { readFile } from "node:fs/promises";
import type * as acorn from "acorn";
import type {
  ExportNamedDeclaration,
  ExportSpecifier,
  Node,
  ObjectExpression,
  Property,
} from "acorn";
import type { Plugin } from "esbuild";
import { importPackage } from "../kept/beside-program.ts";
import { LANGUAGES, type Language } from "../quantities/languages.ts";

/** Takes the other languages out of each module of the words before it is bundled. */
export async function rowsInOneLanguage(language: Language): Promise<Plugin> {
  const { parse } = (await importPackage("acorn")) as typeof acorn;
  return {
    name: "rows-in-one-language",
    setup: (build) => {
      build.onLoad({ filter: /[\\/]lib[\\/]words[\\/].*\.ts$/ }, async ({ path }) => {
        const { code } = await build.esbuild.transform(await readFile(path, "utf8"), {
          loader: "ts",
        });
        const program = parse(code, { ecmaVersion: "latest", sourceType: "module" });
        // As TypeScript, of which an import that only the others used is dropped.
        return { contents: without(othersIn(program, language), code), loader: "ts" };
      });
    },
  };
}

type Stretch = readonly [from: number, to: number];

function without(stretches: readonly Stretch[], code: string): string {
  const ends = [0, ...stretches.map(([, to]) => to)];
  return ends.map((end, i) => code.slice(end, stretches[i]?.[0])).join("");
}

/** Where other languages stand in the rows of a module, and where it hands on the phrases of each, in order. */
function othersIn(node: Node, language: Language): Stretch[] {
  const row = rowOf(node);
  const [first, last] = [row?.at(0), row?.at(-1)];
  if (row === undefined || first === undefined || last === undefined)
    return childrenOf(node).flatMap((child) => othersIn(child, language));
  const own = row.find((property) => languageOf(property) === language);
  const [open, close] = [first.start, last.end];
  if (own === undefined) return [[open, close]];
  const within = own.type === "Property" ? othersIn(own.value, language) : [];
  return [[open, own.start], ...within, [own.end, close]];
}

/** What stands in it for each language, of an object `{ en: ..., de: ... }` or of `export { en, de }`. */
function rowOf(node: Node): (Property | ExportSpecifier)[] | undefined {
  const parts =
    node.type === "ObjectExpression"
      ? (node as ObjectExpression).properties
      : node.type === "ExportNamedDeclaration"
        ? (node as ExportNamedDeclaration).specifiers
        : [];
  const row = parts.filter((part) => part.type !== "SpreadElement" && languageOf(part));
  return row.length > 1 && row.length === parts.length
    ? (row as (Property | ExportSpecifier)[])
    : undefined;
}

function languageOf(part: Property | ExportSpecifier): Language | undefined {
  const key = part.type === "Property" ? part.key : part.exported;
  const isNamed = part.type === "ExportSpecifier" || !part.computed;
  return isNamed && key.type === "Identifier"
    ? LANGUAGES.find((language) => language === key.name)
    : undefined;
}

function childrenOf(node: Node): Node[] {
  return Object.values(node)
    .flat()
    .filter(
      (child): child is Node => typeof child === "object" && child !== null && "type" in child,
    );
}
