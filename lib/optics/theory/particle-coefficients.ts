import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { sphereEfficiencies } from "./lorenz-mie.ts";
import type { ComplexIndex } from "./refractive-index.ts";

/** K and S for each volume of particle in a volume of film [1/um]. */
export interface ParticleCoefficients {
  readonly K: number;
  readonly S: number;
}

/**
 * Kubelka-Munk K and S of spheres far apart, for each volume of particle in a volume of film.
 *
 *     mu = Q (pi d^2/4) / (pi d^3/6) = 3 Q / (2 d),  K = 2 mu_a,  S = (3/4) mu_s (1 - g)
 *
 * @param diameterUm d [um], > 0.
 * @param index of the particle, n > 0 and k >= 0.
 * @param mediumIndex n of the film around it [1], 1 <= n < 3, not absorbing.
 * @param wavelengthNm in vacuum [nm], > 0.
 * @returns K, S [1/um], both >= 0.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @validity a dilute film: dense rutile scatters several times less than this. The way it goes with wavelength
 *   is of use, its size is not.
 * @source gate-1974, thennadil-2008
 */
export function particleCoefficients(
  diameterUm: number,
  index: ComplexIndex,
  mediumIndex: number,
  wavelengthNm: number,
): ParticleCoefficients {
  requirePositive("diameter", diameterUm, "um", "d");
  if (!(mediumIndex >= 1 && mediumIndex < 3))
    throw domainError("index of the medium", mediumIndex, "1 <= n < 3");
  requirePositive("wavelength", wavelengthNm, "nm");
  const x = (1000 * Math.PI * diameterUm * mediumIndex) / wavelengthNm;
  const { sca, abs, g } = sphereEfficiencies(x, index.n / mediumIndex, index.k / mediumIndex);
  const perVolume = 3 / (2 * diameterUm);
  return { K: index.k === 0 ? 0 : 2 * perVolume * abs, S: 0.75 * perVolume * sca * (1 - g) };
}
