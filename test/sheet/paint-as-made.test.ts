import { TRIAL_SPREAD } from "../../lib/drying/days-of-parts.ts";
/**
 * What every colourman knows, out of the demonstration's own sheets: common
 * practice, no source. The records are invented; what comes of them has to come
 * by the rules.
 */
import { describe, expect, test } from "vitest";
import { finishRuling } from "../../lib/formulation/finish.ts";
import {
  inputsOf,
  isKnown,
  type Amount,
  type Figure,
  type Known,
} from "../../lib/quantities/figure.ts";
import { ends, type Quantity } from "../../lib/quantities/interval.ts";
import { isStatement, type Statement } from "../../lib/quantities/statement.ts";
import { leanestFirst, middleOfOil, oilByMassAlone } from "../../lib/collection/oil-order.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { inputPaths } from "../../lib/sheet/figure-places.ts";
import { SHEETS, sheetOf } from "./demonstration-sheets.ts";

function known<V extends Amount>(figure: Figure<V> | undefined): Known<V> {
  if (figure === undefined || !isKnown(figure))
    throw new Error(`Unexpected absence of a figure: ${figure?.reason ?? "no such figure"}`);
  return figure;
}
const number = (figure: Figure<Quantity> | undefined): number => {
  const [lower, upper] = ends(known(figure).value);
  expect(lower).toBe(upper);
  return lower;
};
/** The sheets of a pigment alone, by its Colour Index name. */
const LAMP = sheetOf("lamp-black");
const LAMP_MILLED = sheetOf("lamp-black-milled");
const IRON = sheetOf("iron-oxide-black");
const BONE = sheetOf("bone-black");
const TITANIUM = sheetOf("titanium-white");
const LEAD = sheetOf("lead-white");

describe("lamp black (PBk 6) beside black iron oxide (PBk 11): common practice, no source", () => {
  test("they are what they are called", () => {
    expect(
      [LAMP, LAMP_MILLED, IRON, BONE, TITANIUM, LEAD].map(({ pigments }) =>
        pigments.map(({ colourIndexName }) => colourIndexName),
      ),
    ).toEqual([["PBk 6"], ["PBk 6"], ["PBk 11"], ["PBk 9"], ["PW 6"], ["PW 1"]]);
  });
  test("by mass takes about three times the oil, in the paint and at the rub-out", () => {
    for (const field of ["oilIndexGPer100g", "oilAbsorptionGPer100g"] as const) {
      const ratio = number(LAMP.oil[field]) / number(IRON.oil[field]);
      expect(ratio, field).toBeGreaterThan(2.5);
      expect(ratio, field).toBeLessThan(3.5);
    }
  });
  test("by volume the difference all but vanishes, and the range says so of the two", () => {
    const ratio = number(LAMP.oil.oilGPer100cm3) / number(IRON.oil.oilGPer100cm3);
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThan(1.25);
    expect(oilByMassAlone(LAMP, [LAMP, IRON])).toMatchObject({
      rule: "oil-differs-by-mass-alone",
      values: { more: "Lamp Black", less: "Iron Oxide Black" },
    });
    expect(oilByMassAlone(IRON, [LAMP, IRON])).toMatchObject({
      values: { more: "Lamp Black", less: "Iron Oxide Black" },
    });
  });
  test("100 g of black iron oxide do not fill a jar of 118 ml, poured or settled; of lamp black they overfill it", () => {
    expect(IRON.fill.sentences.map(({ rule }) => rule)).toEqual(["does-not-fill-the-jar"]);
    expect(LAMP.fill.sentences.map(({ rule }) => rule)).toEqual(["fills-the-jar"]);
  });
  test("mulled, is expected matte where the iron oxide is expected glossy", () => {
    expect(LAMP.dispersion).toBe("mulled");
    expect(finishRuling(known(LAMP.oil.effectiveReducedPvc).value)).toMatchObject({
      finish: "matte",
      spans: ["matte"],
    });
    expect(finishRuling(known(IRON.oil.effectiveReducedPvc).value)).toMatchObject({
      finish: "gloss",
      spans: ["gloss"],
    });
    expect(LAMP.oil.reasons.map(({ rule }) => rule)).toContain("agglomerates-hold-oil");
  });
  test("milled, is no longer expected matte", () =>
    expect(finishRuling(known(LAMP_MILLED.oil.effectiveReducedPvc).value).finish).not.toBe(
      "matte",
    ));
});

