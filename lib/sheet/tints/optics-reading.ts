import type { Measurement } from "../../optics/fit/measurement.ts";
import type { Reading, SpectrumReading } from "../../records/records.ts";

/** A recorded spectrum as optics takes it. */
export function opticsReading(reading: SpectrumReading): Measurement {
  const { spectrum, geometry, surface, noise } = reading;
  return {
    spectrum,
    geometry,
    noise,
    ...(surface !== undefined && { surface }),
  };
}

export function isSpectrum(reading: Reading): reading is SpectrumReading {
  return reading.form === "spectrum";
}
