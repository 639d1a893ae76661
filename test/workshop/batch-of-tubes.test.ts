import { expect, test } from "vitest";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { soundRecords } from "../support/sound-records.ts";

const paint = (name: string, oilIndex: number): string =>
  `---\nname: ${name}\npigments: [{ pigment: ${name.toLowerCase()} }]\noilIndexGPer100g: ${oilIndex}\n---\n`;

/** What stands beside the weights of a violet, on the batch sheet. */
function remarksOf(pigments: string): readonly string[] {
  const records = soundRecords({
    "workshop.yaml": "name: Test\nvehicle: walnut\n",
    "vehicles/walnut.yaml": "name: Walnut oil\nkind: oil\noil: walnut\ndensityGPerCm3: 0.925\n",
    "pigments/rose.yaml": "name: Rose\ndensityGPerCm3: 1.5\n",
    "pigments/blue.yaml": "name: Blue\ndensityGPerCm3: 2.4\n",
    "colours/rose.md": paint("Rose", 60),
    "colours/blue.md": paint("Blue", 40),
    "colours/violet.md": `---\nname: Violet\npigments: ${pigments}\noilIndexGPer100g: 48\n---\n`,
  });
  const { pages } = siteOf(records, "2026-05-18").workshop({
    isPrinted: false,
    printedCards: undefined,
  });
  const view = pages.find(({ path }) => path === "batches/violet/index.html")?.view;
  if (view?.kind !== "batch-sheet" || view.sheet === undefined) throw new Error("No batch sheet");
  return view.sheet.remarks.map((remark) => remark.replaceAll("\u00a0", " "));
}

// 1 part and 3 parts are a quarter and three quarters: derived by hand.
test("a mixture that is weighed from tubes says what to squeeze out of each", () => {
  expect(
    remarksOf("[{ pigment: rose, paintParts: 1 }, { pigment: blue, paintParts: 3 }]"),
  ).toContain(
    "Its record weighs it from tubes: for 100 g, Rose 25.0 g and Blue 75.0 g, with nothing to grind. The weights here are of the same paint made from dry pigment.",
  );
  for (const remark of remarksOf("[{ pigment: rose, parts: 1 }, { pigment: blue, parts: 3 }]"))
    expect(remark).not.toContain("from tubes");
});
