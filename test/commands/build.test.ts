import { spawn } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { CACHE_FOLDER } from "../../lib/kept/work-cache.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { BIN, mullstone, type CommandRun } from "../support/mullstone.ts";
import { partOfDemonstration } from "./demonstration-part.ts";
import { fileHashes } from "./file-hashes.ts";
import { assetFile } from "../support/asset-file.ts";

const lines = (text: string): string[] => text.split("\n").filter((line) => line !== "");

/** What lies in a folder but for what builds keep of their work. */
const beside = (home: string): string[] =>
  readdirSync(home)
    .filter((name) => name !== CACHE_FOLDER)
    .sort();

const smallest = contentFolder(SMALLEST_WORKSHOP);
let first: CommandRun;
beforeAll(async () => {
  first = await mullstone(["build", "--output", "site"], { cwd: smallest.home });
});

describe("a folder of one workshop, one pigment, one colour and one CSV", () => {
  const { home } = smallest;
  const build = (...options: string[]): Promise<CommandRun> =>
    commandHere(["build", "--output", "site", ...options], { cwd: home });
  const site = join(home, "site");

  test("builds, says so in one line, and leaves nothing beside the output", () => {
    expect([first.code, first.complaints]).toEqual([0, ""]);
    expect(first.output).toMatch(
      /^1 sheet, 0 warnings, \d+\.\d s: site; for the workshop alone: _workshop\n$/,
    );
    expect(beside(home)).toEqual(["_workshop", "content", "site"]);
  });

  test("has every file of the contract, and none of what later issues owe", () => {
    for (const file of [
      "index.html",
      "catalogue.json",
      "catalogue.csv",
      "manifest.json",
      "colours/lamp-black/index.html",
      "colours/lamp-black/sheet.json",
      "cards/index.html",
      "schema/sheet.schema.json",
      assetFile(site, "assets/styles/site.css") ?? "no style sheet",
    ]) {
      expect(existsSync(join(site, file)), file).toBe(true);
    }
    // No card states a colour whose pigment nobody has classified.
    for (const later of ["answers", "cards/cards.pdf"])
      expect(existsSync(join(site, later)), later).toBe(false);
  });

  test("works out the reading: a flat reflectance of .02 is L* 15.5, a neutral (CIE 15: 903.3 Y up to .008856, else 116 Y^1/3 - 16)", () => {
    const sheet = JSON.parse(readFileSync(join(site, "colours/lamp-black/sheet.json"), "utf8")) as {
      notations: { masstone: { lab: Record<string, { L: number; a: number; b: number }> } };
    };
    const expected = 116 * 0.02 ** (1 / 3) - 16;
    for (const [viewing, { L, a, b }] of Object.entries(sheet.notations.masstone.lab)) {
      expect(Math.abs(L - expected), viewing).toBeLessThan(0.001);
      expect(Math.hypot(a, b), viewing).toBeLessThan(0.001);
    }
  });

  test("then with a fault: one line, exit 1, and the earlier output untouched to the byte", async () => {
    const before = fileHashes(site);
    writeFileSync(
      join(home, "content/pigments/lamp-black.yaml"),
      "name: Lamp black\ndensityGPerCm3: heavy\n",
    );
    const { code, output, complaints } = await build();
    writeFileSync(
      join(home, "content/pigments/lamp-black.yaml"),
      SMALLEST_WORKSHOP["pigments/lamp-black.yaml"],
    );
    expect(code).toBe(1);
    expect(complaints).toBe(
      'content/pigments/lamp-black.yaml:2:17 error densityGPerCm3 can\'t be "heavy": it takes a number records/schema\n',
    );
    expect(output).toMatch(/^no sheets, 1 error, 0 warnings, \d+\.\d s: nothing was written\n$/);
    expect(fileHashes(site)).toEqual(before);
    expect(beside(home)).toEqual(["_workshop", "content", "site"]);
  });

  test("then with a record that nothing uses: a warning, which stops the build when asked to be strict", async () => {
    const before = fileHashes(site);
    const unused = join(home, "content/pigments/bone-black.yaml");
    writeFileSync(unused, "name: Bone black\n");
    const { code, complaints } = await build("--strict");
    rmSync(unused);
    expect([code, complaints]).toEqual([
      1,
      "content/pigments/bone-black.yaml:1:1 warning No record refers to bone-black, so nothing comes of it records/unused\n",
    ]);
    expect(fileHashes(site)).toEqual(before);
  });
});

