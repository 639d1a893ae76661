import {
  PICTOGRAM_DRAWINGS,
  PICTOGRAM_FIELD,
  PICTOGRAM_FRAME,
  PICTOGRAM_RED,
} from "../hazard/label/pictogram-drawings.ts";
import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { BLACK, WHITE, type Ink, type PathMark, type Tagged } from "./mark.ts";

/** A hazard pictogram in a square of a side [mm]; `name` is said in place of it. */
export function pictogramFigure(
  code: PictogramCode,
  name: string,
  { xMm, yMm, sideMm }: { readonly xMm: number; readonly yMm: number; readonly sideMm: number },
): Tagged {
  const path = (d: string, ink: Ink, evenOdd = false): PathMark => ({
    kind: "path",
    d,
    xMm,
    yMm,
    scale: sideMm / 100,
    ink,
    evenOdd,
  });
  return {
    tag: "Figure",
    alt: name,
    marks: [
      path(PICTOGRAM_FIELD, WHITE),
      path(PICTOGRAM_FRAME, { srgb: PICTOGRAM_RED }, true),
      ...PICTOGRAM_DRAWINGS[code].paths.map(({ ink, d }) =>
        path(d, ink === "symbol" ? BLACK : WHITE),
      ),
    ],
  };
}
