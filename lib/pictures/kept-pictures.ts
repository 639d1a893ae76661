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

/**
 * Asked of a thread at a time: while the one that asks fills the workshop's pages it hears nothing, and the thread is to
 * have something to do meanwhile. Our own choice.
 */
const ASKED_AHEAD = 64;

/** A picture that a thread was asked for. */
interface AskedPicture {
  readonly result: Promise<Uint8Array>;
  /** Drawn here at once where the thread has not begun it. */
  readonly here: () => Promise<Uint8Array>;
}

/** Pictures that are being drawn. */
export interface BegunPictures {
  /** All of them, once they are written: for whoever has nothing else to do. */
  readonly done: () => Promise<void>;
}

/**
 * Pictures written as they come, as many drawn side by side as there are processors.
 * @param beside asks a thread: then only what that has not begun in the end is drawn here.
 */
export function begunPictures(
  pictures: readonly SitePicture[],
  type: PictureType,
  cache: WorkCache | undefined,
  write: (path: string, bytes: Uint8Array) => void,
  beside?: (asked: PictureToDraw) => AskedPicture,
): BegunPictures {
  const left = pictures.values();
  const drawers = async (count: number, draw?: DrawPicture): Promise<unknown> => {
    const drawer = async (): Promise<void> => {
      for (const picture of left)
        write(picture.path, await keptPicture(picture, type, cache, draw));
    };
    return Promise.all(Array.from({ length: count }, drawer));
  };
  const waiting = new Set<AskedPicture>();
  const drawnBeside = async (asked: PictureToDraw): Promise<Uint8Array> => {
    const own = beside?.(asked);
    if (own === undefined) return drawnPicture(asked);
    waiting.add(own);
    return own.result.finally(() => waiting.delete(own));
  };
  const begun =
    beside === undefined ? drawers(availableParallelism()) : drawers(ASKED_AHEAD, drawnBeside);
  // Whoever waits for them is told what stopped them.
  begun.catch(() => undefined);
  return {
    done: async () => {
      // The thread goes through them in their order.
      for (let last; (last = [...waiting].at(-1)) !== undefined;) await last.here();
      await begun;
    },
  };
}
