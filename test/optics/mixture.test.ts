import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import {
  drift,
  driftRuling,
  DRIFT_RULES,
  PATH_LOSSES,
  TOLD_LOSSES,
  type Drift,
} from "../../lib/optics/mixtures/component-loss.ts";
import { ladderModel, predictedTint, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import {
  massParts,
  mixedLab,
  mixedRatioAt,
  mixedTint,
  mixture,
  paintParts,
  pairGreys,
  type MassPart,
  type Mixture,
} from "../../lib/optics/mixtures/mixture.ts";
import { nearestMixed } from "../../lib/optics/mixtures/reach-of-let-downs.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import type { Statement } from "../../lib/quantities/statement.ts";
import { OPTICS_SOURCES } from "../../lib/sources/optics.ts";
import {
  BLUE,
  fitOf,
  IRON_BLACK,
  LAMP,
  LEAD,
  NO_NOISE,
  OCHRE,
  syntheticSet,
  TITANIUM,
  YELLOW,
  type Bench,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";
import { certain } from "../../lib/quantities/at.ts";

const BENCH: Bench = {
  geometry: "d/8 excluded",
  surface: OIL_SURFACE,
  statesSurface: true,
  noise: NO_NOISE,
  seed: 3,
};
const RATIOS = [1, 0.2, 0.05, 0.01, 0.002];
const ladder = (
  pigment: SyntheticPigment,
  bench: Bench = BENCH,
  slug = "titanium",
  ratioKind: "pigment" | "paint" = "pigment",
): LadderModel => {
  const fit = fitOf(
    syntheticSet(
      pigment,
      [{ slug, white: slug === "lead" ? LEAD : TITANIUM, massRatios: RATIOS, ratioKind }],
      bench,
    ),
  );
  return ladderModel(fit, slug);
};
const BLUE_LADDER = ladder(BLUE);
const OCHRE_LADDER = ladder(OCHRE);
const LAMP_LADDER = ladder(LAMP);
const IRON_LADDER = ladder(IRON_BLACK);
const YELLOW_LADDER = ladder(YELLOW);
const ready = (parts: readonly MassPart[]): Mixture => {
  const mixed = mixture(parts);
  if ("rule" in mixed) throw new Error(mixed.rule);
  return mixed;
};
const ruling = (parts: readonly MassPart[]): Statement => {
  const mixed = mixture(parts);
  if ("parts" in mixed) throw new Error("mixed after all");
  return mixed;
};
/** The pigment that a weighed mixture is: volumes add. */
const weighed = (
  one: SyntheticPigment,
  other: SyntheticPigment,
  share: number,
): SyntheticPigment => {
  const [v, w] = [share / one.density, (1 - share) / other.density];
  const mean = (a: number, b: number): number => (v * a + w * b) / (v + w);
  return {
    K: (nm) => mean(one.K(nm), other.K(nm)),
    S: (nm) => mean(one.S(nm), other.S(nm)),
    density: 1 / (v + w),
  };
};

describe("mixtures against drawdowns of the mixture, integrated step by step and mixed by volume", () => {
  // Each side is fitted from drawdowns of its own; the mixture's are never shown to the prediction.
  test.each([
    ["blue and ochre", BLUE, BLUE_LADDER, OCHRE, OCHRE_LADDER, 0.3],
    ["blue and yellow", BLUE, BLUE_LADDER, YELLOW, YELLOW_LADDER, 0.1],
    ["lamp and iron", LAMP, LAMP_LADDER, IRON_BLACK, IRON_LADDER, 0.5],
    ["blue and iron", BLUE, BLUE_LADDER, IRON_BLACK, IRON_LADDER, 0.8],
  ] as const)("%s", (_, one, oneLadder, other, otherLadder, share) => {
    const mixed = ready([
      { ladder: oneLadder, parts: share },
      { ladder: otherLadder, parts: 1 - share },
    ]);
    const read = syntheticSet(
      weighed(one, other, share),
      [{ slug: "titanium", white: TITANIUM, massRatios: RATIOS, ratioKind: "pigment" }],
      BENCH,
    );
    for (const { massRatio, reading } of read.tints) {
      const lab = spectrumLab(reading.spectrum);
      const tint = mixedTint(mixed, massRatio);
      expect(deltaE00(tint.lab, lab), `1:${1 / massRatio}`).toBeLessThan(0.5);
      expect(deltaE00(tint.lab, lab)).toBeLessThan(tint.uncertainty.p68);
    }
    const masstone = spectrumLab(certain(read.masstone).spectrum);
    // A masstone hardly fixes a black's scattering: the mixture's is only as good as that.
    expect(deltaE00(mixedTint(mixed, Infinity).lab, masstone)).toBeLessThan(2);
  });
});

describe("a colour mixed with itself", () => {
  test.each([
    ["lamp", LAMP_LADDER],
    ["blue", BLUE_LADDER],
    ["ochre", OCHRE_LADDER],
  ] as const)("%s is itself, in whatever parts", (_, own) => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: -6, max: 3, noNaN: true }),
        (one, other, logRatio) => {
          const ratio = Math.exp(logRatio);
          const mixed = mixedTint(
            ready([
              { ladder: own, parts: one },
              { ladder: own, parts: other },
            ]),
            ratio,
          );
          expect(deltaE00(mixed.lab, predictedTint(own, ratio).lab)).toBeLessThan(1e-4);
        },
      ),
      { seed: 1, numRuns: 100 },
    );
  });
  test("and so is its masstone, as read", () => {
    expect(
      deltaE00(
        mixedTint(
          ready([
            { ladder: BLUE_LADDER, parts: 1 },
            { ladder: BLUE_LADDER, parts: 3 },
          ]),
          Infinity,
        ).lab,
        BLUE_LADDER.fit.masstone.lab,
      ),
    ).toBeLessThan(0.01);
  });
});

