// JavaScript, since Node runs it before anything can run TypeScript.
import { createHash, randomUUID } from "node:crypto";
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import module from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { AROUND, META, programScript, SCRIPT } from "./kept-code.js";

const PACKAGE_ROOT = fileURLToPath(new URL("../../", import.meta.url));
/** A bundle lies as deep below the package as a module of lib/, so that both find files of the package alike. */
const KEPT = join(PACKAGE_ROOT, ".cache");
/** What is begun of a program: the command, the thread that writes a site, and those that work beside it. */
const BEGINS = {
  command: "lib/commands/command-line.ts",
  "site-thread": "lib/site/site-thread-work.ts",
  "work-thread": "lib/site/work-thread.ts",
};
const THREADS = Object.keys(BEGINS).filter((begins) => begins !== "command");
/** What all that is begun is put together by: no file. */
const WHOLE = "<all that is begun>";
/** What runs the script of a bundle; which holds it as it was when that was made. */
const LOADED_BY = "lib/commands/kept-code.js";
const LOADER = "kept-code.mjs";
/** This module. */
const BUNDLED_BY = "lib/commands/bundled-program.js";
/** Packages of many small modules, which load sooner out of the bundle; the others find files of their own beside them. */
const PACKAGES_WITHIN = [
  "csv-parse",
  "csv-stringify",
  "culori",
  "markdown-it",
  "munsell",
  "pdfkit",
  "qr",
  "saxes",
  "yaml",
  "zod",
];
/** The hash of each file of a bundle, by its name. */
const LISTING = "bundle.json";
/** The hash of each module of lib/ with all that it imports, by its path. */
const MODULES = "modules.json";
/** The hash of the sources, and what tells that none of them was touched since. */
const SOURCES = "sources.json";
/** What was written later than so long ago may be written again without a clock that shows it. Our own choice. */
const SETTLED_MS = 100;
/** Older bundles stay for a while: a program that still runs may load a part of its own late. */
const BUNDLES_KEPT = 3;
/** What the system answers where the package's folder can't be written. */
const UNWRITABLE = ["EACCES", "EDQUOT", "EEXIST", "ENOSPC", "ENOTDIR", "EPERM", "EROFS"];

/**
 * The module of the command line out of one bundle of lib/, so that a command need not translate
 * hundreds of modules first. A bundle is named by the hash of what it was made from, and is made
 * when there is none; one whose files are not as they were written is made anew.
 * @param use what the command is, by one word.
 * @returns undefined where the package's folder can't be written
 */
export async function bundledProgram(use) {
  module.enableCompileCache?.(join(KEPT, "compiled"));
  try {
    const folder = join(KEPT, `program-${sourcesHash()}`);
    if (!isWhole(folder)) await bundle(folder);
    const { command, keepCode } = await programScript(folder, use);
    return { ...(await command()), keepCode };
  } catch (error) {
    if (UNWRITABLE.includes(error.code)) return undefined;
    throw error;
  }
}

/**
 * The hash of what a bundle is made from and goes by: every module and table of lib/, and the
 * versions of the packages beside it. Where no file was touched since they were read last, none is read.
 */
function sourcesHash() {
  const names = [
    ...inLibrary(".ts", ".csv", ".yaml"),
    LOADED_BY,
    BUNDLED_BY,
    "eleventy.config.ts",
    "package.json",
  ];
  const found = names.map((name) => statSync(join(PACKAGE_ROOT, name), { bigint: true }));
  const state = hashOf(
    ...found.flatMap(({ ino, size, mtimeNs, ctimeNs }, i) => [
      names[i],
      [ino, size, mtimeNs, ctimeNs].join(" "),
    ]),
  );
  const known = knownSources();
  if (known.state === state) return known.hash;
  const hash = hashOf(...bytesOf(names));
  const newest = Math.max(...found.map(({ ctimeMs }) => Number(ctimeMs)));
  if (Date.now() - newest > SETTLED_MS) keepSources({ state, hash });
  return hash;
}

function knownSources() {
  try {
    return JSON.parse(readFileSync(join(KEPT, SOURCES), "utf8"));
  } catch {
    return {};
  }
}

/** Written aside and moved into place, so that nobody reads half of it; where it can't be, the files are read again. */
function keepSources(known) {
  const aside = join(KEPT, `${SOURCES}-${randomUUID()}`);
  try {
    writeFileSync(aside, JSON.stringify(known), { flag: "wx" });
    renameSync(aside, join(KEPT, SOURCES));
  } catch {
    rmSync(aside, { force: true });
  }
}

/** What the modules read while they run: an edit of a row changes what any of them may say. */
function tables() {
  return inLibrary(".csv", ".yaml");
}

function inLibrary(...endings) {
  return readdirSync(join(PACKAGE_ROOT, "lib"), { recursive: true, encoding: "utf8" })
    .filter((name) => endings.some((ending) => name.endsWith(ending)))
    .map((name) => join("lib", name));
}

function* bytesOf(names) {
  for (const name of names.toSorted()) yield* [name, readFileSync(join(PACKAGE_ROOT, name))];
}

