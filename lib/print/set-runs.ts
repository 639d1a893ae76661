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
}

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

/** Runs in lines no wider than given. A word wider than a line is broken where it fills one: nothing is left out, nothing sticks out. */
export function setRuns(runs: readonly Run[], setting: RunSetting): SetRuns {
  const { widthMm, sizePt, leading = LEADING, align } = setting;
  const units = unbreakables(runs, sizePt);
  const broken = brokenLines(units, sizePt, widthMm);
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
): { readonly leastMm: number; readonly greatestMm: number } {
  const units = unbreakables(runs, sizePt);
  return {
    leastMm: leastWidth(units),
    greatestMm: lineWidth(units.flatMap(({ words }) => words)),
  };
}

/** Sizes from one down to another, by half points [pt]. */
export function sizesDown(fromPt: number, toPt: number): [number, ...number[]] {
  const further = Math.max(0, Math.floor((fromPt - toPt) * 2));
  return [fromPt, ...Array.from({ length: further }, (_, i) => fromPt - (i + 1) / 2)];
}

function leastWidth(units: readonly Unit[]): number {
  return Math.max(0, ...units.map(({ widthMm }) => widthMm));
}

/** The same number of lines at the least width that holds them and parts no word that is whole. */
function balanced(
  units: readonly Unit[],
  { sizePt, widthMm }: RunSetting,
  lines: Word[][],
): Word[][] {
  if (lines.length < 2) return lines;
  let [low, high] = [
    Math.min(widthMm, Math.max(leastWidth(units), widthMm / lines.length)),
    widthMm,
  ];
  for (let step = 0; step < 7; step++) {
    const middle = (low + high) / 2;
    if (brokenLines(units, sizePt, middle).length > lines.length) low = middle;
    else high = middle;
  }
  return brokenLines(units, sizePt, high);
}

/** After spaces. */
const WORD_ENDS = /(?<= )(?! )/u;
/** After a hyphen inside a word, and a stroke between two long ones. */
const PART_ENDS = /(?<=[^ ]-)(?=\p{L})|(?<=\p{L}{4}\/)(?=\p{L}{4})/u;
/** Of an address after its @, and before a point. */
const ADDRESS_ENDS = /(?<=@)(?=\p{L})|(?=\.\p{L})/u;
/** What is no word, and so parted nowhere: a telephone number, a CAS number, a UFI, a lot. */
const CODE = /\d|^\P{Ll}+$/u;

/** Words that may not be parted. */
interface Unit {
  readonly words: readonly Word[];
  readonly widthMm: number;
}

/** Words without a space or hyphen between them belong together, even across runs. */
function unbreakables(runs: readonly Run[], sizePt: number): Unit[] {
  const units: Word[][] = [];
  let open = false;
  for (const run of runs) {
    const ownPt = sizePt * (run.scale ?? 1);
    for (const { text, widthMm: width, spaceMm, ends } of wordsAtOnePt(run)) {
      const word = { text, run, widthMm: width * ownPt, spaceMm: spaceMm * ownPt, ends };
      const last = units.at(-1);
      if (open && last !== undefined) last.push(word);
      else units.push([word]);
      open = !word.ends;
    }
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
  if (word.includes("@")) return word.split(ADDRESS_ENDS);
  return CODE.test(word) ? [word] : word.split(PART_ENDS);
}

function letters({ words }: Unit, sizePt: number): Unit[] {
  return words.flatMap(({ text, run, ends }) =>
    Array.from(text, (letter, i) => {
      const width = measureText(letter, run.face, sizePt * (run.scale ?? 1));
      const isSpace = letter === " ";
      return unitOf([
        {
          text: letter,
          run,
          widthMm: isSpace ? 0 : width,
          spaceMm: isSpace ? width : 0,
          ends: ends && i === text.length - 1,
        },
      ]);
    }),
  );
}

function brokenLines(units: readonly Unit[], sizePt: number, widthMm: number): Word[][] {
  const lines: Word[][] = [];
  let line: Word[] = [];
  let filledMm = 0;
  const add = (unit: Unit): void => {
    if (line.length > 0 && filledMm + unit.widthMm > widthMm + 1e-6) {
      lines.push(line);
      line = [];
      filledMm = 0;
    }
    line.push(...unit.words);
    filledMm += unit.widthMm + (unit.words.at(-1)?.spaceMm ?? 0);
  };
  for (const unit of units)
    if (unit.widthMm <= widthMm) add(unit);
    else for (const letter of letters(unit, sizePt)) add(letter);
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
