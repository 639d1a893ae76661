import { p3LightToXyz, type Light } from "../colorimetry/display-p3.ts";
import type { Xyz } from "../colorimetry/viewing.ts";
import { screenLight } from "../patches/colour-correction.ts";
import type { LightFall } from "../patches/even-light.ts";
import { cornersOf } from "../records/known-colours.ts";
import type { Box } from "../records/schema/photograph.ts";
import { eachPixel } from "./photograph-correction.ts";
import { seenLight } from "./seen-light.ts";
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
  return eachPixel(own, (light, x, y): Light => {
    const share = lightness(light) / fall(left + x, top + y) / Math.max(mean, 1e-6);
    return [wanted[0] * share, wanted[1] * share, wanted[2] * share];
  });
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
