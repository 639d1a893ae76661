import type { LadderBlock, PaintColour, SwatchesBlock } from "../blocks/block.ts";
import type { BoxMm } from "../print/mark.ts";
import {
  ground,
  imprintMarks,
  leastNameMm,
  lineMarks,
  nameMarks,
  paintBox,
  swatchGrid,
  tenth,
  type Imprint,
  type PictureFace,
} from "./picture-face.ts";

/** A colour as its page shows it. */
export interface ShownPaint {
  readonly name: string;
  /** "PB 29, PBk 9"; empty where no pigment has a Colour Index name. */
  readonly index: string;
  readonly masstone: PaintColour;
  readonly tints?: SwatchesBlock;
  /** In the first white that it was let down in. */
  readonly ladder?: LadderBlock;
}

/** Sizes that sites which show a link ask for, and a strip [mm, ten pixels each]. */
export const WIDE = { widthMm: 120, heightMm: 63 } as const;
export const SQUARE = { widthMm: 108, heightMm: 108 } as const;
export const STRIP = { widthMm: 120, heightMm: 30 } as const;

const EDGE = 4.5;
const HEAD_MM = 3.4;

/** Masstone off three edges, its tints in each white beside it, names below. */
export function wideFace(paint: ShownPaint, imprint: Imprint): PictureFace {
  const { widthMm, heightMm } = WIDE;
  const [paintMm, bottom] = [paint.tints === undefined ? widthMm : 66, 43];
  const name = {
    xMm: EDGE,
    yMm: bottom + 2.2,
    widthMm: 66 - EDGE,
    heightMm: heightMm - bottom - 2.2 - EDGE + 1,
  };
  const signed = { ...name, xMm: 70, widthMm: widthMm - 70 - EDGE };
  return {
    ...WIDE,
    marks: [
      ground(WIDE),
      ...paintBox(
        { colour: paint.masstone },
        { xMm: 0, yMm: 0, widthMm: paintMm, heightMm: bottom },
      ),
      ...tintMarks(paint.tints, {
        xMm: 66,
        yMm: 0,
        widthMm: widthMm - 66,
        heightMm: bottom,
      }),
      ...nameMarks(paint, name, 22),
      ...imprintMarks(imprint, signed),
    ],
  };
}

/** Masstone off three edges, its tints below it, names at the foot. */
export function squareFace(paint: ShownPaint, imprint: Imprint): PictureFace {
  const { widthMm, heightMm } = SQUARE;
  const hasTints = paint.tints !== undefined;
  const [paintMm, bottom] = hasTints ? [52, 78] : [78, 78];
  const top = bottom + (hasTints ? HEAD_MM + 2 : 3);
  return {
    ...SQUARE,
    marks: [
      ground(SQUARE),
      ...paintBox({ colour: paint.masstone }, { xMm: 0, yMm: 0, widthMm, heightMm: paintMm }),
      ...tintMarks(paint.tints, { xMm: 0, yMm: paintMm, widthMm, heightMm: bottom - paintMm }),
      ...nameMarks(
        paint,
        { xMm: EDGE, yMm: top, widthMm: widthMm - 2 * EDGE, heightMm: heightMm - top - 9.5 },
        26,
      ),
      ...imprintMarks(imprint, {
        xMm: EDGE,
        yMm: heightMm - 9,
        widthMm: widthMm - 2 * EDGE,
        heightMm: 9 - EDGE + 1,
      }),
    ],
  };
}

/** Masstone and its let-downs in one white, abutting; their ratios, the name and whose it is below. */
export function stripFace(paint: ShownPaint, imprint: Imprint): PictureFace {
  const { widthMm } = STRIP;
  const nameMm = 60;
  // A name that two lines do not hold makes the strip higher.
  const heightMm = Math.max(STRIP.heightMm, tenth(21.6 + leastNameMm(paint, nameMm)));
  const { ladder } = paint;
  const steps = (ladder?.steps ?? []).filter(({ colour }) => colour !== undefined);
  const [paintMm, bottom] = [steps.length === 0 ? widthMm : 34, 15];
  const each = (widthMm - paintMm) / Math.max(steps.length, 1);
  const labels = { yMm: bottom + 0.7, mostPt: 7.4 };
  const name = { xMm: EDGE, yMm: 20, widthMm: nameMm, heightMm: heightMm - 20 - 1.6 };
  return {
    widthMm,
    heightMm,
    marks: [
      ground({ widthMm, heightMm }),
      ...paintBox(
        { colour: paint.masstone },
        { xMm: 0, yMm: 0, widthMm: paintMm, heightMm: bottom },
      ),
      ...(steps.length === 0
        ? []
        : swatchGrid(
            steps.map((step) => [step]),
            { xMm: paintMm, yMm: 0, widthMm: widthMm - paintMm, heightMm: bottom },
          )),
      ...lineMarks(
        steps.length === 0 ? "" : (ladder?.name ?? ""),
        { xMm: EDGE, yMm: labels.yMm, widthMm: paintMm - EDGE - 1.5 },
        { align: "right", mostPt: labels.mostPt },
      ),
      ...steps.flatMap(({ label }, i) =>
        lineMarks(
          label,
          { xMm: paintMm + i * each, yMm: labels.yMm, widthMm: each },
          { align: "centre", mostPt: labels.mostPt },
        ),
      ),
      ...nameMarks(paint, name, 15),
      ...imprintMarks(imprint, {
        xMm: 66,
        yMm: 20,
        widthMm: widthMm - 66 - EDGE,
        heightMm: heightMm - 20 - 2.4,
      }),
    ],
  };
}

/** Tints abutting, a column a white, the whites named below. */
function tintMarks(tints: SwatchesBlock | undefined, box: BoxMm): PictureFace["marks"] {
  if (tints === undefined) return [];
  const each = box.widthMm / tints.columns.length;
  return [
    ...swatchGrid(
      tints.columns.map(({ cells }) => cells),
      box,
    ),
    ...tints.columns.flatMap(({ head }, i) => {
      const xMm = Math.max(EDGE, box.xMm + i * each + 0.8);
      return lineMarks(
        head,
        {
          xMm,
          yMm: box.yMm + box.heightMm + 0.9,
          widthMm: box.xMm + (i + 1) * each - 0.8 - xMm,
        },
        { mostPt: 7.4 },
      );
    }),
  ];
}
