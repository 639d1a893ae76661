#!/usr/bin/env node
// Node runs this file as it is; from here on tsx lets it run the TypeScript of lib/ without a build step.
import { register } from "tsx/esm/api";

register();
const { runCommand } = await import("./commands/command-line.ts");
process.exitCode = await runCommand(process.argv.slice(2));
