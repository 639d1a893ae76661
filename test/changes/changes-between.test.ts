import { describe, expect, test } from "vitest";
import { changesBetween, removedColours, type Change } from "../../lib/changes/changes-between.ts";
import { priceAct } from "../../lib/changes/price-act.ts";
import { weakenings } from "../../lib/changes/weakenings.ts";
import { publishedState } from "../../lib/changes/published-state.ts";
import { changeSentences } from "../../lib/present/change-text.ts";
import { WORDED } from "../support/worded.ts";

const CAUTIONS = {
  signalWord: "Warning",
  pictograms: ["GHS09"],
  hazardStatements: ["H410"],
  precautionaryStatements: ["P273"],
  supplemental: ["EUH210"],
  studio: ["Keep it out of the air."],
};
const SHEET = {
  slug: "zinc-white",
  name: "Zinc White",
  revision: "aaaa",
  states: { "drying.class": "slow", "oil.finish": "satin" },
  said: { madeOf: "PW 4, in linseed oil", lightfastness: "Excellent (stated)" },
  photographs: ["Tube, 2 May 2026"],
  sizes: ["40 ml £8.00"],
  prices: priced(8),
  cautions: CAUTIONS,
};
function priced(...prices: readonly number[]) {
  return { currency: "GBP", sizes: prices.map((price, i) => ({ ml: [40, 120][i], price })) };
}
const ANSWER = {
  slug: "is-it-dry",
  question: "Is it dry?",
  revision: "1",
  said: { summary: "In 4 days." },
};
const state = (sheet: object = {}, more: object = {}) =>
  publishedState({ sheets: [{ ...SHEET, ...sheet }], answers: [ANSWER], ...more });
const changesOf = (now: object): readonly Change[] =>
  changesBetween(state(), state(now))[0]?.changes ?? [];

