import { dirname, join } from "node:path";
import { parseArgs } from "node:util";
import { andNearest } from "../diagnostics/nearest-word.ts";
import { writtenBase } from "../records/site-base.ts";
import { OutputFault } from "../site/output-fault.ts";
import type { SiteThread } from "../site/site-thread.ts";
import { COMMANDS, isCommand } from "./command-table.ts";
import { keptByNpm, misplacedOption, optionFault, PARSED } from "./given-options.ts";
import { helpText } from "./help-text.ts";
import { complaint } from "./told.ts";

/** Labels of each that one document holds. */
const MOST_COPIES = 500;

export interface CommandOptions {
  readonly contentDir: string;
  readonly outputDir: string;
  /** Where the pages of the workshop's own go. */
  readonly workshopDir: string;
  readonly date: string | undefined;
  /** The folder of its host that the site stands in; undefined for that of the workshop's address. */
  readonly base: string | undefined;
  readonly port: number;
  readonly strict: boolean;
  /** What a claim that no longer holds is. */
  readonly claims: "error" | "warning";
  /** A manifest.json kept when cards were printed last. */
  readonly since: string | undefined;
  /** What a build's files are written by; a thread that begins and ends with the build where none is given. */
  readonly thread?: (() => SiteThread) | undefined;
}

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
    values,
    tokens,
    positionals: [command, ...words],
  } = parseArgs({ args: [...args], options: PARSED, allowPositionals: true, tokens: true });
  if (values.help === true || command === undefined) {
    process.stdout.write(helpText());
    return values.help === true ? 0 : 1;
  }
  const given = tokens.flatMap((token) => (token.kind === "option" ? [token.name] : []));
  const misplaced = isCommand(command)
    ? (misplacedOption(command, given) ?? keptByNpm(command, words, given, process.env))
    : undefined;
  if (misplaced !== undefined) return complaint(misplaced);
  if (values.date !== undefined && !isDate(values.date))
    return complaint(`--date can't be ${values.date}: it takes a day, YYYY-MM-DD`);
  const base = values.base === undefined ? undefined : writtenBase(values.base);
  if (values.base !== undefined && base === undefined)
    return complaint(`--base can't be ${values.base}: it takes a folder such as /colours/`);
  const port = Number(values.port ?? 0);
  if (!(Number.isInteger(port) && port >= 0 && port < 65536))
    return complaint(`--port can't be ${values.port ?? ""}: it takes 0 to 65535`);
  const copies = Number(values.copies ?? 1);
  if (!(Number.isInteger(copies) && copies >= 1 && copies <= MOST_COPIES))
    return complaint(`--copies can't be ${values.copies ?? ""}: it takes 1 to ${MOST_COPIES}`);
  if (values.filled === true && (values.lot === undefined || values.copies !== undefined))
    return complaint(
      values.lot === undefined
        ? "--filled needs --lot: it takes as many labels as that lot filled tubes"
        : "--filled says how many of each, and so does --copies: give one of them",
    );
  if (values.proof !== undefined && values.proof !== "cmyk")
    return complaint(`--proof can't be ${values.proof}: it takes cmyk`);
  const { claims = "error" } = values;
  if (claims !== "error" && claims !== "warn")
    return complaint(`--claims can't be ${claims}: it takes error or warn`);
  const contentDir = values.content ?? "content";
  // What is published of records elsewhere is no build of this folder's: it lies beside those.
  const home = command === "publish" ? dirname(contentDir) : ".";
  const options: CommandOptions = {
    contentDir,
    outputDir: values.output ?? join(home, "_site"),
    workshopDir: values.workshop ?? join(home, "_workshop"),
    date: values.date,
    base,
    port,
    strict: values.strict === true,
    claims: claims === "warn" ? "warning" : "error",
    since: values.since,
    thread,
  };
  // Each command loads what it needs, and no more.
  switch (command) {
    case "build":
      return (await import("./build.ts")).build(options);
    case "check":
      return values.uses === undefined
        ? (await import("./check.ts")).check(options, values.json === true)
        : (await import("./list-uses.ts")).listUses(options, values.uses);
    case "start":
      return (await import("./start.ts")).start(options);
    case "cards":
      return (await import("./cards.ts")).cards(
        {
          ...options,
          outputFile: values.output ?? (values.proof === undefined ? "cards.pdf" : "proof.pdf"),
        },
        {
          only: values.only,
          family: values.family,
          size: values.size,
          paper: values.paper,
          since: values.since,
          incomplete: values.incomplete === true,
          proof: values.proof !== undefined,
        },
      );
    case "labels":
      return (await import("./labels.ts")).labels(
        { ...options, outputFile: values.output ?? "labels.pdf" },
        {
          only: values.only,
          family: values.family,
          size: values.size,
          lot: values.lot,
          copies: values.filled === true ? "filled" : copies,
        },
      );
    case "pictures":
      return (await import("./pictures.ts")).pictures(
        { ...options, to: values.to ?? "pictures" },
        { only: values.only, family: values.family },
      );
    case "next":
      return (await import("./next.ts")).next(options, values.since);
    case "publish": {
      const confirmed = values.confirm === undefined ? [] : values.confirm.split(",");
      const unknown = confirmed.find((one) => !isConfirmation(one));
      return unknown === undefined
        ? (await import("./publish.ts")).publish(options, {
            to: values.to,
            endpoint: values.endpoint,
            dryRun: values["dry-run"] === true,
            confirmed: confirmed.filter(isConfirmation),
          })
        : complaint(`--confirm can't be ${unknown}: it takes removals, cautions or both`);
    }
    case "pack":
      return (await import("./pack.ts")).pack(options, values.output ?? "content.tgz");
    case "unpack":
      return (await import("./pack.ts")).unpack(options, words[0]);
    case "migrate":
      return values.write === true && values["dry-run"] === true
        ? complaint("--write and --dry-run can't both be meant: without --write nothing is written")
        : (await import("./migrate.ts")).migrate(options, values.to, values.write === true);
    case "read":
      return (await import("./read.ts")).read(options, words[0], values.scale);
    case "new":
      return (await import("./new-record.ts")).newRecord(options, words);
    default: {
      const names = Object.keys(COMMANDS);
      return complaint(
        `There is no command ${command}: it is ${names.slice(0, -1).join(", ")} or ${names.at(-1) ?? ""}${andNearest(command, names)}`,
      );
    }
  }
}

/** What a thread of the program does: it writes sites, one after another. */
export async function workInThread(): Promise<void> {
  await import("../site/site-thread-work.ts");
}

function isConfirmation(text: string): text is "removals" | "cautions" {
  return text === "removals" || text === "cautions";
}

function isDate(text: string): boolean {
  return (
    /^\d{4}-\d{2}-\d{2}$/.test(text) &&
    !Number.isNaN(Date.parse(text)) &&
    new Date(text).toISOString().startsWith(text)
  );
}
