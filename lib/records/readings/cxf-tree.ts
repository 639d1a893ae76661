import { SaxesParser } from "saxes";
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

/**
 * The elements of a CxF document, those of other namespaces left out.
 * A document type, an entity of its own, broken XML and undue depth or size are
 * refused, each with a complaint; nothing is ever fetched.
 *
 * @returns the root, of whatever name; undefined after a complaint.
 */
export function cxfTree({ text, spot, faults }: ReadText): CxfElement | undefined {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const path: OpenElement[] = [];
  const outcome: { root?: OpenElement; stopped: boolean } = { stopped: false };
  let depth = 0;
  /** Depth of the element that is being passed over, with all in it. */
  let passedOver: number | undefined;
  let elements = 0;
  let tagStart = 0;
  let written = false;
  let attributeStarts = new Map<string, number>();

  function stop(
    offset: number,
    rule: string,
    message: string,
    actual: string,
    expected: string,
  ): void {
    if (outcome.stopped) return;
    outcome.stopped = true;
    faults.error(rule, spot(Math.min(Math.max(offset, 0), text.length)), {
      message,
      actual,
      expected,
    });
  }

  parser.on("error", (error) => {
    const what = plainFault(error.message.replace(/^(?:[^:]*:)?\d+:\d+: /, ""));
    stop(
      written ? text.length : parser.position - 1,
      "xml",
      `The XML is broken: ${what}`,
      what,
      "a well-formed document",
    );
  });
  parser.on("doctype", () =>
    stop(
      text.lastIndexOf("<!DOCTYPE", parser.position - 1),
      "doctype",
      "A document type declaration is not read",
      "<!DOCTYPE",
      "a document without one",
    ),
  );
  parser.on("opentagstart", () => {
    tagStart = text.lastIndexOf("<", parser.position - 1);
    attributeStarts = new Map();
  });
  parser.on("attribute", ({ name }) => {
    const quote = text.charAt(parser.position - 1);
    attributeStarts.set(name, text.lastIndexOf(quote, parser.position - 2) + 1);
  });
  parser.on("opentag", (tag) => {
    depth++;
    elements++;
    if (depth > DEEPEST)
      return stop(
        tagStart,
        "xml-depth",
        `Elements stand more than ${DEEPEST} deep`,
        `more than ${DEEPEST}`,
        `at most ${DEEPEST}`,
      );
    if (elements > MOST_ELEMENTS)
      return stop(
        tagStart,
        "size",
        `The document has more than ${MOST_ELEMENTS} elements, and no more are read`,
        `more than ${MOST_ELEMENTS}`,
        `at most ${MOST_ELEMENTS}`,
      );
    if (outcome.stopped || passedOver !== undefined) return;
    if (outcome.root && tag.uri !== CXF_NAMESPACE) {
      passedOver = depth;
      return;
    }
    if (!outcome.root && tag.uri !== CXF_NAMESPACE) {
      return stop(
        tagStart,
        "cxf-root",
        `The document begins with ${tag.name} of ${tag.uri ? `the namespace ${tag.uri}` : "no namespace"}, and a CxF document with CxF of ${CXF_NAMESPACE}`,
        `${tag.name} of namespace ${tag.uri || "none"}`,
        `CxF of namespace ${CXF_NAMESPACE}`,
      );
    }
    const plain = Object.values(tag.attributes).filter(({ uri }) => uri === "");
    const attributes = new Map(
      plain.map(({ name, local, value }) => [
        local,
        { value: value.trim(), start: attributeStarts.get(name) ?? tagStart },
      ]),
    );
    const element: OpenElement = {
      name: tag.local,
      start: tagStart,
      attributes,
      children: [],
      text: "",
      contentStart: parser.position,
      contentEnd: parser.position,
    };
    path.at(-1)?.children.push(element);
    outcome.root ??= element;
    path.push(element);
  });
  parser.on("text", gather);
  parser.on("cdata", gather);
  parser.on("closetag", (tag) => {
    depth--;
    if (outcome.stopped) return;
    if (passedOver !== undefined) {
      if (depth < passedOver) passedOver = undefined;
      return;
    }
    const element = path.pop();
    if (!element) return;
    element.text = element.text.trim();
    if (!tag.isSelfClosing) element.contentEnd = text.lastIndexOf("</", parser.position - 1);
  });

  function gather(piece: string): void {
    const element = path.at(-1);
    if (element && passedOver === undefined) element.text += piece;
  }

  for (let i = 0; i < text.length && !outcome.stopped; i += PIECE_LENGTH)
    parser.write(text.slice(i, i + PIECE_LENGTH));
  written = true;
  if (!outcome.stopped) parser.close();
  return outcome.stopped ? undefined : outcome.root;
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
