import sharp from "sharp";
import { expect, test } from "vitest";
import { drawnPicture } from "../../lib/pictures/drawn-picture.ts";
import type { BoxMark } from "../../lib/print/mark.ts";

const boxAt = (xMm: number, widthMm: number, srgb: string): BoxMark => ({
  kind: "box",
  xMm,
  yMm: -1,
  widthMm,
  heightMm: 3,
  ink: { srgb },
});

test("of many colours each swatch is the very sRGB of its paint", async () => {
  const boxes = Array.from({ length: 300 }, (_, i) =>
    boxAt(i / 10, 0.1, `#${(i * 7919 + 65_793).toString(16).padStart(6, "0")}`),
  );
  const bytes = await drawnPicture({
    face: { widthMm: 30, heightMm: 1, marks: boxes },
    type: "png",
  });
  const data = await sharp(bytes).raw().toBuffer();
  boxes.forEach((_, i) => expect(data.readUIntBE(3 * i, 3)).toBe(i * 7919 + 65_793));
});

test("a later box lies over an earlier one, and what reaches over the edge is cut off", async () => {
  const marks = [boxAt(0, 1, "#808080"), boxAt(-1, 1.2, "#c01020")];
  const bytes = await drawnPicture({ face: { widthMm: 1, heightMm: 1, marks }, type: "png" });
  const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
  expect([info.width, info.height, info.channels]).toEqual([10, 10, 3]);
  for (let x = 0; x < 10; x++) expect(data.readUIntBE(3 * x, 3)).toBe(x < 2 ? 0xc01020 : 0x808080);
});
