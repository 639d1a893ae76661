import sharp from "sharp";
import { deltaE00 } from "../colorimetry/difference.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import { at } from "../quantities/at.ts";
import type { Cmyk, ProcessInk } from "../print/proof-inks.ts";
import { plainTiff } from "./plain-tiff.ts";

/** Further than this from its colour an ink is seen to be another: named. */
export const SEEN_DELTA_E00 = 2;

/** Times that colours are aimed at anew, by so much of what was missed. */
const TRIES = 8;
const STEP = 0.8;

/**
 * Colours in process inks by the profile that libvips brings: of one proof printed and read in
 * 2003, "Chemical proof" by its own description, in the public domain by its own copyright line.
 * It stands for no printing condition of a standard. A separation is the profile's own
 * (perceptual); since that moves colours which the inks could show, its aim is moved by what is
 * missed until they show what was wanted, or come no nearer.
 * @param labs D50, 2 degree.
 * @returns one each, in their order; shares come in steps of 1/255.
 */
export async function processInks(labs: readonly Lab[]): Promise<ProcessInk[]> {
  if (labs.length === 0) return [];
  let aims = labs;
  let best: ProcessInk[] | undefined;
  for (let i = 0; i < TRIES; i++) {
    const shares = await separated(aims);
    const shown = await shownBy(shares);
    const found = labs.map((lab, j): ProcessInk => {
      const own = at(shown, j);
      const [c = 0, m = 0, y = 0, k = 0] = shares.subarray(4 * j, 4 * j + 4);
      const cmyk: Cmyk = [c / 255, m / 255, y / 255, k / 255];
      return { cmyk, shown: own, deltaE00: deltaE00(lab, own) };
    });
    const before = best;
    best = found.map((one, j) => {
      const earlier = before?.[j];
      return earlier === undefined || one.deltaE00 < earlier.deltaE00 ? one : earlier;
    });
    aims = aims.map((aim, j) => moved(aim, at(labs, j), at(shown, j)));
  }
  return best ?? [];
}

function moved(aim: Lab, wanted: Lab, shown: Lab): Lab {
  const axis = (key: keyof Lab): number => aim[key] + STEP * (wanted[key] - shown[key]);
  return { L: axis("L"), a: axis("a"), b: axis("b") };
}

/** The profile itself, as it comes with the library. */
export async function inkProfile(): Promise<Uint8Array> {
  const separatedOnce = await sharp({
    create: { width: 1, height: 1, channels: 3, background: "#808080" },
  })
    .toColourspace("cmyk")
    .withIccProfile("cmyk", { attach: true })
    .tiff()
    .toBuffer();
  const { icc } = await sharp(separatedOnce).metadata();
  if (icc === undefined) throw new RangeError("The library brings no profile of process inks");
  return icc;
}

/** Shares of the four inks for some aims, 8 bits each. */
async function separated(aims: readonly Lab[]): Promise<Uint8Array> {
  const data = Buffer.alloc(aims.length * 6);
  const bounded = (value: number, least: number, most: number): number =>
    Math.round(Math.min(Math.max(value, least), most));
  aims.forEach(({ L, a, b }, i) => {
    data.writeUInt16LE(bounded((L / 100) * 65_535, 0, 65_535), 6 * i);
    data.writeInt16LE(bounded(a * 256, -32_768, 32_767), 6 * i + 2);
    data.writeInt16LE(bounded(b * 256, -32_768, 32_767), 6 * i + 4);
  });
  return sharp(plainTiff("lab", aims.length, data))
    .toColourspace("cmyk")
    .raw()
    .toBuffer();
}

/** What some shares show, white of the paper being white. */
export async function shownBy(shares: Uint8Array): Promise<Lab[]> {
  const count = shares.length / 4;
  const bytes = await sharp(plainTiff("cmyk", count, shares))
    .pipelineColourspace("cmyk")
    .toColourspace("lab")
    .raw({ depth: "float" })
    .toBuffer();
  const values = new Float32Array(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength),
  );
  return Array.from({ length: count }, (_, i) => ({
    L: at(values, 3 * i),
    a: at(values, 3 * i + 1),
    b: at(values, 3 * i + 2),
  }));
}
