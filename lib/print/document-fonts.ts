import type { PdfReference } from "./leaves.ts";
import { certain } from "../quantities/at.ts";
import { FACES, fontBytes, SUBSETS, type Face, type Subset } from "./print-font.ts";
import { WORDS, type FontOfWords, type ShapedWord, type WordsOfFont } from "./kept-words.ts";
import { printable, subsetOf } from "./printable-letters.ts";

export interface TextRun {
  readonly text: string;
  readonly font: string;
}

/** The fonts of a document, each opened when the first text asks for it. */
export interface DocumentFonts {
  /** A text in runs that one embedded file each can set; a letter that none has is replaced. */
  readonly runs: (text: string, face: Face) => readonly TextRun[];
  /** By the name that a run has: opened, where it was not. */
  readonly font: (name: string) => EmbeddedFont;
  /** The names of those that are opened. */
  readonly opened: () => readonly string[];
  /** Told before the document ends: every glyph of a whole font is of some letter. */
  readonly close: () => void;
}

/** A font as pdfkit embeds it; parts that its types leave out. */
export interface EmbeddedFont extends FontOfWords {
  /** What pages call it by. */
  readonly id: string;
  readonly font: FontOfWords["font"] & ReadFont;
  readonly layoutRun: (text: string) => ShapedWord;
  readonly layoutCached: (text: string) => ShapedWord;
  layoutCache: Record<string, ShapedWord>;
  layout: (text: string, features: undefined, onlyWidth?: boolean) => ShapedText;
  /** Of each glyph that was used, by its number in the document: the letters that it stands for, and how wide it is. */
  readonly unicode: (readonly number[] | undefined)[];
  readonly widths: (number | undefined)[];
  subset: { readonly includeGlyph: (glyph: number) => number; readonly encode: () => Uint8Array };
  readonly ref: () => PdfReference;
}

/** Its words one after another; of a text that is only measured no glyphs. */
type ShapedText = Pick<ShapedWord, "advanceWidth"> & Partial<ShapedWord>;

/** Parts of fontkit that are used of a font that it has read. */
interface ReadFont {
  readonly characterSet: readonly number[];
  readonly glyphForCodePoint: (codePoint: number) => unknown;
}

/** Spacing modifier letters, some of which are drawn as a quotation mark is. */
const MODIFIERS = { first: 0x2b0, last: 0x2ff } as const;

/**
 * A glyph is of the letter that fontkit first looks it up for, in all documents of a run, and of none
 * where it was first embedded as a part of another: the apostrophe of a closing quotation mark. Looked
 * up all at once, glyphs are of the same letters whatever is printed first, and can be read back.
 */
function nameGlyphs(font: ReadFont): void {
  const isModifier = (code: number): boolean => code >= MODIFIERS.first && code <= MODIFIERS.last;
  const inOrder = font.characterSet.toSorted(
    (one, other) => Number(isModifier(one)) - Number(isModifier(other)) || one - other,
  );
  for (const code of inOrder) font.glyphForCodePoint(code);
}

const READ = new Map<string, ReadFont>();

interface ShapedWords {
  readonly words: Record<string, ShapedWord>;
  /** How many they are. */
  readonly count: () => number;
}

const SHAPED = new Map<string, ShapedWords>();
/** Past so many words of a font the next document begins anew. */
const MOST_SHAPED = 10_000;

/** Words of a font as they are shaped, each once for many documents. */
function shapedWords(
  name: string,
  font: EmbeddedFont,
  bytes: () => Uint8Array,
): ShapedWords["words"] {
  const known = SHAPED.get(name);
  const shaped =
    known === undefined || known.count() > MOST_SHAPED
      ? withSpacesAdded(font, WORDS.ofFont(name, font, bytes()))
      : known;
  SHAPED.set(name, shaped);
  return shaped.words;
}

/**
 * A word is measured without the space behind it and drawn with it: shaped once, it is put together
 * with the space, unless the font moves its last letter before a space.
 */
