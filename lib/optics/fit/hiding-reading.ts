/** A drawdown as it would read if it hid its ground: by its own film over black and white. */
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { surfaceForm } from "../surface/surface.ts";
import { readingOf } from "../tints/tint-reading.ts";
import type { FilmOptics, TwoGroundFilm } from "../films/two-ground-film.ts";
import type { Measurement, SurfaceConstants } from "./measurement.ts";
import { readingNoise } from "./reading-noise.ts";
import { at } from "../../quantities/at.ts";

/** A reading that stands for R-infinity, with its noise; shape (count) each. */
export interface HidingReading {
  readonly measured: readonly number[];
  readonly sigma: readonly number[];
  /** Y over black by Y over white of the film that the reading is, where it does not hide. */
  readonly filmContrast?: number;
}

/** Contrast ratio under which a film lets its ground through. */
const HIDES = 0.98;

/**
 * The reading itself where its drawdown hides; R-infinity from both grounds, in the
 * reading's own geometry, where the reading is that of a film that does not.
 *
 * @param film the reading's own drawdown over both grounds; `optics` of it, and of further films of the paint.
 * @source kubelka-1948
 */
export function hidingReading(
  reading: Measurement,
  film: TwoGroundFilm | undefined,
  optics: FilmOptics | undefined,
  surface: SurfaceConstants,
): HidingReading {
  const own = { measured: reading.spectrum.values, sigma: readingNoise(reading) };
  if (film === undefined || optics === undefined) return own;
  const filmContrast = luminance(film.overBlack) / luminance(film.overWhite);
  if (!(filmContrast < HIDES)) return own;
  const form = surfaceForm(reading.geometry, surface);
  const overWhiteNoise = readingNoise(film.overWhite);
  const shown = Array.from({ length: own.measured.length }, (_, i) => {
    const rho = at(optics.masstone, i);
    const [black, white] = [film.overBlack, film.overWhite].map(({ spectrum }) =>
      at(spectrum.values, i),
    ) as [number, number];
    const parted = white - black > at(overWhiteNoise, i);
    return parted && rho === rho ? readingOf(form, rho) : undefined;
  });
  return {
    measured: own.measured.map((value, i) => shown[i] ?? value),
    sigma: own.sigma.map((noise, i) => {
      if (shown[i] === undefined) return noise;
      const rho = at(optics.masstone, i);
      const slope = form.gain / (1 - form.k2 * rho) ** 2;
      return Math.hypot(noise, slope * at(optics.masstoneSigma, i));
    }),
    filmContrast,
  };
}

function luminance({ spectrum }: Measurement): number {
  return tristimulus(spectrum, "D65/10").Y;
}
