import { describe, expect, test } from "vitest";
import { ACT_KEYS, HAZARD_MARKETS } from "../../lib/hazard/classify/legislation.ts";
import {
  LEAD_AT_WORK,
  mayBeSold,
  US_LEAD_LIMIT,
  type Sale,
} from "../../lib/hazard/markets/market-statements.ts";
import { HAZARD_SOURCES } from "../../lib/sources/hazard.ts";
import { leadCarbonate, oil, substance } from "./ingredients.ts";
import { KNOWLEDGE, marketRulings } from "./knowledge.ts";

function sale(part: Partial<Sale>): Sale {
  return {
    ingredients: [],
    form: "paste",
    hazardStatements: [],
    publicSale: true,
    legalBasis: [],
    reviewed: false,
    hasFormulaIdentifier: true,
    ...part,
  };
}

const leadPaint = sale({
  ingredients: [leadCarbonate(0.85), oil(0.15)],
  hazardStatements: ["H302", "H360Df", "H373", "H410"],
});
const permit = {
  market: "EU",
  basis: "permit for restoration, invented",
  buyers: "restorers",
} as const;

describe("lead carbonates and sulphates as paint (reach-annex-17, read; Great Britain from memory)", () => {
  test.each(["EU", "NI", "GB"] as const)("%s forbids the sale", (market) => {
    const rulings = marketRulings(leadPaint, market);
    expect(mayBeSold(rulings)).toBe(false);
    expect(rulings[0]).toMatchObject({
      market,
      effect: "forbidden unless",
      met: false,
      rule: "lead-compound-not-as-paint",
      values: {
        substance: "lead carbonates",
        entry: "16",
        ingredients: ["lead-carbonate"],
        standing: market === "GB" ? "memory" : "read",
      },
    });
  });

  test("unless the record gives a legal basis and a class of buyer, for that market", () => {
    const rulings = marketRulings({ ...leadPaint, legalBasis: [permit] }, "EU");
    expect(mayBeSold(rulings)).toBe(true);
    expect(rulings[0]).toMatchObject({
      met: true,
      values: { basis: permit.basis, buyers: "restorers" },
      legalBasis: permit,
    });
    expect(mayBeSold(marketRulings({ ...leadPaint, legalBasis: [permit] }, "NI"))).toBe(false);
  });

  test.each([
    { ...permit, buyers: " " },
    { ...permit, basis: "" },
  ])("%j is no legal basis", (basis) => {
    expect(mayBeSold(marketRulings({ ...leadPaint, legalBasis: [basis] }, "EU"))).toBe(false);
  });

  test("a sulphate by its CAS number, a carbonate by its Colour Index name, the dry pigment too", () => {
    const sulphate = sale({
      ingredients: [{ ...substance("white", 1), casNumber: "7446-14-2" }],
      form: "powder",
    });
    expect(marketRulings(sulphate, "EU")[0]).toMatchObject({
      rule: "lead-compound-not-as-paint",
      values: { substance: "lead sulphates", entry: "17" },
    });
    expect(
      marketRulings(
        sale({ ingredients: [{ ...substance("white", 1), colourIndexName: "PW 1" }] }),
        "EU",
      )[0]?.rule,
    ).toBe("lead-compound-not-as-paint");
  });

  test("a lead compound without a name is not let through", () => {
    expect(
      marketRulings(
        sale({ ingredients: [{ ...substance("white", 0.5), metals: { lead: 0.7 } }] }),
        "EU",
      )[0]?.rule,
    ).toBe("lead-compound-not-identified");
    expect(
      mayBeSold(
        marketRulings(
          sale({
            ingredients: [
              { ...substance("naples", 0.5), casNumber: "8012-00-8", metals: { lead: 0.7 } },
            ],
          }),
          "EU",
        ),
      ),
    ).toBe(true);
  });

  test("none of it in it, none of this", () => {
    expect(marketRulings(sale({ ingredients: [leadCarbonate(0), oil(1)] }), "EU")).toEqual([]);
  });
});

