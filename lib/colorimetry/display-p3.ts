/**
 * Display P3 and sRGB in light, that is before the transfer curve that both share: a triple of
 * red, green and blue, 0 to 1 each where a screen can show it.
 * @source css-color-4, iec-61966-2-1
 */
export type Light = readonly [red: number, green: number, blue: number];
type Matrix = readonly [Light, Light, Light];

/** Light of Display P3 to XYZ under D65 as its specification has it, Y 1 of white. */
const P3_TO_XYZ: Matrix = [
  [608311 / 1250200, 189793 / 714400, 198249 / 1000160],
  [35783 / 156275, 247089 / 357200, 198249 / 2500400],
  [0, 32229 / 714400, 5220557 / 5000800],
];
const XYZ_TO_P3: Matrix = [
  [446124 / 178915, -333277 / 357830, -72051 / 178915],
  [-14852 / 17905, 63121 / 35810, 423 / 17905],
  [11844 / 330415, -50337 / 660830, 316169 / 330415],
];
const XYZ_TO_SRGB: Matrix = [
  [12831 / 3959, -329 / 214, -1974 / 3959],
  [-851781 / 878810, 1648619 / 878810, 36519 / 878810],
  [705 / 12673, -2585 / 12673, 705 / 667],
];

/** The transfer curve, from a channel as it is stored to its light: odd, so that what lies outside a gamut goes through. */
export function lightOf(channel: number): number {
  const size = Math.abs(channel);
  return Math.sign(channel) * (size <= 0.04045 ? size / 12.92 : ((size + 0.055) / 1.055) ** 2.4);
}

/** The inverse of {@link lightOf}. */
export function channelOf(light: number): number {
  const size = Math.abs(light);
  return Math.sign(light) * (size <= 0.0031308 ? size * 12.92 : 1.055 * size ** (1 / 2.4) - 0.055);
}

/** Tristimulus values of light of Display P3, Y 1 of white. */
export function p3LightToXyz(light: Light): Light {
  return times(P3_TO_XYZ, light);
}

export function xyzToP3Light(xyz: Light): Light {
  return times(XYZ_TO_P3, xyz);
}

/** The same light in the primaries of sRGB; a channel below 0 or above 1 is what sRGB can't show. */
export function p3LightToSrgbLight(light: Light): Light {
  return times(XYZ_TO_SRGB, times(P3_TO_XYZ, light));
}

function times([first, second, third]: Matrix, [x, y, z]: Light): Light {
  return [
    first[0] * x + first[1] * y + first[2] * z,
    second[0] * x + second[1] * y + second[2] * z,
    third[0] * x + third[1] * y + third[2] * z,
  ];
}
