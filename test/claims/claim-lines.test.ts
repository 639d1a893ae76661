import { describe, expect, test } from "vitest";
import { answered, answerWith } from "./answered-workshop.ts";

const OIL = "oil.oilIndexGPer100g";
const NEWEST_OIL = "newest record that it rests on: colour soot-black, 2026-02-03";

/** What claims of one answer are told, each by the line that it stands on: the workshop is worked out once for all. */
function toldOfEach(claims: readonly string[]): readonly (readonly string[])[] {
  const { lines } = answered(answerWith(claims));
  return claims.map((_, i) =>
    lines.filter((line) => line.startsWith(`content/answers/so.md:${5 + i}:`)),
  );
}

const SOUND = [
  `{ figure: soot-black.${OIL}, above: 89 }`,
  `{ figure: soot-black.${OIL}, above: 89.999, standing: measured }`,
  `{ figure: soot-black.${OIL}, below: 91 }`,
  `{ figure: soot-black.${OIL}, between: [90, 90] }`,
  `{ figure: soot-black.${OIL}, above: ore-black.${OIL}, by: 57 }`,
  `{ figure: ore-black.${OIL}, below: soot-black.${OIL}, by: 57 }`,
  `{ figure: guess-black.${OIL}, above: 79.9 }`,
  `{ figure: guess-black.${OIL}, below: 100.1 }`,
  `{ figure: guess-black.${OIL}, between: [80, 100] }`,
  `{ figure: ore-black.${OIL}, lowestOf: black, by: 47 }`,
  `{ figure: soot-black.${OIL}, highestOf: [ore-black], standing: stated }`,
  `{ figure: soot-black.oil.finish, is: matte }`,
  `{ figure: soot-black.${OIL}, is: 90 }`,
  `{ figure: soot-black.${OIL}, is: "90" }`,
  `{ figure: bare-black.${OIL}, is: not stated }`,
  `{ fact: soot-black.pigments, count: 1 }`,
  `{ fact: bare-black.pigments, includes: ore }`,
  `{ fact: soot-black.pigments, lacks: ore }`,
  `{ fact: soot-black.cautions.signalWord, is: null }`,
  `{ fact: soot-black.name, is: Soot Black }`,
  `{ fact: ore-black.cautions.hazardStatements, includes: H410 }`,
  `{ fact: ore-black.permanence.sensitivities, includes: harmed-by-heat }`,
  `{ fact: soot-black.permanence.sensitivities, lacks: harmed-by-heat }`,
  `{ every: pigments, lacks: ore, but: [ore-black, bare-black] }`,
  `{ every: additions, lacks: soot }`,
];

describe("a claim that holds is not told", () => {
  const told = toldOfEach(SOUND);
  test.each(SOUND.map((claim, i) => [claim, i] as const))("%s", (_, i) => {
    expect(told[i]).toEqual([]);
  });
});

