import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { commandHere } from "../support/command-here.ts";
import { contentFolder } from "../support/content-folder.ts";
import { mullstone, type CommandRun } from "../support/mullstone.ts";
import { partOfDemonstration } from "./demonstration-part.ts";

const { home } = contentFolder(partOfDemonstration(["lead-white", "zinc-white"]));
const run = (...options: string[]): Promise<CommandRun> =>
  commandHere(["pictures", ...options], { cwd: home });
const file = (name: string): string => join(home, name);
const zipped = (name: string): Record<string, Uint8Array> => unzipSync(readFileSync(file(name)));
const text = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

let first: CommandRun;
beforeAll(async () => {
  first = await mullstone(["pictures"], { cwd: home });
});

test("a zip a colour and a comparison, each with its pictures in both formats and a text", async () => {
  expect(first.code).toBe(0);
  expect(first.output).toMatch(/3 zips, all of them new or changed, \d+\.\d s: pictures\n$/);
  expect(readdirSync(file("pictures"))).toEqual([
    "compare-lead-white-and-zinc-white.zip",
    "lead-white.zip",
    "pictures.json",
    "zinc-white.zip",
  ]);
  const { "README.txt": readme, ...pictures } = zipped("pictures/zinc-white.zip");
  expect(Object.keys(pictures)).toEqual(
    ["1200x630", "1080x1080", "1200x300"].flatMap((size) =>
      ["png", "avif"].map((type) => `zinc-white-${size}.${type}`),
    ),
  );
  for (const [name, bytes] of Object.entries(pictures)) {
    const { width, height, format } = await sharp(bytes).metadata();
    expect(`zinc-white-${width}x${height}.${format === "heif" ? "avif" : format}`).toBe(name);
  }
  expect(text(readme)).toMatch(/^Zinc White\nSaltreach Colourworks\n/);
  for (const said of ["everything here is invented", "no screen shows paint exactly", "PW 4"])
    expect(text(readme)).toContain(said);
});

test("hazard statements stand in full, with what may not be offered", () => {
  const readme = text(zipped("pictures/lead-white.zip")["README.txt"]);
  expect(readme).toMatch(/^Danger$/m);
  expect(readme).toMatch(/^H360\w* May damage/m);
  expect(readme).not.toMatch(/[€£]/);
});

/** A second folder, written and then changed by hand. */
describe("a folder of pictures", { shuffle: false }, () => {
  test("the same records give the same bytes, and nothing is written anew", async () => {
    const before = statSync(file("pictures/zinc-white.zip")).mtimeMs;
    const again = await run("--only", "zinc-white");
    expect(again.output).toMatch(/1 zip, none of them new or changed/);
    expect(statSync(file("pictures/zinc-white.zip")).mtimeMs).toBe(before);
    const elsewhere = await run("--only", "zinc-white", "--to", "other");
    expect(elsewhere.code).toBe(0);
    expect(readFileSync(file("other/zinc-white.zip"))).toEqual(
      readFileSync(file("pictures/zinc-white.zip")),
    );
  });

  test("what is not its own is left as it is", async () => {
    mkdirSync(file("mine"));
    writeFileSync(file("mine/letter.txt"), "Dear");
    const foreign = await run("--only", "zinc-white", "--to", "mine");
    expect([foreign.code, foreign.complaints.includes("mine: it holds files")]).toEqual([1, true]);
    expect(readdirSync(file("mine"))).toEqual(["letter.txt"]);

    writeFileSync(file("other/zinc-white.zip"), "changed by hand");
    const changed = await run("--only", "zinc-white,lead-white", "--to", "other");
    expect(changed.code).toBe(1);
    expect(changed.complaints).toContain("other/zinc-white.zip is not as it was written here");
    expect(readdirSync(file("other"))).toEqual(["pictures.json", "zinc-white.zip"]);

    const inside = await run("--only", "zinc-white", "--to", "content/pictures");
    expect([inside.code, inside.complaints.includes("content folder")]).toEqual([1, true]);
  });
});