describe("drying, as the rules expect it: common practice, no source", () => {
  const days = (sheet: Sheet): readonly [number, number] => known(sheet.drying.expectedDays).value;
  test("titanium white dries slower than lead white", () => {
    expect(days(TITANIUM)[0]).toBeGreaterThan(days(LEAD)[0]);
    expect(days(TITANIUM)[1]).toBeGreaterThan(days(LEAD)[1]);
  });
  test("lamp black dries slower than bone black and black iron oxide, with its drier by the later end and without it by both", () => {
    for (const other of [BONE, IRON]) {
      expect(days(LAMP)[1], other.slug).toBeGreaterThan(days(other)[1]);
      expect(days(LAMP_MILLED)[0], other.slug).toBeGreaterThan(days(other)[0]);
      expect(days(LAMP_MILLED)[1], other.slug).toBeGreaterThan(days(other)[1]);
    }
  });
  test("lamp black in titanium white stays near the days that both took alone", () => {
    for (const lamp of [LAMP, LAMP_MILLED]) {
      const tint = known(
        lamp.drying.inWhites.find(({ white }) => white.slug === "titanium-white")?.touchDryDays,
      );
      const alone = [lamp, TITANIUM].map(({ drying }) => known(drying.touchDryDays).value);
      expect(tint.standing).toBe("estimated");
      expect(tint.value[0]).toBeGreaterThanOrEqual(
        Math.min(...alone.map(([days]) => days)) / TRIAL_SPREAD,
      );
      expect(tint.value[1]).toBeLessThanOrEqual(
        Math.max(...alone.map(([, days]) => days)) * TRIAL_SPREAD,
      );
    }
  });
  test("and faster in lead white than in titanium white", () => {
    const inWhite = (slug: string): readonly [number, number] =>
      known(LAMP_MILLED.drying.inWhites.find(({ white }) => white.slug === slug)?.touchDryDays)
        .value;
    expect(inWhite("lead-white")[1]).toBeLessThan(inWhite("titanium-white")[1]);
  });
  test("a drier is customary in lamp black: the milled one, without any, says so, and that with a drier does not", () => {
    expect(LAMP_MILLED.drying.reasons).toContainEqual(
      expect.objectContaining({
        rule: "driers-customary",
        values: { pigment: "Lamp black", massFraction: 1 },
      }),
    );
    expect(LAMP.drying.reasons.map(({ rule }) => rule)).not.toContain("driers-customary");
    expect(IRON.drying.reasons.map(({ rule }) => rule)).not.toContain("driers-customary");
    for (const { drying } of [LAMP, LAMP_MILLED])
      expect(drying.filmHealth.map(({ rule }) => rule)).toContain("skins-and-stays-soft");
  });
  test("a mixture goes by the trials of what is in it, and is no slower than its slowest part", () => {
    const { drying } = sheetOf("titanium-zinc-white");
    expect(drying.reasons.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(["part-as-tried", "part-as-tried"]),
    );
    const parts = [TITANIUM, sheetOf("zinc-white")].map(
      (one) => known(one.drying.touchDryDays).value[0],
    );
    const [earlier, later] = days(sheetOf("titanium-zinc-white"));
    expect(earlier).toBeGreaterThanOrEqual(Math.min(...parts) / TRIAL_SPREAD - 1e-9);
    expect(later).toBeLessThanOrEqual(Math.max(...parts) * TRIAL_SPREAD + 1e-9);
  });
  test("a trial stands before the rules, and its white is named", () => {
    expect(known(LAMP.drying.touchDryDays).standing).toBe("measured");
    expect(inputsOf(LAMP.drying.touchDryDays)).toEqual([LAMP.drying.trials[0]?.touchDryDays]);
    expect(LAMP.drying.trials.map(({ tintedWith }) => tintedWith?.name)).toEqual([
      undefined,
      "Lead White",
    ]);
    const inLead = known(
      LAMP.drying.inWhites.find(({ white }) => white.slug === "lead-white")?.touchDryDays,
    );
    expect(inLead.standing).toBe("measured");
    expect(inputsOf(inLead)).toEqual([LAMP.drying.trials[1]?.touchDryDays]);
  });
});

