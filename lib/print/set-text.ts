import { BLACK, type Ink, type TextMark } from "./mark.ts";
import { FACE_HEIGHTS } from "./print-font.ts";
import { MM_PER_PT, type SetText } from "./text-lines.ts";

/** Lines of text on paper. */
export interface PlacedText {
  readonly marks: readonly TextMark[];
  /** Baseline of the last line [mm]: what follows keeps its distance from it. */
  readonly baselineMm: number;
  /** Lowest ink [mm]. */
  readonly bottomMm: number;
}

/** Sets lines with the capitals of the first one at a height [mm]: text is aligned by its capitals, as the eye does. */
export function placedText(
  { setting: { face, sizePt, leadingPt }, lines }: SetText,
  xMm: number,
  topMm: number,
  ink: Ink = BLACK,
): PlacedText {
  const { capital, descender } = FACE_HEIGHTS[face];
  const first = topMm + capital * sizePt * MM_PER_PT;
  const marks = lines.map((text, i): TextMark => ({
    kind: "text",
    text,
    xMm,
    yMm: first + i * leadingPt * MM_PER_PT,
    face,
    sizePt,
    ink,
  }));
  const baselineMm = marks.at(-1)?.yMm ?? topMm;
  return {
    marks,
    baselineMm,
    bottomMm: marks.length === 0 ? topMm : baselineMm + descender * sizePt * MM_PER_PT,
  };
}

/** Height from the capitals of the first line to the last baseline [mm]. */
export function capitalsToBaselineMm({
  setting: { face, sizePt, leadingPt },
  lines,
}: SetText): number {
  return lines.length === 0
    ? 0
    : (FACE_HEIGHTS[face].capital * sizePt + (lines.length - 1) * leadingPt) * MM_PER_PT;
}
