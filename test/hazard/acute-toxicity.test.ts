import { describe, expect, test } from "vitest";
import { labelElements } from "./knowledge.ts";
import {
  acuteCategory,
  ateMix,
  pointEstimate,
  type AcuteClass,
  type AcutePart,
} from "../../lib/hazard/classify/acute-toxicity.ts";
import type { Ingredient } from "../../lib/hazard/classify/composition.ts";
import type { AcuteRoute } from "../../lib/hazard/texts/hazard-statement.ts";
import { checkTable, type Check } from "../support/checks.ts";
import { label, oil, substance } from "./ingredients.ts";

const UN = { basis: "published", source: "unece-acute-2008" } as const;

checkTable<readonly AcutePart[]>(
  "ateMix, the UN worked examples",
  (parts) => ateMix(parts) ?? NaN,
  [
    {
      ...UN,
      locator: "oral, first example",
      expected: 1880,
      tolerance: 0.5,
      input: [
        { massFraction: 0.16, ate: 1600 },
        { massFraction: 0.04, ate: 200 },
        { massFraction: 0.8, ate: 3450 },
      ],
    },
    {
      ...UN,
      locator: "oral, second example",
      expected: 43_425,
      tolerance: 0.5,
      input: [
        { massFraction: 0.04, ate: 1737 },
        { massFraction: 0.96, ate: "not toxic" },
      ],
    },
    {
      ...UN,
      locator: "oral, third example",
      expected: 873,
      tolerance: 0.5,
      input: [
        { massFraction: 0.26, ate: 2737 },
        { massFraction: 0.23, ate: 4500 },
        { massFraction: 0.4, ate: 400 },
        { massFraction: 0.11, ate: "not toxic" },
      ],
    },
    {
      ...UN,
      locator: "vapour example",
      expected: 6.6,
      tolerance: 0.05,
      note: "11 % unknown is taken out of the mixture: 89/13.574",
      input: [
        { massFraction: 0.26, ate: 11 },
        { massFraction: 0.23, ate: 19 },
        { massFraction: 0.4, ate: 4 },
        { massFraction: 0.11, ate: "unknown" },
      ],
    },
  ] satisfies Check<readonly AcutePart[], number>[],
);

checkTable<number>(
  "ateMix at the share of unknown ingredients",
  (unknown) =>
    ateMix([
      { massFraction: 0.5, ate: 100 },
      { massFraction: unknown, ate: "unknown" },
    ]) ?? NaN,
  [
    {
      basis: "derived",
      source: "clp-1272-2008",
      locator: "3.1.3.6.2.3",
      input: 0.1,
      expected: 200,
      tolerance: 1e-9,
      note: "10 % does not exceed 10 %: 1/(.5/100)",
    },
    {
      basis: "derived",
      source: "clp-1272-2008",
      locator: "3.1.3.6.2.3",
      input: 0.11,
      expected: 178,
      tolerance: 1e-9,
      note: ".89/(.5/100)",
    },
  ] satisfies Check<number, number>[],
);

interface Example {
  readonly route: AcuteRoute;
  readonly ingredients: readonly Ingredient[];
  readonly hazardClass: AcuteClass | undefined;
}

function given(
  slug: string,
  massFraction: number,
  route: AcuteRoute,
  ate: number | "above the limit dose" | "unknown",
): Ingredient {
  return {
    slug,
    name: slug,
    massFraction,
    classifications: "none stated",
    acuteToxicity: [{ route, ate }],
  };
}

