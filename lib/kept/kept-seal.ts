import { createHmac, randomBytes, randomUUID, timingSafeEqual } from "node:crypto";
import { linkSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, join } from "node:path";
import { codeOf } from "../diagnostics/error-code.ts";

const KEY_BYTES = 32;

/** Tells what this user kept from what anybody else put in its place. */
export interface KeptSeal {
  /** Of some content, 64 hex digits that nobody finds without the key. */
  readonly of: (content: string | Uint8Array) => string;
  readonly isOf: (content: string | Uint8Array, seal: unknown) => boolean;
}

/**
 * The seal of this user on this machine. Its key lies in a file of the user's own, away from every
 * cache and output: who can write there can make up a file with its hash, and not with its seal.
 * Where no key can be kept, it is one for this process, and what was kept before is made anew.
 * @param what is sealed: a seal of one kind is none of another.
 */
export function keptSeal(what: string, file = keyFile()): KeptSeal {
  const key = keyOf(file);
  const of = (content: string | Uint8Array): string =>
    createHmac("sha256", key).update(`${what}\n`).update(content).digest("hex");
  return {
    of,
    isOf: (content, seal) => {
      const [right, found] = [of(content), typeof seal === "string" ? seal : ""];
      return (
        found.length === right.length && timingSafeEqual(Buffer.from(found), Buffer.from(right))
      );
    },
  };
}

/** Where the system has a user's programs keep their state (XDG Base Directory Specification). */
function keyFile(): string {
  const state = process.env["XDG_STATE_HOME"];
  return join(
    state === undefined || state === "" ? join(homedir(), ".local", "state") : state,
    "mullstone",
    "seal-key",
  );
}

const ofThisProcess = randomBytes(KEY_BYTES);

function keyOf(file: string): Buffer {
  try {
    return readKey(file) ?? madeKey(file);
  } catch {
    return ofThisProcess;
  }
}

function readKey(file: string): Buffer | undefined {
  try {
    const key = readFileSync(file);
    if (key.length === KEY_BYTES) return key;
    rmSync(file);
    return undefined;
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
}

/** The file appears whole or not at all, readable by its user alone; of two that make one at once, one counts. */
function madeKey(file: string): Buffer {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  const aside = `${file}.${randomUUID()}`;
  writeFileSync(aside, randomBytes(KEY_BYTES), { flag: "wx", mode: 0o600 });
  try {
    linkSync(aside, file);
  } catch (error) {
    if (codeOf(error) !== "EEXIST") throw error;
  } finally {
    rmSync(aside, { force: true });
  }
  return readFileSync(file);
}
