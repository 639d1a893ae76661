import type { SwatchCell, SwatchesBlock } from "../blocks/block.ts";
import type { Piece } from "./layout-tree.ts";
import { BLACK, N6, shifted, WHITE, type BoxMm, type Mark } from "./mark.ts";
import { figurePiece, type PaperStyle } from "./paper-style.ts";
import { swatchMarks } from "./paper-swatch.ts";
import { measureText } from "./print-document.ts";
import { setRuns } from "./set-runs.ts";

const CAPTION_PT = 7.5;
const CAPTION_MM = 5;
const EDGE_MM = 4;
/** Of a row of tints, and of a masstone without any; the latter where room is scarce. */
const ROW_MM = { roomy: 15, dense: 8 } as const;
const ALONE_MM = { roomy: 34, dense: 14 } as const;
/** What a masstone takes of the width beside its tints. */
const MASSTONE = 0.4;

export interface PanelParts {
  readonly masstone?: SwatchCell & { readonly caption: string; readonly isThickLayer?: boolean };
  readonly tints?: SwatchesBlock;
}

/** A colour as it comes from the tube, to the edges of an N 6 panel, beside its tints, which abut: a column a white, a row a lightness. */
export function panelFigure(
  { masstone, tints }: PanelParts,
  { widthMm, isDense = false }: PaperStyle,
): Piece {
  const rows = tints?.rows ?? [];
  const room = isDense ? "dense" : "roomy";
  const tintedMm = rows.length * ROW_MM[room] + 2 * EDGE_MM + CAPTION_MM;
  const heightMm = rows.length === 0 ? ALONE_MM[room] : tintedMm;
  const masstoneMm = masstone === undefined ? 0 : widthMm * MASSTONE;
  // By itself it stands inside the grey: a white is lost on white paper.
  const box =
    tints === undefined
      ? {
          xMm: EDGE_MM,
          yMm: EDGE_MM,
          widthMm: widthMm - 2 * EDGE_MM,
          heightMm: heightMm - 2 * EDGE_MM,
        }
      : { xMm: 0, yMm: 0, widthMm: masstoneMm, heightMm };
  const marks: Mark[] = [
    { kind: "box", xMm: 0, yMm: 0, widthMm, heightMm, ink: N6 },
    ...(masstone === undefined ? [] : swatchMarks(masstone, box, CAPTION_PT)),
    ...(masstone?.isThickLayer === true ? captionIn(box, masstone) : []),
    ...(tints === undefined
      ? []
      : tintMarks(tints, ROW_MM[room], masstoneMm + EDGE_MM, widthMm - EDGE_MM)),
  ];
  return figurePiece(
    [
      ...(masstone === undefined ? [] : [`${masstone.caption}.`]),
      ...(tints === undefined ? [] : [tints.description]),
    ].join(" "),
    heightMm,
    marks,
    { beforeMm: 3 },
  );
}

/** Between a swatch's edge and what is said on it. */
const INSIDE_MM = 2;

/** At the head of a swatch, in black or white, whichever is read on it. */
function captionIn(
  { xMm, yMm, widthMm }: BoxMm,
  { caption, colour }: NonNullable<PanelParts["masstone"]>,
): Mark[] {
  const ink = colour?.lab === undefined || colour.lab.L > 50 ? BLACK : WHITE;
  return setRuns([{ text: caption, face: "sans", ink }], {
    widthMm: widthMm - 2 * INSIDE_MM,
    sizePt: CAPTION_PT,
  }).marks.map((mark) => shifted(mark, xMm + INSIDE_MM, yMm + INSIDE_MM));
}

function tintMarks(
  { columns, rows }: SwatchesBlock,
  eachMm: number,
  left: number,
  right: number,
): Mark[] {
  const said = (text: string, xMm: number, yMm: number, width: number): Mark[] =>
    setRuns([{ text, face: "sans" }], { widthMm: width, sizePt: CAPTION_PT }).marks.map((mark) =>
      shifted(mark, xMm, yMm),
    );
  const rowMm = Math.max(...rows.map((row) => measureText(row, "sans", CAPTION_PT))) + 2;
  const columnMm = (right - left - rowMm) / columns.length;
  return [
    ...rows.flatMap((row, i) =>
      said(row, left, EDGE_MM + (i + 0.5) * eachMm - CAPTION_MM / 3, rowMm),
    ),
    ...columns.flatMap(({ head, cells }, i) => {
      const xMm = left + rowMm + i * columnMm;
      return [
        ...cells.flatMap((cell, row) =>
          swatchMarks(
            cell,
            { xMm, yMm: EDGE_MM + row * eachMm, widthMm: columnMm, heightMm: eachMm },
            CAPTION_PT,
          ),
        ),
        ...said(head, xMm, EDGE_MM + rows.length * eachMm + 1.2, columnMm - 1),
      ];
    }),
  ];
}
