import { keysOf } from "../quantities/members.ts";
import { writtenBase } from "../records/site-base.ts";
import { COMMANDS, type CommandName } from "./command-table.ts";

/** The options, in the order of `--help`: what stands behind the name, the commands that have it, what it does, how its value is read. */
export const OPTIONS = {
  content: text("DIR", keysOf(COMMANDS), "the workshop's records (default: content)"),
  output: text(
    "DIR",
    ["start", "build", "publish", "pack", "cards", "labels"],
    "where the site goes (default: _site); of cards and labels the file (default: cards.pdf, labels.pdf)",
  ),
  workshop: text(
    "DIR",
    ["build", "publish"],
    "of build: where the workshop's own pages go, which are not for publishing (default: _workshop)",
  ),
  base: text(
    "FOLDER",
    ["start", "build", "publish", "cards", "labels", "pictures"],
    "of build, start, cards and labels: the folder of its host that the site stands in, such as /colours/ (default: that of siteAddress)",
    { read: writtenBase, expected: "a folder such as /colours/" },
  ),
  date: text(
    "DATE",
    ["start", "build", "publish", "check", "cards", "labels", "pictures", "next", "new"],
    "date to print, YYYY-MM-DD (default: SOURCE_DATE_EPOCH, else the newest date in the records)",
    { read: (day) => (isDay(day) ? day : undefined), expected: "a day, YYYY-MM-DD" },
  ),
  port: text("N", ["start"], "of start (default: any free one)", whole(0, 65_535)),
  strict: flag(
    ["build", "publish", "check", "cards", "labels", "pictures", "next"],
    "warnings stop the build",
  ),
  json: flag(["check"], "of check: what is wrong as JSON, for editors"),
  only: text(
    "SLUGS",
    ["cards", "labels", "pictures"],
    "of cards, labels and pictures: these colours, commas between",
  ),
  family: text(
    "NAME",
    ["cards", "labels", "pictures"],
    "of cards, labels and pictures: of one family, such as blacks",
  ),
  size: text(
    "NAME",
    ["cards", "labels"],
    "of cards and labels: a size of the workshop (default: its first card, all labels)",
  ),
  lot: text(
    "NUMBER",
    ["labels"],
    "of labels: the lot that is filled (default: of each colour the newest that agrees with its standard)",
  ),
  copies: text("N", ["labels"], "of labels: so many of each (default: 1)", whole(1, 500)),
  filled: flag(
    ["labels"],
    "of labels with --lot: one for each tube that the lot filled, size by size",
  ),
  scale: text(
    "SCALE",
    ["read"],
    "of read: factor or percent, where the file leaves it open",
    oneOf("factor", "percent"),
  ),
  paper: text("NAME", ["cards"], "of cards: A4 or Letter"),
  since: text(
    "FILE",
    ["start", "build", "check", "cards", "next"],
    "what was published, or printed, last, as its manifest.json: of build and start for the feed of what changed, of check and build\nfor addresses that would be lost, of cards and next for cards that say something else",
  ),
  incomplete: flag(["cards"], "of cards: those without a colour or a price as well"),
  proof: text(
    "cmyk",
    ["cards"],
    "of cards: a preview of cards and sheets in process inks, for proofing, in place of cards (default file: proof.pdf)",
    oneOf("cmyk"),
  ),
  uses: text(
    "NAME",
    ["check"],
    "of check: list what rests on a pigment, vehicle, reading, source or colour; of a lot, or a supplier's lot, what to call back",
  ),
  to: text(
    "TARGET",
    ["publish", "pictures", "migrate"],
    "of pictures: the folder (default: pictures); of publish: a folder, rsync:USER@HOST:/FOLDER/ or s3:BUCKET/FOLDER\nof migrate the version that records are to be of (default: this program's)",
  ),
  endpoint: text(
    "URL",
    ["publish"],
    "of publish: where a store that speaks as S3 does is reached (default: AWS_ENDPOINT_URL, else that of AWS_REGION)",
  ),
  "dry-run": flag(
    ["publish", "migrate"],
    "of publish: say what would differ and which files would move, and move none; of migrate what it does without --write",
  ),
  write: flag(["migrate"], "of migrate: rewrite the records"),
  confirm: text(
    "WHAT",
    ["publish"],
    "of publish: removals, cautions or both, commas between: a colour may go, a caution may get weaker",
    { read: confirmations, expected: "removals, cautions or both, commas between" },
  ),
  claims: text(
    "warn",
    ["start", "build", "publish", "check"],
    "claims of answers that no longer hold are warnings (default: error)",
    oneOf("error", "warn"),
  ),
};
export type OptionName = keyof typeof OPTIONS;

/** The options of a command line, as read; undefined for those that were not given. */
export type GivenOptions = {
  readonly [Name in OptionName]: ReturnType<(typeof OPTIONS)[Name]["read"]> | undefined;
};

/** What has to be said with `--confirm` before it is published. */
export const CONFIRMATIONS = ["removals", "cautions"] as const;
export type Confirmation = (typeof CONFIRMATIONS)[number];

interface Option<Type, Value> extends Reading<Value> {
  readonly type: Type;
  readonly takes: string;
  readonly of: readonly CommandName[];
  readonly help: string;
}

/** How the value of an option is read. */
interface Reading<Value> {
  /** @returns undefined for what it can't be */
  readonly read: (written: string) => Value | undefined;
  /** What it can be, in words. */
  readonly expected: string;
}

function text(takes: string, of: readonly CommandName[], help: string): Option<"string", string>;
function text<Value>(
  takes: string,
  of: readonly CommandName[],
  help: string,
  reading: Reading<Value>,
): Option<"string", Value>;
function text(
  takes: string,
  of: readonly CommandName[],
  help: string,
  reading: Reading<unknown> = { read: (written) => written, expected: "a text" },
): Option<"string", unknown> {
  return { type: "string", takes, of, help, ...reading };
}

function flag(of: readonly CommandName[], help: string): Option<"boolean", true> {
  return { type: "boolean", takes: "", of, help, read: () => true, expected: "no value" };
}

function oneOf<const Value extends string>(...all: readonly Value[]): Reading<Value> {
  return { read: (written) => all.find((one) => one === written), expected: all.join(" or ") };
}

function whole(least: number, most: number): Reading<number> {
  return {
    read: (written) =>
      /^\d+$/.test(written) && Number(written) >= least && Number(written) <= most
        ? Number(written)
        : undefined,
    expected: `${least} to ${most}`,
  };
}

function confirmations(written: string): readonly Confirmation[] | undefined {
  const found = written.split(",").map((one) => CONFIRMATIONS.find((known) => known === one));
  return found.every((one) => one !== undefined) ? found : undefined;
}

function isDay(text: string): boolean {
  return (
    /^\d{4}-\d{2}-\d{2}$/.test(text) &&
    !Number.isNaN(Date.parse(text)) &&
    new Date(text).toISOString().startsWith(text)
  );
}
