import type { StandingKind } from "../quantities/figure.ts";
import { BLACK, type Mark } from "./mark.ts";
import { MM_PER_PT } from "./text-lines.ts";

const disc = (r: number): string => `M${-r} 0A${r} ${r} 0 1 1 ${r} 0A${r} ${r} 0 1 1 ${-r} 0Z`;

/** Width of a mark, as a share of the type's size. */
export const STANDING_MARK_WIDTH = 0.62;

/**
 * How a figure is known, by shape as on every page: measured a filled mark, derived
 * one with a ring, estimated an open one, stated in quotes, not stated a dash.
 * @param xMm left edge; `baselineMm` of the text beside it.
 */
export function standingMarks(
  standing: StandingKind,
  xMm: number,
  baselineMm: number,
  sizePt: number,
): Mark[] {
  const em = sizePt * MM_PER_PT;
  const at = {
    xMm: xMm + (STANDING_MARK_WIDTH / 2) * em,
    yMm: baselineMm - 0.25 * em,
    scale: em,
    ink: BLACK,
  } as const;
  switch (standing) {
    case "measured":
      return [{ kind: "path", d: disc(0.24), ...at }];
    case "derived":
      return [
        { kind: "path", d: disc(0.27), strokeWidth: 0.06, ...at },
        { kind: "path", d: disc(0.15), ...at },
      ];
    case "estimated":
      return [{ kind: "path", d: disc(0.24), strokeWidth: 0.07, ...at }];
    case "stated":
      return [
        {
          kind: "text",
          text: "\u201c\u201d",
          xMm: xMm - 0.06 * em,
          yMm: baselineMm + 0.06 * em,
          face: "sans bold",
          sizePt: sizePt * 0.86,
        },
      ];
    case "not stated":
      return [{ kind: "path", d: "M-.26 0H.26", strokeWidth: 0.08, ...at }];
  }
}
