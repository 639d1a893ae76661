import type { StatementOf } from "../../quantities/statement.ts";
import { HIDING_CONTRAST_RATIO } from "./hiding.ts";

export type DrawnCoatStatement = StatementOf<"coat-hides-as-drawn", { contrast: number }>;

/**
 * Said of a masstone that was read over both halves of a chart and hid it, on a film of unknown thickness.
 * @param contrast Y over black to Y over white of the drawdown [1], as read.
 * @returns undefined where it lets the chart through: masstoneFilmRuling says so.
 * @source iso-6504-3
 */
export function drawnCoatRuling(contrast: number): DrawnCoatStatement | undefined {
  return contrast >= HIDING_CONTRAST_RATIO
    ? { rule: "coat-hides-as-drawn", values: { contrast }, source: "iso-6504-3" }
    : undefined;
}