describe("what a customer would see differ", () => {
  test("nothing between two of the same", () => {
    expect(changesBetween(state(), state())).toEqual([]);
  });

  test.each<[string, object, readonly Change[]]>([
    [
      "a figure",
      { revision: "b", states: { ...SHEET.states, "drying.class": "fast" } },
      [{ kind: "figure", figure: "drying.class", before: "slow", now: "fast" }],
    ],
    [
      "a figure that is stated no longer",
      { revision: "b", states: { "oil.finish": "satin" } },
      [{ kind: "figure", figure: "drying.class", before: "slow", now: undefined }],
    ],
    [
      "a price",
      { sizes: ["40 ml £9.00"] },
      [{ kind: "sizes", came: ["40 ml £9.00"], went: ["40 ml £8.00"] }],
    ],
    [
      "a price, where a manifest says them as numbers",
      { sizes: ["40 ml £9.00"], prices: priced(9) },
      [{ kind: "price", ml: 40, currency: "GBP", before: 8, now: 9 }],
    ],
    [
      "a price with a size that came",
      { sizes: ["40 ml £9.00", "120 ml £18.00"], prices: priced(9, 18) },
      [
        { kind: "price", ml: 40, currency: "GBP", before: 8, now: 9 },
        { kind: "price", ml: 120, currency: "GBP", before: undefined, now: 18 },
      ],
    ],
    [
      "a size that went with its price",
      { sizes: [], prices: { currency: "GBP", sizes: [] } },
      [{ kind: "price", ml: 40, currency: "GBP", before: 8, now: undefined }],
    ],
    [
      "a price in another currency",
      { sizes: ["40 ml €9.00"], prices: { ...priced(9), currency: "EUR" } },
      [{ kind: "sizes", came: ["40 ml €9.00"], went: ["40 ml £8.00"] }],
    ],
    ["a price that is written otherwise and the same", { sizes: ["40 ml £8,00"] }, []],
    ["a name", { name: "Zinc" }, [{ kind: "renamed", before: "Zinc White", now: "Zinc" }]],
    [
      "a paint that is made no more",
      { discontinued: "2026-05-01", sizes: ["Discontinued from 1 May 2026."] },
      [
        { kind: "discontinued", date: "2026-05-01" },
        { kind: "sizes", came: [], went: ["40 ml £8.00"] },
      ],
    ],
    [
      "what it is made of",
      { said: { ...SHEET.said, madeOf: "PW 4, in poppy oil" } },
      [
        {
          kind: "said",
          what: "madeOf",
          before: "PW 4, in linseed oil",
          now: "PW 4, in poppy oil",
        },
      ],
    ],
    [
      "a word of lightfastness that may be said no more",
      { said: { madeOf: SHEET.said.madeOf } },
      [{ kind: "said", what: "lightfastness", before: "Excellent (stated)", now: undefined }],
    ],
    [
      "a category, which says what its word says",
      {
        states: { ...SHEET.states, "permanence.category": "II" },
        said: { ...SHEET.said, lightfastness: "Good (own exposure)" },
      },
      [{ kind: "figure", figure: "permanence.category", before: undefined, now: "II" }],
    ],
    [
      "a photograph more",
      { photographs: ["Tube, 2 May 2026", "Brush stroke"] },
      [{ kind: "photographs", came: ["Brush stroke"], went: [] }],
    ],
    [
      "a figure that only one of the two lists",
      { states: { ...SHEET.states, "optics.contrastRatio": "0.98" } },
      [],
    ],
    ["what no list names", { revision: "b" }, [{ kind: "otherwise" }]],
    [
      "a statement more",
      { cautions: { ...CAUTIONS, hazardStatements: ["H410", "H302"] } },
      [{ kind: "cautions", of: "hazardStatements", came: ["H302"], went: [] }],
    ],
  ])("%s", (_, now, expected) => {
    expect(changesOf(now)).toEqual(expected);
  });

  test("colours and questions that came and went, and a text that changed", () => {
    const changed = changesBetween(
      publishedState({
        sheets: [{ ...SHEET, slug: "a" }],
        answers: [ANSWER, { ...ANSWER, slug: "b" }],
      }),
      publishedState({
        sheets: [{ ...SHEET, slug: "c" }],
        answers: [{ ...ANSWER, revision: "2" }],
      }),
    );
    expect(changed.map(({ what, slug, changes }) => [what, slug, changes[0]?.kind])).toEqual([
      ["colour", "a", "gone"],
      ["colour", "c", "new"],
      ["answer", "b", "gone"],
      ["answer", "is-it-dry", "otherwise"],
    ]);
    expect(removedColours(changed).map(({ slug }) => slug)).toEqual(["a"]);
  });

  test("of a manifest that did not list sizes or answers, none of them is said to be new", () => {
    const { sizes: _, ...without } = SHEET;
    expect(changesBetween(publishedState({ sheets: [without] }), state())).toEqual([]);
  });
});

