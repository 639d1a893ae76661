import { describe, expect, test } from "vitest";
import { isStatement } from "../../lib/quantities/statement.ts";
import {
  expectedDispersionRuling,
  LUMP_STRENGTH,
  measuredDispersionRuling,
  strengthKeptInLumps,
} from "../../lib/optics/fit/dispersion.ts";
import { fittedColours } from "../../lib/optics/fit/fitted-colour.ts";
import { ladderModel, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import {
  paintMassRatio,
  paintVolumeRatio,
  partsOfWhite,
  pigmentMassRatio,
} from "../../lib/optics/mixtures/paint-parts.ts";
import {
  comparedStrength,
  strengthAtRatios,
  strengthTakenAt,
  type StrengthAtRatios,
} from "../../lib/optics/tints/tinting-strength.ts";
import type { WavelengthGrid } from "../../lib/quantities/spectrum.ts";
import { checkTable } from "../support/checks.ts";
import {
  BLUE,
  fitOf,
  GRID,
  LAMP,
  LEAD,
  OCHRE,
  QUIET_BENCH,
  syntheticSet,
  TITANIUM,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

function ladderOf(colour: SyntheticPigment, slug = "titanium"): LadderModel {
  const fit = fitOf(
    syntheticSet(
      colour,
      [{ slug, white: slug === "lead" ? LEAD : TITANIUM, massRatios: [0.1, 0.02] }],
      QUIET_BENCH,
    ),
  );
  return ladderModel(fit, slug);
}

/** At one ratio of both, or at one of each. */
function strength(
  sample: LadderModel,
  reference: LadderModel,
  ratio: number,
  referenceRatio = ratio,
): StrengthAtRatios {
  const found = strengthAtRatios(sample, reference, ratio, referenceRatio);
  if (isStatement(found)) throw new Error(`Unexpected absence ${found.rule}`);
  return found;
}

const scaled = (
  pigment: SyntheticPigment,
  by: number,
  density = pigment.density,
): SyntheticPigment => ({ K: (nm) => by * pigment.K(nm), S: (nm) => by * pigment.S(nm), density });

describe("strengthAtRatios", () => {
  const lamp = ladderOf(LAMP);
  const blue = ladderOf(BLUE);

  test("of a colour beside itself is 1", () => {
    for (const ladder of [lamp, blue]) expect(strength(ladder, ladder, 0.03).strength).toBe(1);
  });

  test.each<[string, SyntheticPigment, LadderModel]>([
    ["a grey", LAMP, lamp],
    ["a blue", BLUE, blue],
  ])(
    "of %s with a third of the pigment is a third, less what its own scattering hides",
    (_, pigment, reference) => {
      // theta - theta_w of a let-down by hand, at 550 nm for the grey (K/S falls alike everywhere) and at the peak, 600 nm, for the blue.
      const nm = pigment === BLUE ? 600 : 550;
      const added = (share: number): number => {
        const [colour, white] = [(0.03 / pigment.density) * share, 1 / TITANIUM.density];
        const theta =
          (colour * pigment.K(nm) + white * TITANIUM.K(nm)) /
          (colour * pigment.S(nm) + white * TITANIUM.S(nm));
        return theta - TITANIUM.K(nm) / TITANIUM.S(nm);
      };
      const expected = added(1 / 3) / added(1);
      expect(
        strength(ladderOf(scaled(pigment, 1 / 3)), reference, 0.03).strength / expected,
      ).toBeCloseTo(1, 2);
      expect(expected).toBeGreaterThan(1 / 3);
      expect(expected).toBeLessThan(0.36);
    },
  );

  test("by volume a denser colour makes up for what it lacks by mass", () => {
    const dense = ladderOf(scaled(BLUE, 1, 2 * BLUE.density));
    expect(strength(dense, blue, 0.03).strength).toBeLessThan(0.55);
    const byVolume = strength(dense, blue, 2 * 0.03, 0.03);
    expect(byVolume.strength).toBeCloseTo(1, 2);
    expect(byVolume.at).toBe(600);
  });

  test("of two greys is weighted by y-bar", () => {
    expect(strength(ladderOf(scaled(LAMP, 0.5)), lamp, 0.02).at).toBe("y-bar");
  });

  test("is taken where it was first taken, at ratios that differ", () => {
    expect(strengthAtRatios(blue, blue, 0.03, 0.03)).toEqual({ strength: 1, at: 600 });
    expect(strengthTakenAt(600, blue, blue, 0.06, 0.03)).toBeCloseTo(2, 0);
    for (const bad of [0, NaN])
      expect(() => strengthAtRatios(blue, blue, 0.03, bad)).toThrow(`The mass ratio is ${bad}`);
  });

  test("has no figure across hues or whites", () => {
    expect(strengthAtRatios(ladderOf(OCHRE), blue, 0.03, 0.03)).toMatchObject({
      rule: "hues-not-comparable",
      values: { referenceNm: 600 },
    });
    expect(strengthAtRatios(lamp, blue, 0.03, 0.03)).toEqual({
      rule: "grey-beside-colour",
      values: { grey: "sample" },
    });
    expect(strengthAtRatios(ladderOf(BLUE, "lead"), blue, 0.03, 0.03)).toEqual({
      rule: "whites-differ",
      values: { sample: "lead", reference: "titanium" },
    });
  });

  test("is compared up to 40 nm between the wavelengths of greatest absorption", () => {
    const grid = { startNm: 400, stepNm: 2, count: 151 };
    const peakedAt = (peakNm: number): LadderModel => {
      const pigment = {
        K: (nm: number) => 0.05 + 3 * Math.exp(-(((nm - peakNm) / 55) ** 2)),
        S: () => 0.25,
        density: 2.4,
      };
      const white = { K: () => 0.002, S: () => 1, density: 4.2 };
      const fit = fitOf(
        syntheticSet(pigment, [{ slug: "white", white, massRatios: [0.1, 0.02] }], {
          ...QUIET_BENCH,
          grid,
        }),
      );
      return ladderModel(fit, "white");
    };
    const reference = peakedAt(600);
    expect(strengthAtRatios(peakedAt(560), reference, 0.03, 0.03)).toMatchObject({ at: 600 });
    expect(strengthAtRatios(peakedAt(558), reference, 0.03, 0.03)).toEqual({
      rule: "hues-not-comparable",
      values: { sampleNm: 558, referenceNm: 600 },
    });
  });

  test("refuses what is no ratio", () => {
    for (const bad of [0, -1, NaN, Infinity])
      expect(() => strengthAtRatios(blue, blue, bad, 0.03)).toThrow(`The mass ratio is ${bad}`);
  });
});

const PARTS = {
  basis: "derived",
  source: "duncan-1940",
  locator: "arithmetic",
  tolerance: 1e-12,
} as const;
checkTable<readonly [number, number, number]>("paintMassRatio", (args) => paintMassRatio(...args), [
  {
    ...PARTS,
    input: [0.1, 0.5, 0.8],
    expected: 0.16,
    note: "1 g of pigment in 2 g of colour to 10 g in 12.5 g of white: 2/12.5",
  },
]);
checkTable<readonly [number, number, number]>(
  "paintVolumeRatio",
  (args) => paintVolumeRatio(...args),
  [{ ...PARTS, input: [0.1, 1.25, 2.5], expected: 0.2, note: "1 g in .8 cm3 to 10 g in 4 cm3" }],
);

describe("parts", () => {
  test("pigment and paint ratios undo each other, and parts of white are the inverse", () => {
    expect(pigmentMassRatio(paintMassRatio(0.07, 0.45, 0.82), 0.45, 0.82)).toBeCloseTo(0.07, 15);
    expect(partsOfWhite(0.05)).toBe(20);
  });

  test("refuse what is no ratio, no fraction, no density", () => {
    for (const bad of [0, -1, NaN, Infinity]) {
      expect(() => paintMassRatio(bad, 0.5, 0.5)).toThrow("The mass ratio of pigments");
      expect(() => pigmentMassRatio(bad, 0.5, 0.5)).toThrow("The mass ratio of paints");
      expect(() => paintVolumeRatio(1, bad, 1)).toThrow("The density of the colour");
      expect(() => paintVolumeRatio(1, 1, bad)).toThrow("The density of the white");
      expect(() => partsOfWhite(bad)).toThrow("The ratio of colour to white");
      expect(() => paintMassRatio(1, bad, 0.5)).toThrow("The mass fraction of pigment");
    }
    expect(() => paintMassRatio(1, 0.5, 1.01)).toThrow(
      "The mass fraction of pigment is 1.01; right would be 0 < fraction <= 1",
    );
    expect(paintMassRatio(1, 1, 1)).toBe(1);
  });
});

describe("dispersion", () => {
  test.each([
    // Share of strength kept, agglomerate-strength
    [0.5, 0.45, 0.59],
    [1, 0.23, 0.34],
    [2, 0.11, 0.17],
    [5, 0.04, 0.07],
  ])("lumps of %s um keep %s-%s", (lumpUm, least, most) => {
    expect(strengthKeptInLumps(lumpUm)[0]).toBeCloseTo(least, 12);
    expect(strengthKeptInLumps(lumpUm)[1]).toBeCloseTo(most, 12);
  });

  test("larger lumps always keep less", () => {
    const kept = Array.from({ length: 46 }, (_, i) => strengthKeptInLumps(0.5 + i / 10));
    for (const end of [0, 1] as const) {
      const ends = kept.map((range) => range[end]);
      expect(ends).toEqual(ends.toSorted((a, b) => b - a));
    }
    expect(LUMP_STRENGTH.map(({ lumpUm }) => lumpUm)).toEqual([0.5, 1, 2, 5]);
  });

  test.each([0.49, 5.01, NaN])("refuses lumps of %s um", (lumpUm) => {
    expect(() => strengthKeptInLumps(lumpUm)).toThrow(`The diameter of lumps is ${lumpUm}`);
  });

  test.each([
    [0.899, "milled-stronger"],
    [0.901, "alike-mulled-and-milled"],
    [1.099, "alike-mulled-and-milled"],
    [1.101, "mulled-stronger"],
  ])("mulled at %s of milled: %s", (ratio, rule) => {
    expect(measuredDispersionRuling(ratio)).toMatchObject({
      rule,
      values: { strength: ratio },
      standing: "derived",
    });
  });

  test("expectations are estimates, with a figure for carbon alone", () => {
    expect(expectedDispersionRuling(true)).toEqual({
      rule: "mulled-weaker-paler-bluer",
      standing: "estimated",
      source: "agglomerate-strength",
      values: { kept: [expect.closeTo(0.23, 12), expect.closeTo(0.59, 12)], lumpsUm: [0.5, 1] },
    });
    expect(expectedDispersionRuling(false)).toMatchObject({
      rule: "mulled-weaker",
      standing: "estimated",
      values: {},
    });
    for (const bad of [0, NaN, Infinity])
      expect(() => measuredDispersionRuling(bad)).toThrow("The relative strength");
  });
});

describe("strength with its ±, by depth where K/S would be extrapolated", () => {
  const drawnAt = (pigment: SyntheticPigment, massRatios: readonly number[]): LadderModel => {
    const fit = fitOf(
      syntheticSet(pigment, [{ slug: "white", white: TITANIUM, massRatios }], {
        ...QUIET_BENCH,
        seed: 6,
      }),
    );
    return ladderModel(fit, "white");
  };
  const full = drawnAt(OCHRE, [1, 0.2, 0.05]);
  const pale = drawnAt(OCHRE, [0.05, 0.02]);

  test("a colour is as strong as itself by depth too, and hardly differs", () => {
    const found = comparedStrength(400, pale, full, 0.5, 0.5);
    expect(found.by).toBe("depth");
    expect(found.strength).toBeGreaterThan(0.9);
    expect(found.strength).toBeLessThan(1.1);
    expect(found.residualDeltaE00).toBeLessThan(1);
  });

  test("K/S serves within reach of the let-downs", () => {
    const found = comparedStrength(400, full, full, 0.5, 0.5);
    expect(found.by).toBe("absorption");
    expect(found.strength).toBeCloseTo(1, 9);
    expect(found.residualDeltaE00).toBeLessThan(1e-6);
  });

  const half = drawnAt(scaled(OCHRE, 0.5), [1, 0.2, 0.05]);

  test("K/S serves up to twice beyond the strongest let-down and half of the palest, depth past them", () => {
    for (const [sample, massRatio, by] of [
      [half, 0.0251, "absorption"],
      [half, 0.0249, "depth"],
      [pale, 0.099, "absorption"],
      [pale, 0.101, "depth"],
    ] as const)
      expect(comparedStrength(400, sample, full, massRatio, massRatio).by, `${massRatio}`).toBe(by);
  });

  // basis: derived. With twice the mass a colour of half the pigment is the same let-down.
  test("let down to equal strength, a colour of half the pigment reads as the whole one", () => {
    const found = comparedStrength(400, half, full, 0.2, 0.2);
    expect(found.strength).toBeGreaterThan(0.45);
    expect(found.strength).toBeLessThan(0.6);
    expect(found.residualDeltaE00).toBeLessThan(1);
  });

  test("is no surer than the weighing of both", () => {
    // Worked by hand: 3 % each, in quadrature.
    expect(comparedStrength(400, full, full, 0.2, 0.2).uncertainty).toBeGreaterThan(0.0424);
    expect(comparedStrength(400, pale, full, 0.5, 0.5).uncertainty).toBeGreaterThan(
      comparedStrength(400, full, full, 0.2, 0.2).uncertainty,
    );
  });
});

test("a colour read by another instrument, in other steps over another range, is as strong as itself", () => {
  const read = (grid: WavelengthGrid) =>
    syntheticSet(BLUE, [{ slug: "titanium", white: TITANIUM, massRatios: [0.1, 0.02] }], {
      ...QUIET_BENCH,
      grid,
    });
  const fits = fittedColours(
    new Map([
      ["fine", read({ startNm: 380, stepNm: 5, count: 71 })],
      ["coarse", read(GRID)],
    ]),
  );
  const [fine, coarse] = [...fits.values()].map((fit) => {
    if (fit.kind === "refused") throw new Error(JSON.stringify(fit.reasons));
    return ladderModel(fit, "titanium");
  });
  if (fine === undefined || coarse === undefined) throw new Error("two were fitted");
  expect(fine.fit.grid).toEqual(GRID);
  expect(strength(fine, coarse, 0.05).strength).toBeCloseTo(1, 6);
});
