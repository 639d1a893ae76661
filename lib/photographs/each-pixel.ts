import type { LightFall } from "../patches/even-light.ts";
import type { Point } from "../patches/quadrilateral.ts";
import { storedChannel } from "./seen-light.ts";
import { CHANNELS, type UprightPixels } from "./upright-pixels.ts";

/** What each pixel is taken times: the product of one number of its column and one of its row. */
export interface PixelShares {
  readonly columns: Float64Array;
  readonly rows: Float64Array;
}

/**
 * How light falls over a picture, in pixels: it falls as a power of the place, so that the share of
 * a pixel is the product of its column's and its row's.
 * @param from where the picture's corner lies, in pixels of what the fall was told of.
 * @param of what is wanted of a share; of a product the product.
 */
export function fallShares(
  { widthPx, heightPx, cameWidthPx }: UprightPixels,
  fall: LightFall,
  [left, top]: Point,
  of: (share: number) => number,
): PixelShares {
  const scale = cameWidthPx / widthPx;
  const corner = fall(left, top);
  return {
    columns: Float64Array.from({ length: widthPx }, (_, i) => of(fall(left + i * scale, top))),
    rows: Float64Array.from({ length: heightPx }, (_, i) =>
      of(fall(left, top + i * scale) / corner),
    ),
  };
}

/** A picture with another light in each pixel. @param changed by its stored channels and its share; read before the next is asked for. */
export function eachPixel(
  picture: UprightPixels,
  { columns, rows }: PixelShares,
  changed: (red: number, green: number, blue: number, share: number) => Float64Array,
): UprightPixels {
  const { pixels, widthPx, heightPx } = picture;
  const out = new Uint16Array(pixels.length);
  for (let row = 0, i = 0; row < heightPx; row++)
    for (let column = 0; column < widthPx; column++, i += CHANNELS) {
      const light = changed(
        pixels[i] ?? 0,
        pixels[i + 1] ?? 0,
        pixels[i + 2] ?? 0,
        (columns[column] ?? 0) * (rows[row] ?? 0),
      );
      for (let channel = 0; channel < CHANNELS; channel++)
        out[i + channel] = storedChannel(light[channel] ?? 0);
    }
  return { ...picture, pixels: out };
}
