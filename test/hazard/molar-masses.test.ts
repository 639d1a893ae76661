import { describe, expect, test } from "vitest";
import { EARTH_MANGANESE_DIOXIDE } from "../../lib/hazard/studio/manganese-dioxide.ts";
import { ATOMIC_WEIGHTS, type Element } from "../../lib/hazard/studio/metal-content.ts";

/** Molar masses of pigments [g/mol], as handbooks of chemistry print them; memory. */
const MOLAR_MASSES: readonly (readonly [
  string,
  Readonly<Partial<Record<Element, number>>>,
  number,
])[] = [
  ["chromium oxide, Cr2O3", { Cr: 2, O: 3 }, 151.99],
  ["manganese dioxide, MnO2", { Mn: 1, O: 2 }, 86.94],
  ["cobalt aluminate, CoAl2O4", { Co: 1, Al: 2, O: 4 }, 176.89],
  ["nickel oxide, NiO", { Ni: 1, O: 1 }, 74.69],
  ["copper oxide, CuO", { Cu: 1, O: 1 }, 79.55],
  ["orpiment, As2S3", { As: 2, S: 3 }, 246.04],
  ["strontium chromate, SrCrO4", { Sr: 1, Cr: 1, O: 4 }, 203.61],
  ["cadmium sulphide, CdS", { Cd: 1, S: 1 }, 144.48],
  ["cadmium selenide, CdSe", { Cd: 1, Se: 1 }, 191.37],
  ["antimony oxide, Sb2O3", { Sb: 2, O: 3 }, 291.52],
  ["barium sulphate, BaSO4", { Ba: 1, S: 1, O: 4 }, 233.39],
  ["vermilion, HgS", { Hg: 1, S: 1 }, 232.66],
  ["lead phosphate, Pb3P2O8", { Pb: 3, P: 2, O: 8 }, 811.54],
  ["hydrogen cyanide, HCN", { H: 1, C: 1, N: 1 }, 27.026],
  ["potassium hydroxide, KOH", { K: 1, O: 1, H: 1 }, 56.11],
];

test.each(MOLAR_MASSES)(
  "%s: to a ten thousandth, as far as sulphur is known",
  (_, formula, printed) => {
    const sum = Object.entries(formula).reduce(
      (mass, [element, count]) => mass + count * ATOMIC_WEIGHTS[element as Element],
      0,
    );
    expect(Math.abs(sum / printed - 1)).toBeLessThan(1e-4);
  },
);

test("every element is in one of them", () => {
  const weighed = new Set(MOLAR_MASSES.flatMap(([, formula]) => Object.keys(formula)));
  expect(Object.keys(ATOMIC_WEIGHTS).filter((element) => !weighed.has(element))).toEqual([]);
});

describe("manganese dioxide in brown earths", () => {
  /** An umber holds 5 to 20 % of it, a sienna well under that; memory. */
  test("an umber holds 5 to 20 %, and always more than a sienna", () => {
    expect(EARTH_MANGANESE_DIOXIDE.umber).toEqual([0.05, 0.2]);
    expect(EARTH_MANGANESE_DIOXIDE.sienna[1]).toBeLessThan(EARTH_MANGANESE_DIOXIDE.umber[0]);
  });
});
