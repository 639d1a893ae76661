import { escapedMarkup } from "../exchange/escaped-markup.ts";
import type { Markup } from "../present/views.ts";

/** An SVG element before it is written; a string child is text, so nothing reaches the page unescaped. */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: readonly (SvgNode | string)[];
}

/** Numbers are lengths in user units. `style` is shut out: the content security policy forbids it. */
export type Attributes = Readonly<Record<string, string | number | undefined>> & {
  readonly style?: never;
};

export function element(
  name: string,
  attributes: Attributes,
  children: readonly (SvgNode | string)[] = [],
): SvgNode {
  return { name, attributes, children };
}

/** A place in user units, y downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A number as written in an attribute: three decimals at most, "." whatever the language.
 * @throws RangeError when it is NaN or infinite: a picture never hides a broken figure.
 */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) throw refusal("coordinate", String(value), "a finite number");
  return String(Number(value.toFixed(3)) + 0);
}

/** Path data of a line through points, in user units. */
export function polyline(points: readonly Point[]): string {
  return points
    .map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${coordinate(x)} ${coordinate(y)}`)
    .join("");
}

/** The element as XML, one element a line, ending without a line break. */
export function writtenSvg(node: SvgNode, indent = ""): Markup {
  const attributes = Object.entries(node.attributes)
    .filter((entry): entry is [string, string | number] => entry[1] !== undefined)
    .map(
      ([name, value]) =>
        ` ${name}="${typeof value === "number" ? coordinate(value) : escapedMarkup(value)}"`,
    )
    .join("");
  const open = `${indent}<${node.name}${attributes}`;
  if (node.children.length === 0) return `${open}/>` as Markup;
  // Text keeps to one line: a line break inside <text> would be drawn as a space.
  if (node.children.every((child) => typeof child === "string"))
    return `${open}>${node.children.map(escapedMarkup).join("")}</${node.name}>` as Markup;
  const inner = node.children.map((child) =>
    typeof child === "string"
      ? `${indent} ${escapedMarkup(child)}`
      : writtenSvg(child, `${indent} `),
  );
  return `${open}>\n${inner.join("\n")}\n${indent}</${node.name}>` as Markup;
}

/** `domainError` for a value that is not a number. */
export function refusal(subject: string, actual: string, expected: string): RangeError {
  return new RangeError(`The ${subject}, ${actual}, can't be drawn; right would be ${expected}`);
}
