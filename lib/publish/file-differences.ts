import { fields } from "../changes/published-state.ts";
import { MANIFEST } from "../site/output-manifest.ts";
import type { Shipment } from "./publish-target.ts";

/** Content hash of each file of an output, by path, as its manifest lists them. */
export type FileHashes = Readonly<Record<string, string>>;

export interface FileDifferences extends Pick<Shipment, "sent" | "removed"> {
  readonly added: readonly string[];
  readonly changed: readonly string[];
}

/** What is to be sent to, and removed from, a target whose manifest says what it holds; of one without hashes all is sent. */
export function fileDifferences(before: unknown, now: unknown): FileDifferences {
  const [old, own] = [hashesOf(before), hashesOf(now)];
  const earlier = new Set([...Object.keys(old), ...filesOf(before)]);
  const added = Object.keys(own).filter((path) => !earlier.has(path));
  const changed = Object.keys(own).filter((path) => earlier.has(path) && old[path] !== own[path]);
  return {
    added,
    changed,
    sent: [...added, ...changed].sort(),
    removed: [...earlier].filter((path) => own[path] === undefined && path !== MANIFEST).sort(),
  };
}

function hashesOf(manifest: unknown): FileHashes {
  const { hashes } = fields(manifest);
  return Object.fromEntries(
    Object.entries(fields(hashes)).filter(
      (entry): entry is [string, string] => typeof entry[1] === "string" && isBelow(entry[0]),
    ),
  );
}

function filesOf(manifest: unknown): string[] {
  const { files } = fields(manifest);
  return Array.isArray(files)
    ? files.filter((path): path is string => typeof path === "string" && isBelow(path))
    : [];
}

/** A target's manifest is not ours to trust: no path of it may lead out of the site's folder. */
function isBelow(path: string): boolean {
  return !/^\/|\\|[\n\r]|(?:^|\/)\.{1,2}(?:\/|$)|\/\/|^$/.test(path);
}
