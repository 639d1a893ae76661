import type { Spectrum } from "../quantities/spectrum.ts";
import { xyzToLab } from "./lab.ts";
import { tristimulus } from "./tristimulus.ts";
import type { Lab } from "./viewing.ts";

/**
 * L*, a*, b* of a reading where colours are held against each other: D65, 10 degree observer.
 * @throws RangeError as {@link tristimulus}.
 */
export function spectrumLab(spectrum: Spectrum): Lab {
  return xyzToLab(tristimulus(spectrum, "D65/10"), "D65/10");
}
