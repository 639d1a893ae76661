import {
  requireFinite,
  WHITE_POINTS,
  type Lab,
  type LabViewing,
  type SummedViewing,
  type Xyz,
} from "./viewing.ts";

/** Where the cube root gives way to a straight line: (6/29)^3. */
const LINEAR_BELOW = (6 / 29) ** 3;

/** L*, C*ab and hue angle hab [degree, 0 <= h < 360]; the angle of a neutral is 0 and says nothing. */
export interface Lch {
  readonly L: number;
  readonly C: number;
  readonly h: number;
}

/**
 * CIE 1976 L*a*b* of a colour under the viewing that its XYZ was worked out for.
 *
 *     L* = 116 f(Y/Yn) - 16, a* = 500 (f(X/Xn) - f(Y/Yn)), b* = 200 (f(Y/Yn) - f(Z/Zn))
 *     f(t) = t^(1/3) for t > (6/29)^3, else (841/108) t + 4/29
 *
 * @param xyz tristimulus values [1], Y of the perfect diffuser 100, finite.
 * @throws RangeError when a value is NaN or infinite.
 * @source cie-15-2018 : CIE 1976 L*a*b* colour space (also ISO/CIE 11664-4)
 * @example xyzToLab({ X: 95.04, Y: 100, Z: 108.88 }, "D65/2") // { L: 100, a: 0, b: 0 }
 */
export function xyzToLab(xyz: Xyz, viewing: LabViewing | SummedViewing): Lab {
  requireFinite("tristimulus value", [xyz.X, xyz.Y, xyz.Z]);
  const white = WHITE_POINTS[viewing];
  const [fx, fy, fz] = [
    compressed(xyz.X / white.X),
    compressed(xyz.Y / white.Y),
    compressed(xyz.Z / white.Z),
  ];
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/**
 * Tristimulus values of a Lab; inverse of {@link xyzToLab}.
 *
 * @param lab L*, a*, b* [1], finite.
 * @returns XYZ under the same viewing; an impossible Lab can give a negative value.
 * @throws RangeError when a value is NaN or infinite.
 * @source cie-15-2018 : reverse transformation
 */
export function labToXyz(lab: Lab, viewing: LabViewing | SummedViewing): Xyz {
  requireFinite("L*, a* or b*", [lab.L, lab.a, lab.b]);
  const white = WHITE_POINTS[viewing];
  const fy = (lab.L + 16) / 116;
  return {
    X: white.X * expanded(fy + lab.a / 500),
    Y: white.Y * expanded(fy),
    Z: white.Z * expanded(fy - lab.b / 200),
  };
}

/** The same colour as lightness, chroma and hue angle. */
export function labToLch({ L, a, b }: Lab): Lch {
  requireFinite("L*, a* or b*", [L, a, b]);
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return { L, C: Math.hypot(a, b), h: degrees < 0 ? (degrees + 360) % 360 : Math.abs(degrees) };
}

function compressed(t: number): number {
  return t > LINEAR_BELOW ? Math.cbrt(t) : (841 / 108) * t + 4 / 29;
}

function expanded(f: number): number {
  return f > 6 / 29 ? f ** 3 : (108 / 841) * (f - 4 / 29);
}
