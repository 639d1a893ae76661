import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { runCommand } from "../../lib/commands/command-line.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { mullstone } from "../support/mullstone.ts";

describe("a command line that is not understood is told in one line", () => {
  const written: string[] = [];
  beforeEach(() => {
    written.length = 0;
    vi.spyOn(process.stderr, "write").mockImplementation((text) => written.push(String(text)) > 0);
  });
  afterEach(() => {
    vi.restoreAllMocks();
  });

  test.each<[readonly string[], string]>([
    [
      ["biuld"],
      "The command is biuld; right would be start | build | check | cards | new; nearest: build\n",
    ],
    [["publish"], "The command is publish; right would be start | build | check | cards | new\n"],
    [["build", "--date", "2026-02-30"], "The --date is 2026-02-30; right would be YYYY-MM-DD\n"],
    [["build", "--date", "30.6.2026"], "The --date is 30.6.2026; right would be YYYY-MM-DD\n"],
    [["check", "--date", ""], "The --date is ; right would be YYYY-MM-DD\n"],
    [["check", "--claims", "worn"], "The --claims is worn; right would be error | warn\n"],
    [["start", "--port", "65536"], "The --port is 65536; right would be 0-65535\n"],
    [["start", "--port", "http"], "The --port is http; right would be 0-65535\n"],
    [["build", "--contents", "x"], "Unknown option '--contents'\n"],
    [["new"], 'A new colour is written by: mullstone new colour "Name"\n'],
    [["new", "pigment", "Soot"], 'A new colour is written by: mullstone new colour "Name"\n'],
    [
      ["new", "colour", "Lamp", "Black"],
      'A new colour is written by: mullstone new colour "Name"\n',
    ],
    [["new", "colour", "!?"], "The name is !?; right would be a name with letters or digits\n"],
  ])("%j", async (args, told) => {
    expect(await runCommand(args)).toBe(1);
    expect(written.join("")).toBe(told);
  });
});

test("as a process it exits 1 for an unknown command, and 0 for help, which names every command", async () => {
  const [unknown, help] = await Promise.all([mullstone(["biuld"]), mullstone(["--help"])]);
  expect([unknown.code, unknown.output]).toEqual([1, ""]);
  expect(help.code).toBe(0);
  for (const word of [
    "start",
    "build",
    "check",
    "new colour",
    "--content",
    "--output",
    "--date",
    "--claims",
    "--uses",
  ])
    expect(help.output).toContain(word);
});

test("check counts, writes nothing and exits 0 when only warned, 1 when strict", async () => {
  const { home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": "name: Test Workshop\nvehicle: linseed\n",
    "pigments/lamp-black.yaml": "name: Lamp black\nhazards: []\n",
    "pigments/bone-black.yaml": "name: Bone black\nhazards: []\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
  });
  const [plain, strict] = await Promise.all([
    mullstone(["check"], { cwd: home }),
    mullstone(["check", "--strict"], { cwd: home }),
  ]);
  expect([plain.code, strict.code]).toEqual([0, 1]);
  expect(plain.output).toMatch(/^1 colour, 1 warning, \d+\.\d s\n$/);
  expect(plain.complaints).toBe(
    "content/pigments/bone-black.yaml:1:1 warning No record refers to bone-black, so nothing comes of it records/unused\n",
  );
});
