import { beforeAll, describe, expect, test } from "vitest";
import type { SheetView } from "../../lib/blocks/page-kinds.ts";
import type { SheetTexts } from "../../lib/present/sheet-texts.ts";
import { forbiddenWords } from "../support/known.ts";
import { given } from "../../lib/quantities/given.ts";
import type { Language } from "../../lib/quantities/languages.ts";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { sheetPdf } from "../../lib/print/sheet-pdf.ts";
import {
  dictionaries,
  labFills,
  pageText,
  readPdf,
  solid,
  type FoundPdf,
} from "../support/read-pdf.ts";
import { pdfStructure } from "../support/pdf-structure.ts";
import { blocksIn, KINDS, lacking, PRINTS, printOf } from "./demonstration-prints.ts";

type Plain = Record<string, unknown>;
type Lab = { readonly L: number; readonly a: number; readonly b: number };

/** Figures of a sheet that its paper prints as sheet.json words them. */
const PRINTED = [
  "notations.masstone.munsell.text",
  "optics.tintingStrength",
  "optics.opacityClass",
  "optics.contrastRatio",
  "optics.hidingFilmUm",
  "drying.class",
  "drying.touchDryDays",
  "oil.oilIndexGPer100g",
  "oil.oilAbsorptionGPer100g",
  "oil.cpvc",
  "oil.pvc",
  "oil.finish",
  "oil.gloss60",
  "oil.paintDensityGPerCm3",
];

function wordedOf(slug: string): SheetTexts {
  const found = PRINTS.context.sheets.find(({ sheet }) => sheet.slug === slug);
  if (found === undefined) throw new Error(`Unexpected range without ${slug}`);
  return found;
}

/** Of a poison a caution says why, on paper too. Source: common practice, no source. */
test.each([
  ["prussian-blue", "hydrogen cyanide, a deadly gas"],
  ["lead-white", "It holds lead."],
  ["yellow-ochre", "respirable quartz, which scars the lungs"],
])("the paper of %s says what poison its cautions are for", async (slug, said) => {
  const { pages } = await readPdf(sheetPdf(printOf(slug), PAPER_SIZES.A4));
  expect(lacking([said], pages.map(pageText).join(" "))).toEqual([]);
});

test("a label's languages that have a sheet of their own stand on that alone", async () => {
  const sheet = printOf("zinc-white");
  const { context } = sheet;
  const pageLanguages: Language[] = ["en", "de"];
  const workshop = { ...context.records.workshop, pageLanguages };
  const { pages } = await readPdf(
    sheetPdf(
      { ...sheet, context: { ...context, records: { ...context.records, workshop } } },
      PAPER_SIZES.A4,
    ),
  );
  const text = pages.map(pageText).join(" ");
  // @source clp-1272-2008: H410 in French and in German.
  expect(lacking(["Très toxique pour les organismes aquatiques"], text)).toEqual([]);
  expect(text).not.toContain("Sehr giftig");
});

