/** A content folder in one file, and out of it again: a tar archive, zipped, whose first entry lists every file with its hash. */
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join, resolve, sep } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import { Header, Parser } from "tar";
import { codeOf } from "../diagnostics/error-code.ts";
import { contentHash } from "../kept/content-hash.ts";
import { CACHE_FOLDER } from "../kept/work-cache.ts";
import { certain } from "../quantities/at.ts";
import { OutputFault } from "../site/output-fault.ts";

/** What a pack may hold. */
export interface PackLimits {
  readonly files: number;
  readonly fileBytes: number;
  readonly packBytes: number;
}

/** More than a workshop has, and less than would fill a disk by surprise. */
const LIMITS: PackLimits = {
  files: 20_000,
  fileBytes: 256 * 1024 * 1024,
  packBytes: 1536 * 1024 * 1024,
};

const LIST = "pack.json";
const KIND = "mullstone-pack";
const BLOCK = 512;

/** Never packed: what others keep their work in. */
const LEFT_OUT = new Set([".git", "node_modules", CACHE_FOLDER]);

interface PackList {
  readonly kind: typeof KIND;
  readonly schemaVersion: 1;
  readonly files: Readonly<Record<string, string>>;
  /** Those without a file; absent where there is none. */
  readonly emptyFolders?: readonly string[];
}

/** What came out of a pack. */
export interface Unpacked {
  /** By path below the content folder. */
  readonly files: ReadonlyMap<string, Buffer>;
  readonly emptyFolders: readonly string[];
}

/** What went into a pack. */
export interface Packed {
  readonly bytes: Uint8Array;
  readonly count: number;
}

/**
 * All files of a content folder in one: records, readings, photographs, lots and kept manifests. The same folder gives the same bytes.
 * @throws OutputFault for a link or a device in the folder, or more than a pack may hold
 */
export function packedFolder(contentDir: string, limits: PackLimits = LIMITS): Packed {
  const { files, emptyFolders } = filesIn(contentDir, "", limits);
  if (!files.includes("workshop.yaml"))
    throw new OutputFault(
      `${contentDir} can't be packed: it is no content folder, for want of a workshop.yaml`,
    );
  if (files.length > limits.files)
    throw new OutputFault(
      `${contentDir} holds ${files.length} files, and a pack at most ${limits.files}`,
    );
  const contents = files.map((path) => ({ path, bytes: readFileSync(join(contentDir, path)) }));
  const list: PackList = {
    kind: KIND,
    schemaVersion: 1,
    files: Object.fromEntries(contents.map(({ path, bytes }) => [path, hashOf(bytes)])),
    ...(emptyFolders.length > 0 && { emptyFolders }),
  };
  const entries = [
    { path: LIST, bytes: Buffer.from(`${JSON.stringify(list, null, 1)}\n`) },
    ...contents.map(({ path, bytes }) => ({ path: `content/${path}`, bytes })),
  ];
  const size = entries.reduce((sum, { bytes }) => sum + bytes.length, 0);
  if (size > limits.packBytes)
    throw new OutputFault(
      `${contentDir} holds ${size} bytes, and a pack at most ${limits.packBytes}`,
    );
  const tar = Buffer.concat([...entries.flatMap(tarEntry), Buffer.alloc(2 * BLOCK)]);
  return { bytes: gzipSync(tar), count: files.length };
}

interface Found {
  readonly files: readonly string[];
  readonly emptyFolders: readonly string[];
}

function filesIn(root: string, folder: string, limits: PackLimits): Found {
  const found = readdirSync(join(root, folder))
    .filter((name) => !LEFT_OUT.has(name))
    .sort()
    .map((name): Found => {
      const path = folder === "" ? name : `${folder}/${name}`;
      const own = lstatSync(join(root, path));
      if (own.isDirectory()) return filesIn(root, path, limits);
      if (!own.isFile())
        throw new OutputFault(
          `${path} can't be packed: it is ${own.isSymbolicLink() ? "a link" : "no plain file"}, and a pack holds files alone`,
        );
      if (own.size > limits.fileBytes)
        throw new OutputFault(
          `${path} has ${own.size} bytes, and a pack takes files of at most ${limits.fileBytes}`,
        );
      return { files: [path], emptyFolders: [] };
    });
  return {
    files: found.flatMap((one) => one.files),
    emptyFolders:
      found.length === 0 && folder !== "" ? [folder] : found.flatMap((one) => one.emptyFolders),
  };
}

function tarEntry({ path, bytes }: { readonly path: string; readonly bytes: Buffer }): Buffer[] {
  const header = new Header({
    path,
    mode: 0o644,
    size: bytes.length,
    mtime: new Date(0),
    type: "File",
  });
  if (header.encode()) throw new OutputFault(`${path} can't be packed: its path is too long`);
  return [certain(header.block), bytes, Buffer.alloc((BLOCK - (bytes.length % BLOCK)) % BLOCK)];
}

/**
 * Every file of a pack, held against the list at its head, and the folders that held none.
 * @throws OutputFault for what is no pack, is damaged, or holds what no pack of ours does: a path that leads outside, a link, more than there may be
 */
