import { execFile, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { promisify } from "node:util";
import { expect, inject, test } from "vitest";
import { startOf, takenLock } from "../../lib/site/build-lock.ts";
import { ownProgram } from "../support/own-program.ts";

test("of six builds at once never two are in, though locks of killed ones lie about", async () => {
  const home = mkdtempSync(join(inject("scratch"), "race-"));
  const racers = await Promise.all(
    Array.from({ length: 6 }, async () =>
      promisify(execFile)(process.execPath, [
        ...ownProgram(join(import.meta.dirname, "lock-racer.ts")),
        join(home, "site"),
        "300",
      ]),
    ),
  );
  const found = racers.map(
    ({ stdout }) => JSON.parse(stdout) as { inside: number; together: number },
  );
  expect(found.reduce((sum, { together }) => sum + together, 0)).toBe(0);
  expect(found.reduce((sum, { inside }) => sum + inside, 0)).toBeGreaterThan(40);
  // Nothing lies about but the last lock, if its holder was the kind that is killed.
  expect(readdirSync(home).filter((name) => name !== "site.lock")).toEqual([]);
});

test.runIf(process.platform === "linux")(
  "a holder that has ended, and that nobody asked after, holds nothing any more",
  async () => {
    const home = mkdtempSync(join(inject("scratch"), "ended-"));
    const file = join(home, "site.lock");
    const held = takenLock(file, "site");
    // What a shell has begun ends, and what the shell becomes does not ask after it.
    const shell = spawn("sh", ["-c", "sleep 0.5 & echo $!; exec sleep 30"], {
      stdio: ["ignore", "pipe", "ignore"],
    });
    try {
      const [told] = (await once(shell.stdout, "data")) as [Buffer];
      const ended = Number(told.toString());
      const started = startOf(ended);
      const holder = JSON.parse(readFileSync(file, "utf8")) as object;
      writeFileSync(file, JSON.stringify({ ...holder, process: ended, started }));
      const stat = (): string => readFileSync(`/proc/${ended}/stat`, "utf8");
      while (!stat().includes(") Z ")) await pause(5);
      takenLock(file, "site").release();
      expect(readdirSync(home)).toEqual([]);
    } finally {
      shell.kill("SIGKILL");
      held.release();
    }
  },
);
