import type { SvgNode } from "../plots/svg.ts";
import type { Markup } from "../present/views.ts";

/** A tag, with its attributes and whether it closes itself; or the text up to the next one. */
const TOKEN = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>|([^<]+)/g;
const ATTRIBUTE = /([\w:-]+)="([^"]*)"/g;
/** Elements of HTML that are never closed. */
const VOID = new Set(["br", "hr", "img"]);
const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  "#39": "'",
};

/** What finished markup spells: a page's drawings and its prose, read back, so that paper is drawn from what the page shows. */
export function markupTree(markup: Markup): SvgNode {
  const root = { name: "", attributes: {}, children: [] as (SvgNode | string)[] };
  const open = [root];
  for (const [, close, name, attributes = "", selfClosed, text] of String(markup).matchAll(TOKEN)) {
    const inside = open.at(-1) ?? root;
    if (text !== undefined) inside.children.push(plain(text));
    else if (name === undefined) continue;
    else if (close === "/") open.pop();
    else {
      const node = { name, attributes: attributesOf(attributes), children: [] };
      inside.children.push(node);
      if (selfClosed !== "/" && !VOID.has(name)) open.push(node);
    }
  }
  return root;
}

/** Elements of some names in the order of the text; none that lies in another of them. */
export function elementsOf(node: SvgNode, ...names: readonly string[]): SvgNode[] {
  return node.children.flatMap((child) =>
    typeof child === "string"
      ? []
      : names.includes(child.name)
        ? [child]
        : elementsOf(child, ...names),
  );
}

/** All text inside, as one. */
export function textOf({ children }: SvgNode): string {
  return children.map((child) => (typeof child === "string" ? child : textOf(child))).join("");
}

function attributesOf(written: string): Record<string, string> {
  return Object.fromEntries(
    [...written.matchAll(ATTRIBUTE)].map(([, name = "", value = ""]) => [name, plain(value)]),
  );
}

function plain(text: string): string {
  return text.replace(/&(#?\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole);
}
