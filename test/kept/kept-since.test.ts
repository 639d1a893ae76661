import { expect, test } from "vitest";
import { keptSince, type KeptSince } from "../../lib/kept/kept-since.ts";

type Values = ReadonlyMap<string, object>;

/** Two files, and how often each was written. */
function twoFiles() {
  const files = { whole: new Map() as Values, apart: new Map() as Values };
  const writes: string[] = [];
  const part = (name: "whole" | "apart") => ({
    read: () => files[name],
    write: (values: Values) => {
      writes.push(name);
      files[name] = values;
    },
  });
  return { files, writes, opened: () => keptSince(part("whole"), part("apart")) };
}

const all = (value: object): object => value;

function valuesOf(names: readonly string[]): Map<string, object> {
  return new Map(names.map((name) => [name, { of: name }]));
}

/** What each name stands for in a later run. */
function read(kept: KeptSince<object>, names: readonly string[]): (object | undefined)[] {
  return names.map(kept.of);
}

const NAMES = Array.from({ length: 100 }, (_, i) => `name ${i}`);

test("a few that have become others are written by themselves, and found in the place of what they were", () => {
  const { files, writes, opened } = twoFiles();
  const values = valuesOf(NAMES);
  opened().keep(values, all);
  expect(writes).toEqual(["whole"]);
  const edited = new Map(values).set("name 7", { of: "another" });
  opened().keep(edited, all);
  expect(writes).toEqual(["whole", "apart"]);
  expect([...files.apart.keys()]).toEqual(["name 7"]);
  expect(read(opened(), NAMES)).toEqual([...edited.values()]);
  // Another run that asks for one alone leaves the rest as it stands.
  opened().keep(new Map([["name 9", { of: "a third" }]]), all);
  expect([...files.apart.keys()]).toEqual(["name 7", "name 9"]);
  expect(writes).toEqual(["whole", "apart", "apart"]);
  // As it was at first: nothing stands apart for it any more.
  opened().keep(new Map([["name 7", values.get("name 7") ?? {}]]), all);
  expect([...files.apart.keys()]).toEqual(["name 9"]);
});

test("what is the same is not written again", () => {
  const { files, writes, opened } = twoFiles();
  opened().keep(valuesOf(NAMES), all);
  opened().keep(new Map(files.whole), all);
  opened().keep(new Map(), all);
  const once = opened();
  const now = new Map([["name 1", { of: "another" }]]);
  once.keep(now, all);
  once.keep(now, all);
  expect(writes).toEqual(["whole", "apart"]);
});

test("once many are others all are written, as each is by then, without those that are worth nothing", () => {
  const { files, writes, opened } = twoFiles();
  opened().keep(valuesOf(NAMES), all);
  opened().keep(new Map([["name 1", { of: "another" }]]), all);
  const many = valuesOf(NAMES.slice(50, 70));
  opened().keep(many, (value, name) => (name === "name 2" ? undefined : { told: value }));
  expect(writes).toEqual(["whole", "apart", "whole", "apart"]);
  expect(files.apart.size).toBe(0);
  expect(files.whole.size).toBe(99);
  expect(files.whole.get("name 1")).toEqual({ told: { of: "another" } });
  expect(files.whole.get("name 50")).toEqual({ told: many.get("name 50") });
});
