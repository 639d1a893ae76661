/**
 * Writes the demonstration's photographs: no camera took them. Each is a scene of flat colours with
 * the texture of paint, in the colours of the demonstration's own invented readings, seen by an
 * invented camera with a cast, a tone curve, uneven light and noise.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import sharp from "sharp";
import { p3LightToSrgbLight, xyzToP3Light } from "../../lib/colorimetry/display-p3.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { at } from "../../lib/quantities/at.ts";
import { photographed, type Camera, type Part, type Rgb } from "../support/painted-scene.ts";

const FOLDER = join("content", "photographs");
const READINGS = join("content", "readings");
const QUALITY = 82;

/** Light that a drawdown of the demonstration sends on under daylight. @param column of its readings; those of one name with numbers are averaged. */
export function lightOfReading(file: string, column: string): Rgb {
  const [head = "", ...rows] = readFileSync(join(READINGS, file), "utf8").trim().split(/\r?\n/);
  const index = head.split(",").indexOf(column);
  if (index < 0) throw new RangeError(`${file} has no column ${column}`);
  const cells = rows.map((row) => row.split(",").map(Number));
  const startNm = at(at(cells, 0), 0);
  const written = cells.map((row) => at(row, index));
  // One file of the demonstration is in percent.
  const values = written.some((value) => value > 1.2)
    ? written.map((value) => value / 100)
    : written;
  const { X, Y, Z } = tristimulus(
    { grid: { startNm, stepNm: at(at(cells, 1), 0) - startNm, count: values.length }, values },
    "D65/2",
  );
  // White of CIE's D65 is white of the screen.
  const [r, g, b] = p3LightToSrgbLight(
    xyzToP3Light([(X / 95.04) * 0.9504559, Y / 100, (Z / 108.88) * 1.0890578]),
  );
  return [r, g, b];
}

/** Swatches at the foot of a drawdown, all read: what the picture is corrected by. */
export const SWATCHES = [
  ["titanium-white.csv", "masstone 1"],
  ["bone-black.csv", "titanium-white 1:100"],
  ["bone-black.csv", "titanium-white 1:5"],
  ["lamp-black.csv", "masstone 1"],
  ["cadmium-yellow.csv", "masstone"],
  ["yellow-ochre.csv", "masstone"],
  ["red-iron-oxide.csv", "masstone"],
  ["quinacridone-rose.csv", "masstone"],
  ["ultramarine-blue.csv", "masstone"],
  ["cobalt-blue.csv", "masstone"],
  ["viridian.csv", "masstone"],
  ["burnt-umber.csv", "masstone"],
] as const;

const WIDTH = 1200;
const HEIGHT = 800;
const SWATCH = { left: 66, top: 604, width: 80, height: 120, step: 90 };

/** A drawdown over a chart on a grey card, its swatches below it. */
function drawdown(paint: Rgb): readonly Part[] {
  const half = (name: "white" | "black"): Rgb => lightOfReading("opacity-chart.csv", name);
  return [
    { left: 66, top: 90, right: 640, bottom: 540, light: half("white") },
    { left: 640, top: 90, right: 1134, bottom: 540, light: half("black") },
    { left: 118, top: 160, right: 1096, bottom: 470, light: paint, texture: "film", ragged: 90 },
    ...SWATCHES.map(([file, column], i): Part => ({
      left: SWATCH.left + i * SWATCH.step,
      top: SWATCH.top,
      right: SWATCH.left + i * SWATCH.step + SWATCH.width,
      bottom: SWATCH.top + SWATCH.height,
      light: lightOfReading(file, column),
      texture: "film",
    })),
  ];
}

/** One loaded stroke across a primed board. */
function stroke(paint: Rgb): readonly Part[] {
  return [
    { left: 0, top: 0, right: WIDTH, bottom: HEIGHT, light: [0.78, 0.77, 0.75] },
    { left: 110, top: 210, right: 1120, bottom: 590, light: paint, texture: "stroke", ragged: 240 },
  ];
}

interface Photograph {
  readonly name: string;
  readonly parts: () => readonly Part[];
  readonly camera: Camera;
}

const PHONE: Omit<Camera, "seed"> = {
  cast: [
    [1.02, 0.05, 0],
    [0.03, 0.88, 0.03],
    [0, 0.08, 0.72],
  ],
  tone: 1.06,
  light: [0.84, 0.92],
  noise: 0.006,
};

export const PHOTOGRAPHS: readonly Photograph[] = [
  {
    name: "bone-black-drawdown.jpg",
    parts: () => drawdown(lightOfReading("bone-black.csv", "masstone 1")),
    camera: { ...PHONE, seed: 11 },
  },
  {
    name: "bone-black-stroke.jpg",
    parts: () => stroke(lightOfReading("bone-black.csv", "masstone 2")),
    camera: { ...PHONE, seed: 12 },
  },
  {
    name: "yellow-ochre-drawdown.jpg",
    parts: () => drawdown(lightOfReading("yellow-ochre.csv", "masstone")),
    camera: { ...PHONE, seed: 13, light: [0.9, 0.84] },
  },
  {
    name: "ultramarine-blue-stroke.jpg",
    parts: () => stroke(lightOfReading("ultramarine-blue.csv", "masstone")),
    camera: { ...PHONE, seed: 14 },
  },
];

/** The bytes of one, as a camera would have written them. */
export async function photographBytes({ parts, camera }: Photograph): Promise<Buffer> {
  const pixels = photographed({ width: WIDTH, height: HEIGHT, parts: parts() }, camera);
  return sharp(pixels, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } })
    .jpeg({ quality: QUALITY, mozjpeg: true })
    .toBuffer();
}

async function writePhotographs(): Promise<void> {
  mkdirSync(FOLDER, { recursive: true });
  for (const photograph of PHOTOGRAPHS)
    writeFileSync(join(FOLDER, photograph.name), await photographBytes(photograph));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href)
  writePhotographs().catch((error: unknown) => {
    process.stderr.write(`${dirname(FOLDER)}: ${String(error)}\n`);
    process.exitCode = 1;
  });
