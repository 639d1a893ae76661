import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import {
  expectedDispersionRuling,
  measuredDispersionRuling,
} from "../../lib/optics/fit/dispersion.ts";
import type { DrawdownSet, Tint } from "../../lib/optics/fit/drawdown.ts";
import {
  interpolatedAtLightness,
  predictedAtLightness,
} from "../../lib/optics/tints/equal-lightness.ts";
import {
  filmCoefficients,
  flatGround,
  type FilmCoefficients,
} from "../../lib/optics/films/film-coefficients.ts";
import { fittedColour } from "../../lib/optics/fit/fitted-colour.ts";
import { glossDepth, type GlossDepth } from "../../lib/optics/surface/gloss-depth.ts";
import { fitQualityRuling, surfaceRuling } from "../../lib/optics/fit/fit-remarks.ts";
import {
  contrastByGlossRuling,
  glossContrasts,
  filmsHidRuling,
  hidingFilmUm,
  masstoneFilmRuling,
} from "../../lib/optics/films/hiding.ts";
import { ladderModel, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import { mixture } from "../../lib/optics/mixtures/mixture.ts";
import {
  absoluteCoefficients,
  extendedPaint,
} from "../../lib/optics/mixtures/mixed-coefficients.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import { NO_SURFACE, OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { suspects } from "../../lib/optics/fit/outlier-drawdown.ts";
import {
  strengthAtRatios,
  strengthResidualRuling,
} from "../../lib/optics/tints/tinting-strength.ts";
import {
  notLetDownRuling,
  tintRuling,
  whitesRuling,
  type TintStatement,
} from "../../lib/optics/tints/tint-statement.ts";
import { notPredicted } from "../../lib/optics/special-effect.ts";
import { usableDrawdowns } from "../../lib/optics/fit/usable-drawdowns.ts";
import { worded } from "../../lib/words/by-rule.ts";
import { DRAWDOWN_RULINGS } from "../../lib/words/rulings/drawdowns.ts";
import { OPTICS_RULINGS } from "../../lib/words/rulings/optics.ts";
import { wordingsIn } from "../../lib/words/rulings/rulings-in-each.ts";
import { tintWords } from "../../lib/words/rulings/tints.ts";
import { combinedTintSentence, tintSentences } from "../../lib/words/tint-sentence.ts";
import type { DrawdownStatement, PaintStatement } from "../../lib/optics/statements.ts";
import { certain } from "../../lib/quantities/at.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
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
} from "../optics/synthetic-drawdowns.ts";
import { holdSentences, sentenceFaults } from "./statements-held.ts";

const GREY_MASSTONE: Lab = { L: 20, a: 0.5, b: 1 };
const RED_MASSTONE: Lab = { L: 35, a: 50, b: 30 };
const inWhite = (
  white: string,
  lab: Lab,
  masstone: Lab,
  basis: "measured" | "predicted" | "interpolated" = "measured",
): TintStatement => tintRuling(white, [{ lab, basis }], masstone);
const grey = (white: string, a: number, b: number, L = 50): TintStatement =>
  inWhite(white, { L, a, b }, GREY_MASSTONE);

const flat = (R: number, other: Partial<Measurement> = {}): Measurement => ({
  ...flatGround(GRID, R),
  ...other,
});
/** Most wavelengths pass an oil film's surface by a little, and the rest lack much. */
const nearItsSurface: Measurement = {
  spectrum: {
    grid: GRID,
    values: Array.from({ length: GRID.count }, (_, i) => (i < 0.4 * GRID.count ? 0.031 : 0.0362)),
  },
  geometry: "d/8 included",
};
const tint = (other: Partial<Tint>): Tint => ({
  id: "titanium-white 1:20",
  white: "titanium-white",
  massRatio: 0.05,
  ratioKind: "paint",
  reading: flat(0.4),
  ...other,
});
const drawn = (
  tints: readonly Tint[],
  masstone: Measurement = flat(0.04),
  white: Measurement = flat(0.9),
): DrawdownSet => ({ masstone, whites: [{ slug: "titanium-white", masstone: white }], tints });
const refused = (set: DrawdownSet): readonly DrawdownStatement[] => usableDrawdowns(set).leftOut;
const fitReasons = (set: DrawdownSet): readonly DrawdownStatement[] => {
  const fit = fittedColour(set);
  return fit.kind === "refused"
    ? fit.reasons
    : [
        fit.scattering,
        ...fit.remarks,
        ...fit.drawdowns.flatMap(({ leaveOneOutDeltaE00 }) =>
          isStatement(leaveOneOutDeltaE00) ? [leaveOneOutDeltaE00] : [],
        ),
      ];
};

