import { describe, expect, test } from "vitest";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { soundSheet } from "../support/sound-records.ts";

/**
 * PBr 7 is sienna and umber alike. Hazard and drying go by the same two keys of the
 * record: common practice, no source, has umbers at about 5 to 20 % of manganese
 * dioxide and siennas at about 1 %. STOT RE 2 from 10 %: CLP, Annex I, Table 3.9.4.
 */
function earth(lines: string): Sheet {
  return soundSheet({
    "workshop.yaml": "name: Test Workshop\nvehicle: linseed\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
    "pigments/earth.yaml": `name: Brown earth\ncolourIndexName: PBr 7\nhazards: []\n${lines}`,
    "colours/earth.md":
      "---\nname: Brown Earth\npigments: [{ pigment: earth }]\noilIndexGPer100g: 50\n---\n",
  });
}

const dryPigment = ({ cautions }: Sheet): readonly string[] =>
  cautions.dryPigment.flatMap(({ hazardStatements }) => hazardStatements);
const metals = ({ cautions }: Sheet): readonly string[] =>
  cautions.notClassified.flatMap(({ values }) => values.metals);
const slowestDay = ({ drying: { touchDryDays } }: Sheet): number =>
  touchDryDays.standing === "not stated" ? NaN : Math.max(...[touchDryDays.value].flat());

const SIENNA = earth("earth: sienna\n");
const UMBER = earth("earth: umber\n");

describe("a sienna gets neither an umber's hazard nor its drying", () => {
  test.each([
    ["told by its kind", SIENNA],
    ["told by its manganese", earth("manganeseDioxideFraction: 0.01\n")],
    [
      "its manganese decides, whatever it is called",
      earth("earth: umber\nmanganeseDioxideFraction: 0.008\n"),
    ],
  ])("%s", (_told, sheet) => {
    expect(dryPigment(sheet)).toEqual([]);
    expect(metals(sheet)).toEqual([]);
    expect(slowestDay(sheet)).toBeGreaterThan(slowestDay(UMBER));
  });
});

describe("an umber gets both", () => {
  test.each([
    ["told by its kind", UMBER],
    ["told by its manganese", earth("manganeseDioxideFraction: 0.12\n")],
    [
      "its manganese decides, whatever it is called",
      earth("earth: sienna\nmanganeseDioxideFraction: 0.12\n"),
    ],
  ])("%s", (_told, sheet) => {
    expect(dryPigment(sheet)).toEqual(["H373"]);
    expect(metals(sheet)).toEqual(["manganese"]);
    expect(slowestDay(sheet)).toBeLessThan(slowestDay(SIENNA));
  });

  test("below the limit of STOT RE 2 its dust carries no statement, and its metal is named", () => {
    const sheet = earth("manganeseDioxideFraction: 0.099\n");
    expect(dryPigment(sheet)).toEqual([]);
    expect(metals(sheet)).toEqual(["manganese"]);
  });
});

describe("untold, both are covered", () => {
  const either = earth("");
  test("by the hazard of the worse, whose share says how far it is known", () => {
    expect(dryPigment(either)).toEqual(["H373"]);
    const [trace] = either.cautions.dryPigment.flatMap(({ traces }) =>
      traces.filter(({ statement }) => statement === "H373"),
    );
    expect(trace?.values).toMatchObject({ massFraction: [0.002, 0.2] });
  });
  test("by days from the faster to the slower", () => {
    const days = either.drying.touchDryDays;
    if (days.standing === "not stated") throw new Error("Unexpected paint without days");
    const [fastest = NaN] = [days.value].flat();
    expect(fastest).toBeLessThan(slowestDay(UMBER));
    expect(slowestDay(either)).toBeGreaterThanOrEqual(slowestDay(SIENNA));
  });
});
