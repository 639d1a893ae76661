import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { FilmCoefficients } from "./film-coefficients.ts";
import { filmSpectrum } from "./hiding.ts";
import type { Geometry, Measurement } from "../fit/measurement.ts";

/** Thicknesses of a glaze strip [um], from a stain to a heavy coat. */
export const GLAZE_FILMS_UM: readonly number[] = [5, 10, 20, 50, 100, 200];

/** One field of a glaze strip. */
export interface GlazeStep {
  readonly filmUm: number;
  readonly spectrum: Spectrum;
  /** D65/10. */
  readonly lab: Lab;
}

/**
 * Undertone: a colour in films of growing thickness over a ground.
 *
 * @param ground reading of the bare ground, commonly white.
 * @param geometry how the strip is looked at; without gloss unless said otherwise.
 * @throws RangeError when a thickness is negative, NaN or infinite.
 * @validity a film thinned by medium is no thinner film of paint: pigment is further apart, and a little stronger.
 * @source kubelka-1948
 */
export function glazeStrip(
  paint: FilmCoefficients,
  ground: Measurement,
  filmsUm: readonly number[] = GLAZE_FILMS_UM,
  geometry: Geometry = "d/8 excluded",
): GlazeStep[] {
  return filmsUm.map((filmUm) => {
    const spectrum = filmSpectrum(paint, filmUm, ground, geometry);
    return { filmUm, spectrum, lab: spectrumLab(spectrum) };
  });
}
