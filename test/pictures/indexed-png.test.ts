import sharp from "sharp";
import { expect, test } from "vitest";
import { drawnPicture } from "../../lib/pictures/drawn-picture.ts";
import { indexedPng } from "../../lib/pictures/indexed-png.ts";
import { channelsOf, emptyPixels, fillBox, layOver } from "../../lib/pictures/pixels.ts";
import type { BoxMark } from "../../lib/print/mark.ts";

const RED = 0xc01020;

test("another reader finds the very pixels: boxes cut off at the edges, a stamp by its alpha", async () => {
  const pixels = emptyPixels(7, 5);
  fillBox(pixels, { left: 0, top: 0, right: 7, bottom: 5 }, 0x808080);
  fillBox(pixels, { left: -3, top: 2, right: 2, bottom: 99 }, RED);
  const rgba = Uint8Array.from([0, 0, 0, 255, 255, 255, 255, 0, 0, 0, 0, 51]);
  layOver(pixels, { left: 5, top: 1, widthPx: 3, heightPx: 1, rgba });
  layOver(pixels, { left: 2, top: -1, widthPx: 1, heightPx: 3, rgba });
  const { data, info } = await sharp(await indexedPng(pixels))
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect([info.width, info.height, info.channels]).toEqual([7, 5, 3]);
  const at = (x: number, y: number): number => data.readUIntBE(3 * (7 * y + x), 3);
  expect(at(0, 0)).toBe(0x808080);
  expect([at(1, 2), at(1, 4), at(2, 4), at(0, 1)]).toEqual([RED, RED, 0x808080, 0x808080]);
  // Black at all, at none, and at a fifth: 128 less a fifth of itself is 102.
  expect([at(5, 1), at(6, 1), at(2, 0), at(2, 1)]).toEqual([0, 0x808080, 0x808080, 0x666666]);
  expect(data).toEqual(Buffer.from(channelsOf(pixels)));
});

test("of more colours than indexes go to, each swatch is still the very sRGB of its paint", async () => {
  const boxes = Array.from({ length: 300 }, (_, i): BoxMark => {
    const srgb = `#${(i * 7919 + 65_793).toString(16).padStart(6, "0")}`;
    return { kind: "box", xMm: i / 10, yMm: 0, widthMm: 0.1, heightMm: 1, ink: { srgb } };
  });
  const bytes = await drawnPicture({ widthMm: 30, heightMm: 1, marks: boxes }, "png");
  const data = await sharp(bytes).raw().toBuffer();
  boxes.forEach((_, i) => expect(data.readUIntBE(3 * i, 3)).toBe(i * 7919 + 65_793));
});
