/**
 * `npm run kills [-- RANDOM [random]]`: builds, cards and the cache killed (SIGKILL) at every change of the
 * disk that they make; then a process that does nothing but write, killed RANDOM times (200 unless said) at
 * random moments; then a tenth as many whole commands (all of this alone with `random`).
 * After each kill the output is the earlier or the new one, whole, with what no build wrote in it;
 * after the next command nothing lies about. Prints its figures; exit code 1 when anything was lost.
 */
import { spawn } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { buildSync } from "esbuild";
import { contentKey } from "../../lib/sheet/revision.ts";
import { outputFile } from "../../lib/site/output-file.ts";
import { buildFolder } from "../../lib/site/output-folder.ts";
import { buildFolders } from "../../lib/site/output-pair.ts";
import { outputManifest } from "../../lib/site/output-manifest.ts";
import { fileHashes } from "../commands/file-hashes.ts";
import { fourColourWorkshop } from "../commands/demonstration-part.ts";
import type { RecordTexts } from "../support/content-folder.ts";
import { BIN } from "../support/mullstone.ts";
import { smallPdf, writeSmallSite } from "./small-site.ts";

const home = mkdtempSync(join(tmpdir(), "mullstone-kills-"));
/** In one file, which starts at once. */
const CHILD = join(home, "killed-child.mjs");
buildSync({
  entryPoints: [join(import.meta.dirname, "killed-child.ts")],
  bundle: true,
  platform: "node",
  format: "esm",
  outfile: CHILD,
  logLevel: "error",
});
const lost: string[] = [];
/** Said at once: a run that is stopped has told what it saw. */
const tell = (what: string): void => {
  lost.push(what);
  process.stdout.write(`${what}\n`);
};
const held = (isSo: boolean, what: string): void => {
  if (!isSo) tell(what);
};

interface Ended {
  readonly signal: NodeJS.Signals | null;
  readonly code: number | null;
}

async function run(args: readonly string[], cwd: string, killAfterMs?: number): Promise<Ended> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd, stdio: "ignore" });
    const timer =
      killAfterMs === undefined ? undefined : setTimeout(() => child.kill("SIGKILL"), killAfterMs);
    child.once("exit", (code, signal) => {
      clearTimeout(timer);
      done({ code, signal });
    });
  });
}

/** The files beside a job's results that must be gone after the next run. */
const leftovers = (folder: string): string[] =>
  readdirSync(folder).filter((name) => /building|lock|rubbish|kept|aside/.test(name));

/** Whether a small site is whole: each file of its manifest there, all of one edition. */
function edition(dir: string): string | undefined {
  const files = outputManifest(dir)?.files;
  if (files === undefined || ![...files].every((path) => existsSync(join(dir, path))))
    return undefined;
  const text = readFileSync(join(dir, "index.html"), "utf8");
  return existsSync(join(dir, "colours", `${text}.html`)) ? text : undefined;
}

function afterSwap(folder: string, where: string): void {
  const [out, earlier] = [join(folder, "site"), join(folder, "site.building", "earlier")];
  const place = existsSync(out) ? out : earlier;
  held(
    ["old", "new"].includes(edition(place) ?? ""),
    `${where}: the output is neither old nor new`,
  );
  held(existsSync(join(place, ".git/refs/tags")), `${where}: .git`);
  held(readFileSync(join(place, "CNAME"), "utf8") === "mine", `${where}: CNAME`);
  try {
    buildFolder(out, join(folder, "content")).discard();
  } catch (error) {
    tell(`${where}: the next build is refused: ${String(error)}`);
  }
  held(["old", "new"].includes(edition(out) ?? ""), `${where}: not put right`);
  held(readFileSync(join(out, "CNAME"), "utf8") === "mine", `${where}: CNAME after the next build`);
  held(leftovers(folder).length === 0, `${where}: left ${leftovers(folder).join()}`);
}

function afterCards(folder: string, where: string): void {
  const file = join(folder, "cards.pdf");
  const isWhole = (): boolean =>
    [smallPdf("old"), smallPdf("new")].includes(readFileSync(file, "utf8"));
  held(isWhole(), `${where}: the PDF is neither old nor new`);
  try {
    outputFile(file, join(folder, "content")).write(Buffer.from(smallPdf("new")));
  } catch (error) {
    tell(`${where}: the next run is refused: ${String(error)}`);
  }
  held(isWhole() && leftovers(folder).length === 0, `${where}: left ${leftovers(folder).join()}`);
}

async function placed(job: "swap" | "cards" | "cache"): Promise<number> {
  let kills = 0;
  for (let at = 1; ; at++) {
    for (const moment of ["before", "after"]) {
      const folder = join(home, `${job}-${at}-${moment}`);
      mkdirSync(join(folder, "content"), { recursive: true });
      if (job === "swap") {
        writeSmallSite(join(folder, "site"), "old");
        mkdirSync(join(folder, "site/.git/refs/tags"), { recursive: true });
        writeFileSync(join(folder, "site/CNAME"), "mine");
      } else writeFileSync(join(folder, "cards.pdf"), smallPdf("old"));
      const args = [CHILD, job, folder, `${at}`, moment];
      const { signal, code } = await run(args, process.cwd());
      const where = `${job}, ${moment} change ${at}`;
      if (signal !== "SIGKILL") {
        held(code === 0, `${where}: ended with ${code}`);
        return kills;
      }
      kills += 1;
      if (job === "swap") afterSwap(folder, where);
      else if (job === "cards") afterCards(folder, where);
      else
        held(
          (await run(args.with(3, "0"), process.cwd())).code === 0,
          `${where}: the next run fails`,
        );
      rmSync(folder, { recursive: true, force: true });
    }
  }
}

