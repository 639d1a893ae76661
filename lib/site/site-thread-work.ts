import { parentPort } from "node:worker_threads";
import type { ThreadMessage } from "./site-thread.ts";
import type { SiteTask, SiteTelling } from "./site-task.ts";
import { stoppedBy } from "./output-fault.ts";
import { writtenSite } from "./written-site.ts";

/** What runs in the thread: each task to its end, what it has to say sent to the one who asked. */
const port = parentPort;
if (port === null) throw new Error("This module runs in a thread of its own");

const say = (message: ThreadMessage): void => port.postMessage(message);

port.on("message", (task: SiteTask) => {
  const tell: SiteTelling = {
    complaints: (diagnostics) => say({ kind: "complaints", diagnostics }),
    progress: (what) => say({ kind: "progress", what }),
  };
  void writtenSite(task, tell).then(
    (report) => say({ kind: "done", report }),
    (error: unknown) => say({ kind: "failed", sentence: stoppedBy(error, task.earlierDir) }),
  );
});