function ladder(
  pigment: SyntheticPigment,
  slug = "titanium-white",
  ratioKind: "pigment" | "paint" = "paint",
) {
  const fit = fitOf(
    syntheticSet(
      pigment,
      [{ slug, white: TITANIUM, massRatios: [0.2, 0.02], ratioKind }],
      QUIET_BENCH,
    ),
  );
  return ladderModel(fit, slug);
}
const ofBlue = ladder(BLUE);
const readOtherwise: LadderModel = { ...ofBlue, fit: { ...ofBlue.fit, geometry: "45/0" } };

const film = (K: number, S: number): FilmCoefficients => ({
  grid: GRID,
  K: Array.from({ length: GRID.count }, () => K),
  S: Array.from({ length: GRID.count }, () => S),
  surface: NO_SURFACE,
  atLeast: [],
  scaleUncertainty: 0.04,
});
const grounds = { black: flat(0.01), white: flat(0.8) };
const filmRead = { film: flat(0.4), filmUm: 75, ground: flat(0.4) };

const found: unknown[] = [
  ...[
    [0.2, -0.6],
    [1, -2.4],
    [-0.4, -4.1],
    [2, 6.5],
  ].map(([a = NaN, b = NaN]) => grey("Titanium White", a, b)),
  inWhite("zinc-white", { L: 50, a: 55, b: 40 }, RED_MASSTONE, "predicted"),
  inWhite("Lead White", { L: 50, a: 50, b: 29 }, RED_MASSTONE, "interpolated"),
  inWhite("Zinc White", { L: 50, a: 30, b: -5 }, RED_MASSTONE),
  inWhite("Zinc White", { L: 50, a: 2, b: 1 }, RED_MASSTONE),
  tintRuling("Titanium-Zinc White", [], GREY_MASSTONE),
  grey("Lead White", 0, 0, 92),
  inWhite("Lead White", { L: 97, a: 0, b: 2 }, { L: 92, a: 0, b: 12 }),
  whitesRuling(50, [
    { white: "Titanium White", a: 0, b: -4.1, uncertainty: { a: 0.4, b: 0.4 } },
    { white: "Lead White", a: 2.2, b: -0.6, uncertainty: { a: 0.4, b: 0.4 } },
  ]),
  whitesRuling(50, [
    { white: "Titanium White", a: 0, b: -4.1, uncertainty: { a: 0.4, b: 0.4 } },
    { white: "Lead White", a: 0.2, b: -3.9, uncertainty: { a: 0.4, b: 0.4 } },
  ]),
  whitesRuling(50, [
    { white: "Titanium White", a: 0, b: -4.1, uncertainty: { a: 2, b: 2 } },
    { white: "Lead White", a: 0.2, b: -1.9, uncertainty: { a: 2, b: 2 } },
  ]),
  whitesRuling(50, []),

  ...["fluorescent" as const, "pearlescent" as const].flatMap(
    (effect) => notPredicted([{ name: "Daylight Orange", effect }]) ?? [],
  ),
  ...refused({
    ...drawn([tint({})]),
    whites: [
      {
        slug: "titanium-white",
        masstone: flat(0.9),
        notPredicted: certain(notPredicted([{ name: "Mica", effect: "pearlescent" }])),
      },
    ],
  }),
  ...usableDrawdowns({ whites: [], tints: [] }).leftOut,
  ...refused(drawn([])),
  ...usableDrawdowns({ whites: [], tints: [], withoutSpectrum: { masstone: true, tints: [] } })
    .leftOut,
  ...refused({
    ...drawn([]),
    withoutSpectrum: {
      masstone: false,
      tints: [{ id: "titanium-white 1:20", white: "titanium-white" }],
    },
  }),
  ...refused(drawn([tint({ white: "zinc-white", id: "zinc-white 1:20" })])),
  ...refused(
    drawn([
      { id: "titanium-white 1:20", white: "titanium-white", massRatio: 0.05, reading: flat(0.4) },
    ]),
  ),
  ...refused(drawn([tint({}), tint({ id: "titanium-white 1:5", ratioKind: "pigment" })])),
  ...refused(drawn([tint({ massRatio: 0 })])),
  ...refused(drawn([tint({ reading: flat(0.02) })])),
  ...refused(drawn([tint({ reading: flat(0.97) })])),
  ...refused(drawn([tint({ reading: flat(0.5) })], flat(0.9), flat(0.8))),
  ...refused(drawn([tint({ reading: flat(0.97) })], flat(0.9), flat(0.8))),
  ...fitReasons(drawn([tint({ reading: flat(0.4, { geometry: "45/0", surface: NO_SURFACE }) })])),
  ...fitReasons(
    drawn(
      [tint({ reading: flat(0.4, { surface: OIL_SURFACE }) })],
      flat(0.04, { surface: { k1: 0.03, k2: 0.5 } }),
    ),
  ),
  ...fitReasons(
    drawn(
      [tint({ reading: flat(0.035, { geometry: "d/8 included", surface: OIL_SURFACE }) })],
      flat(0.034, { geometry: "d/8 included", surface: OIL_SURFACE }),
      flat(0.9, { geometry: "d/8 included", surface: OIL_SURFACE }),
    ),
  ),
  ...fitReasons(
    syntheticSet(
      BLUE,
      [{ slug: "titanium-white", white: TITANIUM, massRatios: [0.2] }],
      QUIET_BENCH,
    ),
  ),
  ...fitReasons(
    syntheticSet(LAMP, [{ slug: "lead-white", white: LEAD, massRatios: [0.02] }], QUIET_BENCH),
  ),
  ...suspects(
    [3, 20, 4].map((leaveOneOut, i) => ({
      tint: `titanium-white 1:${10 ** (i + 1)}`,
      white: "titanium-white",
      leaveOneOut,
      nearest: 5,
      isBetween: i === 1,
      others: i === 1 ? 0.9 : 15,
    })),
  ).values(),
  ...suspects([
    {
      tint: "titanium-white 1:10",
      white: "titanium-white",
      leaveOneOut: 9,
      nearest: 5,
      isBetween: false,
      others: undefined,
    },
  ]).values(),

  predictedAtLightness(ofBlue, 5),
  interpolatedAtLightness([], 50),
  interpolatedAtLightness(
    [
      { massRatio: 1, lab: { L: 30, a: 0, b: 0 } },
      { massRatio: 0.01, lab: { L: 88, a: 0, b: 0 } },
    ],
    50,
  ),
  strengthAtRatios(ofBlue, ladder(LAMP, "zinc-white"), 0.05, 0.05),
  mixture([
    { ladder: ofBlue, parts: 1 },
    { ladder: ladder(BLUE, "titanium-white", "pigment"), parts: 1 },
  ]),
  strengthAtRatios(ofBlue, ladder(OCHRE), 0.05, 0.05),
  ...(["absorption", "depth"] as const).map((by) =>
    strengthResidualRuling(
      { strength: 0.8, by, uncertainty: 0.1, residualDeltaE00: 2.4 },
      "Lamp Black",
      "Titanium White",
    ),
  ),
  strengthAtRatios(ofBlue, ladder(LAMP), 0.05, 0.05),
  mixture([
    { ladder: ofBlue, parts: 1 },
    { ladder: readOtherwise, parts: 1 },
  ]),
  surfaceRuling({ surface: OIL_SURFACE, by: "stated" }),
  surfaceRuling({ surface: { k1: 0.02, k2: 0.596 }, by: "darkest-reading" }),
  ...(["default", "leave-one-out"] as const).flatMap((by) => [
    surfaceRuling({ surface: OIL_SURFACE, by }),
    surfaceRuling({ surface: NO_SURFACE, by }),
  ]),
  fitQualityRuling(1, 0),
  fitQualityRuling(0.9, 3),
  fitQualityRuling(4.2, 3),
  notLetDownRuling(["Lead White", "Zinc White"]),
  filmsHidRuling(
    { ...film(2, 0.05), atLeast: Array.from({ length: GRID.count }, (_, i) => i) },
    [6, 12],
    grounds,
  ),
  contrastByGlossRuling(
    glossContrasts({ ...film(0.02, 0.002), surface: OIL_SURFACE }, 75, grounds),
  ),
  masstoneFilmRuling(0.6, true),
  masstoneFilmRuling(0.6, false),
  measuredDispersionRuling(0.62),
  measuredDispersionRuling(1.3),
  measuredDispersionRuling(0.96),
  expectedDispersionRuling(true),
  expectedDispersionRuling(false),
  hidingFilmUm(film(0, 0.00001), grounds),
  filmCoefficients([], undefined, NO_SURFACE),
  filmCoefficients([filmRead], flat(0.4), NO_SURFACE),
  absoluteCoefficients(ofBlue.fit, "zinc-white", film(0.01, 0.1), 1),
  glossDepth(flat(0.3, { surface: NO_SURFACE })),
  glossDepth(flat(0.03, { geometry: "d/8 included" })),
  glossDepth(nearItsSurface),
  ...[0.01, 0.8].map((R) => (glossDepth(flat(R)) as GlossDepth).ruling),
  extendedPaint(film(2, 0.05), film(0.0005, 0.0004)).ruling,
  extendedPaint(film(2, 0.05), film(0.01, 1)).ruling,
];

