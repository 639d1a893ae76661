import { domainError } from "../diagnostics/diagnostic.ts";
import type { Markup } from "../present/views.ts";
import type { PictureWords } from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { framedPicture, plotFrame } from "./plot-frame.ts";
import { smallestHolding } from "./scale.ts";
import { DRAWN_NM } from "./spectral-curve.ts";
import { BAND_LOOK, DERIVED_DASHES } from "./standing-mark.ts";
import { element, polyline, refusal, type Point } from "./svg.ts";
import { ticksEvery } from "./ticks.ts";

/** S at one wavelength, relative to the reference wavelength. */
interface ScatteringPoint {
  readonly nm: number;
  readonly value: number;
}

export interface RelativeScattering extends PictureWords {
  readonly wavelengthLabel: string;
  readonly axisLabel: string;
  /** From the white's own films, broken where they told nothing. */
  readonly read: readonly (readonly ScatteringPoint[])[];
  /** What theory says, from low to high. */
  readonly band: readonly { readonly nm: number; readonly low: number; readonly high: number }[];
  /** Greatest value on the axis: the same for whites that are to be compared. */
  readonly most: (typeof SCATTERING_SCALES)[number];
}

/** Tops of the axis. */
const SCATTERING_SCALES = [1.5, 2, 3, 4, 6] as const;
const AREA_HEIGHT = 170;

/** The smallest scale that holds every value of several whites. @throws RangeError when none does. */
export function scatteringScale(values: readonly number[]): (typeof SCATTERING_SCALES)[number] {
  return smallestHolding(SCATTERING_SCALES, Math.max(1, ...values), "relative scattering");
}

/**
 * How a white scatters each colour of light beside green: from its films as a line, by theory as a band in a broken outline.
 * @throws RangeError for nothing to draw, a value below 0 or above the scale, or a band whose ends are the wrong way round.
 */
export function relativeScattering(params: RelativeScattering): Markup {
  const { read, band, most } = params;
  if (band.length < 2 && read.every((points) => points.length < 2))
    throw refusal("points of scattering", "none", "at least two");
  const frame = plotFrame(params, {
    areaHeight: AREA_HEIGHT,
    inside: 4,
    x: { domain: DRAWN_NM, ticks: ticksEvery(100, DRAWN_NM), label: params.wavelengthLabel },
    y: {
      domain: [0, most],
      ticks: ticksEvery(most > 3 ? 2 : most > 1.5 ? 1 : 0.5, [0, most]),
      label: params.axisLabel,
    },
  });
  const at = (nm: number, value: number): Point => {
    if (!(value >= 0 && value <= most))
      throw domainError("relative scattering", value, `0 <= S <= ${most}`);
    return { x: frame.x(nm), y: frame.y(value) };
  };
  for (const { low, high } of band)
    if (!(low <= high)) throw refusal("band of scattering", `${low}, ${high}`, "low <= high");
  const outline = [
    ...band.map(({ nm, high }) => at(nm, high)),
    ...band.toReversed().map(({ nm, low }) => at(nm, low)),
  ];
  return framedPicture("relative-scattering", params, frame, [
    ...(band.length < 2
      ? []
      : [
          element("path", {
            class: "plot__bounds",
            d: `${polyline(outline)}Z`,
            ...BAND_LOOK,
          }),
        ]),
    ...read
      .filter((points) => points.length > 1)
      .map((points) =>
        plainLine(
          points.map(({ nm, value }) => at(nm, value)),
          { role: "plot__line", width: 1.75, dashes: DERIVED_DASHES },
        ),
      ),
  ]);
}