// basis: derived. The less white is left, the nearer a mixture is to the one without any.
test("a mixture with hardly any white reads as the mixture itself, where a film told another S alone", () => {
  const alone = (ladder: LadderModel, factor: number): LadderModel => ({
    ...ladder,
    white: { ...ladder.white, SAlone: ladder.white.S.map((S) => factor * S) },
  });
  const mixed = ready([
    { ladder: alone(BLUE_LADDER, 0.5), parts: 1 },
    { ladder: alone(OCHRE_LADDER, 2), parts: 1 },
  ]);
  const [nearly, itself, plain] = [
    mixedTint(mixed, 1e6).lab,
    mixedTint(mixed, Infinity).lab,
    mixedTint(
      ready([
        { ladder: BLUE_LADDER, parts: 1 },
        { ladder: OCHRE_LADDER, parts: 1 },
      ]),
      Infinity,
    ).lab,
  ];
  expect(deltaE00(nearly, itself)).toBeLessThan(0.01);
  expect(deltaE00(itself, plain)).toBeGreaterThan(1);
});

test("a component of which there is none changes nothing, and order does not either", () => {
  const one = mixedTint(ready([{ ladder: BLUE_LADDER, parts: 1 }]), 0.1);
  expect(
    deltaE00(
      mixedTint(
        ready([
          { ladder: BLUE_LADDER, parts: 1 },
          { ladder: OCHRE_LADDER, parts: 0 },
        ]),
        0.1,
      ).lab,
      one.lab,
    ),
  ).toBeLessThan(1e-9);
  const [ab, ba] = [
    [BLUE_LADDER, OCHRE_LADDER],
    [OCHRE_LADDER, BLUE_LADDER],
  ].map((pair, i) =>
    mixedTint(ready(pair.map((l, j) => ({ ladder: l, parts: i === j ? 0.3 : 0.7 }))), 0.1),
  );
  expect(deltaE00(ab?.lab ?? one.lab, ba?.lab ?? one.lab)).toBeLessThan(1e-9);
});

describe("uncertainty", () => {
  const mixed = ready([
    { ladder: BLUE_LADDER, parts: 0.3 },
    { ladder: OCHRE_LADDER, parts: 0.7 },
  ]);
  test("of a mixture is wider than of a let-down beside its drawdowns, and 90 % wider than 68 %", () => {
    const { p68, p90 } = mixedTint(mixed, 0.1).uncertainty;
    expect(p68).toBeGreaterThan(1.2);
    expect(p90).toBeGreaterThan(p68);
  });
  test("poorer readings make a poorer prediction", () => {
    const noisy: Bench = { ...BENCH, noise: { absolute: 0.004, relative: 0.04, massRatio: 0.15 } };
    const poor = ready([
      { ladder: ladder(BLUE, noisy), parts: 0.3 },
      { ladder: ladder(OCHRE, noisy), parts: 0.7 },
    ]);
    expect(mixedTint(poor, 0.1).uncertainty.p68).toBeGreaterThan(
      mixedTint(mixed, 0.1).uncertainty.p68,
    );
  });
});