/** One broken on purpose of each kind: told at its line and column, with both values. */
const BROKEN: readonly (readonly [kind: string, key: string, claim: string, told: string])[] = [
  [
    "word, a number",
    "is",
    `{ figure: soot-black.${OIL}, is: 91 }`,
    `error soot-black.${OIL} is 90; the claim says 91; ${NEWEST_OIL} claims/word`,
  ],
  [
    "value, at its limit",
    "above",
    `{ figure: soot-black.${OIL}, above: 90 }`,
    `error soot-black.${OIL} is 90; the claim wants it above 90; ${NEWEST_OIL} claims/value`,
  ],
  [
    "value, at its limit from the other side",
    "below",
    `{ figure: soot-black.${OIL}, below: 90 }`,
    `error soot-black.${OIL} is 90; the claim wants it below 90; ${NEWEST_OIL} claims/value`,
  ],
  [
    "value, outside",
    "between",
    `{ figure: soot-black.${OIL}, between: [91, 99] }`,
    `error soot-black.${OIL} is 90; the claim wants it between 91 and 99; ${NEWEST_OIL} claims/value`,
  ],
  [
    "estimate with one end outside",
    "above",
    `{ figure: guess-black.${OIL}, above: 85 }`,
    `error guess-black.${OIL} is 80 to 100; the claim wants it above 85 claims/value`,
  ],
  [
    "figure against a figure",
    "above",
    `{ figure: ore-black.${OIL}, above: soot-black.${OIL} }`,
    `error ore-black.${OIL} is 33; the claim wants it above soot-black.${OIL}, 90; ${NEWEST_OIL} claims/order`,
  ],
  [
    "margin",
    "above",
    `{ figure: soot-black.${OIL}, above: ore-black.${OIL}, by: 57.5 }`,
    `error soot-black.${OIL} is 90; the claim wants it above ore-black.${OIL}, 33, by 57.5; ${NEWEST_OIL} claims/order`,
  ],
  [
    "word",
    "is",
    `{ figure: soot-black.oil.finish, is: gloss }`,
    "error soot-black.oil.finish is matte; the claim says gloss; newest record that it rests on: colour soot-black, 2026-03-05 claims/word",
  ],
  [
    "rank",
    "highestOf",
    `{ figure: ore-black.${OIL}, highestOf: black }`,
    `error ore-black.${OIL} is 33; the claim wants it above every rival, and guess-black.${OIL} is 80 to 100; newest record that it rests on: colour soot-black, 2026-02-03 claims/rank`,
  ],
  [
    "standing",
    "standing",
    `{ figure: ore-black.${OIL}, below: 40, standing: measured }`,
    `error ore-black.${OIL} is stated; the claim needs it measured to the root claims/standing`,
  ],
  [
    "standing of a root below",
    "standing",
    `{ figure: ore-black.oil.oilGPer100cm3, below: 900, standing: measured }`,
    "error ore-black.oil.oilGPer100cm3 is derived, rests on a figure that is stated; the claim needs it measured to the root claims/standing",
  ],
  [
    "standing, an estimate",
    "standing",
    `{ figure: guess-black.${OIL}, below: 200, standing: stated }`,
    `error guess-black.${OIL} is estimated; the claim needs it stated or better claims/standing`,
  ],
  [
    "not stated",
    "figure",
    `{ figure: bare-black.${OIL}, below: 200 }`,
    `error bare-black.${OIL} is not stated, and the claim needs its figure; `,
  ],
  [
    "a word compared as a number",
    "figure",
    `{ figure: soot-black.oil.finish, below: 5 }`,
    "error soot-black.oil.finish is matte, and only a number can be compared",
  ],
  [
    "unknown colour",
    "figure",
    `{ figure: sot-black.${OIL}, below: 5 }`,
    "error There is no colour sot-black in colours/; nearest: soot-black claims/unknown-colour",
  ],
  [
    "unknown figure",
    "figure",
    "{ figure: soot-black.oil.oilIndxGPer100g, below: 5 }",
    `error No sheet has a figure soot-black.oil.oilIndxGPer100g; nearest: soot-black.${OIL} claims/unknown-figure`,
  ],
  [
    "several figures under one path",
    "figure",
    "{ figure: soot-black.oil, below: 5 }",
    `error No sheet has a figure soot-black.oil; it holds soot-black.oil.oilAbsorptionGPer100g, soot-black.${OIL}, `,
  ],
  [
    "figure that this sheet does not have",
    "figure",
    "{ figure: soot-black.tints.chalk.atL.50.b, below: 5 }",
    "error The sheet of soot-black has no figure tints.chalk.atL.50.b claims/absent-figure",
  ],
  [
    "fact, is",
    "is",
    "{ fact: ore-black.cautions.signalWord, is: Danger }",
    "error ore-black.cautions.signalWord is Warning; the claim wants Danger claims/fact",
  ],
  [
    "fact, includes",
    "includes",
    "{ fact: soot-black.cautions.hazardStatements, includes: H410 }",
    "error soot-black.cautions.hazardStatements is none; the claim wants H410 among them; ",
  ],
  [
    "fact, lacks",
    "lacks",
    "{ fact: ore-black.cautions.hazardStatements, lacks: H410 }",
    "error ore-black.cautions.hazardStatements is H410; the claim wants no H410 among them",
  ],
  [
    "fact, count",
    "count",
    "{ fact: bare-black.pigments, count: 1 }",
    "error bare-black.pigments is 2: soot, ore; the claim wants 1 claims/fact",
  ],
  [
    "every, lacks",
    "lacks",
    "{ every: pigments, lacks: ore, but: [ore-black] }",
    "error bare-black.pigments is soot, ore; the claim wants no ore among them in any colour but ore-black; ",
  ],
  [
    "every, an exception that is none",
    "but",
    "{ every: pigments, lacks: ore, but: [ore-black, bare-black, soot-black] }",
    "error soot-black.pigments is soot; the claim wants ore among them",
  ],
  [
    "no such fact",
    "fact",
    "{ fact: bare-black.pigment, count: 1 }",
    "error No sheet has a figure bare-black.pigment; nearest: pigments claims/unknown-figure",
  ],
  [
    "several facts under one path",
    "fact",
    "{ fact: bare-black.cautions, is: none }",
    "error No sheet has a figure bare-black.cautions; it holds cautions.",
  ],
];

