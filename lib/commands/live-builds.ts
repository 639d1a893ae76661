import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { formatDiagnostic } from "../diagnostics/diagnostic.ts";
import { printedOrder } from "../diagnostics/printed-order.ts";
import { folderStir } from "../site/folder-stir.ts";
import { folderState } from "../site/folder-state.ts";
import { OutputFault } from "../site/output-fault.ts";
import { PACKAGE_ROOT } from "../site/package-root.ts";
import { NEWEST_PROGRAM, siteThread, type SiteThread } from "../site/site-thread.ts";
import type { OutputPages, PagesMade } from "../site/site-task.ts";
import type { CommandOptions } from "./command-options.ts";
import { counted, printDiagnostics, seconds } from "./told.ts";

/** Where one build's pages lie. */
interface BuiltPages {
  readonly site: string;
  readonly workshop: string;
}

/** Why there are no new pages: a line a complaint, with its file and line. */
interface BuildFault {
  readonly fault: string;
}

/** Who serves pages while a build makes newer ones. */
export interface BuildsServed {
  readonly wanted: () => OutputPages;
  /** Folders of pages whose record was deleted: `colours/bone-black/`. */
  readonly gone: (folders: readonly string[]) => void;
  readonly made: (dirs: BuiltPages, pages: PagesMade) => void;
}

/** Builds of a content folder as it is edited, each in a folder of its own. */
interface LiveBuilds {
  /** Build once: the folders of its pages; where a fault left no new ones, what was told of it. */
  readonly next: (served?: BuildsServed) => Promise<BuiltPages | BuildFault>;
  /** Settles when something has been edited since the last build began. */
  readonly changed: () => Promise<void>;
  readonly end: () => Promise<void>;
}

/** How often the content folder is looked at, and looked at again while files are being written [ms]. */
const LOOK_EVERY_MS = 50;
const SETTLES_IN_MS = 25;
/** Of the time no more than one part in so many goes into looking. */
const LOOK_SHARE = 25;
/** The program is looked at once in so many looks. */
const PROGRAM_EVERY = 10;
/** Files that go on changing are waited for no longer than this [ms]. */
const LONGEST_WAIT_MS = 800;

/** What a build leaves in memory goes with its thread, which is renewed after so many. */
const BUILDS_A_THREAD = 20;

/** Folders in the content folder; folders in the rooms of lib/. */
const CONTENT_DEPTH = 1;
const PROGRAM_DEPTH = 4;

/** @param scratch folder that the builds lie in; the two newest stay. */
export function liveBuilds(
  { contentDir, date, base, claims, since }: CommandOptions,
  scratch: string,
): LiveBuilds {
  const content = (): string => folderState(contentDir, CONTENT_DEPTH);
  const shown: string[] = [];
  let count = 0;
  let thread: SiteThread | undefined;
  let known = { content: "", program: "" };
  let recorded: readonly string[] = [];
  let gone: readonly string[] = [];
  let isEnded = false;

  const next = async (served?: BuildsServed): Promise<BuiltPages | BuildFault> => {
    const started = performance.now();
    const now = { ...known, content: content() };
    // What is edited beside the content is seen by the next look: to look takes a while.
    if (now.content === known.content || count === 0) now.program = programState();
    // A module that a thread has imported never changes there again.
    if (now.program !== known.program || count % BUILDS_A_THREAD === 0) await endThread();
    known = now;
    const dir = join(scratch, String((count += 1)));
    const pages = pagesIn(dir);
    const earlier = pagesIn(shown.at(-1) ?? dir);
    for (const made of [dir, pages.site, pages.workshop]) mkdirSync(made);
    let stopped: string | undefined;
    thread ??= siteThread(NEWEST_PROGRAM);
    const { sheetCount, diagnostics } = await thread
      .written(
        {
          contentDir,
          date,
          base,
          claims,
          strict: false,
          dir: pages.site,
          workshopDir: pages.workshop,
          kind: "screen",
          earlierDir: earlier.site,
          earlierWorkshopDir: earlier.workshop,
          since,
        },
        {
          complaints: printDiagnostics,
          progress: () => undefined,
          recorded: (folders) => {
            const now = new Set(folders);
            gone = [...gone, ...recorded].filter((folder) => !now.has(folder));
            recorded = folders;
            served?.gone(gone);
          },
          served: served && {
            wanted: async () => Promise.resolve(served.wanted()),
            made: (some) => served.made(pages, some),
          },
        },
      )
      .catch(async (error: unknown) => {
        stopped = error instanceof OutputFault ? error.message : String(error);
        process.stderr.write(`${stopped}\n`);
        await endThread();
        return { sheetCount: undefined, diagnostics: [] };
      });
    if (sheetCount !== undefined) {
      shown.push(dir);
      gone = [];
    }
    const old = sheetCount === undefined ? dir : shown.length > 2 ? shown.shift() : undefined;
    if (old !== undefined) rmSync(old, { recursive: true, force: true });
    if (sheetCount === undefined)
      return {
        fault:
          stopped ??
          printedOrder(diagnostics.filter(({ severity }) => severity === "error"))
            .map(formatDiagnostic)
            .join("\n"),
      };
    process.stdout.write(`${counted(sheetCount, "sheet")}, ${seconds(started)}\n`);
    return pages;
  };

  const changed = async (): Promise<void> => {
    const stir = folderStir(contentDir);
    for (let looks = 0; !isEnded; looks += 1) {
      const started = performance.now();
      if (content() !== known.content) break;
      if (looks % PROGRAM_EVERY === 0 && programState() !== known.program) break;
      const rest = Math.max(LOOK_EVERY_MS, (performance.now() - started) * LOOK_SHARE);
      await Promise.race([stir.next(), pause(rest)]);
    }
    stir.end();
    const until = performance.now() + LONGEST_WAIT_MS;
    for (let before = ""; before !== content() && performance.now() < until;) {
      before = content();
      await pause(SETTLES_IN_MS);
    }
  };

  const endThread = async (): Promise<void> => {
    const ended = thread;
    thread = undefined;
    await ended?.end();
  };

  return {
    next,
    changed,
    end: async () => {
      isEnded = true;
      await endThread();
    },
  };
}

function pagesIn(dir: string): BuiltPages {
  return { site: join(dir, "site"), workshop: join(dir, "workshop") };
}

function programState(): string {
  return ["lib", "assets", "templates"]
    .map((name) => folderState(join(PACKAGE_ROOT, name), PROGRAM_DEPTH))
    .join("\n");
}
