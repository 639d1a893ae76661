import { p3LightToXyz, type Light } from "../colorimetry/display-p3.ts";
import type { Xyz } from "../colorimetry/viewing.ts";
import { screenLight } from "../patches/colour-correction.ts";
import type { LightFall } from "../patches/even-light.ts";
import { cornersOf } from "../records/known-colours.ts";
import type { Box } from "../records/schema/photograph.ts";
import { eachPixel, fallShares } from "./each-pixel.ts";
import { lightOfStored, seenLight } from "./seen-light.ts";
import { CHANNELS, type UprightPixels } from "./upright-pixels.ts";

/**
 * The paint of a photograph with its texture as photographed and its colour as read: each pixel has
 * the colour that was read, lighter and darker as the film is there, so that the mean of them all is
 * the reading.
 * @param paint where it lies, in pixels of the picture as it came.
 * @param read under D65, 2 degree.
 */
export function readColourPicture(
  picture: UprightPixels,
  paint: Box,
  read: Xyz,
  fall: LightFall,
): UprightPixels {
  const own = cropped(picture, paint);
  const wanted = screenLight(read);
  const [left, top, right, bottom] = paint;
  const middle = fall((left + right) / 2, (top + bottom) / 2);
  const mean = lightness(seenLight(picture, cornersOf(paint), 1).light) / middle;
  const shares = fallShares(own, fall, [left, top], (even) => 1 / even);
  const [red, green, blue] = [0, 1, 2].map((channel) =>
    lightOfStored().map((light) => lightness(lightIn(channel, light)) / Math.max(mean, 1e-6)),
  ) as [Float32Array, Float32Array, Float32Array];
  const changed = new Float64Array(3);
  return eachPixel(own, shares, (r, g, b, even) => {
    const share = ((red[r] ?? 0) + (green[g] ?? 0) + (blue[b] ?? 0)) * even;
    for (let i = 0; i < 3; i++) changed[i] = (wanted[i] ?? 0) * share;
    return changed;
  });
}

/** Light in one channel alone. */
function lightIn(channel: number, light: number): Light {
  return [channel === 0 ? light : 0, channel === 1 ? light : 0, channel === 2 ? light : 0];
}

function lightness(light: Light): number {
  return p3LightToXyz(light)[1];
}

function cropped(picture: UprightPixels, [left, top, right, bottom]: Box): UprightPixels {
  const { pixels, widthPx, heightPx, cameWidthPx } = picture;
  const scale = widthPx / cameWidthPx;
  const [x, y] = [Math.floor(left * scale), Math.floor(top * scale)];
  const width = Math.max(1, Math.min(Math.floor(right * scale), widthPx) - x);
  const height = Math.max(1, Math.min(Math.floor(bottom * scale), heightPx) - y);
  const out = new Uint16Array(width * height * CHANNELS);
  for (let row = 0; row < height; row++) {
    const from = ((y + row) * widthPx + x) * CHANNELS;
    out.set(pixels.subarray(from, from + width * CHANNELS), row * width * CHANNELS);
  }
  return {
    pixels: out,
    widthPx: width,
    heightPx: height,
    cameWidthPx: right - left,
    cameHeightPx: bottom - top,
  };
}
