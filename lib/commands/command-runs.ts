import type { SiteThread } from "../site/site-thread.ts";
import { besideRecords, commandOptions, type CommandOptions } from "./command-options.ts";
import type { CommandName } from "./command-table.ts";
import type { GivenOptions } from "./option-table.ts";
import { complaint } from "./told.ts";

/** What a command is run with. */
interface Asked {
  readonly options: CommandOptions;
  readonly given: GivenOptions;
  /** The words behind the command's name. */
  readonly words: readonly string[];
}

/** Each command, loaded with what it needs, and no more. @returns its exit code */
const RUNS: Readonly<Record<CommandName, (asked: Asked) => Promise<number>>> = {
  start: async ({ options }) => (await import("./start.ts")).start(options),
  build: async ({ options }) => (await import("./build.ts")).build(options),
  check: async ({ options, given: { uses, json } }) =>
    uses === undefined
      ? (await import("./check.ts")).check(options, json === true)
      : (await import("./list-uses.ts")).listUses(options, uses),
  cards: async ({ options, given }) => {
    const { output, proof, only, family, size, paper, since, incomplete } = given;
    const outputFile = output ?? (proof === undefined ? "cards.pdf" : "proof.pdf");
    return (await import("./cards.ts")).cards(
      { ...options, outputFile },
      {
        only,
        family,
        size,
        paper,
        since,
        incomplete: incomplete === true,
        proof: proof !== undefined,
      },
    );
  },
  labels: async ({ options, given }) => {
    const { output = "labels.pdf", only, family, size, lot, copies, filled } = given;
    if (filled === true && lot === undefined)
      return complaint("--filled needs --lot: it takes as many labels as that lot filled tubes");
    if (filled === true && copies !== undefined)
      return complaint("--filled says how many of each, and so does --copies: give one of them");
    return (await import("./labels.ts")).labels(
      { ...options, outputFile: output },
      { only, family, size, lot, copies: filled === true ? "filled" : (copies ?? 1) },
    );
  },
  pictures: async ({ options, given: { to = "pictures", only, family } }) =>
    (await import("./pictures.ts")).pictures({ ...options, to }, { only, family }),
  next: async ({ options, given: { since } }) => (await import("./next.ts")).next(options, since),
  publish: async ({ options, given: { to, endpoint, "dry-run": dryRun, confirm = [] } }) =>
    (await import("./publish.ts")).publish(options, {
      to,
      endpoint,
      dryRun: dryRun === true,
      confirmed: confirm,
    }),
  pack: async ({ options, given: { output = "content.tgz" } }) =>
    (await import("./pack.ts")).pack(options, output),
  unpack: async ({ options, words: [file] }) => (await import("./pack.ts")).unpack(options, file),
  migrate: async ({ options, given: { to, write, "dry-run": dryRun } }) =>
    write === true && dryRun === true
      ? complaint("--write and --dry-run can't both be meant: without --write nothing is written")
      : (await import("./migrate.ts")).migrate(options, to, write === true),
  read: async ({ options, words: [file], given: { scale } }) =>
    (await import("./read.ts")).read(options, file, scale),
  new: async ({ options, words }) => (await import("./new-record.ts")).newRecord(options, words),
};

export function run(
  command: CommandName,
  given: GivenOptions,
  words: readonly string[],
  thread?: () => SiteThread,
): Promise<number> {
  const home = command === "publish" ? besideRecords(given) : ".";
  return RUNS[command]({ options: commandOptions(given, home, thread), given, words });
}
