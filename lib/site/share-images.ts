import sharp from "sharp";
import { keptBytes } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { comparableColour, comparableTint, ownColour } from "../pages/screen-swatch.ts";
import { PANEL_GREY } from "../plots/picture.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { BinaryFile } from "./site.ts";

/** Sizes that sites which show a link ask for [px]. */
const SIZES = {
  "swatch.png": { width: 1200, height: 630 },
  "swatch-square.png": { width: 1200, height: 1200 },
} as const;
const LEVELS = ["70", "50", "30"] as const;

interface Size {
  readonly width: number;
  readonly height: number;
}

interface Patch {
  readonly hex: string;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Addresses of a colour's pictures, below the site's root. */
export function shareImagePaths(sheet: Sheet): string[] {
  return hasShareImage(sheet)
    ? Object.keys(SIZES).map((name) => `colours/${sheet.slug}/${name}`)
    : [];
}

/** Whether a picture of a colour can be made: its masstone has been read. */
export function hasShareImage({ notations }: Sheet): boolean {
  return ownColour(notations.masstone) !== undefined;
}

/** A colour as a picture for whoever passes its page on: masstone, and beside it its tints in each white. */
export async function shareImages(
  sheets: readonly Sheet[],
  cache?: WorkCache,
): Promise<BinaryFile[]> {
  const files: BinaryFile[] = [];
  for (const sheet of sheets.filter(hasShareImage)) {
    for (const [name, size] of Object.entries(SIZES)) {
      const parts = patches(sheet, size);
      files.push({
        path: `colours/${sheet.slug}/${name}`,
        bytes: await keptBytes(
          cache,
          { modules: ["lib/site/share-images.ts"], inputs: { size, parts } },
          async () => picture(parts, size),
        ),
      });
    }
  }
  return files;
}

/** Masstone to the edge; tints abut at its right on a landscape picture, below it on a square one. */
export function patches({ notations, tints }: Sheet, { width, height }: Size): Patch[] {
  const masstone = comparableColour(notations.masstone);
  const whites = tints
    .map(({ atL }) => LEVELS.map((level) => comparableTint(atL[level])?.hex))
    .filter((cells) => cells.some((hex) => hex !== undefined))
    .slice(0, 3);
  if (masstone === undefined) return [];
  const isWide = width > height;
  const alone = { hex: masstone.hex, left: 0, top: 0, width, height };
  if (whites.length === 0) return [alone];
  const share = isWide
    ? { width: Math.round(width * 0.62), height }
    : { width, height: Math.round(height * 0.6) };
  const field = isWide
    ? { left: share.width, top: 0, width: width - share.width, height }
    : { left: 0, top: share.height, width, height: height - share.height };
  return [
    { ...alone, ...share },
    ...whites.flatMap((cells, column) =>
      cells.flatMap((hex, row): Patch[] => {
        const at = (part: number, of: number, from: number): number => from + Math.round(of * part);
        const left = at(column / whites.length, field.width, field.left);
        const top = at(row / LEVELS.length, field.height, field.top);
        return hex === undefined
          ? []
          : [
              {
                hex,
                left,
                top,
                width: at((column + 1) / whites.length, field.width, field.left) - left,
                height: at((row + 1) / LEVELS.length, field.height, field.top) - top,
              },
            ];
      }),
    ),
  ];
}

const CHANNELS = 3;

/** Every pixel is the very colour of its patch: a palette would be chosen from near it. */
async function picture(parts: readonly Patch[], { width, height }: Size): Promise<Uint8Array> {
  const pixels = Buffer.alloc(width * height * CHANNELS, hexBytes(PANEL_GREY));
  for (const { hex, left, top, width: across, height: down } of parts) {
    const row = Buffer.alloc(across * CHANNELS, hexBytes(hex));
    for (let y = top; y < top + down; y++) row.copy(pixels, (y * width + left) * CHANNELS);
  }
  return sharp(pixels, { raw: { width, height, channels: CHANNELS } })
    .png({ compressionLevel: 9 })
    .toBuffer();
}

function hexBytes(hex: string): Buffer {
  return Buffer.from(hex.slice(1), "hex");
}
