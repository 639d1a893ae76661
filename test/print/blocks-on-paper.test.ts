import { describe, expect, test } from "vitest";
import type { Block } from "../../lib/blocks/block.ts";
import type { BenchView, SheetView } from "../../lib/blocks/page-kinds.ts";
import type { PageContext } from "../../lib/pages/page-context.ts";
import { asMarkup } from "../../lib/present/views.ts";
import { CARD_FACTS, type CardContent } from "../../lib/print/card-content.ts";
import { cardLayout } from "../../lib/print/card-layout.ts";
import { cardSizes, PAPER_SIZES, type CardSize } from "../../lib/print/card-size.ts";
import { cardsPdf } from "../../lib/print/cards-pdf.ts";
import { rangePdf } from "../../lib/print/range-pdf.ts";
import { laidOutSheet, type SheetToPrint } from "../../lib/print/sheet-paper.ts";
import { sheetLeaves, sheetPdf } from "../../lib/print/sheet-pdf.ts";
import { cardsKey, LEFT_TO_THE_SITE, rangeKey, sheetKey } from "../../lib/site/paper-keys.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { pageText, readPdf, solid } from "../support/read-pdf.ts";
import { pdfStructure } from "../support/pdf-structure.ts";
import { blockPages, everyBlock } from "../templates/block-fixtures.ts";
import { BLOCK_PARTS } from "../templates/fixtures.ts";

const WORKSHOP = { name: "Saltreach Colourworks", paper: "A4", demonstration: true } as const;
/** Six pixels by four of one grey. */
const GREY_JPEG = Buffer.from(
  "/9j/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAEAAYDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAb/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFAEBAAAAAAAAAAAAAAAAAAAAAP/EABQRAQAAAAAAAAAAAAAAAAAAAAD/2gAMAwEAAhEDEQA/AJgAH//Z",
  "base64",
);

const CONTEXT = {
  words: ENGLISH,
  records: {
    workshop: WORKSHOP,
    photographs: [{ pictures: { hash: "00", paper: { bytes: () => GREY_JPEG } } }],
  },
  date: "2026-05-18",
} as unknown as PageContext;

function viewOf<K extends "sheet" | "bench">(name: string, kind: K) {
  const found = blockPages(BLOCK_PARTS).find((page) => page.name === name)?.view;
  if (found?.kind !== kind) throw new Error(`Unexpected fixtures without ${name}`);
  return found as unknown as K extends "sheet" ? SheetView : BenchView;
}

const SHEET: SheetToPrint = {
  slug: "bone-black",
  key: () => "of this test",
  sheet: viewOf("sheet-hazardous", "sheet"),
  bench: viewOf("bench", "bench"),
  caution: ENGLISH.pages.cautionLine,
  context: CONTEXT,
};

async function textOf(bytes: Uint8Array): Promise<string> {
  return solid((await readPdf(bytes)).pages.map(pageText).join(" "));
}

/** A sheet with a section that nobody has heard of. */
function withSection(blocks: readonly Block[]): SheetToPrint {
  const section = { kind: "section", id: "new", heading: "A new section", blocks } as const;
  return { ...SHEET, sheet: { ...SHEET.sheet, sections: [section] } };
}

