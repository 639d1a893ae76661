import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apparentRatio, nearerToColour } from "../../lib/optics/tints/let-down-order.ts";

/** R of a hiding film by Kubelka & Munk, R = 1 + k - sqrt(k^2 + 2k), its surface by Saunderson's k1 .04 and k2 .6: written out here by itself. */
function reading(K: number, S: number): number {
  const k = K / S;
  const R = 1 + k - Math.sqrt(k * k + 2 * k);
  return 0.04 + (0.96 * 0.4 * R) / (1 - 0.6 * R);
}

/** A mixture of c parts of a colour in 1 of a white, K and S by Duncan's sums. */
function mixture(
  c: number,
  colour: readonly [number, number],
  white: readonly [number, number],
): number {
  return reading(c * colour[0] + white[0], c * colour[1] + white[1]);
}

const coefficient = fc.double({ min: 0.001, max: 100, noNaN: true });

describe("order of let-downs", () => {
  test("more of the colour never lies farther from it, whatever K and S (derived from Duncan 1940)", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coefficient, coefficient, coefficient, coefficient), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.double({ min: 0.001, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (bands, ratio, times) => {
          const at = (c: number): number[] =>
            bands.map(([kc, sc, kw, sw]) => mixture(c, [kc, sc], [kw, sw]));
          const ends = {
            masstone: bands.map(([kc, sc]) => reading(kc, sc)),
            white: bands.map(([, , kw, sw]) => reading(kw, sw)),
          };
          expect(nearerToColour(at(ratio * times), at(ratio), ends)).toBeGreaterThanOrEqual(-1e-9);
        },
      ),
      { numRuns: 300, seed: 17 },
    );
  });

  test("without its ends a colour is taken to be darker than its white", () => {
    expect(nearerToColour([0.2], [0.5], { masstone: undefined, white: undefined })).toBeCloseTo(
      0.3,
      12,
    );
    expect(nearerToColour([0.5], [0.2], { masstone: [0.1], white: [0.9] })).toBeCloseTo(-0.3, 12);
  });

  test("of another shape it is refused", () => {
    expect(() =>
      nearerToColour([0.2], [0.5, 0.6], { masstone: undefined, white: undefined }),
    ).toThrow("The count of values is 2; right would be 1, as of the others");
  });
});

describe("apparent ratio", () => {
  test("is the ratio itself where both scatter alike and no surface is in the way (derived)", () => {
    const plain = (k: number): number => 1 + k - Math.sqrt(k * k + 2 * k);
    const [kc, kw] = [8, 0.01];
    const mixed = plain((0.2 * kc + kw) / 1.2);
    expect(apparentRatio([mixed], { masstone: [plain(kc)], white: [plain(kw)] })).toBeCloseTo(
      0.2,
      9,
    );
  });

  test.each([
    ["colour and white hardly apart", [0.5], [0.45], [0.54]],
    ["outside its ends", [0.95], [0.1], [0.9]],
  ])("is not told: %s", (_, tint, masstone, white) => {
    expect(apparentRatio(tint, { masstone, white })).toBeUndefined();
  });
});
