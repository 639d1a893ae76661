import type { SwatchCell, WallBlock } from "../blocks/block.ts";
import type { Group, Piece } from "./layout-tree.ts";
import { shifted, type Tagged } from "./mark.ts";
import { LEAST_PT, linkRun, type PaperStyle } from "./paper-style.ts";
import { swatchMarks } from "./paper-swatch.ts";
import { setRuns } from "./set-runs.ts";

const TILE_MM = { roomy: 15, spare: 13.5 } as const;
const GAP_MM = 1;
const SWATCH_MM = { roomy: 4.5, dense: 2.5 } as const;

/** Colours side by side, each its swatches abutting downwards and its name below. */
export function wallFigure({ tiles }: WallBlock, style: PaperStyle): Group[] {
  const tileMm = TILE_MM[style.isSpare === true ? "spare" : "roomy"];
  const perRow = Math.max(1, Math.floor((style.widthMm + GAP_MM) / (tileMm + GAP_MM)));
  const rows = Array.from({ length: Math.ceil(tiles.length / perRow) }, (_, i) =>
    tiles.slice(i * perRow, (i + 1) * perRow),
  );
  return rows.length === 0
    ? []
    : [
        {
          kind: "group",
          tag: "L",
          children: rows.map((row, i) => ({
            ...wallRow(row, perRow, style),
            // A last row that is not full would stand alone at the top of a column.
            ...(i === rows.length - 2 && (rows.at(-1)?.length ?? 0) < perRow
              ? { keepWithNext: true }
              : {}),
          })),
        },
      ];
}

function wallRow(tiles: WallBlock["tiles"], perRow: number, style: PaperStyle): Piece {
  const widthMm = (style.widthMm - GAP_MM * (perRow - 1)) / perRow;
  const places = tiles.map(({ colours, tints = [], missing }): SwatchCell[] => [
    ...(colours.length === 0 ? [{ ...(missing !== undefined && { missing }) }] : []),
    ...colours.map((colour) => ({ colour })),
    ...tints,
  ]);
  const swatchesMm =
    Math.max(...places.map((cells) => cells.length)) *
    SWATCH_MM[style.isDense === true ? "dense" : "roomy"];
  let heightMm = 0;
  const children = tiles.map(({ name, href }, i): Tagged => {
    const xMm = i * (widthMm + GAP_MM);
    const cells = places[i] ?? [];
    const each = swatchesMm / cells.length;
    const text = setRuns([linkRun({ text: name, href }, style, "sans")], {
      widthMm,
      sizePt: LEAST_PT,
      leading: 1.15,
    });
    heightMm = Math.max(heightMm, swatchesMm + 0.8 + text.heightMm);
    return {
      tag: "LI",
      children: [
        {
          tag: "Figure",
          alt: name,
          marks: cells.flatMap((cell, row) =>
            swatchMarks(cell, { xMm, yMm: row * each, widthMm, heightMm: each }, LEAST_PT),
          ),
        },
        {
          tag: "LBody",
          marks: text.marks.map((mark) => shifted(mark, xMm, swatchesMm + 0.8)),
          links: text.links.map((link) => ({
            ...link,
            xMm: link.xMm + xMm,
            yMm: link.yMm + swatchesMm + 0.8,
          })),
        },
      ],
    };
  });
  return { kind: "piece", heightMm, beforeMm: 1.6, content: { tag: "Div", children } };
}
