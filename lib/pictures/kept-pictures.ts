import { availableParallelism } from "node:os";
import { keptBytes } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { drawnPicture, type PictureType } from "./drawn-picture.ts";
import type { SitePicture } from "./site-pictures.ts";

/** By whose imports a picture is kept: what lays faces out, and what draws them. */
export const PICTURE_MODULES = [
  "lib/pictures/colour-faces.ts",
  "lib/pictures/range-faces.ts",
  "lib/pictures/drawn-picture.ts",
] as const;

/** A picture kept by what its face is laid out from, which is looked at before anything is laid out. */
export async function keptPicture(
  { of, face }: SitePicture,
  type: PictureType,
  cache: WorkCache | undefined,
): Promise<Uint8Array> {
  return keptBytes(cache, { modules: PICTURE_MODULES, inputs: { of, type } }, async () =>
    drawnPicture(face(), type),
  );
}

/** Pictures written as they come, as many drawn side by side as there are processors. */
export async function eachPicture(
  pictures: readonly SitePicture[],
  type: PictureType,
  cache: WorkCache | undefined,
  write: (path: string, bytes: Uint8Array) => void,
): Promise<void> {
  const left = pictures.values();
  const drawer = async (): Promise<void> => {
    for (const picture of left) write(picture.path, await keptPicture(picture, type, cache));
  };
  await Promise.all(Array.from({ length: availableParallelism() }, drawer));
}
