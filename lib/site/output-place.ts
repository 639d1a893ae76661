import { lstatSync, readFileSync, readlinkSync, realpathSync } from "node:fs";
import { basename, dirname, join, resolve, sep } from "node:path";
import { OutputFault } from "./output-fault.ts";

/**
 * Where an output folder really lies, links followed: a link to a folder stays a link, and what it
 * leads to is replaced.
 * @throws OutputFault for a folder that holds or lies in the content folder, and for a mount point.
 */
export function outputPlace(outputDir: string, contentDir: string): string {
  const out = realPlace(resolve(outputDir));
  const content = realPlace(resolve(contentDir));
  if (out === dirname(out) || isWithin(content, out) || isWithin(out, content))
    throw new OutputFault(`The output folder ${out} can't hold or lie in the content folder`);
  if (isMountPoint(out))
    throw new OutputFault(
      `The output folder ${out} is a mount point, which no build can replace: name a folder in it`,
    );
  return out;
}

/** A path with every link in it followed, be its end there or not. @throws OutputFault for links that lead round in a circle. */
export function realPlace(path: string, followed = 0): string {
  if (followed > 40)
    throw new OutputFault(`${path} can't be reached: a link in it leads round in a circle`);
  try {
    return realpathSync(path);
  } catch {
    const target = linkTarget(path);
    if (target !== undefined) return realPlace(resolve(dirname(path), target), followed + 1);
    const parent = dirname(path);
    return parent === path ? path : join(realPlace(parent, followed + 1), basename(path));
  }
}

/** Whether a path is a folder or lies in it. */
export function isWithin(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);
}

function linkTarget(path: string): string | undefined {
  try {
    return readlinkSync(path);
  } catch {
    return undefined;
  }
}

/** A folder of another disk than its parent, or one that Linux lists as mounted: it can't be renamed. */
function isMountPoint(dir: string): boolean {
  const own = lstatSync(dir, { throwIfNoEntry: false });
  if (own === undefined) return false;
  return own.dev !== lstatSync(dirname(dir)).dev || mountPoints().has(dir);
}

function mountPoints(): ReadonlySet<string> {
  try {
    return new Set(
      readFileSync("/proc/self/mountinfo", "utf8")
        .split("\n")
        .map((line) => unescaped(line.split(" ")[4] ?? "")),
    );
  } catch {
    return new Set();
  }
}

/** Blanks and backslashes are written there as `\040`. */
function unescaped(path: string): string {
  return path.replace(/\\([0-7]{3})/g, (_, octal: string) =>
    String.fromCharCode(Number.parseInt(octal, 8)),
  );
}
