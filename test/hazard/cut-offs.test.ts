import { describe, expect, test } from "vitest";
import { GENERIC_LIMITS } from "../../lib/hazard/classify/cut-offs.ts";
import { reproductionStatement } from "../../lib/hazard/classify/reproduction.ts";
import type { HazardClass } from "../../lib/hazard/classify/hazard-class.ts";
import type { HazardCode } from "../../lib/hazard/texts/hazard-statement.ts";
import { classStatements, label, leadCarbonate, substance } from "./ingredients.ts";

/** Statements of the chronic health classes alone: H302 and the aquatic ones have tables of their own. */
function chronic(percent: number): string[] {
  return classStatements(label([leadCarbonate(percent / 100)])).filter(
    (code) => code.startsWith("H36") || code.startsWith("H37"),
  );
}

describe("lead carbonate, from both sides of each limit", () => {
  // Generic .3 % read (clp-1272-2008, Table 3.7.2); specific .5 and 2.5 % from memory of Annex VI.
  test.each<readonly [number, readonly string[]]>([
    [0.29, []],
    [0.3, ["H360D"]],
    [0.49, ["H360D"]],
    [0.5, ["H360D", "H373"]],
    [2.49, ["H360D", "H373"]],
    [2.5, ["H360Df", "H373"]],
    [80, ["H360Df", "H373"]],
  ])("%s %% -> %j", (percent, statements) => {
    expect(chronic(percent)).toEqual(statements);
  });

  test("H302 from 25 % (500 mg/kg / .25 = 2000, derived from clp-1272-2008)", () => {
    expect(label([leadCarbonate(0.249)]).hazardStatements).not.toContain("H302");
    expect(label([leadCarbonate(0.25)]).hazardStatements).toContain("H302");
  });

  test("H332 for the dry pigment, not for a paste, and the cause is said", () => {
    expect(label([leadCarbonate(1)], { form: "powder" }).hazardStatements).toContain("H332");
    const paste = label([leadCarbonate(0.85)]);
    expect(paste.hazardStatements).not.toContain("H332");
    expect(paste.leftOut).toContainEqual({
      statement: "H332",
      rule: "dust-not-from-a-paste",
      source: "clp-article-9",
      values: {
        ingredient: "lead-carbonate",
        name: "basic lead carbonate",
        form: "paste",
        frame: "EU CLP",
      },
    });
  });

  test("each statement names ingredient, fraction, limit and source", () => {
    const trace = label([leadCarbonate(0.8)]).traces.find(
      ({ values }) => "limit" in values && values.limit === 0.025,
    );
    expect(trace).toMatchObject({
      statement: "H360Df",
      rule: "cut-off",
      source: "clp-1272-2008",
      values: {
        massFraction: 0.8,
        limit: 0.025,
        limitKind: "specific",
        ingredients: ["lead-carbonate"],
      },
      shares: [
        {
          slug: "lead-carbonate",
          name: "basic lead carbonate",
          massFraction: 0.8,
          statement: "H360Df",
        },
      ],
    });
  });

  test("a limit on the metal counts the metal (Annex VI, note 1)", () => {
    const counted = (fraction: number) =>
      classStatements(
        label([
          {
            ...leadCarbonate(fraction),
            classifications: [{ statement: "H360D", countedAs: "lead" }],
          },
        ]),
      );
    // 2 PbCO3 . Pb(OH)2 is 80.14 % lead: .3 % of lead is .3743 % of the compound (derived, iupac-atomic-weights).
    expect(counted(0.00374)).toEqual([]);
    expect(counted(0.00375)).toEqual(["H360D"]);
  });
});

describe("driers' 2-ethylhexanoates count together (clp-annex-6-memory)", () => {
  const cobalt = (fraction: number) => ({
    ...substance("cobalt-drier", fraction, "H360D"),
    casNumber: "136-52-7",
  });
  const zirconium = (fraction: number) => ({
    ...substance("zirconium-drier", fraction, "H360D"),
    casNumber: "22464-99-9",
  });

  test(".29 % in sum gives nothing, .30 % gives H360D", () => {
    expect(classStatements(label([cobalt(0.0019), zirconium(0.001)]))).toEqual([]);
    expect(classStatements(label([cobalt(0.002), zirconium(0.001)]))).toEqual(["H360D"]);
    expect(label([cobalt(0.002), zirconium(0.001)]).traces[0]).toMatchObject({
      rule: "cut-off-summed",
      values: { limit: 0.003 },
    });
  });

  test("a group that the record names counts together too", () => {
    const named = (slug: string, fraction: number) =>
      substance(slug, fraction, { statement: "H360D", sumGroup: "a group entry" });
    expect(classStatements(label([named("a", 0.0019), named("b", 0.001)]))).toEqual([]);
    expect(classStatements(label([named("a", 0.0019), named("b", 0.0011)]))).toEqual(["H360D"]);
  });

  test("unlike substances do not: .2 % and .1 % give nothing", () => {
    expect(
      classStatements(label([substance("a", 0.002, "H360D"), substance("b", 0.001, "H360D")])),
    ).toEqual([]);
  });

  test("one substance under two names does: same CAS number", () => {
    const twin = (slug: string, fraction: number) => ({
      ...substance(slug, fraction, "H360D"),
      casNumber: "1319-46-6",
    });
    expect(classStatements(label([twin("a", 0.002), twin("b", 0.001)]))).toEqual(["H360D"]);
  });
});

