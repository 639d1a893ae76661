/** How a spectrum meets the eye: glossy or matte, in daylight or under a lamp, with what it could as well be. */
import { adaptedXyz } from "../../colorimetry/adaptation.ts";
import { labToXyz, xyzToLab } from "../../colorimetry/lab.ts";
import { LIGHTS, type Lamp } from "../../colorimetry/lamps.ts";
import { screenColours } from "../../colorimetry/screen-colour.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { axisUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import type { Geometry, SurfaceConstants } from "../../optics/fit/measurement.ts";
import { surfaceForm } from "../../optics/surface/surface.ts";
import { internalOf, readingOf } from "../../optics/tints/tint-reading.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";

export type Light = "daylight" | Lamp;
export type SeenFinish = "glossy" | "matte";

/** A colour for a screen. */
export interface Shown {
  readonly hex: string;
  readonly displayP3: string;
  readonly inGamut: boolean;
}

export interface Seen {
  /** D65/10; under a lamp, as an eye used to it sees it, carried to D65/10. */
  readonly lab: Lab;
  readonly shown: Shown;
}

export interface SeenAs {
  readonly geometry: Geometry;
  readonly surface: SurfaceConstants;
}

/** How a glossy film is read without its glare, by an instrument of this geometry or one like it. */
export function glossyGeometry(geometry: Geometry): Geometry {
  return geometry === "45/0" ? "45/0" : "d/8 excluded";
}

/**
 * A reading as a glossy film without its glare, or as a matte one that throws its surface light to every side.
 * @source saunderson-1942
 */
export function finishedSpectrum(
  spectrum: Spectrum,
  { geometry, surface }: SeenAs,
  finish: SeenFinish,
): Spectrum {
  const wanted: Geometry = finish === "matte" ? "d/8 included" : glossyGeometry(geometry);
  if (geometry === wanted) return spectrum;
  const [from, to] = [surfaceForm(geometry, surface), surfaceForm(wanted, surface)];
  return {
    grid: spectrum.grid,
    values: spectrum.values.map((value) =>
      readingOf(to, Math.min(Math.max(internalOf(from, value), 0), 1)),
    ),
  };
}

/** The colour of a spectrum in a light. */
export function seen(spectrum: Spectrum, light: Light): Seen {
  if (light === "daylight") {
    const lab = spectrumLab(spectrum);
    return { lab, shown: shown(tristimulus(spectrum, "D65/2")) };
  }
  const viewing = LIGHTS["CIE 1964"].lamps[light];
  const lab = xyzToLab(adaptedXyz(tristimulus(spectrum, viewing), viewing, "D65/10"), "D65/10");
  return { lab, shown: shownLab(lab) };
}

/** For a screen, of a Lab (D65/10) whose spectrum is not at hand: taken over to the 2 degree observer as it is. */
export function shownLab(lab: Lab): Shown {
  const { X, Y, Z } = labToXyz({ ...lab, L: Math.min(Math.max(lab.L, 0), 100) }, "D65/2");
  return shown({ X: Math.max(X, 0), Y: Math.max(Y, 0), Z: Math.max(Z, 0) });
}

function shown(xyz: Parameters<typeof screenColours>[0]): Shown {
  const { srgb, displayP3 } = screenColours(xyz);
  return { hex: srgb.hex, displayP3: displayP3.css, inGamut: srgb.inGamut && displayP3.inGamut };
}

/** Ways in which a prediction may miss. */
const HALO = ["paler", "darker", "redder", "greener", "yellower", "bluer"] as const;
export type HaloWay = (typeof HALO)[number];

const WAYS: Readonly<Record<HaloWay, readonly [keyof Lab, 1 | -1]>> = {
  paler: ["L", 1],
  darker: ["L", -1],
  redder: ["a", 1],
  greener: ["a", -1],
  yellower: ["b", 1],
  bluer: ["b", -1],
};

/** What a colour could be at 68 %: a swatch toward each end of L*, a* and b*. */
export function halo(
  { lab }: Seen,
  p68: number,
): { readonly way: HaloWay; readonly shown: Shown }[] {
  const width = axisUncertainty(p68, lab);
  return HALO.map((way) => {
    const [axis, sign] = WAYS[way];
    return { way, shown: shownLab({ ...lab, [axis]: lab[axis] + sign * width[axis] }) };
  });
}
