import { execFile } from "node:child_process";
import { join } from "node:path";

const PACKAGE_ROOT = join(import.meta.dirname, "../..");
export const BIN = join(PACKAGE_ROOT, "lib", "mullstone.js");

export interface CommandRun {
  readonly code: number;
  /** What went to standard output, and to standard error. */
  readonly output: string;
  readonly complaints: string;
}

export interface CommandPlace {
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** The command of another copy of the package. */
  readonly bin?: string;
}

/** Run one command line to its end, as a workshop would: a process of its own. Of a build that names an output alone the workshop's pages go beside it. */
export async function mullstone(
  args: readonly string[],
  { cwd = PACKAGE_ROOT, env = {}, bin = BIN }: CommandPlace = {},
): Promise<CommandRun> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      [bin, ...withWorkshop(args, cwd)],
      { cwd, env: { ...process.env, ...env }, maxBuffer: 64 * 1024 * 1024 },
      (error, output, complaints) => {
        done({
          code: error === null ? 0 : typeof error.code === "number" ? error.code : 1,
          output,
          complaints,
        });
      },
    );
  });
}

/** Builds with the package as their folder would all claim one folder for the workshop's pages. */
function withWorkshop(args: readonly string[], cwd: string): readonly string[] {
  const output = args[args.indexOf("--output") + 1];
  return args[0] === "build" &&
    cwd === PACKAGE_ROOT &&
    args.includes("--output") &&
    !args.includes("--workshop")
    ? [...args, "--workshop", `${output}-workshop`]
    : args;
}
