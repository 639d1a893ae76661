/** Volume, density and volume solids of a paint from what was weighed into it. */
import { requirePositive } from "../quantities/positive.ts";

interface Weighed {
  /** Mass weighed in [g], > 0. */
  readonly massG: number;
  readonly densityGPerCm3: number;
}

export interface PaintComponent extends Weighed {
  /** Whether it leaves the film as it dries, as a thinner does. A drying oil stays. */
  readonly volatile: boolean;
}

function volumesMl(components: readonly Weighed[]): number[] {
  if (components.length === 0)
    throw new RangeError("The paint has no components; right would be at least one");
  return components.map(({ massG, densityGPerCm3 }) => {
    requirePositive("mass of a component", massG, "g");
    requirePositive("density of a component", densityGPerCm3, "g/cm3");
    return massG / densityGPerCm3;
  });
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/**
 * Volume of a paint [ml]: its components' volumes together.
 * @throws RangeError for no component, or a mass or density that is not above 0.
 * @validity no air stirred in, no change of volume on mixing.
 */
export function paintVolumeMl(components: readonly Weighed[]): number {
  return sum(volumesMl(components));
}

/**
 * Density of a paint [g/cm3].
 * @throws RangeError as {@link paintVolumeMl}.
 * @example paintDensityGPerCm3([{ massG: 100, densityGPerCm3: 4, volatile: false }, { massG: 25, densityGPerCm3: 1, volatile: false }]) // 2.5
 */
export function paintDensityGPerCm3(components: readonly Weighed[]): number {
  return sum(components.map(({ massG }) => massG)) / paintVolumeMl(components);
}

/**
 * Volume solids: the fraction of the wet paint's volume that stays in the film, 0-1.
 * @throws RangeError as {@link paintVolumeMl}.
 */
export function volumeSolids(components: readonly PaintComponent[]): number {
  const volumes = volumesMl(components);
  return sum(volumes.filter((_, i) => components[i]?.volatile === false)) / sum(volumes);
}
