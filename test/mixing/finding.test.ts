import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import {
  foundMixes,
  type FindingWish,
  type FoundMix,
} from "../../lib/mixing/finding/found-mixes.ts";
import { judgedMix, mixPasses, paintPasses } from "../../lib/mixing/finding/judged-mix.ts";
import { readTarget, type Target } from "../../lib/mixing/finding/target.ts";
import { mixableColours } from "../../lib/mixing/mixing-range.ts";
import { predictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import { mixedLab, mixture } from "../../lib/optics/mixtures/mixture.ts";
import type { LadderModel } from "../../lib/optics/tints/ladder.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { RANGE } from "./demonstration-range.ts";

const WHITE = "titanium-white";

function wish(target: Target, more: Partial<FindingWish> = {}): FindingWish {
  return {
    target,
    white: WHITE,
    mustHold: [],
    coloursMost: 3,
    without: [],
    isWhiteFree: false,
    ...more,
  };
}

function found(one: FindingWish): FoundMix[] {
  return [...foundMixes(one, RANGE)].flatMap((mix) => mix ?? []);
}

function plain(L: number, a: number, b: number): Target {
  return { name: "wanted", origin: "lab", lab: { L, a, b }, p68: 0 };
}

/** Mixtures whose truth is known, of the bench's own models: the finder has to give the shares back. */
const KNOWN: readonly {
  readonly colours: readonly (readonly [string, number])[];
  readonly white: number;
}[] = [
  { colours: [["bone-black", 1]], white: 20 },
  {
    colours: [
      ["raw-umber", 2],
      ["ultramarine-blue", 1],
    ],
    white: 10,
  },
  {
    colours: [
      ["cadmium-yellow", 5],
      ["phthalocyanine-green", 1],
    ],
    white: 12,
  },
  {
    colours: [
      ["cadmium-red", 3],
      ["yellow-ochre", 2],
      ["bone-black", 1],
    ],
    white: 10,
  },
  {
    colours: [
      ["quinacridone-magenta", 1],
      ["ultramarine-blue", 3],
      ["yellow-iron-oxide", 1],
    ],
    white: 15,
  },
];

describe.each(KNOWN)("of a mixture of $colours in white $white", ({ colours, white }) => {
  const mix = {
    by: "mass" as const,
    colours: colours.map(([slug, parts]) => ({ slug, parts })),
    white: { slug: WHITE, parts: white },
  };
  const made = predictedMix(mix, RANGE);
  if (isStatement(made)) throw new Error(`Unexpected refusal: ${made.rule}`);
  const target: Target = {
    name: "made",
    origin: "reading",
    lab: made.lab,
    spectrum: made.spectrum,
    p68: 0,
  };
  const slugs = colours.map(([slug]) => slug);
  const [own] = found(wish(target, { colours: slugs, mustHold: slugs, coloursMost: slugs.length }));
  const total = white + colours.reduce((sum, [, parts]) => sum + parts, 0);

  test("every share is found again within 5 points", () => {
    expect(own?.deltaE00).toBeLessThan(0.1);
    for (const [slug, parts] of colours) {
      const share = own?.mix.colours.find((part) => part.slug === slug)?.parts ?? NaN;
      expect(Math.abs(share - parts / total), slug).toBeLessThan(0.05);
    }
  });
});

describe("a search by a grid finds nothing better", () => {
  const TARGETS = [plain(50, -1, -3), plain(45, 55, 30), plain(60, -25, 30), plain(35, 20, -60)];
  const COLOURS = [
    "cadmium-red",
    "cadmium-yellow",
    "ultramarine-blue",
    "phthalocyanine-green",
    "bone-black",
  ];
  const ladders = COLOURS.map((slug) => RANGE.ladder(slug, WHITE)).filter(
    (ladder): ladder is LadderModel => !isStatement(ladder),
  );
  /** Parts of each colour to one of white, by equal ratios, and none. */
  const amounts = (steps: number, ratio: number): number[] => [
    0,
    ...Array.from({ length: steps }, (_, i) => 0.002 * ratio ** i),
  ];
  const choices = (count: number, from: number): LadderModel[][] =>
    count === 0
      ? [[]]
      : ladders
          .slice(from)
          .flatMap((ladder, i) =>
            choices(count - 1, from + i + 1).map((others) => [ladder, ...others]),
          );

  test.each(
    TARGETS.flatMap((target) => [
      { target, count: 2, each: amounts(14, 1.8) },
      { target, count: 3, each: amounts(9, 2.6) },
    ]),
  )("than the finder by more than .2, of $count colours for $target.lab", (tried) => {
    const { target, count, each } = tried;
    let best = Infinity;
    for (const chosen of choices(count, 0)) {
      const parts = chosen.reduce<number[][]>(
        (before) => before.flatMap((own) => each.map((amount) => [...own, amount])),
        [[]],
      );
      for (const own of parts) {
        const total = own.reduce((sum, amount) => sum + amount, 0);
        if (total === 0) continue;
        const mixed = mixture(chosen.map((ladder, i) => ({ ladder, parts: own[i] ?? 0 })));
        if (isStatement(mixed)) throw new Error(mixed.rule);
        best = Math.min(best, deltaE00(mixedLab(mixed, total), target.lab));
      }
    }
    const ours = Math.min(
      ...found(wish(target, { colours: COLOURS, coloursMost: count })).map((one) => one.deltaE00),
      // Out of reach the finder lists nothing, and the grid may find nothing near either.
      12,
    );
    expect(ours).toBeLessThanOrEqual(best + 0.2);
  });
});

describe("what a recipe has to be", () => {
  const limits = { withoutMetals: ["lead", "cadmium"], isUnlabelled: false };

  test("without lead and cadmium no paint with either is in it", () => {
    const allowed = mixableColours(RANGE, WHITE).filter((paint) => paintPasses(paint, limits));
    expect(allowed.map(({ slug }) => slug)).not.toContain("cadmium-red");
    expect(allowed.map(({ slug }) => slug)).not.toContain("cadmium-yellow");
    expect(allowed.length).toBeGreaterThan(10);
  });

  test("dry within days counts the later end", () => {
    const mix = {
      by: "mass" as const,
      colours: [{ slug: "bone-black", parts: 1 }],
      white: { slug: WHITE, parts: 10 },
    };
    expect(mixPasses(mix, { ...limits, days: 100 }, RANGE)).toBe(true);
    expect(mixPasses(mix, { ...limits, days: 1 }, RANGE)).toBe(false);
  });

  test("what has to be in it is in every recipe", () => {
    const all = found(wish(plain(50, -1, -3), { mustHold: ["ultramarine-blue"], coloursMost: 2 }));
    expect(all.length).toBeGreaterThan(0);
    expect(
      all.filter(({ mix }) => !mix.colours.some(({ slug }) => slug === "ultramarine-blue")),
    ).toEqual([]);
  });
});

describe("metamerism of a recipe", () => {
  test("is what the special index of CIE 15 gives, worked out here by itself", () => {
    const reading = RANGE.masstone("red-iron-oxide") ?? RANGE.masstone("burnt-sienna");
    if (reading === undefined) throw new Error("Unexpected range without an earth");
    const target = readTarget("earth", "range", reading);
    const [best] = found(wish(target, { coloursMost: 2, without: ["burnt-sienna"] })).toSorted(
      (one, other) => one.deltaE00 - other.deltaE00,
    );
    if (best === undefined) throw new Error("Unexpected earth that nothing comes near");
    const judged = judgedMix(best, target, RANGE);
    const made = predictedMix(best.mix, RANGE);
    if (isStatement(made) || target.spectrum === undefined) throw new Error("Unexpected refusal");
    const [day, own] = [
      tristimulus(target.spectrum, "D65/10"),
      tristimulus(made.spectrum, "D65/10"),
    ];
    const lamp = tristimulus(made.spectrum, "A/10");
    const corrected = {
      X: (lamp.X * day.X) / own.X,
      Y: (lamp.Y * day.Y) / own.Y,
      Z: (lamp.Z * day.Z) / own.Z,
    };
    const expected = deltaE00(
      xyzToLab(tristimulus(target.spectrum, "A/10"), "A/10"),
      xyzToLab(corrected, "A/10"),
    );
    expect(judged.lamps.kind).toBe("parts");
    expect(judged.lamps.deltaE00.incandescent).toBeCloseTo(expected, 6);
  });
});
