import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { labUnder } from "../../lib/colorimetry/lab-under.ts";
import { labToXyz, xyzToLab } from "../../lib/colorimetry/lab.ts";
import type { Light } from "../../lib/colorimetry/display-p3.ts";
import {
  correctedLight,
  fittedCorrection,
  labOfLight,
  LEAST_PATCHES,
  screenLight,
  type KnownPatch,
} from "../../lib/patches/colour-correction.ts";
import { triedCorrection } from "../../lib/patches/left-out.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { seeded } from "../support/painted-scene.ts";
import { CHART_1976 } from "./published-chart.ts";

const CHART = CHART_1976.map(([name, x, y, Y]) => {
  const scale = (100 * Y) / y;
  const lab = labUnder(
    xyzToLab({ X: x * scale, Y: 100 * Y, Z: (1 - x - y) * scale }, "C/2"),
    "C/2",
    "D65/2",
  );
  if (isStatement(lab)) throw new Error(`${name} is no colour`);
  return { name, known: labToXyz(lab.lab, "D65/2") };
});

interface Camera {
  readonly seed: number;
  readonly tone?: number;
  readonly noise?: number;
}

/** The chart to a camera with a random cast: each channel takes a little of the others, and more or less of its own. */
function seenBy({ seed, tone = 1, noise = 0 }: Camera, chart = CHART): KnownPatch[] {
  const random = seeded(seed);
  const cast = [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => (i === j ? 0.55 + 0.4 * random() : 0.12 * random())),
  );
  return chart.map(({ name, known }) => {
    const light = screenLight(known);
    const channel = (i: number): number => {
      const own = (cast[i] ?? []).reduce((sum, share, j) => sum + share * (light[j] ?? NaN), 0);
      return Math.max(own, 0) ** tone * (1 + noise * (2 * random() - 1));
    };
    const seen: Light = [channel(0), channel(1), channel(2)];
    return { name, known, seen };
  });
}

describe("a published chart seen by invented cameras", () => {
  test.each([1, 2])("a cast alone is undone, seed %i", (seed) => {
    const { medianDeltaE00, worst } = triedCorrection(seenBy({ seed }));
    expect(medianDeltaE00).toBeLessThan(0.05);
    expect(worst.deltaE00).toBeLessThan(0.5);
  });

  test.each([
    { seed: 5, tone: 1.25 },
    { seed: 6, tone: 0.8, noise: 0.02 },
    { seed: 7, tone: 1.1, noise: 0.03 },
  ])("a cast, a tone curve and noise: $tone, $noise", (camera) => {
    const { medianDeltaE00, worst, suspected } = triedCorrection(seenBy(camera));
    expect(medianDeltaE00).toBeLessThan(2);
    expect(worst.deltaE00).toBeLessThan(8);
    expect(suspected).toEqual([]);
  });

  test("without a correction the same chart misses by far", () => {
    const misses = seenBy({ seed: 5, tone: 1.25 }).map(({ seen, known }) =>
      deltaE00(labOfLight(seen), xyzToLab(known, "D65/2")),
    );
    expect(Math.min(...misses)).toBeGreaterThan(2);
  });

  test("a pair of patches exchanged is found, and no other is named", () => {
    const patches = seenBy({ seed: 8, noise: 0.01 });
    const [red, cyan] = [14, 17].map((i) => patches[i]);
    if (red === undefined || cyan === undefined) throw new Error("no such patches");
    const exchanged = patches.map((patch) =>
      patch === red
        ? { ...red, seen: cyan.seen }
        : patch === cyan
          ? { ...cyan, seen: red.seen }
          : patch,
    );
    const { suspected } = triedCorrection(exchanged);
    expect(suspected.map(({ name }) => name).toSorted()).toEqual(["cyan", "red"]);
  });

  test("what is left out has no part: noise alone misses by as much as it is", () => {
    const random = seeded(9);
    const noise = CHART.map(({ name, known }): KnownPatch => ({
      name,
      known,
      seen: [random(), random(), random()],
    }));
    expect(triedCorrection(noise).medianDeltaE00).toBeGreaterThan(15);
  });

  test("two swatches are enough for gains, and one is refused", () => {
    const two = seenBy({ seed: 1 }).filter(({ name }) => name === "white" || name === "neutral 5");
    const { correction, medianDeltaE00 } = triedCorrection(two);
    expect(correction.form).toBe("gains");
    expect(medianDeltaE00).toBeLessThan(0.5);
    expect(() => fittedCorrection([], "gains")).toThrow("patches of a gains correction");
    expect(() =>
      fittedCorrection(seenBy({ seed: 1 }).slice(0, LEAST_PATCHES.linear - 2), "linear"),
    ).toThrow("patches of a linear correction");
  });

  /** Root-polynomials are of the first degree in light: Finlayson et al. (2015) ask of them that exposure changes no chromaticity. */
  test.each(["linear", "root-polynomial 2", "root-polynomial 3"] as const)(
    "%s gives twice the light for twice the light",
    (form) => {
      const correction = fittedCorrection(seenBy({ seed: 3, noise: 0.05 }), form, [1]);
      const once = correctedLight(correction, [0.2, 0.1, 0.05]);
      const twice = correctedLight(correction, [0.4, 0.2, 0.1]);
      once.forEach((channel, i) => expect(twice[i]).toBeCloseTo(2 * channel, 9));
    },
  );
});
