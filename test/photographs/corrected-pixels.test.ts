import { describe, expect, test } from "vitest";
import { channelOf, lightOf, type Light } from "../../lib/colorimetry/display-p3.ts";
import { correctedPixels } from "../../lib/photographs/photograph-correction.ts";
import { CORRECTION_FORMS, type ColourCorrection } from "../../lib/patches/colour-correction.ts";
import { seeded } from "../support/painted-scene.ts";

const FULL = 65_535;
/** Terms of Finlayson et al. (2015), equations 4 and 6, written out once more. */
const TERMS: Readonly<Record<ColourCorrection["form"], (light: Light) => number[]>> = {
  gains: ([r, g, b]) => [r, g, b],
  linear: ([r, g, b]) => [r, g, b],
  "root-polynomial 2": ([r, g, b]) => [r, g, b, (r * g) ** 0.5, (g * b) ** 0.5, (r * b) ** 0.5],
  "root-polynomial 3": ([r, g, b]) => [
    ...TERMS["root-polynomial 2"]([r, g, b]),
    (r * g ** 2) ** (1 / 3),
    (g * b ** 2) ** (1 / 3),
    (r * b ** 2) ** (1 / 3),
    (g * r ** 2) ** (1 / 3),
    (b * g ** 2) ** (1 / 3),
    (b * r ** 2) ** (1 / 3),
    (r * g * b) ** (1 / 3),
  ],
};

describe("each pixel comes out as the correction says of the light that would be there under even light", () => {
  test.each(CORRECTION_FORMS)("%s", (form) => {
    const random = seeded(17);
    const [widthPx, heightPx] = [9, 7];
    const pixels = Uint16Array.from({ length: widthPx * heightPx * 3 }, () =>
      Math.round(FULL * random()),
    );
    const matrix = TERMS[form]([1, 1, 1]).map((_, i): Light => {
      const own = (j: number): number => (i === j ? 0.6 : 0.05 * random());
      return [own(0), own(1), own(2)];
    });
    const tone = 1.15;
    const fall = (x: number, y: number): number => Math.exp(0.1 - 0.004 * x + 0.007 * y);
    // Pixels of the picture as it came are half as large.
    const picture = { pixels, widthPx, heightPx, cameWidthPx: 18, cameHeightPx: 14 };
    const out = correctedPixels(picture, { fall, correction: { form, tone, matrix } });
    for (let i = 0; i < widthPx * heightPx; i++) {
      const even = fall(2 * (i % widthPx), 2 * Math.floor(i / widthPx));
      const seen = [0, 1, 2].map(
        (j) => (lightOf((pixels[3 * i + j] ?? NaN) / FULL) / even) ** tone,
      );
      const terms = TERMS[form]([seen[0] ?? NaN, seen[1] ?? NaN, seen[2] ?? NaN]);
      for (const j of [0, 1, 2] as const) {
        const light = terms.reduce((sum, term, k) => sum + term * (matrix[k]?.[j] ?? NaN), 0);
        const stored = FULL * channelOf(Math.min(Math.max(light, 0), 1));
        expect(Math.abs((out.pixels[3 * i + j] ?? NaN) - stored), `pixel ${i}`).toBeLessThan(3);
      }
    }
  });
});
