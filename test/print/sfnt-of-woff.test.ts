import { describe, expect, test } from "vitest";
import { FACE_HEIGHTS, FACES, fontBytes } from "../../lib/print/print-font.ts";
import { sfntOfWoff } from "../../lib/print/sfnt-of-woff.ts";

/** A table of an unpacked font, found by its directory (ISO/IEC 14496-22, 4.5). */
function table(font: Uint8Array, tag: string): DataView {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    if (String.fromCharCode(...font.subarray(at, at + 4)) === tag)
      return new DataView(
        font.buffer,
        font.byteOffset + view.getUint32(at + 8),
        view.getUint32(at + 12),
      );
  }
  throw new Error(`Unexpected font without ${tag}`);
}

/** Sum of a table's words, which the directory states (ISO/IEC 14496-22, 5.2.1). */
function checksum(view: DataView): number {
  let sum = 0;
  for (let at = 0; at < view.byteLength; at += 4) {
    let word = 0;
    for (let i = 0; i < 4; i++)
      word = word * 256 + (at + i < view.byteLength ? view.getUint8(at + i) : 0);
    sum = (sum + word) % 2 ** 32;
  }
  return sum;
}

describe.each(FACES.map((face) => ({ face })))("$face", ({ face }) => {
  const font = fontBytes(face, "latin");

  test("comes out with every table as its directory sums it", () => {
    const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
    expect(view.getUint32(0)).toBe(0x00010000);
    expect(view.getUint16(4)).toBeGreaterThan(8);
    for (let i = 0; i < view.getUint16(4); i++) {
      const at = 12 + 16 * i;
      const tag = String.fromCharCode(...font.subarray(at, at + 4));
      // The sum of head counts its own adjustment as nothing.
      if (tag !== "head") expect(checksum(table(font, tag)), tag).toBe(view.getUint32(at + 4));
    }
  });

  test("has the capitals that lines are aligned by (OS/2 sCapHeight over head unitsPerEm)", () => {
    expect(table(font, "OS/2").getInt16(88) / table(font, "head").getUint16(18)).toBeCloseTo(
      FACE_HEIGHTS[face].capital,
      2,
    );
  });
});

test("bytes that are no WOFF are refused", () => {
  expect(() => sfntOfWoff(new Uint8Array(44))).toThrow("The font file is no WOFF 1.0");
  expect(() => sfntOfWoff(new Uint8Array(3))).toThrow(RangeError);
});
