import { siteThread, type SiteThread } from "../../lib/site/site-thread.ts";

/** What builds leave in memory goes with their thread: `start` renews its own after as many. */
const BUILDS_A_THREAD = 20;

/** What libvips notes once it is loaded, and what only publishing goes by. */
const OF_NO_BUILD = /^(?:VIPSHOME$|AWS_)/;

let lasting: SiteThread | undefined;
let builds = 0;
/** A thread keeps the environment that it began with. */
let environment = "";

/**
 * One thread for the builds of a test process, one after another, as `start` has it: modules, fonts
 * and templates are loaded once. It outlives the build that asks for it, and ends with the process.
 */
export function lastingThread(): SiteThread {
  const now = JSON.stringify(
    Object.entries(process.env).filter(([name]) => !OF_NO_BUILD.test(name)),
  );
  if (now !== environment || builds % BUILDS_A_THREAD === 0) end();
  environment = now;
  builds += 1;
  const thread = (lasting ??= siteThread());
  return {
    // A thread that broke off does no more work.
    written: (task, tell) =>
      thread.written(task, tell).catch((error: unknown) => {
        end();
        throw error;
      }),
    end: () => Promise.resolve(),
  };
}

function end(): void {
  void lasting?.end();
  lasting = undefined;
}
