import { hairline } from "./hairline.ts";
import { levelLine, levelName } from "./level-line.ts";
import { onPanel, pictureWidth, writtenPicture, type PictureWords } from "./picture.ts";
import { plotFrame } from "./plot-frame.ts";
import { DASHES, standingMark } from "./standing-mark.ts";
import { element, polyline, refusal } from "./svg.ts";
import { roundTicks } from "./ticks.ts";

/** One lot of a chart, in order of time. */
export interface ChartedLot {
  readonly value: number;
  /** Whether it is told: beyond the limits, or in a run. */
  readonly isMarked: boolean;
}

export interface LotChart extends PictureWords {
  readonly lots: readonly ChartedLot[];
  readonly mean: number;
  readonly limits: readonly [number, number];
  readonly tolerance: readonly [number, number];
  readonly valueLabel: string;
  readonly orderLabel: string;
  /** Names of the mean, the limits and the tolerance, at the right of their lines. */
  readonly lineLabels: Readonly<Record<"mean" | "limits" | "tolerance", string>>;
}

const AREA_HEIGHT = 190;
/** Least reach of the vertical axis on each side of the mean [%], so that charts can be told apart by eye. */
const LEAST_REACH = 8;

/**
 * Individuals chart: one mark a lot in order of time, the mean, the control limits dashed, the tolerance dotted.
 * @throws RangeError for fewer than two lots.
 */
export function lotChart(params: LotChart): string {
  const { lots, mean, limits, tolerance, lineLabels } = params;
  if (lots.length < 2) throw refusal("lots of a chart", String(lots.length), "at least two");
  const width = pictureWidth(params);
  const reach = Math.max(
    LEAST_REACH,
    ...[...lots.map(({ value }) => value), ...limits, ...tolerance].map((value) =>
      Math.abs(value - mean),
    ),
  );
  const domain = [mean - reach * 1.06, mean + reach * 1.06] as const;
  const frame = plotFrame({
    width,
    top: 0,
    areaHeight: AREA_HEIGHT,
    decimalMark: params.decimalMark,
    inside: 12,
    x: {
      domain: [0.5, lots.length + 0.5],
      ticks: { values: lots.map((_, i) => i + 1), decimals: 0 },
      label: params.orderLabel,
    },
    y: { domain, ticks: roundTicks(domain, 5), label: params.valueLabel },
  });
  const points = lots.map(({ value }, i) => ({ x: frame.x(i + 1), y: frame.y(value) }));
  return writtenPicture("lot-chart", params, { width, height: frame.bottom }, [
    ...frame.nodes,
    onPanel([
      ...tolerance.map((value) => levelLine(frame, value, { dashes: "1 4", weight: 1.2 })),
      ...limits.map((value) => levelLine(frame, value, { dashes: DASHES, weight: 1 })),
      hairline(
        { x: frame.area.left, y: frame.y(mean) },
        { x: frame.area.right, y: frame.y(mean) },
        "axis",
      ),
      element("path", {
        d: polyline(points),
        fill: "none",
        stroke: "currentColor",
        "stroke-width": 1,
      }),
      ...points.flatMap((point, i) => [
        standingMark("measured", point),
        ...(lots[i]?.isMarked === true
          ? [
              element("circle", {
                cx: point.x,
                cy: point.y,
                r: 8,
                fill: "none",
                stroke: "currentColor",
                "stroke-width": 1.5,
              }),
            ]
          : []),
      ]),
      levelName(frame, mean, lineLabels.mean),
      levelName(frame, limits[1], lineLabels.limits),
      ...(Math.abs(frame.y(tolerance[0]) - frame.y(limits[0])) < 14
        ? []
        : [levelName(frame, tolerance[0], lineLabels.tolerance)]),
    ]),
  ]);
}
