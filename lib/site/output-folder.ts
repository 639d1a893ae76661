import {
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  unlinkSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { dirname, join, resolve, sep } from "node:path";

/** A reason for which an output folder can't be written; printed on one line. */
export class OutputFault extends Error {}

/** What our manifest.json says of itself, so that a folder can be known for ours. */
export const MANIFEST_KIND = "mullstone-manifest";

/** A folder being built beside the one it will replace. */
export interface BuildFolder {
  /** Write into this one. */
  readonly dir: string;
  /** out -> out.previous, new -> out. Until then the old output is untouched. */
  readonly publish: () => void;
  /** Remove what was built; the old output stays. */
  readonly discard: () => void;
}

/**
 * Claim an output folder for one build: put back an output that a killed swap
 * left as `.previous`, refuse a folder that is not ours, and lock out a second build.
 * @throws OutputFault when the folder is not ours, in use, or can't be written.
 */
export function buildFolder(outputDir: string, contentDir: string): BuildFolder {
  const out = resolve(outputDir);
  const previous = `${out}.previous`;
  const building = `${out}.building`;
  const lock = `${out}.lock`;
  refuseDangerous(out, resolve(contentDir));

  attempt(out, () => mkdirSync(dirname(out), { recursive: true }));
  takeLock(lock, out);
  const release = (): void => {
    rmSync(lock, { force: true });
  };
  try {
    if (!existsSync(out) && existsSync(previous)) renameSync(previous, out);
    refuseForeign(out, outputDir);
    refuseForeign(previous, `${outputDir}.previous`);
    refuseForeignBuild(building);
    rmSync(building, { recursive: true, force: true });
    mkdirSync(building);
    writeFileSync(join(building, BUILD_MARK), "");
  } catch (error) {
    release();
    throw asFault(error, out);
  }

  return {
    dir: building,
    publish: () => {
      attempt(out, () => {
        rmSync(join(building, BUILD_MARK), { force: true });
        rmSync(previous, { recursive: true, force: true });
        if (existsSync(out)) renameSync(out, previous);
        renameSync(building, out);
        rmSync(previous, { recursive: true, force: true });
      });
      release();
    },
    discard: () => {
      rmSync(building, { recursive: true, force: true });
      release();
    },
  };
}

function refuseDangerous(out: string, content: string): void {
  if (
    out === dirname(out) ||
    content === out ||
    content.startsWith(out + sep) ||
    out.startsWith(content + sep)
  ) {
    throw new OutputFault(`The output folder ${out} can't hold or lie in the content folder`);
  }
}

function refuseForeign(dir: string, printed: string): void {
  if (!existsSync(dir) || readdirSync(dir).length === 0) return;
  let kind: unknown;
  try {
    kind = (JSON.parse(readFileSync(join(dir, "manifest.json"), "utf8")) as { kind?: unknown })
      .kind;
  } catch {
    kind = undefined;
  }
  if (kind !== MANIFEST_KIND) {
    throw new OutputFault(
      `The output folder ${printed} is neither empty nor made by an earlier build, which would have left its manifest.json: nothing was written`,
    );
  }
}

/** Left over by a killed build: it may lack a manifest, but then it holds nothing that another program made. */
function refuseForeignBuild(dir: string): void {
  if (existsSync(dir) && readdirSync(dir).length > 0 && !existsSync(join(dir, BUILD_MARK))) {
    throw new OutputFault(
      `The folder ${dir} is in the way and is not what a stopped build left: nothing was written`,
    );
  }
}

/** Written first into a folder under construction, removed before it is published. */
export const BUILD_MARK = ".mullstone-building";

function takeLock(lock: string, out: string): void {
  for (let tries = 0; tries < 2; tries++) {
    try {
      const handle = openSync(lock, "wx");
      writeSync(handle, String(process.pid));
      closeSync(handle);
      return;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw asFault(error, out);
      const holder = Number(readFileSync(lock, "utf8"));
      if (isRunning(holder))
        throw new OutputFault(`Another build of ${out} is at work, process ${holder}`);
      unlinkSync(lock);
    }
  }
}

function isRunning(pid: number): boolean {
  if (!(pid > 0)) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

function attempt(out: string, action: () => unknown): void {
  try {
    action();
  } catch (error) {
    throw asFault(error, out);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EACCES: "permission denied",
  EROFS: "the disk is read-only",
  ENOTDIR: "part of its path is not a folder",
  EEXIST: "part of its path is not a folder",
  EDQUOT: "the disk quota is used up",
};

/** Whatever stopped a build as one line; a file system's complaint names the output folder. */
export function asFault(error: unknown, out: string): OutputFault {
  if (error instanceof OutputFault) return error;
  const first = firstCause(error);
  const reason = REASONS[(first as NodeJS.ErrnoException).code ?? ""];
  const sentence =
    reason === undefined ? oneLine(String(first)) : `${out} can't be written: ${reason}`;
  return new OutputFault(`${sentence}; the earlier output is untouched`, { cause: error });
}

/** Eleventy and others wrap what went wrong in what they were at. */
function firstCause(error: unknown): unknown {
  const { cause, originalError } = error as { cause?: unknown; originalError?: unknown };
  const inner = originalError ?? cause;
  return inner instanceof Error ? firstCause(inner) : error;
}

function oneLine(text: string): string {
  return text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .join(" ");
}
