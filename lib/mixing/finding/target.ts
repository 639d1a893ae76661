/** The colour that a recipe is wanted for. */
import type { Lab } from "../../colorimetry/viewing.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";

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
