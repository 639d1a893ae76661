/**
 * Invented photographs: flat areas of known colours with the texture of paint, lit unevenly, seen by
 * an invented camera with a cast, a tone curve and noise. All from a seed, in plain arithmetic.
 */
import { at } from "../../lib/quantities/at.ts";

/** Light, red green blue in the primaries of sRGB, 1 of the perfect diffuser. */
export type Rgb = readonly [number, number, number];

/** A part of the scene, in pixels; later parts lie over earlier ones. */
export interface Part {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly light: Rgb;
  /** How its surface is: paper is all but even, a drawn film has streaks along its way, a stroke has ridges. */
  readonly texture?: "paper" | "film" | "stroke";
  /** Its right-hand end runs out in a ragged edge, so many pixels deep. */
  readonly ragged?: number;
}

export interface Camera {
  readonly seed: number;
  /** Rows: what each channel of the camera takes of red, green and blue light. */
  readonly cast?: readonly [Rgb, Rgb, Rgb];
  /** Exponent that its tone curve puts on light, beside the curve of sRGB. */
  readonly tone?: number;
  /** Light at the right-hand edge and at the lower edge, as shares of that at the left and upper. */
  readonly light?: readonly [right: number, bottom: number];
  /** Standard deviation of noise, in the stored channel 0 to 1. */
  readonly noise?: number;
}

/** mulberry32: numbers from 0 to 1, the same from one seed. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** 8-bit sRGB pixels of a scene as the camera stores it, row by row. */
export function photographed(
  {
    width,
    height,
    parts,
  }: { readonly width: number; readonly height: number; readonly parts: readonly Part[] },
  { seed, cast = PLAIN, tone = 1, light = [1, 1], noise = 0 }: Camera,
): Uint8Array {
  const random = seeded(seed);
  const pixels = new Uint8Array(width * height * 3);
  const grain = smoothNoise(random, 64);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const part = partAt(parts, x, y, grain);
      const fall = (1 + (light[0] - 1) * (x / width)) * (1 + (light[1] - 1) * (y / height));
      const shade = part === undefined ? 1 : surface(part, x, y, grain);
      const gloss = glossOf(part, x, y, grain);
      for (let channel = 0; channel < 3; channel++) {
        const row = at(cast, channel);
        const seen = row.reduce((sum, share, j) => sum + share * at(part?.light ?? GREY, j), 0);
        const stored = srgbCurve(Math.max(0, (seen * shade + gloss) * fall) ** tone);
        const value = stored + noise * normal(random);
        pixels[(y * width + x) * 3 + channel] = Math.round(255 * Math.min(Math.max(value, 0), 1));
      }
    }
  return pixels;
}

const PLAIN = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const;
const GREY: Rgb = [0.3, 0.3, 0.3];

function partAt(parts: readonly Part[], x: number, y: number, noise: Noise): Part | undefined {
  return parts.findLast(({ left, top, right, bottom, ragged: depth = 0 }) => {
    const ended =
      depth === 0
        ? right
        : right -
          depth *
            (0.5 + 0.3 * noise(7, y / 26) + 0.14 * noise(19, y / 7) + 0.06 * noise(31, y / 2));
    return x >= left && x < ended && y >= top && y < bottom;
  });
}

type Noise = (x: number, y: number) => number;

/** How much light a spot of a surface sends on, about 1. */
function surface({ texture = "paper" }: Part, x: number, y: number, noise: Noise): number {
  switch (texture) {
    case "paper":
      return 1 + 0.012 * noise(x / 3, y / 3);
    case "film":
      return (
        1 +
        0.05 * noise(x / 240, y / 4) +
        0.04 * noise(x / 400, y / 17) +
        0.02 * noise(x / 6, y / 6)
      );
    case "stroke":
      return (
        1 +
        0.16 * noise(x / 170, y / 6 + Math.sin(x / 180)) +
        0.1 * noise(x / 300, y / 15) +
        0.03 * noise(x / 5, y / 5)
      );
  }
}

/** Light that a wet-looking surface throws back as it comes: more on the ridges of a stroke. */
function glossOf(part: Part | undefined, x: number, y: number, noise: Noise): number {
  if (part?.texture === "film") return 0.004;
  if (part?.texture !== "stroke") return 0;
  return 0.004 + 0.03 * Math.max(0, noise(x / 260, y / 9 + Math.sin(x / 180))) ** 2;
}

/** Value noise from -1 to 1, smooth between the corners of a grid that repeats. */
function smoothNoise(random: () => number, size: number): Noise {
  const corners = Array.from({ length: size * size }, () => 2 * random() - 1);
  const corner = (i: number, j: number): number =>
    at(corners, (((j % size) + size) % size) * size + (((i % size) + size) % size));
  const eased = (t: number): number => t * t * (3 - 2 * t);
  return (x, y) => {
    const [i, j] = [Math.floor(x), Math.floor(y)];
    const [u, v] = [eased(x - i), eased(y - j)];
    return (
      (corner(i, j) * (1 - u) + corner(i + 1, j) * u) * (1 - v) +
      (corner(i, j + 1) * (1 - u) + corner(i + 1, j + 1) * u) * v
    );
  };
}

/** The transfer curve of IEC 61966-2-1, written down here once more: what is tested has its own. */
function srgbCurve(light: number): number {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}

function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
