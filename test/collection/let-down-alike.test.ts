import { differenceCiede2000 } from "culori";
import { expect, test } from "vitest";
import { apartInWhite } from "../../lib/collection/let-down-alike.ts";
import { certain } from "../../lib/quantities/at.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { sheetOf } from "../sheet/demonstration-sheets.ts";

const [blue, black] = [sheetOf("prussian-blue"), sheetOf("furnace-black")];

// basis: published; culori's own CIEDE2000 (Sharma, Wu & Dalal 2005).
test("two that match from the tube part in the white that both were let down in", () => {
  const places = [blue, black].map(({ tints }) => {
    const { a, b } = certain(tints.find(({ white }) => white.slug === "titanium-white")?.atL["50"]);
    if (!isKnown(a) || !isKnown(b)) throw new Error("Unexpected tint without its place");
    return { mode: "lab65", l: 50, a: a.value, b: b.value } as const;
  });
  const [one, other] = [certain(places[0]), certain(places[1])];
  const apart = certain(apartInWhite(blue, black));
  expect(apart.white.slug).toBe("titanium-white");
  expect(apart.deltaE00).toBeCloseTo(differenceCiede2000()(one, other), 6);
  expect(apart.deltaE00).toBeGreaterThan(15);
});

test("nothing is said without a white of both, nor of two geometries", () => {
  const inAnother = black.tints.map((tint) => ({
    ...tint,
    white: { ...tint.white, slug: "another-white" },
  }));
  expect(apartInWhite(blue, { tints: inAnother })).toBeUndefined();
  const withGloss = black.tints.map((tint) => ({
    ...tint,
    steps: tint.steps.map((step) => ({ ...step, geometry: "d/8 included" as const })),
  }));
  const without = blue.tints.map((tint) => ({
    ...tint,
    steps: tint.steps.map((step) => ({ ...step, geometry: "d/8 excluded" as const })),
  }));
  expect(apartInWhite({ tints: without }, { tints: withGloss })).toBeUndefined();
  expect(apartInWhite({ tints: withGloss }, { tints: withGloss })?.deltaE00).toBe(0);
});
