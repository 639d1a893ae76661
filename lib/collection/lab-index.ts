import { deltaE00 } from "../colorimetry/difference.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { grouped } from "../quantities/grouped.ts";

export interface LabEntry {
  readonly slug: string;
  readonly lab: Lab;
}

export interface Neighbour {
  readonly slug: string;
  readonly deltaE00: number;
}

/** Side of a cell [units of L*, a*, b*]. */
const CELL = 10;

/**
 * Colours filed by cells of L*a*b*, so that the nearest of one are looked for around
 * it and not in the whole range: cost grows with the range, not with its square.
 */
export function nearestColours(
  entries: readonly LabEntry[],
  wanted: number,
): ReadonlyMap<string, readonly Neighbour[]> {
  const cells = grouped(entries.map((entry) => [cellOf(entry.lab).join(" "), entry]));
  return new Map(entries.map((entry) => [entry.slug, nearest(entry, cells, wanted)]));
}

/** Rings of cells outward until enough are found, then one ring more, since Delta-E00 is not the distance that cells are cut by. */
function nearest(
  entry: LabEntry,
  cells: ReadonlyMap<string, readonly LabEntry[]>,
  wanted: number,
): Neighbour[] {
  const centre = cellOf(entry.lab);
  const found: LabEntry[] = [];
  let last = FARTHEST_RING;
  for (let ring = 0; ring <= last; ring++) {
    for (const key of ringKeys(centre, ring)) found.push(...(cells.get(key) ?? []));
    if (last === FARTHEST_RING && found.length > wanted) last = Math.min(FARTHEST_RING, ring + 1);
  }
  return found
    .filter(({ slug }) => slug !== entry.slug)
    .map(({ slug, lab }) => ({ slug, deltaE00: deltaE00(entry.lab, lab) }))
    .sort((one, other) => one.deltaE00 - other.deltaE00 || slugOrder(one.slug, other.slug))
    .slice(0, wanted);
}

/** Farther than this nothing is a neighbour in colour. */
const FARTHEST_RING = 4;

function cellOf({ L, a, b }: Lab): readonly [number, number, number] {
  return [Math.floor(L / CELL), Math.floor(a / CELL), Math.floor(b / CELL)];
}

function* ringKeys([L, a, b]: readonly [number, number, number], ring: number): Generator<string> {
  for (let i = -ring; i <= ring; i++) {
    for (let j = -ring; j <= ring; j++) {
      for (let k = -ring; k <= ring; k++) {
        if (Math.max(Math.abs(i), Math.abs(j), Math.abs(k)) === ring)
          yield `${L + i} ${a + j} ${b + k}`;
      }
    }
  }
}
