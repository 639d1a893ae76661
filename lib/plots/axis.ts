import type { Box } from "./box.ts";
import { lineAcross, lineDown } from "./hairline.ts";
import { TEXT_SIZE } from "./picture.ts";
import type { Scale } from "./scale.ts";
import type { SvgNode } from "./svg.ts";
import { textLine, TO_BASELINE } from "./text-label.ts";
import { widestWidth } from "./text-width.ts";
import { tickText, type Ticks } from "./ticks.ts";
import { given } from "../quantities/given.ts";

/** Length of a tick mark, and from the axis to its number, in user units. */
export const TICK = 4;
const NUMBER_GAP = 3;
/** Least room between two numbers side by side. */
const BETWEEN = 8;

/** Axis below an area: tick marks and numbers on the page's ground. */
export function axisBelow(
  area: Box,
  scale: Scale,
  ticks: Ticks,
  decimalMark?: "." | ",",
): SvgNode[] {
  const texts = ticks.values.map((value) => tickText(value, ticks.decimals, decimalMark));
  const every = labelledEvery(texts, ticks.values.map(scale));
  return [
    lineAcross(area, area.bottom, "axis"),
    ...ticks.values.flatMap((value, i) =>
      given([
        lineDown({ ...area, top: area.bottom, bottom: area.bottom + TICK }, scale(value), "axis"),
        i % every === 0 &&
          textLine(
            texts[i] ?? "",
            { x: scale(value), y: area.bottom + TICK + NUMBER_GAP + TEXT_SIZE * 0.8 },
            { role: "tick", anchor: "middle" },
          ),
      ]),
    ),
  ];
}

/** Axis left of an area: numbers right-aligned, so that they line up by their last digit. */
export function axisLeft(
  area: Box,
  scale: Scale,
  ticks: Ticks,
  decimalMark?: "." | ",",
): SvgNode[] {
  return [
    lineDown(area, area.left, "axis"),
    ...ticks.values.flatMap((value) => [
      lineAcross({ ...area, left: area.left - TICK, right: area.left }, scale(value), "axis"),
      textLine(
        tickText(value, ticks.decimals, decimalMark),
        { x: area.left - TICK - NUMBER_GAP, y: scale(value) + TO_BASELINE },
        { role: "tick", anchor: "end" },
      ),
    ]),
  ];
}

/** Room that the numbers of an axis on the left take, tick marks counted. */
export function axisLeftWidth(ticks: Ticks): number {
  return (
    widestWidth(ticks.values.map((value) => tickText(value, ticks.decimals))) + NUMBER_GAP + TICK
  );
}

/** Every how manieth number can be printed without touching the next. */
function labelledEvery(texts: readonly string[], places: readonly number[]): number {
  const apart = Math.abs((places[1] ?? Infinity) - (places[0] ?? 0));
  return Math.max(1, Math.ceil((widestWidth(texts) + BETWEEN) / apart));
}
