#!/usr/bin/env node
// Node runs this file as it is; the program itself is TypeScript.
import { program } from "./commands/program.js";

const { runCommand } = await program();
process.exitCode = await runCommand(process.argv.slice(2));
