import { promisify } from "node:util";
import { crc32, deflate } from "node:zlib";
import type { Pixels } from "./pixels.ts";

const deflated = promisify(deflate);

const MOST_COLOURS = 256;
const SIGNATURE = "\x89PNG\r\n\x1a\n";
const [BITS, INDEXED] = [8, 3];
/** Flat paint packs as well as it will at once, and letters are few. */
const LEVEL = 3;

/**
 * A picture of few colours as a PNG of indexes, a third of the bytes to pack that its channels would
 * be, and no colour moved.
 * @returns undefined for more than 256 colours.
 * @source Portable Network Graphics (PNG) Specification, Third Edition, W3C : sections 5, 9 and 11
 */
export async function indexedPng({
  widthPx,
  heightPx,
  indexes,
  colours,
}: Pixels): Promise<Uint8Array | undefined> {
  if (colours.size > MOST_COLOURS) return undefined;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(widthPx, 0);
  header.writeUInt32BE(heightPx, 4);
  header.writeUInt8(BITS, 8);
  header.writeUInt8(INDEXED, 9);
  const palette = Buffer.alloc(3 * colours.size);
  for (const [colour, i] of colours) palette.writeUIntBE(colour, 3 * i, 3);
  // Each row behind the byte that says its filter: none.
  const rows = new Uint8Array((widthPx + 1) * heightPx);
  for (let y = 0; y < heightPx; y++)
    rows.set(indexes.subarray(y * widthPx, (y + 1) * widthPx), y * (widthPx + 1) + 1);
  return Buffer.concat([
    Buffer.from(SIGNATURE, "latin1"),
    chunk("IHDR", header),
    chunk("PLTE", palette),
    chunk("IDAT", await deflated(rows, { level: LEVEL })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const own = Buffer.alloc(12 + data.length);
  own.writeUInt32BE(data.length, 0);
  own.write(type, 4, "latin1");
  own.set(data, 8);
  own.writeUInt32BE(crc32(own.subarray(4, 8 + data.length)), 8 + data.length);
  return own;
}
