/** A colour expected in a white that it was not let down in, held against films integrated step by step in that white. */
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { fittedColours } from "../../lib/optics/fit/fitted-colour.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import {
  expectedLadder,
  expectedRuling,
  expectedTint,
  palestExpected,
  type ExpectedLadder,
} from "../../lib/optics/tints/expected-ladder.ts";
import { changeOfWhite } from "../../lib/optics/tints/white-change.ts";
import {
  BLUE,
  GRID,
  IRON_BLACK,
  LAMP,
  LEAD,
  NO_NOISE,
  OCHRE,
  QUIET_BENCH,
  READING_NOISE,
  syntheticSet,
  TITANIUM,
  YELLOW,
  ZINC,
  type Noise,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

const RATIOS = [1, 0.2, 0.05, 0.01];
const WHITES = { titanium: TITANIUM, lead: LEAD, zinc: ZINC } as const;
type WhiteSlug = keyof typeof WHITES;

function setIn(pigment: SyntheticPigment, slugs: readonly WhiteSlug[], noise: Noise, seed: number) {
  return syntheticSet(
    pigment,
    slugs.map((slug) => ({ slug, white: WHITES[slug], massRatios: RATIOS, ratioKind: "paint" })),
    { ...QUIET_BENCH, noise, seed },
  );
}

/** A colour let down in titanium white alone, and others in titanium and in the white asked for. */
function fitsOf(
  colour: SyntheticPigment,
  bridges: readonly SyntheticPigment[],
  asked: WhiteSlug,
  noise: Noise,
  seed = 1,
): { readonly fit: ColourFit; readonly others: readonly ColourFit[] } {
  return fitted(
    setIn(colour, ["titanium"], noise, seed),
    bridges.map((one, i) => setIn(one, ["titanium", asked], noise, 100 * seed + i)),
  );
}

type DrawdownSet = ReturnType<typeof setIn>;

function fitted(
  own: DrawdownSet,
  bridges: readonly DrawdownSet[],
): { readonly fit: ColourFit; readonly others: readonly ColourFit[] } {
  const fits = fittedColours(new Map([own, ...bridges].entries()));
  const [fit, ...others] = [...fits.values()].map((one) => {
    if (one.kind === "refused") throw new Error(JSON.stringify(one.reasons));
    return one;
  });
  if (fit === undefined) throw new Error("No fit");
  return { fit, others };
}

function expectedIn(
  fit: ColourFit,
  white: string,
  others: readonly ColourFit[],
): ExpectedLadder | undefined {
  const change = changeOfWhite(fit, white, others);
  return change && expectedLadder(fit, change);
}

/** The let-down itself, mixed by volume and integrated, without noise. */
function trueLabs(colour: SyntheticPigment, asked: WhiteSlug) {
  return setIn(colour, [asked], NO_NOISE, 1).tints.map(({ massRatio, reading }) => ({
    massRatio,
    lab: spectrumLab({ grid: GRID, values: reading.spectrum.values }),
  }));
}

describe("expectedLadder", () => {
  // basis: derived. Duncan's mixing by volume, through the differential equations: no algebra shared.
  test.each([
    ["ochre", OCHRE, "lead", 0.6],
    ["ochre", OCHRE, "zinc", 0.6],
    ["blue", BLUE, "lead", 0.6],
    ["yellow", YELLOW, "zinc", 0.6],
  ] as const)(
    "an %s without noise is where it lies in %s, within Delta-E00 %d",
    (_, pigment, asked, limit) => {
      const { fit, others } = fitsOf(pigment, [LAMP], asked, NO_NOISE);
      const ladder = expectedIn(fit, asked, others);
      if (ladder === undefined) throw new Error("Nothing expected");
      for (const { massRatio, lab } of trueLabs(pigment, asked))
        expect(deltaE00(expectedTint(ladder, massRatio).lab, lab), `${massRatio}`).toBeLessThan(
          limit,
        );
    },
  );

  // basis: derived. S of titanium .2381 per gram, of lead .0597: q = 3.99 at 550 nm.
  test("tells how much less the white scatters: ln q is ln of one S by the other, per gram", () => {
    const { fit, others } = fitsOf(OCHRE, [LAMP, IRON_BLACK], "lead", NO_NOISE);
    const ladder = expectedIn(fit, "lead", others);
    expect(ladder?.logChange).toBeCloseTo(Math.log(TITANIUM.S(550) / 4.2 / (LEAD.S(550) / 6.7)), 1);
    expect(changeOfWhite(fit, "lead", others)?.through).toEqual([0, 1]);
  });

  // basis: practice: the more colours were let down in both whites, the better is known how these differ.
  test("goes by that of a colour's own whites which most others share with the one asked for", () => {
    const { fit, others } = fitted(setIn(OCHRE, ["titanium", "zinc"], NO_NOISE, 1), [
      setIn(LAMP, ["titanium", "lead"], NO_NOISE, 2),
      setIn(IRON_BLACK, ["zinc", "lead"], NO_NOISE, 3),
      setIn(BLUE, ["zinc", "lead"], NO_NOISE, 4),
    ]);
    expect(changeOfWhite(fit, "lead", others)?.through).toEqual([1, 2]);
  });

  // basis: derived. Let-downs know ln q to some .02: a thousandth is a twentieth of that.
  test("is told no finer than to a thousandth: a fit that moves by less moves nothing", () => {
    const { fit, others } = fitsOf(OCHRE, [LAMP, IRON_BLACK], "lead", NO_NOISE);
    const moved = others.map((other) => ({
      ...other,
      whites: other.whites.map((white) => ({ ...white, K: white.K.map((k) => k * (1 + 1e-9)) })),
    }));
    const change = changeOfWhite(fit, "lead", others);
    expect(changeOfWhite(fit, "lead", moved)).toEqual(change);
    expect(change?.logChange.every((value) => value === Number(value.toFixed(3)))).toBe(true);
  });

  test("its printed 68 and 90 % hold the true let-downs of noisy benches at least as often as they say", () => {
    const found = [OCHRE, BLUE, YELLOW].flatMap((pigment) =>
      (["lead", "zinc"] as const).flatMap((asked) =>
        [1, 2, 3].flatMap((seed) => {
          const { fit, others } = fitsOf(pigment, [LAMP], asked, READING_NOISE, seed);
          const ladder = expectedIn(fit, asked, others);
          if (ladder === undefined) throw new Error("Nothing expected");
          return trueLabs(pigment, asked).map(({ massRatio, lab }) => {
            const tint = expectedTint(ladder, massRatio);
            return { miss: deltaE00(tint.lab, lab), ...tint.uncertainty };
          });
        }),
      ),
    );
    const inside = (key: "p68" | "p90"): number =>
      found.filter((one) => one.miss <= one[key]).length / found.length;
    expect(found).toHaveLength(72);
    expect(inside("p68")).toBeGreaterThan(0.6);
    expect(inside("p90")).toBeGreaterThan(0.85);
  });

  test("there is none in a white of its own, nor where no other colour was let down in both", () => {
    const { fit, others } = fitsOf(OCHRE, [LAMP], "lead", NO_NOISE);
    expect(expectedIn(fit, "titanium", others)).toBeUndefined();
    expect(expectedIn(fit, "zinc", others)).toBeUndefined();
    expect(expectedIn(fit, "lead", [])).toBeUndefined();
  });

  test("nor through a colour of which something else was weighed, or that was read otherwise", () => {
    const { fit, others } = fitsOf(OCHRE, [LAMP], "lead", NO_NOISE);
    const [lamp] = others;
    if (lamp === undefined) throw new Error("No lamp black");
    const whites = lamp.whites.map((white) => ({ ...white, ratioKind: "pigment" as const }));
    expect(expectedIn(fit, "lead", [{ ...lamp, whites }])).toBeUndefined();
    expect(expectedIn(fit, "lead", [{ ...lamp, geometry: "d/8 included" }])).toBeUndefined();
  });

  test("reaches as far as its own ladder, by how strong it is in each white", () => {
    const { fit, others } = fitsOf(OCHRE, [LAMP], "lead", NO_NOISE);
    const ladder = expectedIn(fit, "lead", others);
    if (ladder === undefined) throw new Error("Nothing expected");
    // Half of 1:100, and 3.99 times weaker still: lead white takes so much less of it.
    expect(palestExpected(ladder)).toBeCloseTo(0.005 / 3.99, 4);
  });

  test.each([0, -1, NaN, Infinity])("refuses a mass ratio of %d", (ratio) => {
    const { fit, others } = fitsOf(OCHRE, [LAMP], "lead", NO_NOISE);
    const ladder = expectedIn(fit, "lead", others);
    if (ladder === undefined) throw new Error("Nothing expected");
    expect(() => expectedTint(ladder, ratio)).toThrow(/mass ratio/);
  });
});

test("what is said of it names both whites, the colours it goes by, and the worst that it may be off", () => {
  const { fit, others } = fitsOf(OCHRE, [LAMP], "lead", NO_NOISE);
  const ladder = expectedIn(fit, "lead", others);
  if (ladder === undefined) throw new Error("Nothing expected");
  const tints = RATIOS.map((ratio) => expectedTint(ladder, ratio));
  const { values, standing } = expectedRuling("Lead", "Titanium", ["Lamp"], tints);
  expect(standing).toBe("estimated");
  expect(values).toMatchObject({ white: "Lead", from: "Titanium", through: ["Lamp"] });
  for (const { uncertainty } of tints)
    expect(values.deltaE00).toBeGreaterThanOrEqual(uncertainty.p90);
});
