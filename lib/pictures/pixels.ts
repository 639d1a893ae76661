/** Pixels of a picture of few colours, row by row: the place of each one's colour among them. */
export interface Pixels {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly indexes: Uint16Array;
  /** 0xRRGGBB, each with its place, in the order of these. */
  readonly colours: Map<number, number>;
}

/** A box in whole pixels. */
export interface PixelBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What is drawn over pixels: RGBA, 8 bits each, its corner at a pixel that may lie outside. */
export interface Stamp {
  readonly left: number;
  readonly top: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8Array;
}

/** A picture all black. */
export function emptyPixels(widthPx: number, heightPx: number): Pixels {
  return {
    widthPx,
    heightPx,
    indexes: new Uint16Array(widthPx * heightPx),
    colours: new Map([[0, 0]]),
  };
}

export function fillBox(
  { widthPx, heightPx, indexes, colours }: Pixels,
  box: PixelBox,
  colour: number,
): void {
  const index = indexOf(colours, colour);
  const [left, right] = [Math.max(0, box.left), Math.min(widthPx, box.right)];
  for (let y = Math.max(0, box.top); y < Math.min(heightPx, box.bottom); y++)
    indexes.fill(index, y * widthPx + left, y * widthPx + right);
}

/** A stamp laid over pixels, each channel by its alpha. */
export function layOver(
  { widthPx, heightPx, indexes, colours }: Pixels,
  { rgba, left, top, ...stamp }: Stamp,
): void {
  const known = [...colours.keys()];
  for (let y = Math.max(0, -top); y < Math.min(stamp.heightPx, heightPx - top); y++)
    for (let x = Math.max(0, -left); x < Math.min(stamp.widthPx, widthPx - left); x++) {
      const from = 4 * (y * stamp.widthPx + x);
      const alpha = rgba[from + 3] ?? 0;
      if (alpha === 0) continue;
      const to = (top + y) * widthPx + left + x;
      const below = known[indexes[to] ?? 0] ?? 0;
      const colour =
        (mixed(rgba[from] ?? 0, below >> 16, alpha) << 16) |
        (mixed(rgba[from + 1] ?? 0, (below >> 8) & 255, alpha) << 8) |
        mixed(rgba[from + 2] ?? 0, below & 255, alpha);
      indexes[to] = indexOf(colours, colour);
    }
}

function mixed(own: number, below: number, alpha: number): number {
  return Math.round((own * alpha + below * (255 - alpha)) / 255);
}

function indexOf(colours: Map<number, number>, colour: number): number {
  const index = colours.get(colour) ?? colours.size;
  if (index === colours.size) colours.set(colour, index);
  return index;
}

/** The three channels of each pixel, 8 bits each. */
export function channelsOf({ indexes, colours }: Pixels): Uint8Array {
  const known = Uint32Array.from(colours.keys());
  const out = new Uint8Array(3 * indexes.length);
  for (let i = 0; i < indexes.length; i++) {
    const colour = known[indexes[i] ?? 0] ?? 0;
    out[3 * i] = colour >> 16;
    out[3 * i + 1] = (colour >> 8) & 255;
    out[3 * i + 2] = colour & 255;
  }
  return out;
}
