import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { LINE_SPACING } from "../hazard/label/label-sizes.ts";
import { PICTOGRAM_SPAN } from "../hazard/label/pictogram-drawings.ts";
import { certain } from "../quantities/at.ts";
import type { Flow, Piece } from "./layout-tree.ts";
import {
  marksOf,
  MM_PER_PT,
  movedTo,
  shifted,
  type Mark,
  type PaperTag,
  type Tagged,
} from "./mark.ts";
import { placedPieces } from "./paper-columns.ts";
import { pictogramFigure } from "./pictogram-figure.ts";
import { FACE_HEIGHTS, type Face } from "./print-font.ts";
import { hyphensOf } from "./hyphenation.ts";
import { naturalWidths, setRuns, type Hyphens } from "./set-runs.ts";
import type { Language } from "../quantities/languages.ts";

/** Where text runs down [mm]. */
export interface Column {
  readonly xMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly bottomMm: number;
}

/** A paragraph, with what stays clear above it unless it begins a column [mm]. */
export interface FlowText {
  readonly kind: "text";
  readonly text: string;
  readonly face: Face;
  readonly sizePt: number;
  readonly gapMm: number;
  readonly tag?: PaperTag;
  readonly language?: Language;
  /** Sentences of a language, whose words may be parted where lines are short: no name, no number. */
  readonly isProse?: boolean;
  /** Broken between two columns only where it is long. */
  readonly whole?: boolean;
  /** Stands in one column with the first line of what follows, as a signal word with its statements. */
  readonly leads?: boolean;
}

/** Pictograms in rows, by the side of their red frames [mm]. */
export interface FlowPictograms {
  readonly kind: "pictograms";
  readonly pictograms: readonly { readonly code: PictogramCode; readonly name: string }[];
  readonly sideMm: number;
  readonly gapMm: number;
}

export type FlowItem = FlowText | FlowPictograms;

/** Items under a head that is said again at the top of every column that they go on over to. */
export interface FlowGroup {
  readonly kind: "group";
  readonly head: FlowText;
  readonly items: readonly FlowItem[];
}

const EPSILON_MM = 1e-6;
/** Below a head that is said again [mm]. */
const BELOW_HEAD_MM = 0.9;

/** How a paragraph goes on over. */
export interface LineKeeping {
  /** Whether no line of it stands alone at the foot or the head of a column, and one of up to three lines is not parted. */
  readonly areLinesKept: boolean;
}

/**
 * Items down a row of columns of one width, nothing left out and nothing parted but at a blank or a
 * hyphen.
 * @returns undefined where the columns do not hold them.
 */
export function flowed(
  items: readonly (FlowItem | FlowGroup)[],
  columns: readonly Column[],
  keeping: LineKeeping = { areLinesKept: true },
): Tagged[] | undefined {
  const last = columns.at(-1);
  if (last === undefined || items.some((item) => isWiderThan(last.widthMm, item))) return undefined;
  const roomMm = columns.reduce((sum, { topMm, bottomMm }) => sum + bottomMm - topMm, 0);
  if (leastHeightMm(items, last.widthMm) > roomMm) return undefined;
  const parts = items.map((item) => laidPart(item, last.widthMm, keeping));
  // A page is a column here: past the last one, what does not fit is told by its number.
  const placed = placedPieces(
    parts.flatMap(({ flow }) => flow),
    (page) => ({ ...(columns[page] ?? last), page }),
  );
  const overflows = placed.some(({ piece, page, yMm }) => {
    const column = columns[page];
    return column === undefined || yMm + piece.heightMm > column.bottomMm + EPSILON_MM;
  });
  if (overflows) return undefined;
  const stands = new Map(placed.map(({ piece, xMm, yMm }) => [piece, { xMm, yMm }]));
  return [
    ...parts.flatMap(({ leaves }) =>
      leaves.flatMap(({ item, pieces }): readonly Tagged[] => {
        const set = pieces.map((piece) => {
          const { xMm, yMm } = certain(stands.get(piece));
          return movedTo(piece.content, xMm, yMm);
        });
        return item.kind === "text"
          ? [paragraphOf(item, set)]
          : set.flatMap(({ children = [] }) => children);
      }),
    ),
    ...placed.flatMap(({ heads, xMm }) =>
      heads.map(({ piece, yMm }) => movedTo(piece.content, xMm, yMm)),
    ),
  ];
}

/** Whether something in it that may not be parted is wider. */
function isWiderThan(widthMm: number, part: FlowItem | FlowGroup): boolean {
  switch (part.kind) {
    case "group":
      return [part.head, ...part.items].some((item) => isWiderThan(widthMm, item));
    case "text":
      return (
        naturalWidths([part], part.sizePt, hyphensIn(part, widthMm)).leastMm > widthMm + EPSILON_MM
      );
    case "pictograms":
      return false;
  }
}

/** What items take at least, were every line full and no gap between them [mm]: most tries that hold too little are seen by it. */
function leastHeightMm(items: readonly (FlowItem | FlowGroup)[], widthMm: number): number {
  return items.reduce((sum, item): number => {
    if (item.kind === "group") return sum + leastHeightMm([item.head, ...item.items], widthMm);
    if (item.kind === "pictograms") return sum + pictogramBoxMm(item.sideMm);
    const { sizePt } = item;
    const lines = naturalWidths([item], sizePt).greatestMm / widthMm;
    return sum + (Math.floor(FULL_LINES * lines) * LINE_SPACING + 0.5) * sizePt * MM_PER_PT;
  }, 0);
}

/** Of the width that a text takes in one line, what it takes at least in several, which end without a space. */
const FULL_LINES = 0.9;

