import { beforeAll, describe, expect, test } from "vitest";
import type { BatchSheetView } from "../../lib/blocks/page-kinds.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { fourColourWorkshop } from "../commands/demonstration-part.ts";
import { soundRecords } from "../support/sound-records.ts";

const LOT = `number: "LB-2611"
colour: lamp-black
date: 2026-05-01
planned: true
pigments: [{ pigment: lamp-black, massG: 400 }]
oil: { vehicle: linseed-cold-pressed, massG: 250 }
additions: [{ vehicle: cobalt-zirconium-drier, massG: 6.5 }]
dispersion: mulled
`;

function sheetOfLot(texts: Readonly<Record<string, string>>): BatchSheetView["sheet"] {
  const records = soundRecords({ ...texts, "lots/lb-2611.yaml": LOT });
  const { pages } = siteOf(records, "2026-05-18").workshop({
    isPrinted: false,
    printedCards: undefined,
  });
  const view = pages.find(({ path }) => path === "lots/lb-2611/batch/index.html")?.view;
  return view?.kind === "batch-sheet" ? view.sheet : undefined;
}

describe("the batch sheet of a planned lot", () => {
  let sheet: BatchSheetView["sheet"];
  beforeAll(() => {
    sheet = sheetOfLot(fourColourWorkshop());
  });

  test("says when the pigment's rub-out takes all the oil, as of a new lot of it", () => {
    const takesAll: unknown = expect.stringMatching(
      /^Hold no oil back: the rub-out figure \(120\sg.100\sg\)/,
    );
    expect(sheet?.remarks).not.toContainEqual(takesAll);
    const texts = fourColourWorkshop();
    const pigment = "pigments/lamp-black.yaml";
    const thirstier = sheetOfLot({
      ...texts,
      [pigment]: (texts[pigment] ?? "").replace("{ value: 72,", "{ value: 120,"),
    });
    expect(thirstier?.remarks).toContainEqual(takesAll);
  });

  test("bears its number and day, and leaves the rest to be written in", () => {
    expect(sheet?.fields.map(({ name, value }) => [name, value]).slice(0, 4)).toEqual([
      ["Lot", "LB-2611"],
      ["Made by", undefined],
      ["Date", "1 May 2026"],
      ["Passes", undefined],
    ]);
  });

  test("has the weights of the record, its oil in two parts, and no other amount to ask for", () => {
    const planned = sheet?.rows.map((row) => Number(row.planned)) ?? [];
    const [pigment = NaN, first = NaN, held = NaN, drier = NaN, all = NaN] = planned;
    expect([pigment, drier, all]).toEqual([400, 6.5, 656.5]);
    expect(first + held).toBeCloseTo(250, 6);
    expect(held).toBeGreaterThan(0);
    expect(held).toBeLessThan(first);
    expect(sheet?.reckoner).toBeUndefined();
  });
});