describe("blocks on paper", () => {
  test("a section of every kind of block is printed under its heading, its texts and tables and drawings", async () => {
    const bytes = sheetPdf(withSection(everyBlock(BLOCK_PARTS)), PAPER_SIZES.A4);
    const text = await textOf(bytes);
    for (const said of [
      "A new section",
      "Bone black PBk 9",
      "Slow: touch dry in 10 days. measured",
      "Reviewed. \u201cas reviewed\u201d",
      "In a room of 20 °C.",
      "Oil index",
      "Amount",
      "not reached",
      "1:20",
      "Clearly blue in titanium white.",
      "One drawdown is doubtful.",
      "Carbon holds it back.",
      "Dries: Ten days.",
      "Cleaning up: Wipe up wet.",
      "Vine Black",
      "Masstone: the colour of the paint alone",
      "Weak enough to steer a grey with.",
      "Beside light",
    ])
      expect(text, said).toContain(solid(said));
    const { elements } = await pdfStructure(bytes);
    const alts = elements.flatMap(({ role, alt }) => (role === "Figure" ? [alt ?? ""] : []));
    for (const alt of ["Let-downs from strong to pale.", "Bone Black"]) expect(alts).toContain(alt);
    expect(alts.every((alt) => alt !== "")).toBe(true);
  });

  test("what only leads on, or is opened, stays on the site; a heading of nothing else goes with it", async () => {
    const text = await textOf(
      sheetPdf(
        withSection([
          { kind: "statement", role: "body", text: "Something." },
          { kind: "heading", level: 3, text: "Ways on" },
          { kind: "links", links: [{ text: "Beside lamp black", href: "../../compare/" }] },
          { kind: "heading", level: 3, text: "Reasons" },
          {
            kind: "fold",
            summary: "More",
            blocks: [{ kind: "statement", role: "body", text: "Folded." }],
          },
          { kind: "statement", role: "way", text: "To the bench." },
        ]),
        PAPER_SIZES.A4,
      ),
    );
    expect(text).toContain("Something.");
    for (const absent of ["Ways on", "Reasons", "Beside lamp black", "Folded.", "To the bench."])
      expect(text).not.toContain(solid(absent));
  });

  test("a section with nothing for paper has no heading there; a fold of cautions is printed open", async () => {
    const links = [{ kind: "links", links: [{ text: "On", href: "../" }] }] as const;
    const sections = [
      ...withSection(links).sheet.sections,
      {
        kind: "section",
        id: "safety",
        heading: "Safety",
        blocks: [
          {
            kind: "fold",
            summary: "Sanding",
            isPrinted: true,
            blocks: [
              {
                kind: "cautions",
                operations: [
                  {
                    operation: "Sanding",
                    cautions: [{ sentences: ["Never sand dry."], reason: "Dust." }],
                  },
                ],
              },
            ],
          },
        ],
      },
    ] as const;
    const text = await textOf(
      sheetPdf({ ...SHEET, sheet: { ...SHEET.sheet, sections } }, PAPER_SIZES.A4),
    );
    expect(text).not.toContain(solid("A new section"));
    expect(text).toContain(solid("Never sand dry."));
  });

  test("the label of a part that goes on over says in each column whose warnings these are", async () => {
    const heading = "Cobalt drier, before it is in the paint";
    const precautionary = Array.from({ length: 600 }, (_, i) => ({ text: `Precaution ${i + 1}.` }));
    const label = { heading, remarks: [], precautionaryHeading: "Precautions", precautionary };
    const sheet = sheetPdf(withSection([{ kind: "label", isOfPart: true, label }]), PAPER_SIZES.A4);
    const { pages } = await readPdf(sheet);
    const columns = new Map<string, string[]>();
    pages.forEach((page, number) => {
      for (const { text, x } of page.texts)
        if (text === heading || /Precaution \d+\./.test(text)) {
          const key = `${number} ${x < page.widthPt / 2 ? "left" : "right"}`;
          columns.set(key, [...(columns.get(key) ?? []), text]);
        }
    });
    expect(columns.size).toBeGreaterThan(2);
    for (const [first] of columns.values()) expect(first).toBe(heading);
  });

  test("a table that goes on over says its columns again, and leaves no row alone", async () => {
    const rows = Array.from({ length: 120 }, (_, i) => [{ text: `Row ${i + 1}` }, { text: "7" }]);
    const { pages } = await readPdf(
      sheetPdf(
        withSection([
          {
            kind: "table",
            table: {
              caption: "Long",
              columns: [{ head: "Which" }, { head: "Amount", numeric: true }],
              rows,
            },
          },
        ]),
        PAPER_SIZES.A4,
      ),
    );
    const columns = new Map<string, string[]>();
    pages.forEach((page, number) => {
      for (const { text, x } of page.texts)
        if (/^Row \d+$|^Which$/.test(text)) {
          const key = `${number} ${Math.round(x)}`;
          columns.set(key, [...(columns.get(key) ?? []), text]);
        }
    });
    expect(columns.size).toBeGreaterThan(1);
    for (const [key, texts] of columns) {
      expect(texts[0], key).toBe("Which");
      expect(texts.length, key).toBeGreaterThan(2);
    }
  });
});

