/** Formats of pictures, told by their first bytes, whatever a name says. */
export type PictureFormat = "JPEG" | "PNG" | "WebP" | "AVIF" | "TIFF";

const TEXT = new TextDecoder("latin1");

/** The format that a file's first bytes are of; `HEIC` of a phone's, which is not read; undefined of anything else. */
export function pictureFormat(bytes: Uint8Array): PictureFormat | "HEIC" | undefined {
  const begins = (text: string, from = 0): boolean =>
    TEXT.decode(bytes.subarray(from, from + text.length)) === text;
  if (begins("\xff\xd8\xff")) return "JPEG";
  if (begins("\x89PNG\r\n\x1a\n")) return "PNG";
  if (begins("RIFF") && begins("WEBP", 8)) return "WebP";
  if (begins("II*\0") || begins("MM\0*")) return "TIFF";
  if (!begins("ftyp", 4)) return undefined;
  if (["avif", "avis"].some((brand) => begins(brand, 8))) return "AVIF";
  return ["heic", "heix", "hevc", "heim", "heis", "mif1", "msf1"].some((brand) => begins(brand, 8))
    ? "HEIC"
    : undefined;
}
