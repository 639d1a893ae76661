/** How a text file was saved, as far as its bytes tell. */
type TextEncoding = "UTF-8" | "UTF-16" | "Windows-1252";

export interface DecodedText {
  readonly text: string;
  readonly encoding: TextEncoding;
}

/** So many bytes tell whether every other one is 0. */
const LOOKED_AT = 400;

/**
 * The text of a file: UTF-16 by its mark, or by every other byte being 0, as an instrument's program saves
 * it; UTF-8 wherever the bytes are that; else Windows-1252, which Latin-1 is a part of. Bytes that none of
 * the three has come out as UTF-8 with its replacement character, which a reader of records complains of.
 */
export function decodedText(bytes: Uint8Array): DecodedText {
  const wide = utf16Label(bytes);
  if (wide !== undefined) return { text: new TextDecoder(wide).decode(bytes), encoding: "UTF-16" };
  try {
    return { text: new TextDecoder("utf-8", KEPT_WHOLE).decode(bytes), encoding: "UTF-8" };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
  }
  // Five bytes have no letter there, and controls are in no text.
  const isText = bytes.every((byte) => ![0x81, 0x8d, 0x8f, 0x90, 0x9d].includes(byte) && byte >= 9);
  return isText
    ? { text: new TextDecoder("windows-1252").decode(bytes), encoding: "Windows-1252" }
    : { text: new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes), encoding: "UTF-8" };
}

const KEPT_WHOLE = { fatal: true, ignoreBOM: true } as const;

function utf16Label(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  const start = bytes.subarray(0, LOOKED_AT);
  if (start.length < 4) return undefined;
  const zeros = [0, 0];
  start.forEach((byte, i) => {
    if (byte === 0) zeros[i % 2] = (zeros[i % 2] ?? 0) + 1;
  });
  const [even = 0, odd = 0] = zeros;
  const most = 0.4 * start.length;
  if (odd >= most && even === 0) return "utf-16le";
  return even >= most && odd === 0 ? "utf-16be" : undefined;
}
