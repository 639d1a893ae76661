import type { Markup } from "../present/views.ts";
import { lineAcross } from "./hairline.ts";
import { levelLine, levelName } from "./level-line.ts";
import type { PictureWords } from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { framedPicture, plotFrame } from "./plot-frame.ts";
import { DASHES, standingMark } from "./standing-mark.ts";
import { element, refusal } from "./svg.ts";
import { roundTicks } from "./ticks.ts";
import { given } from "../quantities/given.ts";

/** One lot of a chart, in order of time. */
interface ChartedLot {
  /** Its place among all lots, the first 1. */
  readonly place: number;
  readonly value: number;
  /** Whether it is told: beyond the limits, or in a run. */
  readonly isMarked: boolean;
}

export interface LotChart extends PictureWords {
  readonly lots: readonly ChartedLot[];
  /** Of all lots, those without a value among them. */
  readonly places: number;
  readonly mean: number;
  readonly limits: readonly [number, number];
  readonly tolerance?: readonly [number, number];
  /** Least reach of the vertical axis on each side of the mean, so that charts can be told apart by eye. */
  readonly leastReach: number;
  /** What no value lies below; a limit there is not drawn. */
  readonly floor?: number;
  readonly valueLabel: string;
  readonly orderLabel: string;
  /** Names of the mean, the limits and the tolerance, at the right of their lines. */
  readonly lineLabels: Readonly<Record<"mean" | "limits" | "tolerance", string>>;
}

const AREA_HEIGHT = 190;
/** Two names of levels nearer than this run into each other [px]. */
const NAME_HEIGHT = 14;

/**
 * Individuals chart: one mark a lot in order of time, the mean, the control limits dashed, the tolerance dotted.
 * @throws RangeError for fewer than two lots.
 */
export function lotChart(params: LotChart): Markup {
  const { lots, places, mean, limits, tolerance = [], floor = -Infinity, lineLabels } = params;
  if (lots.length < 2) throw refusal("lots of a chart", String(lots.length), "at least two");
  const reach = Math.max(
    params.leastReach,
    ...[...lots.map(({ value }) => value), ...limits, ...tolerance].map((value) =>
      Math.abs(value - mean),
    ),
  );
  const domain = [Math.max(mean - reach * 1.06, floor), mean + reach * 1.06] as const;
  const frame = plotFrame(params, {
    areaHeight: AREA_HEIGHT,
    inside: 12,
    x: {
      domain: [0.5, places + 0.5],
      ticks: { values: Array.from({ length: places }, (_, i) => i + 1), decimals: 0 },
      label: params.orderLabel,
    },
    y: { domain, ticks: roundTicks(domain, 5), label: params.valueLabel },
  });
  const points = lots.map(({ place, value }) => ({ x: frame.x(place), y: frame.y(value) }));
  const isDrawn = (value: number): boolean => value > floor;
  const [named] = tolerance.filter(isDrawn);
  return framedPicture("lot-chart", params, frame, [
    ...tolerance
      .filter(isDrawn)
      .map((value) => levelLine(frame, value, { dashes: "1 4", width: 1.2 })),
    ...limits.filter(isDrawn).map((value) => levelLine(frame, value, { dashes: DASHES, width: 1 })),
    lineAcross(frame.area, frame.y(mean), "axis"),
    plainLine(points, { width: 1 }),
    ...points.flatMap((point, i) =>
      given([
        standingMark("measured", point),
        lots[i]?.isMarked === true &&
          element("circle", {
            cx: point.x,
            cy: point.y,
            r: 8,
            fill: "none",
            stroke: "currentColor",
            "stroke-width": 1.5,
          }),
      ]),
    ),
    levelName(frame, mean, lineLabels.mean),
    levelName(frame, limits[1], lineLabels.limits),
    ...(named === undefined ||
    [mean, ...limits].some((value) => Math.abs(frame.y(named) - frame.y(value)) < NAME_HEIGHT)
      ? []
      : [levelName(frame, named, lineLabels.tolerance)]),
  ]);
}
