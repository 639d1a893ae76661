import { COMMANDS, type CommandName } from "./command-table.ts";
import { keysOf } from "../quantities/members.ts";

/** The options, in the order of `--help`: what stands behind the name, the commands that have it, what it does. */
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
  ),
  date: text(
    "DATE",
    ["start", "build", "publish", "check", "cards", "labels", "pictures", "next", "new"],
    "date to print, YYYY-MM-DD (default: SOURCE_DATE_EPOCH, else the newest date in the records)",
  ),
  port: text("N", ["start"], "of start (default: any free one)"),
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
  copies: text("N", ["labels"], "of labels: so many of each (default: 1)"),
  filled: flag(
    ["labels"],
    "of labels with --lot: one for each tube that the lot filled, size by size",
  ),
  scale: text("SCALE", ["read"], "of read: factor or percent, where the file leaves it open"),
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
  ),
  claims: text(
    "warn",
    ["start", "build", "publish", "check"],
    "claims of answers that no longer hold are warnings (default: error)",
  ),
};

interface Option<T> {
  readonly type: T;
  readonly takes: string;
  readonly of: readonly CommandName[];
  readonly help: string;
}

function text(takes: string, of: readonly CommandName[], help: string): Option<"string"> {
  return { type: "string", takes, of, help };
}

function flag(of: readonly CommandName[], help: string): Option<"boolean"> {
  return { type: "boolean", takes: "", of, help };
}
