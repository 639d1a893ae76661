import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { defineConfig } from "vitest/config";
import { scriptOf, translatedModules } from "./test/support/translated-modules.ts";

/** Where all modules lie translated, for the runs of `npm test` or for this one; vitest that stays open translates what is asked for. */
const translated =
  process.env["MULLSTONE_TRANSLATED"] ??
  (process.argv[2] === "run" ? await translatedModules(import.meta.dirname) : undefined);
// Workers run programs of the project by it.
if (translated !== undefined) process.env["MULLSTONE_TRANSLATED"] = translated;
const placed = (file: string): string =>
  translated === undefined ? file : `${translated}/${scriptOf(file)}`;

const WHOLE_SITE = ["test/contract/**/*.test.ts", "test/site/**/*.test.ts"].map(placed);
const SCRATCH = placed("test/support/scratch-folder.ts");

/** Of the units those that run commands, or the others; all where nothing is said. */
const part = process.env["MULLSTONE_TESTS"];
/** Where units are parted, those that work the demonstration out go with the site: one worker works it out for both. */
const demonstration =
  part === undefined
    ? []
    : testsThatImport(/support\/demonstration|demonstration-(?:sheets|cards|prints|range|errors)/);

/** Rooms whose tests mostly run commands, and builds with them; and what runs one in another room: one thread builds for all. */
const COMMANDS = [
  ...["commands", "package", "edits", "publish"].map((room) => placed(`test/${room}/**/*.test.ts`)),
  ...(part === undefined ? [] : testsThatImport(/support\/command-here/)),
];

const SHARED = {
  // Modules are pure, so that files of one worker may share them: imports were half of the time.
  isolate: false,
  // What is translated already, Node loads by itself: in half of the time, and a binding is then no call.
  experimental: { viteModuleRunner: translated === undefined, nodeLoader: false },
  // What tests make lives for a moment each: in more room of its own little is swept before it ends.
  execArgv: ["--max-semi-space-size=64"],
  env: { TZ: "UTC", LC_ALL: "C" },
  // A failure's line says what was found, and not of how many parts it is.
  chaiConfig: { truncateThreshold: 300 },
  // Against a hang alone: a busy machine may take minutes over what takes seconds on a quiet one.
  testTimeout: 600_000,
  hookTimeout: 600_000,
};

/** Only a run with a test of the whole site builds the demonstration, and starts a browser, once each. */
export default defineConfig({
  test: {
    // Of two cores vitest would leave one idle.
    maxWorkers: "100%",
    teardownTimeout: 600_000,
    projects: [
      {
        test: {
          ...SHARED,
          name: "units",
          include: part === "of commands" ? COMMANDS : [placed("test/**/*.test.ts")],
          exclude: [...WHOLE_SITE, ...demonstration, ...(part === "of all else" ? COMMANDS : [])],
          globalSetup: [SCRATCH],
        },
      },
      {
        test: {
          ...SHARED,
          name: "site",
          include: [...WHOLE_SITE, ...demonstration],
          globalSetup: [SCRATCH, placed("test/support/demonstration-site.ts")],
        },
      },
    ],
  },
});

/** Test files that import a module of the tests' own, by its path without its ending. */
function testsThatImport(module: RegExp): string[] {
  const imported = new RegExp(`from "[^"]*/(?:${module.source})\\.ts"`);
  return readdirSync("test", { recursive: true, encoding: "utf8" })
    .map((name) => join("test", name).replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".test.ts") && imported.test(readFileSync(file, "utf8")))
    .sort()
    .map(placed);
}
