import { expect, test } from "vitest";
import { factAt } from "../../lib/claims/fact-at.ts";
import { followed } from "../../lib/kept/followed.ts";
import { readBy } from "../../lib/kept/reads.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";

const { value: SHEET } = followed(
  { cautions: { signalWord: "Danger" }, tints: [] } as unknown as Sheet,
  { keys: {} },
  "sheet",
);

test.each<[string, string | null, string[]]>([
  ["cautions.signalWord", "Danger", ["sheet/#", "sheet/cautions"]],
  ["cautions.toString", null, ["sheet/#", "sheet/cautions"]],
])("of a sheet a claim on %s reads that part alone", (path, expected, names) => {
  const read = readBy(() => factAt(SHEET, path));
  expect("fact" in read.value ? read.value.fact : null).toBe(expected);
  expect([...read.names].sort()).toEqual(names);
});