describe("the range by oil", () => {
  const order = {
    byMass: leanestFirst(SHEETS, ({ oil }) => middleOfOil(oil.oilIndexGPer100g)),
    byVolume: leanestFirst(SHEETS, ({ oil }) => middleOfOil(oil.oilGPer100cm3)),
  };
  test("is ranked leanest first, each colour once, both ways", () => {
    for (const [ranked, field] of [
      [order.byMass, "oilIndexGPer100g"],
      [order.byVolume, "oilGPer100cm3"],
    ] as const) {
      const oil = ranked.map((sheet) => {
        const [lower, upper] = ends(known(sheet.oil[field]).value);
        return Math.sqrt(lower * upper);
      });
      expect(oil).toEqual(oil.toSorted((one, other) => one - other));
      expect(new Set(ranked).size).toBe(SHEETS.filter((sheet) => isKnown(sheet.oil[field])).length);
    }
  });
  test("puts lamp black among the fattest by mass and in the middle by volume", () => {
    expect(order.byMass.indexOf(LAMP)).toBeGreaterThan(order.byMass.length * 0.85);
    expect(order.byVolume.indexOf(LAMP)).toBeLessThan(order.byVolume.length * 0.85);
  });
});

describe("no class rests on a number that the evidence does not list", () => {
  const CLASSES = /(?:^|\.)(?:oilIndexClass|finish|class|category|opacityClass)$/;

  test.each(SHEETS.map((sheet) => ({ slug: sheet.slug, sheet })))(
    "$slug: every class names its inputs, and they are listed down to their roots",
    ({ sheet }) => {
      const listed = new Map(
        figureEntries(sheet).flatMap(({ path, figure }) =>
          isKnown(figure) ? [[path, figure] as const] : [],
        ),
      );
      const unlisted = (path: string): string[] => {
        const figure = listed.get(path);
        // Other sheets' figures and record fields stand with the sheet or record that they are of.
        if (figure === undefined) return /^(?:colours|workshop)\./.test(path) ? [] : [path];
        return inputPaths(figure, sheet.slug).flatMap(unlisted);
      };
      const classes = [...listed].filter(
        ([path, { standing }]) => CLASSES.test(path) && standing !== "stated",
      );
      for (const [path, figure] of classes) {
        const inputs = inputPaths(figure, sheet.slug);
        expect(inputs.length, path).toBeGreaterThan(0);
        expect(inputs.flatMap(unlisted), path).toEqual([]);
      }
    },
  );

  /** What a reason speaks of by these names is a figure of the sheet, not a limit of a rule. */
  const FIGURES = [
    "oilIndexGPer100g",
    "oilAbsorptionGPer100g",
    "cpvc",
    "finenessOfGrindUm",
    "gloss60",
    "reducedPvc",
    "factor",
    "fraction",
    "touchDryDays",
    "throughDryDays",
    "oilVolumeFraction",
    "meanDeltaEab",
    "massFraction",
    "percentOnOil",
  ];

  test.each(SHEETS.map((sheet) => ({ slug: sheet.slug, sheet })))(
    "$slug: every figure that a reason prints is listed too",
    ({ sheet }) => {
      const values = figureEntries(sheet).flatMap(({ figure }) =>
        isKnown(figure) && typeof figure.value !== "string" ? [figure.value] : [],
      );
      const isListed = (value: unknown): boolean =>
        values.some((one) => {
          const [[lower, upper], [least, most]] = [ends(one as Quantity), ends(value as Quantity)];
          return close(lower, least) && close(upper, most);
        });
      const rulings = rulingsIn([
        sheet.oil,
        sheet.batch,
        { ...sheet.drying, inWhites: [] },
        sheet.permanence,
      ]);
      expect(rulings.length).toBeGreaterThan(0);
      const missing = rulings.flatMap(({ rule, values: spoken }) =>
        FIGURES.filter(
          (name) =>
            spoken[name] !== undefined && !isShareOfOil(name, spoken) && !isListed(spoken[name]),
        ).map((name) => `${rule}: ${name} ${JSON.stringify(spoken[name])}`),
      );
      expect(missing).toEqual([]);
    },
  );
});

/** An oil's share follows from the additions' percentages, which are listed. */
function isShareOfOil(name: string, values: Statement["values"]): boolean {
  return name === "massFraction" && values["oil"] !== undefined;
}

function close(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one));
}

function rulingsIn(node: unknown): Statement[] {
  if (isStatement(node)) return [node];
  if (typeof node !== "object" || node === null) return [];
  return Object.values(node).flatMap(rulingsIn);
}
