import { SaxesParser } from "saxes";

export interface ParsedElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: ParsedElement[];
  readonly ancestors: readonly ParsedElement[];
  text: string;
}

/** The picture as an XML parser reads it, which throws at the first fault; all elements in document order, the root first. */
export function parsedSvg(svg: string): {
  readonly root: ParsedElement;
  readonly all: readonly ParsedElement[];
} {
  const all: ParsedElement[] = [];
  const open: ParsedElement[] = [];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    const element = { name, attributes, children: [], ancestors: [...open], text: "" };
    open.at(-1)?.children.push(element);
    open.push(element);
    all.push(element);
  });
  parser.on("text", (text) => {
    const element = open.at(-1);
    if (element !== undefined) element.text += text;
  });
  parser.on("closetag", () => {
    open.pop();
  });
  parser.write(svg).close();
  const [root] = all;
  if (root === undefined) throw new Error("Unexpected empty document");
  return { root, all };
}

export function hasClass(element: ParsedElement, name: string): boolean {
  return (element.attributes.class ?? "").split(" ").includes(name);
}

/** A number of an attribute; NaN when it is absent, so that a comparison fails. */
export function numberOf(element: ParsedElement, name: string): number {
  return Number(element.attributes[name] ?? NaN);
}

/** The texts a reader sees, title and description left out. */
export function seenTexts(svg: string): string[] {
  return parsedSvg(svg)
    .all.filter(({ name }) => name === "text")
    .map(({ text }) => text);
}
