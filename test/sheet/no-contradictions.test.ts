/** What a painter would read as a contradiction on one sheet: derived, from what each sentence claims. */
import { describe, expect, test } from "vitest";
import { statementText } from "../../lib/present/statement-text.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { ends } from "../../lib/quantities/interval.ts";
import type { Statement } from "../../lib/quantities/statement.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SHEETS, sheetOf } from "./demonstration-sheets.ts";

const EXPECTATIONS = [
  "oil-in-excess",
  "oil-little-in-excess",
  "oil-just-fills",
  "film-holds-voids",
  "clumps-make-voids",
  "finish-not-told",
];
const SINKING = [
  "sinks-in-on-absorbent-ground-alone",
  "sinks-in-easily",
  "may-sink-in",
  "dull-of-itself",
  "may-be-dull-of-itself",
];

const rules = (statements: readonly Statement[]): string[] => statements.map(({ rule }) => rule);
const among = (statements: readonly Statement[], wanted: readonly string[]): string[] =>
  rules(statements).filter((rule) => wanted.includes(rule));

describe.each(SHEETS.map((sheet) => [sheet.slug, sheet] as const))("%s", (_, sheet: Sheet) => {
  const { oil, drying, additions } = sheet;
  test("tells one finish: as read where it was read, else as expected", () =>
    expect(among(oil.reasons, EXPECTATIONS)).toHaveLength(
      !isKnown(oil.gloss60) && isKnown(oil.effectiveReducedPvc) ? 1 : 0,
    ));
  test("speaks of sinking in once at most, and not where the reading gave the expectation the lie", () => {
    const sinking = among(drying.filmHealth, SINKING);
    expect(sinking.length).toBeLessThanOrEqual(1);
    if (oil.contradictions.some(({ rule }) => /than-expected$/.test(rule)))
      expect(sinking).toEqual([]);
    if (isKnown(oil.finish) && oil.finish.value === "gloss")
      expect(sinking).not.toContain("dull-of-itself");
  });
  test("does not wrinkle for its oil and sink in for want of it", () => {
    if (rules(drying.filmHealth).includes("sinks-in-easily"))
      expect(rules(drying.filmHealth)).not.toContain("oil-rich-wrinkles-when-thick");
  });
  test("keeps a film that zinc makes brittle out of underlayers", () => {
    if (rules(drying.filmHealth).includes("zinc-makes-brittle"))
      expect(rules(drying.layering)).toEqual(["zinc-out-of-underlayers"]);
  });
  test("misses no drier that is in it", () => {
    if (additions.some(({ kind }) => kind === "drier"))
      expect(rules(drying.reasons)).not.toContain("driers-customary");
  });
  test("says no sentence twice", () => {
    const said = [
      ...oil.reasons,
      ...oil.contradictions,
      ...drying.reasons,
      ...drying.layering,
      ...drying.layeringReasons,
      ...drying.filmHealth,
      ...drying.contradictions,
    ].map((statement) => statementText(statement, ENGLISH));
    expect(said.filter((text, i) => said.indexOf(text) !== i)).toEqual([]);
  });
});

/** Common practice, no source: a thin film of a slow colour takes a week or two, in a slow oil some days more. */
test("a grey of white and bone black, parts and oil not recorded, takes no longer than the slower of the two in the slowest oil", () => {
  const { touchDryDays } = sheetOf("slate-grey").drying;
  const [least, most] = isKnown(touchDryDays) ? touchDryDays.value : [NaN, NaN];
  expect([least, Math.round(most)]).toEqual([6, 17]);
});

/** 29 CFR 1926.252: oily rags are kept as what may ignite; which oil, nobody wrote down. */
test("an oil that nobody named is handled as one that dries", () => {
  const { vehicle, cautions } = sheetOf("slate-grey");
  expect(vehicle).toBeDefined();
  expect(vehicle?.oil).toBeUndefined();
  expect(cautions.studio.map(({ rule }) => rule)).toEqual(
    expect.arrayContaining(["oily-rags", "no-heating-of-oil"]),
  );
});

test("a medium that nothing is known of is told in drying, finish, fat over lean and yellowing", () => {
  const { oil, drying } = sheetOf("green-earth");
  for (const statements of [oil.reasons, drying.reasons, drying.layeringReasons, drying.filmHealth])
    expect(rules(statements)).toContain("holds-medium-not-known");
  expect(rules(sheetOf("yellow-ochre").drying.reasons)).not.toContain("holds-medium-not-known");
});

/** By what mixing is: neither of two paints holds the other up beyond its own days. */
test("what is expected of a tint is no later than the slower of its two paints alone", () => {
  const tints = SHEETS.flatMap(({ slug, drying }) =>
    drying.inWhites.flatMap(({ white, touchDryDays }) => {
      const other = SHEETS.find((one) => one.slug === white.slug)?.drying.touchDryDays;
      return isKnown(touchDryDays) &&
        touchDryDays.standing === "estimated" &&
        isKnown(drying.touchDryDays) &&
        other !== undefined &&
        isKnown(other)
        ? [
            {
              tint: `${slug} in ${white.slug}`,
              later: ends(touchDryDays.value)[1],
              alone: Math.max(...[drying.touchDryDays, other].map(({ value }) => ends(value)[1])),
            },
          ]
        : [];
    }),
  );
  expect(tints.length).toBeGreaterThan(30);
  expect(tints.filter(({ later, alone }) => later > alone)).toEqual([]);
});
