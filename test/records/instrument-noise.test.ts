import { describe, expect, test } from "vitest";
import { HAND_HELD_NOISE, statedNoise } from "../../lib/colorimetry/reading-noise.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import type { SpectrumReading } from "../../lib/records/records.ts";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

const black = (name: string, masstone: string): string =>
  `---\nname: ${name}\npigments: [{ pigment: lamp-black }]\nmasstone: ${masstone}\n---\n`;
const ONE = "{ reading: one, column: a, scale: factor, geometry: d/8 excluded }";

/** The noise of a colour read once, in a workshop that read another colour twice. */
function noiseOf(masstone: string, twice: string) {
  const { content, home } = contentFolder({
    "workshop.yaml": SMALLEST_WORKSHOP["workshop.yaml"],
    "pigments/lamp-black.yaml": SMALLEST_WORKSHOP["pigments/lamp-black.yaml"],
    "colours/once.md": black("Once", masstone),
    "colours/twice.md": black("Twice", twice),
    "readings/one.csv": flatReadings({ a: 0.04 }),
    "readings/two.csv": flatReadings({ b: 0.515, c: 0.485 }),
  });
  const { records, diagnostics } = loadRecords(content, home);
  expect(
    diagnostics.filter(({ severity }) => severity === "error").map(({ message }) => message),
  ).toEqual([]);
  return (records?.colours.get("once")?.masstone as SpectrumReading).noise;
}

/**
 * By hand (derived): one set of two, 0.015 to each side of 0.5 and alike at every wavelength.
 * Usual variance of a reading there: 0.0003^2 + (0.003 x 0.5)^2 = 2.34e-6; the set's own is
 * 2 x 0.015^2 / 1 = 4.5e-4, 192.3 times that. With six sets of the usual:
 * k = sqrt((6 + 192.3) / 7) = 5.3 of the reading as a whole, sqrt(6 / 7) = 0.9 of a wavelength.
 */
describe("replicates of one colour", () => {
  const TWICE = "{ reading: two, column: [b, c], scale: factor, geometry: d/8 excluded }";

  test("tell the noise of every reading of the same instrument", () => {
    const noise = noiseOf(ONE, TWICE);
    expect(noise.reading.scale / HAND_HELD_NOISE.reading.scale).toBeCloseTo(5.3, 10);
    expect(noise.wavelength.share / HAND_HELD_NOISE.wavelength.share).toBeCloseTo(0.9, 10);
    expect(noise.calibration).toEqual(HAND_HELD_NOISE.calibration);
  });

  test("say nothing of one of another geometry", () => {
    expect(noiseOf(ONE, TWICE.replace("d/8 excluded", "45/0"))).toEqual(HAND_HELD_NOISE);
  });

  test("say nothing of a reading whose uncertainty is stated", () => {
    expect(noiseOf(ONE.replace(" }", ", uncertainty: 0.002 }"), TWICE)).toEqual(statedNoise(0.002));
  });
});
