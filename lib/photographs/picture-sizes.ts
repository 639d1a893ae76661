import sharp, { type Sharp } from "sharp";
import type { PaperPicture, ScreenPicture } from "../records/taken-photograph.ts";
import { CHANNELS, type UprightPixels } from "./upright-pixels.ts";
import { isWiderThanSrgb } from "./wide-gamut.ts";

/** No picture of a page is heavier, so that the first one is there at once on a phone. */
export const LARGEST_SCREEN_BYTES = 60_000;

/** Widths [px] that a format comes in, and the qualities that it is tried in: the first that is light enough is taken. */
const SCREEN_FORMATS = {
  avif: { widths: [480, 800, 1200, 1600], qualities: [68, 56, 44, 32] },
  webp: { widths: [480, 800, 1200], qualities: [84, 72, 58, 44] },
  jpeg: { widths: [480, 800, 1200], qualities: [82, 72, 60, 45] },
} as const;

/** A column of a sheet on A4 or Letter, at the 300 pixels to an inch that print asks for [px]. */
export const PAPER_DPI = 300;
const WIDEST_ON_PAPER_MM = 100;
const PAPER_WIDTH_PX = Math.round((WIDEST_ON_PAPER_MM / 25.4) * PAPER_DPI);
const PAPER_QUALITY = 85;

/** A picture in every size and format, before anybody has given it an address. */
export interface UnnamedSizes {
  readonly screen: readonly Omit<ScreenPicture, "path">[];
  readonly paper: PaperPicture;
}

type Format = keyof typeof SCREEN_FORMATS;
type Gamut = ScreenPicture["gamut"];

const PROFILES: Readonly<Record<Gamut, string>> = { sRGB: "srgb", "Display P3": "p3" };

/**
 * The sizes that a page offers, in sRGB for every screen and in Display P3 for those that can show
 * more of it, and one for paper. A width that can't be had light enough is not offered, unless it
 * is the least.
 */
export async function pictureSizes(picture: UprightPixels): Promise<UnnamedSizes> {
  const screen: Omit<ScreenPicture, "path">[] = [];
  for (const gamut of gamutsOf(picture))
    for (const type of gamut === "sRGB" ? (["avif", "webp", "jpeg"] as const) : (["avif"] as const))
      for (const [i, width] of widthsOf(type, picture).entries()) {
        const made = await lightEnough(picture, { gamut, type, width });
        if (made.bytes.length <= LARGEST_SCREEN_BYTES || i === 0) screen.push(made);
      }
  return { screen, paper: await paperPicture(picture) };
}

function gamutsOf(picture: UprightPixels): readonly Gamut[] {
  return isWiderThanSrgb(picture.pixels) ? ["Display P3", "sRGB"] : ["sRGB"];
}

/** None wider than the picture itself, which is taken as it is where it is narrower than the widest. */
function widthsOf(type: Format, { widthPx }: UprightPixels): number[] {
  const { widths } = SCREEN_FORMATS[type];
  const narrower = widths.filter((width) => width < widthPx);
  return narrower.length === widths.length ? narrower : [...narrower, widthPx];
}

async function lightEnough(
  picture: UprightPixels,
  { gamut, type, width }: { readonly gamut: Gamut; readonly type: Format; readonly width: number },
): Promise<Omit<ScreenPicture, "path">> {
  let made: Uint8Array = new Uint8Array();
  for (const quality of SCREEN_FORMATS[type].qualities) {
    made = await encoded(resized(picture, width).withIccProfile(PROFILES[gamut]), type, quality);
    if (made.length <= LARGEST_SCREEN_BYTES) break;
  }
  return { type, gamut, widthPx: width, heightPx: heightAt(picture, width), bytes: made };
}

async function encoded(picture: Sharp, type: Format, quality: number): Promise<Uint8Array> {
  switch (type) {
    case "avif":
      return picture.avif({ quality, effort: 3 }).toBuffer();
    case "webp":
      return picture.webp({ quality }).toBuffer();
    case "jpeg":
      return picture.jpeg({ quality, mozjpeg: true }).toBuffer();
  }
}

async function paperPicture(picture: UprightPixels): Promise<PaperPicture> {
  const widthPx = Math.min(PAPER_WIDTH_PX, picture.widthPx);
  return {
    widthPx,
    heightPx: heightAt(picture, widthPx),
    bytes: await resized(picture, widthPx)
      .withIccProfile("srgb")
      .jpeg({ quality: PAPER_QUALITY, chromaSubsampling: "4:4:4" })
      .toBuffer(),
  };
}

/** The pixels carry no metadata, so that no place and no camera can go along. */
function resized({ pixels, widthPx, heightPx }: UprightPixels, width: number): Sharp {
  return sharp(pixels, { raw: { width: widthPx, height: heightPx, channels: CHANNELS } }).resize({
    width,
    height: heightAt({ widthPx, heightPx }, width),
    fit: "fill",
  });
}

function heightAt(
  { widthPx, heightPx }: Pick<UprightPixels, "widthPx" | "heightPx">,
  width: number,
): number {
  return Math.max(1, Math.round((width * heightPx) / widthPx));
}
