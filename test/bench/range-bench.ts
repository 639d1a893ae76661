/**
 * `npm run bench -- --colours N`: what the commands take of the processor and of memory for a
 * workshop of so many colours, each beside a bare script that writes the same bytes to the same
 * number of files in the same run. Prints rows of a table; it asserts nothing.
 */
import { spawn, spawnSync } from "node:child_process";
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { cpus, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { BIN } from "../support/mullstone.ts";
import { writeManyColours } from "./many-colours.ts";

/** What one run took. */
interface Usage {
  readonly wallS: number;
  /** Absent where it was not told apart. */
  readonly cpuS?: number;
  readonly largestMb: number;
}

/** Between two notes that somebody saves while a site is served. */
const REST_MS = 10_000;

const PRELOADED = new URL("told-usage.js", import.meta.url).href;

export async function rangeBench(count: number): Promise<void> {
  const home = mkdtempSync(join(tmpdir(), "mullstone-bench-"));
  const [content, site, workshop] = ["content", "site", "workshop"].map((name) => join(home, name));
  if (content === undefined || site === undefined || workshop === undefined) return;
  writeManyColours(content, count);
  const measured = measuredIn(home);
  const build = ["build", "--output", site, "--workshop", workshop, "--claims", "warn"];
  process.stdout.write(
    `Node ${process.version}, ${cpus().length} cores (${cpus()[0]?.model ?? "unknown"}), ${count} colours\n\n` +
      "| what | CPU s | wall s | MB at most | files | MB written |\n|---|---|---|---|---|---|\n",
  );
  const row = (what: string, { cpuS, wallS, largestMb }: Usage, written?: Written): void => {
    const cells = [what, cpuS?.toFixed(2) ?? "", wallS.toFixed(2), largestMb.toFixed(0)];
    const files = written === undefined ? ["", ""] : [String(written.files), written.mb.toFixed(1)];
    process.stdout.write(`| ${[...cells, ...files].join(" | ")} |\n`);
  };
  try {
    row("check", measured(["check", "--claims", "warn"]));
    row("cold build", measured(build), written([site, workshop]));
    row("the same files, by a bare script", bare([site, workshop], join(home, "bare")));
    row("nothing changed", measured(build));
    const record = join(content, "colours", "burnt-sienna.md");
    edit(record, "{ value: 70,", "{ value: 71,");
    row("one oil index changed", measured(build));
    writeFileSync(record, `${readFileSync(record, "utf8")}One more note.\n`);
    row("one note changed", measured(build));
    row("cards", measured(["cards", "--output", join(home, "cards.pdf")]));
    const [first, next] = await savedToPage(home, record);
    row("start: from the first saved note to its page", first);
    row("start: from the next one", next);
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
}

function measuredIn(home: string): (args: readonly string[]) => Usage {
  const file = join(home, "usage.json");
  return (args) => {
    const started = performance.now();
    const { status, stderr } = spawnSync(process.execPath, ["--import", PRELOADED, BIN, ...args], {
      cwd: home,
      env: environment(home, file),
      encoding: "utf8",
      maxBuffer: 1 << 28,
    });
    const wallS = (performance.now() - started) / 1000;
    if (status !== 0 && args[0] !== "check")
      throw new Error(`Unexpected exit ${status} of ${args.join(" ")}\n${stderr.slice(-2000)}`);
    return { wallS, ...toldIn(file) };
  };
}

/** What a command and the processes that it began took together of the processor, and the largest of them of memory. */
function toldIn(file: string): Required<Omit<Usage, "wallS">> {
  const all = readFileSync(file, "utf8")
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Required<Omit<Usage, "wallS">>);
  rmSync(file);
  return {
    cpuS: all.reduce((sum, { cpuS }) => sum + cpuS, 0),
    largestMb: Math.max(...all.map((one) => one.largestMb)),
  };
}

function environment(home: string, usage: string): NodeJS.ProcessEnv {
  return {
    ...process.env,
    XDG_STATE_HOME: join(home, "state"),
    MULLSTONE_BENCH_USAGE: usage,
    TMPDIR: home,
  };
}

interface Written {
  readonly files: number;
  readonly mb: number;
}

function filesIn(dirs: readonly string[]): string[] {
  return dirs.flatMap((dir) =>
    readdirSync(dir, { recursive: true, encoding: "utf8" })
      .map((path) => join(dir, path))
      .filter((file) => statSync(file).isFile()),
  );
}

function written(dirs: readonly string[]): Written {
  const sizes = filesIn(dirs).map((file) => statSync(file).size);
  return { files: sizes.length, mb: sizes.reduce((sum, size) => sum + size, 0) / 2 ** 20 };
}

/** The writing alone: what is written has been read before. */
function bare(dirs: readonly string[], to: string): Usage {
  const contents = filesIn(dirs).map((file) => readFileSync(file));
  const [started, before] = [performance.now(), process.cpuUsage()];
  for (const [i, bytes] of contents.entries()) {
    const file = join(to, String(Math.floor(i / 100)), String(i));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes);
  }
  const { user, system } = process.cpuUsage(before);
  const wallS = (performance.now() - started) / 1000;
  rmSync(to, { recursive: true });
  return { wallS, cpuS: (user + system) / 1e6, largestMb: process.memoryUsage.rss() / 2 ** 20 };
}

function edit(file: string, from: string, to: string): void {
  const text = readFileSync(file, "utf8");
  if (!text.includes(from)) throw new Error(`Unexpected ${file}: it has no ${from}`);
  writeFileSync(file, text.replace(from, to));
}

/** Two notes, one after the other, by the clock; what the server took of the processor meanwhile is not told apart. */
async function savedToPage(home: string, record: string): Promise<readonly [Usage, Usage]> {
  const usage = join(home, "start.json");
  const server = spawn(
    process.execPath,
    ["--import", PRELOADED, BIN, "start", "--port", "0", "--claims", "warn"],
    { cwd: home, env: environment(home, usage), stdio: ["ignore", "pipe", "ignore"] },
  );
  const ended = new Promise((done) => server.once("exit", done));
  let said = "";
  server.stdout.on("data", (chunk: Buffer) => (said += chunk.toString()));
  const until = async <T>(found: () => Promise<T | undefined>): Promise<T> => {
    for (;;) {
      const one = await found();
      if (one !== undefined) return one;
      if (server.exitCode !== null) throw new Error(`Unexpected end of start\n${said}`);
      await pause(20);
    }
  };
  const address = await until(async () =>
    Promise.resolve(/^http:\/\/localhost:\d+\/$/m.exec(said)?.[0]),
  );
  const seen = async (note: string): Promise<number> => {
    writeFileSync(record, `${readFileSync(record, "utf8")}${note}\n`);
    const started = performance.now();
    await until(async () => {
      const page = await (await fetch(`${address}colours/burnt-sienna/`)).text();
      return page.includes(note) ? true : undefined;
    });
    return (performance.now() - started) / 1000;
  };
  const first = await seen("Seen at once.");
  // The rest of the site is made meanwhile.
  await pause(REST_MS);
  const next = await seen("Seen again.");
  server.kill("SIGTERM");
  await ended;
  const { largestMb } = toldIn(usage);
  return [
    { wallS: first, largestMb },
    { wallS: next, largestMb },
  ];
}
