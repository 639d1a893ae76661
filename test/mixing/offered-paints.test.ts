/** How much of a large range is offered to be mixed, and what is always among it. */
import { expect, test } from "vitest";
import { OFFERED_MOST, offeredPaints } from "../../lib/mixing/offered-paints.ts";
import type { MixingPaint } from "../../lib/mixing/mixing-paint.ts";
import { RANGE } from "./demonstration-range.ts";

/** The demonstration's paints so many times over, each time a little lighter. */
function paints(times: number): MixingPaint[] {
  return Array.from({ length: times }, (_, i) =>
    RANGE.data.paints.map((paint) => ({
      ...paint,
      slug: `${paint.slug}-${i}`,
      ...(paint.lab === undefined
        ? {}
        : { lab: [paint.lab[0] + i / 10, paint.lab[1], paint.lab[2]] as const }),
    })),
  ).flat();
}

test("all of a few are offered", () => {
  expect(offeredPaints(RANGE.data.paints, [], undefined)).toBe(RANGE.data.paints);
});

test.each([4, 8])("of %d times the demonstration as many as of any large range", (times) => {
  const all = paints(times);
  const offered = offeredPaints(all, ["titanium-white-0"], "lamp-black-2");
  const slugs = offered.map(({ slug }) => slug);
  expect(offered).toHaveLength(OFFERED_MOST);
  expect(slugs).toContain("titanium-white-0");
  expect(slugs).toContain("lamp-black-2");
  expect(slugs).toEqual(all.map(({ slug }) => slug).filter((slug) => slugs.includes(slug)));
});

test("a colour that is left out lies no farther from those offered than these lie from each other", () => {
  const all = paints(8);
  const offered = new Set(offeredPaints(all, [], "lamp-black-0"));
  const colours = all.filter(
    ({ kind, fit, lab, isDiscontinued = false }) =>
      kind === "colour" && fit !== undefined && lab !== undefined && !isDiscontinued,
  );
  const [inside, outside] = [
    colours.filter((one) => offered.has(one)),
    colours.filter((one) => !offered.has(one)),
  ];
  const nearest = (one: MixingPaint): number =>
    Math.min(
      ...inside
        .filter((other) => other !== one)
        .map((other) =>
          Math.hypot(...[0, 1, 2].map((i) => (one.lab?.[i] ?? 0) - (other.lab?.[i] ?? 0))),
        ),
    );
  expect(outside.length).toBeGreaterThan(inside.length);
  expect(Math.max(...outside.map(nearest))).toBeLessThanOrEqual(Math.min(...inside.map(nearest)));
});
