import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { BUNDLE } from "../kept/beside-program.ts";
import { endedThread } from "./ended-thread.ts";
import { OutputFault } from "./output-fault.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import type { OutputPages, PagesMade, SiteReport, SiteTask, SiteTelling } from "./site-task.ts";

/** What the thread says of a task. */
export type ThreadMessage =
  | { readonly kind: "complaints"; readonly diagnostics: readonly Diagnostic[] }
  | { readonly kind: "progress"; readonly what: string }
  | { readonly kind: "which are wanted" }
  | { readonly kind: "recorded"; readonly folders: readonly string[] }
  | { readonly kind: "made"; readonly pages: PagesMade }
  | { readonly kind: "done"; readonly report: SiteReport }
  | { readonly kind: "failed"; readonly sentence: string };

/** What the thread is asked, or told that it asked for. */
export type ThreadAsked =
  | { readonly kind: "task"; readonly task: SiteTask; readonly isServed: boolean }
  | { readonly kind: "wanted"; readonly pages: OutputPages }
  | { readonly kind: "end" };

/** A thread that writes sites, one after another: whoever asked goes on hearing signals and requests meanwhile. */
export interface SiteThread {
  /** @throws OutputFault with what stopped it, in one line. */
  readonly written: (task: SiteTask, tell: SiteTelling) => Promise<SiteReport>;
  /** Ends it as soon as it hears of it, and soon in any case: in the middle of a task too. */
  readonly end: () => Promise<void>;
}

/** What a thread begins with that runs the program as it is by then, whatever has been edited since this one began. */
export const NEWEST_PROGRAM = join(PACKAGE_ROOT, "lib", "commands", "site-thread.js");
/** The same of this very program: out of its bundle, where it has one. */
const THIS_PROGRAM = BUNDLE === undefined ? NEWEST_PROGRAM : join(BUNDLE, "site-thread.mjs");

/** So long whoever stops a build waits at most until the thread hears of it. Our own choice. */
const PATIENCE_MS = 1000;

export function siteThread(begins: string = THIS_PROGRAM): SiteThread {
  const worker = new Worker(begins, {
    // Views, pages and papers live for a moment each: in more room of their own few are swept before they end.
    resourceLimits: { maxYoungGenerationSizeMb: 64 },
  });
  let hear: ((message: ThreadMessage | Error) => void) | undefined;
  worker.on("message", (message: ThreadMessage) => hear?.(message));
  worker.on("error", (error) => hear?.(error));
  worker.on("exit", () => hear?.(new OutputFault("The work was broken off")));
  return {
    written: async (task, tell) =>
      new Promise((done, failed) => {
        hear = (message) => {
          if (message instanceof Error) failed(message);
          else if (message.kind === "failed") failed(new OutputFault(message.sentence));
          else if (message.kind === "done") done(message.report);
          else if (message.kind === "progress") tell.progress(message.what);
          else if (message.kind === "complaints") tell.complaints(message.diagnostics);
          else if (message.kind === "recorded") tell.recorded?.(message.folders);
          else if (message.kind === "made") tell.served?.made(message.pages);
          else
            void tell.served
              ?.wanted()
              .then((pages) => worker.postMessage({ kind: "wanted", pages } satisfies ThreadAsked));
        };
        const isServed = tell.served !== undefined;
        worker.postMessage({ kind: "task", task, isServed } satisfies ThreadAsked);
      }),
    end: async () => {
      hear = undefined;
      await endedThread(worker, { kind: "end" } satisfies ThreadAsked, PATIENCE_MS);
    },
  };
}
