import type { PaintColour, SwatchCell } from "../blocks/block.ts";
import { BLACK, GREY, inkOf, N6, type BoxMm, type Ink, type Mark } from "./mark.ts";
import { setRuns } from "./set-runs.ts";

/** A paint in its ink, with a hairline where it would be lost on N 6; hatched where no colour is known, and said where a word finds room. */
export function swatchMarks(
  { colour, missing = "" }: SwatchCell,
  box: BoxMm,
  sizePt: number,
): Mark[] {
  if (colour !== undefined)
    return [
      { kind: "box", ...box, ink: inkOf(colour) },
      ...(isLost(colour) ? outline(box, GREY) : []),
    ];
  const word = setRuns([{ text: missing, face: "sans" }], {
    widthMm: box.widthMm,
    sizePt,
    align: "centre",
  });
  const yMm = box.yMm + (box.heightMm - word.heightMm) / 2;
  const isSaid = word.lines.length === 1 && word.heightMm < box.heightMm;
  return [
    ...hatching(box),
    ...outline(box, BLACK),
    ...(isSaid
      ? [
          {
            kind: "box",
            xMm: box.xMm + (box.widthMm - word.widthMm) / 2 - 0.8,
            yMm,
            widthMm: word.widthMm + 1.6,
            heightMm: word.heightMm,
            ink: N6,
          } as const,
          ...word.marks.map((mark) => ({
            ...mark,
            xMm: mark.xMm + box.xMm,
            yMm: mark.yMm + yMm,
          })),
        ]
      : []),
  ];
}

/** Distance in Lab from the ground under which a swatch has no visible edge. */
const LOST_BELOW = 5;

function isLost({ lab }: PaintColour): boolean {
  return (
    lab !== undefined &&
    "lab" in N6 &&
    Math.hypot(lab.L - N6.lab.L, lab.a - N6.lab.a, lab.b - N6.lab.b) < LOST_BELOW
  );
}

function hatching({ xMm, yMm, widthMm, heightMm }: BoxMm): Mark[] {
  const lines: Mark[] = [];
  for (let reach = 3; reach < widthMm + heightMm; reach += 3) {
    const [startX, startY] = [Math.min(reach, widthMm), Math.max(0, reach - widthMm)];
    const [endX, endY] = [Math.max(0, reach - heightMm), Math.min(reach, heightMm)];
    lines.push({
      kind: "line",
      fromMm: [xMm + startX, yMm + startY],
      toMm: [xMm + endX, yMm + endY],
      widthPt: 0.3,
      ink: { grey: 0.45 },
    });
  }
  return lines;
}

export function outline({ xMm, yMm, widthMm, heightMm }: BoxMm, ink: Ink): Mark[] {
  const corners: [number, number][] = [
    [xMm, yMm],
    [xMm + widthMm, yMm],
    [xMm + widthMm, yMm + heightMm],
    [xMm, yMm + heightMm],
  ];
  return corners.map((from, i) => ({
    kind: "line",
    fromMm: from,
    toMm: corners[(i + 1) % 4] ?? from,
    widthPt: 0.4,
    ink,
  }));
}
