import { describe, expect, test } from "vitest";
import { mixableColours } from "../../lib/mixing/mixing-range.ts";
import {
  convexHull,
  edgeAt,
  hullArea,
  reachedShare,
  type Hull,
} from "../../lib/mixing/reach/hull.ts";
import { outermost, rangeReach } from "../../lib/mixing/reach/range-reach.ts";
import { receivedHull, sentReach } from "../../lib/mixing/reach/sent-reach.ts";
import { axisUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { mixedLab, mixedRatioAt, mixture } from "../../lib/optics/mixtures/mixture.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { deviates } from "../colorimetry/deviates.ts";
import { RANGE } from "./demonstration-range.ts";

function square(half: number, p68 = 1): Hull {
  const at = (a: number, b: number) => ({ a: a * half, b: b * half, p68 });
  return { L: 50, corners: [at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)] };
}

describe("a hull", () => {
  test("goes around its places and holds what lies between", () => {
    const inside = [
      { a: 0, b: 0 },
      { a: 3, b: -2 },
    ];
    const corners = convexHull([...inside, ...square(10).corners]);
    expect(corners).toHaveLength(4);
    for (const place of inside) expect(corners).not.toContain(place);
  });

  test("of a square has the square's area, and is left at its sides and corners", () => {
    expect(hullArea(square(10)).value).toBeCloseTo(400, 9);
    expect(edgeAt(square(10), 0)?.chroma).toBeCloseTo(10, 9);
    expect(edgeAt(square(10), Math.PI / 4)?.chroma).toBeCloseTo(10 * Math.SQRT2, 9);
    expect(edgeAt({ L: 50, corners: [] }, 0)).toBeUndefined();
  });

  test("of none or one place has no area", () => {
    for (const corners of [[], [{ a: 5, b: 5, p68: 1 }]])
      expect(hullArea({ L: 50, corners })).toEqual({ value: 0, p68: 0 });
  });

  test("a part with the same corners is all of it, without doubt", () => {
    expect(reachedShare(square(10), square(10))).toEqual({ value: 1, p68: 0 });
  });

  test("a part's share is off as often as it says: against corners thrown at random", () => {
    const [whole, part] = [square(40, 2), { ...square(40, 2) }];
    // The part lacks the corner at +a*, +b*: half of the square.
    const left = { ...part, corners: part.corners.toSpliced(2, 1) };
    const told = reachedShare(left, whole);
    expect(told.value).toBeCloseTo(0.5, 9);
    const deviate = deviates(11);
    const shares = Array.from({ length: 4000 }, () => {
      const thrown = whole.corners.map((corner) => {
        const width = axisUncertainty(corner.p68, { L: 50, a: corner.a, b: corner.b });
        return {
          ...corner,
          a: corner.a + width.a * deviate(),
          b: corner.b + width.b * deviate(),
        };
      });
      const area = (corners: Hull["corners"]): number => hullArea({ L: 50, corners }).value;
      return area(thrown.toSpliced(2, 1)) / area(thrown);
    });
    const mean = shares.reduce((sum, one) => sum + one, 0) / shares.length;
    const spread = Math.sqrt(
      shares.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (shares.length - 1),
    );
    expect(told.p68 / spread).toBeGreaterThan(0.9);
    expect(told.p68 / spread).toBeLessThan(1.1);
  });
});

describe("the demonstration's reach", () => {
  const [white] = RANGE.whites;
  if (white === undefined) throw new Error("Unexpected range without a white");
  const reach = rangeReach(RANGE, white);

  test.each(reach.levels)("at L* $L holds mixtures of three and more, or nearly", ({ L, all }) => {
    const colours = mixableColours(RANGE, white.slug);
    for (let i = 0; i < 60; i++) {
      const parts = [0, 1, 2].map((k) => {
        const colour = colours[(7 * i + 5 * k * (i + 1)) % colours.length];
        const ladder = RANGE.ladder(colour?.slug ?? "", white.slug);
        if (isStatement(ladder)) throw new Error(ladder.rule);
        return { ladder, parts: 1 + ((3 * i + k) % 4) };
      });
      const mixed = mixture(parts);
      if (isStatement(mixed)) throw new Error(mixed.rule);
      const ratio = mixedRatioAt(mixed, L);
      if (isStatement(ratio)) continue;
      const { a, b } = mixedLab(mixed, ratio);
      const edge = edgeAt(all, Math.atan2(b, a));
      if (edge === undefined) throw new Error("Unexpected mixture in a direction of none");
      // Straight lines between pairs leave out what bulges beyond them: within what the line may be off, 95 %.
      const { a: each } = axisUncertainty(edge.p68, { L, a, b });
      expect(Math.hypot(a, b) - edge.chroma).toBeLessThan(2 * Math.SQRT2 * each);
    }
  });

  test("without a colour is no larger, and as large without one that no corner needs", () => {
    for (const { all, without } of reach.levels)
      for (const left of without.values()) {
        const { value, p68 } = reachedShare(left, all);
        expect(value).toBeLessThanOrEqual(1 + 1e-9);
        expect(p68).toBeGreaterThan(0);
      }
    const needed = new Set(reach.levels.flatMap(({ without }) => [...without.keys()]));
    expect(needed.size).toBeGreaterThan(3);
    expect(needed.size).toBeLessThan(reach.colours.length);
  });

  test("is sent to a tenth", () => {
    const sent = sentReach(reach);
    for (const [i, { L, all }] of reach.levels.entries()) {
      const received = receivedHull(L, sent.levels[i]?.all ?? []);
      expect(received.corners).toHaveLength(all.corners.length);
      expect(reachedShare(received, all).value).toBeCloseTo(1, 2);
    }
  });
});

describe("of many colours", () => {
  const white = RANGE.whites[0]?.slug ?? "";
  const ladders = mixableColours(RANGE, white).flatMap(({ slug }) => {
    const ladder = RANGE.ladder(slug, white);
    return isStatement(ladder) ? [] : [{ slug, ladder }];
  });
  const chosenOf = (times: number) => {
    const many = Array.from({ length: times }, (_, i) =>
      ladders.map(({ slug, ladder }) => ({ slug: `${slug}-${i}`, ladder })),
    ).flat();
    return {
      many,
      chosen: outermost(
        many.map(({ slug }) => slug),
        many.map(({ ladder }) => ladder),
      ),
    };
  };

  test("few are all paired", () => {
    const { many, chosen } = chosenOf(1);
    expect(chosen).toEqual(many);
  });

  test("many are no more than four of a hue, in their order, the most colourful of all among them", () => {
    const { many, chosen } = chosenOf(6);
    expect(many.length).toBeGreaterThan(100);
    expect(chosen.length).toBeLessThanOrEqual(48);
    const places = chosen.map(({ slug }) => many.findIndex((one) => one.slug === slug));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    const chroma = ({ ladder }: (typeof many)[number]): number =>
      Math.max(...ladder.white.steps.map(({ lab: { a, b } }) => Math.hypot(a, b)));
    expect(Math.max(...chosen.map(chroma))).toBe(Math.max(...many.map(chroma)));
  });
});
