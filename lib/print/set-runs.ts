import { certain } from "../quantities/at.ts";
import { BLACK, MM_PER_PT, type Ink, type LinkBox, type TextMark } from "./mark.ts";
import { measureText } from "./print-document.ts";
import type { Face } from "./print-font.ts";

/** A stretch of a paragraph in one face. */
export interface Run {
  readonly text: string;
  readonly face: Face;
  readonly ink?: Ink;
  /** Against the size of the paragraph, 1 unless given. */
  readonly scale?: number;
  /** Whole address: the stretch is a link on paper that is read on a screen. */
  readonly href?: string;
}

export interface RunSetting {
  readonly widthMm: number;
  readonly sizePt: number;
  /** From baseline to baseline, against the size. */
  readonly leading?: number;
  readonly align?: "left" | "right" | "centre";
  /** Lines as even as they go: no word is left alone on the last one where another can join it. */
  readonly isBalanced?: boolean;
  /** Where words may be parted with a hyphen of ours; nowhere without it. */
  readonly hyphens?: Hyphens;
}

/** After how many of its letters a word may be parted with a hyphen. */
export type Hyphens = (word: string) => readonly number[];

/** A set paragraph, its origin the top left corner of its first line. */
export interface SetRuns {
  readonly lines: readonly SetLine[];
  readonly sizePt: number;
  readonly lineMm: number;
  readonly heightMm: number;
  /** Of the widest line. */
  readonly widthMm: number;
  readonly marks: readonly TextMark[];
  readonly links: readonly LinkBox[];
}

export interface SetLine {
  readonly marks: readonly TextMark[];
  readonly links: readonly LinkBox[];
}

interface Word {
  readonly text: string;
  readonly run: Run;
  readonly widthMm: number;
  readonly spaceMm: number;
  readonly ends: boolean;
}

const LEADING = 1.3;
/** Where the baseline lies below the top of the type, as a share of its size. */
const ASCENT = 0.8;

/** Runs in lines no wider than given. A word wider than a line is parted where it fills one: nothing is left out, nothing sticks out. */
export function setRuns(runs: readonly Run[], setting: RunSetting): SetRuns {
  const { widthMm, sizePt, leading = LEADING, align } = setting;
  const units = unbreakables(runs, sizePt);
  const broken = brokenLines(units, setting);
  const lines = setting.isBalanced === true ? balanced(units, setting, broken) : broken;
  const lineMm = sizePt * leading * MM_PER_PT;
  const baseline = ((leading - 1) / 2 + ASCENT) * sizePt * MM_PER_PT;
  const set = lines.map((line, i): SetLine => {
    const free = widthMm - lineWidth(line);
    let x = align === "right" ? free : align === "centre" ? free / 2 : 0;
    const marks: TextMark[] = [];
    const links: LinkBox[] = [];
    for (const { text, run, widthMm: own } of joined(line)) {
      const { face, ink = BLACK, scale = 1, href } = run;
      const yMm = i * lineMm + baseline;
      marks.push({ kind: "text", text, xMm: x, yMm, face, sizePt: sizePt * scale, ink });
      if (href !== undefined)
        links.push({ href, xMm: x, yMm: i * lineMm, widthMm: own, heightMm: lineMm });
      x += own;
    }
    return { marks, links };
  });
  return {
    lines: set,
    sizePt,
    lineMm,
    heightMm: lines.length * lineMm,
    widthMm: Math.max(0, ...lines.map(lineWidth)),
    marks: set.flatMap(({ marks }) => marks),
    links: set.flatMap(({ links }) => links),
  };
}

/** Set in the largest of some sizes, the wanted one first, in which it takes no more lines than `most`; past the last it takes as many as it needs. */
export function fittedRuns(
  runs: readonly Run[],
  most: number,
  sizesPt: readonly [number, ...number[]],
  setting: Omit<RunSetting, "sizePt">,
): SetRuns {
  let set = setRuns(runs, { ...setting, sizePt: sizesPt[0] });
  for (const sizePt of sizesPt.slice(1)) {
    if (set.lines.length <= most) break;
    set = setRuns(runs, { ...setting, sizePt });
  }
  return set;
}

