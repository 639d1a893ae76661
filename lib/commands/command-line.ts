import { parseArgs } from "node:util";
import { andNearest } from "../diagnostics/nearest-word.ts";
import { OutputFault } from "../site/output-fault.ts";
import type { SiteThread } from "../site/site-thread.ts";
import { run } from "./command-runs.ts";
import { COMMANDS, isCommand } from "./command-table.ts";
import { keptByNpm, misplacedOption, optionFault, PARSED, readOptions } from "./given-options.ts";
import { helpText } from "./help-text.ts";
import { complaint } from "./told.ts";

/** Run one command; its exit code: 0 done, 1 something is wrong and was said. */
export async function runCommand(
  args: readonly string[],
  thread?: () => SiteThread,
): Promise<number> {
  try {
    return await asGiven(args, thread);
  } catch (error) {
    if (!(error instanceof OutputFault)) throw error;
    return complaint(error.message);
  }
}

/** @throws OutputFault for whatever else stops a command. */
async function asGiven(args: readonly string[], thread?: () => SiteThread): Promise<number> {
  const fault = optionFault(args);
  if (fault !== undefined) return complaint(fault);
  const {
    values: { help, ...values },
    tokens,
    positionals: [command, ...words],
  } = parseArgs({ args: [...args], options: PARSED, allowPositionals: true, tokens: true });
  if (help === true || command === undefined) {
    process.stdout.write(helpText());
    return help === true ? 0 : 1;
  }
  if (!isCommand(command)) return complaint(unknownCommand(command));
  const names = tokens.flatMap((token) => (token.kind === "option" ? [token.name] : []));
  const misplaced =
    misplacedOption(command, names) ?? keptByNpm(command, words, names, process.env);
  if (misplaced !== undefined) return complaint(misplaced);
  const given = readOptions(values);
  return "fault" in given ? complaint(given.fault) : run(command, given, words, thread);
}

function unknownCommand(command: string): string {
  const names = Object.keys(COMMANDS);
  return `There is no command ${command}: it is ${names.slice(0, -1).join(", ")} or ${names.at(-1) ?? ""}${andNearest(command, names)}`;
}

/** What a thread of the program does: it writes sites, one after another. */
export async function workInThread(): Promise<void> {
  await import("../site/site-thread-work.ts");
}
