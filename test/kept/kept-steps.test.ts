import {
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, inject, test } from "vitest";
import { followed, followedWhenAsked } from "../../lib/kept/followed.ts";
import { keptSteps, type KeptSteps, type Step } from "../../lib/kept/kept-steps.ts";
import { partTimes } from "../../lib/kept/part-times.ts";
import { readBy, type ReadNames } from "../../lib/kept/reads.ts";
import type { WorkCache } from "../../lib/kept/work-cache.ts";

type Colours = ReadonlyMap<string, Readonly<Record<"name" | "oil", string>>>;

const STEP: Step = { modules: ["lib/a.ts"], name: "a step" };

let cache: WorkCache;
beforeEach(() => {
  const folder = join(mkdtempSync(join(inject("scratch"), "steps-")), "cache");
  cache = { folder, keeps: true, programPart: (module) => `of ${module}` };
});

interface Run {
  readonly steps: KeptSteps;
  readonly colours: Colours;
  /** Parts whose hash had to be found anew. */
  readonly looked: string[];
}

/** One run of a program over some colours. @param identities of colours, where they are known sooner than their parts. */
function run(members: Colours, identities: ReadonlyMap<string, string> = new Map()): Run {
  const looked: string[] = [];
  const { value: colours, part } = followed(members, { each: { keys: {} } }, "colours");
  const times = partTimes(cache, "test", {
    part: (name) => {
      looked.push(name);
      return part(name);
    },
    identity: (owner) => identities.get(owner),
  });
  return { steps: keptSteps(cache, "alike", times, ["colours"]), colours, looked };
}

const colour = (slug: string, oil = "60"): [string, Readonly<Record<"name" | "oil", string>>] => [
  slug,
  { name: slug, oil },
];
const BLACKS = new Map([colour("bone"), colour("lamp")]);

/** Whether a step that reads so had to be taken. */
function isTaken({ steps, colours }: Run, reads: (from: Colours) => unknown): boolean {
  let isTaken = false;
  steps.made(STEP, () => {
    isTaken = true;
    return reads(colours);
  });
  steps.keepBooks();
  return isTaken;
}

describe("a step that read one colour's oil", () => {
  const oil = (from: Colours): unknown => from.get("bone")?.oil;

  test.each<[string, Colours, boolean]>([
    ["stands while nothing has changed", BLACKS, false],
    [
      "stands when that colour's name has changed",
      new Map([["bone", { name: "Bone", oil: "60" }], colour("lamp")]),
      false,
    ],
    [
      "stands when another colour has changed, gone or come",
      new Map([colour("bone"), colour("soot", "80")]),
      false,
    ],
    [
      "is taken again when the oil has changed",
      new Map([colour("bone", "61"), colour("lamp")]),
      true,
    ],
    ["is taken again when the colour has gone", new Map([colour("lamp")]), true],
  ])("%s", (_, after, expected) => {
    expect(isTaken(run(BLACKS), oil)).toBe(true);
    expect(isTaken(run(after), oil)).toBe(expected);
  });

  test("is known by what the colour is, without a look at its parts", () => {
    const known = new Map([["colours/bone", "first"]]);
    isTaken(run(BLACKS, known), oil);
    const again = run(BLACKS, known);
    expect(isTaken(again, oil)).toBe(false);
    expect(again.looked).toEqual([]);
  });

  test("is known so again once the colour was another thing and the oil was not", () => {
    isTaken(run(BLACKS, new Map([["colours/bone", "first"]])), oil);
    const moved = new Map([["colours/bone", "second"]]);
    const seen = run(BLACKS, moved);
    expect(isTaken(seen, oil)).toBe(false);
    expect(seen.looked).toEqual(["colours/bone/?", "colours/bone/oil"]);
    const again = run(BLACKS, moved);
    expect(isTaken(again, oil)).toBe(false);
    expect(again.looked).toEqual([]);
  });
});