describe("a caution that got weaker", () => {
  const weaker = (cautions: object): string[] =>
    changesBetween(state(), state({ cautions: { ...CAUTIONS, ...cautions } }))
      .flatMap(weakenings)
      .map(({ change }) => change.kind);
  // basis: published. CLP, Article 20(3): Danger outweighs Warning. Everything else that is no longer said counts.
  test.each<[string, object, readonly string[]]>([
    ["a lower signal word: none for Warning", { signalWord: null }, ["signal word"]],
    ["no higher one", { signalWord: "Danger" }, []],
    ["a pictogram less", { pictograms: [] }, ["cautions"]],
    ["a hazard statement less", { hazardStatements: [] }, ["cautions"]],
    ["one exchanged for another", { hazardStatements: ["H411"] }, ["cautions"]],
    ["a precautionary statement less", { precautionaryStatements: [] }, ["cautions"]],
    ["a supplemental one less", { supplemental: [] }, ["cautions"]],
    ["a studio caution less", { studio: [] }, ["cautions"]],
    [
      "one more of each is stronger",
      { pictograms: ["GHS09", "GHS07"], studio: ["Keep it out of the air.", "x"] },
      [],
    ],
  ])("%s", (_, cautions, expected) => {
    expect(weaker(cautions)).toEqual(expected);
  });

  // published: CLP, Annex I, tables of label elements: the categories of a class, the gravest first. H400 beside H410: Article 27.
  test.each<[string, string, string | undefined]>([
    ["H413", "H412", undefined],
    ["H412", "H413", "weaker: H412"],
    ["H411", "H410", undefined],
    ["H410", "H411", "weaker: H410"],
    ["H302", "H301", undefined],
    ["H301", "H302", "weaker: H301"],
    ["H351", "H350", undefined],
    ["H400", "H410", undefined],
    ["H302", "H311", "weaker: H302"],
    ["H302", "H412", "weaker: H302"],
    ["H350", "H350i", "another: H350 -> H350i"],
    ["H373", "H140", "weaker: H373"],
    ["H140", "H410", "another: H140 -> H410"],
  ])("%s to %s: %s", (before, now, told) => {
    const of = (code: string) => state({ cautions: { ...CAUTIONS, hazardStatements: [code] } });
    const found = changesBetween(of(before), of(now))
      .flatMap(weakenings)
      .map(({ is, change }) =>
        change.kind === "cautions"
          ? `${is}: ${[change.went, change.came].filter((codes) => codes.length > 0).join(" -> ")}`
          : change.kind,
      );
    expect(found).toEqual(told === undefined ? [] : [told]);
  });

  test("of precautions and drawings nobody orders: another in its place is another", () =>
    expect(
      changesBetween(
        state(),
        state({ cautions: { ...CAUTIONS, precautionaryStatements: ["P260"] } }),
      )
        .flatMap(weakenings)
        .map(({ is }) => is),
    ).toEqual(["another"]));

  test("Danger to Warning is weaker", () => {
    const changed = changesBetween(
      state({ cautions: { ...CAUTIONS, signalWord: "Danger" } }),
      state(),
    );
    expect(changed.flatMap(weakenings)).toHaveLength(1);
  });
});

describe("in words", () => {
  const thing = changesBetween(
    state(),
    state({
      revision: "b",
      states: { "drying.class": "fast" },
      sizes: ["40 ml £9.00"],
      cautions: { ...CAUTIONS, signalWord: null, pictograms: [] },
    }),
  )[0];
  test("in English", () => {
    expect(thing === undefined ? [] : changeSentences(thing, WORDED.en)).toEqual([
      "Drying: fast; it was slow.",
      "Finish: no longer stated; it was satin.",
      "Sizes and prices: no longer 40 ml £8.00.",
      "Sizes and prices: now 40 ml £9.00.",
      "Signal word: none; it was Warning.",
      "Pictogram: no longer Environment.",
    ]);
  });
  test.each(["de", "fr", "es"] as const)("in %s no English is left", (language) => {
    const said = thing === undefined ? [] : changeSentences(thing, WORDED[language]);
    expect(said).toHaveLength(6);
    expect(said.join(" ")).not.toMatch(/no longer|now|it was|Warning/);
  });
});

describe("answers", () => {
  const answers = (now: object) =>
    changesBetween(state(), publishedState({ sheets: [SHEET], answers: [{ ...ANSWER, ...now }] }));

  test.each<[string, object, readonly Change[]]>([
    [
      "a figure of the short answer moved, though nobody edited it",
      { said: { summary: "In 5 days." } },
      [{ kind: "said", what: "summary", before: "In 4 days.", now: "In 5 days." }],
    ],
    [
      "question and short answer",
      { revision: "2", question: "Dry?", said: { summary: "Yes." } },
      [
        { kind: "renamed", before: "Is it dry?", now: "Dry?" },
        { kind: "said", what: "summary", before: "In 4 days.", now: "Yes." },
      ],
    ],
    ["a manifest that said no short answers", { said: undefined }, []],
    ["the text below", { revision: "2" }, [{ kind: "otherwise" }]],
  ])("%s", (_, now, expected) => {
    expect(answers(now).flatMap(({ changes }) => changes)).toEqual(expected);
  });

  test("are worded, without a full stop inside a sentence", () => {
    const [thing] = answers({ said: { summary: "In 5 days." } });
    if (thing === undefined) throw new Error("Nothing changed");
    expect(changeSentences(thing, WORDED.en)).toEqual([
      "The short answer: \u201cIn 4 days\u201d is now \u201cIn 5 days\u201d.",
    ]);
    expect(changeSentences(thing, WORDED.de)).toEqual([
      "Die kurze Antwort: \u201eIn 4 days\u201c heißt jetzt \u201eIn 5 days\u201c.",
    ]);
  });
});

