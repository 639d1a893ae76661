import type { Xyz } from "../colorimetry/viewing.ts";
import type { KnownColours } from "../records/photographs.ts";
import type { Box } from "../records/schema/photograph.ts";
import type { TakenPhotograph } from "../records/taken-photograph.ts";
import {
  correctedPixels,
  outsidePicture,
  photographCorrection,
  type CorrectedPhotograph,
} from "./photograph-correction.ts";
import { pictureSizes, type UnnamedSizes } from "./picture-sizes.ts";
import { readColourPicture } from "./read-colour-picture.ts";
import { uprightPixels, type PictureFault, type UprightPixels } from "./upright-pixels.ts";

/** What may be made of a photograph: what it tells of colours; itself in every size; its paint alone in the colour that was read. */
export interface PhotographParts {
  readonly taken: TakenPhotograph;
  readonly sizes: UnnamedSizes;
  readonly film: UnnamedSizes;
}

/** A photograph's file, and what its pixels are to be made into. */
export interface PhotographToMake {
  /** As it stands in a complaint. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly known: KnownColours | undefined;
  readonly paint: Box | undefined;
  /** Of the film, under D65 to the 2 degree observer. */
  readonly read: Xyz | undefined;
  readonly parts: readonly (keyof PhotographParts)[];
}

/** The parts that were asked for, of pixels that are unpacked once; or why the file gives none. */
export type MadeOfPhotograph = Partial<PhotographParts> | PictureFault;

export async function madeOfPhotograph({
  name,
  bytes,
  known,
  paint,
  read,
  parts,
}: PhotographToMake): Promise<MadeOfPhotograph> {
  const upright = await uprightPixels(bytes, name);
  if ("fault" in upright) return upright;
  const outside = outsidePicture({ known, paint }, upright);
  if (outside !== undefined) return { fault: outside };
  const corrected = known && photographCorrection(upright, known, paint);
  const wants = (part: keyof PhotographParts): boolean => parts.includes(part);
  return {
    ...(wants("taken") && { taken: takenOf(upright, corrected) }),
    ...(wants("sizes") && {
      sizes: await pictureSizes(
        corrected?.fix === undefined ? upright : correctedPixels(upright, corrected.fix),
      ),
    }),
    ...(wants("film") &&
      paint !== undefined &&
      read !== undefined && {
        film: await pictureSizes(
          readColourPicture(upright, paint, read, corrected?.fix?.fall ?? (() => 1)),
        ),
      }),
  };
}

function takenOf(
  { cameWidthPx, cameHeightPx }: UprightPixels,
  corrected: CorrectedPhotograph | undefined,
): TakenPhotograph {
  return {
    widthPx: cameWidthPx,
    heightPx: cameHeightPx,
    ...(corrected !== undefined && { correction: corrected.correction }),
  };
}
