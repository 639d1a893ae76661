import sharp from "sharp";
import { describe, expect, test } from "vitest";
import {
  expectedAt,
  LARGEST_SCREEN_BYTES,
  leastBytes,
  pictureSizes,
} from "../../lib/photographs/picture-sizes.ts";
import { photographed } from "../support/painted-scene.ts";

const SIZE = { width: 900, height: 600 };

/** Grain that no format packs well: what a heavy photograph is. */
function grain(noise: number): Uint16Array {
  const pixels = photographed(
    {
      ...SIZE,
      parts: [
        { left: 60, top: 60, right: 840, bottom: 540, light: [0.3, 0.1, 0.05], texture: "stroke" },
      ],
    },
    { seed: 9, noise },
  );
  return Uint16Array.from(pixels, (stored) => stored * 257);
}

test("a heavy photograph comes in the best quality that is light enough, as by trying each", async () => {
  const { width: widthPx, height: heightPx } = SIZE;
  const pixels = grain(0.35);
  const { screen } = await pictureSizes({
    pixels,
    widthPx,
    heightPx,
    cameWidthPx: widthPx,
    cameHeightPx: heightPx,
  });
  const inSrgb = await sharp(pixels, { raw: { ...SIZE, channels: 3 } })
    .withIccProfile("srgb")
    .raw()
    .toBuffer();
  const qualities = [84, 72, 58, 44];
  for (const { type, widthPx: width, gamut, bytes } of screen) {
    expect(bytes.length, `${type} ${width}`).toBeLessThanOrEqual(LARGEST_SCREEN_BYTES);
    if (type !== "webp" || gamut !== "sRGB" || width !== 480) continue;
    const each = await Promise.all(
      qualities.map(async (quality) =>
        sharp(inSrgb, { raw: { ...SIZE, channels: 3 } })
          .resize({ width, height: 320, fit: "fill" })
          .withIccProfile("srgb")
          .webp({ quality, effort: 2 })
          .toBuffer(),
      ),
    );
    const best = each.find(({ length }) => length <= LARGEST_SCREEN_BYTES);
    expect(best?.length).toBe(bytes.length);
  }
  expect(new Set(screen.map(({ type }) => type))).toEqual(new Set(["avif", "webp", "jpeg"]));
});

describe("what is passed over unmade would have been too heavy", () => {
  const CASES = [
    ["avif", [70, 58, 46, 34]],
    ["webp", [84, 72, 58, 44]],
    ["jpeg", [82, 72, 60, 45]],
  ] as const;
  const EFFORTS = {
    avif: { effort: 0 },
    webp: { effort: 2 },
    jpeg: { mozjpeg: true, trellisQuantisation: false },
  };
  const pixels = grain(0.2);
  test.each(CASES)("%s: bytes never fall below what is expected at least", async (type, all) => {
    const made = async (width: number, value: number): Promise<number> => {
      const picture = sharp(pixels, { raw: { ...SIZE, channels: 3 } })
        .resize({ width })
        .withIccProfile("srgb");
      const options = { quality: value, ...EFFORTS[type] };
      return (await picture.toFormat(type, options).toBuffer()).length;
    };
    const [first, wider] = [await made(300, all[0]), await made(600, all[0])];
    const tried = { quality: 0, bytes: first, pixels: 300 * 200 };
    expect(wider).toBeGreaterThanOrEqual(expectedAt(tried, 600 * 400).bytes);
    for (const [quality, value] of all.entries())
      expect(await made(300, value), `${value}`).toBeGreaterThanOrEqual(leastBytes(tried, quality));
  });
});
