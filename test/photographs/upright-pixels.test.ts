import sharp, { type Sharp } from "sharp";
import { expect, test } from "vitest";
import { CHANNELS, uprightPixels } from "../../lib/photographs/upright-pixels.ts";

const [WIDTH, HEIGHT] = [8, 6];

/** Upright: a strong red that is lighter to the right and greener below, so that no turn of it looks like another. */
const UPRIGHT = new Uint8Array(WIDTH * HEIGHT * CHANNELS).map((_, i) => {
  const [x, y] = [Math.floor(i / CHANNELS) % WIDTH, Math.floor(i / CHANNELS / WIDTH)];
  return [150 + 12 * x, 40 + 15 * y, 30][i % CHANNELS] ?? 0;
});

/**
 * Where the pixel (x, y) of the upright picture stands in the stored one, by what the standard says
 * that the stored 0th row and 0th column are of the scene (1: top, left; ... 8: left, bottom).
 * @source Exif 2.32 (CIPA DC-008-2019), tag 0112, Orientation.
 */
const STORED: readonly ((x: number, y: number) => readonly [x: number, y: number])[] = [
  (x, y) => [x, y],
  (x, y) => [WIDTH - 1 - x, y],
  (x, y) => [WIDTH - 1 - x, HEIGHT - 1 - y],
  (x, y) => [x, HEIGHT - 1 - y],
  (x, y) => [y, x],
  (x, y) => [y, WIDTH - 1 - x],
  (x, y) => [HEIGHT - 1 - y, WIDTH - 1 - x],
  (x, y) => [HEIGHT - 1 - y, x],
];

function stored(orientation: number): Sharp {
  const at = STORED[orientation - 1] ?? ((x, y) => [x, y]);
  const [width, height] = orientation < 5 ? [WIDTH, HEIGHT] : [HEIGHT, WIDTH];
  const pixels = new Uint8Array(UPRIGHT.length);
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++) {
      const [sx, sy] = at(x, y);
      for (let c = 0; c < CHANNELS; c++)
        pixels[(sy * width + sx) * CHANNELS + c] = UPRIGHT[(y * WIDTH + x) * CHANNELS + c] ?? 0;
    }
  return sharp(pixels, { raw: { width, height, channels: CHANNELS } });
}

const PROFILES: readonly (readonly [name: string, profiled: (picture: Sharp) => Sharp])[] = [
  ["the profile of sRGB", (picture) => picture.withIccProfile("srgb", { attach: true })],
  ["the profile of Display P3", (picture) => picture.withIccProfile("p3", { attach: true })],
];

test.each(
  PROFILES.flatMap(([name, profiled]) => STORED.map((_, i) => [i + 1, name, profiled] as const)),
)(
  "of orientation %i and %s: upright, in the colours of one that was never turned",
  async (orientation, _, profiled) => {
    const written = (picture: Sharp, held: number): Promise<Buffer> =>
      profiled(picture.withMetadata({ orientation: held }))
        .png()
        .toBuffer();
    const found = await uprightPixels(await written(stored(orientation), orientation), "paint.png");
    const upright = await uprightPixels(await written(stored(1), 1), "paint.png");
    expect("fault" in upright).toBe(false);
    expect(found).toEqual(upright);
  },
);

/** Other forms of the same picture. */
const FORMS: readonly (readonly [name: string, formed: (picture: Sharp) => Sharp])[] = [
  ["16 bits a channel", (picture) => picture.toColourspace("rgb16")],
  ["an alpha that hides nothing", (picture) => picture.ensureAlpha()],
];

// What is stored with a profile means the same however it is stored; 8 bits may round 1 of 255 away when written and when read.
test.each(
  PROFILES.flatMap(([profile, profiled]) =>
    FORMS.flatMap(([form, formed]) =>
      [1, 6].map((held) => [profile, form, held, profiled, formed] as const),
    ),
  ),
)("%s and %s, held as %i: the colours of 8 bits alone", async (_, __, held, profiled, formed) => {
  const file = async (picture: Sharp): Promise<Buffer> =>
    profiled(picture.withMetadata({ orientation: held }))
      .png()
      .toBuffer();
  const [found, plain] = await Promise.all(
    [await file(formed(stored(held))), await file(stored(held))].map((bytes) =>
      uprightPixels(bytes, "paint.png"),
    ),
  );
  if (found === undefined || plain === undefined || "fault" in found || "fault" in plain)
    throw new Error("Unexpected picture that is none");
  expect([found.widthPx, found.heightPx]).toEqual([WIDTH, HEIGHT]);
  const apart = found.pixels.map((value, i) => Math.abs(value - (plain.pixels[i] ?? NaN)));
  expect(Math.max(...apart)).toBeLessThanOrEqual(2 * 257);
});
