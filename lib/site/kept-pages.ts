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

/** The same of pages. */
export interface KeptPages extends KeptFiles<PageEntry> {
  /** Note that a page names an asset, as its markup tells once it is rendered. */
  readonly names: (page: string, asset: string) => void;
}

/** By path, what a file was made of, the hash of what came out, and what it names besides. */
type MadeFiles = Readonly<
  Record<string, readonly [key: string, hash: string, names?: readonly string[]]>
>;

const NOTHING_KEPT: KeptFiles<KeyedFile> = { isTaken: () => false, keep: () => undefined };

/**
 * Pages between builds: rendered are those whose view, frame or templates have changed since, or
 * the name of an asset that they load.
 * @param base the folder of its host that the site stands in. @param assets of all that pages may load the path, by that which a page is made with.
 * @param cache undefined, or of a program whose modules are not known, takes nothing and keeps nothing.
 */
export function keptPages(
  cache: WorkCache | undefined,
  of: PagesOf,
  base: string,
  assets: ReadonlyMap<string, string>,
  written: WrittenFiles = writtenFiles(of.dir, of.earlierDir),
): KeptPages {
  const named = new Map<string, Set<string>>();
  const kept = keptFiles<PageEntry>(
    cache,
    of,
    {
      what: "pages",
      made: (known) => renderingKey(known, [of.kind, base, ...assets.keys()]),
      named: {
        by: (path) => [...(named.get(path) ?? [])].sort(),
        as: (asset) => assets.get(asset) ?? "",
      },
    },
    written,
  );
  return {
    ...kept,
    names: (page, asset) => {
      const own = named.get(page) ?? new Set();
      named.set(page, own.add(asset));
    },
  };
}

/** What else files are made of, the program among it; undefined where nobody knows. */
export interface MakingOf {
  /** Files of one kind are kept together. */
  readonly what: string;
  readonly made: (cache: WorkCache) => string | undefined;
  /** What a file names besides, once it is made, and what stands there for each of these. */
  readonly named?: {
    readonly by: (path: string) => readonly string[];
    readonly as: (name: string) => string;
  };
}

/** Files between builds, each known by its key. */
export function keptFiles<F extends KeyedFile>(
  cache: WorkCache | undefined,
  of: PagesOf,
  { what, made, named }: MakingOf,
  written: WrittenFiles,
): KeptFiles<F> {
  const making = cache && made(cache);
  if (cache === undefined || making === undefined) return NOTHING_KEPT;
  const name = `${what}-${of.output}-${of.kind}.json`;
  const before = new Map(
    Object.entries((readKept(cache.folder, name, cache.held) ?? {}) as MadeFiles),
  );
  // Thousands of files name much the same.
  const told = new Map<string, string>();
  const namedBy = (names: readonly string[]): string => {
    const list = names.join("\n");
    const known =
      told.get(list) ??
      contentHash(names.flatMap((name) => [name, named?.as(name) ?? ""])).toString("hex");
    told.set(list, known);
    return known;
  };
  const keyOf = (file: F, names: readonly string[] = []): string =>
    contentHash([making, file.key(), namedBy(names)]).toString("hex");
  const taken = new Map<string, MadeFiles[string]>();
  return {
    isTaken: (file) => {
      const earlier = before.get(file.path);
      if (earlier === undefined || keyOf(file, earlier[2]) !== earlier[0]) return false;
      if (!written.bring(file.path, earlier[1])) return false;
      taken.set(file.path, earlier);
      return true;
    },
    keep: (made) => {
      if (!cache.keeps) return;
      const all = made.map((file) => {
        const known = taken.get(file.path);
        if (known !== undefined) return [file.path, known] as const;
        const hash = written.hashes.get(file.path) ?? fileHash(join(of.dir, file.path));
        const names = named?.by(file.path);
        return [file.path, [keyOf(file, names), hash, ...(names ? [names] : [])]] as const;
      });
      writeKept(cache.folder, name, Object.fromEntries(all) satisfies MadeFiles, cache.held);
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