const HOSTILE = `"><b title='x'>&amp; \\) ET {{ 7919 * 7919 }}`;
const NOT_TEXT = new Set([
  "svg",
  "narrow",
  "body",
  "kind",
  "code",
  "href",
  "language",
  "canonical",
  "hash",
]);
const NOT_TEXT_VALUES = new Set(["lead", "body", "note", "way", "stack", "columns", "tints"]);

/** The same with a hostile text in every field that a record can fill. */
function hostile<T>(value: T): T {
  if (Array.isArray(value)) return value.map((item: unknown) => hostile(item)) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      NOT_TEXT.has(key) || key === "hex" || key === "displayP3"
        ? (inner as unknown)
        : typeof inner === "string"
          ? NOT_TEXT_VALUES.has(inner) || key === "standing"
            ? inner
            : `${inner} ${HOSTILE}`
          : hostile(inner as unknown),
    ]),
  ) as T;
}

const CARD: CardContent = {
  slug: "bone-black",
  name: "Bone",
  madeOf: "Bone black",
  indexNames: "PBk 9",
  masstone: { hex: "#211f1e", lab: { L: 11, a: 0, b: 0 } },
  tints: [],
  sentence: "Blue.",
  facts: Object.fromEntries(
    CARD_FACTS.map((fact) => [fact, { name: fact, text: "Slowly" }]),
  ) as CardContent["facts"],
  label: {
    signalWords: [],
    pictograms: [],
    overleaf: "Overleaf.",
    statements: [],
    precautions: [],
  },
  rags: { full: "Rags.", lead: "Rags.", short: "Rags." },
  sizes: [{ text: "40 ml £8.00", size: "40 ml", price: "£8.00" }],
  poisonCentre: "Poison centre.",
  deference: "The label first.",
  drawdownNote: "A drawdown rules.",
  imprint: ["Saltreach"],
};
const SIZE = secondOf(cardSizes(WORKSHOP));

function secondOf([, second]: readonly CardSize[]): CardSize {
  if (second === undefined) throw new Error("Unexpected workshop with one size of card");
  return second;
}

function cardPdf(content: CardContent): Uint8Array {
  const laid = cardLayout({ content, revision: "0123abcd", size: SIZE, words: ENGLISH });
  return cardsPdf([laid], SIZE, { workshop: "Saltreach", date: undefined, words: ENGLISH }).bytes;
}

describe("hostile text", () => {
  const sheet: SheetToPrint = {
    ...SHEET,
    sheet: hostile(SHEET.sheet),
    bench: hostile(SHEET.bench),
  };

  test.each<[string, () => Uint8Array]>([
    ["a sheet", () => sheetPdf(sheet, PAPER_SIZES.A4)],
    [
      "the range",
      () =>
        rangePdf(
          [
            {
              name: `Blacks ${HOSTILE}`,
              sheets: [
                {
                  ...sheet,
                  ...sheetLeaves(sheet, PAPER_SIZES.A4, laidOutSheet(sheet, PAPER_SIZES.A4)),
                },
              ],
            },
          ],
          CONTEXT,
          PAPER_SIZES.A4,
        ),
    ],
    ["a card", () => cardPdf({ ...hostile(CARD), slug: "bone-black" })],
  ])("is shown on %s as it was written, and the file is still read", async (_, drawn) => {
    const text = await textOf(drawn());
    expect(text).toContain(solid(HOSTILE));
    expect(text).not.toContain("62710561");
  });

  test("prose and drawings spelt with entities come out as their letters, and as no element", async () => {
    const body = asMarkup("<p>&lt;b&gt; &amp;amp; &quot;x&quot; &#39;y&#39;</p>");
    const text = await textOf(sheetPdf(withSection([{ kind: "prose", body }]), PAPER_SIZES.A4));
    expect(text).toContain(solid(`<b> &amp; "x" 'y'`));
  });
});

