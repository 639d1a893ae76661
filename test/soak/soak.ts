/**
 * `npm run soak [-- REBUILDS]`: the server at the bench under 500 edits in 30 s, asked all the while,
 * then REBUILDS builds one after another (200 unless said) with its memory looked at.
 * Prints its figures; exit code 1 when a request was not answered, the last edit is not shown, or
 * memory grew by more than a quarter over the second half.
 */
import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { BIN } from "../support/mullstone.ts";
import { runFolder } from "../support/run-folder.ts";

const EDITS = 500;
const EDITS_WITHIN_MS = 30_000;
const MOST_GROWTH = 1.25;
const rebuilds = Number(process.argv[2] ?? 200);

const { folder: home, remove } = runFolder("soak");
const record = join(home, "content/colours/lamp-black.md");
const named = (name: string): void =>
  writeFileSync(
    record,
    `---\nname: ${name}\npigments: [{ pigment: lamp-black }]\nmasstone: { munsell: N 1.5/ }\n---\n`,
  );
mkdirSync(dirname(record), { recursive: true });
mkdirSync(join(home, "content/pigments"));
writeFileSync(join(home, "content/workshop.yaml"), "name: Soak\n");
writeFileSync(join(home, "content/pigments/lamp-black.yaml"), "name: Lamp black\n");
named("Black 0");

const server = spawn(process.execPath, [BIN, "start", "--content", join(home, "content")], {
  stdio: ["ignore", "pipe", "inherit"],
});
let said = "";
server.stdout.on("data", (chunk: Buffer) => (said += chunk.toString()));
const builds = (): number => said.match(/^1 sheet, /gm)?.length ?? 0;
let unanswered = 0;
let slowestMs = 0;

/** The page of the colour; a request that fails or takes long is counted. */
async function page(): Promise<string> {
  const started = performance.now();
  try {
    const answer = await fetch(new URL("colours/lamp-black/", /http\S+/.exec(said)?.[0] ?? ""));
    if (answer.status !== 200) unanswered += 1;
    return await answer.text();
  } catch {
    unanswered += 1;
    return "";
  } finally {
    slowestMs = Math.max(slowestMs, performance.now() - started);
  }
}

async function shown(name: string): Promise<boolean> {
  for (let tries = 0; tries < 1_200; tries++) {
    if ((await page()).includes(name)) return true;
    await pause(100);
  }
  return false;
}

/** Memory that the process holds [MB], as Linux counts it. */
function memoryMb(): number {
  const status = readFileSync(`/proc/${server.pid ?? 0}/status`, "utf8");
  return Math.round(Number(/VmRSS:\s+(\d+) kB/.exec(status)?.[1] ?? NaN) / 1024);
}

const faults: string[] = [];
try {
  while (!said.includes("http://")) await pause(100);
  const before = builds();
  for (let edit = 1; edit <= EDITS; edit++) {
    named(`Edit ${edit}`);
    const next = pause(EDITS_WITHIN_MS / EDITS);
    if (edit % 5 === 0) await page();
    await next;
  }
  if (!(await shown(`Edit ${EDITS}`))) faults.push("the last of the edits is not shown");
  process.stdout.write(
    `${EDITS} edits: ${builds() - before} builds, ${unanswered} requests unanswered, slowest answer ${Math.round(slowestMs)} ms\n`,
  );
  const memory: number[] = [];
  for (let rebuild = 1; rebuild <= rebuilds; rebuild++) {
    named(`Rebuild ${rebuild}.`);
    if (!(await shown(`Rebuild ${rebuild}.`))) faults.push(`rebuild ${rebuild} is not shown`);
    memory.push(memoryMb());
  }
  const half = Math.max(...memory.slice(0, Math.ceil(rebuilds / 2)));
  const whole = Math.max(...memory);
  process.stdout.write(
    `${rebuilds} rebuilds: ${memory[0] ?? NaN} MB after the first, at most ${half} MB in the first half, ${whole} MB in all\n`,
  );
  if (whole > MOST_GROWTH * half) faults.push("memory grows");
  if (unanswered > 0) faults.push("requests were not answered");
} finally {
  server.kill("SIGTERM");
  remove();
}
for (const fault of faults) process.stdout.write(`${fault}\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
