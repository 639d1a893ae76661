import { describe, expect, test } from "vitest";
import { SUBSTANCE_NAMES, substancesOf } from "../../lib/hazard/classify/substance.ts";
import { KNOWLEDGE } from "./knowledge.ts";
import {
  classification,
  classificationFaults,
  type ClassificationForm,
} from "../../lib/hazard/classify/classification.ts";
import {
  HAZARD_CODES,
  HAZARD_STATEMENTS,
  inLabelOrder,
  isHazardCode,
} from "../../lib/hazard/texts/hazard-statement.ts";
import {
  HAZARD_CLASSES,
  HAZARD_CLASS_NAMES,
  isHazardClass,
} from "../../lib/hazard/classify/hazard-class.ts";
import { label, substance } from "./ingredients.ts";

describe("a code alone", () => {
  // clp-1272-2008, Annex I: which class carries which statement.
  test.each([
    ["H302", "Acute Tox. 4", "oral"],
    ["H312", "Acute Tox. 4", "dermal"],
    ["H301", "Acute Tox. 3", "oral"],
    ["H304", "Asp. Tox. 1", undefined],
    ["H315", "Skin Irrit. 2", undefined],
    ["H318", "Eye Dam. 1", undefined],
    ["H336", "STOT SE 3", undefined],
    ["H341", "Muta. 2", undefined],
    ["H360Df", "Repr. 1", undefined],
    ["H372", "STOT RE 1", undefined],
    ["H400", "Aquatic Acute 1", undefined],
    ["H412", "Aquatic Chronic 3", undefined],
  ])("%s is %s, %s", (code, hazardClass, route) => {
    expect(classification(code)).toMatchObject({
      statement: code,
      hazardClass,
      mFactor: 1,
      specificLimits: [],
      ...(route === undefined ? {} : { route }),
    });
  });

  test("of two classes with one statement the more severe is taken: H300 as category 1", () => {
    expect(classification("H300")).toMatchObject({ hazardClass: "Acute Tox. 1" });
    expect(classification({ statement: "H300", hazardClass: "Acute Tox. 2" })).toMatchObject({
      hazardClass: "Acute Tox. 2",
    });
  });

  test("inhalation without a route stays open: dust, or vapour of a liquid that burns", () => {
    expect(classification("H332")).not.toHaveProperty("route");
    const routes = (...statements: string[]) =>
      label([substance("a", 1, ...statements)], { form: "liquid" })
        .classes.filter(({ statement }) => statement === "H332")
        .map(({ route }) => route);
    expect(routes("H332")).toEqual(["dust"]);
    expect(routes("H226", "H332")).toEqual(["vapour"]);
    expect(routes("H304", "H332")).toEqual(["vapour"]);
  });
});

interface Refusal {
  readonly form: string | ClassificationForm;
  readonly sentence: string;
}

