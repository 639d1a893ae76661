/** A colour as a measurement would make it: with readings that are plausible, since nobody has taken them yet. */
import { HAND_HELD_NOISE } from "../colorimetry/reading-noise.ts";
import { absorptionScatteringRatio, masstoneReflectance } from "../optics/kubelka-munk.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import type { Colour, Records, SpectrumReading, TintReading } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";

/** Colour to white by mass, from strong to pale. */
export const TRIED_RATIOS = [
  [1, 1],
  [1, 5],
  [1, 20],
] as const;

/** A colour with a patch, and with readings where the patch speaks of drawdowns: of its own masstone, lightened as paint in a white is. */
export function triedColour(
  colour: Colour,
  patch: Partial<ColourRecord>,
  records: Records,
): Colour {
  const read = colour.masstone?.form === "spectrum" ? colour.masstone : undefined;
  const masstone = read ?? reading(flat(0.15), records);
  const white = patch.tints?.[0]?.white;
  const changed = {
    record: { ...colour.record, ...patch },
    ...(patch.masstone !== undefined && { masstone }),
    ...(white !== undefined && {
      tints: TRIED_RATIOS.map(([colourParts, whiteParts]): TintReading => ({
        white,
        massRatio: `${colourParts}:${whiteParts}`,
        colourParts,
        whiteParts,
        ratioKind: "paint",
        reading: { ...masstone, spectrum: letDown(masstone.spectrum, colourParts, whiteParts) },
      })),
    }),
    ...(patch.films !== undefined && {
      films: (["black", "white"] as const).map((ground) => ({
        ground,
        filmThicknessUm: 50,
        reading: {
          ...masstone,
          spectrum: {
            ...masstone.spectrum,
            values: masstone.spectrum.values.map((R) =>
              ground === "black" ? 0.85 * R : Math.min(0.95, R + 0.05),
            ),
          },
        },
      })),
    }),
  };
  // By its prototype, since a copy would read all of the colour, its notes among it.
  return Object.create(colour, Object.getOwnPropertyDescriptors(changed)) as Colour;
}

/** K/S of colour and of a white that reflects .9, by their shares: plausible, and no more is asked of it. */
function letDown(spectrum: Spectrum, colourParts: number, whiteParts: number): Spectrum {
  return {
    ...spectrum,
    values: spectrum.values.map((R) => {
      const mixed =
        (colourParts * absorptionScatteringRatio(Math.min(0.9, Math.max(0.01, R))) +
          whiteParts * absorptionScatteringRatio(0.9)) /
        (colourParts + whiteParts);
      return masstoneReflectance(mixed);
    }),
  };
}

function reading(spectrum: Spectrum, { workshop }: Records): SpectrumReading {
  return {
    form: "spectrum",
    spectrum,
    count: 1,
    geometry: workshop.readings?.geometry ?? "d/8 excluded",
    noise: HAND_HELD_NOISE,
    origin: "tried",
  };
}

function flat(factor: number): Spectrum {
  return {
    grid: { startNm: 400, stepNm: 10, count: 31 },
    values: Array.from({ length: 31 }, () => factor),
  };
}
