import { availableParallelism } from "node:os";
import { keptBytes } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { drawnPicture, type PictureToDraw, type PictureType } from "./drawn-picture.ts";
import type { SitePicture } from "./site-pictures.ts";

/** By whose imports a picture is kept: what lays faces out, and what draws them. */
export const PICTURE_MODULES = [
  "lib/pictures/colour-faces.ts",
  "lib/pictures/range-faces.ts",
  "lib/pictures/drawn-picture.ts",
] as const;

/** Draws a picture, here or elsewhere. */
type DrawPicture = (asked: PictureToDraw) => Promise<Uint8Array>;

/** A picture kept by what its face is laid out from, which is looked at before anything is laid out. */
export async function keptPicture(
  { of, face }: SitePicture,
  type: PictureType,
  cache: WorkCache | undefined,
  draw: DrawPicture = drawnPicture,
): Promise<Uint8Array> {
  return keptBytes(cache, { modules: PICTURE_MODULES, inputs: { of, type } }, async () =>
    draw({ face: face(), type }),
  );
}

/** Pictures that are being drawn. */
export interface BegunPictures {
  /** All of them, once they are written: for whoever has nothing else to do. */
  readonly done: () => Promise<void>;
}

/**
 * Pictures written as they come, as many drawn side by side as there are processors.
 * @param beside draws in a thread: then that draws one after the other, and only what is left in the end is drawn here.
 */
export function begunPictures(
  pictures: readonly SitePicture[],
  type: PictureType,
  cache: WorkCache | undefined,
  write: (path: string, bytes: Uint8Array) => void,
  beside?: DrawPicture,
): BegunPictures {
  const left = pictures.values();
  const drawer = async (draw: DrawPicture = drawnPicture): Promise<void> => {
    for (const picture of left) write(picture.path, await keptPicture(picture, type, cache, draw));
  };
  const drawers = async (): Promise<unknown> =>
    Promise.all(Array.from({ length: availableParallelism() }, async () => drawer()));
  const begun = beside === undefined ? drawers() : drawer(beside);
  // Whoever waits for them is told what stopped them.
  begun.catch(() => undefined);
  return {
    done: async () => {
      await Promise.all([begun, ...(beside === undefined ? [] : [drawer()])]);
    },
  };
}
