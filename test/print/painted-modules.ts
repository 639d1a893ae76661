import { QR_QUIET_MODULES } from "../../lib/print/qr-figure.ts";

/** Rectangles of a path, painted at some pixels a module with the quiet zone around: what a camera would see. */
export function painted(
  d: string,
  size: number,
  pixels: number,
): { data: Uint8ClampedArray; side: number } {
  const side = (size + 2 * QR_QUIET_MODULES) * pixels;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, left, top, right, bottom] of d.matchAll(/M(\d+) (\d+)H(\d+)V(\d+)H\d+Z/g)) {
    for (
      let y = (Number(top) + QR_QUIET_MODULES) * pixels;
      y < (Number(bottom) + QR_QUIET_MODULES) * pixels;
      y++
    ) {
      for (
        let x = (Number(left) + QR_QUIET_MODULES) * pixels;
        x < (Number(right) + QR_QUIET_MODULES) * pixels;
        x++
      )
        data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { data, side };
}
