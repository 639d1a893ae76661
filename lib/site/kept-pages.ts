import { copyFileSync, linkSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { contentHash, fileHash } from "../kept/content-hash.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { OutputKind } from "./output-manifest.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import type { SiteTask } from "./site-task.ts";
import type { PageEntry } from "./page-entry.ts";

/** Whose pages: of which output, how they are wanted, where the earlier ones lie. */
export interface PagesOf {
  readonly output: OutputKind;
  readonly kind: SiteTask["kind"];
  /** Pages are written below it. */
  readonly dir: string;
  /** The output that will be replaced; need not exist. */
  readonly earlierDir: string;
}

/** What earlier pages were made of and came out as. */
export interface KeptPages {
  /** Whether a page would come out as the earlier output has it, and has been taken from there. */
  readonly isTaken: (page: PageEntry) => boolean;
  /** Keep what all pages came out as, once they are written. */
  readonly keep: (pages: readonly PageEntry[]) => void;
}

/** By path, what a page was made of and the hash of what came out. */
type MadePages = Readonly<Record<string, readonly [key: string, hash: string]>>;

const NOTHING_KEPT: KeptPages = { isTaken: () => false, keep: () => undefined };

/**
 * Pages between builds: rendered are those whose view, frame or templates have changed since.
 * @param named what pages say of the rest of their site: its folder, the names of its assets.
 * @param cache undefined, or of a program whose modules are not known, takes nothing and keeps nothing.
 */
export function keptPages(
  cache: WorkCache | undefined,
  of: PagesOf,
  named: readonly string[],
): KeptPages {
  const rendering = cache && renderingKey(cache, [of.kind, ...named]);
  if (cache === undefined || rendering === undefined) return NOTHING_KEPT;
  const name = `pages-${of.output}-${of.kind}.json`;
  const before = new Map(Object.entries((readKept(cache.folder, name) ?? {}) as MadePages));
  const keyOf = (page: PageEntry): string => contentHash([rendering, page.key()]).toString("hex");
  const known = new Map<PageEntry, readonly [key: string, hash: string | undefined]>();
  return {
    isTaken: (page) => {
      const [key, hash] = [keyOf(page), before.get(page.path)];
      const isTaken = hash?.[0] === key && isBrought(page.path, hash[1], of);
      known.set(page, [key, isTaken ? hash[1] : undefined]);
      return isTaken;
    },
    keep: (pages) => {
      if (!cache.keeps) return;
      const made = pages.map((page) => {
        const [key = keyOf(page), hash = fileHash(join(of.dir, page.path))] = known.get(page) ?? [];
        return [page.path, [key, hash]] as const;
      });
      writeKept(cache.folder, name, Object.fromEntries(made) satisfies MadePages);
    },
  };
}

const TEMPLATES = join(PACKAGE_ROOT, "templates");

/** Everything beside its view that a page is made of. */
function renderingKey({ programPart }: WorkCache, asked: readonly string[]): string | undefined {
  const parts = [
    "lib/site/template-environment.ts",
    "lib/site/reload-script.ts",
    "lib/site/hashed-names.ts",
  ].map(programPart);
  if (!parts.every((part) => part !== undefined)) return undefined;
  const templates = readdirSync(TEMPLATES, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".njk"))
    .sort()
    .flatMap((file) => [file, readFileSync(join(TEMPLATES, file))]);
  const wiring = readFileSync(join(PACKAGE_ROOT, "eleventy.config.ts"));
  return contentHash([...asked, process.version, ...parts, wiring, ...templates]).toString("hex");
}

/** Bring a file of the earlier output as a second name of it, where it is still as it came out. */
function isBrought(path: string, hash: string, { dir, earlierDir }: PagesOf): boolean {
  const [from, to] = [join(earlierDir, path), join(dir, path)];
  try {
    mkdirSync(dirname(to), { recursive: true });
    try {
      linkSync(from, to);
    } catch {
      copyFileSync(from, to);
    }
    if (fileHash(to) === hash) return true;
  } catch {
    // There is no such file, or none that can be read.
  }
  rmSync(to, { force: true, recursive: true });
  return false;
}
