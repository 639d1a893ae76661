import { OutputFault } from "../site/output-fault.ts";
import { folderTarget } from "./folder-target.ts";
import { rsyncTarget } from "./rsync-target.ts";
import { bucketTarget } from "./bucket-target.ts";

/** What moves in one publish: paths below the output folder, `/` between. */
export interface Shipment {
  /** Where the files lie. */
  readonly outputDir: string;
  /** New or changed; manifest.json is always sent, and last. */
  readonly sent: readonly string[];
  /** Written by the publish before and by none now. What no publish wrote is never touched. */
  readonly removed: readonly string[];
}

/** Where a site is published to. */
export interface PublishTarget {
  /** What a file of the target holds; undefined where there is none. @throws OutputFault when nobody can tell */
  readonly read: (path: string) => Promise<Uint8Array | undefined>;
  /** @throws OutputFault when it could not be moved; what was said of the earlier manifest then still holds */
  readonly ship: (shipment: Shipment) => Promise<void>;
}

/** What stands before a colon is another machine or a way there; one letter is a drive, and a folder with a colon in its name is written `./so:named`. */
const ELSEWHERE = /^[^/\\]{2,}:/;

function refusal(to: string): string {
  return `--to can't be ${to}: it takes a folder, rsync:USER@HOST:/FOLDER/ or s3:BUCKET/FOLDER`;
}

function hintFor(to: string): string {
  return /^[\w.-]+@[\w.-]+:/.test(to) ? `; rsync:${to}` : "";
}

/**
 * The target that `--to` names: `rsync:` and what rsync takes, `s3:BUCKET/FOLDER`, else a folder of this machine.
 * @param endpoint of a store that speaks as S3 does, where it is not the one of the region
 * @throws OutputFault for one that can't be meant, or has no keys
 */
export function publishTarget(
  to: string,
  contentDir: string,
  endpoint: string | undefined,
): PublishTarget {
  const [, kind, place = ""] = /^(rsync|s3):(.*)$/s.exec(to) ?? [];
  if (kind === undefined) {
    if (ELSEWHERE.test(to)) throw new OutputFault(`${refusal(to)}${hintFor(to)}`);
    return folderTarget(to, contentDir);
  }
  // An address of rsync's own daemon begins so by itself.
  if (kind === "rsync" && place.startsWith("//")) return rsyncTarget(to);
  if (place === "" || place.startsWith("-")) throw new OutputFault(refusal(to));
  return kind === "rsync" ? rsyncTarget(place) : bucketTarget(place, endpoint, process.env);
}