describe("carcinogens, mutagens, toxicants for reproduction (reach-annex-17-cmr; the exemption from memory)", () => {
  const cadmium = sale({ hazardStatements: ["H350"], ingredients: [oil(1)] });

  test("an artists' paint is exempt, a dry pigment is not for the public", () => {
    expect(marketRulings(cadmium, "EU")[0]).toMatchObject({
      effect: "line",
      rule: "cmr-artists-paint-exempt",
      values: { statements: ["H350"] },
    });
    const powder = marketRulings({ ...cadmium, form: "powder" }, "EU");
    expect(powder[0]).toMatchObject({ effect: "forbidden unless", rule: "cmr-not-to-the-public" });
    expect(mayBeSold(powder)).toBe(false);
    expect(marketRulings({ ...cadmium, form: "powder", publicSale: false }, "EU")[0]).toMatchObject(
      { effect: "line", rule: "restricted-to-professional-users" },
    );
  });

  test.each(["H340", "H350i", "H360D", "H360"])("%s counts", (statement) => {
    expect(
      mayBeSold(marketRulings(sale({ hazardStatements: [statement], form: "powder" }), "GB")),
    ).toBe(false);
  });

  test.each(["H341", "H351", "H361f", "H373", "H410"])("%s does not", (statement) => {
    expect(
      mayBeSold(marketRulings(sale({ hazardStatements: [statement], form: "powder" }), "EU")),
    ).toBe(true);
  });

  test("the exemption never frees lead white", () => {
    expect(marketRulings(leadPaint, "EU").map(({ rule, effect }) => [rule, effect])).toEqual(
      expect.arrayContaining([
        ["lead-compound-not-as-paint", "forbidden unless"],
        ["cmr-artists-paint-exempt", "line"],
      ]),
    );
  });
});

describe("other acts", () => {
  test("chrome yellow needs an authorisation in the EU (reach-annex-14-memory)", () => {
    const rulings = marketRulings(
      sale({ ingredients: [{ ...substance("chrome", 1), casNumber: "1344-37-2" }] }),
      "EU",
    );
    expect(rulings[0]).toMatchObject({
      effect: "forbidden unless",
      rule: "needs-authorisation",
      values: { standing: "memory" },
    });
  });

  test.each([
    ["EU", "2025-08-01", "read"],
    ["NI", "2025-08-01", "read"],
    ["GB", "2024-06-26", "memory"],
  ] as const)("titanium dioxide in %s: without H351 since %s", (market, since, standing) => {
    const rulings = marketRulings(
      sale({ ingredients: [{ ...substance("white", 0.7), casNumber: "13463-67-7" }, oil(0.3)] }),
      market,
    );
    expect(rulings).toMatchObject([
      { effect: "line", rule: "titanium-dioxide-without-h351", values: { since, standing } },
    ]);
  });

  test("an offer to the public names the hazards; a class of health asks for a formula identifier", () => {
    const rules = (part: Partial<Sale>) => marketRulings(sale(part), "EU").map(({ rule }) => rule);
    expect(rules({ hazardStatements: ["H317"], hasFormulaIdentifier: false })).toEqual([
      "offer-names-hazards",
      "formula-identifier-wanted",
    ]);
    expect(rules({ hazardStatements: ["H317"] })).toEqual(["offer-names-hazards"]);
    expect(rules({ hazardStatements: ["H410"], hasFormulaIdentifier: false })).toEqual([
      "offer-names-hazards",
    ]);
    expect(rules({ hazardStatements: [] })).toEqual([]);
  });

  test("the United States: lead line above 90 ppm, a review, Proposition 65 (memory)", () => {
    const rules = (part: Partial<Sale>) => marketRulings(sale(part), "US").map(({ rule }) => rule);
    expect(rules({ ingredients: [leadCarbonate(0.85)] })).toEqual([
      "us-artists-paint-exempt-labelled",
      "us-review-wanted",
      "proposition-65",
    ]);
    const lead = (share: number) =>
      rules({ ingredients: [{ ...substance("a", 1), metals: { lead: share } }] });
    expect(lead(US_LEAD_LIMIT)).not.toContain("us-artists-paint-exempt-labelled");
    expect(lead(US_LEAD_LIMIT * 1.01)).toContain("us-artists-paint-exempt-labelled");
    expect(rules({ reviewed: true })).toEqual(["us-review-on-record"]);
    expect(mayBeSold(marketRulings(leadPaint, "US"))).toBe(true);
  });

  test("carbon black and titanium dioxide are listed as dust only", () => {
    const soot = { ...substance("soot", 1), casNumber: "1333-86-4" };
    const listed = (form: Sale["form"]) =>
      marketRulings(sale({ ingredients: [soot], form }), "US").flatMap((ruling) =>
        ruling.rule === "proposition-65" ? [...ruling.values.substances] : [],
      );
    expect(listed("powder")).toEqual(["carbon black"]);
    expect(listed("paste")).toEqual([]);
  });

  test("of another market nothing is known, and that is said", () => {
    expect(marketRulings(leadPaint, "other")).toEqual([
      { market: "other", effect: "line", met: true, rule: "acts-not-known-here", values: {} },
    ]);
  });
});

