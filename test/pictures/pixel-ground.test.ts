import sharp from "sharp";
import { describe, expect, test } from "vitest";
import {
  fillBox,
  layStamp,
  pixelGround,
  type PixelGround,
} from "../../lib/pictures/pixel-ground.ts";

/** Each value a channel has, beside each other: the same steps of what is laid over, and of what lies below. */
const ALL = Array.from({ length: 256 }, (_, value) => value);

/** Columns of greys from black to white. */
function greys(): PixelGround {
  const ground = pixelGround(256, 256);
  for (const x of ALL)
    fillBox(
      ground,
      { left: x, top: 0, right: x + 1, bottom: 256 },
      `#${x.toString(16).padStart(2, "0").repeat(3)}`,
    );
  return ground;
}

/** What libvips makes of the same. */
async function composited(
  { widthPx, heightPx, rgb }: PixelGround,
  { rgba, left, top, ...size }: Parameters<typeof layStamp>[1],
): Promise<Buffer> {
  return sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .composite([
      {
        input: rgba,
        raw: { width: size.widthPx, height: size.heightPx, channels: 4 },
        left,
        top,
      },
    ])
    .removeAlpha()
    .raw()
    .toBuffer();
}

describe("a stamp on the ground, against libvips", () => {
  test.each([1, 2, 5, 50, 85, 127, 128, 129, 170, 200, 250, 253, 254])(
    "of each grey on each grey, its alpha %i of 255",
    async (alpha) => {
      const rgba = Buffer.from(ALL.flatMap((y) => ALL.flatMap(() => [y, y, y, alpha])));
      const stamp = { rgba, widthPx: 256, heightPx: 256, left: 0, top: 0 };
      const ground = greys();
      const expected = await composited(ground, stamp);
      layStamp(ground, stamp);
      expect(ground.rgb.equals(expected)).toBe(true);
    },
  );

  test.each([
    [0, 0],
    [-7, 100],
    [100, -5],
    [240, 250],
  ])(
    "of every alpha in three channels, cut off where it reaches beyond: at %i, %i",
    async (left, top) => {
      const rgba = Buffer.from(
        ALL.flatMap((alpha) => [(alpha * 7) % 256, 255 - alpha, (alpha * 31) % 256, alpha]),
      );
      const stamp = { rgba, widthPx: 32, heightPx: 8, left, top };
      const ground = greys();
      const expected = await composited(ground, stamp);
      layStamp(ground, stamp);
      expect(ground.rgb.equals(expected)).toBe(true);
    },
  );
});

test("a box is filled as far as it lies on the ground, and one beside it not at all", () => {
  const ground = pixelGround(3, 2);
  fillBox(ground, { left: 1, top: -1, right: 9, bottom: 1 }, "#c01020");
  fillBox(ground, { left: 3, top: 0, right: 5, bottom: 2 }, "#ffffff");
  fillBox(ground, { left: -4, top: 0, right: 0, bottom: 2 }, "#ffffff");
  expect(ground.rgb.toString("hex")).toBe(`000000${"c01020".repeat(2)}${"000000".repeat(3)}`);
});
