/**
 * `npm run nodes [-- VERSION ...]`: what npm packs, run by other versions of Node (the least that
 * package.json names, 22 and 24 unless said), each taken from npm's package of its binary. Four
 * colours are checked, built, printed as cards and labels, and served, asked for a page and told to stop.
 * Prints a line a version; exit code 1 where a command failed or wrote other bytes.
 */
import { execFileSync, spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileHashes } from "../commands/file-hashes.ts";
import { fourColourWorkshop } from "../commands/demonstration-part.ts";
import { installed, packed, ROOT } from "../support/installed-package.ts";
import { runFolder } from "../support/run-folder.ts";

const { engines } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
  readonly engines: { readonly node: string };
};
const asked = process.argv.slice(2);
const versions = asked.length > 0 ? asked : [`${engines.node.replace(">=", "")}.0`, "22", "24"];
/** The output names the version of Node that drew its papers. */
const OF_THE_VERSION = /manifest\.json$/;

/** Of a server that is told to stop, on a busy machine. */
const ENDS_WITHIN_MS = 60_000;

const { folder: home, remove } = runFolder("nodes");

/** The binary of a version, of this system and machine. */
function nodeOf(version: string): string {
  const prefix = join(home, `node-${version}`);
  const system = process.platform === "win32" ? "win" : process.platform;
  const name = `node-${system}-${process.arch}`;
  mkdirSync(prefix);
  execFileSync(
    "npm",
    [
      "install",
      "--prefix",
      prefix,
      "--no-save",
      "--no-audit",
      "--ignore-scripts",
      `${name}@${version}`,
    ],
    { stdio: "ignore" },
  );
  return join(prefix, "node_modules", name, "bin", "node");
}

function writeRecords(): void {
  for (const [path, text] of Object.entries(fourColourWorkshop())) {
    const file = join(home, "workshop/content", path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
}

/** Start the server, ask it for a page, and stop it. @returns status and whether the page is one */
async function served(node: string, bin: string, cwd: string): Promise<string> {
  const server = spawn(node, [bin, "start"], {
    cwd,
    stdio: ["ignore", "pipe", "ignore"],
  });
  try {
    let said = "";
    server.stdout.on("data", (chunk: Buffer) => (said += chunk.toString()));
    for (let tries = 0; !said.includes("http://") && tries < 600; tries++) await pause(100);
    const address = /http\S+/.exec(said)?.[0];
    if (address === undefined) return "start said no address";
    const answer = await fetch(new URL("colours/lamp-black/", address));
    const page = await answer.text();
    if (answer.status !== 200 || !page.includes("<h1")) return `start answered ${answer.status}`;
    const ended = new Promise<boolean>((done) => server.once("exit", () => done(true)));
    server.kill("SIGTERM");
    return (await Promise.race([ended, pause(ENDS_WITHIN_MS, false)])) ? "" : "start does not end";
  } finally {
    server.kill("SIGKILL");
  }
}

const COMMANDS = [
  ["check"],
  ["build", "--output", "site", "--workshop", "bench"],
  ["cards", "--output", "cards.pdf", "--incomplete"],
  ["labels", "--output", "labels.pdf"],
] as const;

const faults: string[] = [];
let first: Readonly<Record<string, string>> | undefined;
try {
  const tarball = packed(home);
  writeRecords();
  for (const version of versions) {
    const node = nodeOf(version);
    const place = join(home, `installed-${version}`);
    mkdirSync(place);
    const { bin } = installed(tarball, place);
    const cwd = join(home, "workshop");
    const started = performance.now();
    for (const command of COMMANDS) {
      try {
        execFileSync(node, [bin, ...command], { cwd, stdio: "pipe" });
      } catch (error) {
        faults.push(
          `${version}: ${command[0]} fails: ${String((error as { stderr?: unknown }).stderr)}`,
        );
      }
    }
    const refused = await served(node, bin, cwd);
    if (refused !== "") faults.push(`${version}: ${refused}`);
    const ms = performance.now() - started;
    const written = Object.fromEntries(
      Object.entries(fileHashes(cwd)).filter(
        ([path]) =>
          !path.startsWith("content/") && !path.startsWith(".") && !OF_THE_VERSION.test(path),
      ),
    );
    first ??= written;
    const other = [...new Set([...Object.keys(first), ...Object.keys(written)])].filter(
      (path) => first?.[path] !== written[path],
    );
    if (other.length > 0) faults.push(`${version}: other bytes in ${other.slice(0, 5).join(", ")}`);
    const name = execFileSync(node, ["--version"], { encoding: "utf8" }).trim();
    process.stdout.write(
      `Node ${name}: ${COMMANDS.map(([command]) => command).join(", ")} and start in ${(ms / 1000).toFixed(0)} s, ${Object.keys(written).length} files, ${other.length} other than of the first\n`,
    );
    // What the cards said, kept beside the records, is something that the next version would read.
    for (const result of ["site", "bench", "cards.pdf", "labels.pdf", "content/printed-cards.json"])
      rmSync(join(cwd, result), { recursive: true, force: true });
  }
} finally {
  remove();
}
for (const fault of faults) process.stdout.write(`${fault}\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
