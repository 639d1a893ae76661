import { BLACK, type Ink, type TextMark } from "./mark.ts";
import { measureText } from "./print-document.ts";
import type { Face } from "./print-font.ts";
import { MM_PER_PT } from "./text-lines.ts";

/** A stretch of a paragraph in one face. */
export interface PaperRun {
  readonly text: string;
  readonly face: Face;
  readonly ink?: Ink;
  /** Whole address: the stretch is a link on paper that is read on a screen. */
  readonly href?: string;
}

export interface RunSetting {
  readonly widthMm: number;
  readonly sizePt: number;
  readonly leadingPt: number;
  readonly align?: "left" | "right";
}

export interface LinkBox {
  readonly href: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A set paragraph, its origin the top left corner of its first line. */
export interface SetRuns {
  readonly marks: readonly TextMark[];
  readonly links: readonly LinkBox[];
  readonly heightMm: number;
  /** Of the widest line. */
  readonly widthMm: number;
}

interface Word {
  readonly text: string;
  readonly run: PaperRun;
  readonly widthMm: number;
  readonly spaceMm: number;
  readonly ends: boolean;
}

/** Runs in lines no wider than given. A word wider than a line is broken where it fills one: nothing is left out, nothing sticks out. */
export function setRuns(runs: readonly PaperRun[], setting: RunSetting): SetRuns {
  const { widthMm, sizePt, leadingPt, align } = setting;
  const lines = brokenLines(unbreakables(runs, setting), widthMm);
  const lineMm = leadingPt * MM_PER_PT;
  const baseline = ((leadingPt - sizePt) / 2 + sizePt * ASCENT) * MM_PER_PT;
  const marks: TextMark[] = [];
  const links: LinkBox[] = [];
  let widest = 0;
  lines.forEach((line, i) => {
    const pieces = joined(line);
    const width = lineWidth(line);
    widest = Math.max(widest, width);
    let x = align === "right" ? widthMm - width : 0;
    for (const { text, run, widthMm: own } of pieces) {
      marks.push({
        kind: "text",
        text,
        xMm: x,
        yMm: i * lineMm + baseline,
        face: run.face,
        sizePt,
        ink: run.ink ?? BLACK,
      });
      if (run.href !== undefined)
        links.push({ href: run.href, xMm: x, yMm: i * lineMm, widthMm: own, heightMm: lineMm });
      x += own;
    }
  });
  return { marks, links, heightMm: lines.length * lineMm, widthMm: widest };
}

/** Where the baseline lies below the top of the type, as a share of its size. */
const ASCENT = 0.8;

/** Words as they may not be parted: those without a space or hyphen between them belong together, even across runs. */
function unbreakables(runs: readonly PaperRun[], { sizePt, widthMm }: RunSetting): Word[][] {
  const units: Word[][] = [];
  let open = false;
  for (const run of runs) {
    for (const text of run.text.split(WORD_ENDS)) {
      if (text === "") continue;
      const solid = text.trimEnd();
      const word = {
        text,
        run,
        widthMm: measureText(solid, run.face, sizePt),
        spaceMm: measureText(text.slice(solid.length), run.face, sizePt),
        ends: / $|-$/.test(text),
      };
      const last = units.at(-1);
      if (open && last !== undefined) last.push(word);
      else units.push([word]);
      open = !word.ends;
    }
  }
  return units.flatMap((unit) => (lineWidth(unit) <= widthMm ? [unit] : letters(unit, sizePt)));
}

const WORD_ENDS = /(?<= )(?! )|(?<=[^ ]-)(?=\p{L})/u;

function letters(unit: readonly Word[], sizePt: number): Word[][] {
  return unit.flatMap(({ text, run, ends }) =>
    Array.from(text, (letter, i) => [
      {
        text: letter,
        run,
        widthMm: letter === " " ? 0 : measureText(letter, run.face, sizePt),
        spaceMm: letter === " " ? measureText(letter, run.face, sizePt) : 0,
        ends: ends && i === text.length - 1,
      },
    ]),
  );
}

function brokenLines(units: readonly (readonly Word[])[], widthMm: number): Word[][] {
  const lines: Word[][] = [];
  let line: Word[] = [];
  for (const unit of units) {
    if (line.length > 0 && lineWidth([...line, ...unit]) > widthMm + 1e-6) {
      lines.push(line);
      line = [];
    }
    line.push(...unit);
  }
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
): { readonly text: string; readonly run: PaperRun; readonly widthMm: number }[] {
  const pieces: { text: string; run: PaperRun; widthMm: number }[] = [];
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
