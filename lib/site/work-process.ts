import { fork, type ChildProcess } from "node:child_process";
import { OutputFault } from "./output-fault.ts";
import type { Asked, WorkedOut, WorkName } from "./thread-work.ts";
import { WORK_BEGINS, type SentWork, type ThreadAnswer } from "./work-threads.ts";

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
  let child: ChildProcess | undefined;
  let last = 0;
  return {
    ask: async <N extends WorkName>(name: N, asked: Asked<N>) => {
      const own = (child ??= begun());
      const work: SentWork<N> = { id: (last += 1), name, asked };
      return new Promise<WorkedOut<N>>((done, failed) => {
        const broken = (): void => failed(new OutputFault("The work was broken off"));
        const hear = ({ id, ...answer }: ThreadAnswer): void => {
          if (id !== work.id) return;
          own.off("message", hear).off("exit", broken).off("error", failed);
          if ("error" in answer) failed(answer.error);
          else done(answer.result as WorkedOut<N>);
        };
        own.on("message", hear).on("exit", broken).on("error", failed);
        own.send(work, (error) => error && broken());
      });
    },
    isBegun: () => child !== undefined,
    end: () => {
      // A channel is closed only when this thread comes to rest, which it may not for the whole of a build.
      child?.kill();
      child = undefined;
    },
  };
}

/** In a group of its own, so that a terminal's signals reach only the program that it works for; it ends with that. */
function begunProcess(): ChildProcess {
  return fork(WORK_BEGINS, { serialization: "advanced", detached: true });
}