function packagesBeside() {
  const { dependencies } = JSON.parse(readFileSync(join(PACKAGE_ROOT, "package.json"), "utf8"));
  return Object.keys(dependencies).filter((name) => !PACKAGES_WITHIN.includes(name));
}

/** Each part by its length first, so that no two lists of parts run together. */
function hashOf(...parts) {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${Buffer.byteLength(part)}:`).update(part);
  return hash.digest("hex").slice(0, 16);
}

function isWhole(folder) {
  try {
    const listing = Object.entries(JSON.parse(readFileSync(join(folder, LISTING), "utf8")));
    return (
      listing.length > 0 &&
      listing.every(([name, hash]) => hashOf(readFileSync(join(folder, name))) === hash)
    );
  } catch {
    return false;
  }
}

/** Of each module of lib/, the hash of all that it reaches by its imports, of the tables, and of the packages beside the bundle. */
function moduleHashes(inputs) {
  const common = hashOf(...bytesOf([...tables(), "package.json"]));
  const own = new Map(
    Object.keys(inputs)
      .filter((path) => path !== WHOLE)
      .map((path) => [path, hashOf(readFileSync(join(PACKAGE_ROOT, path)))]),
  );
  const reached = (path, seen = new Set()) => {
    if (seen.has(path)) return seen;
    seen.add(path);
    for (const imported of inputs[path].imports)
      if (!imported.external) reached(imported.path, seen);
    return seen;
  };
  return Object.fromEntries(
    Object.keys(inputs)
      .filter((path) => path.startsWith("lib/"))
      .map((path) => [
        path,
        hashOf(common, ...[...reached(path)].sort().flatMap((one) => [one, own.get(one)])),
      ]),
  );
}

/** Beside its place first, then moved there whole: another process sees all of a bundle or none. */
async function bundle(folder) {
  const { build, stop } = await import("esbuild");
  const { outputFiles, metafile } = await build({
    absWorkingDir: PACKAGE_ROOT,
    metafile: true,
    stdin: {
      contents: Object.entries(BEGINS)
        .map(([begins, file]) => `exports["${begins}"] = () => import("./${file}");\n`)
        .join(""),
      resolveDir: PACKAGE_ROOT,
      sourcefile: WHOLE,
    },
    bundle: true,
    write: false,
    // One script, in which every module finds what others export without a table between.
    format: "cjs",
    platform: "node",
    target: "node20",
    define: {
      // Of the packages within pdfkit alone asks where it lies: beside its standard fonts.
      __filename: `${META}.pdfkit`,
      ...Object.fromEntries(
        ["dirname", "url", "keepCode", "importPackage"].map((name) => [
          `import.meta.${name}`,
          `${META}.${name}`,
        ]),
      ),
    },
    // Else each such expression inside a function would be made anew at every call.
    supported: { "regexp-unicode-property-escapes": true },
    external: packagesBeside(),
    outfile: join(folder, SCRIPT),
    logLevel: "silent",
  });
  // Its process would stand beside the command's to the end, with 250 MB.
  await stop();
  const made = `${folder}-${randomUUID()}`;
  mkdirSync(made, { recursive: true });
  try {
    const files = [
      ...outputFiles.map(({ path, text }) => [
        path.slice(folder.length + 1),
        asFunction(inAscii(text)),
      ]),
      [LOADER, readFileSync(join(PACKAGE_ROOT, LOADED_BY))],
      ...THREADS.map((thread) => [`${thread}.mjs`, beginning(thread)]),
      [MODULES, JSON.stringify(moduleHashes(metafile.inputs))],
    ];
    const listing = files.map(([name, contents]) => {
      writeFileSync(join(made, name), contents);
      return [name, hashOf(contents)];
    });
    writeFileSync(join(made, LISTING), JSON.stringify(Object.fromEntries(listing)));
    if (isWhole(folder)) return;
    rmSync(folder, { recursive: true, force: true });
    renameSync(made, folder);
  } catch (error) {
    // Another process has made the same bundle meanwhile.
    if (!isWhole(folder)) throw error;
  } finally {
    rmSync(made, { recursive: true, force: true });
  }
  removeOld();
}

/** In the file itself: put around it later, it would be copied each time that it is begun. */
function asFunction(text) {
  return `${AROUND.before}${text}${AROUND.after}`;
}

/** Of a script, with what esbuild leaves of other letters, in regular expressions and comments, as their numbers: held as one byte a letter. */
function inAscii(text) {
  return text.replace(
    /[\u0080-\uffff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/** What a thread begins with, or a process. */
function beginning(thread) {
  return `import { programScript } from "./${LOADER}";
const program = await programScript(import.meta.dirname, "${thread}");
await program["${thread}"]();
`;
}

function removeOld() {
  const bundles = readdirSync(KEPT)
    .filter((name) => /^program-[0-9a-f]{16}$/.test(name))
    .map((name) => ({ folder: join(KEPT, name), made: statSync(join(KEPT, name)).mtimeMs }))
    .sort((a, b) => b.made - a.made);
  for (const { folder } of bundles.slice(BUNDLES_KEPT))
    rmSync(folder, { recursive: true, force: true });
}
