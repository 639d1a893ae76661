import { type Tagged, BLACK, MM_PER_PT, WHITE } from "./mark.ts";
import { EAN_MODULE_MM, EAN_MODULES, EAN_QUIET, eanBars, eanPath, eanText } from "./ean-symbol.ts";
import { heldFew } from "../kept/held-few.ts";
import type { Column } from "./package-flow.ts";
import type { PackageLabelContent } from "./package-label-content.ts";
import type { PackageSize } from "./package-size.ts";
import { QR_QUIET_MODULES, qrFigure, qrMatrix } from "./qr-figure.ts";
import { FACE_HEIGHTS } from "./print-font.ts";
import { measureText } from "./print-document.ts";

/** A symbol that a till or a telephone reads, with the room that it takes, quiet zones in it [mm]. */
export interface LabelSymbol {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly blocksAt: (xMm: number, yMm: number) => readonly Tagged[];
}

/** Length of bars [mm]: cut down to what a label has room for. Our own choice. */
const BAR_MM = 10;
const DIGITS = { face: "sans", sizePt: 6.5 } as const;
/** Of a QR code [mm]: what a telephone reads from a hand's breadth. Common practice. */
const QR_MODULE_MM = 0.35;
/** How far round a tube bars may reach [radians]: a scanner sees no farther. @source iso-15420-memory */
const MOST_BENT = Math.PI / 3;

/** The symbol that a label is asked for; undefined where it is asked for none, or the colour has no number or address. */
export function labelSymbol(
  { ean, address, name }: PackageLabelContent,
  { symbol, diameterMm }: Pick<PackageSize, "symbol" | "diameterMm">,
): LabelSymbol | undefined {
  if (symbol === "ean" && ean !== undefined)
    return made(`${ean} ${diameterMm}`, () => eanSymbol(ean, diameterMm));
  if (symbol === "qr" && address !== undefined)
    return made(`${address} ${name}`, () => qrSymbol(address, name));
  return undefined;
}

/** A symbol in a lower corner of a face, the same on all labels of a size. */
export interface CornerSymbol {
  readonly blocks: readonly Tagged[];
  /** A column that ends above the symbol where it would run into it. */
  readonly above: (column: Column) => Column;
}

/** Above a symbol, whose quiet zone is in its height [mm]. */
const ABOVE_MM = 1;

/** In which corner of what area. */
export function cornerSymbol(
  symbol: LabelSymbol | undefined,
  corner: "left" | "right",
  { xMm, widthMm, bottomMm }: Pick<Column, "xMm" | "widthMm" | "bottomMm">,
): CornerSymbol {
  if (symbol === undefined) return { blocks: [], above: (column) => column };
  const leftMm = corner === "left" ? xMm : xMm + widthMm - symbol.widthMm;
  const topMm = bottomMm - symbol.heightMm;
  return {
    blocks: symbol.blocksAt(leftMm, topMm),
    above: (column) =>
      column.xMm < leftMm + symbol.widthMm && column.xMm + column.widthMm > leftMm
        ? { ...column, bottomMm: Math.min(column.bottomMm, topMm - ABOVE_MM) }
        : column,
  };
}

/** Of one label, which is tried in many ways before it lies well. */
const made = heldFew<LabelSymbol>(1);

function eanSymbol(ean: string, diameterMm: number | undefined): LabelSymbol {
  const bars = eanBars(ean);
  const longMm = (EAN_QUIET.before + EAN_MODULES + EAN_QUIET.behind) * EAN_MODULE_MM;
  const isBent =
    diameterMm !== undefined && (EAN_MODULES * EAN_MODULE_MM) / (diameterMm / 2) > MOST_BENT;
  const digits = eanText(ean);
  const digitsMm = measureText(digits, DIGITS.face, DIGITS.sizePt);
  const digitsHighMm = (FACE_HEIGHTS.sans.capital + 0.25) * DIGITS.sizePt * MM_PER_PT;
  const barsMm = isBent ? { width: BAR_MM, height: longMm } : { width: longMm, height: BAR_MM };
  const widthMm = Math.max(barsMm.width, digitsMm);
  const heightMm = barsMm.height + digitsHighMm;
  const quiet = EAN_QUIET.before * EAN_MODULE_MM;
  return {
    widthMm,
    heightMm,
    blocksAt: (xMm, yMm) => {
      const left = xMm + (widthMm - barsMm.width) / 2;
      return [
        {
          tag: "Figure",
          alt: `EAN ${ean}`,
          marks: [
            { kind: "box", xMm, yMm, widthMm, heightMm, ink: WHITE },
            {
              kind: "path",
              d: eanPath(bars, BAR_MM / EAN_MODULE_MM, isBent ? "down" : "across"),
              xMm: isBent ? left : left + quiet,
              yMm: isBent ? yMm + quiet : yMm,
              scale: EAN_MODULE_MM,
              ink: BLACK,
            },
            {
              kind: "text",
              text: digits,
              xMm: xMm + (widthMm - digitsMm) / 2,
              yMm: yMm + heightMm,
              ...DIGITS,
            },
          ],
        },
      ];
    },
  };
}

function qrSymbol(address: string, name: string): LabelSymbol {
  const matrix = qrMatrix(address);
  const sideMm = (matrix.size + 2 * QR_QUIET_MODULES) * QR_MODULE_MM;
  return {
    widthMm: sideMm,
    heightMm: sideMm,
    blocksAt: (xMm, yMm) => [qrFigure(matrix, `${name}: ${address}`, { xMm, yMm, sideMm })],
  };
}
