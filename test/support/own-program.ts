import { join, relative } from "node:path";
import { scriptOf } from "./translated-modules.ts";

const ROOT = join(import.meta.dirname, "../..");

/** What node takes to run a module of the project as a program: as translated for the run of all tests, else by tsx. */
export function ownProgram(module: string): string[] {
  const translated = process.env["MULLSTONE_TRANSLATED"];
  return translated === undefined
    ? ["--import", "tsx", module]
    : [join(ROOT, translated, scriptOf(relative(ROOT, module)))];
}
