/** Rows of texts as scripts are sent them: of all languages that stand beside one another, one is left. */
import { readFile } from "node:fs/promises";
import type * as acorn from "acorn";
import type { Node, ObjectExpression, Property } from "acorn";
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

/** Where other languages stand in the rows of a module, in order. */
function othersIn(node: Node, language: Language): Stretch[] {
  if (!isRow(node)) return childrenOf(node).flatMap((child) => othersIn(child, language));
  const own = node.properties.find((property) => languageOf(property) === language);
  const [open, close] = [node.start + 1, node.end - 1];
  return own === undefined
    ? [[open, close]]
    : [[open, own.start], ...othersIn(own.value, language), [own.end, close]];
}

interface Row extends ObjectExpression {
  readonly properties: Property[];
}

function isRow(node: Node): node is Row {
  if (node.type !== "ObjectExpression") return false;
  const { properties } = node as ObjectExpression;
  return (
    properties.length > 1 &&
    properties.every(
      (property) => property.type === "Property" && languageOf(property) !== undefined,
    )
  );
}

function languageOf({ key, computed }: Property): Language | undefined {
  return !computed && key.type === "Identifier"
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
