import { parseArgs } from "node:util";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { writtenBase } from "../records/site-base.ts";
import type { SiteThread } from "../site/site-thread.ts";
import { keptByNpm, OPTIONS, optionFault } from "./given-options.ts";
import { misplacedOption } from "./misplaced-option.ts";

const HELP = `mullstone: colour sheets from a workshop's records

  mullstone start               build, serve on this machine, rebuild when a record is edited
  mullstone build               build the site once
  mullstone check               check the records; write no page
  mullstone cards               print shelf cards into one PDF
  mullstone labels              print labels for tubes and jars into one PDF
  mullstone pictures            write a zip a colour of what a shop's listing takes: pictures, photographs, a text
  mullstone next                what to measure, ask or print next
  mullstone publish --to TARGET say what would differ from what is published, and bring the site there
  mullstone pack                put the whole content folder into one file
  mullstone unpack FILE         bring it back into a new folder, every file as it was
  mullstone migrate             say how records of another version are written today; with --write rewrite them
  mullstone read FILE           say what an instrument's file holds, and write it as a reading
  mullstone new KIND "Name"     write a commented starter record of a workshop, pigment, vehicle, colour, answer, lot or trial

  --content DIR    the workshop's records (default: content)
  --output DIR     where the site goes (default: _site); of cards and labels the file (default: cards.pdf, labels.pdf)
  --workshop DIR   of build: where the workshop's own pages go, which are not for publishing (default: _workshop)
  --base FOLDER    of build, start, cards and labels: the folder of its host that the site stands in, such as /colours/ (default: that of siteAddress)
  --date DATE      date to print, YYYY-MM-DD (default: SOURCE_DATE_EPOCH, else the newest date in the records)
  --port N         of start (default: any free one)
  --strict         warnings stop the build
  --json           of check: what is wrong as JSON, for editors
  --only SLUGS     of cards, labels and pictures: these colours, commas between
  --family NAME    of cards, labels and pictures: of one family, such as blacks
  --size NAME      of cards and labels: a size of the workshop (default: its first card, all labels)
  --lot NUMBER     of labels: the lot that is filled (default: of each colour the newest that agrees with its standard)
  --copies N       of labels: so many of each (default: 1)
  --scale SCALE    of read: factor or percent, where the file leaves it open
  --paper NAME     of cards: A4 or Letter
  --since FILE     what was published, or printed, last, as its manifest.json: of build and start for the feed of what changed, of check and build
                   for addresses that would be lost, of cards and next for cards that say something else
  --incomplete     of cards: those without a colour or a price as well
  --proof cmyk     of cards: a preview of cards and sheets in process inks, for proofing, in place of cards (default file: proof.pdf)
  --uses NAME      of check: list what rests on a pigment, vehicle, reading, source or colour
  --to TARGET      of pictures: the folder (default: pictures); of publish: a folder, rsync:USER@HOST:/FOLDER/ or s3:BUCKET/FOLDER
                   of migrate the version that records are to be of (default: this program's)
  --endpoint URL   of publish: where a store that speaks as S3 does is reached (default: AWS_ENDPOINT_URL, else that of AWS_REGION)
  --dry-run        of publish: say what would differ and which files would move, and move none; of migrate what it does without --write
  --write          of migrate: rewrite the records
  --confirm WHAT   of publish: removals, cautions or both, commas between: a colour may go, a caution may get weaker
  --claims warn    claims of answers that no longer hold are warnings (default: error)
`;

const COMMANDS: readonly string[] = [
  "start",
  "build",
  "check",
  "cards",
  "labels",
  "pictures",
  "next",
  "publish",
  "pack",
  "unpack",
  "migrate",
  "read",
  "new",
];

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
  const fault = optionFault(args);
  if (fault !== undefined) return complaint(fault);
  const {
    values,
    tokens,
    positionals: [command, ...words],
  } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true, tokens: true });
  if (values.help || command === undefined) {
    process.stdout.write(HELP);
    return values.help ? 0 : 1;
  }
  const given = tokens.flatMap((token) => (token.kind === "option" ? [token.name] : []));
  if (COMMANDS.includes(command)) {
    const misplaced =
      misplacedOption(command, given) ?? keptByNpm(command, words, given, process.env);
    if (misplaced !== undefined) return complaint(misplaced);
  }
  if (values.date !== undefined && !isDate(values.date))
    return complaint(`--date can't be ${values.date}: it takes a day, YYYY-MM-DD`);
  const base = values.base === undefined ? undefined : writtenBase(values.base);
  if (values.base !== undefined && base === undefined)
    return complaint(`--base can't be ${values.base}: it takes a folder such as /colours/`);
  const port = Number(values.port);
  if (!(Number.isInteger(port) && port >= 0 && port < 65536))
    return complaint(`--port can't be ${values.port}: it takes 0 to 65535`);
  const copies = Number(values.copies);
  if (!(Number.isInteger(copies) && copies >= 1 && copies <= MOST_COPIES))
    return complaint(`--copies can't be ${values.copies}: it takes 1 to ${MOST_COPIES}`);
  if (values.proof !== undefined && values.proof !== "cmyk")
    return complaint(`--proof can't be ${values.proof}: it takes cmyk`);
  if (values.claims !== "error" && values.claims !== "warn")
    return complaint(`--claims can't be ${values.claims}: it takes error or warn`);
  const options: CommandOptions = {
    contentDir: values.content,
    outputDir: values.output ?? "_site",
    workshopDir: values.workshop,
    date: values.date,
    base,
    port,
    strict: values.strict,
    claims: values.claims === "warn" ? "warning" : "error",
    since: values.since,
    thread,
  };
  // Each command loads what it needs, and no more.
  switch (command) {
    case "build":
      return (await import("./build.ts")).build(options);
    case "check":
      return values.uses === undefined
        ? (await import("./check.ts")).check(options, values.json)
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
          incomplete: values.incomplete,
          proof: values.proof !== undefined,
        },
      );
    case "labels":
      return (await import("./labels.ts")).labels(
        { ...options, outputFile: values.output ?? "labels.pdf" },
        { only: values.only, family: values.family, size: values.size, lot: values.lot, copies },
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
            dryRun: values["dry-run"],
            confirmed: confirmed.filter(isConfirmation),
          })
        : complaint(`--confirm can't be ${unknown}: it takes removals, cautions or both`);
    }
    case "pack":
      return (await import("./pack.ts")).pack(options, values.output ?? "content.tgz");
    case "unpack":
      return (await import("./pack.ts")).unpack(options, words[0]);
    case "migrate":
      return values.write && values["dry-run"]
        ? complaint("--write and --dry-run can't both be meant: without --write nothing is written")
        : (await import("./migrate.ts")).migrate(options, values.to, values.write);
    case "read":
      return (await import("./read.ts")).read(options, words[0], values.scale);
    case "new":
      return (await import("./new-record.ts")).newRecord(options, words);
    default: {
      const near = nearestWord(command, COMMANDS);
      return complaint(
        `There is no command ${command}: it is start, build, check, cards, labels, pictures, next, publish, pack, unpack, migrate, read or new${near === undefined ? "" : `; nearest: ${near}`}`,
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

function complaint(sentence: string): number {
  process.stderr.write(`${sentence}\n`);
  return 1;
}

function isDate(text: string): boolean {
  return (
    /^\d{4}-\d{2}-\d{2}$/.test(text) &&
    !Number.isNaN(Date.parse(text)) &&
    new Date(text).toISOString().startsWith(text)
  );
}
