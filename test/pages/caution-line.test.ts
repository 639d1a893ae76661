import { expect, test } from "vitest";
import { cautionLine } from "../../lib/pages/caution-line.ts";
import { poisonCentreLine } from "../../lib/pages/safety-blocks.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { contentFolder } from "../support/content-folder.ts";

const PAPERS = "Hazards: from our suppliers\u2019 papers.";

test.each([
  ["no record holds one", "", false],
  ["one says that its supplier states no hazard", "hazards: []\n", true],
  ["one states a hazard", "hazards: [H302]\n", true],
])("suppliers' papers are named only where there are any: %s", (_, line, isSaid) => {
  const { content, home } = contentFolder({
    "workshop.yaml": "name: Saltreach Colourworks\n",
    "pigments/bone-black.yaml": `name: Bone black\n${line}`,
  });
  const { records } = loadRecords(content, home);
  const said = records === undefined ? "" : cautionLine({ records, words: ENGLISH });
  expect(said.startsWith(PAPERS)).toBe(isSaid);
  expect(said).toContain("The label, the safety data sheet");
});

test("a poison centre's number is not broken over two lines", () => {
  expect(poisonCentreLine("Poison centre, 0999 111 222", ENGLISH)).toBe(
    "If it is swallowed or breathed in: Poison centre, 0999\u00a0111\u00a0222.",
  );
});
