import type { PaintColour, SwatchCell } from "../blocks/block.ts";
import { type SQUARE, STRIP, WIDE, type ShownPaint } from "./colour-faces.ts";
import {
  ground,
  imprintMarks,
  leastNameMm,
  lineMarks,
  nameMarks,
  nameSize,
  swatchGrid,
  tenth,
  type Imprint,
  type PictureFace,
} from "./picture-face.ts";

const EDGE = 4.5;
const GAP = 2;
const NAME_FROM = 1.4;
/** Height of the masstones in a strip, at least. */
const LEAST_PAINT = 12;

/** Several colours beside each other: masstones abutting, below each what it does in the white that all were let down in. */
export function besideFace(
  paints: readonly ShownPaint[],
  imprint: Imprint,
  size: typeof WIDE | typeof SQUARE | typeof STRIP,
): PictureFace {
  const { widthMm } = size;
  const isStrip = size === STRIP;
  const white = isStrip ? undefined : sharedWhite(paints);
  const each = widthMm / paints.length;
  const columns = paints.map((paint, i) => {
    const xMm = Math.max(EDGE, i * each + GAP);
    return { paint, xMm, widthMm: (i + 1) * each - GAP - xMm };
  });
  const names = Math.max(
    isStrip ? 8 : size === WIDE ? 14 : 20,
    ...columns.map(({ paint, widthMm: own }) => tenth(leastNameMm(paint, own) + NAME_FROM)),
  );
  const foot = isStrip ? 7.4 : 8.6;
  // Names that find no room below the paint make a strip higher; in a fixed size the paint gives way.
  const heightMm = isStrip ? Math.max(size.heightMm, LEAST_PAINT + names + foot) : size.heightMm;
  const bottom = heightMm - names - foot;
  const nameBox = { yMm: bottom + NAME_FROM, heightMm: names - NAME_FROM };
  // One size for all names: a larger one would seem to be of more weight.
  const namePt = Math.min(
    ...columns.map(({ paint, widthMm: own }) =>
      nameSize(paint, { ...nameBox, widthMm: own }, isStrip ? 10 : 15),
    ),
  );
  const paintMm = white === undefined ? bottom : Math.round(bottom * 6) / 10;
  return {
    widthMm,
    heightMm,
    marks: [
      ground({ widthMm, heightMm }),
      ...swatchGrid(
        paints.map(({ masstone }) => [{ colour: masstone }]),
        { xMm: 0, yMm: 0, widthMm, heightMm: paintMm },
      ),
      ...(white === undefined
        ? []
        : swatchGrid(
            paints.map((paint) => cellsIn(white, paint)),
            { xMm: 0, yMm: paintMm, widthMm, heightMm: bottom - paintMm },
          )),
      ...columns.flatMap(({ paint, xMm, widthMm: own }) =>
        nameMarks(paint, { ...nameBox, xMm, widthMm: own }, namePt),
      ),
      ...(white === undefined
        ? []
        : lineMarks(
            white,
            { xMm: EDGE, yMm: heightMm - EDGE - 2.4, widthMm: widthMm / 2 - EDGE - GAP },
            { mostPt: 7.4 },
          )),
      ...imprintMarks(imprint, {
        xMm: widthMm / 2,
        yMm: heightMm - foot,
        widthMm: widthMm / 2 - EDGE,
        heightMm: foot - (isStrip ? 1.4 : 2.4),
      }),
    ],
  };
}

/** The first white in which each of some colours has tints. */
function sharedWhite(paints: readonly ShownPaint[]): string | undefined {
  const [first, ...others] = paints.map(({ tints }) =>
    (tints?.columns ?? []).map(({ head }) => head),
  );
  return first?.find((head) => others.every((heads) => heads.includes(head)));
}

function cellsIn(white: string, { tints }: ShownPaint): readonly SwatchCell[] {
  return tints?.columns.find(({ head }) => head === white)?.cells ?? [];
}

/** The whole range as a wall of masstones, and whose it is. */
export function rangeFace(
  colours: readonly PaintColour[],
  { name, lead }: { readonly name: string; readonly lead: string },
  { demonstration }: Imprint,
): PictureFace {
  const { widthMm, heightMm } = WIDE;
  const bottom = 44;
  const rows = Math.max(1, Math.round(Math.sqrt((colours.length * bottom) / widthMm)));
  const rowMm = bottom / rows;
  const ends = Array.from({ length: rows + 1 }, (_, i) => Math.round((i * colours.length) / rows));
  return {
    ...WIDE,
    marks: [
      ground(WIDE),
      ...Array.from({ length: rows }, (_, row) =>
        swatchGrid(
          colours.slice(ends[row], ends[row + 1]).map((colour) => [{ colour }]),
          {
            xMm: 0,
            yMm: Math.round(row * rowMm * 10) / 10,
            widthMm,
            heightMm: Math.round((row + 1) * rowMm * 10) / 10 - Math.round(row * rowMm * 10) / 10,
          },
        ),
      ).flat(),
      ...nameMarks(
        { name, index: lead },
        {
          xMm: EDGE,
          yMm: bottom + 2.4,
          widthMm: widthMm - 2 * EDGE,
          heightMm: heightMm - bottom - 2.4 - (demonstration === undefined ? 3 : 6),
        },
        20,
      ),
      ...(demonstration === undefined
        ? []
        : lineMarks(demonstration, {
            xMm: EDGE,
            yMm: heightMm - 5.4,
            widthMm: widthMm - 2 * EDGE,
          })),
    ],
  };
}