const IN_WHITES = { ...wordingsIn("en", OPTICS_RULINGS), ...tintSentences(tintWords("en")) };

holdSentences<PaintStatement | DrawdownStatement>(
  "sentences of optics",
  { ...IN_WHITES, ...DRAWDOWN_RULINGS },
  found.filter((one): one is PaintStatement | DrawdownStatement => isStatement(one)),
);

describe("the sentence of a colour in a white", () => {
  test("gives the coordinate that it turns along, with a true minus, and both where it goes between", () => {
    expect(worded(IN_WHITES, grey("Titanium White", -0.4, -4.1))).toBe(
      "Turns clearly blue in Titanium White (b* \u22124.1 at L* 50).",
    );
    expect(worded(IN_WHITES, grey("Prussian White", 1.6, 2.2))).toBe(
      "Leans brown in Prussian White (a* 1.6, b* 2.2 at L* 50).",
    );
    expect(worded(IN_WHITES, grey("lead-white", 0.64, 0.1))).toBe(
      "Stays near neutral in lead white (a* 0.6 at L* 50).",
    );
  });

  test("says of a chromatic colour what becomes of chroma and hue, and on what it rests", () => {
    expect(
      worded(IN_WHITES, inWhite("Zinc White", { L: 50, a: 55, b: 40 }, RED_MASSTONE, "predicted")),
    ).toBe(
      "Gains chroma and turns towards yellow in Zinc White (C* 58 to 68 at L* 50, predicted).",
    );
    expect(
      worded(IN_WHITES, inWhite("Zinc White", { L: 50, a: -5, b: -24 }, { L: 8, a: 1, b: -2 })),
    ).toBe("Gains chroma and comes out blue in Zinc White (C* 2 to 25 at L* 50).");
    expect(worded(IN_WHITES, inWhite("Zinc White", { L: 50, a: 50, b: 29 }, RED_MASSTONE))).toBe(
      "Keeps chroma and hue in Zinc White (C* 58 at L* 50).",
    );
  });
});

