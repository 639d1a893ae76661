#!/usr/bin/env node
// Node runs this file as it is. It runs the program's TypeScript out of a bundle, or where none can be kept by tsx.
import { bundledProgram } from "./commands/bundled-program.js";

const { runCommand } = (await bundledProgram()) ?? (await fromSource());
process.exitCode = await runCommand(process.argv.slice(2));

async function fromSource() {
  const { register } = await import("tsx/esm/api");
  register();
  return import("./commands/command-line.ts");
}
