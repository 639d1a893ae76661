import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { p3LightToSrgbLight } from "../../lib/colorimetry/display-p3.ts";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { screenLight } from "../../lib/patches/colour-correction.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { photographed, type Camera, type Part, type Rgb } from "../support/painted-scene.ts";
import { colourText, photographedWorkshop } from "./photographed-workshop.ts";

/** Smooth made-up spectra: an edge at a wavelength, up or down, from a floor to a ceiling. */
const edge = (nm: number, low: number, high: number, width = 25): number[] =>
  Array.from(
    { length: 31 },
    (_, i) => low + (high - low) / (1 + Math.exp((nm - 400 - 10 * i) / width)),
  );
const SPECTRA: Readonly<Record<string, readonly number[]>> = {
  white: edge(300, 0.8, 0.8),
  light: edge(300, 0.45, 0.45),
  mid: edge(300, 0.2, 0.2),
  black: edge(300, 0.03, 0.03),
  yellow: edge(510, 0.06, 0.75),
  orange: edge(570, 0.05, 0.6),
  red: edge(610, 0.04, 0.45),
  blue: edge(480, 0.4, 0.05),
  cyan: edge(560, 0.45, 0.06),
  green: edge(500, 0.05, 0.25).map(
    (R, i) => R * (1 - 0.8 / (1 + Math.exp((570 - 400 - 10 * i) / 20))),
  ),
  brown: edge(590, 0.04, 0.18, 40),
  rose: edge(600, 0.2, 0.55).map((R, i) => R * (i < 6 ? 1.2 : 1)),
};
const NAMES = Object.keys(SPECTRA);
const PAINT = edge(560, 0.06, 0.4, 30);

const GRID = { startNm: 400, stepNm: 10, count: 31 };
const xyzOf = (values: readonly number[]) => tristimulus({ grid: GRID, values }, "D65/2");
const lightOf = (values: readonly number[]): Rgb => {
  const [r, g, b] = p3LightToSrgbLight(screenLight(xyzOf(values)));
  return [r, g, b];
};

const CSV = [
  `nm,${NAMES.join(",")},paint`,
  ...PAINT.map((own, i) =>
    [400 + 10 * i, ...NAMES.map((name) => SPECTRA[name]?.[i]?.toFixed(5)), own.toFixed(5)].join(
      ",",
    ),
  ),
].join("\n");

const SIZE = { width: 480, height: 320 };
const PARTS: readonly Part[] = [
  { left: 40, top: 30, right: 440, bottom: 150, light: lightOf(PAINT), texture: "film" },
  ...NAMES.map((name, i): Part => ({
    left: 40 + 66 * (i % 6),
    top: 180 + 60 * Math.floor(i / 6),
    right: 40 + 66 * (i % 6) + 66,
    bottom: 180 + 60 * Math.floor(i / 6) + 60,
    light: lightOf(SPECTRA[name] ?? []),
  })),
];
const CAMERA: Camera = {
  seed: 21,
  cast: [
    [0.95, 0.06, 0],
    [0.04, 0.8, 0.03],
    [0, 0.1, 0.7],
  ],
  tone: 1.08,
  light: [0.75, 0.85],
  noise: 0.008,
};

const record = (columns: readonly string[], more = "", paint = "[60, 45, 420, 135]"): string =>
  `photographs:
  - file: paint.jpg
    of: drawdown
    paint: ${paint}
    correctedBy:
      bare: [[5, 5, 475, 25], [5, 30, 35, 300], [445, 30, 475, 300]]
      chart:
        corners: [[40, 180], [436, 180], [436, 300], [40, 300]]
        across: 6
        down: 2
        reading: chart.csv
        scale: factor
        geometry: 45/0
        columns: [${columns.join(", ")}]
${more}`;

let jpeg: Buffer;
beforeAll(async () => {
  jpeg = await sharp(photographed({ ...SIZE, parts: PARTS }, CAMERA), {
    raw: { ...SIZE, channels: 3 },
  })
    .jpeg({ quality: 85 })
    .toBuffer();
});

const workshop = (photographs: string) =>
  photographedWorkshop(
    { "readings/chart.csv": CSV, "colours/bone-black.md": colourText(photographs) },
    { "paint.jpg": jpeg },
  );
const TRUE_LAB = xyzToLab(xyzOf(PAINT), "D65/2");

