import { lstatSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fields } from "../changes/published-state.ts";
import { fileHash } from "../kept/content-hash.ts";
import { fileState } from "../kept/file-state.ts";
import { heldFew } from "../kept/held-few.ts";

/** What a build writes: the public site, and the workshop's own pages. */
export type OutputKind = "site" | "workshop";

/** What our manifest.json says of itself, so that a folder can be known for ours, and for which of the two. */
export const MANIFEST_KINDS: Readonly<Record<OutputKind, string>> = {
  site: "mullstone-manifest",
  workshop: "mullstone-workshop-manifest",
};
export const MANIFEST_KIND = MANIFEST_KINDS.site;
export const MANIFEST = "manifest.json";

/** What a folder's manifest says of the build that wrote it. */
export interface OutputManifest {
  readonly kind: OutputKind;
  /** Every file that the build wrote, below the folder, `/` between; undefined when the manifest does not say. */
  readonly files: ReadonlySet<string> | undefined;
  /** The hash of each of them but the manifest; undefined when the manifest does not say. */
  readonly hashes: Readonly<Record<string, string>> | undefined;
}

/** One is asked for several times while outputs are swapped, each time perhaps at another place. */
const held = heldFew<OutputManifest | undefined>(4);

/** The manifest of a folder that a build wrote; undefined for any other folder. */
export function outputManifest(dir: string): OutputManifest | undefined {
  const file = join(dir, MANIFEST);
  const found = lstatSync(file, { bigint: true, throwIfNoEntry: false });
  return found?.isFile() === true
    ? held(`${fileState(found)} ${found.ctimeNs}`, () => manifestIn(file))
    : manifestIn(file);
}

function manifestIn(file: string): OutputManifest | undefined {
  let read: unknown;
  try {
    read = JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return undefined;
  }
  const { kind, files, hashes } = fields(read);
  const known = (["site", "workshop"] as const).find((one) => MANIFEST_KINDS[one] === kind);
  if (known === undefined) return undefined;
  return {
    kind: known,
    files:
      Array.isArray(files) && files.every((path): path is string => typeof path === "string")
        ? new Set(files)
        : undefined,
    hashes: areHashes(hashes) ? hashes : undefined,
  };
}

function areHashes(value: unknown): value is Readonly<Record<string, string>> {
  const hashes = Object.values(fields(value));
  return hashes.length > 0 && hashes.every((hash) => typeof hash === "string");
}

/**
 * Write into a folder's manifest what files the folder holds, with a hash of each: a later build deletes these and no others.
 * @param known hashes of all of them, by path; without it the folder is looked through.
 * @param stated what the manifest says by now; without it the manifest is read.
 */
export function listFilesInManifest(
  dir: string,
  known: ReadonlyMap<string, string> = hashesIn(dir),
  stated: object = JSON.parse(readFileSync(join(dir, MANIFEST), "utf8")) as object,
): void {
  const manifest = join(dir, MANIFEST);
  const files = [...known.keys()].sort((a, b) => (a < b ? -1 : 1));
  // What a publish goes by: a manifest can't hold its own.
  const hashes = Object.fromEntries(
    files.filter((path) => path !== MANIFEST).map((path) => [path, known.get(path)]),
  );
  writeFileSync(manifest, `${JSON.stringify({ ...stated, files, hashes }, null, 1)}\n`);
}

function hashesIn(dir: string): ReadonlyMap<string, string> {
  const files = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map(({ parentPath, name }) => join(parentPath, name).slice(dir.length + 1));
  return new Map(files.map((path) => [path.replaceAll("\\", "/"), fileHash(join(dir, path))]));
}
