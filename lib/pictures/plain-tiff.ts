/** Channels, bits of each and what they mean, by TIFF 6.0, sections 16 (inks, 8 bits) and 23 (L*a*b*, 16 bits). */
const KINDS = {
  lab: { channels: 3, bits: 16, photometric: 8 },
  cmyk: { channels: 4, bits: 8, photometric: 5 },
} as const;

const SHORT = 3;
const LONG = 4;
const HEADER = 8;
const ENTRY = 12;

/**
 * Some colours as a picture of one row, for a library that takes L*a*b* and inks from files alone.
 * @source TIFF 6.0, sections 2, 16 and 23.
 */
export function plainTiff(kind: keyof typeof KINDS, count: number, data: Uint8Array): Buffer {
  const { channels, bits, photometric } = KINDS[kind];
  const entries = 11;
  const bitsAt = HEADER + 2 + ENTRY * entries + 4;
  const dataAt = bitsAt + 2 * channels;
  const fields: readonly (readonly [tag: number, type: number, values: number, value: number])[] = [
    [256, LONG, 1, count],
    [257, LONG, 1, 1],
    [258, SHORT, channels, bitsAt],
    [259, SHORT, 1, 1],
    [262, SHORT, 1, photometric],
    [273, LONG, 1, dataAt],
    [277, SHORT, 1, channels],
    [278, LONG, 1, 1],
    [279, LONG, 1, data.length],
    [284, SHORT, 1, 1],
    // InkSet: cyan, magenta, yellow, black; of L*a*b* nobody reads it.
    [332, SHORT, 1, 1],
  ];
  const file = Buffer.alloc(dataAt + data.length);
  file.write("II");
  file.writeUInt16LE(42, 2);
  file.writeUInt32LE(HEADER, 4);
  file.writeUInt16LE(fields.length, HEADER);
  fields.forEach(([tag, type, values, value], i) => {
    const place = HEADER + 2 + ENTRY * i;
    file.writeUInt16LE(tag, place);
    file.writeUInt16LE(type, place + 2);
    file.writeUInt32LE(values, place + 4);
    if (type === SHORT && values === 1) file.writeUInt16LE(value, place + 8);
    else file.writeUInt32LE(value, place + 8);
  });
  for (let i = 0; i < channels; i++) file.writeUInt16LE(bits, bitsAt + 2 * i);
  file.set(data, dataAt);
  return file;
}
