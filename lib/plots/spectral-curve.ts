import { domainError } from "../diagnostics/diagnostic.ts";
import { wavelengthNm, type Spectrum } from "../quantities/spectrum.ts";
import type { Markup } from "../present/views.ts";
import { segmentsThrough, within } from "./box.ts";
import { drawnLabels, spotsAlong, type LabelWish } from "./label-placement.ts";
import type { PictureWords } from "./picture.ts";
import { framedPicture, plotFrame, type PlotFrame } from "./plot-frame.ts";
import { smallestHolding } from "./scale.ts";
import { ownColourLine, type ScreenColour } from "./screen-colour.ts";
import { dashesOf, type ShownStanding } from "./standing-mark.ts";
import { refusal, type Point, type SvgNode } from "./svg.ts";
import { ticksEvery } from "./ticks.ts";

/** Upper ends of the reflectance axis: 1, more for what fluoresces, and less for what is dark throughout. */
const REFLECTANCE_SCALES = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 1.2, 2, 4] as const;
type ReflectanceScale = (typeof REFLECTANCE_SCALES)[number];
const TICK_STEPS: Readonly<Record<ReflectanceScale, number>> = {
  0.01: 0.002,
  0.02: 0.005,
  0.05: 0.01,
  0.1: 0.02,
  0.2: 0.05,
  0.5: 0.1,
  1: 0.2,
  1.2: 0.2,
  2: 0.5,
  4: 1,
};

/** What is drawn, whatever the instrument's own ends. */
export const DRAWN_NM = [400, 700] as const;

export interface DrawnSpectrum {
  readonly label: string;
  readonly spectrum: Spectrum;
  readonly colour: ScreenColour;
  readonly standing: ShownStanding;
}

interface SpectralCurve extends PictureWords {
  readonly curves: readonly DrawnSpectrum[];
  readonly wavelengthLabel: string;
  /** By the end of the axis, so that it says when it is enlarged. */
  readonly reflectanceLabel: (end: ReflectanceScale) => string;
  /** Of the drawing area in user units; 190 unless given. */
  readonly areaHeight?: number | undefined;
}

const AREA_HEIGHT = 190;

/**
 * Reflectance factor over wavelength, 400-700 nm, each paint in its own colour.
 * @throws RangeError for no curve, one with fewer than two points in the range, or a reading outside the scale.
 */
export function spectralCurve(params: SpectralCurve): Markup {
  if (params.curves.length === 0) throw refusal("curves", "none", "at least one");
  const readings = params.curves.map(drawnReadings);
  const highest = Math.max(
    ...readings.flatMap((points) => points.map(({ reflectance }) => reflectance)),
  );
  const scale = smallestHolding(REFLECTANCE_SCALES, highest, "reflectance factor");
  const frame = plotFrame(params, {
    areaHeight: params.areaHeight ?? AREA_HEIGHT,
    inside: 10,
    x: { domain: DRAWN_NM, ticks: ticksEvery(50, DRAWN_NM), label: params.wavelengthLabel },
    y: {
      domain: [0, scale],
      ticks: ticksEvery(TICK_STEPS[scale], [0, scale]),
      label: params.reflectanceLabel(scale),
    },
  });
  const lines = readings.map((points) =>
    points.map(({ nm, reflectance }) => ({ x: frame.x(nm), y: frame.y(reflectance) })),
  );
  return framedPicture("spectral-curve", params, frame, [
    ...params.curves.flatMap(({ colour, standing }, i) =>
      ownColourLine(colour, lines[i] ?? [], dashesOf(standing)),
    ),
    ...labelsBesideLines(
      params.curves.map(({ label }) => label),
      lines,
      frame,
    ),
  ]);
}

/** A gloss reading of a black can come back slightly negative and is drawn as read; lower is a fault. */
function drawnReadings({
  label,
  spectrum,
}: DrawnSpectrum): { readonly nm: number; readonly reflectance: number }[] {
  const points = spectrum.values
    .map((reflectance, i) => ({ nm: wavelengthNm(spectrum.grid, i), reflectance }))
    .filter(({ nm }) => nm >= DRAWN_NM[0] && nm <= DRAWN_NM[1]);
  if (points.length < 2)
    throw refusal(`readings of ${label} in 400-700 nm`, String(points.length), "at least two");
  for (const { reflectance } of points) {
    if (!(reflectance >= -0.005))
      throw domainError("reflectance factor", reflectance, "R >= -0.005");
  }
  return points;
}

/** Each curve's name along it, where it is clear of the others. */
function labelsBesideLines(
  labels: readonly string[],
  lines: readonly (readonly Point[])[],
  { area }: PlotFrame,
): SvgNode[] {
  const wishes = labels.map((label, i): LabelWish => ({
    text: label,
    mayDrop: false,
    spots: spotsAlong(label, lines[i]?.toReversed() ?? [], [5, 9, 20, 34, 50]),
  }));
  return drawnLabels(
    wishes,
    { boxes: [], segments: lines.flatMap(segmentsThrough) },
    within(area, 4, 2),
  );
}
