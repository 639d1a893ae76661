import { describe, expect, test } from "vitest";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { labOfMunsell } from "../../lib/colorimetry/munsell-inversion.ts";
import { aboveValueNine, atValueNine } from "../../lib/colorimetry/munsell-toward-white.ts";
import { munsellOfLab, type Munsell } from "../../lib/colorimetry/munsell.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";

/** Lab of x, y and Y under illuminant C, 2 degree. */
function labOf(x: number, y: number, Y: number): Lab {
  return xyzToLab({ X: (x * Y) / y, Y, Z: ((1 - x - y) * Y) / y }, "C/2");
}

function known(lab: Lab, uncertainty?: Lab): Munsell {
  const found = munsellOfLab(lab, uncertainty);
  if ("rule" in found) throw new Error(found.rule);
  return found;
}

const WHITE = { x: 0.3101, y: 0.3162 };
/** Y of value 9 by the value function, and of 9.5 (1.1914 V - .22533 V^2 + .23352 V^3 - .020484 V^4 + .00081939 V^5). */
const [Y9, Y95] = [76.695586, 87.755853];

describe("above value 9", () => {
  // 5Y 9/2 is printed as x .3378, y .3504 (Newhall et al. 1943); D1535 goes from there to white straight over Y, worked by hand.
  test("5Y 9.5/2 lies between the printed 5Y 9/2 and white", () => {
    const share = (100 - Y95) / (100 - Y9);
    const found = known(
      labOf(WHITE.x + (0.3378 - WHITE.x) * share, WHITE.y + (0.3504 - WHITE.y) * share, Y95),
    );
    expect(Math.abs(found.value - 9.5)).toBeLessThan(0.002);
    expect(Math.abs(found.chroma - 2)).toBeLessThan(0.05);
    expect(Math.abs((found.hueNumber ?? NaN) - 25)).toBeLessThan(0.5);
    expect(found.betweenNineAndWhite).toBe(true);
  });

  test("is told as at value 9 from just below to just above it", () => {
    const [below, above] = [8.999999, 9.000001].map((value) =>
      known(labOfMunsell({ hueNumber: 25, value, chroma: 2 })),
    );
    expect(below?.chroma).toBeCloseTo(above?.chroma ?? NaN, 3);
    expect(below?.hueNumber).toBeCloseTo(above?.hueNumber ?? NaN, 2);
  });

  test.each([9.2, 9.6, 9.95])("a chip of value %s is read back", (value) => {
    const found = known(labOfMunsell({ hueNumber: 75, value, chroma: 1 }));
    expect(found.value).toBeCloseTo(value, 6);
    expect(found.chroma).toBeCloseTo(1, 4);
    expect(found.hueNumber).toBeCloseTo(75, 2);
  });

  test("the same a*, b* is the more chroma the nearer to white, and the less sure", () => {
    const noise = { L: 0.15, a: 0.05, b: 0.1 };
    const [dull, pale] = [91, 97].map((L) => known({ L, a: 0, b: 3 }, noise));
    expect(pale?.chroma).toBeGreaterThan(1.5 * (dull?.chroma ?? NaN));
    expect(pale?.uncertainty.chroma).toBeGreaterThan(2 * (dull?.uncertainty.chroma ?? NaN));
    expect(pale?.uncertainty.chroma).toBeGreaterThan(0.05);
  });

  test("the perfect diffuser is N 10/, and a tinted colour of its luminance has no notation", () => {
    expect(known({ L: 100, a: 0, b: 0 }).text).toBe("N 10.0/");
    expect(munsellOfLab({ L: 100, a: 0, b: 4 })).toMatchObject({
      rule: "beyond-munsell-renotation",
    });
    expect(atValueNine({ L: 100, a: 0, b: 4 })).toBeUndefined();
    expect(atValueNine({ L: 99.9, a: 0, b: 60 })).toBeUndefined();
  });

  test("moving up and down again comes back", () => {
    const nine = labOf(0.33, 0.34, Y9);
    const back = atValueNine(aboveValueNine(nine, 9.7) ?? nine);
    expect(back?.a).toBeCloseTo(nine.a, 6);
    expect(back?.b).toBeCloseTo(nine.b, 6);
  });
});
