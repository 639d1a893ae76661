import { loadedSharp } from "../photographs/loaded-sharp.ts";
import { element, writtenSvg } from "../plots/svg.ts";
import { drawnMark } from "../print/card-face-svg.ts";
import { MM_PER_PT, shifted, type Mark, type TextMark } from "../print/mark.ts";
import { outlinedText } from "../print/outlined-text.ts";
import { measureText } from "../print/print-document.ts";
import { PX_PER_MM } from "./picture-face.ts";
import type { PixelBox } from "./picture-layers.ts";

/** Where a text begins is told to so small a part of a pixel, so that the same text is drawn once for many pictures. */
const PART_PX = 1 / 16;
/** Room about a text for what sticks out of its letters, in sizes of the type. */
const ROOM = { left: 0.4, right: 0.4, above: 1.1, below: 0.5 } as const;
/** Texts kept, those drawn last: on every picture stand the workshop's name and the whites'. Of the demonstration 36 of 1,398 are drawn again that were kept among more than twice as many. */
const MOST_KEPT = 128;

/** What is laid over a picture: RGBA, 8 bits each, its corner at a pixel that may lie outside. */
export interface Stamp {
  readonly left: number;
  readonly top: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Buffer;
}

const drawn = new Map<string, Promise<Stamp>>();

/** A text in outlines, over any ground, and the pixel that its corner belongs on. */
export async function textStamp(mark: TextMark): Promise<Stamp> {
  const pxPerEm = mark.sizePt * MM_PER_PT * PX_PER_MM;
  const [x, y] = [mark.xMm, mark.yMm].map(
    (mm) => Math.round((mm * PX_PER_MM) / PART_PX) * PART_PX,
  ) as [number, number];
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const placed = { ...mark, xMm: (x - left) / PX_PER_MM, yMm: (y - top) / PX_PER_MM };
  const box: PixelBox = {
    left: -Math.ceil(ROOM.left * pxPerEm),
    top: -Math.ceil(ROOM.above * pxPerEm),
    right: Math.ceil(
      1 + measureText(mark.text, mark.face, mark.sizePt) * PX_PER_MM + ROOM.right * pxPerEm,
    ),
    bottom: Math.ceil(1 + ROOM.below * pxPerEm),
  };
  const key = JSON.stringify(placed);
  const own = drawn.get(key) ?? stampOf(outlinedText(placed), box);
  drawn.delete(key);
  drawn.set(key, own);
  for (const oldest of drawn.keys()) {
    if (drawn.size <= MOST_KEPT) break;
    drawn.delete(oldest);
  }
  const stamp = await own;
  return { ...stamp, left: left + stamp.left, top: top + stamp.top };
}

/** Marks drawn over no ground, as far as they lie in a box about the origin. */
export async function stampOf(marks: readonly Mark[], box: PixelBox): Promise<Stamp> {
  const [widthPx, heightPx] = [box.right - box.left, box.bottom - box.top];
  const svg = writtenSvg(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        viewBox: `0 0 ${widthPx / PX_PER_MM} ${heightPx / PX_PER_MM}`,
        width: widthPx,
        height: heightPx,
      },
      marks.flatMap((mark) =>
        drawnMark(shifted(mark, -box.left / PX_PER_MM, -box.top / PX_PER_MM)),
      ),
    ),
  );
  const sharp = await loadedSharp();
  const rgba = await sharp(Buffer.from(svg)).ensureAlpha().raw().toBuffer();
  return { left: box.left, top: box.top, widthPx, heightPx, rgba };
}
