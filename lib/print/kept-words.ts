/** Words as a font sets them, from one run to the next: to shape one takes as long as to draw many. */
import { deserialize, serialize } from "node:v8";
import { contentHash } from "../kept/content-hash.ts";
import { at, certain } from "../quantities/at.ts";

/** Parts of a glyph of fontkit's. */
export interface FontGlyph {
  readonly id: number;
  /** The letters that it stands for. */
  readonly codePoints: readonly number[];
  readonly advanceWidth: number;
}

/** Where a glyph goes on to and how far it is moved, in thousandths of the size. */
export interface GlyphPlace {
  readonly xAdvance: number;
  readonly yAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
  readonly advanceWidth: number;
}

/** Glyphs of a word, where each goes on to, and how far all of them. */
export interface ShapedWord {
  readonly glyphs: readonly FontGlyph[];
  readonly positions: readonly GlyphPlace[];
  readonly advanceWidth: number;
}

/** A font that has been read. */
export interface FontOfWords {
  /** Thousandths of the size to a unit of the font. */
  readonly scale: number;
  readonly font: {
    readonly getGlyph: (id: number, letters: readonly number[]) => FontGlyph;
  };
}

/**
 * A word in whole numbers, one after another for each glyph: its own number, {@link PLACES} in units of the font, how
 * many letters, and these.
 */
type PackedWord = Int16Array;

const PLACES = ["xAdvance", "yAdvance", "xOffset", "yOffset"] as const;

/** Of a font its bytes' hash and its words, the numbers of all in one row: so many are read at once. */
interface PackedFont {
  readonly hash: string;
  readonly texts: readonly string[];
  readonly numbers: Int16Array;
  /** Where the numbers of each word end. */
  readonly ends: Uint32Array;
}

/** So many words of a font are kept, those of the newest run first. Our own choice. */
const MOST = 6_000;

/** Words of one font. */
export interface WordsOfFont {
  /** As it was shaped in a run before. */
  readonly kept: (text: string) => ShapedWord | undefined;
  /** Shaped now: for the next run. */
  readonly shaped: (text: string, word: ShapedWord) => unknown;
}

/** What is known of a font in this run. */
interface FontNow {
  readonly hash: string;
  readonly font: FontOfWords;
  /** Of a run before. */
  readonly earlier: ReadonlyMap<string, PackedWord>;
  /** Of those, by their texts. */
  readonly used: Set<string>;
  readonly shaped: Map<string, ShapedWord>;
}

/** Words of a run: what it begins with, sets, and hands on. */
export interface WordsOfRun {
  /** Begin with the words of a run before, as `toKeep` gave them. */
  readonly beginWith: (bytes: Uint8Array) => void;
  /** What the next run may begin with; undefined where no word is new. */
  readonly toKeep: () => Uint8Array | undefined;
  /** @param name of the font, of which these bytes are all that it is. */
  readonly ofFont: (name: string, font: FontOfWords, bytes: Uint8Array) => WordsOfFont;
}

/** Nothing known yet. */
export function wordsOfRun(): WordsOfRun {
  let before: ReadonlyMap<string, PackedFont> = new Map();
  const now = new Map<string, FontNow>();
  const wordsBefore = (name: string, hash: string): ReadonlyMap<string, PackedWord> => {
    const known = before.get(name);
    return known?.hash === hash ? wordsOf(known) : new Map<string, PackedWord>();
  };
  return {
    beginWith: (bytes) => {
      before = deserialize(bytes) as typeof before;
    },
    toKeep: () => {
      if ([...now.values()].every(({ shaped }) => shaped.size === 0)) return undefined;
      const fonts = new Map(before);
      for (const [name, { hash, font, earlier, used, shaped }] of now) {
        const all = new Map([...used].map((text) => [text, certain(earlier.get(text))]));
        for (const [text, word] of shaped) {
          const packed = packedWord(word, font);
          if (packed !== undefined) all.set(text, packed);
        }
        for (const [text, packed] of earlier) if (!all.has(text)) all.set(text, packed);
        fonts.set(name, packedFont(hash, [...all].slice(0, MOST)));
      }
      return serialize(fonts);
    },
    ofFont: (name, font, bytes) => {
      const hash = contentHash([bytes]).toString("base64url");
      const earlier = wordsBefore(name, hash);
      const own: FontNow = { hash, font, earlier, used: new Set(), shaped: new Map() };
      now.set(name, own);
      return {
        kept: (text) => {
          const packed = earlier.get(text);
          if (packed === undefined) return undefined;
          own.used.add(text);
          return unpacked(packed, font);
        },
        shaped: (text, word) => own.shaped.set(text, word),
      };
    },
  };
}

function packedFont(
  hash: string,
  words: readonly (readonly [text: string, word: PackedWord])[],
): PackedFont {
  const ends = new Uint32Array(words.length);
  let length = 0;
  for (const [i, [, word]] of words.entries()) ends[i] = length += word.length;
  const numbers = new Int16Array(length);
  for (const [i, [, word]] of words.entries()) numbers.set(word, at(ends, i) - word.length);
  return { hash, texts: words.map(([text]) => text), numbers, ends };
}

function wordsOf({ texts, numbers, ends }: PackedFont): ReadonlyMap<string, PackedWord> {
  return new Map(
    texts.map((text, i) => [text, numbers.subarray(i === 0 ? 0 : at(ends, i - 1), at(ends, i))]),
  );
}

/** Those of this process. */
export const WORDS = wordsOfRun();

/** Undefined where whole units of the font, in two bytes each, would not give the very same word. */
function packedWord(word: ShapedWord, font: FontOfWords): PackedWord | undefined {
  const numbers = word.glyphs.flatMap(({ id, codePoints }, i) => {
    const place = at(word.positions, i);
    return [
      id,
      ...PLACES.map((name) => Math.round(place[name] / font.scale)),
      codePoints.length,
      ...codePoints,
    ];
  });
  const packed = Int16Array.from(numbers);
  return packed.every((number, i) => number === numbers[i]) && isSame(unpacked(packed, font), word)
    ? packed
    : undefined;
}

function unpacked(packed: PackedWord, { scale, font }: FontOfWords): ShapedWord {
  const glyphs: FontGlyph[] = [];
  const positions: GlyphPlace[] = [];
  let advanceWidth = 0;
  for (let from = 0; from < packed.length;) {
    const [xAdvance, yAdvance, xOffset, yOffset] = PLACES.map(
      (_, i) => at(packed, from + 1 + i) * scale,
    ) as [number, number, number, number];
    const letters = from + PLACES.length + 2;
    const end = letters + at(packed, letters - 1);
    const glyph = font.getGlyph(at(packed, from), [...packed.subarray(letters, end)]);
    glyphs.push(glyph);
    positions.push({
      xAdvance,
      yAdvance,
      xOffset,
      yOffset,
      advanceWidth: glyph.advanceWidth * scale,
    });
    advanceWidth += xAdvance;
    from = end;
  }
  return { glyphs, positions, advanceWidth };
}

function isSame(one: ShapedWord, other: ShapedWord): boolean {
  return (
    one.advanceWidth === other.advanceWidth &&
    one.glyphs.every((glyph, i) => glyph === other.glyphs[i]) &&
    one.positions.every((place, i) =>
      [...PLACES, "advanceWidth" as const].every(
        (name) => place[name] === at(other.positions, i)[name],
      ),
    )
  );
}
