import { expect, test } from "vitest";
import type { KeptSteps } from "../../lib/kept/kept-steps.ts";
import { mixesOf, searchOf, type Nearest } from "../../lib/mixing/finding/found-mixes.ts";
import { keptMixes } from "../../lib/pages/kept-mixes.ts";
import { certain } from "../../lib/quantities/at.ts";
import { RANGE } from "../mixing/demonstration-range.ts";

const COLOURS = ["bone-black", "cadmium-yellow", "raw-umber", "ultramarine-blue"];
const SEARCH = searchOf(
  {
    target: { name: "wanted", origin: "lab", lab: { L: 55, a: 2, b: 12 }, p68: 0 },
    white: "titanium-white",
    colours: COLOURS,
    mustHold: [],
    coloursMost: 2,
    without: [],
    isWhiteFree: false,
  },
  RANGE,
);
const plain = (search = SEARCH) => [...mixesOf(search)].flatMap((one) => one ?? []);

/** The place of a search, and whatever is kept there. */
function place(): Pick<KeptSteps, "last" | "keepLast"> & { kept: unknown; written: number } {
  const own = {
    kept: undefined as unknown,
    written: 0,
    last: () => structuredClone(own.kept),
    keepLast: (_: unknown, value: unknown) => {
      own.kept = structuredClone(value);
      own.written += 1;
    },
  };
  return own;
}

function searched(own: ReturnType<typeof place>, search = SEARCH) {
  return keptMixes("for a test", search, own as unknown as KeptSteps);
}

test("what was found before is found again, and written down once", () => {
  const own = place();
  expect(searched(own)).toEqual(plain());
  expect(searched(own)).toEqual(plain());
  expect(own.written).toBe(1);
});

/** As what was kept, each mixture nearer than it is: whoever takes one of them tells by that. */
function nearer(own: ReturnType<typeof place>): void {
  const { nearest, ...rest } = own.kept as { nearest: Map<string, Nearest | undefined> };
  const marked = [...nearest].map(
    ([key, one]) => [key, one && { ...one, lab: { ...one.lab, L: -1 } }] as const,
  );
  own.kept = { ...rest, nearest: new Map(marked) };
}

test("a paint that is another since moves the mixtures that it is in, and no others", () => {
  const own = place();
  searched(own);
  nearer(own);
  const at = SEARCH.colours.indexOf("raw-umber");
  const ladder = certain(SEARCH.ladders[at]);
  const stronger = { ...ladder, white: { ...ladder.white, K: ladder.white.K.map((K) => 2 * K) } };
  const other = { ...SEARCH, ladders: SEARCH.ladders.with(at, stronger) };
  const found = searched(own, other);
  const isAnew = found.map(({ lab }) => lab.L !== -1);
  expect(isAnew).toEqual(
    found.map(({ mix }) => mix.colours.some(({ slug }) => slug === "raw-umber")),
  );
  expect(new Set(isAnew)).toEqual(new Set([true, false]));
});

test.each([
  [
    "the target",
    { wish: { ...SEARCH.wish, target: { ...SEARCH.wish.target, lab: { L: 56, a: 2, b: 12 } } } },
  ],
  [
    "the white",
    {
      ladders: SEARCH.ladders.map((one) => ({
        ...one,
        white: { ...one.white, whiteRatio: one.white.whiteRatio.map((r) => 2 * r) },
      })),
    },
  ],
])("another %s leaves nothing of it", (_, more) => {
  const own = place();
  searched(own);
  nearer(own);
  const found = searched(own, { ...SEARCH, ...more });
  expect(found.length).toBeGreaterThan(0);
  expect(found.every(({ lab }) => lab.L !== -1)).toBe(true);
});