describe("combinedTintSentence", () => {
  const told = (...rulings: readonly TintStatement[]): string =>
    combinedTintSentence(
      rulings.map((ruling) => ({ white: ruling.values.white, ruling })),
      tintWords("en"),
    );

  test("puts the strongest first and names a coordinate and L* once", () => {
    const [lead, titanium] = [
      grey("Basic lead carbonate", 0.1, -0.6),
      grey("Titanium White", -0.4, -4.1),
    ];
    expect(told(lead, titanium)).toBe(told(titanium, lead));
    expect(told(lead, titanium)).toBe(
      "Turns clearly blue in Titanium White (b* \u22124.1 at L* 50); stays near neutral in Basic lead carbonate (\u22120.6).",
    );
  });

  test("names L* and coordinate again where they differ", () => {
    expect(told(grey("Zinc White", -0.4, -4.1), grey("Lead White", -1.2, 0.1, 61))).toBe(
      "Turns clearly blue in Zinc White (b* \u22124.1 at L* 50); stays near neutral in Lead White (a* \u22121.2 at L* 61).",
    );
  });

  test("tells whites that do the same together, and two alike to the digit each with its figure", () => {
    expect(
      told(grey("Titanium White", 0, -4.1), grey("Zinc White", 0, -5), grey("Lead White", 0, -4.1)),
    ).toBe(
      "Turns clearly blue in Zinc White (b* \u22125.0 at L* 50), Titanium White (\u22124.1) and Lead White (\u22124.1).",
    );
  });

  test("leaves out a white that cannot be judged, and says so plainly when none can", () => {
    expect(told(grey("Titanium White", 0, -4.1), tintRuling("Zinc White", [], GREY_MASSTONE))).toBe(
      "Turns clearly blue in Titanium White (b* \u22124.1 at L* 50).",
    );
    const none = "Not yet tried in white.";
    expect([told(), told(tintRuling("Zinc White", [], GREY_MASSTONE))]).toEqual([none, none]);
  });

  test("drops figures, then the mildest whites, before it grows past 180 characters", () => {
    const many = [
      "Titanium White",
      "Basic lead carbonate",
      "Zinc White",
      "Titanium-Zinc White",
      "Lithopone",
      "White of a workshop far away",
    ].map((white, i) => grey(white, 0, 1.1 * (i + 1)));
    expect(told(...many.slice(0, 5))).toBe(
      "Turns clearly yellow in Lithopone (b* 5.5 at L* 50) and Titanium-Zinc White; leans yellow in Zinc White and Basic lead carbonate; stays near neutral in Titanium White.",
    );
    const most = told(...many);
    expect(most).toMatch(
      /^Turns strongly yellow in White of a workshop far away \(b\* 6.6 at L\* 50\); .*; other whites below\.$/,
    );
    expect(most.length).toBeLessThanOrEqual(180);
  });

  test("is one sentence of no more than 180 characters, whatever the colours", () => {
    const coordinate = fc.double({ min: -60, max: 60, noNaN: true });
    const labs = fc.record({
      L: fc.double({ min: 5, max: 95, noNaN: true }),
      a: coordinate,
      b: coordinate,
    });
    const whites = fc.uniqueArray(
      fc.constantFrom(
        "Titanium White",
        "Lead White",
        "Zinc White",
        "Titanium-Zinc White",
        "Basic lead carbonate",
      ),
      { minLength: 1 },
    );
    fc.assert(
      fc.property(
        whites,
        fc.array(labs, { minLength: 5, maxLength: 5 }),
        labs,
        (names, tints, masstone) => {
          const rulings = names.map((white, i) => inWhite(white, tints[i] ?? masstone, masstone));
          const text = told(...rulings);
          expect(sentenceFaults(text), text).toEqual([]);
          expect(text.length).toBeLessThanOrEqual(180);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});