describe("what is refused, with the house sentence", () => {
  test.each<Refusal>([
    {
      form: "H399",
      sentence: "H399 is no hazard statement of the frame, such as H302; nearest: H319",
    },
    {
      form: "H360df",
      sentence: "H360df is no hazard statement of the frame, such as H302; nearest: H360Df",
    },
    {
      form: "toxic",
      sentence: "toxic is no hazard statement of the frame, such as H302",
    },
    {
      form: { statement: "H302", ate: 0 },
      sentence: "The acute toxicity estimate is 0, and lies above 0",
    },
    {
      form: { statement: "H302", ate: NaN },
      sentence: "The acute toxicity estimate is NaN, and lies above 0",
    },
    {
      form: { statement: "H302", ate: Infinity },
      sentence: "The acute toxicity estimate is Infinity, and lies above 0",
    },
    {
      form: { statement: "H302", hazardClass: "Acute Tox. 3" },
      sentence:
        "H302 is not a statement of the class Acute Tox. 3, but of Acute Tox. 4; nearest: Acute Tox. 4",
    },
    {
      form: { statement: "H302", route: "dermal" },
      sentence: "H302 is not about the route dermal, but about oral",
    },
    {
      form: { statement: "H332", route: "oral" },
      sentence: "H332 is not about the route oral, but about dust or vapour",
    },
    {
      form: { statement: "H410", mFactor: 0.5 },
      sentence: "The M-factor is 0.5, and is 1 or more",
    },
    {
      form: { statement: "H410", mFactor: Infinity },
      sentence: "The M-factor is Infinity, and is 1 or more",
    },
    {
      form: { statement: "H410", mFactor: NaN },
      sentence: "The M-factor is NaN, and is 1 or more",
    },
    {
      form: { statement: "H360D", countedAs: "led" },
      sentence:
        "No limit is counted as led, but as lead or cadmium or mercury or arsenic or chromate or nickel or cobalt or antimony or barium or manganese or copper; nearest: lead",
    },
    {
      form: { statement: "H373", specificLimits: [{ from: 0.005 }] },
      sentence: "A limit needs its hazard class and category, such as Repr. 2",
    },
    {
      form: { statement: "H373", specificLimits: [{ hazardClass: "STOT RE", from: 0.005 }] },
      sentence: "STOT RE is no hazard class and category, such as Repr. 2; nearest: STOT RE 1",
    },
    {
      form: { statement: "H373", specificLimits: [{ hazardClass: "STOT RE 2", from: 0 }] },
      sentence: "The specific concentration limit is 0, and lies between 0 and 1",
    },
    {
      form: { statement: "H373", specificLimits: [{ hazardClass: "STOT RE 2", from: 1.01 }] },
      sentence: "The specific concentration limit is 1.01, and lies between 0 and 1",
    },
    {
      form: {
        statement: "H360Df",
        specificLimits: [{ hazardClass: "Repr. 2", statement: "H360D", from: 0.1 }],
      },
      sentence: "H360D is not a statement of the class Repr. 2",
    },
  ])("$sentence", ({ form, sentence }) => {
    expect(() => classification(form)).toThrow(new RangeError(sentence));
    expect(classificationFaults(form)).toHaveLength(1);
  });

  test("all faults of one classification are found, with their places", () => {
    const faults = classificationFaults({
      statement: "H373",
      ate: 0,
      specificLimits: [{ hazardClass: "STOT RE 2", from: 0.1 }, { from: 2 }],
    });
    expect(faults.map(({ path }) => path)).toEqual([
      ["ate"],
      ["specificLimits", 1, "hazardClass"],
      ["specificLimits", 1, "from"],
    ]);
  });

  test("what is sound has no fault", () => {
    expect(
      classificationFaults({
        statement: "H360Df",
        hazardClass: "Repr. 1A",
        specificLimits: [{ hazardClass: "Repr. 2", statement: "H361f", from: 0.025 }],
        source: "clp-1272-2008",
      }),
    ).toEqual([]);
    expect(classificationFaults("EUH066")).toEqual([]);
  });
});

describe("the tables", () => {
  test("every class has a statement, every statement a class", () => {
    const carried = new Set<string>(
      HAZARD_CODES.flatMap((code) => [...HAZARD_STATEMENTS[code].classes]),
    );
    expect(HAZARD_CLASS_NAMES.filter((name) => !carried.has(name))).toEqual([]);
    expect([...carried].filter((name) => !isHazardClass(name))).toEqual([]);
  });

  test("codes run in the order of a label", () => {
    expect(inLabelOrder(["H410", "H302", "H360D", "H302"])).toEqual(["H302", "H360D", "H410"]);
    expect([...HAZARD_CODES]).toEqual(
      [...HAZARD_CODES].sort(
        (one, other) =>
          Number(one.slice(1, 4)) - Number(other.slice(1, 4)) ||
          HAZARD_CODES.indexOf(one) - HAZARD_CODES.indexOf(other),
      ),
    );
  });

  test("a word of Object is no code and no class", () => {
    expect(isHazardCode("constructor")).toBe(false);
    expect(isHazardClass("toString")).toBe(false);
  });

  test("category 1 outweighs category 2 of its family", () => {
    expect(HAZARD_CLASSES["Carc. 1B"].gravity).toBeGreaterThan(HAZARD_CLASSES["Carc. 2"].gravity);
    expect(HAZARD_CLASSES["Repr. 1A"].rank).toBeLessThan(HAZARD_CLASSES["Repr. 2"].rank);
  });
});

test("every substance that a rule names has its numbers in the table", () => {
  expect(KNOWLEDGE.substances.map(({ substance }) => substance).toSorted()).toEqual(
    SUBSTANCE_NAMES.toSorted(),
  );
  expect(substancesOf({ casNumber: "1319-46-6" }, KNOWLEDGE.substances)).toEqual([
    "lead carbonates",
    "lead compounds of very high concern",
  ]);
  expect(substancesOf({ colourIndexName: "PW 6:1" }, KNOWLEDGE.substances)).toEqual([
    "titanium dioxide",
  ]);
  // A CAS number decides where there is one.
  expect(
    substancesOf({ casNumber: "1344-37-2", colourIndexName: "PW 6" }, KNOWLEDGE.substances),
  ).toEqual(["lead chromate pigments"]);
});