test("of a manifest that listed no figures, those of the first are compared", () => {
  const now = { ...SHEET, states: { "oil.finish": "matte", "optics.contrastRatio": "0.98" } };
  const changes = changesBetween(
    publishedState({ sheets: [SHEET] }),
    publishedState({
      figures: ["oil.finish", "drying.class", "optics.contrastRatio"],
      sheets: [now],
    }),
  ).flatMap((one) => one.changes);
  expect(changes).toEqual([
    { kind: "figure", figure: "drying.class", before: "slow", now: undefined },
    { kind: "figure", figure: "oil.finish", before: "satin", now: "matte" },
  ]);
});

describe("a colour that has another address", () => {
  const former = [{ slug: "zinc-white", replacedBy: "chinese-white" }];
  const told = (now: readonly object[], earlier: readonly object[] = [SHEET]) =>
    changesBetween(
      publishedState({ sheets: earlier }),
      publishedState({ sheets: now, former }),
    ).flatMap((thing) => changeSentences(thing, WORDED.en).map((said) => `${thing.name}: ${said}`));
  const other = { ...SHEET, slug: "chinese-white", name: "Chinese White" };

  test("is now called otherwise, and nothing new or gone", () => {
    expect(told([{ ...other, revision: "b", prices: priced(9), sizes: ["40 ml £9.00"] }])).toEqual([
      "Chinese White: \u201cZinc White\u201d is now \u201cChinese White\u201d.",
      "Chinese White: Price of 40\u00a0ml: £9.00; it was £8.00.",
    ]);
  });
  test("says nothing where its name is as it was", () => {
    expect(told([{ ...other, name: "Zinc White" }])).toEqual([]);
  });
  test("is gone where what took its place was there before, and is named", () => {
    expect(told([other], [SHEET, other])).toEqual([
      "Zinc White: No longer among the colours. In its place: Chinese White.",
    ]);
  });
  test("is gone and the other new where nobody says that they are one", () => {
    expect(
      changesBetween(publishedState({ sheets: [SHEET] }), publishedState({ sheets: [other] })).map(
        ({ slug, changes }) => [slug, changes[0]?.kind],
      ),
    ).toEqual([
      ["chinese-white", "new"],
      ["zinc-white", "gone"],
    ]);
  });
});

describe("prices that move together", () => {
  const range = (prices: readonly number[]) =>
    publishedState({
      sheets: prices.map((price, i) => ({ ...SHEET, slug: `c-${i}`, prices: priced(price) })),
    });
  const moves = (before: readonly number[], now: readonly number[]) =>
    priceAct(changesBetween(range(before), range(now)));

  test("are one act from three colours on, risen and fallen apart, in per cent of what they were", () => {
    // 8.24/8, 8.4/8, 8.64/8 are 3, 5 and 8 % more; 7.6/8 is 5 % less.
    expect(moves([8, 8, 8, 8, 8], [8.24, 8.4, 8.64, 7.6, 8])).toEqual([
      {
        way: "rise",
        colours: 3,
        leastPercent: expect.closeTo(3, 6) as number,
        mostPercent: expect.closeTo(8, 6) as number,
      },
      {
        way: "fall",
        colours: 1,
        leastPercent: expect.closeTo(5, 6) as number,
        mostPercent: expect.closeTo(5, 6) as number,
      },
    ]);
  });
  test("are single prices of two", () => {
    expect(moves([8, 8, 8], [9, 9, 8])).toEqual([]);
  });
});
