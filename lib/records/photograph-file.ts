/** A picture in photographs/, named by a record. */
export interface PhotographFile {
  /** As printed in a complaint. */
  readonly file: string;
  /** Where its bytes are. */
  readonly path: string;
  readonly name: string;
  readonly stem: string;
}

/** Endings of pictures that are read. */
export const PICTURE_ENDINGS: readonly string[] = [
  ".jpg",
  ".jpeg",
  ".png",
  ".webp",
  ".avif",
  ".tif",
  ".tiff",
];

const RAW = "a camera's raw file, which is developed first: export it as JPEG or 16-bit TIFF";
const PHONE = "a phone's compressed picture of another kind: export it as JPEG";

/** Endings of pictures that are not read, each with what it is and what to do. */
export const UNREAD_PICTURES: ReadonlyMap<string, string> = new Map([
  ...[
    ...[".3fr", ".arw", ".cr2", ".cr3", ".crw", ".dcr", ".dng", ".erf", ".fff", ".gpr", ".iiq"],
    ...[".kdc", ".mef", ".mos", ".mrw", ".nef", ".nrw", ".orf", ".pef", ".raf", ".raw", ".rw2"],
    ...[".rwl", ".sr2", ".srf", ".srw", ".x3f"],
  ].map((ending) => [ending, RAW] as const),
  ...[".heic", ".heif", ".hif"].map((ending) => [ending, PHONE] as const),
]);
