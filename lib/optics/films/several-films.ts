/** What all films of a paint over black and white tell of it together. */
import type { Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { filmOptics, type FilmOptics, type TwoGroundFilm } from "./two-ground-film.ts";
import { at } from "../../quantities/at.ts";

/** {@link FilmOptics} of several films; S X is that of a film of `filmUm`, where thicknesses are known. */
export interface FilmsOptics extends FilmOptics {
  readonly filmUm?: number;
}

/**
 * R-infinity and S X of a paint from all its films, each by how well it tells them.
 *
 *     ln S X = sum w (ln S X_j - ln X_j)/sum w + ln X,  w = 1/sigma_j^2
 *
 * Films of unknown thickness say nothing of S beside films of known thickness, and of R-infinity as much.
 *
 * @param films at least one, of one grid.
 * @param coat of the same paint, thick enough to hide.
 * @source kubelka-1948
 */
export function filmsOptics(
  films: readonly TwoGroundFilm[],
  surface: SurfaceConstants,
  coat?: Measurement,
): FilmsOptics {
  const told = films.map((film) => ({ ...filmOptics(film, surface, coat), filmUm: film.filmUm }));
  const [first] = told;
  if (first === undefined) throw new RangeError("There is no film; right would be one at least.");
  const known = told.flatMap((one) =>
    one.filmUm === undefined ? [] : [{ ...one, filmUm: one.filmUm }],
  );
  const filmUm = known[0]?.filmUm;
  const powers =
    filmUm === undefined
      ? [{ values: first.logPower, sigmas: first.powerSigma }]
      : known.map((one) => ({
          values: one.logPower.map((power) => power - Math.log(one.filmUm / filmUm)),
          sigmas: one.powerSigma,
        }));
  const masstone = weightedMeans(
    told.map((one) => ({ values: one.masstone, sigmas: one.masstoneSigma })),
  );
  const power = weightedMeans(powers);
  return {
    masstone: masstone.values,
    masstoneSigma: masstone.sigmas,
    logPower: power.values,
    powerSigma: power.sigmas,
    ...(filmUm !== undefined && { filmUm }),
  };
}

interface Told {
  readonly values: Float64Array;
  readonly sigmas: Float64Array;
}

/** Means by 1/sigma^2 of what is told, NaN left out; NaN where nothing is. */
function weightedMeans(series: readonly Told[]): Told {
  const count = series[0]?.values.length ?? 0;
  const [values, sigmas] = [new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    let [sum, total, best] = [0, 0, NaN];
    for (const one of series) {
      const sigma = at(one.sigmas, i);
      const weight = 1 / sigma ** 2;
      if (!(weight > 0 && weight < Infinity)) continue;
      sum += weight * at(one.values, i);
      total += weight;
      best = best < sigma ? best : sigma;
    }
    values[i] = total > 0 ? sum / total : NaN;
    // What is not known of the surface is common to all films: no mean is surer than the best of them.
    sigmas[i] = best;
  }
  return { values, sigmas };
}
