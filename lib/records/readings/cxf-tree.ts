import { SaxesParser, type SaxesTagNS } from "saxes";
import type { ReadText } from "./fault-list.ts";

const CXF_NAMESPACE = "http://colorexchangeformat.com/CxF3-core";

/** An element with the offsets in the text of its tag and of its content. */
export interface CxfElement {
  /** Without prefix. */
  readonly name: string;
  readonly start: number;
  readonly attributes: ReadonlyMap<string, { readonly value: string; readonly start: number }>;
  readonly children: readonly CxfElement[];
  /** Text of the element itself, entities and line ends resolved, blanks around it cut. */
  readonly text: string;
  readonly contentStart: number;
  readonly contentEnd: number;
}

/** An element while its content is read. */
interface OpenElement extends CxfElement {
  children: OpenElement[];
  text: string;
  contentEnd: number;
}

const DEEPEST = 40;
const MOST_ELEMENTS = 200_000;
/** So much is read on after a fault: the parser can't be stopped inside a piece. */
const PIECE_LENGTH = 4096;

/** Why a document is read no further. */
interface Refusal {
  readonly rule: string;
  readonly message: string;
  readonly actual: string;
  readonly expected: string;
}

/** The elements of a document as they are opened and closed, those of other namespaces passed over. */
class GrowingTree {
  root: OpenElement | undefined;
  readonly #path: OpenElement[] = [];
  #depth = 0;
  #elements = 0;
  /** Depth of the element that is being passed over, with all in it. */
  #passedOver: number | undefined;

  /** @returns why it is not opened, where that ends the reading. */
  open(tag: SaxesTagNS, start: number, starts: AttributeStarts, end: number): Refusal | undefined {
    const refusal = countRefusal(++this.#depth, ++this.#elements);
    if (refusal !== undefined || this.#passedOver !== undefined) return refusal;
    if (tag.uri !== CXF_NAMESPACE) {
      if (this.root === undefined) return rootRefusal(tag);
      this.#passedOver = this.#depth;
      return undefined;
    }
    const plain = Object.values(tag.attributes).filter(({ uri }) => uri === "");
    const element: OpenElement = {
      name: tag.local,
      start,
      attributes: new Map(
        plain.map(({ name, local, value }) => [
          local,
          { value: value.trim(), start: starts.get(name) ?? start },
        ]),
      ),
      children: [],
      text: "",
      contentStart: end,
      contentEnd: end,
    };
    this.#path.at(-1)?.children.push(element);
    this.root ??= element;
    this.#path.push(element);
    return undefined;
  }

  gather(piece: string): void {
    const element = this.#path.at(-1);
    if (element && this.#passedOver === undefined) element.text += piece;
  }

  /** @param contentEnd of one that does not close itself. */
  close(contentEnd: number | undefined): void {
    this.#depth--;
    if (this.#passedOver !== undefined) {
      if (this.#depth < this.#passedOver) this.#passedOver = undefined;
      return;
    }
    const element = this.#path.pop();
    if (!element) return;
    element.text = element.text.trim();
    element.contentEnd = contentEnd ?? element.contentEnd;
  }
}

type AttributeStarts = ReadonlyMap<string, number>;

function countRefusal(depth: number, elements: number): Refusal | undefined {
  if (depth > DEEPEST)
    return {
      rule: "xml-depth",
      message: `Elements stand more than ${DEEPEST} deep`,
      actual: `more than ${DEEPEST}`,
      expected: `at most ${DEEPEST}`,
    };
  if (elements > MOST_ELEMENTS)
    return {
      rule: "size",
      message: `The document has more than ${MOST_ELEMENTS} elements, and no more are read`,
      actual: `more than ${MOST_ELEMENTS}`,
      expected: `at most ${MOST_ELEMENTS}`,
    };
  return undefined;
}

function rootRefusal({ name, uri }: SaxesTagNS): Refusal {
  return {
    rule: "cxf-root",
    message: `The document begins with ${name} of ${uri ? `the namespace ${uri}` : "no namespace"}, and a CxF document with CxF of ${CXF_NAMESPACE}`,
    actual: `${name} of namespace ${uri || "none"}`,
    expected: `CxF of namespace ${CXF_NAMESPACE}`,
  };
}

const DOCTYPE: Refusal = {
  rule: "doctype",
  message: "A document type declaration is not read",
  actual: "<!DOCTYPE",
  expected: "a document without one",
};

/**
 * The elements of a CxF document, those of other namespaces left out.
 * A document type, an entity of its own, broken XML and undue depth or size are
 * refused, each with a complaint; nothing is ever fetched.
 *
 * @returns the root, of whatever name; undefined after a complaint.
 */
export function cxfTree({ text, spot, faults }: ReadText): CxfElement | undefined {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const tree = new GrowingTree();
  const outcome = { isStopped: false };
  let isWritten = false;
  let tagStart = 0;
  let attributeStarts = new Map<string, number>();

  function stop(offset: number, { rule, ...fault }: Refusal): void {
    if (outcome.isStopped) return;
    outcome.isStopped = true;
    faults.error(rule, spot(Math.min(Math.max(offset, 0), text.length)), fault);
  }

  parser.on("error", (error) => {
    const what = plainFault(error.message.replace(/^(?:[^:]*:)?\d+:\d+: /, ""));
    stop(isWritten ? text.length : parser.position - 1, {
      rule: "xml",
      message: `The XML is broken: ${what}`,
      actual: what,
      expected: "a well-formed document",
    });
  });
  parser.on("doctype", () => stop(text.lastIndexOf("<!DOCTYPE", parser.position - 1), DOCTYPE));
  parser.on("opentagstart", () => {
    tagStart = text.lastIndexOf("<", parser.position - 1);
    attributeStarts = new Map();
  });
  parser.on("attribute", ({ name }) => {
    const quote = text.charAt(parser.position - 1);
    attributeStarts.set(name, text.lastIndexOf(quote, parser.position - 2) + 1);
  });
  parser.on("opentag", (tag) => {
    const refusal = outcome.isStopped
      ? undefined
      : tree.open(tag, tagStart, attributeStarts, parser.position);
    if (refusal !== undefined) stop(tagStart, refusal);
  });
  parser.on("text", (piece) => tree.gather(piece));
  parser.on("cdata", (piece) => tree.gather(piece));
  parser.on("closetag", ({ isSelfClosing }) =>
    tree.close(isSelfClosing ? undefined : text.lastIndexOf("</", parser.position - 1)),
  );
  for (let i = 0; i < text.length && !outcome.isStopped; i += PIECE_LENGTH)
    parser.write(text.slice(i, i + PIECE_LENGTH));
  isWritten = true;
  if (!outcome.isStopped) parser.close();
  return outcome.isStopped ? undefined : tree.root;
}

export function childrenOf(element: CxfElement | undefined, name: string): readonly CxfElement[] {
  return element?.children.filter((child) => child.name === name) ?? [];
}

/** The first element along a path of names below an element. */
export function elementAt(
  element: CxfElement | undefined,
  ...names: readonly string[]
): CxfElement | undefined {
  return names.reduce<CxfElement | undefined>((found, name) => childrenOf(found, name)[0], element);
}

/** What the parser says, in words of a sentence. */
function plainFault(said: string): string {
  const [, tag] = /^unclosed tag: (.*)$/s.exec(said) ?? [];
  if (tag !== undefined) return `${tag} is not closed`;
  return /^(?:undefined|empty|malformed).* entity/.test(said)
    ? "& begins the name of a letter, and no such name is known; a plain & is written &amp;"
    : said.replace(/\.$/, "");
}
