import { describe, expect, test } from "vitest";
import { namesByOwner } from "../../lib/kept/names-by-owner.ts";
import {
  noteRead,
  readBy,
  readOnce,
  type PartsOfOwner,
  type ReadNames,
  type RememberedReads,
} from "../../lib/kept/reads.ts";

const byOwner = namesByOwner(["sheets"], () => 25);
const byName = (read: readonly PartsOfOwner[]): object =>
  Object.fromEntries(read.map(({ owner, parts }) => [owner, parts]));
const named = (names: ReadNames): object => byName(byOwner(names));
const noteAll = (count: number, part: string): void => {
  for (let i = 0; i < count; i++) noteRead(`sheets/colour-${i}/${part}`);
};

test("names stand in order by the member that they belong to, those of none by themselves", () => {
  const { names } = readBy(() => {
    for (const name of ["sheets/b/oil", "records/b", "sheets/a/oil", "sheets/#", "sheets/a/name"])
      noteRead(name);
  });
  expect(named(names)).toEqual({
    "": ["records/b", "sheets/#"],
    "sheets/a": ["name", "oil"],
    "sheets/b": ["oil"],
  });
});

test.each([
  [25, 12],
  [0, 12],
  [300, 150],
])("of %i members %i are named one by one, and one more is all of them", (all, most) => {
  const read = (count: number): object =>
    byName(
      namesByOwner(["sheets"], (list) => (list === "sheets" ? all : 0))(
        readBy(() => noteAll(count, "oil")).names,
      ),
    );
  expect(Object.keys(read(most))).toHaveLength(most + 1);
  expect(read(most + 1)).toEqual({ "": [], "sheets/*": ["oil"] });
});

describe("of an index that many share", () => {
  const shared: RememberedReads<object, number> = new WeakMap();
  const range = {};
  const index = (): number => readOnce(shared, range, "by oil", () => (noteAll(100, "oil"), 1));
  const asked = (also: () => void): object =>
    named(readBy(() => [index(), readBy(also), index()]).names);

  test.each<[string, () => void, object]>([
    ["its names are those of each who asks", () => undefined, { "sheets/*": ["oil"] }],
    [
      "nothing is left there of what one of them read beside it",
      () => noteRead("sheets/colour-3/name"),
      { "sheets/*": ["oil"], "sheets/colour-3": ["name"] },
    ],
    [
      "another part that some read is counted with what stands beside it",
      () => noteAll(13, "hue"),
      { "sheets/*": ["hue", "oil"] },
    ],
    ["the same again", () => undefined, { "sheets/*": ["oil"] }],
  ])("%s", (_, also, expected) => {
    expect(asked(also)).toEqual({ "": [], ...expected });
  });

  test("members named by two who read few each are counted together", () => {
    const many = readBy(() => {
      for (let i = 0; i < 100; i++) noteRead(`of none ${i}`);
      noteAll(12, "hue");
    });
    const { names } = readBy(() => noteRead("sheets/another/hue"));
    names.addAll(many.names);
    expect(named(many.names)).toHaveProperty(["sheets/colour-3"], ["hue"]);
    expect(named(names)).toHaveProperty(["sheets/*"], ["hue"]);
  });
});

test("an end is come to where two were read for each other", () => {
  const [one, other] = ["one", "other"].map((part) => readBy(() => noteAll(100, part)).names);
  one?.addAll(other as ReadNames);
  other?.addAll(one as ReadNames);
  const both = { "": [], "sheets/*": ["one", "other"] };
  expect(named(one as ReadNames)).toEqual(both);
  expect(named(other as ReadNames)).toEqual(both);
});
