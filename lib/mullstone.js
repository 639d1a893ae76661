#!/usr/bin/env node
// Node runs this file as it is; the program itself is TypeScript.
import { program } from "./commands/program.js";

const { runCommand } = await program();
const code = await runCommand(process.argv.slice(2));
// All is said first; a thread that has ended would hold the process by its port now and then, as seen of Node 22.
for (const stream of [process.stdout, process.stderr])
  await new Promise((done) => stream.write("", done));
process.exit(code);
