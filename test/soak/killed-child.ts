/**
 * One job that writes, killed at its n-th change of the disk: `killed-child.ts JOB FOLDER N before|after`.
 * The jobs: `outputs`, the site and the workshop's pages swapped as a build does it; `cards`; `cache`.
 * `loop` in place of a job does all of them again and again, until it is killed.
 * Every function of node:fs that changes something is counted; the process kills itself there.
 */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { join } from "node:path";

const [job = "", folder = "", at = "0", moment = "before"] = process.argv.slice(2);

const CHANGES = [
  "chmodSync",
  "copyFileSync",
  "linkSync",
  "mkdirSync",
  "renameSync",
  "rmdirSync",
  "rmSync",
  "symlinkSync",
  "unlinkSync",
  "writeFileSync",
] as const;
/** One edition in so many of the loop works the cache's figure out, which takes longer than all writing. */
const CACHE_EVERY = 16;

let count = 0;
const functions = fs as unknown as Record<string, (...args: unknown[]) => unknown>;
for (const name of CHANGES) {
  const real = functions[name];
  if (real === undefined) throw new Error(`node:fs has no ${name}`);
  functions[name] = (...args) => {
    count += 1;
    const isHere = count === Number(at);
    if (isHere && moment === "before") process.kill(process.pid, "SIGKILL");
    try {
      return real(...args);
    } finally {
      if (isHere) process.kill(process.pid, "SIGKILL");
    }
  };
}
syncBuiltinESMExports();

const { buildFolders } = await import("../../lib/site/output-pair.ts");
const { outputFile } = await import("../../lib/site/output-file.ts");
const { writeSmallSite, smallPdf } = await import("./small-site.ts");
const { smallTheory } = await import("./small-theory.ts");

function writeOutputs(text: string): void {
  const [site, bench, content] = ["site", "bench", "content"].map((name) => join(folder, name));
  const built = buildFolders(site ?? "", bench ?? "", content ?? "");
  writeSmallSite(built.dir, text);
  writeSmallSite(built.workshopDir, text, "workshop");
  built.publish();
}

function writeCards(text: string): void {
  outputFile(join(folder, "cards.pdf"), join(folder, "content")).write(Buffer.from(smallPdf(text)));
}

function keepTheory(): void {
  smallTheory({ folder: join(folder, "cache"), keeps: true });
}

if (job === "outputs") writeOutputs("new");
else if (job === "cards") writeCards("new");
else if (job === "cache") keepTheory();
else
  for (let edition = 1; ; edition++) {
    const text = edition % 2 === 1 ? "new" : "old";
    writeOutputs(text);
    writeCards(text);
    if (edition % CACHE_EVERY === 0) {
      fs.rmSync(join(folder, "cache"), { recursive: true, force: true });
      keepTheory();
    }
    if (edition === 2) process.stdout.write("at work");
  }
process.stderr.write(`${count}`);
