import type { Worker } from "node:worker_threads";

/**
 * End a thread between two of its tasks, where it hears in time that it is to end, and else in the middle of one. That
 * is the last resort, since Node 20 aborts the whole program where it falls between making a deflater and opening it.
 * @param told what the thread is told, upon which it exits by itself.
 */
export async function endedThread(
  worker: Worker,
  told: unknown,
  patienceMs: number,
): Promise<void> {
  if (worker.threadId === GONE) return;
  await new Promise<void>((ended) => {
    const lastResort = setTimeout(() => void worker.terminate(), patienceMs);
    worker.once("exit", () => {
      clearTimeout(lastResort);
      ended();
    });
    worker.postMessage(told);
  });
}

/** The number that a thread has once it has ended. */
const GONE = -1;
