/**
 * What npm munsell's labToMhvc and mhvcToLab give, by the same interpolation from a table that a browser
 * is sent apart: browser scripts are bundled with this module in its place.
 *
 * @source newhall-1943, munsell-npm
 */
import { at } from "../../quantities/at.ts";
import { xyzToLab, labToXyz } from "../../colorimetry/lab.ts";
import { luminanceOfValue, munsellValue } from "../../colorimetry/munsell-value.ts";
import { WHITE_POINTS } from "../../colorimetry/viewing.ts";
import {
  TABLE_CHROMAS,
  TABLE_VALUES,
  unpackedRenotation,
  type Renotation,
  type RenotationTable,
} from "./renotation-table.ts";

type Triple = [number, number, number];

let renotation: Renotation | undefined;

/** Hand over the table; before that there is no notation. */
export function useRenotation(table: RenotationTable): void {
  renotation = unpackedRenotation(table);
}

function known(): Renotation {
  if (renotation === undefined)
    throw new Error("There is no renotation yet; useRenotation comes first");
  return renotation;
}

/** L*, a*, b* under illuminant C of a hue number, value 0-9 and chroma >= 0. */
export function mhvcToLab(hueNumber: number, value: number, chroma: number): Triple {
  const L = lightness(value);
  const { a, b } = planeAt((((hueNumber % 100) + 100) % 100) * 0.4, value, chroma / 2);
  return [L, a, b];
}

const THRESHOLD = 1e-6;
const ITERATIONS_MAX = 200;

/**
 * Hue number, value and chroma of L*, a*, b* under illuminant C.
 * @throws Error "maxIteration" where it does not come to an answer, as the package does.
 */
export function labToMhvc(L: number, a: number, b: number): Triple {
  const value = munsellValue(Math.min(Math.max(labToXyz({ L, a: 0, b: 0 }, "C/2").Y, 0), 100));
  const [C, h] = polar(a, b);
  let hue = (h * 100) / 360;
  let chroma = C / 5.5;
  if (value <= THRESHOLD || chroma <= THRESHOLD) return [hue, value, chroma];
  for (let i = 0; i < ITERATIONS_MAX; i++) {
    const [, ownA, ownB] = mhvcToLab(hue, value, chroma);
    const [ownC, ownH] = polar(ownA, ownB);
    const byHue = (turn(h - ownH) * 100) / 360;
    const byChroma = (C - ownC) / 5.5;
    if (Math.abs(byHue) <= THRESHOLD && Math.abs(byChroma) <= THRESHOLD)
      return [((hue % 100) + 100) % 100, value, chroma];
    hue += byHue / 2;
    chroma = Math.max(0, chroma + byChroma / 2);
  }
  throw new Error("labToMhvc reached maxIteration");
}

function lightness(value: number): number {
  return xyzToLab({ ...WHITE_POINTS["C/2"], Y: luminanceOfValue(value) }, "C/2").L;
}

/** L* at the table's values. */
const TABLE_LIGHTNESSES = TABLE_VALUES.map(lightness);

interface Plane {
  readonly a: number;
  readonly b: number;
}

/** Between values straight in L*, a*, b*; under the lowest its hue and C*ab hold. */
function planeAt(hue40: number, value: number, halfChroma: number): Plane {
  const next = TABLE_VALUES.findIndex((one) => one >= value - 1e-12);
  const upper = next === -1 ? TABLE_VALUES.length - 1 : next;
  const ofUpper = planeAtValue(hue40, upper, halfChroma);
  const upperValue = at(TABLE_VALUES, upper);
  if (upper === 0 || Math.abs(upperValue - value) < 1e-12) return ofUpper;
  const ofLower = planeAtValue(hue40, upper - 1, halfChroma);
  const [low, high] = [at(TABLE_LIGHTNESSES, upper - 1), at(TABLE_LIGHTNESSES, upper)];
  const share = (lightness(value) - low) / (high - low);
  return {
    a: (1 - share) * ofLower.a + share * ofUpper.a,
    b: (1 - share) * ofLower.b + share * ofUpper.b,
  };
}

function planeAtValue(hue40: number, value: number, halfChroma: number): Plane {
  const low = Math.floor(halfChroma);
  const share = halfChroma - low;
  const ofLow = planeAtChroma(hue40, value, low);
  if (share === 0) return ofLow;
  const ofHigh = planeAtChroma(hue40, value, low + 1);
  return {
    a: (1 - share) * ofLow.a + share * ofHigh.a,
    b: (1 - share) * ofLow.b + share * ofHigh.b,
  };
}

/** Between hues by angle, C*ab with it. */
function planeAtChroma(hue40: number, value: number, half: number): Plane {
  const low = Math.floor(hue40) % 40;
  const share = hue40 - Math.floor(hue40);
  const [C1, h1] = tabled(low, value, half);
  if (share === 0) return cartesian(C1, h1);
  const [C2, h2] = tabled((low + 1) % 40, value, half);
  const apart = (((h2 - h1) % 360) + 360) % 360;
  if (apart === 0 || apart >= 180) return cartesian(C1, h1);
  return cartesian((1 - share) * C1 + share * C2, h1 + share * apart);
}

function tabled(hue: number, value: number, half: number): readonly [C: number, h: number] {
  if (half === 0) return [0, 0];
  const { C, h } = known();
  return half <= TABLE_CHROMAS
    ? [C(hue, value, half), h(hue, value, half)]
    : [(C(hue, value, TABLE_CHROMAS) * half) / TABLE_CHROMAS, h(hue, value, TABLE_CHROMAS)];
}

function cartesian(C: number, degrees: number): Plane {
  const angle = (degrees * Math.PI) / 180;
  return { a: C * Math.cos(angle), b: C * Math.sin(angle) };
}

function polar(a: number, b: number): readonly [C: number, degrees: number] {
  return [Math.hypot(a, b), ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360];
}

/** An angle between -180 and 180. */
function turn(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}
