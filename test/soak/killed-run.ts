import { spawn } from "node:child_process";

/** What was lost, or is left for a person to mend, each said in the moment that it is seen. */
export class Losses {
  count = 0;

  tell(what: string): void {
    this.count += 1;
    process.stdout.write(`${what}\n`);
  }

  held(isSo: boolean, what: string): void {
    if (!isSo) this.tell(what);
  }
}

/** How a process ended: by a signal or with a code, and what it said. */
export interface Ended {
  readonly signal: NodeJS.Signals | null;
  readonly code: number | null;
  readonly said: string;
}

/**
 * Run a process of Node to its end, or until it is killed.
 * @param killAfterMs [ms] from its start, or from its first word to standard output
 */
export async function run(
  args: readonly string[],
  cwd: string,
  { killAfterMs, from = "start" }: { killAfterMs?: number; from?: "start" | "first word" } = {},
): Promise<Ended> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd, stdio: ["ignore", "pipe", "pipe"] });
    let timer: NodeJS.Timeout | undefined;
    const setTimer = (): void => {
      if (killAfterMs !== undefined) timer ??= setTimeout(() => child.kill("SIGKILL"), killAfterMs);
    };
    if (from === "start") setTimer();
    else child.stdout.once("data", setTimer);
    let said = "";
    for (const stream of [child.stdout, child.stderr])
      stream.on("data", (chunk: Buffer) => (said += chunk.toString()));
    child.once("close", (code, signal) => {
      clearTimeout(timer);
      done({ code, signal, said });
    });
  });
}