export async function unpackedFiles(
  file: string,
  packed: Uint8Array,
  limits: PackLimits = LIMITS,
): Promise<Unpacked> {
  const refused = (why: string): OutputFault =>
    new OutputFault(`${file} is refused: ${why}; nothing was written`);
  let tar: Buffer;
  try {
    tar = gunzipSync(packed, { maxOutputLength: limits.packBytes + limits.files * 2 * BLOCK });
  } catch (error) {
    throw refused(
      codeOf(error) === "ERR_BUFFER_TOO_LARGE"
        ? `it unpacks to more than ${limits.packBytes} bytes`
        : "it is no pack, or was damaged",
    );
  }
  const entries = await entriesOf(tar, refused, limits);
  const list = packList(entries.get(LIST));
  if (list === undefined) throw refused(`it has no ${LIST} of ours at its head`);
  const { files: listed, emptyFolders } = list;
  const outside = emptyFolders.find((path) => !isInside(`content/${path}`));
  if (outside !== undefined)
    throw refused(`the path ${JSON.stringify(outside)} leads out of the content folder`);
  if (emptyFolders.length > limits.files) throw refused("it holds more than a pack may");
  entries.delete(LIST);
  const files = new Map(
    [...entries].map(([path, bytes]) => [path.slice("content/".length), bytes]),
  );
  for (const [path, bytes] of files)
    if (!Object.hasOwn(listed, path)) throw refused(`${path} is not in its list`);
    else if (listed[path] !== hashOf(bytes)) throw refused(`${path} is not what was packed`);
  const missing = Object.keys(listed).find((path) => !files.has(path));
  if (missing !== undefined) throw refused(`${missing} is missing`);
  return { files, emptyFolders };
}

async function entriesOf(
  tar: Buffer,
  refused: (why: string) => OutputFault,
  limits: PackLimits,
): Promise<Map<string, Buffer>> {
  const entries = new Map<string, Buffer>();
  const seen = new Set<string>();
  let fault: OutputFault | undefined;
  await new Promise<void>((done) => {
    const parser = new Parser({
      strict: true,
      onReadEntry: (entry) => {
        const { path, type, size } = entry;
        const chunks: Buffer[] = [];
        fault ??=
          type !== "File" && type !== "OldFile"
            ? refused(`${path} is a ${type}, and a pack holds files alone`)
            : path !== LIST && !isInside(path)
              ? refused(`the path ${JSON.stringify(path)} leads out of the content folder`)
              : seen.has(path.normalize("NFC").toLowerCase())
                ? refused(`${path} comes twice`)
                : seen.size >= limits.files + 1 || size > limits.fileBytes
                  ? refused(`it holds more than a pack may`)
                  : undefined;
        seen.add(path.normalize("NFC").toLowerCase());
        entry.on("data", (chunk: Buffer) => {
          if (fault === undefined) chunks.push(chunk);
        });
        entry.on("end", () => entries.set(path, Buffer.concat(chunks)));
      },
    });
    parser.on("error", () => {
      fault ??= refused("it is no pack, or was damaged");
      done();
    });
    parser.on("end", () => done());
    parser.end(tar);
  });
  if (fault !== undefined) throw fault;
  return entries;
}

/** A path below `content/`, on any system. */
function isInside(path: string): boolean {
  return (
    path.startsWith("content/") &&
    path
      .slice("content/".length)
      .split("/")
      // A colon names a stream or a drive to some systems, a backslash is a folder's end to them.
      .every((part) => part !== "" && part !== "." && part !== ".." && !/[\\:\0]/.test(part))
  );
}

function packList(
  bytes: Buffer | undefined,
): { files: Readonly<Record<string, unknown>>; emptyFolders: readonly string[] } | undefined {
  try {
    const read = JSON.parse(bytes?.toString("utf8") ?? "") as Partial<PackList> | null;
    if (read?.kind !== KIND || typeof read.files !== "object") return undefined;
    const folders: unknown = read.emptyFolders;
    return {
      files: read.files,
      emptyFolders: Array.isArray(folders) ? folders.map(String) : [],
    };
  } catch {
    return undefined;
  }
}

function hashOf(bytes: Uint8Array): string {
  return contentHash([bytes]).toString("hex");
}

/** Write unpacked files into a folder that is not there yet or is empty: beside it first, then in one step. @throws OutputFault */
export function writeUnpacked({ files, emptyFolders }: Unpacked, dir: string): void {
  const place = resolve(dir);
  const found = statSync(place, { throwIfNoEntry: false });
  if (found !== undefined && (!found.isDirectory() || readdirSync(place).length > 0))
    throw new OutputFault(
      `${dir} is there already: a pack is unpacked into a new folder, and nothing was written`,
    );
  mkdirSync(dirname(place), { recursive: true });
  const aside = mkdtempSync(join(realpathSync(dirname(place)), `.${basename(place)}-unpacking-`));
  try {
    for (const [path, bytes] of files) {
      const target = join(aside, path);
      if (!target.startsWith(aside + sep)) throw new OutputFault(`${path} leads out of ${dir}`);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, bytes);
    }
    for (const path of emptyFolders) {
      const target = join(aside, path);
      if (!target.startsWith(aside + sep)) throw new OutputFault(`${path} leads out of ${dir}`);
      mkdirSync(target, { recursive: true });
    }
    if (found !== undefined) rmSync(place, { recursive: true });
    renameSync(aside, place);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}
