import { keptBesideProgram } from "../kept/beside-program.ts";
import { loadedPdfkit } from "./loaded-pdfkit.ts";
import { FACES, fontBytes, fontFile, SUBSETS, type Face, type Subset } from "./print-font.ts";

/** Stands on paper in place of a letter that the fonts lack: seen at once, and no letter of any name. */
export const MISSING_LETTER = "[?]";

/** A text as a face can set it: a space for a tab or a line's end, one that keeps a line together for a narrow one, `[?]` for each letter that the fonts lack. */
export function printable(text: string, face: Face): string {
  return Array.from(text, (character) => {
    if (subsetOf(face, codeOf(character)) !== undefined) return character;
    if (/[\u00a0\u202f]/.test(character)) return "\u00a0";
    return /\s/.test(character) ? " " : MISSING_LETTER;
  }).join("");
}

/** Letters of a text that paper can't show in every face, each once, in the order of the text. */
export function missingLetters(text: string): string[] {
  if (isPlain(text)) return [];
  return [...new Set(text)].filter(
    (character) =>
      !/\s/.test(character) &&
      FACES.some((face) => subsetOf(face, codeOf(character)) === undefined),
  );
}

/** Whether a text is of the letters alone that nearly all texts are of, and paper shows each of these. */
function isPlain(text: string): boolean {
  return (
    /^[\n -~]*$/.test(text) &&
    (isAsciiShown ??= FACES.every((face) =>
      ASCII.every((code) => subsetOf(face, code) !== undefined),
    ))
  );
}

/** From the exclamation mark to the tilde. */
const ASCII = Array.from({ length: 94 }, (_, i) => 0x21 + i);
let isAsciiShown: boolean | undefined;

/** Which subset has a character; the same in every document, so looked up once a run. */
const SUBSET_OF: Readonly<Record<Face, Map<number, Subset | undefined>>> = {
  serif: new Map(),
  "serif italic": new Map(),
  sans: new Map(),
  "sans bold": new Map(),
};

let probing: PDFKit.PDFDocument | undefined;

/** The first subset of a face that has a code point; undefined where none has. */
export function subsetOf(face: Face, code: number): Subset | undefined {
  const known = SUBSET_OF[face];
  if (known.has(code)) return known.get(code);
  const subset = SUBSETS.find((one) => codesOf(face, one).has(code));
  known.set(code, subset);
  return subset;
}

const CODES = new Map<string, ReadonlySet<number>>();

/** The code points that a font has a glyph of: read out of it once a version of the program. */
function codesOf(face: Face, subset: Subset): ReadonlySet<number> {
  const name = `${face} ${subset}`;
  const codes =
    CODES.get(name) ??
    keptBesideProgram(`letters ${name}`.replaceAll(" ", "-"), [fontFile(face, subset)], () =>
      readCodes(name, fontBytes(face, subset)),
    );
  CODES.set(name, codes);
  return codes;
}

function readCodes(name: string, bytes: Uint8Array): ReadonlySet<number> {
  const PDFDocument = loadedPdfkit();
  // A document that is never written: a font that is only asked does not end up in another.
  const pdf = (probing ??= new PDFDocument({ autoFirstPage: false }));
  const {
    _font: { font },
  } = pdf.registerFont(name, bytes).font(name) as unknown as {
    // A part of pdfkit that its types leave out.
    readonly _font: {
      readonly font: {
        readonly characterSet: readonly number[];
        hasGlyphForCodePoint(code: number): boolean;
      };
    };
  };
  return new Set(font.characterSet.filter((code) => font.hasGlyphForCodePoint(code)));
}

function codeOf(character: string): number {
  return character.codePointAt(0) ?? 0;
}
