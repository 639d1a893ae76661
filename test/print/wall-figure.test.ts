import { describe, expect, test } from "vitest";
import type { WallBlock } from "../../lib/blocks/block.ts";
import { headedPieces } from "../../lib/print/layout-tree.ts";
import { marksOf } from "../../lib/print/mark.ts";
import { wallFigure } from "../../lib/print/wall-figure.ts";
import { ENGLISH } from "../../lib/words/english.ts";

const STYLE = {
  widthMm: 82,
  sizePt: 8,
  paints: new Map(),
  words: ENGLISH.pages.sheetPaper,
} as const;
const PAINT = { hex: "#335577" };
type Tile = WallBlock["tiles"][number];
const tile = (name: string, tints: Tile["tints"] = []): Tile => ({
  name,
  href: "../",
  colours: [PAINT],
  tints,
});

const pieces = (tiles: readonly Tile[]) =>
  headedPieces(wallFigure({ kind: "wall", form: "tints", tiles }, STYLE)).map(({ piece }) => piece);

describe("a wall of tiles on paper", () => {
  test("its last row stays with the one before it where it is not full", () => {
    const kept = (count: number) =>
      pieces(Array.from({ length: count }, (_, i) => tile(`Colour ${i}`))).map(
        ({ keepWithNext = false }) => keepWithNext,
      );
    expect(kept(10)).toEqual([false, false]);
    expect(kept(12)).toEqual([false, true, false]);
    expect(kept(3)).toEqual([false]);
  });

  test("a lightness that was not reached keeps its place, so that the same ones stand in one line", () => {
    const all = [{ colour: PAINT }, { colour: PAINT }, { colour: PAINT }];
    const gap = [{ missing: "" }, { missing: "" }, { colour: PAINT }];
    const boxes = pieces([tile("Whole", all), tile("Pale alone", gap)])
      .flatMap(({ content }) => marksOf(content))
      .filter((mark) => mark.kind === "box");
    const [left] = [...new Set(boxes.map(({ xMm }) => xMm))];
    const rows = (ofLeft: boolean): number[] =>
      boxes.filter(({ xMm }) => (xMm === left) === ofLeft).map(({ yMm }) => yMm);
    expect(rows(true)).toHaveLength(4);
    expect(rows(false)).toEqual([rows(true)[0], rows(true)[3]]);
  });
});