describe("what does not mix", () => {
  const blue = { ladder: BLUE_LADDER, parts: 1 };
  test.each([
    ["whites-differ", ladder(OCHRE, BENCH, "lead")],
    ["ratio-kinds-differ", ladder(OCHRE, BENCH, "titanium", "paint")],
    ["geometries-differ", ladder(OCHRE, { ...BENCH, geometry: "d/8 included" })],
    ["surfaces-differ", ladder(OCHRE, { ...BENCH, surface: { k1: 0.035, k2: 0.5, index: 1.46 } })],
  ] as const)("%s", (rule, other) =>
    expect(ruling([blue, { ladder: other, parts: 1 }]).rule).toBe(rule),
  );
  test("fits of two workshops, on grids of their own", () => {
    const other = ladder(OCHRE, { ...BENCH, grid: { startNm: 400, stepNm: 20, count: 16 } });
    expect(() => mixture([blue, { ladder: other, parts: 1 }])).toThrow(
      "The fits of a mixture are of several grids",
    );
  });
  test("parts outside their domain", () => {
    for (const parts of [-1, NaN])
      expect(() => mixture([{ ...blue, parts }])).toThrow("The part by mass");
    expect(() => mixture([{ ...blue, parts: 0 }])).toThrow("The sum of parts by mass");
    expect(() => mixture([])).toThrow("The sum of parts by mass");
    const mixed = ready([blue]);
    for (const ratio of [0, -1, NaN])
      expect(() => mixedTint(mixed, ratio)).toThrow("The mass ratio");
    for (const L of [0, 100, NaN]) expect(() => mixedRatioAt(mixed, L)).toThrow("The lightness L*");
    expect(() => mixedTint(mixed, 0.1, [1, 1])).toThrow("The count of strengths left");
    for (const left of [-0.1, NaN])
      expect(() => mixedTint(mixed, 0.1, [left])).toThrow("The strength left");
    expect(mixedRatioAt(mixed, 99.9)).toMatchObject({ rule: "ladder-does-not-reach" });
    for (const steps of [1, 2.5, NaN])
      expect(() => pairGreys(BLUE_LADDER, OCHRE_LADDER, 50, steps)).toThrow("The count of steps");
    expect(pairGreys(BLUE_LADDER, ladder(OCHRE, BENCH, "lead"), 50, 2)).toMatchObject({
      rule: "whites-differ",
    });
  });
});

describe("parts", () => {
  test("by volume become parts by mass", () => {
    expect(massParts([1, 2], [2, 4])).toEqual([2, 8]);
    for (const density of [0, NaN, Infinity])
      expect(() => massParts([1], [density])).toThrow("The density");
    expect(() => massParts([1, 2], [1])).toThrow("The count of densities");
  });
  test("of pigment become parts of paint, and back to the mixture's own paint", () => {
    // 7 and 13 g of pigment in paints that are 70 and 58 % pigment: 10 and 22.414 g; a paint of 62.5 % holds them in 32 g.
    const { parts, massScale } = paintParts([7, 13], [0.7, 0.58], 0.625);
    expect(parts).toEqual([expect.closeTo(10, 9), expect.closeTo(22.41379, 4)]);
    expect(massScale).toBeCloseTo(32.41379 / 32, 5);
    expect(paintParts([1, 3], [0.5, 0.5], 0.5).massScale).toBe(1);
    for (const fraction of [0, 1.01, NaN]) {
      expect(() => paintParts([1], [fraction], 0.5)).toThrow("The mass fraction of pigment");
      expect(() => paintParts([1], [0.5], fraction)).toThrow("The mass fraction of pigment");
    }
    expect(() => paintParts([1, 2], [0.5], 0.5)).toThrow("The count of mass fractions");
  });
});

