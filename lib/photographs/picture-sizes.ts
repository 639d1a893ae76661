import type { Sharp } from "sharp";
import { at } from "../quantities/at.ts";
import type { ScreenPicture } from "../records/taken-photograph.ts";
import { loadedSharp } from "./loaded-sharp.ts";
import { once } from "./once.ts";
import { pictureOf, type UprightPixels } from "./upright-pixels.ts";
import { isWiderThanSrgb } from "./wide-gamut.ts";

/** No picture of a page is heavier, so that the first one is there at once on a phone. */
export const LARGEST_SCREEN_BYTES = 60_000;

/** Widths [px] that a format comes in, and the qualities that it is tried in: the first that is light enough is taken. */
const SCREEN_FORMATS = {
  avif: { widths: [480, 800, 1200, 1600], qualities: [70, 58, 46, 34] },
  webp: { widths: [480, 800, 1200], qualities: [84, 72, 58, 44] },
  jpeg: { widths: [480, 800, 1200], qualities: [82, 72, 60, 45] },
} as const;

/** A column of a sheet on A4 or Letter, at the 300 pixels to an inch that print asks for [px]. */
const PAPER_DPI = 300;
const WIDEST_ON_PAPER_MM = 100;
const PAPER_WIDTH_PX = Math.round((WIDEST_ON_PAPER_MM / 25.4) * PAPER_DPI);
const PAPER_QUALITY = 85;

/** A picture's file. */
export interface MadePicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: Uint8Array;
}

/** A picture in every size and format, before anybody has given it an address. */
export interface UnnamedSizes {
  readonly screen: readonly Made[];
  readonly paper: MadePicture;
}

type Format = keyof typeof SCREEN_FORMATS;
type Gamut = ScreenPicture["gamut"];
type Made = MadePicture & Pick<ScreenPicture, "type" | "gamut">;

const PROFILES: Readonly<Record<Gamut, string>> = { sRGB: "srgb", "Display P3": "p3" };

/**
 * The sizes that a page offers, in sRGB for every screen and in Display P3 for those that can show
 * more of it, and one for paper. A width that can't be had light enough is not offered, unless it
 * is the least.
 */
export async function pictureSizes(picture: UprightPixels): Promise<UnnamedSizes> {
  const inSrgb = widthsOnce(picture, "sRGB");
  const [wide, avif, webp, jpeg, paper] = await Promise.all([
    isWiderThanSrgb(picture.pixels)
      ? inFormat("avif", "Display P3", picture, widthsOnce(picture, "Display P3"))
      : [],
    inFormat("avif", "sRGB", picture, inSrgb),
    inFormat("webp", "sRGB", picture, inSrgb),
    inFormat("jpeg", "sRGB", picture, inSrgb),
    paperPicture(picture, inSrgb),
  ]);
  return { screen: [...wide, ...avif, ...webp, ...jpeg], paper };
}

/** Of two widths that differ by less than this share the wider one alone is worth its bytes. */
const LEAST_STEP = 1.1;

/** None wider than the picture itself, which is taken as it is where it is narrower than the widest. */
function widthsOf(type: Format, { widthPx }: UprightPixels): number[] {
  const { widths } = SCREEN_FORMATS[type];
  const widest = Math.min(widthPx, at(widths, widths.length - 1));
  return [...widths.filter((width) => width * LEAST_STEP <= widest), widest];
}

async function inFormat(
  type: Format,
  gamut: Gamut,
  picture: UprightPixels,
  atWidth: AtWidth,
): Promise<Made[]> {
  const offered: Made[] = [];
  let tried: TriedQuality | undefined;
  for (const width of widthsOf(type, picture)) {
    const { widthPx, heightPx, opened } = await atWidth(width);
    const expected = tried && expectedAt(tried, widthPx * heightPx);
    const { qualities } = SCREEN_FORMATS[type];
    let own = expected;
    let bytes: Uint8Array | undefined;
    for (const [quality, value] of qualities.entries()) {
      if (own !== undefined && leastBytes(own, quality) > LARGEST_SCREEN_BYTES) continue;
      bytes = await encoded(opened(), type, value);
      own = tried = { quality, bytes: bytes.length, pixels: widthPx * heightPx };
      if (bytes.length <= LARGEST_SCREEN_BYTES) break;
    }
    if (bytes !== undefined && (bytes.length <= LARGEST_SCREEN_BYTES || offered.length === 0))
      offered.push({ type, gamut, widthPx, heightPx, bytes });
  }
  return offered;
}