/** How high items stand in one column [mm]. */
export function flowHeightMm(items: readonly FlowItem[], widthMm: number): number {
  return items
    .flatMap((item) => piecesOf(item, widthMm, { areLinesKept: false }))
    .reduce((sum, { heightMm, beforeMm }, i) => sum + heightMm + (i === 0 ? 0 : beforeMm), 0);
}

/** An item with its pieces; of a group the head and each item, and the pieces as one group. */
interface LaidPart {
  readonly leaves: readonly { readonly item: FlowItem; readonly pieces: readonly Piece[] }[];
  readonly flow: readonly Flow[];
}

function laidPart(part: FlowItem | FlowGroup, widthMm: number, keeping: LineKeeping): LaidPart {
  if (part.kind !== "group") {
    const pieces = piecesOf(part, widthMm, keeping);
    return { leaves: [{ item: part, pieces }], flow: pieces };
  }
  const head = linePieces(part.head, widthMm, keeping).map((piece) => ({
    ...piece,
    keepWithNext: true,
  }));
  const leaves = [
    { item: part.head, pieces: head },
    ...part.items.map((item) => ({ item, pieces: piecesOf(item, widthMm, keeping) })),
  ];
  const children = leaves.flatMap(({ pieces }) => pieces);
  return {
    leaves,
    flow: [
      {
        kind: "group",
        tag: "Sect",
        runningHead: { piece: headAgain(head), at: "column" },
        children,
      },
    ],
  };
}

/** A head said again, with the room below it; a reading machine has read it. */
function headAgain(head: readonly Piece[]): Piece {
  const marks: Mark[] = [];
  let heightMm = 0;
  for (const { content, heightMm: high, beforeMm } of head) {
    if (heightMm > 0) heightMm += beforeMm;
    const top = heightMm;
    marks.push(...marksOf(content).map((mark) => shifted(mark, 0, top)));
    heightMm += high;
  }
  return {
    kind: "piece",
    heightMm: heightMm + BELOW_HEAD_MM,
    beforeMm: 0,
    content: { tag: "Artifact", marks },
  };
}

function piecesOf(item: FlowItem, widthMm: number, keeping: LineKeeping): Piece[] {
  return item.kind === "text" ? linePieces(item, widthMm, keeping) : pictogramPieces(item, widthMm);
}

/** Lines of a text, the capitals of the first one in a column at its top. */
function linePieces(item: FlowText, widthMm: number, { areLinesKept }: LineKeeping): Piece[] {
  const { text, face, sizePt, gapMm, whole = false, leads = false } = item;
  const hyphens = hyphensIn(item, widthMm);
  const { lines, lineMm } = setRuns([{ text, face }], {
    widthMm,
    sizePt,
    leading: LINE_SPACING,
    ...(hyphens !== undefined && { hyphens }),
  });
  const { capital, descender } = FACE_HEIGHTS[face];
  const capitalMm = capital * sizePt * MM_PER_PT;
  const heightMm = capitalMm + descender * sizePt * MM_PER_PT;
  return lines.map(({ marks }, i): Piece => ({
    kind: "piece",
    heightMm,
    beforeMm: i === 0 ? gapMm : lineMm - heightMm,
    keepWithNext: i < lines.length - 1 ? whole || isKept(i, lines.length, areLinesKept) : leads,
    content: {
      tag: "P",
      marks: marks.map((mark) => shifted(mark, 0, capitalMm - mark.yMm)),
    },
  }));
}

const SHORT_PARAGRAPH = 3;

function isKept(line: number, count: number, areLinesKept: boolean): boolean {
  return areLinesKept && (count <= SHORT_PARAGRAPH || line === 0 || line === count - 2);
}

/** A line of fewer letters is short. */
const SHORT_LINE = 30;

/** How many letters a line bears, a letter being half as wide as its size on an average. */
export function lettersInLine(widthMm: number, sizePt: number): number {
  return widthMm / (0.5 * sizePt * MM_PER_PT);
}

function hyphensIn(
  { isProse = false, language, sizePt }: FlowText,
  widthMm: number,
): Hyphens | undefined {
  return isProse && language !== undefined && lettersInLine(widthMm, sizePt) < SHORT_LINE
    ? hyphensOf(language)
    : undefined;
}

/** Lines as the one paragraph that they are read as. */
function paragraphOf({ tag = "P", language }: FlowText, lines: readonly Tagged[]): Tagged {
  return {
    tag,
    ...(language !== undefined && { language }),
    marks: lines.flatMap(marksOf),
  };
}

/** All rows together; of a column too narrow for one, higher than any column. */
function pictogramPieces({ pictograms, sideMm, gapMm }: FlowPictograms, widthMm: number): Piece[] {
  const boxMm = pictogramBoxMm(sideMm);
  const perRow = Math.floor((widthMm + EPSILON_MM) / boxMm);
  return [
    {
      kind: "piece",
      heightMm: perRow < 1 ? Infinity : Math.ceil(pictograms.length / perRow) * boxMm,
      beforeMm: gapMm,
      content: {
        tag: "Div",
        children: pictograms.map(({ code, name }, i) =>
          pictogramFigure(code, name, {
            xMm: (i % perRow) * boxMm,
            yMm: Math.floor(i / perRow) * boxMm,
            sideMm: boxMm,
          }),
        ),
      },
    },
  ];
}

/** The upright square [mm] that a diamond of a side stands in, drawn on its point. */
export function pictogramBoxMm(sideMm: number): number {
  return (sideMm * Math.SQRT2) / PICTOGRAM_SPAN;
}
