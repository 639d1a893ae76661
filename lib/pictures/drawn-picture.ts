import { loadedSharp } from "../photographs/loaded-sharp.ts";
import { indexedPng } from "./indexed-png.ts";
import { inPx, type PictureFace } from "./picture-face.ts";
import { extentOf, layersOf } from "./picture-layers.ts";
import { channelsOf, emptyPixels, fillBox, layOver, type Pixels } from "./pixels.ts";
import { stampOf, textStamp } from "./stamps.ts";

/** Formats that pictures to pass on come in: one that every site takes, and the lightest. */
export const PICTURE_TYPES = ["png", "avif"] as const;
export type PictureType = (typeof PICTURE_TYPES)[number];

/** A face as a picture in sRGB: a flat swatch has the very sRGB of its paint. */
export async function drawnPicture(face: PictureFace, type: PictureType): Promise<Uint8Array> {
  const pixels = await drawnPixels(face);
  const indexed = type === "png" ? await indexedPng(pixels) : undefined;
  if (indexed !== undefined) return indexed;
  const sharp = await loadedSharp();
  const { widthPx: width, heightPx: height } = pixels;
  const picture = sharp(channelsOf(pixels), { raw: { width, height, channels: 3 } });
  return type === "png"
    ? picture.png({ compressionLevel: 8 }).toBuffer()
    : picture.avif({ quality: 85, effort: 1, chromaSubsampling: "4:4:4" }).toBuffer();
}

/** Boxes on whole pixels, nearly all of a picture, are filled; only letters and lines are drawn. */
async function drawnPixels({ widthMm, heightMm, marks }: PictureFace): Promise<Pixels> {
  const [widthPx, heightPx] = [Math.round(inPx(widthMm)), Math.round(inPx(heightMm))];
  const pixels = emptyPixels(widthPx, heightPx);
  const layers = layersOf(marks).map(async (layer) =>
    "colour" in layer
      ? layer
      : "text" in layer
        ? textStamp(layer.text)
        : stampOf(layer.drawn, extentOf(layer.drawn)),
  );
  for (const layer of await Promise.all(layers))
    if ("colour" in layer) fillBox(pixels, layer.box, layer.colour);
    else layOver(pixels, layer);
  return pixels;
}
