import { availableParallelism } from "node:os";
import { join } from "node:path";
import { setImmediate as turn } from "node:timers/promises";
import { Worker } from "node:worker_threads";
import { BUNDLE } from "../kept/beside-program.ts";
import { endedThread } from "./ended-thread.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import { brokenOff, waitedFor, type Waiting } from "./waited-for.ts";
import { workedOut, type Asked, type WorkedOut, type WorkName } from "./thread-work.ts";

/** A piece of work that a thread may do. */
export interface AskedWork<R> {
  /** What comes out, once it is done by somebody. @throws what it threw; OutputFault where its thread broke off */
  readonly result: Promise<R>;
  /** The same, done here at once where its thread is at something else: for whoever has nothing else to do. */
  readonly here: () => Promise<R>;
}

/** Threads that work beside the one that asks. */
export interface WorkThreads {
  readonly ask: <N extends WorkName>(name: N, asked: Asked<N>) => AskedWork<WorkedOut<N>>;
  /** Whether there are any; else each piece of work is done where it is waited for. */
  readonly areThere: boolean;
  /** Once nothing is left of what they were asked for, nor of what is asked for as soon as that is there. */
  readonly atRest: () => Promise<void>;
  /** Ends them as soon as each has done what it is at; what none has begun is broken off. */
  readonly end: () => Promise<void>;
}

/** A piece of work as it is sent: whoever takes its claim does it. */
export interface SentWork<N extends WorkName = WorkName> {
  readonly id: number;
  readonly name: N;
  readonly asked: Asked<N>;
  /** None of what only one can do. */
  readonly claim?: Int32Array;
}

/** What a thread says of a piece of work; neither result nor error of one that somebody else did. */
export interface ThreadAnswer {
  readonly id: number;
  readonly result?: unknown;
  readonly error?: Error;
}

/** Sent in place of a piece of work: the thread that hears it ends. */
export const END = "end";

const FREE = 0;
const TAKEN = 1;

/** Takes a piece of work: true for the first who asks, in whatever thread. */
export function isMine(claim: Int32Array | undefined): boolean {
  return claim === undefined || Atomics.compareExchange(claim, 0, FREE, TAKEN) === FREE;
}

/** More take more memory than they save time, since the thread that asks has more to do than all papers take. Our own choice. */
const MOST_THREADS = 4;
/** Beside the thread that asks, which works too. */
const USUAL_COUNT = Math.min(availableParallelism() - 1, MOST_THREADS);
/** A thread takes as long to begin as so many sheets take. */
export const WORTH_A_THREAD = 8;

/** Longer than a thread takes for one piece of work, the largest of which are ranges on paper. Our own choice. */
const PATIENCE_MS = 20_000;

/**
 * @param count threads at most; with none each piece of work is done where it is waited for.
 * @param begun begins a thread.
 * @param patienceMs how long one that was told to end may be at its piece of work before it is ended in the middle of it.
 */
export function workThreads(
  count: number = USUAL_COUNT,
  begun: () => Worker = begunThread,
  patienceMs: number = PATIENCE_MS,
): WorkThreads {
  const threads: WorkThread[] = [];
  const unanswered = new Set<Promise<void>>();
  let last = 0;
  const idlest = (): WorkThread | undefined => {
    const found = threads.toSorted((one, other) => one.waiting() - other.waiting())[0];
    if (threads.length >= count || (found !== undefined && found.waiting() < WORTH_A_THREAD))
      return found;
    const further = workThread(begun(), patienceMs);
    threads.push(further);
    return further;
  };
  return {
    areThere: count > 0,
    ask: <N extends WorkName>(name: N, asked: Asked<N>) => {
      const claim = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
      const work = { id: (last += 1), name, asked, claim };
      const own = askedWork(work, idlest());
      // What it comes out as is not held by it.
      const answered = own.result.then(nothing, nothing).then(() => {
        unanswered.delete(answered);
      });
      unanswered.add(answered);
      return own;
    },
    atRest: async () => {
      while (unanswered.size > 0) {
        await Promise.all(unanswered);
        await turn();
      }
    },
    end: async () => allEnded(threads),
  };
}

function nothing(): void {
  return undefined;
}

/** Threads that were begun by this one and have not ended. */
const atWork = new Set<WorkThread>();

/** Ends them all as soon as each has done what it is at: with this thread they would end in the middle of it. */
export async function endAllThreads(): Promise<void> {
  await allEnded(atWork);
}

async function allEnded(threads: Iterable<WorkThread>): Promise<void> {
  await Promise.all([...threads].map(async ({ end }) => end()));
}

/** Does nothing beside: each piece of work when it is waited for. */
export const WORKED_HERE: WorkThreads = workThreads(0);

function askedWork<N extends WorkName>(
  work: SentWork<N>,
  thread: WorkThread | undefined,
): AskedWork<WorkedOut<N>> {
  let doneHere = (): Promise<void> => Promise.resolve();
  const result = new Promise<WorkedOut<N>>((done, failed) => {
    thread?.send(work, { done: (made) => done(made as WorkedOut<N>), failed });
    doneHere = async () => workedOut(work.name, work.asked).then(done, failed);
  });
  // Nobody may be waiting any more when it fails.
  result.catch(() => undefined);
  return {
    result,
    here: async () => {
      // What was answered meanwhile is heard first.
      if (thread !== undefined) await turn();
      if (thread?.isAtOnce(work.id) !== true && isMine(work.claim)) await doneHere();
      return result;
    },
  };
}

interface WorkThread {
  readonly send: (work: SentWork, waiting: Waiting) => void;
  /** Pieces of work that it was sent and has not answered. */
  readonly waiting: () => number;
  /** Whether this piece of work is the next that it does. */
  readonly isAtOnce: (id: number) => boolean;
  readonly end: () => Promise<void>;
}

/** What a thread or process of this very program begins with: out of its bundle, or from its sources. */
export const WORK_BEGINS =
  BUNDLE === undefined
    ? join(PACKAGE_ROOT, "lib", "commands", "work-thread.js")
    : join(BUNDLE, "work-thread.mjs");

function begunThread(): Worker {
  return new Worker(WORK_BEGINS);
}

function workThread(worker: Worker, patienceMs: number): WorkThread {
  const sent = waitedFor();
  const claims = new Map<number, Int32Array | undefined>();
  worker.on("message", sent.hear);
  worker.on("error", sent.broken);
  worker.on("exit", () => {
    atWork.delete(thread);
    sent.broken();
  });
  const thread: WorkThread = {
    send: (work, waiting) => {
      if (!sent.add(work.id, waiting)) return;
      claims.set(work.id, work.claim);
      worker.postMessage(work);
    },
    waiting: sent.count,
    isAtOnce: (id) => sent.next() === id,
    end: async () => {
      // What is taken here no thread begins any more.
      for (const [id, claim] of claims) if (isMine(claim)) sent.hear({ id, error: brokenOff() });
      await endedThread(worker, END, patienceMs);
    },
  };
  atWork.add(thread);
  return thread;
}