describe("a step that read a part of many colours", () => {
  const many = (oilOfLast = "60"): Colours =>
    new Map([...Array.from({ length: 20 }, (_, i) => colour(`c${i}`)), colour("last", oilOfLast)]);
  const identities = (of: Colours): ReadonlyMap<string, string> =>
    new Map([...of].map(([slug, { name, oil }]) => [`colours/${slug}`, `${name} ${oil}`]));
  const oils = (from: Colours): unknown => [...from.values()].map(({ oil }) => oil);
  const names = (from: Colours): unknown => [...from.values()].map(({ name }) => name);

  test("looks at none but the one that has changed", () => {
    const first = run(many(), identities(many()));
    isTaken(first, names);
    const edited = many("61");
    const second = run(edited, identities(edited));
    expect(isTaken(second, names)).toBe(false);
    expect(second.looked.filter((name) => /^colours\/c\d/.test(name))).toEqual([]);
    expect(second.looked).toContain("colours/last/name");
  });

  test("is taken again when that part of any of them has changed, or one has come or gone", () => {
    const one = (after: Colours): boolean => isTaken(run(after, identities(after)), oils);
    expect(one(many())).toBe(true);
    expect(one(many())).toBe(false);
    expect(one(many("61"))).toBe(true);
    expect(one(new Map([...many("61"), colour("new")]))).toBe(true);
    expect(one(many("61"))).toBe(true);
  });
});

test("a step that read many members whole is taken again when one of them has changed", () => {
  const many = (last: string): ReadonlyMap<string, object> =>
    new Map([
      ...Array.from({ length: 20 }, (_, i) => [`c${i}`, { text: "one" }] as const),
      ["last", { text: last }] as const,
    ]);
  const count = (members: ReadonlyMap<string, object>): number => {
    let taken = 0;
    const { value, part } = followed(members, { each: "whole" }, "sources");
    const times = partTimes(cache, "test", { part, identity: () => undefined });
    const steps = keptSteps(cache, "alike", times, ["sources"]);
    steps.made(STEP, () => {
      taken++;
      return [...value.values()].length;
    });
    steps.keepBooks();
    return taken;
  };
  expect([count(many("one")), count(many("one")), count(many("two"))]).toEqual([1, 0, 1]);
});

test("a step of which nothing was noted is taken each time, by itself or of a thing, since nothing would ever tell that it is stale", () => {
  const count = (step: Step): boolean[] =>
    ["first", "second"].map((value) => {
      const { steps } = run(BLACKS);
      const made = steps.made(step, () => value);
      steps.keepBooks();
      return made === value;
    });
  expect(count(STEP)).toEqual([true, true]);
  expect(count({ ...STEP, name: "of colours", of: "bone" })).toEqual([true, true]);
});

test.each([
  ["by itself", STEP],
  ["of a thing", { ...STEP, name: "of colours", of: "bone" }],
])(
  "a large value that was kept %s is read when it is asked for, and is not there once what it read is another",
  (_, step: Step) => {
    const { steps, colours } = run(BLACKS);
    const { names } = readBy(() => colours.get("bone")?.oil);
    steps.keep(step, names, "an identity", () => ({ large: true }), { name: "a name" });
    steps.keepBook(step);
    const found = run(BLACKS).steps.found(step);
    expect(found?.identity).toBe("an identity");
    expect(found?.sooner).toEqual({ name: "a name" });
    expect(found?.value()).toEqual({ large: true });
    expect(run(new Map([colour("bone", "61")])).steps.found(step)).toBeUndefined();
  },
);

test("what is known of a value sooner is read without loading it, and noted as all else that is read of it", () => {
  let loads = 0;
  const { value, part } = followedWhenAsked(
    () => {
      loads += 1;
      return { name: "Bone Black", oil: "60" };
    },
    {},
    "sheets/bone",
    {},
    { name: "Bone Black" },
  );
  const { names } = readBy(() => value.name);
  expect([[...names], part("sheets/bone/name"), loads]).toEqual([
    ["sheets/bone/name"],
    "Bone Black",
    0,
  ]);
  expect([value.oil, part("sheets/bone/oil"), loads]).toEqual(["60", "60", 2]);
});