describe.each(KINDS)("the printed sheet of %s", (slug) => {
  const sheet = printOf(slug);
  const { sheet: view, bench } = sheet;
  const worded = wordedOf(slug);
  const bytes = sheetPdf(sheet, PAPER_SIZES.A4);
  let found: FoundPdf;
  let text: string;
  beforeAll(async () => {
    found = await readPdf(bytes);
    text = found.pages.map(pageText).join(" ");
  });

  test("takes one or two pages of A4, three where cautions ask for them, titled, tagged, in its language", () => {
    expect(found).toMatchObject({ title: view.title, language: "en", isTagged: true });
    expect(found.pages.length).toBeGreaterThanOrEqual(1);
    expect(found.pages.length).toBeLessThanOrEqual(3);
    for (const { widthPt, heightPt } of found.pages)
      expect([widthPt, heightPt].map((pt) => Math.round((pt / 72) * 25.4))).toEqual([210, 297]);
  });

  test("says what its page says: name, what it is made of, the sentence, facts", () => {
    const facts = view.facts.flatMap(({ name, word, detail = "" }) => [name, word, detail]);
    expect(
      lacking(
        [
          view.name,
          view.madeOf.map((run) => run.text).join(""),
          view.sentence,
          bench.revision,
          ...view.offer.flatMap(({ text: said, size = said, price = "" }) => [size, price]),
          ...facts,
        ],
        text,
      ),
    ).toEqual([]);
  });

  test("prints figures as sheet.json words them", () => {
    const texts = worded.plain.evidence
      .filter(({ figure }) => PRINTED.includes(String(figure)))
      .map((entry) => String(entry["text"]));
    expect(texts.length).toBeGreaterThan(0);
    expect(lacking(texts, text)).toEqual([]);
  });

  test("prints every statement of its label, in each of the workshop's languages, and every caution", () => {
    const [label] = blocksIn(view.sections, "label");
    if (label === undefined) throw new Error("Unexpected sheet without its label");
    const statements = [
      ...(view.hazard?.statements ?? []),
      ...(label.label.hazard?.statements ?? []),
      ...label.label.precautionary,
      ...(label.label.languages?.list ?? []).flatMap(({ statements: own }) => own),
    ];
    expect(
      lacking(
        statements.map(({ code = "", text: said }) => code + said),
        text,
      ),
    ).toEqual([]);
    if (slug === "lead-white")
      expect(label.label.languages?.list.map(({ language }) => language)).toEqual([
        "fr",
        "de",
        "es",
      ]);
    const cautions = [...view.sections, ...bench.sections].flatMap((section) =>
      blocksIn([section], "cautions").flatMap(({ operations }) =>
        operations.flatMap((one) =>
          one.cautions.flatMap(({ sentences, reason, isGrave }) =>
            given([...sentences, isGrave === true && reason]),
          ),
        ),
      ),
    );
    expect(lacking(cautions, text)).toEqual([]);
  });

  test("prints all that a painter reads: each statement, line and list of its page", () => {
    const said = [
      ...blocksIn(view.sections, "statement").flatMap(({ role, text: own }) =>
        role === "way" ? [] : [own],
      ),
      ...blocksIn(view.sections, "lines").flatMap(({ lines }) =>
        lines.flatMap(({ name, sentences }) => [name, ...sentences.map((one) => one.text)]),
      ),
      ...blocksIn(view.sections, "list").flatMap(({ list }) => [
        list.heading,
        ...list.items.map((item) => item.text),
      ]),
      ...blocksIn(view.sections, "ladder").flatMap(({ name, sentence, steps, remarks }) => [
        name,
        sentence,
        ...remarks,
        ...steps.map(({ label }) => label),
      ]),
    ];
    expect(said.length).toBeGreaterThan(5);
    // A long text may go on over to another page, with that page's foot and head between.
    const ends = said.flatMap((one) =>
      one.length < 80 ? [one] : [one.slice(0, 40), one.slice(-40)],
    );
    expect(lacking(ends, text)).toEqual([]);
  });

  test("defers to label and data sheet on every page, and numbers it", () => {
    found.pages.forEach((page, i) => {
      expect(
        lacking(
          [
            "Hazards: from our suppliers\u2019 papers. The label, the safety data sheet, your local rules and licensed practice come first.",
            `${i + 1} of ${found.pages.length}`,
          ],
          pageText(page),
        ),
      ).toEqual([]);
    });
  });

  test("fills its swatches in the Lab that sheet.json states", () => {
    const values = worded.plain.values as {
      notations: { masstone?: { lab: Record<string, Lab> } };
      tints: { atL: Record<string, { lab?: Record<string, Lab> }> }[];
    };
    const fills = found.pages.flatMap(labFills);
    const stated = [
      values.notations.masstone?.lab["D50/2"],
      ...values.tints.flatMap(({ atL }) => Object.values(atL).map(({ lab }) => lab?.["D50/2"])),
    ].filter((lab) => lab !== undefined);
    for (const lab of stated)
      expect(
        fills.some(
          (fill) =>
            Math.max(...(["L", "a", "b"] as const).map((key) => Math.abs(fill[key] - lab[key]))) <=
            1e-4,
        ),
        JSON.stringify(lab),
      ).toBe(true);
    // ASTM D1535 : Y of N 6 is 29.301 %; CIE 15 : L* = 116 (Y/100)^(1/3) - 16.
    if (stated.length > 0)
      expect(
        fills.some(
          ({ L, a, b }) =>
            Math.abs(L - (116 * 0.29301 ** (1 / 3) - 16)) < 0.01 && a === 0 && b === 0,
        ),
      ).toBe(true);
    const steps = (worded.plain.values["tints"] as { steps: Plain[] }[]).reduce(
      (sum, tint) => sum + tint.steps.length,
      0,
    );
    expect(fills.length).toBeGreaterThanOrEqual(stated.length + steps);
  });

  test("embeds its fonts", () => {
    const descriptors = dictionaries(bytes, "FontDescriptor");
    expect(descriptors.length).toBeGreaterThanOrEqual(3);
    for (const descriptor of descriptors) expect(descriptor).toMatch(/\/FontFile2 \d+ 0 R/);
  });

  test("is read in order: name, then the sections of its page, figures with their words, tables with heads", async () => {
    const { elements, links } = await pdfStructure(bytes);
    const headings = elements.filter(({ role }) => /^H\d$/.test(role));
    expect(headings[0]).toMatchObject({ role: "H1", text: view.name, page: 0 });
    expect(headings.filter(({ role }) => role === "H1")).toHaveLength(1);
    const h2 = headings.filter(({ role }) => role === "H2").map((one) => one.text);
    expect(h2).toEqual(
      [
        ...view.sections.filter(({ id }) => !["questions", "bench"].includes(id)),
        ...bench.sections.filter(({ heading }) => h2.includes(heading)),
      ]
        .map(({ heading }) => heading)
        .filter((heading) => h2.includes(heading)),
    );
    for (const id of ["painting", "permanence", "handling"])
      expect(h2).toContain(view.sections.find((section) => section.id === id)?.heading);
    for (const figure of elements.filter(({ role }) => role === "Figure"))
      expect(figure.alt ?? "").not.toBe("");
    for (const role of ["P", "L", "LI", "LBody", "Table", "TR", "TH", "TD"])
      expect(
        elements.some((one) => one.role === role),
        role,
      ).toBe(true);
    expect(links).toContain(view.canonical);
  });

  test("says nothing that a sheet may not say on its own authority", () => {
    for (const page of found.pages)
      expect(
        forbiddenWords(pageText(page), "en").filter(
          ({ word }) =>
            !solid(JSON.stringify([view.sections, bench.sections])).includes(solid(word)),
        ),
      ).toEqual([]);
  });

  test("is the same twice, whatever was drawn between", () => {
    sheetPdf(printOf("viridian"), PAPER_SIZES.A4);
    expect(Buffer.compare(sheetPdf(sheet, PAPER_SIZES.A4), bytes)).toBe(0);
  });
});