test("a build killed half-way leaves the earlier output whole, and the next one builds", async () => {
  const { home } = contentFolder(SMALLEST_WORKSHOP);
  for (const name of ["site", "_workshop"])
    cpSync(join(smallest.home, name), join(home, name), { recursive: true });
  const site = join(home, "site");
  const build = (): Promise<CommandRun> =>
    commandHere(["build", "--output", "site"], { cwd: home });
  const before = fileHashes(site);
  writeFileSync(join(home, "content", "workshop.yaml"), "name: Renamed Workshop\n");
  const killed = spawn(process.execPath, [BIN, "build", "--output", "site"], {
    cwd: home,
    stdio: "ignore",
  });
  const ended = new Promise((done) => killed.once("exit", done));
  while (
    killed.exitCode === null &&
    !existsSync(join(home, "site.building", "site", "catalogue.json"))
  )
    await new Promise((later) => setTimeout(later, 5));
  killed.kill("SIGKILL");
  await ended;
  expect(killed.signalCode).toBe("SIGKILL");
  expect(beside(home)).toEqual([
    "_workshop",
    "_workshop.building",
    "_workshop.lock",
    "content",
    "site",
    "site.building",
    "site.lock",
  ]);
  expect(fileHashes(site)).toEqual(before);
  expect((await build()).code).toBe(0);
  expect(readFileSync(join(site, "index.html"), "utf8")).toContain("Renamed Workshop");
  expect(beside(home)).toEqual(["_workshop", "content", "site"]);
});

test("a build told to stop ends at once and leaves nothing beside the earlier output", async () => {
  const { home } = contentFolder(SMALLEST_WORKSHOP);
  const stopped = spawn(process.execPath, [BIN, "build", "--output", "site"], {
    cwd: home,
    stdio: "ignore",
  });
  const ended = new Promise((done) => stopped.once("exit", done));
  while (stopped.exitCode === null && !existsSync(join(home, "site.building", "site")))
    await new Promise((later) => setTimeout(later, 5));
  stopped.kill("SIGINT");
  expect(await ended).toBe(130);
  expect(beside(home)).toEqual(["content"]);
});

describe("an output folder that can't be", () => {
  const { home } = contentFolder(SMALLEST_WORKSHOP);
  const build = (output: string): Promise<CommandRun> =>
    commandHere(["build", "--output", output], { cwd: home });

  test("one that holds another's files is refused, and left as it is", async () => {
    mkdirSync(join(home, "letters"));
    writeFileSync(join(home, "letters", "dear.txt"), "dear");
    const before = fileHashes(home);
    const { code, complaints } = await build("letters");
    expect(code).toBe(1);
    expect(complaints).toBe(
      "The output folder letters is neither empty nor made by an earlier build, which would have left its manifest.json: nothing was written\n",
    );
    expect(fileHashes(home)).toEqual(before);
  });

  test("one below a file is refused in one line", async () => {
    writeFileSync(join(home, "file"), "");
    const before = fileHashes(home);
    const { code, complaints } = await build("file/site");
    expect(code).toBe(1);
    expect(lines(complaints)).toHaveLength(1);
    expect(complaints).toMatch(
      /^.*file\/site can't be written: part of its path is not a folder; the earlier output is untouched\n$/,
    );
    expect(fileHashes(home)).toEqual(before);
  });

  test("the content folder itself is refused", async () => {
    const { code, complaints } = await build("content");
    expect(code).toBe(1);
    expect(complaints).toMatch(
      /^The output folder .*content can't hold or lie in the content folder/,
    );
    expect(fileHashes(join(home, "content"))).toEqual(
      fileHashes(contentFolder(SMALLEST_WORKSHOP).content),
    );
  });
});

test("the same records give the same bytes: in another place, time zone and language, written in another order", async () => {
  const records = partOfDemonstration(["titanium-white", "zinc-white"]);
  const one = contentFolder(records);
  const other = contentFolder(Object.fromEntries(Object.entries(records).reverse()));
  const runs = [
    await commandHere(["build", "--output", "site"], { cwd: one.home }),
    await mullstone(
      ["build", "--content", other.content, "--output", join(other.home, "elsewhere", "site")],
      { env: { TZ: "America/St_Johns", LC_ALL: "sv_SE.UTF-8", LANG: "tr_TR.UTF-8" } },
    ),
  ];
  expect(runs.map(({ code }) => code)).toEqual([0, 0]);
  const hashes = fileHashes(join(one.home, "site"));
  expect(Object.keys(hashes)).toContain("colours/zinc-white/index.html");
  expect(fileHashes(join(other.home, "elsewhere", "site"))).toEqual(hashes);
});