/** What a picture weighed in a quality, by its place among those that are tried. */
export interface TriedQuality {
  readonly quality: number;
  readonly bytes: number;
  readonly pixels: number;
}

/** From one quality to the next a picture keeps this share of its bytes at least. */
const STEEPEST_FALL = 0.4;
/** With its pixels its bytes grow at least by this power. */
const SLOWEST_GROWTH = 0.7;

/** The same with more pixels: what it would weigh at least. */
export function expectedAt({ quality, bytes, pixels }: TriedQuality, more: number): TriedQuality {
  return { quality, bytes: bytes * (more / pixels) ** SLOWEST_GROWTH, pixels: more };
}

/** What it weighs at least in another quality: what would be too heavy is not made. */
export function leastBytes({ quality, bytes }: TriedQuality, other: number): number {
  return bytes * STEEPEST_FALL ** Math.max(0, other - quality);
}

async function encoded(picture: Sharp, type: Format, quality: number): Promise<Uint8Array> {
  switch (type) {
    case "avif":
      return picture.avif({ quality, effort: 0 }).toBuffer();
    case "webp":
      return picture.webp({ quality, effort: 2 }).toBuffer();
    case "jpeg":
      return picture.jpeg({ quality, mozjpeg: true, trellisQuantisation: false }).toBuffer();
  }
}

async function paperPicture(picture: UprightPixels, atWidth: AtWidth): Promise<MadePicture> {
  const { widthPx, heightPx, opened } = await atWidth(
    picture.widthPx <= PAPER_WIDTH_PX * LEAST_STEP ? picture.widthPx : PAPER_WIDTH_PX,
  );
  return {
    widthPx,
    heightPx,
    bytes: await opened().jpeg({ quality: PAPER_QUALITY, chromaSubsampling: "4:4:4" }).toBuffer(),
  };
}

/** A picture as screens of a gamut take it: 8 bits a channel, its profile beside them. */
interface ScreenPixels {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly opened: () => Sharp;
}
type AtWidth = (width: number) => Promise<ScreenPixels>;

/** Each width of a picture in a gamut, made once for all formats that want it. */
function widthsOnce(picture: UprightPixels, gamut: Gamut): AtWidth {
  const made = new Map<number, Promise<ScreenPixels>>();
  const whole = once(async () => inGamut(picture, gamut));
  return async (width) => {
    const own = made.get(width) ?? whole().then(async (one) => narrowed(one, width));
    made.set(width, own);
    return own;
  };
}

async function inGamut(picture: UprightPixels, gamut: Gamut): Promise<ScreenPixels> {
  const { widthPx, heightPx } = picture;
  return unpacked((await pictureOf(picture)).withIccProfile(PROFILES[gamut]), widthPx, heightPx);
}

async function narrowed(picture: ScreenPixels, widthPx: number): Promise<ScreenPixels> {
  if (widthPx === picture.widthPx) return picture;
  const heightPx = Math.max(1, Math.round((widthPx * picture.heightPx) / picture.widthPx));
  const size = { width: widthPx, height: heightPx, fit: "fill" } as const;
  return unpacked(picture.opened().resize(size), widthPx, heightPx);
}

async function unpacked(picture: Sharp, widthPx: number, heightPx: number): Promise<ScreenPixels> {
  const bytes = await picture.tiff({ compression: "none" }).toBuffer();
  const sharp = await loadedSharp();
  return { widthPx, heightPx, opened: () => sharp(bytes).keepIccProfile() };
}
