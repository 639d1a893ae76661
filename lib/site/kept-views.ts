import { contentHash } from "../kept/content-hash.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";
import type { KeptSteps, PartsRead } from "../kept/kept-steps.ts";
import type { Read } from "../kept/reads.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { viewKey, type FilledPage } from "./filled-page.ts";

/** What pages were filled with before, known by the hash of it and by what was read to fill them. */
export interface KeptViews {
  /** The hash of what a page is filled with: as kept, where all that was read is as before, else of what it is filled with now. */
  readonly keyOf: (path: string, filled: () => Read<FilledPage>) => string;
  /** Keep what is known now. */
  readonly keep: () => void;
}

/** By path, the hash of what was filled in, and the parts that were read. */
type Views = Readonly<Record<string, readonly [view: string, parts: PartsRead]>>;

/**
 * @param of which pages: of what output, in what language.
 * @param modules that fill pages.
 */
export function keptViews(
  cache: WorkCache,
  of: string,
  modules: readonly string[],
  steps: KeptSteps,
): KeptViews | undefined {
  const programs = modules.map((module) => cache.programPart(module));
  if (!programs.every((program) => program !== undefined)) return undefined;
  const program = contentHash([...programs, process.version]).toString("hex");
  const name = `views-${of}.json`;
  const kept = readKept(cache.folder, name) as
    { readonly program?: unknown; readonly views?: Views } | undefined | null;
  const before = new Map(Object.entries(kept?.program === program ? (kept.views ?? {}) : {}));
  const now = new Map<string, Views[string]>();
  return {
    keyOf: (path, filled) => {
      const known = now.get(path);
      if (known !== undefined) return known[0];
      const earlier = before.get(path);
      const still = earlier && steps.stillAs(earlier[1]);
      if (earlier !== undefined && still !== undefined) {
        now.set(path, [earlier[0], still]);
        return earlier[0];
      }
      const { value, names } = filled();
      const view = viewKey(value);
      now.set(path, [view, steps.partsOf(names, earlier?.[1])]);
      return view;
    },
    keep: () => {
      if (cache.keeps)
        writeKept(cache.folder, name, { program, views: Object.fromEntries(now) satisfies Views });
    },
  };
}