test("the ratio of a mixture at an L* is met within .005", () => {
  const mixed = ready([
    { ladder: BLUE_LADDER, parts: 1 },
    { ladder: OCHRE_LADDER, parts: 1 },
  ]);
  for (let L = 45; L < 85; L += 0.7) {
    const ratio = mixedRatioAt(mixed, L);
    if (typeof ratio !== "number") throw new Error(ratio.rule);
    expect(Math.abs(mixedLab(mixed, ratio).L - L), `L* ${L}`).toBeLessThan(0.005);
  }
});

test("greys of a pair: from the one to the other, at the L* asked for, and a neutral between opposites", () => {
  const greys = pairGreys(BLUE_LADDER, OCHRE_LADDER, 50, 10);
  if ("rule" in greys) throw new Error(greys.rule);
  expect(greys).toHaveLength(11);
  for (const { lab } of greys) expect(lab.L).toBeCloseTo(50, 1);
  expect(greys[10]?.lab.b).toBeLessThan(0);
  expect(greys[0]?.lab.b).toBeGreaterThan(0);
  const chroma = ({ lab: { a, b } }: { lab: { a: number; b: number } }): number => Math.hypot(a, b);
  expect(Math.min(...greys.map(chroma))).toBeLessThan(
    Math.min(...[greys[0], greys[10]].map((end) => (end === undefined ? NaN : chroma(end)))),
  );
});

describe("drift", () => {
  const mixed = ready([
    { ladder: BLUE_LADDER, parts: 0.4 },
    { ladder: OCHRE_LADDER, parts: 0.6 },
  ]);
  const found = (component: number): Drift => {
    const at = drift(mixed, component, ["blue", "ochre"]);
    if ("rule" in at) throw new Error(at.rule);
    return at;
  };
  test("losing none moves nothing, and more moves further", () => {
    for (const { path } of [found(0), found(1)]) {
      expect(path.map(({ loss }) => loss)).toEqual(PATH_LOSSES);
      expect(path[0]).toMatchObject({ loss: 0, deltaE00: 0, deltaEab: 0 });
      for (const [i, step] of path.slice(1).entries())
        expect(step.deltaEab).toBeGreaterThan(path[i]?.deltaEab ?? NaN);
      expect(path[0]?.lab.L).toBeCloseTo(50, 1);
    }
    fc.assert(
      fc.property(fc.double({ min: -5, max: 2, noNaN: true }), (logRatio) => {
        expect(
          deltaE00(
            mixedLab(mixed, Math.exp(logRatio), [1, 1]),
            mixedLab(mixed, Math.exp(logRatio)),
          ),
        ).toBe(0);
      }),
      { seed: 1, numRuns: 50 },
    );
  });
  test("toward what is left, and the same as weighing so much less in", () => {
    expect(found(0).rulings.map(({ rule }) => rule)).toEqual([
      "drift-goes-toward",
      "drift-goes-toward",
    ]);
    // Without the blue it goes the ochre's way, without the ochre the blue's.
    expect(found(0).path.at(-1)?.lab.b).toBeGreaterThan(found(0).path[0]?.lab.b ?? NaN);
    expect(found(1).path.at(-1)?.lab.b).toBeLessThan(found(1).path[0]?.lab.b ?? NaN);
    const ratio = found(0).massRatio;
    const less = ready([
      { ladder: BLUE_LADDER, parts: 0.4 * 0.4 },
      { ladder: OCHRE_LADDER, parts: 0.6 },
    ]);
    // Of 1 g, .24 is gone: .76 g of what is left stands to the same white.
    expect(
      deltaE00(found(0).path.at(-1)?.lab ?? mixedLab(less, 1), mixedLab(less, ratio * 0.76)),
    ).toBeLessThan(0.05);
  });
  test("a single carbon black only grows lighter", () => {
    const alone = drift(ready([{ ladder: LAMP_LADDER, parts: 1 }]), 0, ["lamp"]);
    if ("rule" in alone) throw new Error(alone.rule);
    expect(alone.rulings.map(({ rule }) => rule)).toEqual([
      "drift-grows-lighter",
      "drift-grows-lighter",
    ]);
    expect(alone.rulings.map(({ values }) => values["loss"])).toEqual([...TOLD_LOSSES]);
  });
  test("it may not be where no tint is at L* 50, and refuses what is no component", () => {
    for (const component of [-1, 2, 0.5, NaN])
      expect(() => drift(mixed, component, ["blue", "ochre"])).toThrow("The component");
    expect(() => drift(mixed, 0, ["blue"])).toThrow("The count of names");
    expect(drift(ready([{ ladder: YELLOW_LADDER, parts: 1 }]), 0, ["yellow"])).toMatchObject({
      rule: "ladder-does-not-reach",
    });
  });
  test("each limit of the words, from both sides", () => {
    const fresh = { L: 50, a: 0, b: 0 };
    const at = (L: number, a: number, b: number): Statement =>
      driftRuling("x", fresh, {
        loss: 0.3,
        lab: { L: 50 + L, a, b },
        deltaE00: 1,
        deltaEab: Math.hypot(L, a, b),
      });
    const { seenMin, hueShiftMin } = DRIFT_RULES;
    expect(at(seenMin - 1e-9, 0, 0).rule).toBe("drift-not-seen");
    expect(at(seenMin + 1e-9, 0, 0).rule).toBe("drift-grows-lighter");
    expect(at(-seenMin - 1e-9, 0, 0).rule).toBe("drift-grows-darker");
    expect(at(5, hueShiftMin - 1e-9, 0).rule).toBe("drift-grows-lighter");
    expect(at(5, hueShiftMin, 0)).toMatchObject({
      rule: "drift-goes-toward",
      values: { toward: "red" },
    });
    expect(at(0, 0, -3)).toMatchObject({ rule: "drift-goes-toward", values: { toward: "blue" } });
    expect(Object.keys(OPTICS_SOURCES)).toContain(at(5, 0, 0).source);
  });
});

