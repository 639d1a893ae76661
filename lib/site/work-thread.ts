import { parentPort, type Transferable } from "node:worker_threads";
import { keepCode } from "../kept/beside-program.ts";
import { workedOut } from "./thread-work.ts";
import { END, isMine, type SentWork, type ThreadAnswer } from "./work-threads.ts";

/** What runs in a thread or process that works for another: one piece of work after the other, those that nobody else has begun. */
const say = (answer: ThreadAnswer, transferred: readonly Transferable[] = []): void => {
  if (parentPort !== null) parentPort.postMessage(answer, transferred);
  else process.send?.(answer);
};

let before: Promise<void> = Promise.resolve();

// Begun only when the one before is done: what waits here may be done by whoever waits for it.
const hear = (sent: SentWork | typeof END): void => {
  before = before.then(async () => (sent === END ? process.exit() : done(sent)));
};
if (parentPort !== null) parentPort.on("message", hear);
else process.on("message", hear).on("disconnect", () => process.exit());

async function done({ id, name, asked, claim }: SentWork): Promise<void> {
  if (!isMine(claim)) return say({ id });
  try {
    const result = await workedOut(name, asked);
    // The range comes after its sheets: by then all that paper asks for was called, and nothing is waited for after it.
    if (name === "range") keepCode();
    say({ id, result }, wholeBuffers(result));
  } catch (error) {
    say({ id, error: error instanceof Error ? error : new Error(String(error)) });
  }
}

/** Buffers that are handed over in place of being copied: those that hold these bytes alone. */
function wholeBuffers(result: unknown): Transferable[] {
  if (result instanceof Uint8Array)
    return result.buffer instanceof ArrayBuffer && result.byteLength === result.buffer.byteLength
      ? [result.buffer]
      : [];
  return typeof result === "object" && result !== null
    ? Object.values(result).flatMap(wholeBuffers)
    : [];
}
