import { certain } from "../quantities/at.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import { wavelengthsNm, type WavelengthGrid } from "../quantities/spectrum.ts";
import type { Markup } from "../present/views.ts";
import { axisLeftWidth } from "./axis.ts";
import { endLabels, endLabelsWidth } from "./end-labels.ts";
import { onPanel, writtenPicture, type PictureWords } from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { plotFrame } from "./plot-frame.ts";
import { smallestRoundHolding } from "./scale.ts";
import { ownColourLine, type ScreenColour } from "./screen-colour.ts";
import { DRAWN_NM } from "./spectral-curve.ts";
import { DASHES, dashesOf, type ShownStanding } from "./standing-mark.ts";
import { element, polyline, refusal, type Point, type SvgNode } from "./svg.ts";
import { roundTicks, ticksEvery, type Ticks } from "./ticks.ts";

export interface CoefficientCurve {
  readonly label: string;
  readonly colour: ScreenColour;
  readonly standing: ShownStanding;
  readonly grid: WavelengthGrid;
  /** >= 0, one for each wavelength, in the unit that the axis names; undefined where only bounds are known. */
  readonly values: readonly number[] | undefined;
  /** How far the coefficient could lie on either side: [low, high] for each wavelength. */
  readonly bounds?: readonly (readonly [number, number])[] | undefined;
}

interface CoefficientCurves extends PictureWords {
  readonly wavelengthLabel: string;
  /** Absorption K above, scattering S below; each with its own scale. */
  readonly absorption: { readonly axisLabel: string; readonly curves: readonly CoefficientCurve[] };
  readonly scattering: { readonly axisLabel: string; readonly curves: readonly CoefficientCurve[] };
}

const AREA_HEIGHT = 110;

/**
 * What a fit gives for K and S at each wavelength, with the bounds that the drawdowns leave.
 * @throws RangeError for no curve in either half, a negative coefficient, or a count that does not fit the grid.
 */
export function coefficientCurves(params: CoefficientCurves): Markup {
  const [absorption, scattering] = [scaledHalf(params.absorption), scaledHalf(params.scattering)];
  const gutter = Math.max(axisLeftWidth(absorption.ticks), axisLeftWidth(scattering.ticks));
  const margin = endLabelsWidth(
    [...params.absorption.curves, ...params.scattering.curves].map(({ label }) => label),
  );
  const upper = drawnHalf(params, absorption, { gutter, margin }, 0);
  const lower = drawnHalf(params, scattering, { gutter, margin }, upper.bottom + 6);
  return writtenPicture("coefficient-curves", params, { height: lower.bottom }, [
    ...upper.nodes,
    ...lower.nodes,
  ]);
}

interface ScaledHalf {
  readonly half: CoefficientCurves["absorption"];
  readonly points: readonly (readonly DrawnPoint[])[];
  readonly most: number;
  readonly ticks: Ticks;
}

function scaledHalf(half: CoefficientCurves["absorption"]): ScaledHalf {
  if (half.curves.length === 0)
    throw refusal(`curves of ${half.axisLabel}`, "none", "at least one");
  const points = half.curves.map(drawnPoints);
  const highest = Math.max(...points.flatMap((curve) => curve.map(({ high }) => high)));
  const most = smallestRoundHolding(highest, "coefficient");
  return { half, points, most, ticks: roundTicks([0, most], 4) };
}

function drawnHalf(
  params: CoefficientCurves,
  { half, points, most, ticks }: ScaledHalf,
  sides: { readonly gutter: number; readonly margin: number },
  top: number,
): { readonly nodes: readonly SvgNode[]; readonly bottom: number } {
  const frame = plotFrame(params, {
    top,
    ...sides,
    areaHeight: AREA_HEIGHT,
    inside: 8,
    x: { domain: DRAWN_NM, ticks: ticksEvery(50, DRAWN_NM), label: params.wavelengthLabel },
    y: { domain: [0, most], ticks, label: half.axisLabel },
  });
  const at = (curve: readonly DrawnPoint[], end: "value" | "low" | "high"): Point[] =>
    curve.map((point) => ({ x: frame.x(point.nm), y: frame.y(point[end]) }));
  const lines = points.map((curve) => at(curve, "value"));
  return {
    bottom: frame.bottom,
    nodes: [
      ...frame.nodes,
      onPanel([
        ...points.flatMap((curve, i) =>
          half.curves[i]?.bounds === undefined
            ? []
            : [
                element("path", {
                  class: "plot__bounds",
                  d: `${polyline([...at(curve, "high"), ...at(curve, "low").toReversed()])}Z`,
                  fill: "currentColor",
                  "fill-opacity": 0.12,
                }),
              ],
        ),
        // Only bounds: their upper edge, in dashes and without the paint's colour, so that it is not read as its curve.
        ...half.curves.flatMap((curve, i) =>
          curve.values !== undefined
            ? []
            : [plainLine(lines[i] ?? [], { role: "plot__bound", width: 1.25, dashes: DASHES })],
        ),
        ...half.curves.flatMap((curve, i) =>
          curve.values === undefined
            ? []
            : ownColourLine(curve.colour, lines[i] ?? [], dashesOf(curve.standing)),
        ),
      ]),
      ...endLabels(
        half.curves.map(({ label }) => label),
        lines.map((line) => line.at(-1)),
        frame.area,
      ),
    ],
  };
}

interface DrawnPoint {
  readonly nm: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

function drawnPoints({ label, grid, values, bounds }: CoefficientCurve): DrawnPoint[] {
  if (values === undefined && bounds === undefined)
    throw refusal(`coefficients of ${label}`, "none", "values, bounds or both");
  for (const given of [values, bounds]) {
    if (given !== undefined && given.length !== grid.count)
      throw domainError(
        `coefficients of ${label}`,
        given.length,
        `${grid.count}, one a wavelength`,
      );
  }
  const points = wavelengthsNm(grid)
    .map((nm, i): DrawnPoint => {
      const value = certain(values?.[i] ?? bounds?.[i]?.[1]);
      return { nm, value, low: bounds?.[i]?.[0] ?? value, high: bounds?.[i]?.[1] ?? value };
    })
    .filter(({ nm }) => nm >= DRAWN_NM[0] && nm <= DRAWN_NM[1]);
  if (points.length < 2)
    throw refusal(`coefficients of ${label} in 400-700 nm`, String(points.length), "at least two");
  for (const { value, low, high } of points) {
    if (!(value >= 0 && value < Infinity))
      throw domainError("coefficient", value, "0 <= coefficient < Infinity");
    if (!(low >= 0 && low <= value && value <= high))
      throw refusal("bounds of a coefficient", `${low}, ${high}`, `0 <= low <= ${value} <= high`);
  }
  return points;
}
