import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { dueLots } from "../../lib/planning/due.ts";
import { bookOf } from "../../lib/sheet/lots/lot-book.ts";
import { lotsSection } from "../../lib/sheet/lots/lots-section.ts";
import { lotOnSale, lotState } from "../../lib/sheet/lots/lot-on-sale.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

const READ = 'scale: factor, geometry: "45/0"';

/** A black that is let down 1:10, where it has a standard that one 1:20, and a lot of its masstone and oil, let down as said. */
function workshop(
  ratio: string,
  letDown = "lot",
  isOfStandard = false,
  pigment = "",
): { records: Records; told: string[] } {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "readings/lamp-black.csv": flatReadings({
      masstone: 0.02,
      again: 0.02,
      tint: 0.3,
      lot: 0.3,
      weak: 0.5,
    }),
    "readings/white.csv": flatReadings({ masstone: 0.9 }),
    "pigments/zinc-oxide.yaml": "name: Zinc oxide\n",
    ...(pigment === "" ? {} : { "pigments/lamp-black.yaml": `name: Lamp black\n${pigment}` }),
    "colours/zinc-white.md": `---
name: Zinc White
pigments: [{ pigment: zinc-oxide }]
masstone: { reading: white, column: masstone, ${READ} }
---
`,
    "colours/lamp-black.md": `---
name: Lamp Black
pigments: [{ pigment: lamp-black }]
masstone: { reading: lamp-black, column: masstone, ${READ} }
${isOfStandard ? "standard: lb-0" : ""}
tints:
  - { white: zinc-white, massRatio: "1:10", ratioKind: paint, reading: lamp-black, column: tint, ${READ} }
---
`,
    ...(isOfStandard
      ? {
          "lots/lb-0.yaml": `number: LB-0
colour: lamp-black
date: 2026-04-01
pigments: [{ pigment: lamp-black, massG: 500 }]
tints:
  - { white: zinc-white, massRatio: "1:20", ratioKind: paint, reading: lamp-black, column: tint, ${READ} }
`,
        }
      : {}),
    "lots/lb-1.yaml": `number: LB-1
colour: lamp-black
date: 2026-05-01
pigments: [{ pigment: lamp-black, massG: 500 }]
masstone: { reading: lamp-black, column: again, ${READ} }
tints:
  - { white: zinc-white, massRatio: "${ratio}", ratioKind: paint, reading: lamp-black, column: ${letDown}, ${READ} }
`,
  });
  const { records, diagnostics } = loadRecords(content, home, "2026-06-30");
  if (records === undefined) throw new Error(JSON.stringify(diagnostics));
  return {
    records,
    told: diagnostics.map(({ place, severity, message }) => `${place.line} ${severity} ${message}`),
  };
}

const stateIn = (records: Records): string | undefined => {
  const lot = records.lots.get("lb-1");
  return lot && lotState(lot, bookOf("lamp-black", records));
};
const onSaleIn = (records: Records): string | undefined => {
  const colour = records.colours.get("lamp-black");
  return colour && lotOnSale(colour, records);
};

describe("a lot let down at another ratio than its standard", () => {
  const { records, told } = workshop("1:20");

  test("is not judged, though its masstone agrees, and says why", () => {
    const [judged] = bookOf("lamp-black", records)?.lots ?? [];
    expect(judged?.comparison.judged.map(({ verdict }) => verdict)).toEqual(["pass"]);
    expect(judged?.comparison.verdict).toBeUndefined();
    expect(judged?.comparison.remarks.map((one) => statementText(one, ENGLISH))).toEqual([
      "The standard has no let-down of 1:20 in zinc white, so that strength is not judged.",
    ]);
    expect(stateIn(records)).toBe("unjudged");
  });

  test("stands on no card, and is due", () => {
    expect(onSaleIn(records)).toBeUndefined();
    expect(dueLots(records).map(({ due }) => due)).toEqual(["lot-unjudged"]);
  });

  test("is named by no sheet and no reply", () =>
    expect(lotsSection("lamp-black", records)).toBeUndefined());

  test("is warned of at its let-down", () =>
    expect(told).toEqual([
      "7 warning The lot LB-1 is let down 1:20 in zinc-white (paint) and its standard 1:10 in zinc-white (paint): its strength can't be judged, and the lot does not pass",
    ]));
});

test("at a ratio that the lot which is the standard was let down at, and the colour's record was not, it is judged", () => {
  const { records, told } = workshop("1:20", "lot", true);
  expect([stateIn(records), told]).toEqual(["pass", []]);
  expect(stateIn(workshop("1:20", "weak", true).records)).toBe("fail");
  expect(workshop("1:5", "lot", true).told).toEqual([
    "7 warning The lot LB-1 is let down 1:5 in zinc-white (paint) and its standard 1:10 in zinc-white (paint), 1:20 in zinc-white (paint): its strength can't be judged, and the lot does not pass",
  ]);
});

test("at the standard's ratio it passes, or fails by its strength", () => {
  const sound = workshop("1:10");
  expect([stateIn(sound.records), onSaleIn(sound.records), sound.told]).toEqual([
    "pass",
    "LB-1",
    [],
  ]);
  expect(lotsSection("lamp-black", sound.records)).toEqual({ describes: ["LB-1"] });
  expect(stateIn(workshop("1:10", "weak").records)).toBe("fail");
});

/** By the record of its pigment: a reading of such a paint has no K and S, whose ratio strength would be. */
test("of a pigment that fluoresces differences of colour are judged and strength is not, in verdict and chart", () => {
  const [plain, fluorescent] = ["", "effect: fluorescent\n"].map((pigment) => {
    const { records } = workshop("1:20", "weak", true, pigment);
    const book = bookOf("lamp-black", records);
    const [judged] = book?.lots ?? [];
    return {
      judged: judged?.comparison.judged.map(({ criterion }) => criterion),
      charts: book?.charts.map(({ of }) => of),
      corrections: judged?.corrections(),
    };
  });
  expect(plain?.judged).toEqual(["masstone", "letDown", "strength", "residual"]);
  expect(plain?.charts).toEqual(["strength"]);
  expect(fluorescent).toEqual({ judged: ["masstone", "letDown"], charts: [], corrections: [] });
});
