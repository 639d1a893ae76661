import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { contentHash, fileHash } from "../kept/content-hash.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { OutputKind } from "./output-manifest.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import type { SiteTask } from "./site-task.ts";
import type { PageEntry } from "./page-entry.ts";
import { writtenFiles, type WrittenFiles } from "./written-files.ts";

/** Whose pages: of which output, how they are wanted, where the earlier ones lie. */
export interface PagesOf {
  readonly output: OutputKind;
  readonly kind: SiteTask["kind"];
  /** Pages are written below it. */
  readonly dir: string;
  /** The output that will be replaced; need not exist. */
  readonly earlierDir: string;
}

/** What is made of something that a key stands for. */
export interface KeyedFile {
  readonly path: string;
  readonly key: () => string;
}

/** What earlier files were made of and came out as. */
export interface KeptFiles<F extends KeyedFile> {
  /** Whether a file would come out as the earlier output has it, and has been taken from there. */
  readonly isTaken: (file: F) => boolean;
  /** Keep what all came out as, once they are written. */
  readonly keep: (files: readonly F[]) => void;
}

/** By path, what a file was made of and the hash of what came out. */
type MadeFiles = Readonly<Record<string, readonly [key: string, hash: string]>>;

const NOTHING_KEPT: KeptFiles<KeyedFile> = { isTaken: () => false, keep: () => undefined };

/**
 * Pages between builds: rendered are those whose view, frame or templates have changed since.
 * @param named what pages say of the rest of their site: its folder, the names of its assets.
 * @param cache undefined, or of a program whose modules are not known, takes nothing and keeps nothing.
 */
export function keptPages(
  cache: WorkCache | undefined,
  of: PagesOf,
  named: readonly string[],
  written: WrittenFiles = writtenFiles(of.dir, of.earlierDir),
): KeptFiles<PageEntry> {
  return keptFiles(
    cache,
    of,
    { what: "pages", made: (known) => renderingKey(known, [of.kind, ...named]) },
    written,
  );
}

/** What else files are made of, the program among it; undefined where nobody knows. */
export interface MakingOf {
  /** Files of one kind are kept together. */
  readonly what: string;
  readonly made: (cache: WorkCache) => string | undefined;
}

/** Files between builds, each known by its key. */
export function keptFiles<F extends KeyedFile>(
  cache: WorkCache | undefined,
  of: PagesOf,
  { what, made }: MakingOf,
  written: WrittenFiles,
): KeptFiles<F> {
  const making = cache && made(cache);
  if (cache === undefined || making === undefined) return NOTHING_KEPT;
  const name = `${what}-${of.output}-${of.kind}.json`;
  const before = new Map(Object.entries((readKept(cache.folder, name) ?? {}) as MadeFiles));
  const keyOf = (file: F): string => contentHash([making, file.key()]).toString("hex");
  const keys = new Map<F, string>();
  return {
    isTaken: (file) => {
      const [key, earlier] = [keyOf(file), before.get(file.path)];
      keys.set(file, key);
      return earlier?.[0] === key && written.bring(file.path, earlier[1]);
    },
    keep: (files) => {
      if (!cache.keeps) return;
      const all = files.map((file) => {
        const hash = written.hashes.get(file.path) ?? fileHash(join(of.dir, file.path));
        return [file.path, [keys.get(file) ?? keyOf(file), hash]] as const;
      });
      writeKept(cache.folder, name, Object.fromEntries(all) satisfies MadeFiles);
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
