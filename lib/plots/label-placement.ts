import {
  areaOutside,
  doCross,
  grown,
  lengthInside,
  sharedArea,
  type Box,
  type Segment,
} from "./box.ts";
import { hairline } from "./hairline.ts";
import { LINE_HEIGHT } from "./picture.ts";
import type { Point, SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";
import { textWidth } from "./text-width.ts";

/** A place where a label could stand: its box, its anchor, and the thing it names when that is not beside it. */
interface LabelSpot {
  readonly box: Box;
  readonly anchor: "start" | "middle" | "end";
  readonly leader?: Segment | undefined;
  /** From the thing named to the label: crossed by a line, the label seems to name the line. */
  readonly tie: Segment;
}

export interface LabelWish {
  readonly text: string;
  /** Best first. */
  readonly spots: readonly LabelSpot[];
  /** Left out rather than drawn over something else. */
  readonly mayDrop: boolean;
  readonly bold?: boolean | undefined;
}

export interface Obstacles {
  readonly boxes: readonly Box[];
  readonly segments: readonly Segment[];
  /** Lines that can be followed behind a label's rim: kept clear of where a place nearby allows it. */
  readonly faint?: readonly Segment[];
}

/** Crossing a line by its length costs as much as this many units of area a unit of length. */
const LINE_COST = 5;
const FAINT_LINE_COST = 0.35;
const OUTSIDE_COST = 40;
const CROSSED_TIE_COST = 60;
const RANK_COST = 0.4;
const ROUNDS = 4;
/** The rim around the words covers this much of what is under it. */
const RIM = 2;

/**
 * A spot for each label, clear of marks, lines and each other as far as can be: every
 * label in turn takes its cheapest spot given the others, until none moves or a few times over.
 * @returns the spots in the order of the wishes; undefined for one that was left out.
 */
export function placedLabels(
  wishes: readonly LabelWish[],
  obstacles: Obstacles,
  bounds: Box,
): (LabelSpot | undefined)[] {
  const costs = wishes.map(({ spots }) =>
    spots.map((spot) => fixedConflict(spot, obstacles, bounds)),
  );
  const chosen: (LabelSpot | undefined)[] = wishes.map(() => undefined);
  for (let round = 0, moved = true; moved && round < ROUNDS; round++) {
    moved = false;
    wishes.forEach((wish, i) => {
      const others = chosen.filter((spot, j): spot is LabelSpot => spot !== undefined && i !== j);
      const spot = cheapest(wish, costs[i] ?? [], others);
      moved ||= spot !== chosen[i];
      chosen[i] = spot;
    });
  }
  return chosen;
}

/** @param fixed what each spot costs by itself, before the other labels. */
function cheapest(
  { spots, mayDrop }: LabelWish,
  fixed: readonly number[],
  others: readonly LabelSpot[],
): LabelSpot | undefined {
  const leaders = others.flatMap(({ leader }) => (leader === undefined ? [] : [leader]));
  let best:
    { readonly spot: LabelSpot; readonly cost: number; readonly conflict: number } | undefined;
  spots.forEach((spot, rank) => {
    const alone = fixed[rank] ?? 0;
    if (best !== undefined && alone + rank * RANK_COST >= best.cost) return;
    const conflict = alone + conflictWith(others, leaders, spot);
    const cost = conflict + rank * RANK_COST;
    if (best === undefined || cost < best.cost) best = { spot, cost, conflict };
  });
  return best === undefined || (mayDrop && best.conflict > 1) ? undefined : best.spot;
}

/** With what stands there whatever the other labels do. */
function fixedConflict({ box, leader, tie }: LabelSpot, obstacles: Obstacles, bounds: Box): number {
  const rimmed = grown(box, RIM);
  let cost = OUTSIDE_COST * areaOutside(box, bounds);
  for (const mark of obstacles.boxes) cost += sharedArea(box, mark);
  for (const segment of obstacles.segments) {
    cost += LINE_COST * lengthInside(segment, rimmed);
    if (doCross(segment, tie)) cost += CROSSED_TIE_COST;
  }
  for (const segment of obstacles.faint ?? [])
    cost += FAINT_LINE_COST * lengthInside(segment, rimmed);
  if (leader !== undefined)
    for (const mark of obstacles.boxes) cost += LINE_COST * lengthInside(leader, mark);
  return cost;
}

function conflictWith(
  others: readonly LabelSpot[],
  leaders: readonly Segment[],
  { box, leader }: LabelSpot,
): number {
  const rimmed = grown(box, RIM);
  let cost = 0;
  for (const other of others) cost += 4 * sharedArea(box, grown(other.box, 2));
  for (const other of leaders) cost += LINE_COST * lengthInside(other, rimmed);
  if (leader === undefined) return cost;
  for (const other of others) cost += LINE_COST * lengthInside(leader, other.box);
  return cost + CROSSED_TIE_COST * leaders.filter((other) => doCross(other, leader)).length;
}

/** Directions in order of ease of reading: beside, above, below, then aslant. */
const DIRECTIONS_OF_CURVE = [
  [0, -1],
  [0, 1],
  [1, 0],
  [-1, 0],
] as const;
const DIRECTIONS = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** Spots around a mark, beside it first, then farther off with a line that leads back. */
export function spotsAround(
  text: string,
  at: Point,
  distances: readonly number[],
  bold = false,
): LabelSpot[] {
  const nearest = Math.max(0, (distances[0] ?? 0) - 2);
  const width = textWidth(text, bold ? "bold" : "normal");
  return distances.flatMap((distance, ringIndex) =>
    DIRECTIONS.map(([dx, dy]): LabelSpot => {
      const reach = dx !== 0 && dy !== 0 ? distance * 0.75 : distance;
      const near = { x: at.x + dx * reach, y: at.y + dy * reach };
      return {
        ...boxedLabel(width, near, dx, dy),
        tie: tieOf(at, near),
        leader:
          ringIndex === 0
            ? undefined
            : [
                { x: at.x + dx * nearest, y: at.y + dy * nearest },
                { x: at.x + dx * (reach - 2), y: at.y + dy * (reach - 2) },
              ],
      };
    }),
  );
}

/** Spots above, below and beside points of a curve, in the order given. */
export function spotsAlong(
  text: string,
  points: readonly Point[],
  distances: readonly number[],
): LabelSpot[] {
  const width = textWidth(text);
  return distances.flatMap((distance, ringIndex) =>
    points.flatMap((at) =>
      DIRECTIONS_OF_CURVE.map(([dx, dy]): LabelSpot => {
        const near = { x: at.x + dx * distance, y: at.y + dy * distance };
        return {
          ...boxedLabel(width, near, dx, dy),
          tie: tieOf(at, near),
          leader: ringIndex < 2 ? undefined : [at, { x: near.x - dx, y: near.y - dy }],
        };
      }),
    ),
  );
}

/** Clear of the line or mark it starts from, so that this one does not count as crossing it. */
function tieOf(at: Point, near: Point): Segment {
  return [{ x: at.x + 0.3 * (near.x - at.x), y: at.y + 0.3 * (near.y - at.y) }, near];
}

function boxedLabel(
  width: number,
  near: Point,
  dx: -1 | 0 | 1,
  dy: -1 | 0 | 1,
): Pick<LabelSpot, "box" | "anchor"> {
  const height = LINE_HEIGHT - 2;
  const left = dx > 0 ? near.x : dx < 0 ? near.x - width : near.x - width / 2;
  const top = dy > 0 ? near.y : dy < 0 ? near.y - height : near.y - height / 2;
  return {
    box: { left, top, right: left + width, bottom: top + height },
    anchor: dx > 0 ? "start" : dx < 0 ? "end" : "middle",
  };
}

/** Labels at their spots, leaders under words; some may be left out. */
export function drawnLabels(
  wishes: readonly LabelWish[],
  obstacles: Obstacles,
  bounds: Box,
): SvgNode[] {
  const spots = placedLabels(wishes, obstacles, bounds);
  const leaders: SvgNode[] = [];
  const words: SvgNode[] = [];
  wishes.forEach(({ text, bold }, i) => {
    const spot = spots[i];
    if (spot === undefined) return;
    const { box, anchor, leader } = spot;
    if (leader !== undefined) leaders.push(hairline(leader[0], leader[1], "leader"));
    const x =
      anchor === "start" ? box.left : anchor === "end" ? box.right : (box.left + box.right) / 2;
    words.push(
      textLine(text, { x, y: box.bottom - 3 }, { role: "label", anchor, rim: true, bold }),
    );
  });
  return [...leaders, ...words];
}
