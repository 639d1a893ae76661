import { inkOf, N6, shifted, type BoxMm, type Ink, type Mark } from "../print/mark.ts";
import { swatchMarks } from "../print/paper-swatch.ts";
import {
  naturalWidths,
  setRuns,
  sizesDown,
  type Run,
  type RunSetting,
  type SetRuns,
} from "../print/set-runs.ts";
import type { SwatchCell } from "../blocks/block.ts";
import { given } from "../quantities/given.ts";

/** A picture to pass on, laid out as a face of paper is: ten pixels to its millimetre. */
export interface PictureFace {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly Mark[];
}

export const PX_PER_MM = 10;

export function inPx(mm: number): number {
  return mm * PX_PER_MM;
}

/** Whose colours they are; `demonstration` where they are invented. */
export interface Imprint {
  readonly workshop: string;
  readonly demonstration?: string;
}

/** Words on N 6: black on it has a contrast of 6.9 to 1. */
const ON_GREY: Ink = { grey: 0.05 };
const IMPRINT_PT = 8;
/** Nothing is smaller: 24 of 1200 pixels, which is still read where a picture is shown at half its size. */
export const LEAST_PT = 6.8;

/** N 6 to the edge: paint is judged on it, and white as well as black stands off from it. */
export function ground({ widthMm, heightMm }: Omit<PictureFace, "marks">): Mark {
  return { kind: "box", xMm: 0, yMm: 0, widthMm, heightMm, ink: N6 };
}

/** On a whole pixel, rounded up. */
export function tenth(mm: number): number {
  return Math.ceil(mm * PX_PER_MM) / PX_PER_MM;
}

/** Swatches abutting in a box, a column after the other, each edge on a whole pixel. */
export function swatchGrid(columns: readonly (readonly SwatchCell[])[], box: BoxMm): Mark[] {
  const parts = (from: number, length: number, count: number): number[] =>
    Array.from(
      { length: count + 1 },
      (_, i) => Math.round((from + (length * i) / count) * PX_PER_MM) / PX_PER_MM,
    );
  const across = parts(box.xMm, box.widthMm, columns.length);
  return columns.flatMap((cells, column) => {
    const down = parts(box.yMm, box.heightMm, cells.length);
    return cells.flatMap((cell, row) => {
      const [xMm = 0, right = 0] = across.slice(column);
      const [yMm = 0, bottom = 0] = down.slice(row);
      const own = { xMm, yMm, widthMm: right - xMm, heightMm: bottom - yMm };
      return swatchMarks(cell, own, LEAST_PT);
    });
  });
}

/** One paint to the edges of a box. */
export function paintBox(cell: SwatchCell, box: BoxMm): Mark[] {
  return cell.colour === undefined
    ? swatchMarks(cell, box, LEAST_PT)
    : [{ kind: "box", ...box, ink: inkOf(cell.colour) }];
}

interface Named {
  readonly name: string;
  /** What it is made of. */
  readonly index: string;
}

/** Between a name and what it is made of, at most. */
const BELOW_NAME_MM = 0.8;

/** A name and what it is made of below it, as large as they go in a box without a word broken. */
export function nameMarks(
  named: Named,
  { xMm, yMm, widthMm, heightMm }: BoxMm,
  mostPt: number,
): Mark[] {
  const [first, second] = nameSet(named, widthMm, nameSize(named, { widthMm, heightMm }, mostPt));
  const free = heightMm - first.heightMm - second.heightMm;
  const below = yMm + first.heightMm + Math.min(BELOW_NAME_MM, Math.max(0, free));
  return [
    ...first.marks.map((mark) => shifted(mark, xMm, yMm)),
    ...second.marks.map((mark) => shifted(mark, xMm, below)),
  ];
}

/** The largest size [pt] in which a name and what it is made of go in a box without a word broken; else the least. */
export function nameSize(
  named: Named,
  { widthMm, heightMm }: Pick<BoxMm, "widthMm" | "heightMm">,
  mostPt: number,
): number {
  const { leastMm } = naturalWidths([{ text: named.name, face: "serif" }], 1);
  const size = sizesDown(mostPt, LEAST_PT)
    .filter((sizePt) => leastMm * sizePt <= widthMm)
    .find((sizePt) => {
      const [one, other] = nameSet(named, widthMm, sizePt);
      return one.heightMm + other.heightMm <= heightMm;
    });
  return size ?? LEAST_PT;
}

/** Height that the same takes in the least size. */
export function leastNameMm(named: Named, widthMm: number): number {
  const [first, second] = nameSet(named, widthMm, LEAST_PT);
  return first.heightMm + second.heightMm;
}

function nameSet(
  { name, index }: Named,
  widthMm: number,
  sizePt: number,
): readonly [SetRuns, SetRuns] {
  const setting = { widthMm, leading: 1.12, isBalanced: true };
  return [
    setRuns([{ text: name, face: "serif", ink: ON_GREY }], { ...setting, sizePt }),
    setRuns(index === "" ? [] : [{ text: index, face: "sans", ink: ON_GREY }], {
      ...setting,
      sizePt: Math.min(11, Math.max(LEAST_PT, sizePt * 0.5)),
    }),
  ];
}

/** A line in the largest size in which it is one line; left out where even the least is too large for its place. */
export function lineMarks(
  text: string,
  { xMm, yMm, widthMm }: Omit<BoxMm, "heightMm">,
  { mostPt = LEAST_PT, align = "left", ink = ON_GREY }: LineLook = {},
): Mark[] {
  const runs: Run[] = [{ text, face: "sans", ink }];
  const setting: Omit<RunSetting, "sizePt"> = { widthMm, align, leading: 1.15 };
  const set = sizesDown(mostPt, LEAST_PT)
    .map((sizePt) => setRuns(runs, { ...setting, sizePt }))
    .find(({ lines }) => lines.length <= 1);
  return (set?.marks ?? []).map((mark) => shifted(mark, xMm, yMm));
}

interface LineLook {
  readonly mostPt?: number;
  readonly align?: "left" | "right" | "centre";
  readonly ink?: Ink;
}

/** Whose it is, at the foot of a box, to its right edge; that it is invented is never left out. */
export function imprintMarks(
  { workshop, demonstration }: Imprint,
  { xMm, yMm, widthMm, heightMm }: BoxMm,
): Mark[] {
  const setting = { widthMm, align: "right", leading: 1.15, isBalanced: true } as const;
  const lines = given([
    setRuns([{ text: workshop, face: "sans bold", ink: ON_GREY }], {
      ...setting,
      sizePt: IMPRINT_PT,
    }),
    demonstration !== undefined &&
      setRuns([{ text: demonstration, face: "sans", ink: ON_GREY }], {
        ...setting,
        sizePt: LEAST_PT,
      }),
  ]);
  let y = yMm + heightMm - lines.reduce((sum, line) => sum + line.heightMm, 0);
  return lines.flatMap((line) => {
    const marks = line.marks.map((mark) => shifted(mark, xMm, y));
    y += line.heightMm;
    return marks;
  });
}
