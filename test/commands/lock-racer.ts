/**
 * One of several processes that want the same lock, again and again: inside it each makes a folder
 * that only one can make. Every third time it leaves the lock as a killed build leaves it.
 * Prints how often it was inside, and how often it was not alone there.
 */
import { mkdirSync, readFileSync, rmdirSync, writeFileSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { takenLock, type BuildLock } from "../../lib/site/build-lock.ts";
import { OutputFault } from "../../lib/site/output-fault.ts";

const [out = "", rounds = "0"] = process.argv.slice(2);
const lockFile = `${out}.lock`;
let [inside, together] = [0, 0];

function tried(): BuildLock | undefined {
  try {
    return takenLock(lockFile, out);
  } catch (error) {
    if (!(error instanceof OutputFault)) throw error;
    return undefined;
  }
}

for (let round = 0; round < Number(rounds); round++) {
  const lock = tried();
  if (lock !== undefined) {
    inside += 1;
    try {
      mkdirSync(`${out}.inside`);
      await pause(1);
      rmdirSync(`${out}.inside`);
    } catch {
      together += 1;
    }
    if (inside % 3 === 0) {
      const holder = JSON.parse(readFileSync(lockFile, "utf8")) as object;
      writeFileSync(lockFile, JSON.stringify({ ...holder, process: 999_999_999 }));
    } else lock.release();
  }
  await pause(Math.random() < 0.5 ? 0 : 1);
}
process.stdout.write(JSON.stringify({ inside, together }));