interface Row {
  readonly statement: HazardCode;
  readonly hazardClass: HazardClass;
  readonly percent: number;
  readonly gives: HazardCode;
  readonly below: HazardCode | undefined;
  readonly basis: string;
}

describe("generic limits, from both sides", () => {
  // Repr., lactation, STOT RE: clp-1272-2008, read. The others: clp-1272-2008-memory.
  test.each<Row>([
    {
      statement: "H420",
      hazardClass: "Ozone 1",
      percent: 0.1,
      gives: "H420",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H340",
      hazardClass: "Muta. 1B",
      percent: 0.1,
      gives: "H340",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H341",
      hazardClass: "Muta. 2",
      percent: 1,
      gives: "H341",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H350",
      hazardClass: "Carc. 1B",
      percent: 0.1,
      gives: "H350",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H350i",
      hazardClass: "Carc. 1A",
      percent: 0.1,
      gives: "H350i",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H351",
      hazardClass: "Carc. 2",
      percent: 1,
      gives: "H351",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H360F",
      hazardClass: "Repr. 1B",
      percent: 0.3,
      gives: "H360F",
      below: undefined,
      basis: "read",
    },
    {
      statement: "H361d",
      hazardClass: "Repr. 2",
      percent: 3,
      gives: "H361d",
      below: undefined,
      basis: "read",
    },
    {
      statement: "H362",
      hazardClass: "Lact.",
      percent: 0.3,
      gives: "H362",
      below: undefined,
      basis: "read",
    },
    {
      statement: "H372",
      hazardClass: "STOT RE 1",
      percent: 10,
      gives: "H372",
      below: "H373",
      basis: "read",
    },
    {
      statement: "H372",
      hazardClass: "STOT RE 1",
      percent: 1,
      gives: "H373",
      below: undefined,
      basis: "read",
    },
    {
      statement: "H373",
      hazardClass: "STOT RE 2",
      percent: 10,
      gives: "H373",
      below: undefined,
      basis: "read in part",
    },
    {
      statement: "H370",
      hazardClass: "STOT SE 1",
      percent: 10,
      gives: "H370",
      below: "H371",
      basis: "memory",
    },
    {
      statement: "H371",
      hazardClass: "STOT SE 2",
      percent: 10,
      gives: "H371",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H334",
      hazardClass: "Resp. Sens. 1B",
      percent: 1,
      gives: "H334",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H334",
      hazardClass: "Resp. Sens. 1A",
      percent: 0.1,
      gives: "H334",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H317",
      hazardClass: "Skin Sens. 1",
      percent: 1,
      gives: "H317",
      below: undefined,
      basis: "memory",
    },
    {
      statement: "H317",
      hazardClass: "Skin Sens. 1A",
      percent: 0.1,
      gives: "H317",
      below: undefined,
      basis: "memory",
    },
  ])(
    "$hazardClass from $percent % ($basis)",
    ({ statement, hazardClass, percent, gives, below }) => {
      const at = (share: number) =>
        classStatements(label([substance("a", share / 100, { statement, hazardClass })]));
      expect(at(percent)).toEqual([gives]);
      expect(at(percent * 0.999)).toEqual(below === undefined ? [] : [below]);
    },
  );

  test("every row of the table is a limit between 0 and 1", () => {
    expect(GENERIC_LIMITS.length).toBeGreaterThan(20);
    for (const { from } of GENERIC_LIMITS) expect(from > 0 && from <= 1).toBe(true);
  });

  test("H350 covers H350i when suppliers differ", () => {
    expect(
      classStatements(label([substance("a", 0.01, "H350i"), substance("b", 0.01, "H350")])),
    ).toEqual(["H350"]);
  });
});

describe("reproductionStatement", () => {
  // clp-1272-2008, Annex VI, 1.1.2.1.2: letters of H360 and H361.
  test.each([
    [1, undefined, undefined, "H360D"],
    [undefined, 1, undefined, "H360F"],
    [1, 1, undefined, "H360FD"],
    [1, 2, undefined, "H360Df"],
    [2, 1, undefined, "H360Fd"],
    [2, undefined, undefined, "H361d"],
    [undefined, 2, undefined, "H361f"],
    [2, 2, undefined, "H361fd"],
    [undefined, undefined, 1, "H360"],
    [1, 2, 1, "H360"],
    [undefined, undefined, 2, "H361"],
    [2, undefined, 2, "H361"],
    [1, undefined, 2, "H360Df"],
    [undefined, 1, 2, "H360Fd"],
  ] as const)(
    "child %s, fertility %s, not said which %s -> %s",
    (child, fertility, either, statement) => {
      expect(reproductionStatement(child, fertility, either)).toBe(statement);
    },
  );

  // clp-1272-2008, article 10: a limit of the substance's own takes the place of the generic 3 %.
  test.each(["H361", "H361d", "H361f"] as const)(
    "a limit of its own for %s is heard",
    (statement) => {
      const at = (fraction: number) =>
        classStatements(
          label([
            substance("a", fraction, {
              statement,
              specificLimits: [{ hazardClass: "Repr. 2", statement, from: 0.01 }],
            }),
          ]),
        );
      expect(at(0.0099)).toEqual([]);
      expect(at(0.01)).toEqual([statement]);
    },
  );

  test("two ingredients, each with one effect, give the statement of both", () => {
    expect(
      classStatements(label([substance("a", 0.01, "H360D"), substance("b", 0.05, "H361f")])),
    ).toEqual(["H360Df"]);
  });
});
