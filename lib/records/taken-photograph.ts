import type { Lab } from "../colorimetry/viewing.ts";

/** What is made of a photograph once its file is read. */

/** A file of a picture, whose bytes are read when they are asked for: mostly the earlier output has them. */
interface PictureFile {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Of its bytes, in base64url. */
  readonly fileHash: string;
  readonly bytes: () => Uint8Array;
}

/** A picture for screens, below the site's root. */
export interface ScreenPicture extends PictureFile {
  readonly path: string;
  readonly type: "avif" | "webp" | "jpeg";
  /** Display P3 only of a photograph with colours that sRGB does not hold. */
  readonly gamut: "sRGB" | "Display P3";
}

/** A JPEG for paper, in sRGB. */
export type PaperPicture = PictureFile;

/** A photograph's files. */
export interface PictureSizes {
  readonly screen: readonly ScreenPicture[];
  readonly paper: PaperPicture;
  /** Of what they were made from: equal hashes, equal bytes. */
  readonly hash: string;
}

/** A colour as a corrected photograph shows it, under D65, 2 degree. */
export interface PhotographedColour {
  readonly lab: Lab;
  /** What the true one lies within, on either side of each axis. */
  readonly range: Lab;
}

/** What correcting a photograph by known patches came to. */
export interface PhotographCorrection {
  readonly patches: number;
  /** Patches with a channel at its end, which tell nothing. */
  readonly clipped: readonly string[];
  /** How far patches were missed that were left out. */
  readonly medianDeltaE00: number;
  readonly largestDeltaE00: number;
  readonly worst: string;
  readonly suspected: readonly { readonly name: string; readonly deltaE00: number }[];
  /** Whether that is near enough to show the picture corrected, and to take a colour from it. */
  readonly isUsed: boolean;
  /** Least light over the picture as a share of most, where a bare ground tells. */
  readonly lightShare?: number;
  readonly colour?: PhotographedColour;
}

/** What is known of a photograph once it was read. */
export interface TakenPhotograph {
  /** Of the upright picture as it came, which a record's points are counted in [px]. */
  readonly widthPx: number;
  readonly heightPx: number;
  readonly correction?: PhotographCorrection;
}
