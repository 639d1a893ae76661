import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, join } from "node:path";
import { afterEach, beforeAll, beforeEach, describe, expect, inject, test } from "vitest";
import { particleModel, type ParticleModel } from "../../lib/optics/theory/particle-model.ts";
import { CACHE_FOLDER, workCacheOf, type KeptFolder } from "../../lib/kept/work-cache.ts";
import { theoryFigure } from "../../lib/site/theory-cache.ts";

const model = (
  slug: string,
  colourIndexName: string,
  sizeUm: number,
  isClear: boolean,
): ParticleModel => {
  const made = particleModel({
    slug,
    name: slug,
    colourIndexName,
    sizeUm,
    refractiveIndex: undefined,
    isClear,
  });
  if ("rule" in made) throw new Error(made.rule);
  return made;
};
const RUTILE = model("rutile", "PW 6", 0.23, true);
const MODELS = { whites: [RUTILE], blacks: [model("lamp-black", "PBk 6", 0.09, false)] };

/** As worked out, and as kept: to begin with what is kept costs no second working out. */
let fresh: ReturnType<typeof theoryFigure>;
const kept = new Map<string, string>();
beforeAll(() => {
  const own = workCacheOf(join(mkdtempSync(join(inject("scratch"), "theory-")), "content"));
  fresh = theoryFigure(MODELS, undefined);
  expect(theoryFigure(MODELS, own)).toEqual(fresh);
  for (const name of readdirSync(own.folder))
    kept.set(name, readFileSync(join(own.folder, name), "utf8"));
});

/** Put what is kept into the folder of a test. */
function begin(): void {
  mkdirSync(folder);
  for (const [name, text] of kept) writeFileSync(join(folder, name), text);
}

let scratch = "";
let folder = "";
let cache: KeptFolder = { folder: "", keeps: true };
beforeEach(() => {
  scratch = mkdtempSync(join(inject("scratch"), "theory-"));
  cache = workCacheOf(join(scratch, "content"));
  ({ folder } = cache);
});
afterEach(() => rmSync(scratch, { recursive: true, force: true }));

function files(): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort();
}

describe("a first-principles figure from the cache", () => {
  test("lies beside the content folder, out of version control, a file a pigment", () => {
    expect(basename(folder)).toBe(CACHE_FOLDER);
    theoryFigure(MODELS, cache);
    expect(readFileSync(join(folder, ".gitignore"), "utf8")).toBe("*\n");
    expect(files().map((name) => name.replace(/\.[0-9a-f]{16}\.json$/, ""))).toEqual([
      "theory-black-lamp-black",
      "theory-white-rutile",
    ]);
  });

  test("is the one that was worked out, to the last digit, and is read and not made again", () => {
    begin();
    const made = files().map((name) => statSync(join(folder, name)).mtimeMs);
    const again = theoryFigure(MODELS, cache);
    expect(JSON.stringify(again)).toBe(JSON.stringify(fresh));
    expect(files().map((name) => statSync(join(folder, name)).mtimeMs)).toEqual(made);
  });

  test.each([
    ["half a file", (text: string) => text.slice(0, text.length / 2)],
    ["no JSON", () => "nothing of the kind"],
    ["null", () => "null"],
    [
      "another value under the same name",
      (text: string) => text.replace(/"low":(-?[\d.]+)/, '"low":9'),
    ],
    ["another seal", (text: string) => text.replace(/"seal":"./, '"seal":"x')],
    ["other inputs", (text: string) => text.replace(/"inputs":"./, '"inputs":"x')],
  ])("a file that holds %s is not used, and is written anew", (_, spoil) => {
    begin();
    const sound = files().map((name) => readFileSync(join(folder, name), "utf8"));
    for (const name of files())
      writeFileSync(join(folder, name), spoil(readFileSync(join(folder, name), "utf8")));
    expect(theoryFigure(MODELS, cache)).toEqual(fresh);
    expect(files().map((name) => readFileSync(join(folder, name), "utf8"))).toEqual(sound);
  });

  test("follows its inputs: another grain is another file, and the old one goes, and no other's", () => {
    begin();
    const [black, white] = files();
    writeFileSync(
      join(folder, "theory-black-lamp-black-milled.0123456789abcdef.json"),
      "of another pigment",
    );
    writeFileSync(join(folder, "notes.txt"), "somebody's");
    const after = theoryFigure(
      { ...MODELS, blacks: [model("lamp-black", "PBk 6", 0.03, false)] },
      cache,
    );
    expect(after.blacks).not.toEqual(fresh.blacks);
    expect(after.whites).toEqual(fresh.whites);
    expect(files()).not.toContain(black);
    expect(files()).toContain(white);
    expect(
      existsSync(join(folder, "theory-black-lamp-black-milled.0123456789abcdef.json")) &&
        existsSync(join(folder, "notes.txt")),
    ).toBe(true);
    // A black rests on its whites too.
    const other = theoryFigure({ ...MODELS, whites: [model("rutile", "PW 6", 0.3, true)] }, cache);
    expect(other.blacks).not.toEqual(fresh.blacks);
  });

  test("is read and not kept by a command that writes nothing", () => {
    expect(theoryFigure(MODELS, { ...cache, keeps: false })).toEqual(fresh);
    expect(existsSync(folder)).toBe(false);
  });

  test("does without a folder that cannot be", () => {
    writeFileSync(folder, "a file where the folder would be");
    expect(theoryFigure(MODELS, cache)).toEqual(fresh);
    expect(readFileSync(folder, "utf8")).toBe("a file where the folder would be");
  });

  test("says nothing of blacks where there is no white to let them down in", () => {
    expect(theoryFigure({ ...MODELS, whites: [] }, undefined)).toEqual({ whites: [], blacks: [] });
  });
});
