import { randomUUID } from "node:crypto";
import {
  constants,
  copyFileSync,
  linkSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { hostname } from "node:os";
import { basename, dirname, join } from "node:path";
import { codeOf } from "../diagnostics/error-code.ts";
import { OutputFault } from "./output-fault.ts";

/** Held while an output is built; given back at its end. */
export interface BuildLock {
  readonly release: () => void;
}

/** Who holds a lock. A process number alone is used again; with the time of its start it is one process. */
interface Holder {
  readonly token: string;
  readonly host: string;
  readonly process: number;
  /** When the process started, in the system's own count; empty where it does not say. */
  readonly started: string;
  /** When the lock was taken, for people to read. */
  readonly since: string;
}

/** A holder on another machine can't be asked: it shows that it lives by touching its lock. */
const TOUCHED_EVERY_MS = 5_000;
const DEAD_AFTER_MS = 60_000;
const MOST_TRIES = 200;
const NO_LINKS = new Set(["EPERM", "ENOTSUP", "ENOSYS", "EOPNOTSUPP"]);

/**
 * Take the lock of an output, a file beside it. The file appears whole, with its holder in it, or
 * not at all. The lock of a holder that is gone is taken over by one of those who see it, since the
 * right to do so is a file that only one can make.
 * @throws OutputFault when another build holds it.
 */
export function takenLock(file: string, out: string): BuildLock {
  const own: Holder = {
    token: randomUUID(),
    host: hostname(),
    process: process.pid,
    started: startOf(process.pid),
    since: new Date().toISOString(),
  };
  const aside = `${file}.${own.token}`;
  writeFileSync(aside, `${JSON.stringify(own)}\n`, { flag: "wx" });
  try {
    take(file, aside, own, out);
    sweep(file, aside);
  } finally {
    rmSync(aside, { force: true });
  }
  const touching = setInterval(() => touch(file), TOUCHED_EVERY_MS).unref();
  return {
    release: () => {
      clearInterval(touching);
      if (holderOf(file)?.token === own.token) rmSync(file, { force: true });
    },
  };
}

function take(file: string, aside: string, own: Holder, out: string): void {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    if (linked(aside, file)) return;
    const chain = claims(file);
    const [last] = chain.slice(-1);
    if (last === undefined) continue;
    if (isAlive(last.holder, last.file, aside))
      throw new OutputFault(
        last.holder.process === 0
          ? `Another build of ${out} seems to be at work: ${last.file} was touched less than a minute ago`
          : `Another build of ${out} is at work, process ${last.holder.process} on ${last.holder.host} since ${last.holder.since}: its lock is ${last.file}`,
      );
    const right = claimOf(file, last.holder);
    if (!linked(aside, right)) continue;
    // Whoever was slower finds other claims than it read, and leaves its own.
    const isStillSo = claims(file)
      .map(({ holder }) => holder.token)
      .join()
      .startsWith([...chain.map(({ holder }) => holder.token), own.token].join());
    if (isStillSo) {
      renameSync(aside, file);
      for (const claim of chain) if (claim.file !== file) rmSync(claim.file, { force: true });
      rmSync(right, { force: true });
      return;
    }
    rmSync(right, { force: true });
  }
  throw new OutputFault(`The lock ${file} can't be taken: too many builds want it at once`);
}

/** Remove what others who wanted the lock left beside it when they were killed; a folder that can't be listed keeps it. */
function sweep(file: string, aside: string): void {
  try {
    for (const name of readdirSync(dirname(file)).filter((one) =>
      one.startsWith(`${basename(file)}.`),
    )) {
      const left = join(dirname(file), name);
      const holder = holderOf(left);
      if (holder !== undefined && left !== aside && !isAlive(holder, left, file))
        rmSync(left, { force: true });
    }
  } catch {
    // Scratch files of a few bytes: they hinder nobody.
  }
}

/** The lock's holder, then whoever claimed it after a holder that was gone, and so on. */
function claims(file: string): { readonly file: string; readonly holder: Holder }[] {
  const found: { file: string; holder: Holder }[] = [];
  for (let at = file; ;) {
    const holder = holderOf(at);
    if (holder === undefined || found.some((one) => one.holder.token === holder.token))
      return found;
    found.push({ file: at, holder });
    at = claimOf(file, holder);
  }
}

function claimOf(file: string, { token }: Holder): string {
  return `${file}.after-${token}`;
}

/** Give a file a second name that nobody has. Where the disk knows no second names, the file is copied. */
function linked(from: string, to: string): boolean {
  try {
    linkSync(from, to);
    return true;
  } catch (error) {
    const code = codeOf(error);
    if (code === "EEXIST") return false;
    if (!NO_LINKS.has(code)) throw error;
  }
  try {
    copyFileSync(from, to, constants.COPYFILE_EXCL);
    return true;
  } catch (error) {
    if (codeOf(error) === "EEXIST") return false;
    throw error;
  }
}

/** What a lock says; the holder of a file that says nothing of the kind is unknown, and judged by its touch. */
function holderOf(file: string): Holder | undefined {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
  const unknown = { token: "unknown", host: "", process: 0, started: "", since: "" };
  try {
    const found = JSON.parse(text) as Partial<Holder> | null;
    return typeof found?.token === "string" && /^[0-9a-f-]{36}$/.test(found.token)
      ? { ...unknown, ...found }
      : unknown;
  } catch {
    return unknown;
  }
}

function isAlive(holder: Holder, file: string, aside: string): boolean {
  if (holder.host === hostname())
    return isRunning(holder.process) && holder.started === startOf(holder.process);
  try {
    // Both times are of the disk that holds the lock: this machine's clock may differ.
    return statSync(aside).mtimeMs - statSync(file).mtimeMs < DEAD_AFTER_MS;
  } catch {
    return false;
  }
}

function isRunning(pid: number): boolean {
  if (!(pid > 0)) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === "EPERM";
  }
}

/** States of a process that has ended, and that nobody has asked after. */
const ENDED = ["Z", "X"];

/** Of Linux: the boot, and the clock ticks from it to the start of a process that has not ended. */
export function startOf(pid: number): string {
  try {
    const boot = readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    // The name of the program, in brackets, may hold blanks and brackets.
    const [state = "", ...further] = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
    return ENDED.includes(state) ? "" : `${boot} ${further[18] ?? ""}`;
  } catch {
    return "";
  }
}

function touch(file: string): void {
  try {
    const now = new Date();
    utimesSync(file, now, now);
  } catch {
    // Gone or not ours to touch: the build goes on, and its swap is as safe as before.
  }
}
