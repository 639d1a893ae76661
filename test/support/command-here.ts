import { vi } from "vitest";
import { runCommand } from "../../lib/commands/command-line.ts";
import { lastingThread } from "./lasting-thread.ts";
import type { CommandRun } from "./mullstone.ts";

/**
 * Run one command line to its end in this process: it says and writes what `mullstone` does,
 * without the start of a program, and builds are written by one thread. For what a command makes of records; that it runs as a program
 * is held by one test of each with `mullstone`. One after another: a process is in one folder.
 */
export async function commandHere(
  args: readonly string[],
  { cwd, env = {} }: { readonly cwd: string; readonly env?: Readonly<Record<string, string>> },
): Promise<CommandRun> {
  const from = process.cwd();
  const [output, complaints] = ([process.stdout, process.stderr] as const).map(heard);
  process.chdir(cwd);
  for (const [name, value] of Object.entries(env)) vi.stubEnv(name, value);
  try {
    const code = await runCommand(args, lastingThread);
    return { code, output: output?.text() ?? "", complaints: complaints?.text() ?? "" };
  } finally {
    process.chdir(from);
    vi.unstubAllEnvs();
    output?.end();
    complaints?.end();
  }
}

/** What is written to a stream, until the hearing ends. */
function heard(stream: NodeJS.WriteStream): { text: () => string; end: () => void } {
  let text = "";
  const spy = vi.spyOn(stream, "write").mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  return {
    text: () => text,
    end: () => {
      spy.mockRestore();
    },
  };
}