describe("steps that are taken of many colours", () => {
  const of = ({ steps, colours }: Run, slugs: Iterable<string>): string[] => {
    const taken: string[] = [];
    for (const slug of slugs)
      steps.made({ ...STEP, of: slug }, () => {
        taken.push(slug);
        return colours.get(slug)?.oil;
      });
    steps.keepBooks();
    return taken;
  };
  const both = ["bone", "lamp"];

  test("are kept each by what it read, all in one file beside the two that tell since when parts are what they are", () => {
    expect(of(run(BLACKS), both)).toEqual(both);
    expect(of(run(BLACKS), both)).toEqual([]);
    expect(of(run(new Map([colour("bone", "61"), colour("lamp")])), both)).toEqual(["bone"]);
    expect(readdirSync(join(cache.folder, "results"))).toHaveLength(3);
  });

  test("are read by whoever asks for one of them, made or kept", () => {
    for (let times = 0; times < 2; times++) {
      const { steps, colours } = run(BLACKS);
      const { names } = readBy(() =>
        steps.made({ ...STEP, of: "bone" }, () => colours.get("bone")?.oil),
      );
      expect([...names].sort()).toEqual(["colours/bone/?", "colours/bone/oil"]);
      steps.keepBooks();
    }
  });

  test("are told by what they came out as, whatever they read", () => {
    const told = (members: Colours, reads: (from: Colours) => unknown) => {
      const { steps, colours } = run(members);
      let isMade = false;
      const { value, identity } = steps.told({ ...STEP, of: "bone" }, () => {
        isMade = true;
        return reads(colours);
      });
      steps.keepBooks();
      return { value, identity, isMade };
    };
    const isFat = (from: Colours): unknown => ({ isFat: Number(from.get("bone")?.oil) > 50 });
    const first = told(BLACKS, isFat);
    expect(first).toMatchObject({ value: { isFat: true }, isMade: true });
    expect(told(BLACKS, isFat)).toEqual({ ...first, isMade: false });
    const moved = new Map([colour("bone", "61"), colour("lamp")]);
    expect(told(moved, isFat)).toEqual(first);
    const lean = told(new Map([colour("bone", "40"), colour("lamp")]), isFat);
    expect(lean).toMatchObject({ value: { isFat: false }, isMade: true });
    expect(lean.identity).not.toBe(first.identity);
  });

  test("stay, though nobody asks for them, and are right as soon as all is again as they read it", () => {
    of(run(BLACKS), both);
    of(run(BLACKS), ["bone"]);
    expect(of(run(BLACKS), both)).toEqual([]);
    const edited = new Map([colour("bone"), colour("lamp", "61")]);
    of(run(edited), ["bone"]);
    expect(of(run(BLACKS), both)).toEqual([]);
    expect(of(run(edited), both)).toEqual(["lamp"]);
    expect(of(run(BLACKS), both)).toEqual(["lamp"]);
  });

  test("are written down again where one was taken, and not where a colour is another in what no step read", () => {
    const results = join(cache.folder, "results");
    const writtenBy = (members: Colours, taken: readonly string[]): number => {
      expect(of(run(members), both)).toEqual(taken);
      const files = readdirSync(results, { recursive: true, encoding: "utf8" })
        .map((name) => join(results, name))
        .filter((name) => statSync(name).isFile());
      const written = files.filter((file) => statSync(file).mtimeMs > EARLIER.getTime());
      for (const file of files) utimesSync(file, EARLIER, EARLIER);
      return written.length;
    };
    const EARLIER = new Date(Date.now() - 60_000);
    expect(writtenBy(BLACKS, both)).toBe(3);
    const renamed = new Map([["bone", { name: "Bone", oil: "60" }] as const, colour("lamp")]);
    // That the colour is another is written, and no step.
    expect(writtenBy(renamed, [])).toBe(1);
    expect(writtenBy(renamed, [])).toBe(0);
    const oilier = new Map([["bone", { name: "Bone", oil: "61" }] as const, colour("lamp")]);
    expect(writtenBy(oilier, ["bone"])).toBe(2);
    expect(of(run(oilier), both)).toEqual([]);
    expect(of(run(BLACKS), both)).toEqual(["bone"]);
  });
});

