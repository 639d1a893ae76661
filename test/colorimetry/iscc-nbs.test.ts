import centroids from "color-name-lists/lib/colors/nbs-iscc.json" with { type: "json" };
import { converter, parseHex } from "culori";
import { describe, expect, test } from "vitest";
import { nearestIsccNbs } from "../../lib/colorimetry/iscc-nbs.ts";

const lab65 = converter("lab65");

function labOfHex(hex: string) {
  const colour = lab65(parseHex(hex));
  return { L: colour?.l ?? NaN, a: colour?.a ?? NaN, b: colour?.b ?? NaN };
}

describe("nearestIsccNbs", () => {
  test("the list holds the 267 blocks of SP 440, each nearest to itself under a name of its own", () => {
    expect(centroids).toHaveLength(267);
    const names = centroids.map(({ hex }) => nearestIsccNbs(labOfHex(hex)));
    expect(names.map(({ number }) => number)).toEqual(centroids.map((_, index) => index + 1));
    expect(new Set(names.map(({ name }) => name)).size).toBe(267);
    expect(Math.max(...names.map(({ deltaE00 }) => deltaE00))).toBe(0);
  });

  test("no everyday name and no cross-reference is left in a name", () => {
    const names = centroids.map(({ hex }) => nearestIsccNbs(labOfHex(hex)).name);
    for (const name of names) expect(name).toMatch(/^[A-Z][A-Za-z]*( [A-Z][A-Za-z]*)*$/);
    expect(names).toContain("Vivid Blue");
  });

  // Block numbers of the neutrals in SP 440 (from memory): 263 white, 264 light gray, 265 medium gray, 266 dark gray, 267 black.
  test.each([
    [97, 263, "White"],
    [75, 264, "Light Gray"],
    [55, 265, "Medium Gray"],
    [36, 266, "Dark Gray"],
    [8, 267, "Black"],
  ])("a neutral of L* %s is block %s, %s", (L, number, name) => {
    expect(nearestIsccNbs({ L, a: 0, b: 0 })).toMatchObject({ number, name });
  });

  test("NaN is refused", () => {
    expect(() => nearestIsccNbs({ L: NaN, a: 0, b: 0 })).toThrow(
      new RangeError("The L*, a* or b* is NaN; right would be a finite number"),
    );
  });
});
