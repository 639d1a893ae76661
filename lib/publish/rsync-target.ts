import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import { MANIFEST } from "../site/output-manifest.ts";
import { OutputFault } from "../site/output-fault.ts";
import type { PublishTarget } from "./publish-target.ts";

/**
 * A folder that rsync reaches. Files are sent beside those of the site and put in place together at the end of the
 * transfer, manifest.json after them; then what is no longer of the site is deleted, and nothing else.
 */
export function rsyncTarget(place: string): PublishTarget {
  const root = place.endsWith("/") ? place : `${place}/`;
  return {
    read: (path) =>
      withScratch(async (scratch) => {
        await rsync(["--ignore-missing-args", "--", `${root}${path}`, `${scratch}/`]);
        try {
          return readFileSync(join(scratch, basename(path)));
        } catch {
          return undefined;
        }
      }),
    ship: ({ outputDir, sent, removed }) =>
      withScratch(async (scratch) => {
        const list = join(scratch, "files");
        const send = async (paths: readonly string[]): Promise<void> => {
          writeFileSync(list, paths.join("\n"));
          await rsync([...SEND, `--files-from=${list}`, "--", `${outputDir}/`, root]);
        };
        if (sent.length > 0) await send(sent);
        await send([MANIFEST]);
        if (removed.length === 0) return;
        const [empty, rules] = [join(scratch, "empty"), join(scratch, "rules")];
        mkdirSync(empty);
        writeFileSync(rules, deletionRules(removed));
        await rsync([
          "--recursive",
          "--delete",
          `--filter=merge ${rules}`,
          "--",
          `${empty}/`,
          root,
        ]);
      }),
  };
}

const SEND = ["--checksum", "--delay-updates", "--chmod=D755,F644"];

/** Filter rules of rsync under which these files are deleted, and their folders when nothing else is in them. */
export function deletionRules(removed: readonly string[]): string {
  const folders = new Set<string>();
  for (const path of removed)
    for (let folder = dirname(path); folder !== "."; folder = dirname(folder)) folders.add(folder);
  return [
    ...[...folders].sort().map((folder) => `risk /${escaped(folder)}/`),
    ...removed.map((path) => `risk /${escaped(path)}`),
    "protect *",
    "",
  ].join("\n");
}

/** What rsync would take for a pattern. */
function escaped(path: string): string {
  return /[*?[]/.test(path) ? path.replaceAll(/[\\*?[]/g, "\\$&") : path;
}

async function withScratch<T>(use: (scratch: string) => Promise<T>): Promise<T> {
  const scratch = mkdtempSync(join(tmpdir(), "mullstone-rsync-"));
  try {
    return await use(scratch);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

async function rsync(args: readonly string[]): Promise<void> {
  return new Promise((done, failed) => {
    execFile("rsync", args, (error, _, complaints) => {
      if (error === null) done();
      else if (error.code === "ENOENT")
        failed(
          new OutputFault("There is no rsync on this machine: it is what --to rsync: sends by"),
        );
      else
        failed(
          new OutputFault(
            `rsync stopped: ${complaints.trim().split("\n")[0] ?? ""} (code ${String(error.code)})`,
          ),
        );
    });
  });
}
