import { converter } from "culori";
import { describe, expect, test } from "vitest";
import {
  channelOf,
  lightOf,
  p3LightToSrgbLight,
  p3LightToXyz,
  xyzToP3Light,
  type Light,
} from "../../lib/colorimetry/display-p3.ts";

/** Held against culori, which has matrices of its own. */
const COLOURS: readonly Light[] = [
  [1, 1, 1],
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [0.2, 0.5, 0.7],
  [0.9, 0.03, 0.4],
];
const stored = ([r, g, b]: Light) =>
  ({ mode: "p3", r: channelOf(r), g: channelOf(g), b: channelOf(b) }) as const;

describe("light of Display P3", () => {
  test.each(COLOURS)("%f %f %f is the same XYZ and the same sRGB to culori", (...light) => {
    const xyz = converter("xyz65")(stored(light));
    const own = p3LightToXyz(light);
    expect(own[0]).toBeCloseTo(xyz.x, 4);
    expect(own[1]).toBeCloseTo(xyz.y, 4);
    expect(own[2]).toBeCloseTo(xyz.z, 4);
    const rgb = converter("lrgb")(stored(light));
    const srgb = p3LightToSrgbLight(light);
    expect(srgb[0]).toBeCloseTo(rgb.r, 4);
    expect(srgb[1]).toBeCloseTo(rgb.g, 4);
    expect(srgb[2]).toBeCloseTo(rgb.b, 4);
    xyzToP3Light(own).forEach((channel, i) => expect(channel).toBeCloseTo(light[i] ?? NaN, 9));
  });

  test("the transfer curve goes there and back, on both sides of its join and of nought", () => {
    for (const channel of [-0.5, -0.01, 0, 0.04, 0.0404, 0.0406, 0.5, 1, 1.2])
      expect(channelOf(lightOf(channel))).toBeCloseTo(channel, 9);
    // IEC 61966-2-1: half of white's light is stored as 0.735.
    expect(channelOf(0.5)).toBeCloseTo(0.7354, 4);
  });
});
