import { refusal } from "../plots/svg.ts";
import { MM_PER_PT, type BoxMark, type LineMark, type Mark, type TextMark } from "../print/mark.ts";
import { inPx } from "./picture-face.ts";

/** A box in whole pixels. */
export interface PixelBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What a picture is made of beside texts. */
type Shape = BoxMark | LineMark;

/** What is laid over what lies below: a box of whole pixels, or what has to be drawn. */
export type Layer =
  | { readonly box: PixelBox; readonly colour: string }
  | { readonly text: TextMark }
  | { readonly drawn: readonly Shape[] };

/**
 * Marks in their order; shapes that are drawn and follow each other are drawn together.
 * @throws RangeError for a mark that no picture to pass on has: a fault of ours.
 */
export function layersOf(marks: readonly Mark[]): Layer[] {
  const layers: Layer[] = [];
  for (const mark of marks.map(inSrgb)) {
    const before = layers.at(-1);
    if (mark.kind === "text") layers.push({ text: mark });
    else if (mark.kind !== "box" && mark.kind !== "line")
      throw refusal("mark of a picture", mark.kind, "a text, a box or a line");
    else {
      const filled = filledBox(mark);
      if (filled !== undefined) layers.push(filled);
      else if (before !== undefined && "drawn" in before)
        layers[layers.length - 1] = { drawn: [...before.drawn, mark] };
      else layers.push({ drawn: [mark] });
    }
  }
  return layers;
}

/** The picture is in sRGB alone: what a screen of more colours would show is left to pages. */
function inSrgb<M extends Mark>(mark: M): M {
  return "ink" in mark && "lab" in mark.ink
    ? { ...mark, ink: { srgb: mark.ink.screen.hex } }
    : mark;
}

function edgesOf({
  xMm,
  yMm,
  widthMm,
  heightMm,
}: Pick<BoxMark, "xMm" | "yMm" | "widthMm" | "heightMm">): PixelBox {
  return {
    left: inPx(xMm),
    top: inPx(yMm),
    right: inPx(xMm + widthMm),
    bottom: inPx(yMm + heightMm),
  };
}

/** A box in sRGB that cuts through no pixel. */
function filledBox(mark: Shape): Layer | undefined {
  if (mark.kind !== "box" || !("srgb" in mark.ink)) return undefined;
  const cut = edgesOf(mark);
  const box: PixelBox = {
    left: Math.round(cut.left),
    top: Math.round(cut.top),
    right: Math.round(cut.right),
    bottom: Math.round(cut.bottom),
  };
  const isWhole = (["left", "top", "right", "bottom"] as const).every(
    (edge) => Math.abs(box[edge] - cut[edge]) < LEAST_CUT,
  );
  return isWhole ? { box, colour: mark.ink.srgb } : undefined;
}

/** Of a pixel: less of it is no cut, but the last digit of a length. */
const LEAST_CUT = 1e-6;

/** What shapes reach over, their lines' widths included. */
export function extentOf(shapes: readonly Shape[]): PixelBox {
  const reached = shapes.map((shape): PixelBox => {
    if (shape.kind === "box") return edgesOf(shape);
    const [[fromX, fromY], [toX, toY]] = [shape.fromMm, shape.toMm];
    const half = (shape.widthPt * MM_PER_PT) / 2;
    return edgesOf({
      xMm: Math.min(fromX, toX) - half,
      yMm: Math.min(fromY, toY) - half,
      widthMm: Math.abs(toX - fromX) + 2 * half,
      heightMm: Math.abs(toY - fromY) + 2 * half,
    });
  });
  const edges = (edge: keyof PixelBox): number[] => reached.map((one) => one[edge]);
  return {
    left: Math.floor(Math.min(...edges("left"))),
    top: Math.floor(Math.min(...edges("top"))),
    right: Math.ceil(Math.max(...edges("right"))),
    bottom: Math.ceil(Math.max(...edges("bottom"))),
  };
}
