import type { Spectrum } from "../quantities/spectrum.ts";
import { xyzToLab } from "./lab.ts";
import { tristimulus } from "./tristimulus.ts";
import type { Lab, SummedViewing } from "./viewing.ts";

/**
 * L*, a*, b* of a reading; left out, under D65 for the 10 degree observer, where colours are held against each other.
 * @throws RangeError as {@link tristimulus}.
 */
export function spectrumLab(spectrum: Spectrum, viewing: SummedViewing = "D65/10"): Lab {
  return xyzToLab(tristimulus(spectrum, viewing), viewing);
}
