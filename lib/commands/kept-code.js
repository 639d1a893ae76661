// JavaScript, since Node runs it before anything can run TypeScript; a bundle holds a copy of it.
import { createHash, randomUUID } from "node:crypto";
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { cachedDataVersionTag } from "node:v8";
import { Script } from "node:vm";

/** A bundle's script, in letters of ASCII alone. */
export const SCRIPT = "program.cjs";
/** What a module asks of its own place: the script stands for all of them. */
export const META = "programMeta";
/**
 * What a bundle's script begins and ends with: one function, which the loader calls. Of one that
 * might be waiting V8 lets no code go, as it does of others that ran long ago.
 */
export const AROUND = {
  before: `(async function (exports, require, module, ${META}) {`,
  after: "\n})\n",
};
const HASH_BYTES = 32;
/** Of a run that took more than so much of the processor [s], as a cold build, V8 has let go of code that ran at its beginning. Our own choice. */
const SOON_OVER_S = 12;

/**
 * What the script of a bundle exports. Node 20 keeps no code of modules, and to make that of a
 * program of thousands of functions anew takes as long as a small edit's whole build: so what V8
 * made of the script, and of each function that was called, is kept beside it.
 * @param use what the program is begun for: each calls other functions, and has its own code kept.
 */
export async function programScript(folder, use) {
  const file = join(folder, SCRIPT);
  // Of another version or other flags V8 refuses what it kept.
  const version = cachedDataVersionTag();
  const kept = join(folder, `code-${use}-${version}.kept`);
  /** What a longer run had left of it in the end, until one is over soon: an edit's build then need not make the rest again each time. */
  const ofLonger = join(folder, `code-left-${use}-${version}.kept`);
  /** As it was parsed, with no function called: so that whoever is the first of a use need not parse all of it again. */
  const parsed = join(folder, `parsed-${version}.kept`);
  const source = readFileSync(file, "latin1");
  const whole = keptCode(kept);
  const left = whole === undefined ? keptCode(ofLonger) : undefined;
  const cachedData = whole ?? left ?? keptCode(parsed);
  const script = new Script(source, { filename: file, cachedData });
  const isTaken = cachedData !== undefined && script.cachedDataRejected !== true;
  if (!isTaken) keepCode(parsed, script.createCachedData());
  let isKept = isTaken && whole !== undefined;
  const meta = {
    dirname: folder,
    url: pathToFileURL(file).href,
    /** Of the package within that looks for files beside itself. */
    get pdfkit() {
      return createRequire(file).resolve("pdfkit");
    },
    // V8 keeps nothing of who loads what a script imports.
    importPackage: (name) => import(name),
    /** For whoever has just called what is mostly called; the first time counts. */
    keepCode: () => {
      if (isKept) return;
      isKept = true;
      const isOverSoon = tookS() < SOON_OVER_S;
      if (isOverSoon || !isTaken || left === undefined)
        keepCode(isOverSoon ? kept : ofLonger, script.createCachedData());
    },
  };
  const module = { exports: {} };
  await script.runInThisContext()(module.exports, createRequire(file), module, meta);
  return { ...module.exports, keepCode: meta.keepCode };
}

/** What the whole process has taken of the processor by now. */
function tookS() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** A file is the hash of the code, and the code. */
function keptCode(file) {
  try {
    const bytes = readFileSync(file);
    const code = bytes.subarray(HASH_BYTES);
    return hashOf(code).equals(bytes.subarray(0, HASH_BYTES)) ? code : undefined;
  } catch {
    return undefined;
  }
}

/** Written aside and moved into place, so that nobody reads half a file; where it can't be, the code is made again. */
function keepCode(file, code) {
  const aside = `${file}-${randomUUID()}`;
  try {
    writeFileSync(aside, Buffer.concat([hashOf(code), code]), { flag: "wx" });
    renameSync(aside, file);
  } catch {
    rmSync(aside, { force: true });
  }
}

function hashOf(code) {
  return createHash("sha256").update(code).digest();
}