/** The foot of a page is lower [pt]. */
const FOOT_PT = 46;

describe("more cautions than two pages hold", () => {
  const sheet = printOf("lead-white");
  const many = Array.from({ length: 90 }, (_, i) => ({
    code: "P999",
    text: `Caution number ${i} in full, and long enough to take two lines of a column, which is what the longest of them do`,
  }));
  const view: SheetView = {
    ...sheet.sheet,
    name: "Sixty Letters and Two More of a Name That Nobody Would Choose",
    sections: sheet.sheet.sections.map((section) => ({
      ...section,
      blocks: section.blocks.map((block) =>
        block.kind === "label"
          ? { ...block, label: { ...block.label, precautionary: many } }
          : block,
      ),
    })),
  };

  test("go on to further pages: none is left out, none shrinks under 7 point", async () => {
    const { pages } = await readPdf(sheetPdf({ ...sheet, sheet: view }, PAPER_SIZES.A4));
    // One that goes on over has the foot of a page between, and the heading that is said again.
    const heading = view.sections.find(({ id }) => id === "handling")?.heading;
    const text = pages
      .map(({ texts, ...page }) =>
        pageText({
          ...page,
          texts: texts.filter((one) => one.y > FOOT_PT && one.text.trim() !== heading),
        }),
      )
      .join(" ");
    expect(pages.length).toBeGreaterThan(2);
    expect(lacking([view.name, ...many.map(({ text: said }) => said)], text)).toEqual([]);
    expect(text).not.toContain("\u2026");
    const cautions = pages.flatMap(({ texts }) =>
      texts.filter((one) => one.text.includes("Caution")),
    );
    expect(Math.min(...cautions.map(({ sizePt }) => sizePt))).toBeGreaterThanOrEqual(6.999);
  });

  test("say again on each further page which section goes on", async () => {
    const { pages } = await readPdf(sheetPdf({ ...sheet, sheet: view }, PAPER_SIZES.A4));
    const heading = view.sections.find(({ id }) => id === "handling")?.heading ?? "";
    const [, second] = pages.filter((page) => pageText(page).includes("Caution number"));
    const highest = second?.texts.toSorted((one, other) => other.y - one.y)[0];
    expect(highest?.text).toBe(heading);
  });
});
