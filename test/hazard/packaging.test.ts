import { describe, expect, test } from "vitest";
import type { HazardClass } from "../../lib/hazard/classify/hazard-class.ts";
import { packagingStatements } from "../../lib/hazard/label/packaging.ts";

const FASTENING = "child-resistant-fastening";
const TACTILE = "tactile-warning";

describe("packages sold to the public (CLP, Annex II, part 3, as the Belgian public service Health tells it)", () => {
  test.each<[HazardClass, readonly string[]]>([
    ["Acute Tox. 1", [FASTENING, TACTILE]],
    ["Acute Tox. 3", [FASTENING, TACTILE]],
    ["Acute Tox. 4", [TACTILE]],
    ["Asp. Tox. 1", [FASTENING, TACTILE]],
    ["Skin Corr. 1B", [FASTENING, TACTILE]],
    ["STOT RE 1", [FASTENING, TACTILE]],
    ["STOT SE 2", [TACTILE]],
    ["STOT RE 2", [TACTILE]],
    ["STOT SE 3", []],
    ["Resp. Sens. 1", [TACTILE]],
    ["Skin Sens. 1", []],
    ["Muta. 2", [TACTILE]],
    ["Carc. 2", [TACTILE]],
    ["Repr. 2", [TACTILE]],
    // Of category 1 the list names none: the public is not sold it.
    ["Repr. 1A", []],
    ["Carc. 1B", []],
    ["Flam. Liq. 1", [TACTILE]],
    ["Flam. Liq. 2", [TACTILE]],
    ["Flam. Liq. 3", []],
    ["Flam. Sol. 2", [TACTILE]],
    ["Aquatic Chronic 1", []],
  ])("%s: %j", (name, wanted) => {
    expect(packagingStatements([{ hazardClass: name }]).map(({ rule }) => rule)).toEqual(wanted);
  });

  test("the classes are named, each once, an acute toxicity with its route", () => {
    expect(
      packagingStatements([
        { hazardClass: "STOT RE 2" },
        { hazardClass: "Acute Tox. 4", route: "oral" },
        { hazardClass: "STOT RE 2" },
      ]),
    ).toEqual([
      expect.objectContaining({
        rule: TACTILE,
        values: { classes: ["STOT RE 2", "Acute Tox. 4 oral"] },
      }),
    ]);
  });
});
