import { readFileSync } from "node:fs";
import { deserialize, serialize } from "node:v8";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { contentHash } from "../kept/content-hash.ts";
import { keptBytes } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { LoadedRecords } from "../records/load-records.ts";
import type { Photograph } from "../records/photographs.ts";
import type { PictureSizes, ScreenPicture, TakenPhotograph } from "../records/taken-photograph.ts";
import { pictureSizes, type UnnamedSizes } from "./picture-sizes.ts";
import { uprightPixels, type PictureFault, type UprightPixels } from "./upright-pixels.ts";

/** Where a site has its photographs. */
const FOLDER = "photographs/";
/** This module, by whose imports what it makes is kept. */
const MODULE = "lib/photographs/taken-photographs.ts";

/** A photograph's file could be read or not, and then this is why. */
type Read<T> = T | PictureFault;

/**
 * Records with their photographs read; what is no picture is an error at the record that names it,
 * and then there are no records.
 * @param wants whether pictures for pages are made as well, which takes longer.
 */
export async function withPhotographs(
  loaded: LoadedRecords,
  cache: WorkCache | undefined,
  wants: "what they tell" | "pictures, too",
): Promise<LoadedRecords> {
  const { records, diagnostics } = loaded;
  if (records === undefined || records.photographs.length === 0) return loaded;
  const found: Diagnostic[] = [];
  const photographs: Photograph[] = [];
  // One after the other: each takes the memory of its pixels.
  for (const photograph of records.photographs) {
    const read = await readPhotograph(photograph, cache, wants === "pictures, too");
    if ("fault" in read) found.push(complaint(photograph, read));
    else photographs.push({ ...photograph, ...read });
  }
  return found.length > 0
    ? { diagnostics: [...diagnostics, ...found], notes: loaded.notes }
    : { ...loaded, records: { ...records, photographs } };
}

async function readPhotograph(
  { source: { path, name, stem } }: Photograph,
  cache: WorkCache | undefined,
  wantsPictures: boolean,
): Promise<Read<Pick<Photograph, "taken" | "pictures">>> {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch {
    return { fault: `${name} can't be read: it was there a moment ago` };
  }
  const hash = contentHash([name, bytes]).toString("hex");
  let pixels: Promise<Read<UprightPixels>> | undefined;
  const upright = (): Promise<Read<UprightPixels>> => (pixels ??= uprightPixels(bytes, name));

  const taken = await kept(cache, ["taken", hash], async (): Promise<Read<TakenPhotograph>> => {
    const found = await upright();
    return "fault" in found ? found : { widthPx: found.cameWidthPx, heightPx: found.cameHeightPx };
  });
  if ("fault" in taken || !wantsPictures) return "fault" in taken ? taken : { taken };
  const sizes = await kept(cache, ["sizes", hash], async (): Promise<Read<UnnamedSizes>> => {
    const found = await upright();
    return "fault" in found ? found : pictureSizes(found);
  });
  return "fault" in sizes ? sizes : { taken, pictures: named(sizes, stem, hash) };
}

async function kept<T>(
  cache: WorkCache | undefined,
  inputs: readonly string[],
  made: () => Promise<T>,
): Promise<T> {
  return deserialize(
    await keptBytes(cache, { modules: [MODULE], inputs }, async () => serialize(await made())),
  ) as T;
}

function named({ screen, paper }: UnnamedSizes, stem: string, hash: string): PictureSizes {
  return {
    screen: screen.map((picture) => ({ ...picture, path: `${FOLDER}${stem}-${ending(picture)}` })),
    paper,
    hash,
  };
}

function ending({ widthPx, gamut, type }: Omit<ScreenPicture, "path">): string {
  return `${widthPx}${gamut === "sRGB" ? "" : "-p3"}.${type === "jpeg" ? "jpg" : type}`;
}

function complaint({ place }: Photograph, { fault, hint }: PictureFault): Diagnostic {
  return {
    severity: "error",
    rule: "records/photograph",
    place: place(["file"]),
    message: fault,
    ...(hint === undefined ? {} : { hint }),
  };
}