/** Width [mm] of the longest stretch that may not be parted, and of the whole in one line. */
export function naturalWidths(
  runs: readonly Run[],
  sizePt: number,
  hyphens?: Hyphens,
): { readonly leastMm: number; readonly greatestMm: number } {
  const units = unbreakables(runs, sizePt);
  return {
    leastMm: leastWidth(units, sizePt, hyphens),
    greatestMm: lineWidth(units.flatMap(({ words }) => words)),
  };
}

/** Sizes from one down to another, by half points [pt]. */
export function sizesDown(fromPt: number, toPt: number): [number, ...number[]] {
  const further = Math.max(0, Math.floor((fromPt - toPt) * 2));
  return [fromPt, ...Array.from({ length: further }, (_, i) => fromPt - (i + 1) / 2)];
}

/** Of the widest part, where all is parted that may be. */
function leastWidth(units: readonly Unit[], sizePt: number, hyphens?: Hyphens): number {
  return units.reduce((most, unit) => {
    // What is not wider whole is not looked into.
    if (unit.widthMm <= most) return most;
    return leastParts(unit, sizePt, hyphens).reduce(
      (widest, { widthMm }) => Math.max(widest, widthMm),
      most,
    );
  }, 0);
}

function leastParts(unit: Unit, sizePt: number, hyphens?: Hyphens): readonly Unit[] {
  const ofAddress = addressParts(unit, sizePt);
  return ofAddress.length > 1
    ? ofAddress.flatMap((part) => domainParts(part, sizePt))
    : syllables(unit, sizePt, hyphenPlaces(unit, hyphens));
}

/** Of the widest unit that a line of a width holds, which is not parted for the sake of shorter lines; of what no such line holds, its widest part. */
function leastWhole(units: readonly Unit[], sizePt: number, widthMm: number): number {
  const widest = (some: readonly Unit[]): number =>
    some.reduce((most, unit) => Math.max(most, unit.widthMm), 0);
  return widest(units.flatMap((unit) => heldParts(unit, sizePt, widthMm)));
}

/** The same number of lines at the least width that holds them and parts no word that is whole; at a word's own hyphen only where a space would take a line more. */
function balanced(
  units: readonly Unit[],
  { sizePt, widthMm }: RunSetting,
  lines: Word[][],
): Word[][] {
  if (lines.length < 2) return lines;
  const spaced = unitsOf(
    units.flatMap(({ words }) => words),
    ({ text }) => text.endsWith(" "),
  );
  const isSpaced =
    spaced.every((unit) => unit.widthMm <= widthMm) &&
    brokenLines(spaced, { sizePt, widthMm }).length <= lines.length;
  const set = isSpaced ? spaced : units;
  let [low, high] = [Math.max(leastWhole(set, sizePt, widthMm), widthMm / lines.length), widthMm];
  for (let step = 0; step < 7; step++) {
    const middle = (low + high) / 2;
    if (brokenLines(set, { sizePt, widthMm: middle }).length > lines.length) low = middle;
    else high = middle;
  }
  return brokenLines(set, { sizePt, widthMm: high });
}

/** After spaces. */
const WORD_ENDS = /(?<= )(?! )/u;
/** After a hyphen inside a word, and a stroke between two long ones. */
const PART_ENDS = /(?<=[^ ]-)(?=\p{L})|(?<=\p{L}{4}\/)(?=\p{L}{4})/u;
/** Of an address after its @. */
const ADDRESS_ENDS = /(?<=@)(?=\p{L})/u;
/** Of what is behind it before a point. */
const DOMAIN_ENDS = /(?=\.\p{L})/u;
/** What is no word, and so parted nowhere: a telephone number, a CAS number, a UFI, a lot. */
const CODE = /\d|^\P{Ll}+$/u;

/** Words that may not be parted. */
interface Unit {
  readonly words: readonly Word[];
  readonly widthMm: number;
}

/** Words without a space or hyphen between them belong together, even across runs. */
function unbreakables(runs: readonly Run[], sizePt: number): Unit[] {
  return unitsOf(
    runs.flatMap((run) => {
      const ownPt = sizePt * (run.scale ?? 1);
      return wordsAtOnePt(run).map(({ text, widthMm, spaceMm, ends }) => ({
        text,
        run,
        widthMm: widthMm * ownPt,
        spaceMm: spaceMm * ownPt,
        ends,
      }));
    }),
    ({ ends }) => ends,
  );
}

