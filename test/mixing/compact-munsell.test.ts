import { labToMhvc, mhvcToLab } from "munsell";
import { describe, expect, test } from "vitest";
import { labOfMunsell } from "../../lib/colorimetry/munsell-inversion.ts";
import * as compact from "../../lib/mixing/notation/compact-munsell.ts";
import { renotationTable } from "../../lib/mixing/notation/renotation-table.ts";

compact.useRenotation(
  renotationTable((hueNumber, value, chroma) => {
    const { a, b } = labOfMunsell({ hueNumber, value, chroma });
    return { C: Math.hypot(a, b), h: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360 };
  }),
);

/** Of L*, a*, b*: the table's steps, C*ab .005 and hab .01 degree. */
const TABLE_TO = 0.02;

describe("the browser's Munsell is the package's", () => {
  const colours = Array.from({ length: 200 }, (_, i): [number, number, number] => [
    (i * 7.37) % 100,
    0.3 + ((i * 0.613) % 8.6),
    0.2 + ((i * 1.193) % 14),
  ]);

  test.each(colours)("at hue %f, value %f, chroma %f", (hue, value, chroma) => {
    const lab = mhvcToLab(hue, value, chroma);
    const ours = compact.mhvcToLab(hue, value, chroma);
    for (const [i, own] of ours.entries())
      expect(Math.abs(own - (lab[i] ?? NaN))).toBeLessThan(TABLE_TO);
    const [h, v, c] = labToMhvc(...lab);
    const [ownH, ownV, ownC] = compact.labToMhvc(...lab);
    expect(Math.abs(((ownH - h + 150) % 100) - 50) * Math.min(c, 1)).toBeLessThan(0.02);
    expect(ownV).toBeCloseTo(v, 2);
    expect(ownC).toBeCloseTo(c, 1);
  });
});
