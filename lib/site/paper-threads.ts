import { keyOf, readResult, writeResult, type Origin } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { SiteTask } from "./site-task.ts";
import { WORKED_HERE, workThreads, WORTH_A_THREAD, type WorkThreads } from "./work-threads.ts";

/** The threads that draw a build's papers. */
export interface PaperThreads {
  /** Those of a site of so many colours; where none are worth it, everything is done where it is asked for. */
  readonly of: (colours: number) => WorkThreads;
  /** Keep the words that they have shaped for the next build. */
  readonly keepWords: () => Promise<void>;
  /** Ends them at once, whatever they are at. */
  readonly end: () => Promise<void>;
}

const SHAPED: Origin = { modules: ["lib/print/kept-words.ts"], inputs: "shaped words" };

/**
 * Where the newest build had words shaped in a thread, one is begun at once, and gets ready for paper while what
 * makes pages is loaded and records are read: hardly any edit is on no paper. Else it is begun when it is known of
 * how many colours the site is.
 * @param begun begins threads.
 */
export function paperThreads(
  { kind }: Pick<SiteTask, "kind">,
  cache: WorkCache,
  begun: () => WorkThreads = workThreads,
): PaperThreads {
  const key = kind === "paper" ? keyOf(cache, SHAPED) : undefined;
  const words = key === undefined ? undefined : readResult(cache, key);
  const begin = (): WorkThreads => {
    const threads = begun();
    threads.ask("ready", words ?? null);
    return threads;
  };
  let threads = words === undefined ? undefined : begin();
  return {
    of: (colours) =>
      kind === "paper" && colours >= WORTH_A_THREAD ? (threads ??= begin()) : WORKED_HERE,
    // Those of one thread: where there are more, the words that it was not asked for are shaped again.
    keepWords: async () => {
      if (key === undefined || !cache.keeps || threads?.areThere !== true) return;
      const shaped = await threads.ask("words", null).result;
      if (shaped !== null) writeResult(cache, key, shaped);
    },
    end: async () => threads?.end(),
  };
}