/** A process that does nothing but write, killed at random moments: both outputs, cards and cache. */
async function swaps(count: number): Promise<number> {
  const folder = join(home, "loop");
  mkdirSync(join(folder, "content"), { recursive: true });
  const outputs = ["site", "bench"].map((name) => join(folder, name));
  for (let kills = 0; kills < count; kills++) {
    const where = `swap ${kills}`;
    const child = spawn(process.execPath, [CHILD, "loop", folder], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    const ended = new Promise<Ended>((done) =>
      child.once("exit", (code, signal) => done({ code, signal })),
    );
    const atWork = new Promise((done) => child.stdout.once("data", done));
    await Promise.race([atWork, ended]);
    await pause(150 * Math.random());
    child.kill("SIGKILL");
    const { signal, code } = await ended;
    held(signal === "SIGKILL", `${where}: ended by itself with ${code}`);
    for (const out of outputs) {
      const place = existsSync(out) ? out : join(`${out}.building`, "earlier");
      held(edition(place) !== undefined, `${where}: ${out} is neither old nor new`);
      if (kills > 0) held(existsSync(join(place, "CNAME")), `${where}: CNAME of ${out}`);
    }
    try {
      const [site = "", bench = ""] = outputs;
      buildFolders(site, bench, join(folder, "content")).discard();
    } catch (error) {
      tell(`${where}: the next build is refused: ${String(error)}`);
    }
    for (const out of outputs) {
      held(edition(out) !== undefined, `${where}: ${out} is not put right`);
      writeFileSync(join(out, "CNAME"), "mine");
    }
    afterCards(folder, where);
  }
  return count;
}

/** The least that builds, since a kill that comes late costs a whole build. */
const SMALL: RecordTexts = {
  "workshop.yaml": "name: First\n",
  "pigments/lamp-black.yaml": "name: Lamp black\n",
  "colours/lamp-black.md":
    "---\nname: Lamp Black\npigments: [{ pigment: lamp-black }]\nmasstone: { munsell: N 1.5/ }\n---\n",
};

function writeRecords(folder: string, records: RecordTexts, name: string): void {
  for (const [path, text] of Object.entries(records)) {
    const file = join(folder, "content", path);
    mkdirSync(join(file, ".."), { recursive: true });
    writeFileSync(
      file,
      path === "workshop.yaml" ? text.replace(/^name: .*$/m, `name: ${name}`) : text,
    );
  }
}

const siteHash = (dir: string): string =>
  JSON.stringify(Object.entries(fileHashes(dir)).filter(([path]) => path !== "CNAME"));

/** One kind of command, killed again and again at random moments while its records change between two editions. */
async function random(
  command: "build" | "cards",
  records: RecordTexts,
  count: number,
): Promise<number> {
  const folder = join(home, `random-${command}`);
  const out = join(folder, command === "build" ? "site" : "cards.pdf");
  const args = [BIN, command, "--output", out];
  const earlier = `${out}.building/earlier`;
  const now = (): string =>
    command === "cards" ? contentKey(readFileSync(out)) : siteHash(existsSync(out) ? out : earlier);
  const editions: string[] = [];
  let wholeMs = 0;
  for (const name of ["First", "Second"]) {
    writeRecords(folder, records, name);
    const started = performance.now();
    held((await run(args, folder)).code === 0, `the first ${command} fails`);
    wholeMs = performance.now() - started;
    editions.push(now());
  }
  held(editions[0] !== editions[1], `two editions of ${command} are alike`);
  if (command === "build") writeFileSync(join(out, "CNAME"), "mine");
  let kills = 0;
  while (kills < count) {
    writeRecords(folder, records, kills % 2 === 0 ? "First" : "Second");
    const { signal } = await run(args, folder, Math.random() * 1.05 * wholeMs);
    held(editions.includes(now()), `random ${command} ${kills}: neither of the two editions`);
    if (command === "build")
      held(existsSync(join(existsSync(out) ? out : earlier, "CNAME")), `${kills}: CNAME`);
    if (signal === "SIGKILL") kills += 1;
  }
  held((await run(args, folder)).code === 0, `${command} after all kills fails`);
  held(editions.includes(now()), `the output of ${command} after all kills`);
  const left = leftovers(folder);
  held(left.length === 0, `left after all kills of ${command}: ${left.join()}`);
  return kills;
}

const asked = Number(process.argv[2] ?? 200);
const isPlacedToo = process.argv[3] !== "random";
try {
  const [swap, cards, cache] = isPlacedToo
    ? [await placed("swap"), await placed("cards"), await placed("cache")]
    : [0, 0, 0];
  process.stdout.write(
    `${swap + cards + cache} placed kills: ${swap} of the swap, ${cards} of cards, ${cache} of the cache\n`,
  );
  process.stdout.write(`${await swaps(asked)} kills of a process that only writes\n`);
  const ofCards = Math.ceil(asked / 50);
  const killed = [
    await random("build", SMALL, Math.ceil(asked / 10) - ofCards),
    await random("cards", fourColourWorkshop(), ofCards),
  ];
  process.stdout.write(
    `${killed[0] ?? 0} builds and ${killed[1] ?? 0} runs of cards killed at random moments\n`,
  );
} finally {
  rmSync(home, { recursive: true, force: true });
}
process.stdout.write(`${lost.length} lost or to mend\n`);
process.exitCode = lost.length === 0 ? 0 : 1;
