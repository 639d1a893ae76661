import type { OverlayOptions } from "sharp";
import { loadedSharp } from "../photographs/loaded-sharp.ts";
import { inPx, type PictureFace } from "./picture-face.ts";
import { extentOf, layersOf, type Layer, type PixelBox } from "./picture-layers.ts";
import { stampOf, textStamp } from "./stamps.ts";

/** Formats that pictures to pass on come in: one that every site takes, and the lightest. */
export const PICTURE_TYPES = ["png", "avif"] as const;
export type PictureType = (typeof PICTURE_TYPES)[number];

/** Of PNG: flat paint packs as well as it will early. */
const COMPRESSION_LEVEL = 4;

/** A face to be drawn: plain data. */
export interface PictureToDraw {
  readonly face: PictureFace;
  readonly type: PictureType;
}

/** A face as a picture in sRGB: a flat swatch has the very sRGB of its paint. */
export async function drawnPicture({
  face: { widthMm, heightMm, marks },
  type,
}: PictureToDraw): Promise<Uint8Array> {
  const [width, height] = [Math.round(inPx(widthMm)), Math.round(inPx(heightMm))];
  const layers = layersOf(marks);
  const drawnFrom = layers.findIndex((layer) => !("colour" in layer));
  const [flat, over] =
    drawnFrom < 0 ? [layers, []] : [layers.slice(0, drawnFrom), layers.slice(drawnFrom)];
  const overlays = await Promise.all(over.map(async (layer) => overlay(layer, width, height)));
  const sharp = await loadedSharp();
  const picture = sharp(filled(flat, width, height), { raw: { width, height, channels: 3 } })
    .composite(overlays)
    .removeAlpha();
  return type === "png"
    ? picture.png({ compressionLevel: COMPRESSION_LEVEL }).toBuffer()
    : picture.avif({ quality: 85, effort: 1, chromaSubsampling: "4:4:4" }).toBuffer();
}

/** Three channels of 8 bits of the flat boxes that lie below all else: a swatch laid over takes ten times the work. */
function filled(layers: readonly Layer[], width: number, height: number): Buffer {
  const pixels = Buffer.alloc(3 * width * height);
  for (const layer of layers) {
    if (!("colour" in layer)) continue;
    const { left, top, right, bottom } = within(layer.box, width, height);
    const row = Buffer.alloc(3 * (right - left), Buffer.from(layer.colour.slice(1), "hex"));
    for (let y = top; y < bottom; y++) row.copy(pixels, 3 * (y * width + left));
  }
  return pixels;
}

function within({ left, top, right, bottom }: PixelBox, width: number, height: number): PixelBox {
  return {
    left: Math.max(left, 0),
    top: Math.max(top, 0),
    right: Math.min(right, width),
    bottom: Math.min(bottom, height),
  };
}

/** Of what is laid over the flat boxes below it. */
async function overlay(layer: Layer, width: number, height: number): Promise<OverlayOptions> {
  if ("colour" in layer) {
    const { left, top, right, bottom } = within(layer.box, width, height);
    const size = { width: right - left, height: bottom - top };
    return { input: { create: { ...size, channels: 3, background: layer.colour } }, left, top };
  }
  const { rgba, widthPx, heightPx, left, top } =
    "text" in layer
      ? await textStamp(layer.text)
      : await stampOf(layer.drawn, extentOf(layer.drawn));
  return {
    input: rgba,
    raw: { width: widthPx, height: heightPx, channels: 4 },
    left,
    top,
  };
}