describe("the UN worked examples as mixtures", () => {
  test.each<Example>([
    {
      route: "oral",
      hazardClass: "Acute Tox. 4",
      ingredients: [
        given("a", 0.16, "oral", 1600),
        given("b", 0.04, "oral", 200),
        given("c", 0.8, "oral", 3450),
      ],
    },
    {
      route: "oral",
      hazardClass: undefined,
      ingredients: [
        given("a", 0.04, "oral", 1737),
        given("b", 0.96, "oral", "above the limit dose"),
      ],
    },
    {
      route: "oral",
      hazardClass: "Acute Tox. 4",
      ingredients: [
        given("a", 0.26, "oral", 2737),
        given("b", 0.23, "oral", 4500),
        given("c", 0.4, "oral", 400),
        given("d", 0.11, "oral", "above the limit dose"),
      ],
    },
    {
      route: "vapour",
      hazardClass: "Acute Tox. 3",
      ingredients: [
        given("a", 0.26, "vapour", 11),
        given("b", 0.23, "vapour", 19),
        given("c", 0.4, "vapour", 4),
        given("d", 0.11, "vapour", "unknown"),
      ],
    },
  ])("$route -> $hazardClass (unece-acute-2008)", ({ route, ingredients, hazardClass }) => {
    const found = labelElements({
      ingredients,
      form: "liquid",
      frame: "UN GHS",
      publicSale: false,
    });
    expect(found.classes.find((each) => each.route === route)?.hazardClass).toBe(hazardClass);
  });

  test("the vapour example carries the line on unknown toxicity, 11 %", () => {
    const ingredients = [
      given("a", 0.26, "vapour", 11),
      given("b", 0.23, "vapour", 19),
      given("c", 0.4, "vapour", 4),
      given("d", 0.11, "vapour", "unknown"),
    ];
    const found = labelElements({
      ingredients,
      form: "liquid",
      frame: "UN GHS",
      publicSale: false,
    });
    expect(found.unknownAcuteToxicity).toEqual([
      {
        rule: "unknown-acute-toxicity",
        source: "clp-1272-2008-memory",
        values: { routes: ["vapour"], massFraction: 0.11, ingredients: ["d"] },
      },
    ]);
    expect(found.traces[0]?.values).toMatchObject({
      route: "vapour",
      limit: 10,
      unit: "mg/l",
      unknownFraction: 0.11,
    });
  });

  // unece-acute-2008 and the system's Table 3.1.1 give category 5 by inhalation no figure: "equivalent doses".
  test("category 5 by inhalation is told without a limit", () => {
    const { traces } = labelElements({
      ingredients: [substance("a", 1, "H333")],
      form: "liquid",
      frame: "UN GHS",
      publicSale: false,
    });
    expect(traces.find(({ rule }) => rule === "ate-mix")?.values).not.toHaveProperty("limit");
  });

  test("the first example in the EU frame: 3450 mg/kg lies in no category and does not count", () => {
    const ingredients = [
      given("a", 0.16, "oral", 1600),
      given("b", 0.04, "oral", 200),
      given("c", 0.8, "oral", 3450),
    ];
    // .16/1600 + .04/200 = .0003: 3333 mg/kg, above 2000 (derived, clp-1272-2008, 3.1.3.6.1).
    expect(
      labelElements({ ingredients, form: "liquid", frame: "EU CLP", publicSale: false }).classes,
    ).toEqual([]);
  });
});

interface Limit {
  readonly route: AcuteRoute;
  readonly upTo: readonly [number, number, number, number];
}

describe("acuteCategory", () => {
  // clp-1272-2008, Table 3.1.1: oral, dermal, dust and mist read; vapour from memory.
  const LIMITS: readonly Limit[] = [
    { route: "oral", upTo: [5, 50, 300, 2000] },
    { route: "dermal", upTo: [50, 200, 1000, 2000] },
    { route: "dust", upTo: [0.05, 0.5, 1, 5] },
    { route: "vapour", upTo: [0.5, 2, 10, 20] },
  ];
  const rows = LIMITS.flatMap(({ route, upTo }) =>
    upTo.map((limit, i) => ({ route, limit, category: i + 1 })),
  );

  test.each(rows)(
    "$route: $limit is category $category, and just above it is the next",
    ({ route, limit, category }) => {
      expect(acuteCategory(route, limit, "EU CLP")).toBe(`Acute Tox. ${category}`);
      expect(acuteCategory(route, limit * 1.0001, "EU CLP")).toBe(
        category === 4 ? undefined : `Acute Tox. ${category + 1}`,
      );
    },
  );

  test("only the UN frame goes on to category 5, by mouth and skin, up to 5000 mg/kg", () => {
    expect(acuteCategory("oral", 5000, "UN GHS")).toBe("Acute Tox. 5");
    expect(acuteCategory("oral", 5001, "UN GHS")).toBeUndefined();
    expect(acuteCategory("vapour", 21, "UN GHS")).toBeUndefined();
  });

  test("refuses NaN", () => {
    expect(() => acuteCategory("oral", NaN, "EU CLP")).toThrow(
      "The acute toxicity estimate is NaN; right would be 0 <= ATE",
    );
  });
});