/** Words in units, each down to one behind which a line may end. */
function unitsOf(words: readonly Word[], isEnd: (word: Word) => boolean): Unit[] {
  const units: Word[][] = [];
  let open = false;
  for (const word of words) {
    const last = units.at(-1);
    if (open && last !== undefined) last.push(word);
    else units.push([word]);
    open = !isEnd(word);
  }
  return units.map(unitOf);
}

function unitOf(words: readonly Word[]): Unit {
  return { words, widthMm: lineWidth(words) };
}

type MeasuredWord = Omit<Word, "run">;

/** A paragraph is set in many widths and sizes before it lies well: its words are parted and measured once. */
const MEASURED = new Map<Face, Map<string, readonly MeasuredWord[]>>();
const MOST_MEASURED = 20_000;

function wordsAtOnePt({ text: whole, face }: Run): readonly MeasuredWord[] {
  const ofFace = MEASURED.get(face) ?? new Map<string, readonly MeasuredWord[]>();
  MEASURED.set(face, ofFace);
  const known = ofFace.get(whole);
  if (known !== undefined) return known;
  if (ofFace.size >= MOST_MEASURED) ofFace.clear();
  const words = whole
    .split(WORD_ENDS)
    .filter((text) => text !== "")
    .flatMap((text) => partsOf(text))
    .map((text, i, parts) => {
      const solid = text.trimEnd();
      return {
        text,
        widthMm: measureText(solid, face, 1),
        spaceMm: measureText(text.slice(solid.length), face, 1),
        ends: i < parts.length - 1 || / $|-$/.test(text),
      };
    });
  ofFace.set(whole, words);
  return words;
}

/** A word where it may be parted without a hyphen of ours. */
function partsOf(word: string): readonly string[] {
  if (word.includes("@")) return [word];
  return CODE.test(word) ? [word] : word.split(PART_ENDS);
}

/** A stretch of a word, as a word of its own. */
function partOfWord({ run }: Word, text: string, sizePt: number, ends: boolean): Word {
  const solid = text.trimEnd();
  const ownPt = sizePt * (run.scale ?? 1);
  return {
    text,
    run,
    widthMm: measureText(solid, run.face, ownPt),
    spaceMm: measureText(text.slice(solid.length), run.face, ownPt),
    ends,
  };
}

/** A unit in parts, its words parted at places where they may end; whole where there is none. */
function partedAt(unit: Unit, ends: RegExp, sizePt: number): readonly Unit[] {
  const words = unit.words.flatMap((word) => {
    const texts = word.text.split(ends);
    return texts.length < 2
      ? [word]
      : texts.map((text, i) => partOfWord(word, text, sizePt, i < texts.length - 1 || word.ends));
  });
  return words.length === unit.words.length ? [unit] : unitsOf(words, (word) => word.ends);
}

function addressParts(unit: Unit, sizePt: number): readonly Unit[] {
  return unit.words.some(({ text }) => text.includes("@"))
    ? partedAt(unit, ADDRESS_ENDS, sizePt)
    : [unit];
}

/** Of a part of an address; of a unit that is none the same as it is. */
function domainParts(part: Unit, sizePt: number): readonly Unit[] {
  return partedAt(part, DOMAIN_ENDS, sizePt);
}

/** What no line holds in parts that lines hold: of an address after its @, then before points; else letter by letter. */
function heldParts(unit: Unit, sizePt: number, widthMm: number): readonly Unit[] {
  return [addressParts, domainParts, letters].reduce<readonly Unit[]>(
    (parts, further) =>
      parts.flatMap((part) => (part.widthMm <= widthMm ? [part] : further(part, sizePt))),
    [unit],
  );
}

function letters({ words }: Unit, sizePt: number): Unit[] {
  return words.flatMap((word) =>
    Array.from(word.text, (letter, i) =>
      unitOf([partOfWord(word, letter, sizePt, word.ends && i === word.text.length - 1)]),
    ),
  );
}

