import { channelOf, lightOf, type Light } from "../colorimetry/display-p3.ts";
import { projected, type Quadrilateral } from "../patches/quadrilateral.ts";
import { at } from "../quantities/at.ts";
import { once } from "./once.ts";
import { CHANNELS, type UprightPixels } from "./upright-pixels.ts";

const FULL = 65_535;

/** Light of each stored channel, 16 bits; worked out when the first photograph is read. */
export const lightOfStored = once(() =>
  Float32Array.from({ length: FULL + 1 }, (_, stored) => lightOf(stored / FULL)),
);

const STEPS = 65_536;

/** Stored channels by the root of their light: a step is nowhere more than two of the 65,536. */
const stored = once(() =>
  Uint16Array.from({ length: STEPS + 1 }, (_, i) => Math.round(FULL * channelOf((i / STEPS) ** 2))),
);

/** A channel as 16 bits store it, of light from 0 to 1; what lies outside is cut off. */
export function storedChannel(light: number): number {
  return stored()[Math.round(STEPS * Math.sqrt(Math.min(Math.max(light, 0), 1)))] ?? 0;
}

/** What a part of a picture sends on. */
export interface SeenLight {
  readonly light: Light;
  /** Whether a channel stood at its end over some of it: then there was more light than was written down. */
  readonly isClipped: boolean;
}

/** Looked at: so many points a side, of the middle of a part, so that neither its edge nor a slip of its corners counts. */
const POINTS = 32;
const MIDDLE = 0.6;
const CLIPPED_FROM = 0.995 * FULL;
const CLIPPED_SHARE = 0.02;

/**
 * Mean light over the middle of a part of a picture.
 * @param corners in pixels of the picture as it came, upright.
 */
export function seenLight(
  picture: UprightPixels,
  corners: Quadrilateral,
  middle = MIDDLE,
): SeenLight {
  const { pixels, widthPx, heightPx, cameWidthPx } = picture;
  const scale = widthPx / cameWidthPx;
  const place = projected(corners);
  const sum: [number, number, number] = [0, 0, 0];
  let clipped = 0;
  for (let i = 0; i < POINTS * POINTS; i++) {
    const [u, v] = [i % POINTS, Math.floor(i / POINTS)].map(
      (step) => 0.5 + middle * ((step + 0.5) / POINTS - 0.5),
    );
    const [x, y] = place(u ?? 0.5, v ?? 0.5);
    const column = Math.min(Math.max(Math.floor(x * scale), 0), widthPx - 1);
    const row = Math.min(Math.max(Math.floor(y * scale), 0), heightPx - 1);
    const from = (row * widthPx + column) * CHANNELS;
    let isEnd = false;
    for (let channel = 0; channel < CHANNELS; channel++) {
      const stored = at(pixels, from + channel);
      sum[channel] = at(sum, channel) + (lightOfStored()[stored] ?? 0);
      if (stored >= CLIPPED_FROM) isEnd = true;
    }
    if (isEnd) clipped++;
  }
  const count = POINTS * POINTS;
  return {
    light: [sum[0] / count, sum[1] / count, sum[2] / count],
    isClipped: clipped > CLIPPED_SHARE * count,
  };
}