function withSpacesAdded(font: EmbeddedFont, before: WordsOfFont): ShapedWords {
  const shaped = Object.create(null) as Record<string, ShapedWord>;
  let count = 0;
  const keep = (text: string, word: ShapedWord): ShapedWord => {
    count++;
    return (shaped[text] = word);
  };
  const keptOf = (text: string): ShapedWord | undefined => {
    const word = shaped[text];
    if (word !== undefined) return word;
    const kept = before.kept(text);
    return kept && keep(text, kept);
  };
  const shapedNow = (text: string, word: ShapedWord): ShapedWord => {
    before.shaped(text, word);
    return keep(text, word);
  };
  const of = (text: string): ShapedWord => keptOf(text) ?? shapedNow(text, font.layoutRun(text));
  const apart = (text: string): ShapedWord => {
    const [word, space] = [of(text.slice(0, -1)), of(" ")];
    return {
      glyphs: [...word.glyphs, ...space.glyphs],
      positions: [...word.positions, ...space.positions],
      advanceWidth: word.advanceWidth + space.advanceWidth,
    };
  };
  const kerned = new Map<string, boolean>();
  const isKerned = (last: string): boolean => {
    const known =
      kerned.get(last) ?? of(`${last} `).advanceWidth !== apart(`${last} `).advanceWidth;
    kerned.set(last, known);
    return known;
  };
  const words = new Proxy(shaped, {
    get: (_, text: string) =>
      keptOf(text) ??
      (/[^ ] $/.test(text) && !isKerned(text.slice(-2, -1)) ? keep(text, apart(text)) : undefined),
    set: (_, text: string, word: ShapedWord) => shapedNow(text, word) === word,
  });
  return { words, count: () => count };
}

const TEXTS = new Map<string, Map<string, ShapedText>>();
/** Past so many texts of a font they are put together anew: what is drawn is drawn again soon, as the leaf of a sheet. */
const MOST_TEXTS = 2_000;

/** Texts as words after one another, each text that is drawn once: pdfkit would do it letter by letter, and three times for each drawing. */
function textsShaped(name: string, font: EmbeddedFont): EmbeddedFont["layout"] {
  const shaped = TEXTS.get(name) ?? new Map<string, ShapedText>();
  TEXTS.set(name, shaped);
  return (text, _, onlyWidth = false) => {
    const known = shaped.get(text);
    if (known !== undefined) return known;
    const words = wordsOf(text).map((word) => font.layoutCached(word));
    const advanceWidth = words.reduce((sum, word) => sum + word.advanceWidth, 0);
    if (onlyWidth) return { advanceWidth };
    if (shaped.size >= MOST_TEXTS) shaped.clear();
    const own = {
      glyphs: words.flatMap(({ glyphs }) => glyphs),
      positions: words.flatMap(({ positions }) => positions),
      advanceWidth,
    };
    shaped.set(text, own);
    return own;
  };
}

/** As pdfkit parts a text: each word with the space behind it, and every further space by itself. */
function wordsOf(text: string): string[] {
  const words: string[] = [];
  let from = 0;
  for (let space; (space = text.indexOf(" ", from)) >= 0; from = space + 1)
    words.push(text.slice(from, space + 1));
  if (from < text.length) words.push(text.slice(from));
  return words;
}

