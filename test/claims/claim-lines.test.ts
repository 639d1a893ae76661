import { describe, expect, test } from "vitest";
import { answered, answerWith } from "./answered-workshop.ts";

const OIL = "oil.oilIndexGPer100g";
const NEWEST_OIL = "newest record that it rests on: colour `soot-black`, 2026-02-03";

describe("a claim that holds is not told", () => {
  test.each([
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
    `{ figure: bare-black.${OIL}, is: not stated }`,
    `{ fact: soot-black.pigments, count: 1 }`,
    `{ fact: bare-black.pigments, includes: ore }`,
    `{ fact: soot-black.pigments, lacks: ore }`,
    `{ fact: soot-black.cautions.signalWord, is: null }`,
    `{ fact: soot-black.name, is: Soot Black }`,
    `{ fact: ore-black.cautions.hazardStatements, includes: H410 }`,
  ])("%s", (claim) => {
    expect(answered(answerWith([claim])).lines).toEqual([]);
  });
});

/** One broken on purpose of each kind: told at its line and column, with both values. */
const BROKEN: readonly (readonly [kind: string, claim: string, told: string])[] = [
  [
    "value, at its limit",
    `{ figure: soot-black.${OIL}, above: 90 }`,
    `error Unexpected soot-black.${OIL} \`90\` at claims[0].above, expected \`above 90\`; ${NEWEST_OIL} claims/value`,
  ],
  [
    "value, at its limit from the other side",
    `{ figure: soot-black.${OIL}, below: 90 }`,
    `error Unexpected soot-black.${OIL} \`90\` at claims[0].below, expected \`below 90\`; ${NEWEST_OIL} claims/value`,
  ],
  [
    "value, outside",
    `{ figure: soot-black.${OIL}, between: [91, 99] }`,
    `error Unexpected soot-black.${OIL} \`90\` at claims[0].between, expected \`between 91 and 99\`; ${NEWEST_OIL} claims/value`,
  ],
  [
    "estimate with one end outside",
    `{ figure: guess-black.${OIL}, above: 85 }`,
    `error Unexpected guess-black.${OIL} \`80 to 100\` at claims[0].above, expected \`above 85\` claims/value`,
  ],
  [
    "figure against a figure",
    `{ figure: ore-black.${OIL}, above: soot-black.${OIL} }`,
    `error Unexpected ore-black.${OIL} \`33\` at claims[0].above, expected \`above soot-black.${OIL}, 90\`; ${NEWEST_OIL} claims/order`,
  ],
  [
    "margin",
    `{ figure: soot-black.${OIL}, above: ore-black.${OIL}, by: 57.5 }`,
    `error Unexpected soot-black.${OIL} \`90\` at claims[0].above, expected \`above ore-black.${OIL}, 33, by 57.5\`; ${NEWEST_OIL} claims/order`,
  ],
  [
    "word",
    `{ figure: soot-black.oil.finish, is: gloss }`,
    "error Unexpected soot-black.oil.finish `matte` at claims[0].is, expected `gloss`; newest record that it rests on: colour `soot-black`, 2026-03-05 claims/word",
  ],
  [
    "rank",
    `{ figure: ore-black.${OIL}, highestOf: black }`,
    `error Unexpected ore-black.${OIL} \`33\` at claims[0].highestOf, expected \`above every rival, and guess-black.${OIL} is 80 to 100\`; newest record that it rests on: colour \`soot-black\`, 2026-02-03 claims/rank`,
  ],
  [
    "standing",
    `{ figure: ore-black.${OIL}, below: 40, standing: measured }`,
    `error Unexpected standing of ore-black.${OIL} \`stated\` at claims[0].standing, expected \`measured to the root\` claims/standing`,
  ],
  [
    "standing of a root below",
    `{ figure: ore-black.oil.oilGPer100cm3, below: 900, standing: measured }`,
    "error Unexpected standing of ore-black.oil.oilGPer100cm3 `derived, rests on a figure that is stated` at claims[0].standing, expected `measured to the root` claims/standing",
  ],
  [
    "standing, an estimate",
    `{ figure: guess-black.${OIL}, below: 200, standing: stated }`,
    `error Unexpected standing of guess-black.${OIL} \`estimated\` at claims[0].standing, expected \`stated or better\` claims/standing`,
  ],
  [
    "not stated",
    `{ figure: bare-black.${OIL}, below: 200 }`,
    `error Unexpected bare-black.${OIL} \`not stated\` at claims[0].figure, expected \`a figure that is stated\`; `,
  ],
  [
    "a word compared as a number",
    `{ figure: soot-black.oil.finish, below: 5 }`,
    "error Unexpected soot-black.oil.finish `matte` at claims[0].figure, expected `a figure that is a number`",
  ],
  [
    "unknown colour",
    `{ figure: sot-black.${OIL}, below: 5 }`,
    "error Unexpected colour `sot-black` at claims[0].figure, expected `the slug of a colour`; nearest `soot-black` claims/unknown-colour",
  ],
  [
    "unknown figure",
    "{ figure: soot-black.oil.oilIndxGPer100g, below: 5 }",
    `error Unexpected figure \`soot-black.oil.oilIndxGPer100g\` at claims[0].figure, expected \`a figure path, as in the evidence of sheet.json\`; nearest \`soot-black.${OIL}\` claims/unknown-figure`,
  ],
  [
    "figure that this sheet does not have",
    "{ figure: soot-black.tints.chalk.atL.50.b, below: 5 }",
    "error Unexpected figure `soot-black.tints.chalk.atL.50.b` at claims[0].figure, expected `a figure that the sheet of soot-black has` claims/absent-figure",
  ],
  [
    "fact, is",
    "{ fact: ore-black.cautions.signalWord, is: Danger }",
    "error Unexpected ore-black.cautions.signalWord `Warning` at claims[0].is, expected `Danger` claims/fact",
  ],
  [
    "fact, includes",
    "{ fact: soot-black.cautions.hazardStatements, includes: H410 }",
    "error Unexpected soot-black.cautions.hazardStatements `none` at claims[0].includes, expected `H410 among them`; ",
  ],
  [
    "fact, lacks",
    "{ fact: ore-black.cautions.hazardStatements, lacks: H410 }",
    "error Unexpected ore-black.cautions.hazardStatements `H410` at claims[0].lacks, expected `no H410 among them`",
  ],
  [
    "fact, count",
    "{ fact: bare-black.pigments, count: 1 }",
    "error Unexpected bare-black.pigments `2: soot, ore` at claims[0].count, expected `1` claims/fact",
  ],
  [
    "no such fact",
    "{ fact: bare-black.pigment, count: 1 }",
    "error Unexpected figure `bare-black.pigment` at claims[0].fact, expected `a figure path, as in the evidence of sheet.json`; nearest `pigments` claims/unknown-figure",
  ],
];

