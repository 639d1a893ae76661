/** One surface tried on a set: how well it predicts left-out let-downs, or why it can't be taken off. */
import { at } from "../../quantities/at.ts";
import { wavelengthNm } from "../../quantities/spectrum.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { NotToldFromSurface } from "../surface/measurement-in-geometry.ts";
import { surfaceForm } from "../surface/surface.ts";
import type { UsableDrawdowns } from "./drawdown.ts";
import { readySet, type ReadySet } from "./fitted-drawdown-set.ts";
import { leftOutFits, type LeftOutFit } from "./leave-one-out.ts";
import type { FitChoices } from "./fit-problem.ts";
import type { Measurement, SurfaceConstants } from "./measurement.ts";

/** Share of wavelengths at which a masstone may read no more than the surface before the set is refused. */
const HIDDEN_SHARE_MAX = 0.5;

/** A reading no higher than the surface over it: where first, what was read there, and at how many wavelengths. */
export type NotAboveSurface = StatementOf<
  "reflectance-not-above-surface",
  {
    drawdown: string;
    k1: number;
    wavelengthNm: number;
    reflectance: number;
    wavelengths: number;
  }
>;

export interface SurfaceTrial {
  readonly kind: "tried";
  readonly set: ReadySet;
  readonly leftOut: readonly LeftOutFit[];
  readonly remarks: readonly NotToldFromSurface[];
}

export interface SurfaceRefusal {
  readonly kind: "refused";
  readonly reason: NotAboveSurface;
}

export function surfaceTrial(
  usable: UsableDrawdowns,
  surface: SurfaceConstants,
  choices: FitChoices = {},
): SurfaceTrial | SurfaceRefusal {
  const { refusal, remarks } = belowSurface(usable, surface);
  if (refusal !== undefined) return { kind: "refused", reason: refusal };
  const set = readySet(usable, surface, choices);
  return { kind: "tried", set, leftOut: leftOutFits(set, set.tints), remarks };
}

/** Readings that the instrument can't tell from the surface over them. */
function belowSurface(
  { masstone, whites, tints }: UsableDrawdowns,
  surface: SurfaceConstants,
): { refusal?: NotAboveSurface; remarks: readonly NotToldFromSurface[] } {
  const below = (reading: Measurement): number[] => {
    const { offset } = surfaceForm(reading.geometry, surface);
    // Without gloss a black may read 0: that is its darkness, not the surface's.
    return offset === 0
      ? []
      : reading.spectrum.values.flatMap((value, i) => (value <= offset ? [i] : []));
  };
  const refusal = (
    drawdown: string,
    reading: Measurement,
    [first, ...others]: readonly [number, ...number[]],
  ): NotAboveSurface => ({
    rule: "reflectance-not-above-surface",
    source: "saunderson-1942",
    values: {
      drawdown,
      k1: surface.k1,
      wavelengthNm: wavelengthNm(reading.spectrum.grid, first),
      reflectance: at(reading.spectrum.values, first),
      wavelengths: 1 + others.length,
    },
  });
  for (const [name, reading] of [
    ...whites.map((white) => [white.slug, white.masstone] as const),
    ...tints.map((tint) => [tint.id, tint.reading] as const),
  ]) {
    const [first, ...others] = below(reading);
    if (first !== undefined)
      return { refusal: refusal(name, reading, [first, ...others]), remarks: [] };
  }
  const [first, ...others] = below(masstone);
  if (first === undefined) return { remarks: [] };
  const wavelengths = 1 + others.length;
  if (wavelengths > HIDDEN_SHARE_MAX * masstone.spectrum.grid.count)
    return { refusal: refusal("masstone", masstone, [first, ...others]), remarks: [] };
  return {
    remarks: [
      {
        rule: "masstone-not-told-from-surface",
        values: { k1: surface.k1, wavelengths },
        source: "saunderson-1942",
      },
    ],
  };
}
