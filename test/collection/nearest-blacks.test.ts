import { expect, test } from "vitest";
import { nearestBlacks, singleBlacksIn } from "../../lib/collection/single-blacks.ts";
import { sheets } from "../support/demonstration.ts";

const WHITE = "titanium-white";
const blacks = singleBlacksIn(sheets(), WHITE);
const bone = blacks.find(({ slug }) => slug === "bone-black");

test("the nearest to a black's own grey is that black itself, and all of a few are told", () => {
  expect(nearestBlacks(blacks, bone, 1).map(({ slug }) => slug)).toEqual(["bone-black"]);
  expect(nearestBlacks(blacks, bone, blacks.length)).toEqual(blacks);
});

test("so many and no more, in the order of the range, also of copies that are equally near", () => {
  const copies = Array.from({ length: 20 }, (_, i) =>
    blacks.map((black) => ({ ...black, slug: `${black.slug}-${i}` })),
  ).flat();
  const near = nearestBlacks(copies, bone, 12).map(({ slug }) => slug);
  expect(near).toHaveLength(12);
  expect(near).toEqual(Array.from({ length: 12 }, (_, i) => `bone-black-${i}`));
});

test("of a tint without a grey the first", () => {
  expect(nearestBlacks(blacks, undefined, 2)).toEqual(blacks.slice(0, 2));
});