describe("a claim broken on purpose is told at its line, with the value wanted and the value now", () => {
  const lines = toldOfEach(BROKEN.map(([, , claim]) => claim));
  test.each(BROKEN.map((row, i) => [...row, i] as const))(
    "%s at %s: %s",
    (_, key, claim, told, i) => {
      // Four characters stand before the claim: two blanks, a hyphen, a blank.
      const column = 4 + claim.indexOf(` ${key}: `) + ` ${key}: `.length + 1;
      expect(lines[i]).toHaveLength(1);
      expect(lines[i]?.[0]).toContain(`content/answers/so.md:${5 + i}:${column} ${told}`);
    },
  );

  test("each is told, at lines of their own, and as warnings when they are asked for so", () => {
    const claims = BROKEN.map(([, , claim]) => claim);
    const { lines } = answered(answerWith(claims), {}, "warning");
    expect(lines.map((line) => Number(/so\.md:(\d+):/.exec(line)?.[1]))).toEqual(
      claims.map((_, i) => 5 + i),
    );
    expect(lines.filter((line) => !line.includes(" warning "))).toEqual([]);
  });

  test("a claim of no known form is a fault of the record", () => {
    expect(
      answered(answerWith([`{ figure: soot-black.${OIL}, bellow: 5 }`])).lines.join("\n"),
    ).toContain("so.md:5:48 error There is no key bellow under claims[0]");
    expect(
      answered(answerWith([`{ figure: soot-black.${OIL}, lowestOf: [sot-black] }`])).lines[0],
    ).toContain("There is no sot-black in colours/; nearest: soot-black records/missing-reference");
  });
});

test("an answer may not claim what a sheet may not", () => {
  expect(
    answered(answerWith([], { body: "Our paints are non-toxic." }).replace("claims:\n", ""))
      .lines[0],
  ).toContain('so.md:5:16 error A sheet never says "non-toxic"');
});

test("a claim on a label is as new as the oil index, which gives each ingredient its weight", () =>
  expect(
    answered(answerWith(["{ fact: ore-black.cautions.hazardStatements, lacks: H410 }"]), {
      "pigments/ore.yaml":
        "name: Ore\ncolourIndexName: PBk 11\ndensityGPerCm3: 4.8\nhazards: [H410]\ndate: 2026-01-09\n",
      "colours/ore-black.md":
        "---\nname: Ore Black\npigments: [{ pigment: ore }]\nfamily: black\nvehicle: oil\noilIndexGPer100g: { value: 33, method: batch book, date: 2026-04-01 }\n---\n",
    }).lines,
  ).toEqual([
    expect.stringContaining("newest record that it rests on: colour ore-black, 2026-04-01"),
  ]));