describe("pointEstimate", () => {
  // clp-1272-2008-memory, Table 3.1.2 (oral read). A web table with dermal 50/200/1000/2000 is wrong: those are the limits.
  test.each([
    ["oral", [0.5, 5, 100, 500]],
    ["dermal", [5, 50, 300, 1100]],
    ["dust", [0.005, 0.05, 0.5, 1.5]],
    ["vapour", [0.05, 0.5, 3, 11]],
  ] as const)("%s: %j", (route, estimates) => {
    expect(
      ([1, 2, 3, 4] as const).map((category) => pointEstimate(`Acute Tox. ${category}`, route)),
    ).toEqual(estimates);
  });
  test("of category 5, which the UN frame alone has, 2500 by mouth and skin (UN GHS, Table 3.1.2, from memory)", () => {
    expect(pointEstimate("Acute Tox. 5", "oral")).toBe(2500);
    expect(pointEstimate("Acute Tox. 5", "dermal")).toBe(2500);
  });
});

describe("which ingredients count", () => {
  test("an ATE on record stands before the point estimate", () => {
    // 30 % at 500 mg/kg: 1667, category 4; at 700 mg/kg: 2333, none (derived).
    expect(label([substance("a", 0.3, "H302")]).hazardStatements).toEqual(["H302"]);
    expect(label([substance("a", 0.3, { statement: "H302", ate: 700 })]).hazardStatements).toEqual(
      [],
    );
  });

  test("category 4 counts from 1 %, category 3 from .1 % (clp-1272-2008-memory, Table 1.1)", () => {
    const counted = (partner: string, fraction: number) =>
      label([
        substance("a", 0.2, { statement: "H302", ate: 401 }),
        substance("b", fraction, partner),
      ]).hazardStatements;
    // .2/401 is 2005 mg/kg, just over category 4; .1 % at 100 mg/kg or 1 % at 500 brings it under 2000 (derived).
    expect(counted("H301", 0.001)).toEqual(["H302"]);
    expect(counted("H301", 0.00099)).toEqual([]);
    expect(counted("H302", 0.01)).toEqual(["H302"]);
    expect(counted("H302", 0.0099)).toEqual([]);
  });

  test("an ingredient without hazard data is unknown from 1 % on", () => {
    const line = (fraction: number) =>
      label([{ slug: "x", name: "x", massFraction: fraction }]).unknownAcuteToxicity.length;
    expect(line(0.0099)).toBe(0);
    expect(line(0.01)).toBe(1);
  });

  test("what no ingredient accounts for is unknown, and a gap", () => {
    const found = labelElements({
      ingredients: [oil(0.9)],
      form: "paste",
      frame: "EU CLP",
      publicSale: false,
    });
    expect(found.unknownAcuteToxicity[0]?.values).toMatchObject({ ingredients: ["(unaccounted)"] });
    expect(found.gaps.map(({ rule }) => rule)).toEqual(["total-short-of-the-whole"]);
  });
});

describe("bad input", () => {
  test.each([0, -1, NaN, Infinity])("an ATE of %s", (ate) => {
    expect(() => ateMix([{ massFraction: 1, ate }])).toThrow(
      new RangeError(`The acute toxicity estimate is ${ate}; right would be 0 < ATE < Infinity`),
    );
    expect(() => label([given("a", 1, "oral", ate)])).toThrow("The acute toxicity estimate");
  });

  test.each([1.01, -0.1, NaN])("a fraction of %s", (massFraction) => {
    expect(() => ateMix([{ massFraction, ate: 5 }])).toThrow(
      `The mass fraction is ${massFraction}; right would be 0 <= fraction <= 1`,
    );
  });
});

/** basis: derived, clp-1272-2008 Table 3.1.2: an oral ATE of .5 for category 1 and of 5 for 2, so that 2 % of it make 25, category 2, or 250, category 3. */
test.each([
  ["Acute Tox. 1", "Acute Tox. 2"],
  ["Acute Tox. 2", "Acute Tox. 1"],
] as const)("of %s and %s by one route the more toxic counts, whichever stands first", (...of) => {
  const stated = of.map((hazardClass) => ({ statement: "H300", hazardClass }));
  expect(label([substance("salt", 0.02, ...stated)]).hazardStatements).toEqual(["H300"]);
});
