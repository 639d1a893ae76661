import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { HAZARD_CODES } from "../../lib/hazard/texts/hazard-statement.ts";
import { isGrave } from "../../lib/hazard/label/precautionary-choice.ts";
import { precaution } from "../../lib/hazard/texts/precautionary-statement.ts";
import type { Composition } from "../../lib/hazard/classify/composition.ts";
import { label, leadCarbonate, substance, zincOxide } from "./ingredients.ts";
import { KNOWLEDGE } from "./knowledge.ts";

/** Fatal and toxic; cancer, genes and unborn children for certain. */
const GRAVE = /^(Acute Tox\. [123]|(Carc|Muta|Repr)\. 1[AB]?)$/;

const precautions = (ingredients: Parameters<typeof label>[0], other: Partial<Composition> = {}) =>
  label(ingredients, other).precautionaryStatements.map(({ statement }) => statement);

// basis: practice, practice-hazard: suspected of it is not for certain, and harmful is not toxic.
test.each([
  ["Acute Tox. 3", true],
  ["Acute Tox. 4", false],
  ["Carc. 1B", true],
  ["Carc. 2", false],
  ["Muta. 1A", true],
  ["Muta. 2", false],
  ["Repr. 1A", true],
  ["Repr. 2", false],
  ["STOT RE 1", false],
] as const)("whether %s is grave: %s", (hazardClass, grave) =>
  expect(isGrave(hazardClass)).toBe(grave),
);

describe("what a careful technician would expect (common practice, no source)", () => {
  test("lead white for restorers: instructions, gloves, no food, water, advice", () => {
    const chosen = precautions([leadCarbonate(0.85)]);
    for (const code of ["P201", "P280", "P308+P313", "P273", "P270"])
      expect(chosen).toContain(code);
  });

  test("dry lead white: do not breathe the dust", () => {
    const chosen = precautions([leadCarbonate(1)], { form: "powder" });
    for (const code of ["P260", "P270", "P280", "P308+P313"]) expect(chosen).toContain(code);
  });

  test("a thinner: no flame, no vomiting, a doctor at once", () => {
    const chosen = precautions([substance("turpentine", 1, "H226", "H304", "H336")], {
      form: "liquid",
      publicSale: true,
    });
    for (const code of ["P102", "P210", "P301+P310", "P331", "P501"])
      expect(chosen).toContain(code);
  });

  test("zinc white: keep it out of the water, gather up what is spilt", () => {
    expect(precautions([zincOxide(0.8)])).toEqual(["P273", "P391", "P501"]);
  });

  test("no hazard, no precaution", () => {
    expect(precautions([substance("ochre", 0.8)], { publicSale: true })).toEqual([]);
  });
});

/**
 * Sources: clp-1272-2008, Tables 3.1.3 and 3.6.3, for what belongs to each hazard; clp-article-28(3)
 * for more than six. What is left out of the tables is this project's choice.
 */
describe("a hazard that kills or causes cancer has all that is highly recommended for it", () => {
  const vermilion = [
    { statement: "H300", hazardClass: "Acute Tox. 2" },
    { statement: "H310", hazardClass: "Acute Tox. 1" },
    { statement: "H330", hazardClass: "Acute Tox. 2", route: "dust" },
    "H373",
    "H410",
  ];

  test("fatal in contact with skin: gloves, off the skin, help at once, locked up; and water", () => {
    const found = label([substance("cinnabar", 1, ...vermilion)], { publicSale: true });
    expect(found.precautionaryStatements.map(({ statement }) => statement)).toEqual([
      ...["P102", "P262", "P270", "P273", "P280", "P301+P310", "P302+P352", "P310", "P405", "P501"],
    ]);
    const gloves = found.precautionaryStatements.find(({ statement }) => statement === "P280");
    expect(gloves).toMatchObject({ protection: "gloves", values: { answers: ["H310"] } });
  });

  test("toxic in contact with skin: gloves and locked up, without what categories 1 and 2 have", () => {
    const toxic = precautions([substance("a", 1, "H311")]);
    expect(toxic).toEqual(expect.arrayContaining(["P280", "P302+P352", "P361+P364", "P405"]));
    for (const code of ["P262", "P270", "P310"]) expect(toxic).not.toContain(code);
  });

  test("toxic when swallowed and causes cancer, poison to water", () => {
    const orpiment = substance(
      "orpiment",
      1,
      "H301",
      { statement: "H350", hazardClass: "Carc. 1A" },
      "H410",
    );
    expect(precautions([orpiment], { publicSale: true })).toEqual([
      ...["P102", "P201", "P270", "P273", "P280", "P301+P310", "P308+P313", "P405", "P501"],
    ]);
  });

  test("harmful alone stays at six, and out of children's reach stands for locked up", () => {
    const harmful = precautions(
      [substance("a", 1, "H302", "H304", "H312", "H315", "H318", "H317", "H335", "H411")],
      { publicSale: true },
    );
    expect(harmful).toHaveLength(6);
    expect(harmful).not.toContain("P405");
  });
});

