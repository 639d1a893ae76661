/**
 * Whether a build would only write what lies in its outputs already. Of the newest build of a
 * content folder it is kept, under the seal of its user, what all of it was made from and what
 * its manifests came out as, which tell every other file; where both are still so, nothing is made again.
 */
import {
  existsSync,
  lstatSync,
  readdirSync,
  readFileSync,
  realpathSync,
  type BigIntStats,
} from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { PROGRAM_HASH } from "../kept/beside-program.ts";
import { contentHash, fileHash } from "../kept/content-hash.ts";
import { fileState } from "../kept/file-state.ts";
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

interface KeptSite extends Readonly<Record<OutputKind, string>> {
  readonly key: string;
  readonly sheetCount: number;
  readonly diagnostics: readonly Diagnostic[];
}

/** Everything that a task's outputs and complaints follow from. */
export interface SiteKey {
  /** The hash of all of it. */
  readonly hash: string;
  /** What tells that none of its files was touched since; undefined where one may have been within the clock's step. */
  readonly state: string | undefined;
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
): SiteKey | undefined {
  if (program === undefined || kind !== "paper") return undefined;
  const asked = [
    latestDate(date),
    printedDate(date, undefined) ?? "",
    base ?? "",
    String(strict),
    claims,
  ];
  try {
    const entries = sourcesOf(contentDir, since);
    const hash = contentHash([
      program,
      process.version,
      ...asked,
      ...(since === undefined ? [] : [since]),
      // Complaints print where a record lies from here.
      relative(process.cwd(), contentDir),
      relative(process.cwd(), realpathSync(contentDir)),
      ...bytesOf(entries),
    ]).toString("hex");
    return { hash, state: stateOf(entries) };
  } catch {
    return undefined;
  }
}

/** A file or a folder that outputs follow from. */
interface SourceEntry {
  /** What it is called below the folder that is looked through. */
  readonly path: string;
  readonly file: string;
  /** Undefined of a folder. */
  readonly found: BigIntStats | undefined;
}

/** Templates, styles and the content folder; of what was published before each language's manifest. */
function sourcesOf(contentDir: string, since: string | undefined): SourceEntry[] {
  return [
    ...(since === undefined ? [] : manifestsAt(since)).map((path) => entryAt(path, path)),
    ...[...PACKAGE_PARTS.map((name) => join(PACKAGE_ROOT, name)), contentDir].flatMap(entriesIn),
  ];
}

/** What was published before, in each language. */
function manifestsAt(file: string): string[] {
  const others = LANGUAGES.map((language) => join(dirname(file), language, basename(file)));
  return [file, ...others.filter((one) => existsSync(one))];
}

/** No file of a workshop is larger. */
const LARGEST_BYTES = LARGEST_PHOTOGRAPH_BYTES;

/** Every path below a folder, in order. @throws Error for what is neither file nor folder, or too large to be of a workshop. */
function entriesIn(folder: string): SourceEntry[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .map((entry) => ({ entry, file: join(entry.parentPath, entry.name) }))
    .map(({ entry, file }) => {
      const path = file.slice(folder.length);
      return entry.isDirectory()
        ? { path: `${path}/`, file, found: undefined }
        : entryAt(path, file);
    })
    .sort((one, other) => (one.path < other.path ? -1 : 1));
}

function entryAt(path: string, file: string): SourceEntry {
  const found = lstatSync(file, { bigint: true });
  if (!found.isFile() || found.size > LARGEST_BYTES)
    throw new Error(`${path} is neither a folder nor a file of a workshop`);
  return { path, file, found };
}

function* bytesOf(entries: readonly SourceEntry[]): Generator<string | Uint8Array> {
  for (const { path, file, found } of entries)
    yield* found === undefined ? [path] : [path, readFileSync(file)];
}

/** What was written later than so long ago may be written again without a clock that shows it. Our own choice. */
const SETTLED_MS = 100;

function stateOf(entries: readonly SourceEntry[]): string | undefined {
  const newest = Math.max(...entries.map(({ found }) => Number(found?.ctimeMs ?? 0)));
  if (Date.now() - newest < SETTLED_MS) return undefined;
  return contentHash(
    entries.flatMap(({ path, found }) => [
      path,
      found === undefined ? "" : `${fileState(found)} ${found.ctimeNs}`,
    ]),
  ).toString("hex");
}

/** Whether all that a task's outputs follow from is what it was. */
function isStillKey(task: SiteTask, key: SiteKey, program: string | undefined): boolean {
  try {
    if (key.state !== undefined && stateOf(sourcesOf(task.contentDir, task.since)) === key.state)
      return true;
  } catch {
    // Its key tells.
  }
  return siteKey(task, program)?.hash === key.hash;
}

/** What the build of this key said, where both outputs are still as it wrote them. */
export function sameSite(
  { earlierDir, earlierWorkshopDir }: SiteTask,
  key: SiteKey | undefined,
  cache: KeptFolder,
): SiteReport | undefined {
  if (key === undefined) return undefined;
  const kept = readKept(cache.folder, FILE) as Partial<KeptSite> | null | undefined;
  if (kept?.key !== key.hash || kept.sheetCount === undefined || kept.diagnostics === undefined)
    return undefined;
  const isStillIn = (output: OutputKind, dir: string): boolean =>
    isStill(dir, kept[output], knownFiles(cache, output, "paper"));
  return isStillIn("site", earlierDir) && isStillIn("workshop", earlierWorkshopDir)
    ? { sheetCount: kept.sheetCount, diagnostics: kept.diagnostics }
    : undefined;
}

/** @param manifest the hash of its manifest, which has that of every other file. */
function isStill(
  dir: string,
  manifest: string | undefined,
  { hashOf }: Pick<KnownFiles, "hashOf">,
): boolean {
  try {
    if (manifest === undefined || fileHash(join(dir, MANIFEST)) !== manifest) return false;
    const hashes = outputManifest(dir)?.hashes;
    return (
      hashes !== undefined &&
      Object.entries(hashes).every(([path, hash]) => {
        const file = join(dir, path);
        const known = hashOf(path, file);
        return known === undefined
          ? lstatSync(file).isFile() && fileHash(file) === hash
          : known === hash;
      })
    );
  } catch {
    return false;
  }
}

/** Keep what a build wrote, unless what it was made from has changed under it. */
export function keepSite(
  task: SiteTask,
  key: SiteKey | undefined,
  { folder, keeps }: KeptFolder,
  { sheetCount, diagnostics }: SiteReport,
  program: string | undefined = PROGRAM_HASH,
): void {
  if (key === undefined || !keeps || sheetCount === undefined) return;
  if (!isStillKey(task, key, program)) return;
  const [site, workshop] = [task.dir, task.workshopDir].map((dir) => fileHash(join(dir, MANIFEST)));
  writeKept(folder, FILE, { key: key.hash, site, workshop, sheetCount, diagnostics });
}
