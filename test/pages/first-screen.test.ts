import { expect, test } from "vitest";
import { SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";

// Plain logic and no source: what a page says at first sight of a paint of which little is known.

/** Pages of one colour that is made of a pigment, by their path. */
function pagesOf(pigment: string, more = ""): ReadonlyMap<string, string> {
  const files: RecordTexts = {
    "workshop.yaml": SMALLEST_WORKSHOP["workshop.yaml"],
    "vehicles/linseed-oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
    "pigments/white.yaml": "name: White\ncolourIndexName: PW 6\nhazards: []\n",
    "pigments/one.yaml": pigment,
    "colours/one.md": `---\nname: One\nvehicle: linseed-oil\npigments: [{ pigment: one }]\n${more}---\n`,
  };
  const { pages } = siteOf(soundRecords(files), undefined).site;
  return new Map(pages.map(({ path, view }) => [path, JSON.stringify(view)]));
}

test.each([
  ["PG 21", "arsenic"],
  ["PR 106", "mercury"],
])("what %s holds is said although its hazards are not on record", (colourIndexName, metal) => {
  const page = pagesOf(`name: One\ncolourIndexName: ${colourIndexName}\n`).get(
    "colours/one/index.html",
  );
  expect(page).toContain(
    `"unknownHazard":"It holds ${metal}. Not classified yet: treat as hazardous."`,
  );
});

test("of lead the label's own sentence is enough", () => {
  const page = pagesOf("name: One\ncolourIndexName: PR 105\n").get("colours/one/index.html");
  expect(page).toContain('"unknownHazard":"Not classified yet: treat as hazardous."');
  expect(page).toMatch(/"hazard":\{"pictograms":\[\],"statements":\[\{"code":"EUH201",[^[\]]*\}\]/);
});

test("a tint that stands in for a colour which was not read is called one", () => {
  const LAB = "illuminant: D65, observer: 10, geometry: 45/0";
  const tint = `{ white: white, massRatio: "1:9", ratioKind: paint, lab: [50, 0, -4], ${LAB} }`;
  const named = (more: string): string =>
    pagesOf("name: One\ncolourIndexName: PBk 9\nhazards: []\n", more).get("index.html") ?? "";
  expect(named(`tints: [${tint}]\n`)).toContain('"note":"shown mixed with white"');
  expect(named(`masstone: { lab: [8, 0, 0], ${LAB} }\ntints: [${tint}]\n`)).not.toContain(
    "shown mixed with white",
  );
});

test("what acid sets free is thought of where no label warns", () => {
  const safety = (colourIndexName: string): string | undefined =>
    /"key":"safety".*?"detail":"([^"]*)"/.exec(
      pagesOf(`name: One\ncolourIndexName: ${colourIndexName}\nhazards: []\n`).get(
        "colours/one/index.html",
      ) ?? "",
    )?.[1];
  expect(safety("PB 29")).toBe(
    "keep the dry pigment out of the air and from acid; oily rags can catch fire",
  );
  expect(safety("PB 28")).not.toContain("acid");
});