/** @param areWhole whether each font is embedded whole in place of the part of it that is used. */
export function documentFonts(pdf: PDFKit.PDFDocument, areWhole: boolean): DocumentFonts {
  const opened = new Map<string, EmbeddedFont>();
  const fontOpened = (face: Face, subset: Subset): EmbeddedFont => {
    const name = `${face} ${subset}`;
    const known = opened.get(name);
    if (known !== undefined) return known;
    // pdfkit takes what fontkit has read of a font as well as its bytes; each document embeds its own part of it.
    pdf.registerFont(name, (READ.get(name) ?? fontBytes(face, subset)) as Uint8Array);
    if (areWhole) inside(pdf)._fontCount = numberOf(face, subset);
    const font = inside(pdf.font(name))._font;
    if (!READ.has(name)) nameGlyphs(font.font);
    READ.set(name, font.font);
    // Ligatures and kerning of a word are the same in every document: shaped once a run, not once a document.
    font.layoutCache = shapedWords(name, font, () => fontBytes(face, subset));
    font.layout = textsShaped(name, font);
    if (areWhole) embedWhole(font, fontBytes(face, subset));
    opened.set(name, font);
    return font;
  };
  return {
    runs: (text, face) =>
      subsetRuns(text, face).map(({ text: part, subset }) => {
        fontOpened(face, subset);
        return { text: part, font: `${face} ${subset}` };
      }),
    font: (name) => {
      const face = FACES.findLast((one) => name.startsWith(`${one} `)) ?? "sans";
      return fontOpened(face, name.slice(face.length + 1) as Subset);
    },
    opened: () => [...opened.keys()],
    close: () => {
      if (areWhole) opened.forEach(nameRest);
    },
  };
}

/** The same number in every document, by which its pages call a font. */
function numberOf(face: Face, subset: Subset): number {
  return FACES.indexOf(face) * SUBSETS.length + SUBSETS.indexOf(subset);
}

/** A glyph of a whole font as it was used. */
export type UsedGlyph = readonly [glyph: number, width: number, letters: readonly number[]];

/** Its glyphs then have their own numbers, which are the same in every document: what was drawn in one can be bound into another. */
function embedWhole(own: EmbeddedFont, bytes: Uint8Array): void {
  own.subset = { includeGlyph: (glyph) => glyph, encode: () => bytes };
}

export function usedGlyphs({ widths, unicode }: EmbeddedFont): UsedGlyph[] {
  return unicode.flatMap((letters, glyph) =>
    letters === undefined ? [] : [[glyph, certain(widths[glyph]), letters] as const],
  );
}

/** A glyph that stands for other letters in the document already goes on to stand for those. */
export function useGlyphs({ widths, unicode }: EmbeddedFont, used: readonly UsedGlyph[]): void {
  for (const [glyph, width, letters] of used) {
    widths[glyph] ??= width;
    unicode[glyph] ??= letters;
  }
}

/** What stands for no letter that anybody knows of. */
const REPLACEMENT = 0xfffd;

/** Of glyphs that were not used pdfkit has to be told something, too. */
function nameRest({ widths, unicode }: EmbeddedFont): void {
  for (let glyph = 0; glyph < unicode.length; glyph++) {
    widths[glyph] ??= 0;
    unicode[glyph] ??= [REPLACEMENT];
  }
}

/** Parts of pdfkit that its types leave out. */
function inside(pdf: PDFKit.PDFDocument): { readonly _font: EmbeddedFont; _fontCount: number } {
  return pdf as unknown as ReturnType<typeof inside>;
}

interface SubsetRun {
  readonly text: string;
  readonly subset: Subset;
}

/** Texts of a face parted by the file that sets them, the same in every document; past so many they are parted anew. */
const PARTED = new Map<Face, Map<string, readonly SubsetRun[]>>();
const MOST_PARTED = 10_000;

function subsetRuns(text: string, face: Face): readonly SubsetRun[] {
  const parted = PARTED.get(face) ?? new Map<string, readonly SubsetRun[]>();
  PARTED.set(face, parted);
  const known = parted.get(text);
  if (known !== undefined) return known;
  if (parted.size >= MOST_PARTED) parted.clear();
  const runs: { text: string; subset: Subset }[] = [];
  for (const character of printable(text, face)) {
    const subset = subsetOf(face, character.codePointAt(0) ?? 0) ?? "latin";
    const last = runs.at(-1);
    if (last?.subset === subset) last.text += character;
    else runs.push({ text: character, subset });
  }
  parted.set(text, runs);
  return runs;
}
