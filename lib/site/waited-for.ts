import { OutputFault } from "./output-fault.ts";
import type { ThreadAnswer } from "./work-threads.ts";

/** Who waits for a piece of work. */
export interface Waiting {
  readonly done: (result: unknown) => void;
  readonly failed: (error: unknown) => void;
}

/** Pieces of work that a thread or process was sent and has not answered. */
export interface WaitedFor {
  /** Whoever waits is told at once where nobody is there any more to answer. @returns whether somebody is. */
  readonly add: (id: number, waiting: Waiting) => boolean;
  readonly hear: (answer: ThreadAnswer) => void;
  /** It has ended, by this fault or by itself: it will answer nothing more. */
  readonly broken: (error?: unknown) => void;
  readonly count: () => number;
  /** Of these the one that was sent first. */
  readonly next: () => number | undefined;
}

export function waitedFor(): WaitedFor {
  const sent = new Map<number, Waiting>();
  let fault: { readonly error: unknown } | undefined;
  return {
    add: (id, waiting) => {
      if (fault === undefined) sent.set(id, waiting);
      else waiting.failed(fault.error);
      return fault === undefined;
    },
    hear: ({ id, ...answer }) => {
      const waiting = sent.get(id);
      sent.delete(id);
      if ("error" in answer) waiting?.failed(answer.error);
      else if ("result" in answer) waiting?.done(answer.result);
    },
    broken: (error = brokenOff()) => {
      fault ??= { error };
      for (const { failed } of sent.values()) failed(fault.error);
      sent.clear();
    },
    count: () => sent.size,
    next: () => sent.keys().next().value,
  };
}

/** What is said of a piece of work that nobody does any more. */
export function brokenOff(): OutputFault {
  return new OutputFault("The work was broken off");
}
