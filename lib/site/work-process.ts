import { fork, type ChildProcess } from "node:child_process";
import type { Asked, WorkedOut, WorkName } from "./thread-work.ts";
import { waitedFor, type WaitedFor } from "./waited-for.ts";
import { WORK_BEGINS, type SentWork } from "./work-threads.ts";

/**
 * A process for work whose library keeps the memory that it once took: when the process ends, all of it is free.
 * It begins with the first piece of work.
 */
export interface WorkProcess {
  /** @throws what it threw; OutputFault where the process broke off */
  readonly ask: <N extends WorkName>(name: N, asked: Asked<N>) => Promise<WorkedOut<N>>;
  readonly isBegun: () => boolean;
  /** It ends at once, whatever it is at. */
  readonly end: () => void;
}

/** @param begun begins a process. */
export function workProcess(begun: () => ChildProcess = begunProcess): WorkProcess {
  let beside: Beside | undefined;
  let last = 0;
  return {
    ask: async <N extends WorkName>(name: N, asked: Asked<N>) => {
      const { child, sent } = (beside ??= besideOf(begun()));
      const work: SentWork<N> = { id: (last += 1), name, asked };
      return new Promise<WorkedOut<N>>((done, failed) => {
        const isSent = sent.add(work.id, { done: (made) => done(made as WorkedOut<N>), failed });
        if (isSent) child.send(work, (error) => error && sent.broken());
      });
    },
    isBegun: () => beside !== undefined,
    end: () => {
      // A channel is closed only when this thread comes to rest, which it may not for the whole of a build.
      beside?.child.kill();
      beside = undefined;
    },
  };
}

interface Beside {
  readonly child: ChildProcess;
  readonly sent: WaitedFor;
}

/** One that hears for all who wait. */
function besideOf(child: ChildProcess): Beside {
  const sent = waitedFor();
  child.on("message", sent.hear);
  child.on("error", sent.broken);
  child.on("exit", () => sent.broken());
  return { child, sent };
}

/**
 * The GNU C library gives threads stores of their own, up to eight a core, keeps what was once in them, and hears of less
 * only when a process begins. Threads of libvips take turns: two stores serve them, at no cost that could be measured.
 */
const KEEPS_LESS = {
  MALLOC_ARENA_MAX: "2",
  MALLOC_MMAP_THRESHOLD_: String(4 * 2 ** 20),
  MALLOC_TRIM_THRESHOLD_: String(2 ** 20),
};

/** In a group of its own, so that a terminal's signals reach only the program that it works for; it ends with that. */
function begunProcess(): ChildProcess {
  return fork(WORK_BEGINS, {
    serialization: "advanced",
    detached: true,
    env: { ...KEEPS_LESS, ...process.env },
  });
}
