import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { runCommand } from "../../lib/commands/command-line.ts";
import { keptByNpm } from "../../lib/commands/given-options.ts";
import { commandHere } from "../support/command-here.ts";
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
      "There is no command biuld: it is start, build, check, cards, labels, pictures, next, publish, pack, unpack, migrate, read or new; nearest: build\n",
    ],
    [
      ["upload"],
      "There is no command upload: it is start, build, check, cards, labels, pictures, next, publish, pack, unpack, migrate, read or new\n",
    ],
    [["build", "--date", "2026-02-30"], "--date can't be 2026-02-30: it takes a day, YYYY-MM-DD\n"],
    [["build", "--date", "30.6.2026"], "--date can't be 30.6.2026: it takes a day, YYYY-MM-DD\n"],
    [["check", "--date", ""], "--date can't be : it takes a day, YYYY-MM-DD\n"],
    [["check", "--claims", "worn"], "--claims can't be worn: it takes error or warn\n"],
    [["start", "--port", "65536"], "--port can't be 65536: it takes 0 to 65535\n"],
    [["start", "--port", "8e3"], "--port can't be 8e3: it takes 0 to 65535\n"],
    [["labels", "--copies", "501"], "--copies can't be 501: it takes 1 to 500\n"],
    [
      ["publish", "--to", "site", "--confirm", "removals,all"],
      "--confirm can't be removals,all: it takes removals, cautions or both, commas between\n",
    ],
    [
      ["build", "--base", "../colours"],
      "--base can't be ../colours: it takes a folder such as /colours/\n",
    ],
    [
      ["labels", "--filled"],
      "--filled needs --lot: it takes as many labels as that lot filled tubes\n",
    ],
    [
      ["labels", "--filled", "--lot", "LB-1", "--copies", "2"],
      "--filled says how many of each, and so does --copies: give one of them\n",
    ],
    [["start", "--port", "http"], "--port can't be http: it takes 0 to 65535\n"],
    [["build", "--only", "x"], "build has no --only: it belongs to cards, labels, pictures\n"],
    [["cards", "--port", "80"], "cards has no --port: it belongs to start\n"],
    [["new", "colour", "Soot", "--json"], "new has no --json: it belongs to check\n"],
    [["build", "--contents", "x"], "There is no option --contents; nearest: --content\n"],
    [["build", "-q"], "There is no option -q\n"],
    [["build", "--content"], "--content takes a value, and none was given\n"],
    [["build", "--content", "--strict"], "--content takes a value, and none was given\n"],
    [["build", "--strict=yes"], "--strict takes no value, and yes was given\n"],
    [
      ["check", "../records"],
      "check takes no ../records; options of a script stand behind --: npm run check -- --content ../records\n",
    ],
    [["unpack", "none.tgz"], "none.tgz can't be read, since nothing is there\n"],
    [
      ["new"],
      'A new record is written by: mullstone new colour "Name"; kinds are workshop, pigment, vehicle, colour, answer, source, lot, trial\n',
    ],
    [["new", "pigment"], 'A new pigment is written by: mullstone new pigment "Name"\n'],
    [
      ["new", "colour", "Lamp", "Black"],
      'A new colour is written by: mullstone new colour "Name"\n',
    ],
    [
      ["new", "colour", "!?"],
      'The name "!?" has no letters or digits, and no file can be called so\n',
    ],
  ])("%j", async (args, told) => {
    expect(await runCommand(args)).toBe(1);
    expect(written.join("")).toBe(told);
  });
});

describe("an option that npm kept for itself, since no -- stood before it, is told", () => {
  const ran = (env: Readonly<Record<string, string>>) => ({ npm_lifecycle_event: "check", ...env });

  test.each([
    [
      "with the word that stood behind it",
      ["../records"],
      ran({ npm_config_content: "true" }),
      "check takes no ../records; options of a script stand behind --: npm run check -- --content ../records",
    ],
    [
      "by itself",
      [],
      ran({ npm_config_strict: "true" }),
      "npm kept --strict for itself; options of a script stand behind --: npm run check -- --strict",
    ],
    ["not where it arrived", [], ran({ npm_config_claims: "warn" }), undefined],
    ["not where npm has one of the same name", [], ran({ npm_config_json: "true" }), undefined],
    [
      "not of another script",
      [],
      { npm_lifecycle_event: "test", npm_config_strict: "true" },
      undefined,
    ],
  ])("%s", (_, words, env, told) => {
    expect(keptByNpm("check", words, ["claims"], env)).toBe(told);
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
    "new KIND",
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
    "workshop.yaml":
      "name: Test Workshop\nvehicle: linseed\naddress: The Test Loft\ntelephone: 020 7946 0000\n",
    "pigments/lamp-black.yaml": "name: Lamp black\nhazards: []\n",
    "pigments/bone-black.yaml": "name: Bone black\nhazards: []\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
  });
  const plain = await mullstone(["check"], { cwd: home });
  const strict = await commandHere(["check", "--strict"], { cwd: home });
  expect([plain.code, strict.code]).toEqual([0, 1]);
  expect(plain.output).toMatch(/^1 colour, 1 warning, \d+\.\d s\n$/);
  expect(plain.complaints).toBe(
    "content/pigments/bone-black.yaml:1:1 warning No record refers to bone-black, so nothing comes of it records/unused\n",
  );
});

test("check --json prints every diagnostic as data, warnings before errors, and nothing else", async () => {
  const { home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "pigments/lamp-black.yaml": "name: Lamp black\ndensityGPerCm3: 1800\n",
    "readings/spare.txt.md": "",
    "pigments/notes.doc": "",
  });
  const { code, output, complaints } = await commandHere(["check", "--json"], { cwd: home });
  expect([code, complaints]).toEqual([1, ""]);
  const told = JSON.parse(output) as readonly { severity: string; place: { line: number } }[];
  expect(told.map(({ severity }) => severity)).toEqual(["warning", "warning", "error"]);
  expect(told.at(-1)).toMatchObject({
    rule: "formulation/density-reach",
    place: { file: "content/pigments/lamp-black.yaml", line: 2, column: 17 },
    actual: "1800",
    expected: "0.9 to 20 g/cm3",
    hint: "1.8 g/cm3 if it was given in kg/m3",
  });
});