describe("a photograph with a cast, a tone curve, uneven light, noise and JPEG, beside twelve read patches", () => {
  test("is corrected, says by how much it misses, and holds the true colour within its range", async () => {
    const { records, told } = await workshop(record(NAMES));
    expect(told).toEqual([]);
    const correction = records?.photographs[0]?.taken?.correction;
    expect(correction?.patches).toBe(12);
    expect(correction?.isUsed).toBe(true);
    expect(correction?.medianDeltaE00).toBeLessThan(3);
    expect(correction?.lightShare).toBeGreaterThan(0.75 * 0.85 - 0.06);
    expect(correction?.lightShare).toBeLessThan(0.75 * 0.85 + 0.06);
    for (const axis of ["L", "a", "b"] as const satisfies readonly (keyof Lab)[]) {
      const miss = Math.abs((correction?.colour?.lab[axis] ?? NaN) - TRUE_LAB[axis]);
      expect(miss, axis).toBeLessThan(correction?.colour?.range[axis] ?? NaN);
    }
  });

  test("gives a colour that nobody has read its masstone, as an estimate and no more", async () => {
    const { records } = await workshop(record(NAMES));
    const masstone = records?.colours.get("bone-black")?.masstone;
    expect(masstone).toMatchObject({ form: "lab", viewing: "D65/2" });
    if (records === undefined) throw new Error("no records");
    const [sheet] = workedSite(records, undefined).published;
    const notations = sheet?.worded.sheet.notations.masstone;
    expect(notations?.standing).toBe("estimated");
    const L = notations?.lab["D65/2"]?.L;
    expect(L?.standing).toBe("estimated");
    expect(L).toMatchObject({
      method: expect.stringContaining("estimated from a photograph") as string,
    });
    expect(notations?.munsell?.text.standing).not.toBe("measured");
  });

  test("leaves a reading as it is, and shows the film in the colour that was read", async () => {
    const { records } = await workshop(
      record(
        NAMES,
        "masstone: { reading: chart.csv, column: paint, scale: factor, geometry: 45/0 }\n",
      ),
    );
    expect(records?.colours.get("bone-black")?.masstone?.form).toBe("spectrum");
    const film = records?.photographs[0]?.inReadColour;
    expect(film?.screen[0]?.path).toMatch(/^photographs\/paint-as-read-360\.avif$/);
    const { channels } = await sharp(film?.paper.bytes()).stats();
    const mean = channels.map((channel) => channel.mean / 255);
    lightOf(PAINT).forEach((light, i) => {
      const stored = light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
      expect(Math.abs((mean[i] ?? NaN) - stored)).toBeLessThan(0.01);
    });
  });

  test("two patches exchanged in the record are both named", async () => {
    const exchanged = NAMES.map((name) =>
      name === "red" ? "cyan" : name === "cyan" ? "red" : name,
    );
    const { told } = await workshop(record(exchanged));
    const named = told.filter((line) => line.includes("is another one"));
    expect(named.some((line) => line.includes("patch red "))).toBe(true);
    expect(named.some((line) => line.includes("patch cyan "))).toBe(true);
  });

  test("of patches that are all others no colour is taken, and the picture stays as it came", async () => {
    const turned = [...NAMES.slice(5), ...NAMES.slice(0, 5)];
    const { records, told } = await workshop(record(turned));
    const correction = records?.photographs[0]?.taken?.correction;
    expect(correction?.isUsed).toBe(false);
    expect(correction?.colour).toBeUndefined();
    expect(records?.colours.get("bone-black")?.masstone).toBeUndefined();
    expect(told.at(-1)).toContain("warning paint.jpg is not colour-corrected: patches left out");
  });
});

describe("what can't be a patch is told at its place", () => {
  test.each([
    [
      "a column too few",
      record(NAMES.slice(1)),
      "content/colours/bone-black.md:17:18 error A chart of 6 by 2 patches has 12 columns, and here are 11 records/photograph-patches",
    ],
    [
      "corners the other way round",
      record(NAMES).replace(
        "[[40, 180], [436, 180], [436, 300], [40, 300]]",
        "[[40, 180], [40, 300], [436, 300], [436, 180]]",
      ),
      "content/colours/bone-black.md:11:18 error The corners of a chart go round it from the top left, as a clock does, and these do not records/photograph-patches",
    ],
    [
      "a box beyond the picture",
      record(NAMES, "", "[60, 45, 4200, 135]"),
      "content/colours/bone-black.md:5:11 error The point 4200, 45 lies outside the picture, which is 480 by 320 pixels the right way up records/photograph",
    ],
    [
      "one swatch of a colour that nobody has read",
      colourTextOf("swatches: [{ at: [1, 1, 9, 9], colour: bone-black }]"),
      "content/colours/bone-black.md:8:7 error A photograph is corrected by 2 known patches or more, and here is one records/photograph-patches",
    ],
  ])("%s", async (_, photographs, expected) => {
    const { records, told } = await workshop(photographs);
    expect(records).toBeUndefined();
    expect(told).toContain(expected);
  });
});

function colourTextOf(correctedBy: string): string {
  return `photographs:\n  - file: paint.jpg\n    of: drawdown\n    correctedBy:\n      {${correctedBy.replace(/^/, " ")} }\n`;
}
