/** What YAML's parser complains of, in words of whoever writes a record, and where the slip was made. */
import { visit, type Document, type YAMLError } from "yaml";
import { excerpt } from "../diagnostics/diagnostic.ts";

interface YamlFault {
  /** Where in the text. */
  readonly offset: number;
  readonly message: string;
}

/** Lists and keys within each other past all reading: the deepest record has six. */
export const TOO_DEEP = "Brackets or dashes stand too deep in each other to be read";

const NO_COLON =
  'This line has no colon: a key and its value stand as in name: "Bone Black", with a colon and a blank between';
const INDENTED =
  "This line begins farther in, or less far, than it should: keys that belong together begin in one column";
const MIXED =
  "A list and keys are mixed here: each entry of a list begins with a hyphen and a blank, all in one column";
const COLON_IN_TEXT =
  'A text that holds a colon and a blank stands in quotes, as in name: "A: b", and this one does not';

/** By the parser's own words, where a slip has these alone. */
const BY_WORDS: readonly (readonly [words: RegExp, message: string])[] = [
  [/multiple documents/, "A second document begins here: a record is one"],
  [/Sequence item without/, MIXED],
  [/sequence may not be used as an implicit/, MIXED],
  [/block-seq-ind on same line/, "A list begins on the line below its key"],
  [
    /Block scalar header/,
    "Nothing stands on the line of a text's | or > but that sign: the text begins on the next",
  ],
  [/All mapping items must start at the same column/, INDENTED],
  [/Tabs are not allowed/, "A line is indented by blanks, and this one by a tab"],
  [/flow-(?:map|seq)-end token/, "This bracket closes nothing that was opened"],
  [/^Unexpected , /, "Two commas stand where one parts two values"],
  [/^Unexpected flow-/, "A comma is missing before this bracket"],
  [
    /^Unresolved tag/,
    "A value that begins with an exclamation mark stands in quotes, and this one does not",
  ],
];

/** The parser's complaints as they are told: the first alone, since all others follow from it. */
export function yamlFaults(document: Document.Parsed, text: string): readonly YamlFault[] {
  const errors = [...document.errors, ...document.warnings];
  const error = errors.find(isTooDeep) ?? errors[0];
  return error === undefined ? [] : [fault(error, document, text)];
}

/** Brackets by the thousand: the parser gives up wherever its stack ends, and complains of the rest. */
function isTooDeep({ message }: YAMLError): boolean {
  return message.includes("call stack");
}

function fault(error: YAMLError, document: Document.Parsed, text: string): YamlFault {
  const { code, message, pos } = error;
  const [offset] = pos;
  const rest = lineFrom(text, offset);
  const here = (said: string): YamlFault => ({ offset, message: said });
  if (isTooDeep(error)) return here(TOO_DEEP);
  const indented = INDENTED_BY_ANOTHER_BLANK.exec(text);
  if (indented !== null) return { offset: indented.index, message: ANOTHER_BLANK };
  const byWords = BY_WORDS.find(([words]) => words.test(message))?.[1];
  if (byWords !== undefined) return here(byWords);
  if (/^Missing closing/.test(message)) return openQuote(document, offset) ?? here(UNCLOSED_QUOTE);
  if (/must be sufficiently indented/.test(message)) return openBracket(document, offset, text);
  switch (code) {
    case "BLOCK_AS_IMPLICIT_KEY":
      return /:\s/.test(rest)
        ? here(COLON_IN_TEXT)
        : { offset: nextLine(text, offset), message: INDENTED };
    case "BLOCK_IN_FLOW":
      return withoutComma(text, offset);
    case "MULTILINE_IMPLICIT_KEY":
    case "MISSING_CHAR":
      return here(withoutColon(rest));
    case "BAD_SCALAR_START":
      return here(
        `A text that begins with ${rest.slice(0, 1)} stands in quotes, and this one does not`,
      );
    case "BAD_DQ_ESCAPE":
      return here(
        "A backslash within double quotes begins a sign of its own, and this is none: single quotes take it as it stands",
      );
    case "UNEXPECTED_TOKEN":
      return here(
        isLineStart(text, offset)
          ? INDENTED
          : text[offset - 1] === "'"
            ? APOSTROPHE
            : isOdd(lineAt(text, offset).split('"').length - 1)
              ? "A quotation mark is missing on this line: before here one is opened and not closed"
              : "More text stands behind a value that is closed already",
      );
    default:
      return here(
        `YAML can't be read from here on: ${excerpt(message.split("\n")[0]?.trim() ?? message)}`,
      );
  }
}

