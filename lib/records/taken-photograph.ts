/** What is made of a photograph once its file is read. */

/** A file of a picture for screens, below the site's root. */
export interface ScreenPicture {
  readonly path: string;
  readonly type: "avif" | "webp" | "jpeg";
  /** Display P3 only of a photograph with colours that sRGB does not hold. */
  readonly gamut: "sRGB" | "Display P3";
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: Uint8Array;
}

/** A JPEG for paper, in sRGB. */
export interface PaperPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: Uint8Array;
}

/** A photograph's files. */
export interface PictureSizes {
  readonly screen: readonly ScreenPicture[];
  readonly paper: PaperPicture;
  /** Of what they were made from: equal hashes, equal bytes. */
  readonly hash: string;
}

/** What is known of a photograph once it was read. */
export interface TakenPhotograph {
  /** Of the upright picture as it came, which a record's points are counted in [px]. */
  readonly widthPx: number;
  readonly heightPx: number;
}
