/**
 * One job that writes, killed at its n-th change of the disk: `killed-child.ts JOB FOLDER N before|after`.
 * `loop` in place of a job writes both outputs, cards and the cache again and again, until it is killed.
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
let count = 0;
const functions = fs as unknown as Record<string, (...args: unknown[]) => unknown>;
for (const name of CHANGES) {
  const real = functions[name];
  if (real === undefined) throw new Error(`node:fs has no ${name}`);
  functions[name] = (...args) => {
    count += 1;
    const isHere = count === Number(at);
    if (isHere && moment === "before") process.kill(process.pid, "SIGKILL");
    const result = real(...args);
    if (isHere) process.kill(process.pid, "SIGKILL");
    return result;
  };
}
syncBuiltinESMExports();

const { buildFolder } = await import("../../lib/site/output-folder.ts");
const { outputFile } = await import("../../lib/site/output-file.ts");
const { writeSmallSite, smallPdf } = await import("./small-site.ts");
const { theoryFigure } = await import("../../lib/site/theory-cache.ts");
const { particleModel } = await import("../../lib/optics/theory/particle-model.ts");

if (job === "swap") {
  const built = buildFolder(join(folder, "site"), join(folder, "content"));
  writeSmallSite(built.dir, "new");
  built.publish();
} else if (job === "cards") {
  outputFile(join(folder, "cards.pdf"), join(folder, "content")).write(
    Buffer.from(smallPdf("new")),
  );
} else if (job === "loop") {
  const { buildFolders } = await import("../../lib/site/output-pair.ts");
  for (let edition = 1; ; edition++) {
    const text = edition % 2 === 1 ? "new" : "old";
    const built = buildFolders(
      join(folder, "site"),
      join(folder, "bench"),
      join(folder, "content"),
    );
    writeSmallSite(built.dir, text);
    writeSmallSite(built.workshopDir, text, "workshop");
    built.publish();
    outputFile(join(folder, "cards.pdf"), join(folder, "content")).write(
      Buffer.from(smallPdf(text)),
    );
    fs.rmSync(join(folder, ".mullstone-cache"), { recursive: true, force: true });
    theory();
    if (edition === 2) process.stdout.write("at work");
  }
} else process.stdout.write(JSON.stringify(theory()));
process.stderr.write(`${count}`);

/** The first-principles figure of one white, kept. */
function theory(): unknown {
  const white = particleModel({
    slug: "rutile",
    name: "rutile",
    colourIndexName: "PW 6",
    sizeUm: 0.23,
    refractiveIndex: undefined,
    isClear: true,
  });
  if ("rule" in white) throw new Error(white.rule);
  return theoryFigure(
    { whites: [white], blacks: [] },
    { folder: join(folder, ".mullstone-cache"), keeps: true },
  );
}