test("what steps read alike of one owner is held once", () => {
  const read = (): ReadNames => {
    const { steps, colours } = run(BLACKS);
    const { names } = readBy(() => {
      for (const of of ["one", "other"])
        steps.made({ ...STEP, of }, () => colours.get("bone")?.oil);
    });
    steps.keepBooks();
    return names;
  };
  read();
  expect([...read().owned].map(({ owner, parts }) => [owner, parts])).toEqual([
    ["", []],
    ["colours/bone", ["?", "oil"]],
  ]);
});

describe("a step that another build took at the same time", () => {
  const oilier = new Map([colour("bone", "61"), colour("lamp")]);
  const oilTold = ({ steps, colours }: Run): unknown =>
    steps.made(STEP, () => colours.get("bone")?.oil);

  test.each([
    ["is taken again where that one has kept later what it saw", true],
    ["and where that one was killed before it kept anything", false],
  ])("%s", (_, isKept) => {
    const before = run(BLACKS);
    oilTold(before);
    before.steps.keepBooks();
    const [one, other] = [run(BLACKS), run(oilier)];
    // Something is taken anew by each, so that both have something to keep.
    for (const { steps, colours } of [one, other])
      steps.made({ ...STEP, name: "lamps" }, () => colours.get("lamp")?.name);
    expect(oilTold(other)).toBe("61");
    if (isKept) other.steps.keepBooks();
    one.steps.keepBooks();
    expect(oilTold(run(BLACKS))).toBe("60");
  });

  test("is taken again where a kill left only one of two files that belong together", () => {
    const before = run(BLACKS);
    oilTold(before);
    before.steps.keepBooks();
    const earlier = keptFiles();
    for (const [file] of earlier) rmSync(file);
    const after = run(oilier);
    oilTold(after);
    after.steps.keepBooks();
    let taken = 0;
    for (const [file, bytes] of earlier) {
      const now = readFileSync(file);
      writeFileSync(file, bytes);
      const again = run(oilier);
      again.steps.made(STEP, () => ((taken += 1), again.colours.get("bone")?.oil));
      writeFileSync(file, now);
    }
    expect(taken).toBe(earlier.length);
  });

  test("is taken again where a build was killed that had written some of its files over those of the one before", () => {
    // So many that what each of them is now is written with all others.
    const withOil = (oil: string): Colours =>
      new Map(Array.from({ length: 10 }, (_, i) => colour(`c${i}`, oil)));
    const oilsTold = (oil: string): unknown[] => {
      const { steps, colours } = run(withOil(oil));
      const told = [...withOil(oil).keys()].map((of) =>
        steps.made({ ...STEP, of }, () => colours.get(of)?.oil),
      );
      steps.keepBooks();
      return told;
    };
    const alike = (oil: string): string[] => [...withOil(oil).keys()].map(() => oil);
    oilsTold("60");
    const earlier = keptFiles();
    oilsTold("61");
    const later = keptFiles();
    for (const [file, bytes] of earlier) {
      for (const [path, now] of later) writeFileSync(path, now);
      writeFileSync(file, bytes);
      expect(oilsTold("62")).toEqual(alike("62"));
      expect(oilsTold("61")).toEqual(alike("61"));
    }
  });
});

/** Every file that is kept, with what it holds. */
function keptFiles(): (readonly [file: string, bytes: Buffer])[] {
  const results = join(cache.folder, "results");
  return readdirSync(results, { recursive: true, encoding: "utf8" })
    .map((name) => join(results, name))
    .filter((name) => statSync(name).isFile())
    .map((file) => [file, readFileSync(file)] as const);
}