describe("the key that a kept PDF goes by", () => {
  const key = (sheet: SheetToPrint, program = "p"): string => sheetKey(sheet, program);
  const own = key(SHEET);

  test.each(["sheet", "bench"] as const)(
    "changes with every part of the %s page that moves a mark on paper, and with no other",
    (page) => {
      const drawn = (sheet: SheetToPrint): string =>
        Buffer.from(sheetPdf(sheet, PAPER_SIZES.A4)).toString("latin1");
      const before = drawn(SHEET);
      const names = Object.keys(SHEET[page]);
      expect(names.length).toBeGreaterThan(5);
      for (const name of names) {
        if (name === "kind" || name === "canonical") continue;
        const changed = {
          ...SHEET,
          [page]: { ...SHEET[page], [name]: hostile({ part: SHEET[page][name as never] }).part },
        } as SheetToPrint;
        const isTold = key(changed) !== own;
        if (LEFT_TO_THE_SITE.includes(name)) expect(isTold, name).toBe(false);
        // Only what the key does not tell from before has to come out as before.
        if (!isTold) expect(drawn(changed) === before, name).toBe(true);
      }
    },
  );

  test("changes with slug, address, workshop, date and program", () => {
    const of = (context: Partial<PageContext>): SheetToPrint => ({
      ...SHEET,
      context: { ...CONTEXT, ...context },
    });
    const keys = [
      own,
      key({ ...SHEET, slug: "other" }),
      key({ ...SHEET, sheet: { ...SHEET.sheet, canonical: "https://other.example/" } }),
      key(of({ date: "2026-05-19" })),
      key(of({ records: { workshop: { ...WORKSHOP, name: "Other" } } as PageContext["records"] })),
      key(of({ records: { workshop: { ...WORKSHOP, paper: "Letter" } } as never })),
      key(SHEET, "another program"),
    ];
    expect(new Set(keys).size).toBe(keys.length);
  });

  test("of the range changes with a family, an order, a sheet, workshop, date and program", () => {
    const of = (
      families: Parameters<typeof rangeKey>[0],
      context: Partial<PageContext> = {},
      program = "p",
    ): string => rangeKey(families, { ...CONTEXT, ...context }, program);
    const keys = [
      of([["Blacks", ["one", "two"]]]),
      of([["Greys", ["one", "two"]]]),
      of([["Blacks", ["two", "one"]]]),
      of([["Blacks", ["one", "three"]]]),
      of([
        ["Blacks", ["one"]],
        ["Greys", ["two"]],
      ]),
      of([["Blacks", ["one", "two"]]], { date: "2026-05-19" }),
      of([["Blacks", ["one", "two"]]], {
        records: { workshop: { ...WORKSHOP, about: "Other" } } as PageContext["records"],
      }),
      of([["Blacks", ["one", "two"]]], {}, "another program"),
    ];
    expect(new Set(keys).size).toBe(keys.length);
  });

  test("of cards changes with all that a card says, its size, workshop, date and program", () => {
    const of = (
      content: CardContent,
      size = SIZE,
      context: Partial<PageContext> = {},
      program = "p",
    ): string => {
      const laid = cardLayout({ content, revision: "0123abcd", size, words: ENGLISH });
      return cardsKey(
        JSON.stringify([{ ...laid, revision: "0123abcd" }]),
        size,
        { ...CONTEXT, ...context },
        program,
      );
    };
    const changed = (Object.keys(CARD) as (keyof CardContent)[])
      .filter((name) => !["tints", "label", "indexNames"].includes(name))
      .map((name) => of({ ...CARD, [name]: changedPart(CARD[name]) }));
    const keys = [
      of(CARD),
      ...changed,
      of(CARD, { ...SIZE, paper: "Letter" }),
      of(CARD, SIZE, { date: "2026-05-19" }),
      of(CARD, SIZE, { records: { workshop: { ...WORKSHOP, name: "Other" } } as never }),
      of(CARD, SIZE, {}, "another program"),
    ];
    expect(new Set(keys).size).toBe(keys.length);
  });

  function changedPart(part: unknown): unknown {
    if (typeof part === "string") return `${part} changed`;
    if (Array.isArray(part)) return part.map(changedPart);
    if (typeof part === "number") return part + 1;
    return typeof part === "object" && part !== null
      ? Object.fromEntries(Object.entries(part).map(([key_, one]) => [key_, changedPart(one)]))
      : part;
  }
});
