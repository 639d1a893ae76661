import encodeQR from "qr";
import { BLACK, WHITE, type Tagged } from "./mark.ts";

/** Light modules that ISO/IEC 18004 asks for on every side. */
export const QR_QUIET_MODULES = 4;

/** Dark modules of an address, row by row. */
export interface QrMatrix {
  /** Modules along a side, quiet zone left out. */
  readonly size: number;
  readonly isDark: (row: number, column: number) => boolean;
}

/** @source ISO/IEC 18004, error correction M: a fingered card still reads. */
export function qrMatrix(address: string): QrMatrix {
  // Its border is at least one module wide; the quiet zone is drawn by us.
  const modules = encodeQR(address, "raw", { ecc: "medium", border: 1 });
  return {
    size: modules.length - 2,
    isDark: (row, column) => modules[row + 1]?.[column + 1] ?? false,
  };
}

/** Modules drawn as vectors in a square of a side [mm], their quiet zone inside the square; `alt` says the address. */
export function qrFigure(
  matrix: QrMatrix,
  alt: string,
  { xMm, yMm, sideMm }: { readonly xMm: number; readonly yMm: number; readonly sideMm: number },
): Tagged {
  const moduleMm = sideMm / (matrix.size + 2 * QR_QUIET_MODULES);
  const inset = QR_QUIET_MODULES * moduleMm;
  return {
    tag: "Figure",
    alt,
    marks: [
      { kind: "box", xMm, yMm, widthMm: sideMm, heightMm: sideMm, ink: WHITE },
      {
        kind: "path",
        d: modulesPath(matrix),
        xMm: xMm + inset,
        yMm: yMm + inset,
        scale: moduleMm,
        ink: BLACK,
      },
    ],
  };
}

/** One path of the dark modules, neighbours in a row joined: no hairline shows between them. */
export function modulesPath({ size, isDark }: QrMatrix): string {
  let d = "";
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      if (!isDark(row, column)) continue;
      const from = column;
      while (column + 1 < size && isDark(row, column + 1)) column++;
      d += `M${from} ${row}H${column + 1}V${row + 1}H${from}Z`;
    }
  }
  return d;
}
