import * as jsqr from "jsqr";
import { expect, test } from "vitest";
import { modulesPath, qrFigure, qrMatrix } from "../../lib/print/qr-figure.ts";
import { painted } from "./painted-modules.ts";

type Reader = (
  data: Uint8ClampedArray,
  width: number,
  height: number,
) => { readonly data: string } | null;
/** The package is CommonJS whose types say otherwise. */
const decoded = (jsqr as unknown as { default: Reader }).default;

test.each([
  "https://saltreach.example/colours/bone-black/",
  "https://saltreach.example/colours/viridian-quinacridone-black/",
  "https://a.example/",
])("another reader finds %s in its modules", (address) => {
  const { size } = qrMatrix(address);
  const block = qrFigure(qrMatrix(address), "", { xMm: 3, yMm: 5, sideMm: 15 });
  const path = block.marks?.find(({ kind }) => kind === "path");
  const { data, side } = painted(path?.kind === "path" ? path.d : "", size, 4);
  expect(decoded(data, side, side)?.data).toBe(address);
});

test("modules and quiet zone fill the square", () => {
  const { size } = qrMatrix("https://a.example/");
  const path = qrFigure(qrMatrix("https://a.example/"), "", { xMm: 3, yMm: 5, sideMm: 14.5 })
    .marks?.[1];
  expect(path?.kind === "path" && path.scale).toBeCloseTo(14.5 / (size + 8), 12);
  expect(path?.kind === "path" && path.xMm - 3).toBeCloseTo((4 * 14.5) / (size + 8), 12);
});

test("neighbouring modules are one piece", () => {
  expect(modulesPath({ size: 3, isDark: (row, column) => row === 1 || column === 0 })).toBe(
    "M0 0H1V1H0ZM0 1H3V2H0ZM0 2H1V3H0Z",
  );
});
