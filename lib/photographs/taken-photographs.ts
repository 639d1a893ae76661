import { readFileSync, statSync } from "node:fs";
import { deserialize, serialize } from "node:v8";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { contentHash } from "../kept/content-hash.ts";
import { keyOf, readValue, writeResult, type Origin } from "../kept/kept-result.ts";
import type { HeldValues } from "../kept/held-values.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { Xyz } from "../colorimetry/viewing.ts";
import { at, certain } from "../quantities/at.ts";
import { errorAt } from "../records/fault.ts";
import type { LoadedRecords } from "../records/load-records.ts";
import type { Photograph } from "../records/photographs.ts";
import type { Records } from "../records/records.ts";
import type { PictureSizes, ScreenPicture } from "../records/taken-photograph.ts";
import {
  madeOfPhotograph,
  type MadeOfPhotograph,
  type PhotographParts,
  type PhotographToMake,
} from "./made-of-photograph.ts";
import { packedSizes, unpackedSizes, type KeptSizes } from "./kept-sizes.ts";
import { once } from "./once.ts";
import { correctionWarnings, withEstimates } from "./photograph-estimates.ts";
import { knownXyz } from "./photograph-correction.ts";
import type { PictureFault } from "./upright-pixels.ts";

/** Where a site has its photographs. */
const FOLDER = "photographs/";
/** This module, by whose imports what it makes is kept. */
const MODULE = "lib/photographs/taken-photographs.ts";

/** A photograph's file could be read or not, and then this is why. */
type Read<T> = T | PictureFault;

interface KeptParts extends Pick<PhotographParts, "taken"> {
  readonly sizes: KeptSizes;
  readonly film: KeptSizes;
}

/** How each part is written down, and read. */
function packedPart(part: keyof PhotographParts, made: Partial<PhotographParts>): Uint8Array {
  return part === "taken" ? serialize(made.taken) : packedSizes(certain(made[part]));
}

function unpackedPart(part: keyof PhotographParts): (packed: Uint8Array) => unknown {
  return part === "taken" ? deserialize : unpackedSizes;
}

/** What a caller needs of photographs: what they tell of colours, or pictures for pages as well, which take longer. */
export type PhotographsWanted = "what they tell" | "pictures, too";

interface MakingPhotographs {
  readonly made: (asked: PhotographToMake) => Promise<MadeOfPhotograph>;
  /** So many are asked for at a time: what makes them takes the memory of the pixels of each. */
  readonly ahead: number;
}

interface ReadingPhotographs extends Pick<MakingPhotographs, "made"> {
  readonly wants: PhotographsWanted;
}

/**
 * Records with their photographs read; what is no picture is an error at the record that names it,
 * and then there are no records. A colour that nobody has read takes its masstone, as an estimate,
 * from its first photograph that tells one.
 * @param making of what is not kept; another process may do it.
 */
