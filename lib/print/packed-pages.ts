import { deflateRawSync, inflateRawSync } from "node:zlib";

/** What the pages of a sheet show, as JSON that is deflated: what waits to be drawn would take more memory than all that is drawn. */
export interface PackedPages {
  readonly sheet: Uint8Array;
  readonly bench: Uint8Array;
}

/** A text that is deflated as soon as may be. */
export function packedText(text: string): Buffer {
  return deflateRawSync(text, { level: 1 });
}

export function unpackedText(packed: Uint8Array): string {
  return inflateRawSync(packed).toString();
}
