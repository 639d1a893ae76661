import type { LotFigures } from "../../lots/lot-against-standard.ts";
import type { LotReading } from "../../lots/difference-uncertainty.ts";
import type { Colour, SpectrumReading, TintReading } from "../../records/records.ts";
import { isSpectrum, opticsReading } from "../tints/optics-reading.ts";

/** Spectra of a colour or of a lot, as lots are held against each other; what was read otherwise is left out. */
export function readSpectra(
  masstone: Colour["masstone"],
  tints: readonly TintReading[],
): Pick<LotFigures, "masstone" | "letDowns"> {
  return {
    ...(masstone !== undefined && isSpectrum(masstone) && { masstone: lotReading(masstone) }),
    letDowns: tints.flatMap(({ white, massRatio, ratioKind, reading }) =>
      isSpectrum(reading) ? [{ white, massRatio, ratioKind, reading: lotReading(reading) }] : [],
    ),
  };
}

/** A recorded spectrum with the day of the calibration that it was read under. */
function lotReading(reading: SpectrumReading): LotReading {
  return {
    ...opticsReading(reading),
    ...(reading.calibration !== undefined && { calibration: reading.calibration }),
  };
}
