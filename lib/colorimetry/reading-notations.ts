import type { Spectrum } from "../quantities/spectrum.ts";
import { whenRead } from "../quantities/when-read.ts";
import { xyzToLab } from "./lab.ts";
import { labUncertainty } from "./lab-uncertainty.ts";
import { munsellOfLab, type Munsell, type MunsellStatement } from "./munsell.ts";
import { HAND_HELD_NOISE, type ReadingNoise } from "./reading-noise.ts";
import { screenColours, type ScreenColours } from "./screen-colour.ts";
import { tristimulus } from "./tristimulus.ts";
import { VIEWINGS, type Lab, type Viewing, type Xyz } from "./viewing.ts";

/** Every notation that follows from a spectrum. */
export interface ReadingNotations {
  readonly xyz: Readonly<Record<Viewing, Xyz>>;
  readonly lab: Readonly<Record<Viewing, Lab>>;
  /** Standard uncertainty of each coordinate, from noise, grid and place. */
  readonly labUncertainty: Readonly<Record<Viewing, Lab>>;
  /** From C/2; a ruling where the scale does not reach. */
  readonly munsell: Munsell | MunsellStatement;
  /** From D65/2. */
  readonly screen: ScreenColours;
}

/**
 * A reading in every notation; each from the viewing that it is defined for.
 *
 * @param spectrum as {@link tristimulus} takes it.
 * @param noise, moved, place as {@link labUncertainty} takes them.
 * @throws RangeError when the reading is outside its domain.
 */
export function readingNotations(
  spectrum: Spectrum,
  noise: ReadingNoise = HAND_HELD_NOISE,
  moved: readonly (readonly number[])[] = [],
  place = 0,
): ReadingNotations {
  const xyz = forEachViewing((viewing) => tristimulus(spectrum, viewing));
  const lab = forEachViewing((viewing) => xyzToLab(xyz[viewing], viewing));
  const uncertainty = forEachViewing((viewing) =>
    labUncertainty(spectrum, viewing, noise, moved, place),
  );
  // What is no reading is refused at once.
  tristimulus(spectrum, "D65/10");
  return whenRead<ReadingNotations>({
    xyz: () => xyz,
    lab: () => lab,
    labUncertainty: () => uncertainty,
    munsell: () => munsellOfLab(lab["C/2"], uncertainty["C/2"]),
    screen: () => screenColours(xyz["D65/2"]),
  });
}

function forEachViewing<T>(compute: (viewing: Viewing) => T): Record<Viewing, T> {
  return whenRead(
    Object.fromEntries(VIEWINGS.map((viewing) => [viewing, () => compute(viewing)])) as Record<
      Viewing,
      () => T
    >,
  );
}
