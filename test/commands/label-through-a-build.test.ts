import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { contentFolder } from "../support/content-folder.ts";
import { commandHere } from "../support/command-here.ts";
import { readPdf } from "../support/read-pdf.ts";

/**
 * Two made-up paints, one with a stated label that combines two statements, one whose
 * label is worked out: what a record gives has to arrive on everything that is built.
 * The text of H302+H332 is that of CLP, Annex III (clp-statements-2025, published).
 */
const COMBINED = "Harmful if swallowed or if inhaled.";
const STATED_UFI = "A1C2-D3E4-F5G6-H7J8";
const DERIVED_UFI = "K1M2-N3P4-Q5R6-S7T8";

const WORKSHOP = {
  "workshop.yaml": `name: Test Workshop
siteAddress: https://test-workshop.example/
markets: [EU]
languages: [en, de]
vehicle: linseed
currency: EUR
cards: [{ name: card, widthMm: 105, heightMm: 74, languages: [en, de] }]
`,
  "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
  "pigments/stated.yaml": "name: Stated red\ncolourIndexName: PR 254\nhazards: []\n",
  "pigments/derived.yaml":
    "name: Derived red\ncolourIndexName: PR 112\nhazards: [{ statement: H302, ate: 400 }]\n",
  "colours/stated.md": `---
name: Stated Red
pigments: [{ pigment: stated }]
masstone: { munsell: 7.5R 4/12, date: 2026-07-02 }
sizes: [{ ml: 40, price: 12 }]
oilIndexGPer100g: 40
label:
  frame: EU CLP
  signalWord: Warning
  pictograms: [GHS07]
  hazardStatements: [H302+H332]
  precautionaryStatements: [P102, P264]
  date: 2026-07-02
  ufi: ${STATED_UFI}
---
Notes.
`,
  "colours/derived.md": `---
name: Derived Red
pigments: [{ pigment: derived }]
masstone: { munsell: 5R 4/10, date: 2026-07-02 }
sizes: [{ ml: 40, price: 12 }]
oilIndexGPer100g: 40
ufi: ${DERIVED_UFI}
---
Notes.
`,
  "answers/is-it-harmful.md": `---
question: Is it harmful?
summary: See its label.
date: 2026-07-02
colours: [stated, derived]
reply: { colours: [stated, derived] }
---
See its label.
`,
} as const;

let out = "";
const text = (path: string): string => readFileSync(join(out, path), "utf8");
/** What a reader of a page reads, in one line. */
const read = (path: string): string =>
  text(path)
    .replace(/<(script|style)\b[\s\S]*?<\/\1>/g, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
const printed = async (path: string): Promise<string> => {
  const { pages } = await readPdf(readFileSync(join(out, path)));
  return pages
    .flatMap(({ texts }) => texts.map((one) => one.text))
    .join(" ")
    .replace(/\s+/g, " ");
};

beforeAll(async () => {
  const { content, home } = contentFolder(WORKSHOP);
  out = join(home, "out");
  const { code, complaints } = await commandHere(
    ["build", "--content", content, "--output", out, "--workshop", `${out}-workshop`],
    { cwd: home },
  );
  expect(complaints).toBe(complaints.replace(/^.* error .*$/gm, ""));
  expect(code).toBe(0);
});

describe("H302+H332, stated", () => {
  test("stands on the sheet, in the label's text and in its other language", () => {
    expect(read("colours/stated/index.html")).toContain(COMBINED);
    const label = read("../out-workshop/colours/stated/index.html");
    expect(label).toContain(`H302+H332 ${COMBINED}`);
    expect(label).toContain("H302+H332 Gesundheitsschädlich bei Verschlucken oder Einatmen.");
  });
  test("in the data", () => {
    const { cautions } = JSON.parse(text("colours/stated/sheet.json")) as {
      readonly cautions: {
        readonly hazardStatements: readonly string[];
        readonly texts: Readonly<Record<string, Readonly<Record<string, string>>>>;
      };
    };
    expect(cautions.hazardStatements).toEqual(["H302+H332"]);
    expect(cautions.texts["H302+H332"]).toEqual({
      en: COMBINED,
      de: "Gesundheitsschädlich bei Verschlucken oder Einatmen.",
    });
  });
  test("on the sheet on paper", async () =>
    expect(await printed("colours/stated/sheet.pdf")).toContain(`H302+H332 ${COMBINED}`));
  test("on the shelf card, in both its languages", async () => {
    const cards = await printed("cards/cards.pdf");
    expect(cards).toContain(COMBINED);
    expect(cards).toContain("Gesundheitsschädlich bei Verschlucken oder Einatmen.");
  });
  test("in a reply", () =>
    expect(read("../out-workshop/answers/is-it-harmful/index.html")).toContain(
      `H302+H332 ${COMBINED}`,
    ));
});

describe.each([
  ["stated", STATED_UFI],
  ["derived", DERIVED_UFI],
])("the unique formula identifier of the %s label", (slug, ufi) => {
  test("stands on the sheet, in the label's text, in the data and in a reply", () => {
    expect(read(`colours/${slug}/index.html`)).toContain(ufi);
    expect(read(`../out-workshop/colours/${slug}/index.html`)).toContain(`UFI: ${ufi}`);
    expect(text(`colours/${slug}/sheet.json`)).toContain(`"ufi": "${ufi}"`);
    expect(read("../out-workshop/answers/is-it-harmful/index.html")).toContain(`UFI ${ufi}`);
  });
  test("on paper and on the shelf card", async () => {
    expect(await printed(`colours/${slug}/sheet.pdf`)).toContain(ufi);
    expect(await printed("cards/cards.pdf")).toContain(`UFI: ${ufi}`);
  });
  test("and no line asks for it", () =>
    expect(text(`colours/${slug}/sheet.json`)).not.toContain("formula-identifier-wanted"));
});
