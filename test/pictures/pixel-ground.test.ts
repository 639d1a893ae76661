import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { fillBox, layStamp, pixelGround } from "../../lib/pictures/pixel-ground.ts";
import { chanceOf } from "../fuzz/chance.ts";

describe("a stamp laid over a ground", () => {
  /** Any colours and alphas, 0 and 255 often among them, as at the edges and inside of letters. */
  const chance = chanceOf(811);
  const bytes = (count: number): Buffer =>
    Buffer.from(
      Array.from({ length: count }, () =>
        Math.max(0, Math.min(255, Math.round(chance() * 355 - 50))),
      ),
    );

  test.each([
    ["inside", 3, 5],
    ["over the upper left corner", -7, -9],
    ["over the lower right corner", 40, 33],
  ])("comes out as libvips lays it: %s", async (_, left, top) => {
    const ground = pixelGround(64, 48);
    bytes(ground.rgb.length).copy(ground.rgb);
    const raw = { width: 64, height: 48, channels: 3 } as const;
    const before = Buffer.from(ground.rgb);
    const stamp = { left, top, widthPx: 31, heightPx: 23, rgba: bytes(31 * 23 * 4) };
    layStamp(ground, stamp);
    const expected = await sharp(before, { raw })
      .composite([{ input: stamp.rgba, raw: { width: 31, height: 23, channels: 4 }, left, top }])
      .removeAlpha()
      .raw()
      .toBuffer();
    expect(ground.rgb.equals(expected)).toBe(true);
    expect(ground.rgb.equals(before)).toBe(false);
  });
});

test("a box is filled as far as it lies on the ground", () => {
  const ground = pixelGround(3, 2);
  fillBox(ground, { left: -4, top: 1, right: 2, bottom: 9 }, "#0a0b0c");
  fillBox(ground, { left: 3, top: 0, right: 9, bottom: 2 }, "#ffffff");
  const [black, filled] = [
    [0, 0, 0],
    [10, 11, 12],
  ];
  expect([...ground.rgb]).toEqual([black, black, black, filled, filled, black].flat());
});
