import { hairline } from "./hairline.ts";
import { LINE_HEIGHT, TEXT_SIZE } from "./picture.ts";
import type { Point, SvgNode } from "./svg.ts";
import { textLines } from "./text-label.ts";
import { widestWidth, wrappedLines } from "./text-width.ts";
import { given } from "../quantities/given.ts";

/** Between the end of a line and its name. */
const GAP = 8;
/** Names are broken to this, so that they leave the drawing its room. */
const MOST_WIDTH = 84;
/** A name this far from its line is led to it. */
const LED_FROM = 4;

/** Room to the right of an area for the names of its lines [user units]. */
export function endLabelsWidth(labels: readonly string[]): number {
  const lines = labels.flatMap((label) => wrappedLines(label, MOST_WIDTH));
  return GAP + 2 + Math.ceil(widestWidth(lines));
}

/**
 * The name of each line beside its right end, in the order of the ends, pushed apart where they would touch.
 * @param right right edge of the area; `top` and `bottom` bound the names.
 */
export function endLabels(
  labels: readonly string[],
  ends: readonly (Point | undefined)[],
  { right, top, bottom }: { readonly right: number; readonly top: number; readonly bottom: number },
): SvgNode[] {
  const named = labels
    .flatMap((label, i) => {
      const at = ends[i];
      const lines = wrappedLines(label, MOST_WIDTH);
      return at === undefined ? [] : [{ at, lines, height: lines.length * LINE_HEIGHT }];
    })
    .toSorted((one, other) => one.at.y - other.at.y);
  const tops = spread(
    named.map(({ at, height }) => ({ y: at.y, height })),
    { top, bottom },
  );
  return named.flatMap(({ at, lines, height }, i) => {
    const y = tops[i] ?? top;
    const middle = y + height / 2;
    return given([
      Math.abs(middle - at.y) > LED_FROM &&
        hairline(at, { x: right + GAP - 2, y: middle }, "leader"),
      ...textLines(lines, { x: right + GAP, y: y + TEXT_SIZE * 0.97 }, { role: "label" }),
    ]);
  });
}

/**
 * Upper edges of boxes that would lie centred on their places, pushed down and then back up until none touches the next.
 * @param wishes in order of y.
 */
export function spread(
  wishes: readonly { readonly y: number; readonly height: number }[],
  { top, bottom }: { readonly top: number; readonly bottom: number },
): number[] {
  let free = top;
  const down = wishes.map(({ y, height }) => {
    const placed = Math.max(free, y - height / 2);
    free = placed + height;
    return { placed, height };
  });
  let limit = bottom;
  return down
    .toReversed()
    .map(({ placed, height }) => {
      limit = Math.min(placed, limit - height);
      return limit;
    })
    .toReversed();
}
