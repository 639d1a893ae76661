import { inflateSync } from "node:zlib";

const WOFF_HEADER = 44;
const WOFF_ENTRY = 20;
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;
/** "wOFF" */
const SIGNATURE = 0x774f4646;

/**
 * The OpenType font that a WOFF file holds. Unpacked once, it is read by every
 * document; left packed, each document would inflate it anew, which takes longer
 * than drawing.
 * @throws RangeError for a file that is no WOFF 1.0.
 * @source W3C WOFF File Format 1.0, sections 3 and 5
 */
export function unpackedFont(woff: Uint8Array): Uint8Array {
  const view = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (woff.byteLength < WOFF_HEADER || view.getUint32(0) !== SIGNATURE) throw new RangeError("Unexpected font file, expected `WOFF 1.0`");
  const count = view.getUint16(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = WOFF_HEADER + i * WOFF_ENTRY;
    const [offset, packed, length] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
    const bytes = woff.subarray(offset, offset + packed);
    return { tag: view.getUint32(at), checksum: view.getUint32(at + 16), bytes: packed < length ? inflateSync(bytes) : bytes };
  });
  const start = SFNT_HEADER + count * SFNT_ENTRY;
  const size = tables.reduce((sum, { bytes }) => sum + padded(bytes.length), start);
  const font = new Uint8Array(size);
  const out = new DataView(font.buffer);
  const power = 2 ** Math.floor(Math.log2(count));
  out.setUint32(0, view.getUint32(4));
  [count, power * 16, Math.log2(power), count * 16 - power * 16].forEach((value, i) => out.setUint16(4 + i * 2, value));
  let offset = start;
  tables.forEach(({ tag, checksum, bytes }, i) => {
    [tag, checksum, offset, bytes.length].forEach((value, j) => out.setUint32(SFNT_HEADER + i * SFNT_ENTRY + j * 4, value));
    font.set(bytes, offset);
    offset += padded(bytes.length);
  });
  return font;
}

/** Tables begin at multiples of four bytes. */
function padded(length: number): number {
  return Math.ceil(length / 4) * 4;
}
