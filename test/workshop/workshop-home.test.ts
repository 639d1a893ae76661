import { expect, test } from "vitest";
import type { Diagnostic } from "../../lib/diagnostics/diagnostic.ts";
import type { PageContext } from "../../lib/pages/page-context.ts";
import { workshopHome } from "../../lib/workshop/workshop-home.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

test("a batch's cost is of so much pigment, and says what of it has no price", () => {
  const records = soundRecords({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": "name: Test Workshop\ncurrency: GBP\nvehicle: linseed-oil\n",
    "vehicles/linseed-oil.yaml":
      "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.93\npricePerKg: 9\nhazards: []\n",
    "vehicles/wax-paste.yaml": "name: Wax paste\nkind: medium\ndensityGPerCm3: 0.9\nhazards: []\n",
    "pigments/lamp-black.yaml":
      "name: Lamp black\ndensityGPerCm3: 1.8\npricePerKg: 20\nhazards: []\n",
    "colours/lamp-black.md":
      "---\nname: Lamp Black\npigments: [{ pigment: lamp-black }]\noilIndexGPer100g: 90\n---\n",
    "colours/waxed-black.md":
      "---\nname: Waxed Black\npigments: [{ pigment: lamp-black }]\noilIndexGPer100g: 90\nadditions: [{ vehicle: wax-paste, percentOfOil: 5 }]\n---\n",
  });
  const { context } = workedSite(records, undefined);
  const table = tableOf("colours", context);
  expect(table?.columns[1]?.head).toBe("Batch of 500\u00a0g of pigment, GBP");
  expect(table?.rows.map(([name, cost]) => [name?.text, cost?.note])).toEqual([
    ["Lamp Black", undefined],
    ["Waxed Black", "without Wax paste, unpriced"],
  ]);
  // derived: 0.5 kg of pigment at 20 and 0.45 kg of oil at 9.
  expect(Number(table?.rows[0]?.[1]?.text)).toBeCloseTo(14, 0);
});

test("what presses stands first, and what is to be reviewed at leisure does not", () => {
  const records = soundRecords({
    ...SMALLEST_WORKSHOP,
    "trials/window.yaml":
      "kind: drying\ncolour: lamp-black\nstarted: 2026-01-05\nfilmThicknessUm: 75\ntemperatureC: 20\nhumidityPercent: 55\ntouched:\n  - { date: 2026-01-06, found: wet }\n",
  });
  const { context } = workedSite(records, undefined);
  const due = tableOf("due", context);
  expect(due?.rows.map(([, record]) => record?.text)).toContain("trials/window");
  expect(due?.rows.some(([what]) => what?.text.includes(REVIEW.message))).toBe(false);
});

const REVIEW = {
  rule: "hazard/label-text",
  severity: "note",
  message: "The English text of P501 is to be reviewed",
  place: { file: "workshop.yaml", line: 1, column: 1, path: "" },
} as const satisfies Diagnostic;

function tableOf(id: string, context: PageContext) {
  const { sections } = workshopHome(
    context,
    { path: "index.html", root: "" },
    { found: [], due: { labelNotes: [REVIEW], reprints: undefined } },
  );
  return sections
    .find((section) => section.id === id)
    ?.blocks.flatMap((block) => (block.kind === "table" ? [block.table] : []))[0];
}
