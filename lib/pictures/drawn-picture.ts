import { loadedSharp } from "../photographs/loaded-sharp.ts";
import { inPx, type PictureFace } from "./picture-face.ts";
import { extentOf, layersOf } from "./picture-layers.ts";
import { fillBox, layStamp, pixelGround } from "./pixel-ground.ts";
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
  const ground = pixelGround(width, height);
  for (const layer of layersOf(marks))
    if ("colour" in layer) fillBox(ground, layer.box, layer.colour);
    else
      layStamp(
        ground,
        "text" in layer
          ? await textStamp(layer.text)
          : await stampOf(layer.drawn, extentOf(layer.drawn)),
      );
  const sharp = await loadedSharp();
  const picture = sharp(ground.rgb, { raw: { width, height, channels: 3 } });
  return type === "png"
    ? picture.png({ compressionLevel: COMPRESSION_LEVEL }).toBuffer()
    : picture.avif({ quality: 85, effort: 1, chromaSubsampling: "4:4:4" }).toBuffer();
}
