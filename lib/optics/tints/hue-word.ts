/** Words of hue for a closed set of sectors of the CIELAB hue angle, and which way a turn goes. */
import { domainError } from "../../diagnostics/diagnostic.ts";
import { certain } from "../../quantities/at.ts";

/**
 * Sectors of hab [degree], each from its own angle to the next row's.
 * @source optics-practice : as painters name the lean of a grey or an earth
 */
export const HUE_SECTORS = [
  { fromDegrees: 0, hue: "red" },
  { fromDegrees: 40, hue: "brown" },
  { fromDegrees: 80, hue: "yellow" },
  { fromDegrees: 110, hue: "olive" },
  { fromDegrees: 140, hue: "green" },
  { fromDegrees: 190, hue: "blue-green" },
  { fromDegrees: 235, hue: "blue" },
  { fromDegrees: 290, hue: "violet" },
  { fromDegrees: 325, hue: "purple" },
  { fromDegrees: 345, hue: "red" },
] as const;
export type HueWord = (typeof HUE_SECTORS)[number]["hue"];

/**
 * What a strong and light colour of a sector is called, from which C*ab and L* on: brown and olive are of what is dull or dark.
 * @source nbs-sp-440 : where the names of its blocks go over, to some 10 in C*ab and 5 in L*
 */
export const STRONG_HUES = [
  { of: "brown", hue: "orange", chromaFrom: 40, lightnessFrom: 55 },
  { of: "olive", hue: "yellow-green", chromaFrom: 30, lightnessFrom: 45 },
] as const;
export type ColourWord = HueWord | (typeof STRONG_HUES)[number]["hue"];

/** Hue angles [degree] that a turn is said to go toward: the unique hues, about, in CIELAB (memory). */
const LANDMARKS = [
  { degrees: 25, hue: "red" },
  { degrees: 90, hue: "yellow" },
  { degrees: 165, hue: "green" },
  { degrees: 245, hue: "blue" },
] as const;

/**
 * Word for a hue angle.
 * @param hueAngle hab [degree], 0 <= h < 360.
 * @throws RangeError when the angle is outside its domain, or NaN.
 * @example hueWord(270) // "blue"
 */
export function hueWord(hueAngle: number): HueWord {
  if (!(hueAngle >= 0 && hueAngle < 360))
    throw domainError("hue angle", hueAngle, "0 <= h < 360 degrees");
  const sector = certain(HUE_SECTORS.findLast(({ fromDegrees }) => hueAngle >= fromDegrees));
  return sector.hue;
}

/**
 * Word for the hue of a colour, however strong and light it is.
 * @param colour L* [1], C*ab [1] and hab [degree], D65/10.
 * @throws RangeError when the angle is outside its domain, or NaN.
 * @example colourWord({ L: 72, C: 75, h: 73 }) // "orange"
 */
export function colourWord({ L, C, h }: { L: number; C: number; h: number }): ColourWord {
  const hue = hueWord(h);
  const strong = STRONG_HUES.find(
    ({ of, chromaFrom, lightnessFrom }) => of === hue && C >= chromaFrom && L >= lightnessFrom,
  );
  return strong?.hue ?? hue;
}

/** Signed turn from one hue angle to another [degree], -180 < turn <= 180. */
export function hueTurn(from: number, to: number): number {
  const turn = (((to - from) % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}

/** So near a unique hue [degree] a colour is of that hue, and turns towards its neighbours: a red gets yellower or bluer, never redder. @source optics-practice */
const OF_THE_HUE = 20;

/**
 * The landmark hue that a turn goes toward: the next one from where it starts that the colour is not of already.
 * @example hueToward(300, -15) // "blue"
 */
export function hueToward(from: number, turn: number): "red" | "yellow" | "green" | "blue" {
  const ahead = ({ degrees }: { degrees: number }): number =>
    (((Math.sign(turn) * (degrees - from) - OF_THE_HUE) % 360) + 360) % 360 || 360;
  return LANDMARKS.reduce<(typeof LANDMARKS)[number]>(
    (one, other) => (ahead(other) < ahead(one) ? other : one),
    LANDMARKS[0],
  ).hue;
}
