import type { Metadata, Sharp } from "sharp";
import { loadedSharp } from "./loaded-sharp.ts";
import { pictureFormat } from "./picture-format.ts";

/** Pixels of a picture the right way up, in Display P3, 16 bits a channel, row by row. */
export interface UprightPixels {
  readonly pixels: Uint16Array;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Of the picture as it came, upright. */
  readonly cameWidthPx: number;
  readonly cameHeightPx: number;
}

/** Why a file gives no picture: a sentence without its full stop, and what would be right. */
export interface PictureFault {
  readonly fault: string;
  readonly hint?: string | undefined;
}

/** A picture of more is refused before it is opened: a few kilobytes may spell out gigabytes. */
const MOST_PIXELS = 100e6;
/** Kept of a larger picture [px]: more than any size that is made of it. */
const LONGEST_SIDE_PX = 2400;
export const CHANNELS = 3;

/**
 * A photograph's pixels: turned as its camera was held, its own colour profile taken into account
 * (sRGB where it has none), nothing else of what was written beside them kept.
 * @param name as it stands in a complaint.
 */
export async function uprightPixels(
  bytes: Uint8Array,
  name: string,
): Promise<UprightPixels | PictureFault> {
  const format = pictureFormat(bytes);
  if (format === undefined)
    return { fault: `${name} is no JPEG, PNG, WebP, AVIF or TIFF, whatever its name says` };
  if (format === "HEIC")
    return {
      fault: `${name} is a phone's compressed picture of another kind than its name says`,
      hint: "export it as JPEG",
    };
  try {
    const sharp = await loadedSharp();
    const found = await sharp(bytes, { limitInputPixels: false }).metadata();
    const { width, height } = found;
    if (width * height > MOST_PIXELS)
      return {
        fault: `${name} unfolds to ${Math.round((width * height) / 1e6)} million pixels, and at most ${MOST_PIXELS / 1e6} million are read`,
      };
    if (found.space === "cmyk")
      return {
        fault: `${name} is separated for printing inks (CMYK), and no photograph comes so from a camera`,
        hint: "export it as RGB, with its profile",
      };
    return await inDisplayP3(bytes, found);
  } catch {
    return {
      fault: `${name} can't be read to its end as ${format}: it is damaged, or was not copied whole`,
    };
  }
}

async function inDisplayP3(bytes: Uint8Array, found: Metadata): Promise<UprightPixels> {
  // Of 16 bits without a profile sharp would take Display P3 for granted.
  const source =
    found.icc === undefined && found.depth !== "uchar"
      ? await (await opened(bytes)).toColourspace("srgb").png().toBuffer()
      : bytes;
  const whole = (await opened(source)).flatten({ background: "#ffffff" }).resize({
    width: LONGEST_SIDE_PX,
    height: LONGEST_SIDE_PX,
    fit: "inside",
    withoutEnlargement: true,
  });
  // The profile goes along to 16 bits, and is honoured there: at 8 bits what lies outside sRGB would be cut off.
  const profiled = await (
    found.icc === undefined ? whole.withIccProfile("srgb") : whole.keepIccProfile()
  )
    .toColourspace("rgb16")
    .png({ compressionLevel: 0 })
    .toBuffer();
  // Turned last: sharp loses the profile of a picture that it turns while it opens the file.
  const asHeld = await deep(await opened(profiled));
  const { pixels, widthPx, heightPx } = await deep(
    turned(await pictureOf(asHeld), found.orientation),
  );
  const { width, height } = found.autoOrient;
  return { pixels, widthPx, heightPx, cameWidthPx: width, cameHeightPx: height };
}

/** Pixels, and how they lie. */
export type Pixels = Pick<UprightPixels, "pixels" | "widthPx" | "heightPx">;

/** The pixels as a picture: without metadata, so that no place and no camera can go along. */
export async function pictureOf({ pixels, widthPx, heightPx }: Pixels): Promise<Sharp> {
  const sharp = await loadedSharp();
  return sharp(pixels, { raw: { width: widthPx, height: heightPx, channels: CHANNELS } });
}

/** A picture as pixels of 16 bits a channel. */
export async function deep(picture: Sharp): Promise<Pixels> {
  const { data, info } = await picture
    .toColourspace("rgb16")
    .raw({ depth: "ushort" })
    .toBuffer({ resolveWithObject: true });
  if (info.channels !== CHANNELS) throw new Error(`${info.channels} channels`);
  return {
    pixels: new Uint16Array(data.buffer.slice(data.byteOffset, data.byteOffset + data.byteLength)),
    widthPx: info.width,
    heightPx: info.height,
  };
}

/**
 * Upright, as its camera says that it was held (sharp mirrors before it turns, whatever the order of calls).
 * @source Exif 2.32 (CIPA DC-008-2019), tag 0112, Orientation.
 */
function turned(picture: Sharp, orientation = 1): Sharp {
  const isMirrored = [2, 4, 5, 7].includes(orientation);
  const degrees = [0, 0, 180, 180, 270, 90, 90, 270][orientation - 1] ?? 0;
  return (isMirrored ? picture.flop() : picture).rotate(degrees);
}

async function opened(bytes: Uint8Array): Promise<Sharp> {
  const sharp = await loadedSharp();
  return sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: "error" });
}