/** Where a unit may be parted with a hyphen, if it is a single word that is no code, in letters from its start. */
function hyphenPlaces({ words: [word, ...more] }: Unit, hyphens: Hyphens | undefined): number[] {
  if (hyphens === undefined || word === undefined || more.length > 0) return [];
  if (CODE.test(word.text) || word.text.includes("@")) return [];
  const [letters = ""] = /^\p{L}+/u.exec(word.text) ?? [];
  return [...hyphens(letters)];
}

/** A unit that is a single word, parted with a hyphen behind so many letters. */
function hyphenated(
  unit: Unit,
  at: number,
  sizePt: number,
): { readonly head: Unit; readonly rest: Unit } {
  const word = certain(unit.words[0]);
  return {
    head: unitOf([partOfWord(word, `${word.text.slice(0, at)}-`, sizePt, true)]),
    rest: unitOf([partOfWord(word, word.text.slice(at), sizePt, word.ends)]),
  };
}

/** A unit at all of its hyphens. */
function syllables(unit: Unit, sizePt: number, places: readonly number[]): readonly Unit[] {
  const [at, ...further] = places;
  if (at === undefined) return [unit];
  const { head, rest } = hyphenated(unit, at, sizePt);
  return [
    head,
    ...syllables(
      rest,
      sizePt,
      further.map((place) => place - at),
    ),
  ];
}

/** Of a line, what has to stay empty for a word to be parted with a hyphen that it need not bear. */
const WORTH_A_HYPHEN = 0.25;

function brokenLines(
  units: readonly Unit[],
  { sizePt, widthMm, hyphens }: Pick<RunSetting, "sizePt" | "widthMm" | "hyphens">,
): Word[][] {
  const lines: Word[][] = [];
  let line: Word[] = [];
  let filledMm = 0;
  const isHeld = ({ widthMm: own }: Unit): boolean => filledMm + own <= widthMm + 1e-6;
  const turn = (): void => {
    lines.push(line);
    line = [];
    filledMm = 0;
  };
  const push = ({ words, widthMm: own }: Unit): void => {
    line.push(...words);
    filledMm += own + (words.at(-1)?.spaceMm ?? 0);
  };
  const add = (unit: Unit, places: readonly number[]): void => {
    if (isHeld(unit)) return push(unit);
    const isWorth = widthMm - filledMm > WORTH_A_HYPHEN * widthMm;
    const at = isWorth
      ? places.findLast((place) => isHeld(hyphenated(unit, place, sizePt).head))
      : undefined;
    if (at !== undefined) {
      const { head, rest } = hyphenated(unit, at, sizePt);
      push(head);
      turn();
      return add(
        rest,
        places.filter((place) => place > at).map((place) => place - at),
      );
    }
    const isAlone = line.length === 0;
    const parts = places.length === 0 || isAlone ? heldParts(unit, sizePt, widthMm) : [];
    if (parts.length > 1) for (const part of parts) add(part, []);
    else if (isAlone) push(unit);
    else {
      turn();
      add(unit, places);
    }
  };
  units.forEach((unit, i) => {
    // The last word is parted only where no line holds it: half a word would be a line.
    const mayPart = i < units.length - 1 || unit.widthMm > widthMm;
    add(unit, mayPart ? hyphenPlaces(unit, hyphens) : []);
  });
  return line.length > 0 ? [...lines, line] : lines;
}

/** The last word's space does not count. */
function lineWidth(line: readonly Word[]): number {
  return line.reduce(
    (sum, { widthMm, spaceMm }, i) => sum + widthMm + (i < line.length - 1 ? spaceMm : 0),
    0,
  );
}

/** Neighbouring words of one run as one text. */
function joined(
  line: readonly Word[],
): { readonly text: string; readonly run: Run; readonly widthMm: number }[] {
  const pieces: { text: string; run: Run; widthMm: number }[] = [];
  line.forEach(({ text, run, widthMm, spaceMm }, i) => {
    const isLast = i === line.length - 1;
    const [ownText, ownWidth] = [isLast ? text.trimEnd() : text, widthMm + (isLast ? 0 : spaceMm)];
    const last = pieces.at(-1);
    if (last?.run === run) {
      last.text += ownText;
      last.widthMm += ownWidth;
    } else {
      pieces.push({ text: ownText, run, widthMm: ownWidth });
    }
  });
  return pieces;
}
