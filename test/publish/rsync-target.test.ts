import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { userInfo } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, inject, test, vi } from "vitest";
import { publishTarget } from "../../lib/publish/publish-target.ts";
import { filesIn } from "../support/files-in.ts";

const hasRsync = spawnSync("rsync", ["--version"]).status === 0;

/** A site of two pages, and a daemon's folder with rsync's own settings for it. */
function daemon() {
  const home = mkdtempSync(join(inject("scratch"), "rsync-"));
  const [outputDir, www, settings] = ["out", "www", "settings"].map((name) => join(home, name)) as [
    string,
    string,
    string,
  ];
  mkdirSync(join(outputDir, "a"), { recursive: true });
  mkdirSync(www);
  const files = { "index.html": "first", "a/b c.html": "second", "manifest.json": "{}" };
  for (const [path, text] of Object.entries(files)) writeFileSync(join(outputDir, path), text);
  const { uid, gid } = userInfo();
  writeFileSync(
    settings,
    `use chroot = no\nuid = ${uid}\ngid = ${gid}\n[www]\npath = ${www}\nread only = no\n`,
  );
  // basis: published, rsync(1), ENVIRONMENT VARIABLES: the program that is talked to in place of a connection.
  vi.stubEnv("RSYNC_CONNECT_PROG", `rsync --daemon --config=${settings}`);
  return { outputDir, www };
}

describe.skipIf(!hasRsync)("a folder that a daemon of rsync serves", () => {
  afterEach(() => {
    vi.unstubAllEnvs();
  });

  test.each(["rsync://colours.example/www/", "rsync:colours.example::www"])(
    "is written to at %s: what is new is sent, what is gone is deleted, the rest stays",
    async (to) => {
      const { outputDir, www } = daemon();
      const target = publishTarget(to, "content", undefined);
      expect(await target.read("manifest.json")).toBeUndefined();
      await target.ship({ outputDir, sent: ["a/b c.html", "index.html"], removed: [] });
      expect(filesIn(www)).toEqual(["a/b c.html", "index.html", "manifest.json"]);
      expect(Buffer.from((await target.read("manifest.json")) ?? []).toString()).toBe("{}");
      writeFileSync(join(www, "CNAME"), "x");
      writeFileSync(join(outputDir, "index.html"), "third");
      await target.ship({ outputDir, sent: ["index.html"], removed: ["a/b c.html"] });
      expect(filesIn(www)).toEqual(["CNAME", "index.html", "manifest.json"]);
      expect(readFileSync(join(www, "index.html"), "utf8")).toBe("third");
    },
  );

  test("that the daemon does not know is told in rsync's words", async () => {
    daemon();
    const target = publishTarget("rsync://colours.example/elsewhere/", "content", undefined);
    await expect(target.read("manifest.json")).rejects.toThrow(
      "rsync stopped: @ERROR: Unknown module 'elsewhere' (code 5)",
    );
  });
});

test("what is neither a folder nor a way that is known is refused, and makes no folder of that name", () => {
  const refused = (to: string): string => {
    try {
      publishTarget(to, "content", undefined);
    } catch (error) {
      return error instanceof Error ? error.message : "";
    }
    return "taken";
  };
  const takes = "it takes a folder, rsync:USER@HOST:/FOLDER/ or s3:BUCKET/FOLDER";
  for (const to of ["ftp:x", "sftp://host/x", "https://colours.example/", "rsync:", "s3:-x"])
    expect(refused(to)).toBe(`--to can't be ${to}: ${takes}`);
  expect(refused("me@colours.example:/srv/www/")).toBe(
    `--to can't be me@colours.example:/srv/www/: ${takes}; rsync:me@colours.example:/srv/www/`,
  );
  for (const to of ["../www", "www", "./so:named", "C:\\www", "/srv/a:b"])
    expect(refused(to)).toBe("taken");
});