test("every act has its row, is dated, has a source, and says whether it was read", () => {
  expect(KNOWLEDGE.acts.map(({ act }) => act).sort()).toEqual([...ACT_KEYS].sort());
  for (const { since, source, standing, markets } of KNOWLEDGE.acts) {
    expect(since).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    expect(Object.keys(HAZARD_SOURCES)).toContain(source);
    expect(["read", "memory"]).toContain(standing);
    for (const market of markets) expect(HAZARD_MARKETS).toContain(market);
  }
});

const PIGMENT = { slug: "pigment", massFraction: 0.6, classifications: "none stated" } as const;

/** ECHA's candidate list, export of 9 October 2026: date of inclusion of each (published). */
describe("substances of very high concern, by the day that each was listed", () => {
  test.each([
    ["basic lead carbonate", { casNumber: "1319-46-6" }, "2012-12-19"],
    ["red lead", { casNumber: "1314-41-6" }, "2012-12-19"],
    ["lead antimonate yellow", { casNumber: "8012-00-8" }, "2012-12-19"],
    ["massicot", { colourIndexName: "PY 46" }, "2012-12-19"],
    ["lead chromate", { casNumber: "7758-97-6" }, "2010-01-13"],
    ["chrome yellow", { casNumber: "1344-37-2" }, "2010-01-13"],
    ["molybdate red", { colourIndexName: "PR 104" }, "2010-01-13"],
  ] as const)("%s", (name, identity, since) => {
    const rulings = marketRulings(
      sale({ ingredients: [{ ...PIGMENT, name, ...identity }] }),
      "EU",
    ).filter(({ rule }) => rule === "substance-of-very-high-concern");
    expect(rulings.map(({ values }) => values)).toEqual([
      { ingredients: ["pigment"], names: [name], since, standing: "read" },
    ]);
  });

  test("titanium dioxide is not on it", () => {
    const titanium = { ...PIGMENT, name: "titanium dioxide", casNumber: "13463-67-7" };
    expect(
      marketRulings(sale({ ingredients: [titanium] }), "EU").map(({ rule }) => rule),
    ).not.toContain("substance-of-very-high-concern");
  });
});

// basis: published, directive-2024-869: .03 mg/m3 in air; 30 ug of lead in 100 ml of blood until the end of 2028, then 15.
test("lead at work is held to the limits of the directive", () => {
  expect(LEAD_AT_WORK).toEqual({
    airMgPerM3: 0.03,
    bloodUgPer100Ml: 30,
    until: "2028-12-31",
    bloodAfterUgPer100Ml: 15,
  });
});
