import { absorptionScatteringRatio, masstoneReflectance } from "../optics/kubelka-munk.ts";
import type { Measurement, SurfaceConstants } from "../optics/fit/measurement.ts";
import { internalReflectances } from "../optics/surface/measurement-in-geometry.ts";
import { measuredReflectance } from "../optics/surface/surface.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import type { WavelengthGrid } from "../quantities/spectrum.ts";

/** Darker than any paint film [1]: keeps K/S finite where a reading shows nothing. */
const DARKEST = 1e-4;

/**
 * K/S of a drawdown that hides, its surface taken off [1], shape (count).
 * @source kubelka-munk-1931, saunderson-1942
 */
export function absorptionOf(reading: Measurement, surface: SurfaceConstants): number[] {
  return internalReflectances(reading, surface).values.map((R) =>
    absorptionScatteringRatio(Math.max(R, DARKEST)),
  );
}

/** The Lab (D65, 10 degrees) that an instrument of this geometry reads of a K/S [1], shape (count). */
export function labOfAbsorption(
  absorption: readonly number[],
  { grid, geometry, surface }: Bench,
): Lab {
  const values = absorption.map((ratio) =>
    measuredReflectance(masstoneReflectance(Math.max(ratio, 0)), geometry, surface),
  );
  return spectrumLab({ grid, values });
}

/** How all readings of one comparison were taken. */
export interface Bench {
  readonly grid: WavelengthGrid;
  readonly geometry: Measurement["geometry"];
  readonly surface: SurfaceConstants;
}
