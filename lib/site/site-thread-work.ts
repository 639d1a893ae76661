import { parentPort } from "node:worker_threads";
import { keepCode } from "../kept/beside-program.ts";
import type { ThreadAsked, ThreadMessage } from "./site-thread.ts";
import type { OutputPages, ServedPages, SiteTelling } from "./site-task.ts";
import { stoppedBy } from "./output-fault.ts";
import { writtenSite } from "./written-site.ts";

/** What runs in the thread: each task to its end, what it has to say sent to the one who asked. */
const port = parentPort;
if (port === null) throw new Error("This module runs in a thread of its own");

const say = (message: ThreadMessage): void => port.postMessage(message);

/** Who waits to hear what pages are wanted. */
let hear: ((pages: OutputPages) => void) | undefined;

const served: ServedPages = {
  wanted: async () =>
    new Promise((heard) => {
      hear = heard;
      say({ kind: "which are wanted" });
    }),
  made: (pages) => say({ kind: "made", pages }),
};

port.on("message", (asked: ThreadAsked) => {
  if (asked.kind === "wanted") return hear?.(asked.pages);
  const { task, isServed } = asked;
  const tell: SiteTelling = {
    complaints: (diagnostics) => say({ kind: "complaints", diagnostics }),
    progress: (what) => say({ kind: "progress", what }),
    recorded: (folders) => say({ kind: "recorded", folders }),
    ...(isServed && { served }),
  };
  void writtenSite(task, tell).then(
    (report) => {
      // One that stopped at its records has called little of what others call.
      if (report.sheetCount !== undefined) keepCode();
      say({ kind: "done", report });
    },
    (error: unknown) => say({ kind: "failed", sentence: stoppedBy(error, task.earlierDir) }),
  );
});
