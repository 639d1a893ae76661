import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { randomUUID } from "node:crypto";
import { join } from "node:path";
import { builtPaths, carriedOver, type BuiltPaths } from "./carried-over.ts";
import { OutputFault } from "./output-fault.ts";
import { outputManifest } from "./output-manifest.ts";
import { NO_SPARE, type SpareOutput } from "./spare-output.ts";

/** In the work folder from before anything else until after everything else: with it, all in there is a build's. */
export const BUILD_MARK = ".mullstone-building";

const SITE = "site";
const EARLIER = "earlier";
const RUBBISH = "rubbish-";

/**
 * The folder beside an output in which a build works: the site being written, the earlier output
 * during the swap, and rubbish on its way out, each by its name. Whatever moment a build is killed
 * in, what lies here says what is to be done, and `recovered` does it.
 */
function workFolderOf(out: string): string {
  return `${out}.building`;
}

/** Take the work folder, bring back what a stopped build left between two places, and clear it. @throws OutputFault for a folder that is not a build's. */
export function openedWorkFolder(out: string, spare: SpareOutput): string {
  const work = workFolderOf(out);
  if (!existsSync(work)) mkdirSync(work);
  else if (readdirSync(work).length > 0 && !existsSync(join(work, BUILD_MARK)))
    throw new OutputFault(
      `The folder ${work} is in the way and is not what a stopped build left: nothing was written`,
    );
  writeFileSync(join(work, BUILD_MARK), "");
  recover(out, work);
  const site = join(work, SITE);
  if (!spare.taken(site)) mkdirSync(site);
  return site;
}

/** An output that a stopped swap left here is put back, or was replaced and goes; so does all else. */
function recover(out: string, work: string): void {
  const earlier = join(work, EARLIER);
  if (existsSync(earlier)) {
    if (existsSync(out) && readdirSync(out).length > 0)
      cleared(work, out, NO_SPARE, { before: builtIn(earlier), now: builtIn(out) });
    else renameSync(earlier, out);
  }
  discardSite(work);
  sweep(work);
}

/** The site being written, as rubbish. */
function discardSite(work: string): void {
  const site = join(work, SITE);
  if (existsSync(site)) renameSync(site, rubbish(work));
}

/**
 * out -> earlier, site -> out: at every moment the output is the earlier one, the new one, or for
 * the time between two renames not there, and then the next build puts it back.
 * @returns what could not be cleared away afterwards, as a sentence; the new output stands all the same.
 * @throws OutputFault naming what no build wrote, where the new output has a file of its own.
 */
export function swapped(out: string, spare: SpareOutput): string | undefined {
  const work = workFolderOf(out);
  const built = existsSync(out)
    ? { before: builtIn(out), now: builtIn(join(work, SITE)) }
    : undefined;
  try {
    if (built !== undefined) setAside(out, work, built);
    putInPlace(out, work);
  } catch (error) {
    // What no build wrote may stand in it by now: it is no other build's to begin with.
    discardSite(work);
    throw error;
  }
  return built === undefined ? undefined : cleared(work, out, spare, built);
}

/** What the builds of two outputs wrote. */
interface Built {
  readonly before: BuiltPaths;
  readonly now: BuiltPaths;
}

function setAside(out: string, work: string, { before, now }: Built): void {
  const site = join(work, SITE);
  const { inTheWay } = carriedOver(out, site, before, now);
  if (inTheWay.length > 0)
    throw new OutputFault(
      `${join(out, inTheWay[0] ?? "")} was written by no build, and the new output has a file of that name: move it away${inTheWay.length > 1 ? `, and ${inTheWay.length - 1} more` : ""}; nothing was written`,
    );
  chmodSync(site, statSync(out).mode & 0o7777);
  renameSync(out, join(work, EARLIER));
}

function putInPlace(out: string, work: string): void {
  try {
    renameSync(join(work, SITE), out);
  } catch (error) {
    const earlier = join(work, EARLIER);
    if (existsSync(earlier)) renameSync(earlier, out);
    throw error;
  }
}

/** The replaced output out of the way, for the next build or as rubbish, once all in it that no build wrote is in the new one. */
function cleared(work: string, out: string, spare: SpareOutput, built: Built): string | undefined {
  const earlier = join(work, EARLIER);
  const foreign = carriedWhole(earlier, out, built);
  if (foreign === undefined) {
    const kept = `${out}.kept-${randomUUID().slice(0, 8)}`;
    renameSync(earlier, kept);
    return `The earlier output is kept as ${kept}: it holds what no build wrote and what could not be brought into the new one`;
  }
  if (!isLeft(earlier, foreign, spare)) renameSync(earlier, rubbish(work));
  return sweep(work);
}

/** What no build wrote of an output, once all of it is in another; undefined where some could not be brought. */
function carriedWhole(
  earlier: string,
  out: string,
  { before, now }: Built,
): readonly string[] | undefined {
  try {
    const { foreign, inTheWay } = carriedOver(earlier, out, before, now);
    return inTheWay.length === 0 ? foreign : undefined;
  } catch {
    return undefined;
  }
}

/** Kept for the next build is what a build wrote, and nothing besides. */
function isLeft(earlier: string, foreign: readonly string[], spare: SpareOutput): boolean {
  try {
    for (const path of foreign) rmSync(join(earlier, path), { recursive: true, force: true });
  } catch {
    return false;
  }
  return spare.left(earlier);
}

function builtIn(dir: string): BuiltPaths {
  return builtPaths(outputManifest(dir)?.files ?? new Set());
}

function rubbish(work: string): string {
  return join(work, `${RUBBISH}${randomUUID()}`);
}

/** Remove the rubbish; what can't be removed stays by that name and hinders no later build. */
function sweep(work: string): string | undefined {
  let left: string | undefined;
  for (const name of readdirSync(work).filter((one) => one.startsWith(RUBBISH))) {
    try {
      rmSync(join(work, name), { recursive: true, force: true });
    } catch {
      left = `${join(work, name)} is left over and can't be removed: it belongs to somebody else`;
    }
  }
  return left;
}

/** Leave nothing behind but what can't be removed; the mark goes last. */
export function closeWorkFolder(out: string, spare: SpareOutput): void {
  const work = workFolderOf(out);
  if (!existsSync(join(work, BUILD_MARK))) return;
  try {
    if (!spare.left(join(work, SITE))) discardSite(work);
    sweep(work);
    if (readdirSync(work).some((name) => name !== BUILD_MARK)) return;
    unlinkSync(join(work, BUILD_MARK));
    rmdirSync(work);
  } catch {
    // The next build clears it.
  }
}
