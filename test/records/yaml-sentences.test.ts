import { describe, expect, test } from "vitest";
import { yamlRecord } from "../../lib/records/yaml-record.ts";

/** Slips in the marks of a record, which YAML's parser knows and words for programmers: each is one sentence, where the slip was made. */
function told(text: string): string[] {
  return yamlRecord("x.yaml", text).diagnostics.map(
    ({ place: { line, column }, message }) => `${line}:${column} ${message}`,
  );
}

describe("a slip in the marks of a record is told in one sentence, at its place", () => {
  test.each([
    [
      "a semicolon",
      "oil: { value: 45; method: slab }\nb: 1\n",
      "1:17 Between braces keys are parted by commas, and this is a semicolon",
    ],
    [
      "no comma",
      "oil: { value: 45 method: slab }\nb: 1\n",
      "1:15 A comma is missing in these braces: it stands between two keys with their values",
    ],
    [
      "two commas",
      "oil: { value: 45,, b: 1 }\n",
      "1:18 Two commas stand where one parts two values",
    ],
    [
      "no comma before a bracket",
      "oil: [{ b: 1 } { c: 2 }]\n",
      "1:16 A comma is missing before this bracket",
    ],
    [
      "no colon",
      "name: A\ndispersion mulled\nb: 1\n",
      '2:1 This line has no colon: a key and its value stand as in name: "Bone Black", with a colon and a blank between',
    ],
    [
      "no colon on the last line",
      "name: A\ndispersion mulled\n",
      '2:1 This line has no colon: a key and its value stand as in name: "Bone Black", with a colon and a blank between',
    ],
    [
      "no blank",
      "name: A\ndispersion:mulled\nb: 1\n",
      "2:1 A blank is missing after the colon of dispersion",
    ],
    [
      "a brace not closed, told where it opens",
      "a: { b: 1, c: 2\nd: { e: 1 }\n",
      "1:4 The { that is opened here is not closed by a }",
    ],
    [
      "the inner of two brackets",
      "a: [b: 1, c: [\n",
      "1:14 The [ that is opened here is not closed by a ]",
    ],
    [
      "a quotation mark missing between two others",
      'a: { b: "1:5, c: d, e: "1:5" }\n',
      "1:25 A quotation mark is missing on this line: before here one is opened and not closed",
    ],
    [
      "a line indented by no-break blanks",
      "list:\n\u00a0\u00a0- { a: b, c: d }\n",
      "2:1 This line is indented by a no-break space, and a record is indented by plain blanks",
    ],
    ["a bracket too many", "a: { b: 1 } }\n", "1:13 This bracket closes nothing that was opened"],
    [
      "a quotation mark not closed, told where it opens",
      'a: { b: "x y, c: 1 }\nb: 1\n',
      "1:9 A quotation mark is opened here and not closed",
    ],
    [
      "text behind a quotation mark",
      'a: "x" y\n',
      "1:8 More text stands behind a value that is closed already",
    ],
    [
      "an apostrophe within single quotes",
      "name: 'Terre d'ombre'\n",
      "1:16 An apostrophe ends a text that stands in single quotes; a text that holds one stands in double quotes",
    ],
    [
      "a line too far in",
      "a: 1\n b: 2\n",
      "2:1 This line begins farther in, or less far, than it should: keys that belong together begin in one column",
    ],
    [
      "a line less far in",
      "  a: 1\nb: 2\n",
      "2:1 This line begins farther in, or less far, than it should: keys that belong together begin in one column",
    ],
    [
      "a hyphen without its blank",
      "a:\n  -b: 1\n  - c: 2\n",
      "3:1 A list and keys are mixed here: each entry of a list begins with a hyphen and a blank, all in one column",
    ],
    [
      "a colon within a text",
      "name: A: b\n",
      '1:7 A text that holds a colon and a blank stands in quotes, as in name: "A: b", and this one does not',
    ],
    [
      "an at sign",
      "a: @b\n",
      "1:4 A text that begins with @ stands in quotes, and this one does not",
    ],
    [
      "an asterisk",
      "a: *b\n",
      "1:1 A text that begins with an asterisk stands in quotes, and one here does not",
    ],
    [
      "a backslash",
      'a: "C:\\path"\n',
      "1:7 A backslash within double quotes begins a sign of its own, and this is none: single quotes take it as it stands",
    ],
    ["a list beside its key", "a: - x\n", "1:4 A list begins on the line below its key"],
    [
      "text beside a bar",
      "a: |x\n  foo\n",
      "1:5 Nothing stands on the line of a text's | or > but that sign: the text begins on the next",
    ],
  ])("%s", (_slip, text, line) => expect(told(text)).toEqual([line]));
});

describe("a text that YAML cuts at a number sign is warned of", () => {
  test.each([
    ["a name with its number", "name: Orange #62\nfamily: orange\n", "1:13", "#62", "Orange #62"],
    ["within a list", "a: [b, c #1\n]\n", "1:9", "#1", "c #1"],
  ])("%s", (_, text, place, sign, whole) =>
    expect(told(text)).toEqual([
      `${place} A comment begins at ${sign}, so the text ends before it; if that belongs to it, it stands in quotes: "${whole}"`,
    ]),
  );

  test.each([
    "name: Orange # our own\n",
    "ml: 40 #tube\n",
    'name: "Orange #62"\n',
    "#name: Orange\nname: Red\n",
  ])("and %s is not", (text) => expect(told(text)).toEqual([]));
});
