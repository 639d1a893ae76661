/**
 * What the range's blacks do in the whites, and the one bad drawdown. Common
 * practice, no source: the readings are invented apart from lib/, and the fits
 * have to find in them what a colourman knows.
 */
import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { SHEETS, sheetOf as sheet } from "./demonstration-sheets.ts";

/** b* (D65/10) at L* 50 in a white. */
function blueness(slug: string, white: string): number {
  const figure = sheet(slug).tints.find((tint) => tint.white.slug === white)?.atL["50"]?.b;
  return figure !== undefined && isKnown(figure) ? figure.value : NaN;
}

/** b* of the masstone (D65/10). */
function masstoneB(slug: string): number {
  const figure = sheet(slug).notations.masstone?.lab["D65/10"]?.b;
  return figure !== undefined && isKnown(figure) ? figure.value : NaN;
}

describe("blacks at L* 50", () => {
  test("PBk 6 is blue in PW 6", () => {
    expect(blueness("lamp-black", "titanium-white")).toBeLessThan(-2);
  });

  test("PBk 11 is near neutral in PW 1, and at least 2 lower in PW 6", () => {
    const inLead = blueness("iron-oxide-black", "lead-white");
    expect(Math.abs(inLead)).toBeLessThan(1.5);
    expect(blueness("iron-oxide-black", "titanium-white")).toBeLessThan(inLead - 2);
  });

  test.each([
    "lamp-black",
    "lamp-black-milled",
    "furnace-black",
    "bone-black",
    "iron-oxide-black",
    "spinel-black",
    "perylene-black",
  ])("%s is bluer in PW 6 than in PW 1", (slug) => {
    expect(blueness(slug, "titanium-white")).toBeLessThan(blueness(slug, "lead-white"));
  });

  test("PBk 7 has the bluer masstone and PBk 6 the bluer tint", () => {
    expect(masstoneB("furnace-black")).toBeLessThan(masstoneB("lamp-black"));
    expect(blueness("lamp-black", "titanium-white")).toBeLessThan(
      blueness("furnace-black", "titanium-white"),
    );
  });
});

test("a glossy black is darker than the same black matte", () => {
  const gloss = sheet("lamp-black").optics.gloss;
  if (gloss === undefined || !isKnown(gloss.glossyL) || !isKnown(gloss.matteL))
    throw new Error("Unexpected absence of gloss and depth");
  expect(gloss.glossyL.value).toBeLessThan(gloss.matteL.value - 10);
});

test("the one bad drawdown is found out, and it alone", () => {
  const doubtful = SHEETS.flatMap(({ slug, tints }) =>
    tints.flatMap(({ white, steps }) =>
      steps
        .filter(({ suspect }) => suspect !== undefined)
        .map(({ massRatio }) => `${slug} ${massRatio} in ${white.slug}`),
    ),
  );
  expect(doubtful).toEqual(["burnt-umber 1:20 in titanium-white"]);
});

test("a colour of which only L*a*b* was kept is refused a fit for want of spectra, and not of a masstone", () => {
  expect(sheet("cerulean-blue").tints.map(({ refusal }) => refusal?.rule)).toEqual([
    "masstone-without-spectrum",
  ]);
});

test("the bad drawdown is found by its residual, is said so, and is not what the fit rests on", () => {
  const step = sheet("burnt-umber")
    .tints.find(({ white }) => white.slug === "titanium-white")
    ?.steps.find(({ massRatio }) => massRatio === "1:20");
  expect(step?.suspect?.rule).toBe("suspect-drawdown");
  const others = sheet("burnt-umber")
    .tints.flatMap(({ steps }) => steps)
    .flatMap(({ residualDeltaE00, suspect }) =>
      suspect === undefined && residualDeltaE00 !== undefined && isKnown(residualDeltaE00)
        ? [residualDeltaE00.value]
        : [],
    );
  const residual = step?.residualDeltaE00;
  if (residual === undefined || !isKnown(residual))
    throw new Error("Unexpected absence of a residual");
  expect(residual.value).toBeGreaterThan(5 * Math.max(...others));
});

test("every predicted step says how far it may be off, and no measured one does", () => {
  const steps = SHEETS.flatMap(({ tints }) => tints.flatMap((tint) => tint.steps));
  expect(steps.length).toBeGreaterThan(100);
  for (const { standing, uncertainty } of steps)
    expect(uncertainty !== undefined).toBe(standing === "derived");
});
