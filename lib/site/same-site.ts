/**
 * Whether a build would only write what lies in its outputs already. Of the newest build of a
 * content folder it is kept, under the seal of its user, what all of it was made from and what
 * every file came out as; where both are still so, nothing is made again.
 */
import { existsSync, lstatSync, readdirSync, readFileSync, realpathSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { PROGRAM_HASH } from "../kept/beside-program.ts";
import { contentHash, fileHash } from "../kept/content-hash.ts";
import { LANGUAGES } from "../quantities/languages.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";
import { LARGEST_PHOTOGRAPH_BYTES } from "../records/content-tree.ts";
import { knownFiles, type KnownFiles } from "./known-files.ts";
import { MANIFEST, outputManifest, type OutputKind } from "./output-manifest.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import { latestDate, printedDate } from "./printed-date.ts";
import type { SiteReport, SiteTask } from "./site-task.ts";
import type { KeptFolder } from "../kept/work-cache.ts";

const FILE = "site.json";

/** Folders of the package that pages are made of, beside its modules. */
const PACKAGE_PARTS = ["assets", "templates"];

/** SHA-256 of each file of an output by its path, manifest.json among them. */
type OutputHashes = Readonly<Record<string, string>>;

interface KeptSite {
  readonly key: string;
  readonly site: OutputHashes;
  readonly workshop: OutputHashes;
  readonly sheetCount: number;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * A hash of everything that a task's outputs and complaints follow from: the program, its
 * templates and styles, what was asked for, and every byte of the content folder.
 * @param program undefined for sources that run as they are, whose modules nobody has hashed.
 * @returns undefined where something of it can't be told, as of a link that leads elsewhere
 */
export function siteKey(
  { contentDir, date, base, strict, claims, kind, since }: SiteTask,
  program: string | undefined = PROGRAM_HASH,
): string | undefined {
  if (program === undefined || kind !== "paper") return undefined;
  const asked = [
    latestDate(date),
    printedDate(date, undefined) ?? "",
    base ?? "",
    String(strict),
    claims,
  ];
  try {
    return contentHash([
      program,
      process.version,
      ...asked,
      ...(since === undefined ? [] : [since, ...manifestsAt(since)]),
      // Complaints print where a record lies from here.
      relative(process.cwd(), contentDir),
      relative(process.cwd(), realpathSync(contentDir)),
      ...PACKAGE_PARTS.flatMap((name) => [...bytesIn(join(PACKAGE_ROOT, name))]),
      ...bytesIn(contentDir),
    ]).toString("hex");
  } catch {
    return undefined;
  }
}

/** What was published before, in each language. */
function manifestsAt(file: string): Uint8Array[] {
  const others = LANGUAGES.map((language) => join(dirname(file), language, basename(file)));
  return [file, ...others.filter((one) => existsSync(one))].map((one) => readFileSync(one));
}

/** No file of a workshop is larger. */
const LARGEST_BYTES = LARGEST_PHOTOGRAPH_BYTES;

/** Every path below a folder with its bytes, in order. @throws Error for what is neither file nor folder, or too large to be of a workshop. */
function* bytesIn(folder: string): Generator<string | Uint8Array> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true })
    .map((entry) => ({ entry, path: join(entry.parentPath, entry.name).slice(folder.length) }))
    .sort((one, other) => (one.path < other.path ? -1 : 1));
  for (const { entry, path } of entries) {
    if (entry.isDirectory()) yield `${path}/`;
    else if (entry.isFile() && lstatSync(join(folder, path)).size <= LARGEST_BYTES)
      yield* [path, readFileSync(join(folder, path))];
    else throw new Error(`${path} is neither a folder nor a file of a workshop`);
  }
}

/** What the build of this key said, where both outputs are still as it wrote them. */
export function sameSite(
  { earlierDir, earlierWorkshopDir }: SiteTask,
  key: string | undefined,
  cache: KeptFolder,
): SiteReport | undefined {
  if (key === undefined) return undefined;
  const kept = readKept(cache.folder, FILE) as Partial<KeptSite> | null | undefined;
  if (kept?.key !== key || kept.sheetCount === undefined || kept.diagnostics === undefined)
    return undefined;
  const isStillIn = (output: OutputKind, dir: string): boolean =>
    isStill(dir, kept[output], knownFiles(cache, output, "paper"));
  return isStillIn("site", earlierDir) && isStillIn("workshop", earlierWorkshopDir)
    ? { sheetCount: kept.sheetCount, diagnostics: kept.diagnostics }
    : undefined;
}

function isStill(
  dir: string,
  hashes: OutputHashes | undefined,
  { hashOf }: Pick<KnownFiles, "hashOf">,
): boolean {
  if (hashes === undefined || Object.keys(hashes).length === 0) return false;
  try {
    return Object.entries(hashes).every(([path, hash]) => {
      const file = join(dir, path);
      const known = hashOf(path, file);
      return known === undefined
        ? lstatSync(file).isFile() && fileHash(file) === hash
        : known === hash;
    });
  } catch {
    return false;
  }
}

/** Keep what a build wrote, unless what it was made from has changed under it. */
export function keepSite(
  task: SiteTask,
  key: string | undefined,
  { folder, keeps }: KeptFolder,
  { sheetCount, diagnostics }: SiteReport,
  program: string | undefined = PROGRAM_HASH,
): void {
  if (key === undefined || !keeps || sheetCount === undefined) return;
  const [site, workshop] = [task.dir, task.workshopDir].map(hashesOf);
  if (site === undefined || workshop === undefined || siteKey(task, program) !== key) return;
  writeKept(folder, FILE, { key, site, workshop, sheetCount, diagnostics } satisfies KeptSite);
}

/** As its manifest has them; the manifest's own besides. */
function hashesOf(dir: string): OutputHashes | undefined {
  const hashes = outputManifest(dir)?.hashes;
  return hashes && { ...hashes, [MANIFEST]: fileHash(join(dir, MANIFEST)) };
}
