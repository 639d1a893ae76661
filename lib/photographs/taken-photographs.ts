import { readFileSync } from "node:fs";
import { deserialize, serialize } from "node:v8";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { contentHash } from "../kept/content-hash.ts";
import { keptBytes } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { Xyz } from "../colorimetry/viewing.ts";
import type { LoadedRecords } from "../records/load-records.ts";
import type { Photograph } from "../records/photographs.ts";
import type { Records } from "../records/records.ts";
import type { PictureSizes, ScreenPicture, TakenPhotograph } from "../records/taken-photograph.ts";
import { correctionWarnings, withEstimates } from "./photograph-estimates.ts";
import {
  correctedPixels,
  knownXyz,
  outsidePicture,
  photographCorrection,
  type CorrectedPhotograph,
} from "./photograph-correction.ts";
import { once } from "./once.ts";
import { readColourPicture } from "./read-colour-picture.ts";
import { pictureSizes, type UnnamedSizes } from "./picture-sizes.ts";
import { uprightPixels, type PictureFault, type UprightPixels } from "./upright-pixels.ts";

/** Where a site has its photographs. */
const FOLDER = "photographs/";
/** This module, by whose imports what it makes is kept. */
const MODULE = "lib/photographs/taken-photographs.ts";

/** A photograph's file could be read or not, and then this is why. */
type Read<T> = T | PictureFault;

/** What a caller needs of photographs: what they tell of colours, or pictures for pages as well, which take longer. */
export type PhotographsWanted = "what they tell" | "pictures, too";

/**
 * Records with their photographs read; what is no picture is an error at the record that names it,
 * and then there are no records. A colour that nobody has read takes its masstone, as an estimate,
 * from its first photograph that tells one.
 */
export async function withPhotographs(
  loaded: LoadedRecords,
  cache: WorkCache | undefined,
  wants: PhotographsWanted,
): Promise<LoadedRecords> {
  const { records } = loaded;
  if (records === undefined || records.photographs.length === 0) return loaded;
  const diagnostics: Diagnostic[] = [...loaded.diagnostics];
  const photographs: Photograph[] = [];
  let isSound = true;
  // One after the other: each takes the memory of its pixels.
  for (const photograph of records.photographs) {
    const read = await readPhotograph(photograph, masstoneOf(photograph, records), cache, wants);
    if ("fault" in read) {
      diagnostics.push(complaint(photograph, read));
      isSound = false;
    } else {
      photographs.push({ ...photograph, ...read });
      diagnostics.push(...correctionWarnings({ ...photograph, ...read }));
    }
  }
  return isSound
    ? { ...loaded, diagnostics, records: withEstimates({ ...records, photographs }) }
    : { diagnostics, notes: loaded.notes };
}

/** Of a colour's photograph, the reading whose colour its texture may be shown in. */
function masstoneOf({ owner }: Photograph, { colours }: Records): Xyz | undefined {
  const masstone = owner.folder === "colours" ? colours.get(owner.slug)?.masstone : undefined;
  return masstone === undefined || masstone.form === "chip" ? undefined : knownXyz(masstone);
}

async function readPhotograph(
  photograph: Photograph,
  read: Xyz | undefined,
  cache: WorkCache | undefined,
  wants: PhotographsWanted,
): Promise<Read<Pick<Photograph, "taken" | "pictures" | "inReadColour">>> {
  const {
    source: { path, name, stem },
    known,
    record: { paint },
  } = photograph;
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch {
    return { fault: `${name} can't be read: it was there a moment ago` };
  }
  const hash = contentHash([name, bytes]).toString("hex");
  const inputs = { hash, known: known ?? null, paint: paint ?? null };
  const seen = once(async () => sighted(photograph, await uprightPixels(bytes, name)));

  const taken = await kept(cache, { taken: inputs }, async (): Promise<Read<TakenPhotograph>> => {
    const found = await seen();
    return "fault" in found ? found : takenOf(found);
  });
  if ("fault" in taken || wants === "what they tell") return "fault" in taken ? taken : { taken };
  const sizesOf = (
    what: string,
    picture: (found: Sighted) => UprightPixels,
  ): Promise<Read<UnnamedSizes>> =>
    kept(cache, { [what]: { ...inputs, read: read ?? null } }, async () => {
      const found = await seen();
      return "fault" in found ? found : pictureSizes(picture(found));
    });
  const sizes = await sizesOf("sizes", ({ upright, corrected }) =>
    corrected?.fix === undefined ? upright : correctedPixels(upright, corrected.fix),
  );
  if ("fault" in sizes) return sizes;
  const own = { taken, pictures: named(sizes, stem) };
  if (read === undefined || paint === undefined) return own;
  const film = await sizesOf("film", ({ upright, corrected }) =>
    readColourPicture(upright, paint, read, corrected?.fix?.fall ?? (() => 1)),
  );
  return "fault" in film ? film : { ...own, inReadColour: named(film, `${stem}-as-read`) };
}

/** A picture's pixels, and what its known patches make of them. */
interface Sighted {
  readonly upright: UprightPixels;
  readonly corrected: CorrectedPhotograph | undefined;
}

function sighted(photograph: Photograph, upright: Read<UprightPixels>): Read<Sighted> {
  if ("fault" in upright) return upright;
  const outside = outsidePicture(photograph, upright);
  if (outside !== undefined) return { fault: outside };
  const { known, record } = photograph;
  return { upright, corrected: known && photographCorrection(upright, known, record.paint) };
}

function takenOf({ upright, corrected }: Sighted): TakenPhotograph {
  return {
    widthPx: upright.cameWidthPx,
    heightPx: upright.cameHeightPx,
    ...(corrected === undefined ? {} : { correction: corrected.correction }),
  };
}

async function kept<T>(
  cache: WorkCache | undefined,
  inputs: object,
  made: () => Promise<T>,
): Promise<T> {
  return deserialize(
    await keptBytes(cache, { modules: [MODULE], inputs }, async () => serialize(await made())),
  ) as T;
}

function named({ screen, paper }: UnnamedSizes, stem: string): PictureSizes {
  return {
    screen: screen.map((picture) => ({ ...picture, path: `${FOLDER}${stem}-${ending(picture)}` })),
    paper,
    hash: contentHash([paper.bytes]).toString("hex"),
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
