/** The colour that a recipe is wanted for. */
import { uncertaintyDeltaE00 } from "../../colorimetry/difference.ts";
import { labUncertainty } from "../../colorimetry/lab-uncertainty.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import { OIL_SURFACE } from "../../optics/surface/surface.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import { finishedSpectrum } from "../prediction/seen-mix.ts";

export interface Target {
  readonly name: string;
  /** How it is known: a reading has a spectrum, and so a behaviour under lamps; a screen's colour is only near. */
  readonly origin: "range" | "reading" | "munsell" | "lab" | "screen";
  /** D65/10. */
  readonly lab: Lab;
  readonly spectrum?: Spectrum;
  /** What it is uncertain by itself, Delta-E00 (68 %). */
  readonly p68: number;
}

/** A reading as a target, gloss shut out as in the readings of the paints. */
export function readTarget(
  name: string,
  origin: "range" | "reading",
  { spectrum: read, geometry, surface = OIL_SURFACE }: Measurement,
): Target {
  const spectrum = finishedSpectrum(read, { geometry, surface }, "glossy");
  const lab = spectrumLab(spectrum);
  const p68 = uncertaintyDeltaE00(lab, labUncertainty(spectrum, "D65/10"));
  return { name, origin, lab, spectrum, p68 };
}
