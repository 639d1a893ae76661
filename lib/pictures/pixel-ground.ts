import type { PixelBox } from "./picture-layers.ts";
import type { Stamp } from "./stamps.ts";

/** Opaque pixels in sRGB, row by row, that others are laid over. */
export interface PixelGround {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Three channels of 8 bits. */
  readonly rgb: Buffer;
}

/** A ground in black. */
export function pixelGround(widthPx: number, heightPx: number): PixelGround {
  return { widthPx, heightPx, rgb: Buffer.alloc(3 * widthPx * heightPx) };
}

/** Fill a box, as far as it lies on the ground. @param colour `#rrggbb` */
export function fillBox(
  { widthPx, heightPx, rgb }: PixelGround,
  box: PixelBox,
  colour: string,
): void {
  const [left, right] = [Math.max(box.left, 0), Math.min(box.right, widthPx)];
  if (!(left < right)) return;
  const row = Buffer.alloc(3 * (right - left), Buffer.from(colour.slice(1), "hex"));
  for (let y = Math.max(box.top, 0); y < Math.min(box.bottom, heightPx); y++)
    row.copy(rgb, 3 * (y * widthPx + left));
}

const OPAQUE = 255;

/**
 * Lay a stamp over the ground, as far as it lies on it. libvips, which would go through every pixel of the picture
 * for each stamp, comes to the same, bit by bit.
 */
export function layStamp({ widthPx, heightPx, rgb }: PixelGround, stamp: Stamp): void {
  const [left, right] = [Math.max(stamp.left, 0), Math.min(stamp.left + stamp.widthPx, widthPx)];
  const [top, bottom] = [Math.max(stamp.top, 0), Math.min(stamp.top + stamp.heightPx, heightPx)];
  for (let y = top; y < bottom; y++) {
    let from = 4 * ((y - stamp.top) * stamp.widthPx + left - stamp.left);
    for (let to = 3 * (y * widthPx + left); to < 3 * (y * widthPx + right); to += 3, from += 4) {
      const alpha = stamp.rgba[from + 3] ?? 0;
      if (alpha === 0) continue;
      for (let channel = 0; channel < 3; channel++) {
        const over = stamp.rgba[from + channel] ?? 0;
        rgb[to + channel] = alpha === OPAQUE ? over : laidOver(over, rgb[to + channel] ?? 0, alpha);
      }
    }
  }
}

/**
 * A channel of a pixel laid over that of an opaque one, co = cs αs + cb (1 - αs), in numbers of 32 bits, its rest cut
 * off, as libvips has it.
 * @param over cs, 0 to 255 @param under cb, 0 to 255 @param alpha αs, 0 to 255
 * @source W3C, Compositing and Blending Level 1, 5.1, Simple alpha compositing
 */
export function laidOver(over: number, under: number, alpha: number): number {
  const { fround } = Math;
  const share = fround(alpha / OPAQUE);
  const rest = fround(1 - share);
  const inked = fround(fround(over / OPAQUE) * share);
  const mixed = fround(inked + fround(rest * fround(under / OPAQUE)));
  return Math.min(OPAQUE, Math.floor(fround(fround(mixed / fround(share + rest)) * OPAQUE)));
}