describe("a claim broken on purpose is told at its line, with the value wanted and the value now", () => {
  test.each(BROKEN)("%s: %s", (_, claim, told) => {
    const { lines } = answered(answerWith([claim]));
    const [, key = ""] = /claims\[0\]\.(\w+)/.exec(told) ?? [];
    // Four characters stand before the claim: two blanks, a hyphen, a blank.
    const column = 4 + claim.indexOf(` ${key}: `) + ` ${key}: `.length + 1;
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain(`content/answers/so.md:5:${column} ${told}`);
  });

  test("each is told, at lines of their own, and as warnings when they are asked for so", () => {
    const claims = BROKEN.map(([, claim]) => claim);
    const { lines } = answered(answerWith(claims), {}, "warning");
    expect(lines.map((line) => Number(/so\.md:(\d+):/.exec(line)?.[1]))).toEqual(
      claims.map((_, i) => 5 + i),
    );
    expect(lines.filter((line) => !line.includes(" warning "))).toEqual([]);
  });

  test("a claim of no known form is a fault of the record", () => {
    expect(
      answered(answerWith([`{ figure: soot-black.${OIL}, bellow: 5 }`])).lines.join("\n"),
    ).toContain("so.md:5:48 error Unexpected key `bellow` at claims[0].bellow");
    expect(
      answered(answerWith([`{ figure: soot-black.${OIL}, lowestOf: [sot-black] }`])).lines[0],
    ).toContain(
      "expected `the file name of a record in colours/`; nearest `soot-black` records/missing-reference",
    );
  });
});

test("an answer may not claim what a sheet may not", () => {
  expect(
    answered(answerWith([], { body: "Our paints are non-toxic." }).replace("claims:\n", ""))
      .lines[0],
  ).toContain("so.md:5:16 error Unexpected words `non-toxic`");
});
