import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { OutputKind } from "./output-manifest.ts";
import type { SiteKey } from "./same-site.ts";

/** A site to be written: whose records, and how. */
export interface SiteTask {
  readonly contentDir: string;
  readonly date: string | undefined;
  /** The folder of its host that the site will stand in, where it is not that of the workshop's own address. */
  readonly base: string | undefined;
  /** Whether a warning stops the build. */
  readonly strict: boolean;
  /** What a claim that no longer holds is. */
  readonly claims: Diagnostic["severity"];
  /** Written into; empty. */
  readonly dir: string;
  /** The workshop's own pages are written into this one; empty. */
  readonly workshopDir: string;
  /** `paper` for a build to keep: PDFs and pictures too; `screen` for pages that follow the builds. */
  readonly kind: "paper" | "screen";
  /** The output that will be replaced, which papers are taken from and complaints are about; need not exist. */
  readonly earlierDir: string;
  /** The workshop's folder that will be replaced; need not exist. */
  readonly earlierWorkshopDir: string;
  /** A manifest.json kept when cards were printed last. */
  readonly since: string | undefined;
  /** All that the outputs follow from, where a build that finds it unchanged need not make them again. */
  readonly key?: SiteKey | undefined;
}

/** What became of a task. */
export interface SiteReport {
  /** Every complaint, in the order in which they were told. */
  readonly diagnostics: readonly Diagnostic[];
  /** Sheets written; undefined when the records, or what was found in them, stopped it. */
  readonly sheetCount: number | undefined;
}

/** Paths of pages below the root of either output: `colours/bone-black/index.html`. */
export type OutputPages = Readonly<Record<OutputKind, readonly string[]>>;

/** Pages that there are now, of all that there will be: what is neither is still to be made. */
export interface PagesMade {
  readonly output: OutputKind;
  /** Those that have come since it was told last. */
  readonly made: readonly string[];
  readonly all: readonly string[];
  /** Whether all has come that is no page. */
  readonly isDataThere: boolean;
}

/** Told while it is at work. */
export interface SiteTelling {
  readonly complaints: (diagnostics: readonly Diagnostic[]) => void;
  readonly progress: (what: string) => void;
  /** Folders of the pages that stand for one record each, as soon as the records are known: `colours/bone-black/`. */
  readonly recorded?: (folders: readonly string[]) => void;
  /** Who serves pages while they are made. */
  readonly served?: ServedPages | undefined;
}

export interface ServedPages {
  /** Pages that somebody looks at or asks for, which are made before the others. */
  readonly wanted: () => Promise<OutputPages>;
  readonly made: (pages: PagesMade) => void;
}
