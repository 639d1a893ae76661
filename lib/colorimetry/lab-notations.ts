import { isStatement, type Statement } from "../quantities/statement.ts";
import { labUnder, type LabUnder } from "./lab-under.ts";
import { labToXyz } from "./lab.ts";
import { munsellOfLab, type Munsell } from "./munsell.ts";
import { screenColours, type ScreenColours } from "./screen-colour.ts";
import type { Lab, LabViewing } from "./viewing.ts";

/** A notation that a Lab alone gives; where approximate, its standing is estimated. */
export interface Followed<T> {
  readonly notation: T;
  readonly approximate: boolean;
  /** Standard uncertainty from adaptation alone [Delta-E*ab]; 0 where not approximate. */
  readonly uncertainty: number;
}

/** What follows from a Lab without a spectrum, each notation or the ruling why not. */
export interface LabNotations {
  /** Exact from C/2 alone; else adapted to C and approximate. */
  readonly munsell: Followed<Munsell> | Statement;
  /** Exact from D65/2 alone, likewise. */
  readonly screen: Followed<ScreenColours> | Statement;
}

/**
 * The notations that follow from a Lab whose spectrum is not known: a Lab from
 * elsewhere, or a Munsell chip by eye (labOfMunsell, C/2).
 *
 * Munsell is defined under C, 2 degree, screen colours under D65, 2 degree; from another
 * daylight they are adapted and marked approximate, with what that costs (lab-under.ts). From
 * lamplight none follows. Lab under other viewings: {@link labUnder}. Lamplight and metamerism:
 * not without a spectrum.
 *
 * @param lab finite, 0 <= L*, under `viewing`.
 * @param labUncertainty standard uncertainty of each coordinate, where known.
 * @throws RangeError when a value is NaN or infinite, or L* is negative.
 */
export function labNotations(
  lab: Lab,
  viewing: LabViewing,
  labUncertainty: Lab = { L: 0, a: 0, b: 0 },
): LabNotations {
  const underC = labUnder(lab, viewing, "C/2");
  const underD65 = labUnder(lab, viewing, "D65/2");
  return {
    munsell: followed<Munsell>(underC, (known) =>
      munsellOfLab(known.lab, withAdaptation(labUncertainty, known.uncertainty)),
    ),
    screen: followed(underD65, (known) => screenColours(notNegative(known.lab))),
  };
}

function followed<T extends object>(
  under: LabUnder | Statement,
  compute: (known: LabUnder) => T | Statement,
): Followed<T> | Statement {
  if (isStatement(under)) return under;
  const notation = compute(under);
  if (isStatement(notation)) return notation;
  return { notation, approximate: under.approximate, uncertainty: under.uncertainty };
}

/** A distance in three dimensions shared out among the coordinates. */
function withAdaptation({ L, a, b }: Lab, distance: number): Lab {
  const each = distance / Math.sqrt(3);
  return { L: Math.hypot(L, each), a: Math.hypot(a, each), b: Math.hypot(b, each) };
}

function notNegative(lab: Lab): { readonly X: number; readonly Y: number; readonly Z: number } {
  const { X, Y, Z } = labToXyz(lab, "D65/2");
  return { X: Math.max(X, 0), Y: Math.max(Y, 0), Z: Math.max(Z, 0) };
}