const APOSTROPHE =
  "An apostrophe ends a text that stands in single quotes; a text that holds one stands in double quotes";
/** A word processor's and a web page's, at the head of a line. */
const INDENTED_BY_ANOTHER_BLANK = /^ *[\u00a0\u2000-\u200a\u202f]/m;
const ANOTHER_BLANK =
  "This line is indented by a no-break space, and a record is indented by plain blanks";
const UNCLOSED_QUOTE = "A quotation mark is opened here and not closed";

function openQuote(document: Document.Parsed, offset: number): YamlFault | undefined {
  let opened: number | undefined;
  visit(document, {
    Scalar: (_, { type, range }) => {
      if (range && (type === "QUOTE_DOUBLE" || type === "QUOTE_SINGLE") && range[0] < offset)
        opened = Math.max(opened ?? 0, range[0]);
    },
  });
  return opened === undefined ? undefined : { offset: opened, message: UNCLOSED_QUOTE };
}

/** The innermost bracket that stands open where the parser gave up. */
function openBracket(document: Document.Parsed, offset: number, text: string): YamlFault {
  let opened = -1;
  visit(document, {
    Collection: (_, { flow, range }) => {
      if (flow !== true || !range || range[0] >= offset) return;
      const closing = text[range[0]] === "{" ? "}" : "]";
      if (text[range[1] - 1] !== closing) opened = Math.max(opened, range[0]);
    },
  });
  const at = opened < 0 ? offset : opened;
  const isMap = text[at] === "{";
  return {
    offset: at,
    message: `The ${isMap ? "{" : "["} that is opened here is not closed by a ${isMap ? "}" : "]"}`,
  };
}

/** Between braces: a semicolon in a comma's place, or none at all. */
function withoutComma(text: string, offset: number): YamlFault {
  const written = /^[^,}\]\n]*/.exec(text.slice(offset))?.[0] ?? "";
  const semicolon = written.indexOf(";");
  return semicolon < 0
    ? {
        offset,
        message: "A comma is missing in these braces: it stands between two keys with their values",
      }
    : {
        offset: offset + semicolon,
        message: "Between braces keys are parted by commas, and this is a semicolon",
      };
}

function withoutColon(line: string): string {
  const [, spaced] = /^([\w-]+):[\u00a0\u2000-\u200a\u202f]/.exec(line) ?? [];
  if (spaced !== undefined)
    return `Behind the colon of ${excerpt(spaced)} stands a no-break space: a plain blank parts a key from its value`;
  const [, key] = /^([\w-]+):\S/.exec(line) ?? [];
  return key === undefined ? NO_COLON : `A blank is missing after the colon of ${excerpt(key)}`;
}

function lineAt(text: string, offset: number): string {
  return lineFrom(text, text.lastIndexOf("\n", offset - 1) + 1);
}

function isOdd(count: number): boolean {
  return count % 2 === 1;
}

function lineFrom(text: string, offset: number): string {
  const end = text.indexOf("\n", offset);
  return text.slice(offset, end < 0 ? text.length : end);
}

function nextLine(text: string, offset: number): number {
  const end = text.indexOf("\n", offset);
  return end < 0 ? offset : end + 1;
}

function isLineStart(text: string, offset: number): boolean {
  return text.slice(text.lastIndexOf("\n", offset - 1) + 1, offset).trim() === "";
}