describe("the nearest of all mixtures", () => {
  const nearest = (ladders: readonly LadderModel[], lab: Lab, withWhite: boolean) => {
    const found = nearestMixed(ladders, lab, withWhite);
    if ("rule" in found) throw new Error(found.rule);
    return found;
  };
  const parts = (ochre: number, blue: number): MassPart[] => [
    { ladder: OCHRE_LADDER, parts: ochre },
    { ladder: BLUE_LADDER, parts: blue },
  ];
  test.each([
    [0.2, Infinity],
    [3, Infinity],
    [1, 0.3],
    [0.05, 0.02],
  ])("finds one of ochre to blue %d, in white 1:%d, within its steps", (ochre, ratio) => {
    const lab = mixedLab(ready(parts(ochre, 1)), ratio);
    const found = nearest([OCHRE_LADDER, BLUE_LADDER], lab, ratio !== Infinity);
    expect(deltaE00(found.lab, lab)).toBeLessThan(2);
  });
  test("of one colour finds its let-down, and without white the colour itself", () => {
    const lab = mixedLab(ready([{ ladder: BLUE_LADDER, parts: 1 }]), 0.1);
    expect(deltaE00(nearest([BLUE_LADDER], lab, true).lab, lab)).toBeLessThan(2);
    expect(nearest([BLUE_LADDER], lab, false).massRatio).toBe(Infinity);
  });
  test("goes to the end of one colour where the other only leads away", () => {
    const lab = mixedLab(ready(parts(0, 1)), Infinity);
    expect(deltaE00(nearest([OCHRE_LADDER, BLUE_LADDER], lab, false).lab, lab)).toBeLessThan(1e-9);
    const other = mixedLab(ready(parts(1, 0)), Infinity);
    expect(deltaE00(nearest([OCHRE_LADDER, BLUE_LADDER], other, false).lab, other)).toBeLessThan(
      1e-9,
    );
  });
  test("of none, of three and of unlike readings tells none", () => {
    const lab = { L: 50, a: 0, b: 0 };
    expect(() => nearestMixed([], lab, false)).toThrow("count of colours");
    expect(() => nearestMixed([BLUE_LADDER, OCHRE_LADDER, LAMP_LADDER], lab, false)).toThrow(
      "count of colours",
    );
    const inLead = ladder(BLUE, BENCH, "lead");
    expect(nearestMixed([inLead, OCHRE_LADDER], lab, false)).toMatchObject({
      rule: "whites-differ",
    });
  });
});
