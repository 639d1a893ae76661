import { inflateSync } from "node:zlib";

const HEADER = { woff: 44, woffEntry: 20, sfnt: 12, sfntEntry: 16 } as const;

/**
 * The font inside a WOFF file, its tables unpacked. fontkit would unpack them itself,
 * but in JavaScript and anew for every document, which takes longer than drawing one.
 * @throws RangeError for bytes that are no WOFF 1.0.
 * @source W3C WOFF File Format 1.0, sections 3 to 5
 */
export function sfntOfWoff(woff: Uint8Array): Uint8Array {
  const from = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (woff.byteLength < HEADER.woff || from.getUint32(0) !== 0x774f4646)
    throw new RangeError("The font file is no WOFF 1.0");
  const count = from.getUint16(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = HEADER.woff + i * HEADER.woffEntry;
    const [offset, packed, length] = [
      from.getUint32(at + 4),
      from.getUint32(at + 8),
      from.getUint32(at + 12),
    ];
    const bytes = woff.subarray(offset, offset + packed);
    return {
      tag: from.getUint32(at),
      checksum: from.getUint32(at + 16),
      bytes: packed < length ? inflateSync(bytes) : bytes,
    };
  });
  const first = HEADER.sfnt + count * HEADER.sfntEntry;
  const sfnt = new Uint8Array(
    first + tables.reduce((sum, { bytes }) => sum + padded(bytes.length), 0),
  );
  const to = new DataView(sfnt.buffer);
  const power = Math.floor(Math.log2(count));
  to.setUint32(0, from.getUint32(4));
  [count, 16 * 2 ** power, power, 16 * (count - 2 ** power)].forEach((value, i) =>
    to.setUint16(4 + 2 * i, value),
  );
  let offset = first;
  tables.forEach(({ tag, checksum, bytes }, i) => {
    [tag, checksum, offset, bytes.length].forEach((value, part) =>
      to.setUint32(HEADER.sfnt + i * HEADER.sfntEntry + 4 * part, value),
    );
    sfnt.set(bytes, offset);
    offset += padded(bytes.length);
  });
  return sfnt;
}

function padded(length: number): number {
  return (length + 3) & ~3;
}