export async function withPhotographs(
  loaded: LoadedRecords,
  cache: WorkCache | undefined,
  wants: PhotographsWanted,
  { made, ahead }: MakingPhotographs = { made: madeOfPhotograph, ahead: 1 },
): Promise<LoadedRecords> {
  const { records } = loaded;
  if (records === undefined || records.photographs.length === 0) return loaded;
  const diagnostics: Diagnostic[] = [...loaded.diagnostics];
  const photographs: Photograph[] = [];
  let isSound = true;
  const stems = pictureStems(records.photographs);
  const reading = records.photographs.map((photograph, i) => {
    const named = { read: masstoneOf(photograph, records), stem: at(stems, i) };
    return once(async () => readPhotograph(photograph, named, cache, { wants, made }));
  });
  for (const [i, photograph] of records.photographs.entries()) {
    for (const begun of reading.slice(i, i + ahead)) begun().catch(() => undefined);
    const read = await at(reading, i)();
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

/** What the pictures of each are called: a file that several show has pictures of each, in the colours of each. */
function pictureStems(photographs: readonly Photograph[]): string[] {
  const owners = new Map<string, Set<string>>();
  for (const { source, owner } of photographs)
    owners.set(source.stem, (owners.get(source.stem) ?? new Set()).add(owner.slug));
  return photographs.map(({ source: { stem }, owner: { slug } }) =>
    (owners.get(stem)?.size ?? 0) > 1 ? `${stem}-of-${slug}` : stem,
  );
}

async function readPhotograph(
  photograph: Photograph,
  own: { readonly read: Xyz | undefined; readonly stem: string },
  cache: WorkCache | undefined,
  making: ReadingPhotographs,
): Promise<Read<Pick<Photograph, "taken" | "pictures" | "inReadColour">>> {
  const {
    source,
    known,
    record: { paint },
  } = photograph;
  const { read, stem } = own;
  const { wants, made } = making;
  const file = fileOf(source, cache?.held);
  if ("fault" in file) return file;
  const { hash, bytes } = file;
  const inputs = { hash, known: known ?? null, paint: paint ?? null };
  const isFilmed = read !== undefined && paint !== undefined;
  const origins: { readonly [P in keyof PhotographParts]: Origin } = {
    taken: originOf({ taken: inputs }),
    sizes: originOf({ sizes: { ...inputs, read: read ?? null } }),
    film: originOf({ film: { ...inputs, read: read ?? null } }),
  };
  const wanted: readonly (keyof PhotographParts)[] =
    wants === "what they tell"
      ? ["taken"]
      : ["taken", "sizes", ...(isFilmed ? ["film" as const] : [])];
  const parts: Partial<KeptParts> = {};
  const missing = wanted.filter((part) => {
    const key = keyOf(cache, origins[part]);
    if (cache === undefined || key === undefined) return true;
    const kept = readValue(cache, key, unpackedPart(part));
    if (kept !== undefined) Object.assign(parts, { [part]: kept });
    return kept === undefined;
  });
  if (missing.length > 0) {
    // What is made is kept by the hash of the very bytes that it is made of, so the file is read.
    if (bytes === undefined)
      return readPhotograph(photograph, own, cache && { ...cache, held: undefined }, making);
    const found = await made({ name: source.name, bytes, known, paint, read, parts: missing });
    if ("fault" in found) return found;
    for (const part of missing) {
      const packed = packedPart(part, found);
      const key = keyOf(cache, origins[part]);
      if (cache !== undefined && key !== undefined) writeResult(cache, key, packed);
      Object.assign(parts, { [part]: unpackedPart(part)(packed) });
    }
  }
  const { taken, sizes, film } = parts;
  return {
    ...(taken && { taken }),
    ...(sizes && { pictures: named(sizes, stem) }),
    ...(film && { inReadColour: named(film, `${stem}-as-read`) }),
  };
}

/** What was written later than so long ago [ms] may be written again without a clock that shows it. Our own choice. */
const SETTLED_MS = 100;

/** The hash of a photograph's name and bytes, with these where it was not known by what tells the file from any other. */
function fileOf(
  { path, name }: Photograph["source"],
  held: HeldValues | undefined,
): Read<{ readonly hash: string; readonly bytes: Uint8Array | undefined }> {
  let bytes: Uint8Array | undefined;
  const hashed = (): string => contentHash([name, (bytes = readFileSync(path))]).toString("hex");
  try {
    const isSettled = Date.now() - statSync(path).mtimeMs > SETTLED_MS;
    const hash = held !== undefined && isSettled ? String(held.of(path, hashed)) : hashed();
    return { hash, bytes };
  } catch {
    return { fault: `${name} can't be read: it was there a moment ago` };
  }
}

function originOf(inputs: object): Origin {
  return { modules: [MODULE], inputs };
}

function named({ screen, ...sizes }: KeptSizes, stem: string): PictureSizes {
  return {
    ...sizes,
    screen: screen.map((picture) => ({ ...picture, path: `${FOLDER}${stem}-${ending(picture)}` })),
  };
}

function ending({ widthPx, gamut, type }: Omit<ScreenPicture, "path">): string {
  return `${widthPx}${gamut === "sRGB" ? "" : "-p3"}.${type === "jpeg" ? "jpg" : type}`;
}

function complaint({ place }: Photograph, { fault, hint }: PictureFault): Diagnostic {
  return errorAt(place(["file"]), "records/photograph", {
    message: fault,
    hint,
  });
}
