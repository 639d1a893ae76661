/** A folder of all measured oil paints says nothing that its readings do not bear. Source: reconstructed-oil-paints. */
import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { mixedLab, mixture } from "../../lib/optics/mixtures/mixture.ts";
import { ladderModel, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import { tintReadings } from "../../lib/optics/tints/tint-model.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { allFits, allSheets } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { oilPaintFolder } from "./oil-paint-folder.ts";

function workedFolder(blackMasstone?: string) {
  const { content, home } = oilPaintFolder(blackMasstone);
  const { records, diagnostics } = loadRecords(content, home);
  if (records === undefined) throw new Error(JSON.stringify(diagnostics));
  return {
    sheets: new Map(allSheets(records).map((sheet) => [sheet.slug, sheet])),
    fits: allFits(records),
    diagnostics,
  };
}

const rules = (sheet: Sheet | undefined): string[] =>
  sheet?.optics.reasons.map(({ rule }) => rule) ?? [];

describe.each([
  ["as it was read, bone black without a masstone", undefined],
  ["with its darkest let-down for bone black's masstone", "07F"],
] as const)("the folder %s", (_, blackMasstone) => {
  const { sheets, fits, diagnostics } = workedFolder(blackMasstone);
  const ladders = [...fits.values()].flatMap((fit) =>
    fit.kind === "fit" ? fit.whites.map(({ slug }) => ladderModel(fit, slug)) : [],
  );
  const ratios = Array.from({ length: 61 }, (_, i) => 10 ** (-3 + i / 10));

  test("holds every paint, and is told of nothing but a pigment that is not known here", () => {
    expect(sheets.size).toBeGreaterThan(25);
    expect([...new Set(diagnostics.map(({ rule }) => rule))]).toEqual([
      "records/unknown-colour-index-name",
    ]);
  });

  test("no let-down is said to contradict another: they were weighed with care, and some are films", () => {
    const suspects = [...sheets.values()].flatMap(({ slug, tints }) =>
      tints.flatMap(({ steps }) => steps.flatMap(({ suspect }) => (suspect ? [slug] : []))),
    );
    expect(suspects).toEqual([]);
  });

  // Y over black to over white of the readings: .165, .167, .183, .703, .192 and .089, all others above .75.
  test.each([
    "eosin-lake-one",
    "eosin-lake-two",
    "eosin-lake-three",
    "emerald-green",
    "barium-sulphate",
    "calcium-carbonate",
  ])("%s is said to be a film that lets its ground through", (slug) => {
    expect(rules(sheets.get(slug))).toContain("masstone-by-both-grounds");
  });

  // K/S of a let-down lies between those of its white and its masstone (Duncan 1940); a lake's film over white reads .86.
  test("no let-down is brighter at a wavelength than anything that was drawn down for it", () => {
    const brightest = ({ fit, white }: LadderModel, i: number): number =>
      Math.max(
        ...[fit.masstone, white, ...white.steps].map(({ measured }) => measured[i] ?? NaN),
        ...white.steps.flatMap(({ hiding }) => hiding?.[i] ?? []),
        fit.masstone.internal[i] ?? NaN,
      );
    expect(ladders.length).toBeGreaterThan(15);
    for (const ladder of ladders)
      for (const ratio of ratios)
        for (const [i, reading] of tintReadings(ladder.model, ratio).entries())
          expect(reading).toBeLessThanOrEqual(brightest(ladder, i) + 1e-9);
  });

  test("any two colours of one white mix at any ratio", () => {
    for (const [i, ladder] of ladders.entries())
      for (const other of ladders.slice(i + 1)) {
        const mixed = mixture([
          { ladder, parts: 1 },
          { ladder: other, parts: 3 },
        ]);
        if (isStatement(mixed)) expect(mixed.rule).toBe("whites-differ");
        else for (const ratio of ratios) expect(mixedLab(mixed, ratio).L).toBeLessThan(100);
      }
  });

  test("nothing is expected of a lake in a white that it may be far off in", () => {
    expect(sheets.get("eosin-lake-one")?.expectedTints).toEqual([]);
  });
});

test("strength is missing for want of the reference's let-downs, not of the colour's own", () => {
  const { sheets } = workedFolder();
  const strength = sheets.get("cochineal")?.optics.tintingStrength;
  expect(strength && !isKnown(strength) ? [strength.reason, strength.wanting] : []).toEqual([
    "bone black, which strength is reckoned against, has no let-downs from which it can be fitted",
    ["colours.bone-black.tints"],
  ]);
});

test("mixtures recorded by parts of paint are predicted, and lie within the printed 68 % as often as is said", () => {
  const { sheets } = workedFolder("07F");
  const told = [...sheets.values()].flatMap(({ slug, mixture }) =>
    (mixture?.whites ?? []).flatMap(({ steps }) =>
      steps.flatMap(({ massRatio, missDeltaE00: miss, uncertainty }) =>
        massRatio === "1:0" && miss !== undefined && isKnown(miss)
          ? [{ slug, miss: miss.value, uncertainty }]
          : [],
      ),
    ),
  );
  expect(told.length).toBeGreaterThanOrEqual(9);
  const inside = told.filter(({ miss, uncertainty }) => miss <= uncertainty).length;
  expect(inside / told.length).toBeGreaterThan(0.55);
});
