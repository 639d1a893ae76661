import sharp from "sharp";
import { keptBytes } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { element, writtenSvg } from "../plots/svg.ts";
import { drawnMark } from "../print/card-face-svg.ts";
import { outlinedText } from "../print/outlined-text.ts";
import type { Mark, TextMark } from "../print/mark.ts";
import { PX_PER_MM, type PictureFace } from "./picture-face.ts";

/** Formats that pictures to pass on come in: one that every site takes, and the lightest. */
export const PICTURE_TYPES = ["png", "avif"] as const;
export type PictureType = (typeof PICTURE_TYPES)[number];

/** A face as a picture in sRGB, kept by what is on it: a flat swatch has the very sRGB of its paint. */
export async function drawnPicture(
  face: PictureFace,
  type: PictureType,
  cache?: WorkCache,
): Promise<Uint8Array> {
  const svg = faceMarkup(face);
  return keptBytes(
    cache,
    { modules: ["lib/pictures/drawn-picture.ts"], inputs: { svg, type } },
    async () => {
      const picture = sharp(Buffer.from(svg)).flatten({ background: "#939393" }).removeAlpha();
      return type === "png"
        ? picture.png({ compressionLevel: 8 }).toBuffer()
        : picture.avif({ quality: 85, effort: 1, chromaSubsampling: "4:4:4" }).toBuffer();
    },
  );
}

/** The face as SVG whose letters are outlines. */
export function faceMarkup({ widthMm, heightMm, marks }: PictureFace): string {
  const drawn = marks
    .flatMap((mark) => (mark.kind === "text" ? outlinedText(mark) : [mark]))
    .map(inSrgb);
  return writtenSvg(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        viewBox: `0 0 ${widthMm} ${heightMm}`,
        width: widthMm * PX_PER_MM,
        height: heightMm * PX_PER_MM,
      },
      drawn.flatMap(drawnMark),
    ),
  );
}

/** The picture is in sRGB alone: what a screen of more colours would show is left to pages. */
function inSrgb(mark: Exclude<Mark, TextMark>): Exclude<Mark, TextMark> {
  return "ink" in mark && "lab" in mark.ink
    ? { ...mark, ink: { srgb: mark.ink.screen.hex } }
    : mark;
}
