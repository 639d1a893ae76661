import type { Flow } from "./layout-tree.ts";

/** In this size it is reckoned what others take [pt]: it is the one that most sheets are tried in. */
export const RECKONED_PT = 8;
/** Of what text takes by its area, what it takes at least: in other type its last lines may be fuller. */
const LEAST_SHARE = 0.96;

/** What a flow takes of its columns in that size [mm]. */
export interface Taken {
  readonly heightMm: number;
  /** Between its pieces, and the greatest of these. */
  readonly gapsMm: number;
  readonly greatestGapMm: number;
}

export function takenBy(flow: readonly Flow[]): Taken {
  let [heightMm, gapsMm, greatestGapMm] = [0, 0, 0];
  const add = (one: Flow): void => {
    if (one.kind === "group") return one.children.forEach(add);
    heightMm += one.heightMm;
    gapsMm += one.beforeMm;
    greatestGapMm = Math.max(greatestGapMm, one.beforeMm);
  };
  flow.forEach(add);
  return { heightMm, gapsMm, greatestGapMm };
}

/** What it takes at least in another size [mm]: text by its area, no gap at the top of a column. */
export function leastMm(
  { heightMm, gapsMm, greatestGapMm }: Taken,
  sizePt: number,
  columns: number,
): number {
  const share = Math.min(1, sizePt / RECKONED_PT) ** 2;
  return LEAST_SHARE * share * heightMm + gapsMm - columns * greatestGapMm;
}
