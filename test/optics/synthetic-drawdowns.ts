/**
 * Drawdowns made by a path of their own, to hold a fit against: pigments with K
 * and S per volume, mixed by volume after weighing with their densities, two-flux
 * equations integrated step by step, the surface followed bounce by bounce, and
 * seeded noise. Invented pigments; no algebra shared with lib/optics.
 */
import { wavelengthsNm, type WavelengthGrid } from "../../lib/quantities/spectrum.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import type { DrawdownSet, RatioKind } from "../../lib/optics/fit/drawdown.ts";
import { fittedColour } from "../../lib/optics/fit/fitted-colour.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../../lib/optics/fit/measurement.ts";
import { integratedMasstone } from "./two-flux.ts";

export const GRID: WavelengthGrid = { startNm: 400, stepNm: 10, count: 31 };

/** K and S per volume by wavelength [nm], density [g/cm3]. */
export interface SyntheticPigment {
  readonly K: (nm: number) => number;
  readonly S: (nm: number) => number;
  readonly density: number;
}

const power =
  (at550: number, exponent: number) =>
  (nm: number): number =>
    at550 * (550 / nm) ** exponent;
const step =
  (low: number, high: number, edge: number, width: number) =>
  (nm: number): number =>
    low + (high - low) / (1 + Math.exp((nm - edge) / width));

export const TITANIUM: SyntheticPigment = {
  K: (nm) => 0.002 + 0.4 * Math.exp(-(nm - 395) / 8),
  S: power(1, 1.4),
  density: 4.2,
};
export const LEAD: SyntheticPigment = { K: power(0.0015, 3), S: power(0.4, 0.2), density: 6.7 };
export const ZINC: SyntheticPigment = {
  K: (nm) => 0.001 + 0.3 * Math.exp(-(nm - 385) / 8),
  S: power(0.25, 2.2),
  density: 5.65,
};
export const LAMP: SyntheticPigment = { K: power(12, 1), S: power(0.35, 0.6), density: 1.8 };
export const IRON_BLACK: SyntheticPigment = { K: power(4, 0.5), S: power(0.4, 0.5), density: 4.7 };
export const OCHRE: SyntheticPigment = {
  K: step(0.02, 2, 540, 20),
  S: power(0.5, 0.3),
  density: 4.2,
};
export const BLUE: SyntheticPigment = {
  K: (nm) => 0.05 + 3 * Math.exp(-(((nm - 600) / 55) ** 2)),
  S: power(0.25, 1),
  density: 2.4,
};
export const YELLOW: SyntheticPigment = {
  K: step(0.004, 3, 500, 9),
  S: power(0.8, 0.5),
  density: 4.4,
};

export interface Noise {
  /** Standard deviations: of a reflectance factor [1], relative, and of a mass ratio, relative. */
  readonly absolute: number;
  readonly relative: number;
  readonly massRatio: number;
}
export const NO_NOISE: Noise = { absolute: 0, relative: 0, massRatio: 0 };
export const READING_NOISE: Noise = { absolute: 0.0005, relative: 0.003, massRatio: 0.02 };

/** Normally distributed numbers from a seed: sum of twelve of a linear congruential generator, less six. */
export function normalNumbers(seed: number): () => number {
  let state = BigInt(seed) * 2654435761n + 1n;
  const uniform = (): number => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 11n) / 2 ** 53;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, value) => sum + value, -6);
}

/** What an instrument reads: light let in, thrown about between film and surface until nothing is left. */
export function bounced(
  R: number,
  geometry: Geometry,
  { k1, k2 }: SurfaceConstants,
  into = 1 - k1,
  out = 1 - k2,
): number {
  let inside = into;
  let seen = geometry === "d/8 included" ? k1 : 0;
  for (let bounce = 0; bounce < 4000 && inside > 1e-15; bounce++) {
    const up = inside * R;
    seen += up * out;
    inside = up * k2;
  }
  return seen;
}

export interface Bench {
  readonly geometry: Geometry;
  readonly surface: SurfaceConstants;
  /** Whether readings state their surface, or leave the fit to choose. */
  readonly statesSurface?: boolean;
  readonly noise: Noise;
  readonly seed: number;
  readonly grid?: WavelengthGrid;
}

/** Read with the shine excluded from a surface that is stated, and without noise. */
export const QUIET_BENCH: Bench = {
  geometry: "d/8 excluded",
  surface: { k1: 0.04, k2: 0.55 },
  statesSurface: true,
  noise: NO_NOISE,
  seed: 1,
};

/** Mass ratios let down in one white. */
export interface LetDowns {
  readonly slug: string;
  readonly white: SyntheticPigment;
  readonly massRatios: readonly number[];
  readonly ratioKind?: RatioKind;
}

/** A colour drawn down in whites, as a workshop would hand it in. */
export function syntheticSet(
  colour: SyntheticPigment,
  letDowns: readonly LetDowns[],
  bench: Bench,
): DrawdownSet {
  const { noise } = bench;
  const normal = normalNumbers(bench.seed);
  const reading = (
    colourVolume: number,
    white: SyntheticPigment,
    whiteVolume: number,
  ): Measurement => {
    const grid = bench.grid ?? GRID;
    const values = wavelengthsNm(grid).map((nm) => {
      const R = integratedMasstone(
        (colourVolume * colour.K(nm) + whiteVolume * white.K(nm)) / (colourVolume + whiteVolume),
        (colourVolume * colour.S(nm) + whiteVolume * white.S(nm)) / (colourVolume + whiteVolume),
      );
      const seen = bounced(R, bench.geometry, bench.surface);
      return Math.max(seen * (1 + noise.relative * normal()) + noise.absolute * normal(), 0);
    });
    return {
      spectrum: { grid, values },
      geometry: bench.geometry,
      ...(bench.statesSurface === true ? { surface: bench.surface } : {}),
    };
  };
  return {
    masstone: reading(1, TITANIUM, 0),
    whites: letDowns.map(({ slug, white }) => ({ slug, masstone: reading(0, white, 1) })),
    tints: letDowns.flatMap(({ slug, white, massRatios, ratioKind = "pigment" }) =>
      massRatios.map((massRatio) => {
        const weighed = massRatio * (1 + noise.massRatio * normal());
        return {
          id: `${slug} 1:${Math.round(1 / massRatio)}`,
          white: slug,
          massRatio,
          ratioKind,
          reading: reading(weighed / colour.density, white, 1 / white.density),
        };
      }),
    ),
  };
}

/** K and S in units of the white's S per unit of mass ratio: what a fit ought to find. */
export function truth(
  colour: SyntheticPigment,
  white: SyntheticPigment,
  nm: number,
): { K: number; S: number } {
  const unit = (white.S(nm) / white.density) * colour.density;
  return { K: colour.K(nm) / unit, S: colour.S(nm) / unit };
}

/** What is fitted to drawdowns that no fit refuses. */
export function fitOf(set: DrawdownSet): ColourFit {
  const fit = fittedColour(set);
  if (fit.kind === "refused") throw new Error(`Unexpected refusal ${JSON.stringify(fit.reasons)}`);
  return fit;
}
