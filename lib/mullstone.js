#!/usr/bin/env node
// Node runs this file as it is; the program itself is TypeScript.
import { setFlagsFromString } from "node:v8";
import { program } from "./commands/program.js";

// Later versions were not measured.
if (process.versions.v8.startsWith("11.")) {
  // V8 of Node 20 makes fast code of all that ran for a moment (past 67584); most of what a build runs is over
  // before that pays, and a fifth of its processor's time went there.
  setFlagsFromString("--interrupt-budget=500000");
  // It lets a heap grow to four times what is alive before it sweeps, where the machine has room; sweeping
  // sooner cost no time that could be measured.
  setFlagsFromString("--heap-growing-percent=60");
  // A thread begins with 1 MB of room for what is new, sweeps it whenever that is full, and copies what is alive there:
  // of a build after a small edit a seventh of the processor's time went there. With all its room at once it sweeps a few times.
  setFlagsFromString("--min-semi-space-size=32");
}

// Whoever asks for the first lines alone, as `head` does, closes the pipe: what was begun is finished all the same.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (fault) => {
    if (fault.code !== "EPIPE") throw fault;
  });

const [command = ""] = process.argv.slice(2);
// Each command calls other functions.
const { runCommand, keepCode } = await program(/^[a-z]+$/.exec(command)?.[0] ?? "command");
const code = await runCommand(process.argv.slice(2));
if (code === 0) keepCode?.();
// All is said first; a thread that has ended would hold the process by its port now and then, as seen of Node 22.
for (const stream of [process.stdout, process.stderr])
  await new Promise((done) => stream.write("", done));
process.exit(code);
