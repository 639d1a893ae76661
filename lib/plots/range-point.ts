import { boxAround, sides, type Box } from "./box.ts";
import { drawnLabels, spotsAround, type LabelWish, type Obstacles } from "./label-placement.ts";
import { LINE_HEIGHT, TEXT_SIZE } from "./picture.ts";
import { swatch, type ScreenColour } from "./screen-colour.ts";
import { element, refusal, type Point, type SvgNode } from "./svg.ts";
import { textLine, TO_BASELINE } from "./text-label.ts";
import { textWidth } from "./text-width.ts";

/** One colour of a range, drawn as a small swatch at its place. */
export interface RangePoint {
  readonly label: string;
  readonly colour: ScreenColour;
  /** Its sheet; relative, or http(s). */
  readonly href?: string | undefined;
}

export const HALF_SIDE = 5;
/** Half the side of what a finger or a pointer has to meet. */
const HALF_HIT = 12;

/** How far from its swatch a name may stand where all are to be named, the near places first. */
const FAR_PLACES = [HALF_SIDE + 4, 16, 24, 34, 46, 60, 76, 94, 114, 136];
/** Of more points than these a name stands beside its swatch or not at all: it is told when the point is met. */
const ALL_NAMED_MOST = 60;
const NEAR_PLACES = FAR_PLACES.slice(0, 1);
const NOTHING: Obstacles = { boxes: [], segments: [] };

/**
 * Swatches with their names, which keep clear of what else is drawn.
 * A picture of links is not an image to a screen reader: see `hasLinks` of the picture.
 */
export function drawnRangePoints(
  points: readonly (RangePoint & { readonly at: Point })[],
  bounds: Box,
  keepClear: Obstacles = NOTHING,
): SvgNode[] {
  const areAllNamed = points.length <= ALL_NAMED_MOST;
  // Of many in one place the first of the range is named.
  const byImportance = areAllNamed ? points.toReversed() : points;
  const wishes = byImportance.map(({ label, at }): LabelWish => ({
    text: label,
    mayDrop: !areAllNamed,
    spots: spotsAround(label, at, areAllNamed ? FAR_PLACES : NEAR_PLACES),
  }));
  const obstacles = {
    boxes: [...points.map(({ at }) => boxAround(at, HALF_SIDE + 1)), ...keepClear.boxes],
    // Of many, a name that crosses a line is better than none.
    ...(areAllNamed
      ? { segments: keepClear.segments, faint: keepClear.faint ?? [] }
      : { segments: [] }),
  };
  return [...points.map(drawnPoint), ...drawnLabels(wishes, obstacles, bounds)];
}

/** Swatches with their names in lines, after a word; nothing for no points. */
export function rangePointList(
  points: readonly RangePoint[],
  word: string,
  at: { readonly left: number; readonly top: number; readonly width: number },
): { readonly nodes: readonly SvgNode[]; readonly bottom: number } {
  if (points.length === 0) return { nodes: [], bottom: at.top - TEXT_SIZE / 2 - 2 };
  const lineHeight = LINE_HEIGHT + 5;
  const nodes: SvgNode[] = [
    textLine(word, { x: at.left, y: at.top + TO_BASELINE }, { role: "word" }),
  ];
  let [x, y] = [at.left + textWidth(word) + 14, at.top];
  for (const point of points) {
    const width = 2 * HALF_SIDE + 6 + textWidth(point.label);
    if (x > at.left && x + width > at.left + at.width) [x, y] = [at.left, y + lineHeight];
    nodes.push(drawnPoint({ ...point, at: { x: x + HALF_SIDE, y }, isOnPage: true }));
    nodes.push(
      textLine(point.label, { x: x + 2 * HALF_SIDE + 6, y: y + TO_BASELINE }, { role: "label" }),
    );
    x += width + 14;
  }
  return { nodes, bottom: y + lineHeight };
}

function drawnPoint({
  at,
  colour,
  href,
  label,
  isOnPage,
}: RangePoint & { readonly at: Point; readonly isOnPage?: boolean }): SvgNode {
  const box = boxAround(at, HALF_SIDE);
  const hit = boxAround(at, HALF_HIT);
  return linkedPoint({ label, href }, hit, [
    swatch(colour, box, isOnPage),
    // Shown while the point is pointed at or has the focus.
    ...(href === undefined
      ? []
      : [
          element("g", { class: "plot__name", visibility: "hidden" }, [
            textLine(
              label,
              { x: at.x, y: box.top - 5 },
              { role: "label", anchor: "middle", rim: true, bold: true },
            ),
          ]),
        ]),
  ]);
}

/** A point as a link to its sheet, met anywhere in `hit`; without an address only drawn. */
export function linkedPoint(
  { label, href }: Pick<RangePoint, "label" | "href">,
  hit: Box,
  parts: readonly SvgNode[],
): SvgNode {
  if (href === undefined) return element("g", { class: "plot__point" }, parts);
  if (!/^(?:https?:\/\/|[./#]|[\w-]+(?:[/?#.]|$))/.test(href))
    throw refusal("link", href, "a relative or http address");
  return element("a", { class: "plot__point", href }, [
    element("title", {}, [label]),
    element("rect", {
      class: "plot__hit",
      ...sides(hit),
      fill: "none",
      "pointer-events": "all",
    }),
    ...parts,
  ]);
}