describe("for the public", () => {
  test("children first, and one on disposal (clp-article-28)", () => {
    const chosen = label([leadCarbonate(0.85)], { publicSale: true }).precautionaryStatements;
    expect(chosen.map(({ statement }) => statement)).toEqual(
      expect.arrayContaining(["P102", "P501"]),
    );
    expect(chosen.find(({ statement }) => statement === "P102")?.rule).toBe("children-first");
  });

  test("a trade label does not speak of children", () => {
    expect(precautions([leadCarbonate(0.85)])).not.toContain("P102");
  });
});

describe("editions", () => {
  test("UN GHS Rev. 10 prints P203 and P318, the EU still P201 and P308+P313 (hazard figures, read)", () => {
    const un = precautions([leadCarbonate(0.85)], { frame: "UN GHS" });
    expect(un).toEqual(expect.arrayContaining(["P203", "P318"]));
    for (const old of ["P201", "P202", "P308+P313"]) expect(un).not.toContain(old);
    expect(precautions([leadCarbonate(0.85)])).toEqual(
      expect.arrayContaining(["P201", "P308+P313"]),
    );
  });

  test.each([
    ["P201", "P203"],
    ["P202", "P203"],
    ["P308+P313", "P318"],
  ] as const)("%s is older than Rev. 10: %s", (old, now) => {
    const { replacedIn } = precaution(old, KNOWLEDGE.precautions) ?? {};
    expect(replacedIn).toEqual({ "UN GHS": now });
  });

  test("every replacement is a code of the list", () => {
    const replacements = KNOWLEDGE.precautions.flatMap(({ replacedIn }) =>
      Object.values(replacedIn ?? {}),
    );
    expect(replacements.length).toBeGreaterThan(10);
    const codes = KNOWLEDGE.precautions.map(({ code }) => code);
    for (const code of replacements) expect(codes).toContain(code);
  });
});

/** Source: clp-article-28, not more than six unless necessary to reflect the nature and severity of the hazards. */
test("more than six only for a grave hazard, in order, each for a hazard on the label, whatever the hazards", () => {
  fc.assert(
    fc.property(
      fc.subarray([...HAZARD_CODES], { minLength: 1 }),
      fc.boolean(),
      fc.constantFrom("paste", "powder", "liquid"),
      fc.constantFrom("EU CLP", "UN GHS"),
      (statements, publicSale, form, frame) => {
        const found = label([substance("a", 1, ...statements)], { publicSale, form, frame });
        const chosen = found.precautionaryStatements;
        const codes = chosen.map(({ statement }) => statement);
        const grave = found.classes.some(({ hazardClass }) => GRAVE.test(hazardClass));
        if (!grave) expect(codes.length).toBeLessThanOrEqual(6);
        expect(codes).toEqual([...new Set(codes)].sort());
        for (const { statement, values } of chosen) {
          for (const answered of values["answers"])
            expect(found.hazardStatements).toContain(answered);
          expect([undefined, frame]).toContain(precaution(statement, KNOWLEDGE.precautions)?.frame);
        }
      },
    ),
    { seed: 1, numRuns: 200 },
  );
});

test("not to eat or drink belongs to category 1 of repeated exposure, not to category 2 (clp-1272-2008-memory, Table 3.9.5)", () => {
  const dust = (code: string) =>
    label([substance("a", 1, { statement: code, route: "dust" })], {
      form: "powder",
    }).precautionaryStatements.map(({ statement }) => statement);
  expect(dust("H372")).toContain("P270");
  expect(dust("H373")).toEqual(["P260", "P314", "P501"]);
});

test("what can be drawn into the lungs says not to make vomit, however much else there is (CLP, Table 3.10.2)", () => {
  const drier = ["H226", "H304", "H317", "H319", "H360D", "H412"];
  for (const publicSale of [true, false]) {
    const { precautionaryStatements } = label([substance("drier", 1, ...drier)], {
      form: "liquid",
      flashPointC: 41,
      publicSale,
    });
    const codes = precautionaryStatements.map(({ statement }) => statement);
    expect(codes).toContain("P331");
    expect(codes).toContain("P301+P310");
    // Harms the unborn child, burns, and harms water: each still has its own (Article 28(3)).
    expect(codes).toEqual(expect.arrayContaining(["P201", "P210", "P273", "P280", "P405"]));
  }
});
