import { createRequire } from "node:module";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { labelModel } from "../../lib/present/label-model.ts";
import { labelSheet } from "../../lib/print/label-sheet.ts";
import { pictogramBoxMm } from "../../lib/print/package-flow.ts";
import { labelsPdf } from "../../lib/print/labels-pdf.ts";
import type { Mark } from "../../lib/print/mark.ts";
import { packageLabelContent } from "../../lib/print/package-label-content.ts";
import type { LaidLabel } from "../../lib/print/laid-label.ts";
import { packageLabel, SYMBOL_PLACES } from "../../lib/print/package-label-layout.ts";
import { sizeOfXHeightPt } from "../../lib/print/package-label-parts.ts";
import { largerTubes, type PackageSize } from "../../lib/print/package-size.ts";
import { measureText } from "../../lib/print/print-document.ts";
import { fontBytes, SANS_X_HEIGHT } from "../../lib/print/print-font.ts";
import { rangeLabels } from "../../lib/print/range-labels.ts";
import type { PackageLabelRecord } from "../../lib/records/schema/package-label.ts";
import { LANGUAGES, type Language } from "../../lib/quantities/languages.ts";
import { WORDED } from "../support/worded.ts";
import { unbrokenNumber } from "../../lib/words/typeset-text.ts";
import { readPdf } from "../support/read-pdf.ts";
import { CONTEXT } from "./demonstration-cards.ts";
import { labelContentOf, labelSize, textsOf } from "./demonstration-labels.ts";

const sized = (
  label: Partial<PackageLabelRecord> & Pick<PackageLabelRecord, "kind" | "ml">,
): PackageSize => labelSize({ languages: ["en"], ...label });
const laidOf = (slug: string, size: PackageSize): LaidLabel | undefined =>
  packageLabel(labelContentOf(slug, size), size);
const marksOf = ({ faces }: LaidLabel): Mark[] =>
  faces.flatMap(({ blocks }) => blocks.flatMap(({ marks = [] }) => marks));
const textOf = (label: LaidLabel): string =>
  marksOf(label)
    .map((mark) => (mark.kind === "text" ? mark.text : ""))
    .join(" ")
    .replace(/\s+/g, " ");
const squeezed = (text: string): string => text.replace(/[\s\u00a0-]+/g, "");

describe("the x-height that letters are reckoned by", () => {
  test.each(["sans", "sans bold"] as const)(
    "is no more than that of %s, by its own table",
    (face) => {
      const require = createRequire(join(import.meta.dirname, "../../package.json"));
      const fontkit = require("fontkit") as {
        create: (bytes: Uint8Array) => { readonly xHeight: number; readonly unitsPerEm: number };
      };
      const font = fontkit.create(Buffer.from(fontBytes(face, "latin")));
      expect(font.xHeight / font.unitsPerEm).toBeGreaterThanOrEqual(SANS_X_HEIGHT);
      expect(font.xHeight / font.unitsPerEm).toBeLessThan(SANS_X_HEIGHT + 0.02);
    },
  );

  test("1.2 mm are letters of 7 point", () => {
    // 1.2 / 0.486 x 72 / 25.4 = 6.999
    expect(sizeOfXHeightPt(1.2)).toBe(7);
  });
});

const SIZES: readonly PackageSize[] = [
  sized({ kind: "tube", ml: 40, symbol: "ean", price: "code" }),
  sized({ kind: "tube", ml: 200, symbol: "qr", languages: ["en", "fr", "de", "es"] }),
  sized({ kind: "tube", ml: 20 }),
  sized({ kind: "jar", ml: 120, widthMm: 105, heightMm: 74, symbol: "ean" }),
];

describe.each(SIZES)("labels of $kind $ml ml, $widthMm x $heightMm mm", (size) => {
  const laid = CONTEXT.sheets.flatMap((worded) => {
    const content = packageLabelContent(worded, size, CONTEXT);
    if ("refusal" in content) return [];
    const label = packageLabel(content, size);
    return label === undefined ? [] : [{ worded, content, label }];
  });

  test("are laid out for most of the range", () => {
    expect(laid.length).toBeGreaterThan(25);
  });

  test("stay inside the label, the overlap left blank, letters at least as high as asked for", () => {
    for (const { label } of laid)
      for (const mark of marksOf(label)) {
        if (mark.kind !== "text") continue;
        const right = mark.xMm + measureText(mark.text, mark.face, mark.sizePt);
        expect(mark.xMm, mark.text).toBeGreaterThanOrEqual(1.9);
        expect(right, `${label.slug}: ${mark.text}`).toBeLessThanOrEqual(
          size.widthMm - size.overlapMm - 1.9,
        );
        expect(mark.yMm, mark.text).toBeLessThanOrEqual(size.heightMm - 1.9);
        if (!/^\d \d{6} \d{6}$/.test(mark.text))
          expect(mark.sizePt, mark.text).toBeGreaterThanOrEqual(sizeOfXHeightPt(size.xHeightMm));
      }
  });

  test("print every statement of the sheet in each language, but for what is said to be left out", () => {
    let statements = 0;
    for (const { worded, label } of laid) {
      const text = squeezed(textOf(label));
      for (const language of size.languages) {
        const model = labelModel(worded.sheet.cautions, language, CONTEXT.words);
        for (const { code, text: said } of [
          ...model.hazards,
          ...model.precautions,
          ...model.metals,
        ])
          if (code === undefined || !label.leftOut.includes(code)) {
            statements++;
            expect(text, `${label.slug}, ${code ?? ""}`).toContain(squeezed(said));
          }
        if (model.signalWord !== undefined) expect(text).toContain(squeezed(model.signalWord));
      }
    }
    expect(statements).toBeGreaterThan(8);
  });

  test("have every pictogram, its side 10 mm or more, each apart from the next", () => {
    for (const { content, label } of laid) {
      const frames = marksOf(label).flatMap((mark) =>
        mark.kind === "path" && "srgb" in mark.ink ? [mark] : [],
      );
      expect(frames).toHaveLength(content.pictograms.length);
      for (const { scale } of frames)
        // From point to point a frame spans 98 of its 100 units: its side is that by the root of 2.
        expect((98 * scale) / Math.SQRT2).toBeGreaterThanOrEqual(10 - 1e-9);
      const places = new Set(frames.map(({ xMm, yMm }) => `${xMm} ${yMm}`));
      expect(places.size).toBe(frames.length);
    }
  });

  test("say name, contents, lot and pigments", () => {
    for (const { content, label } of laid) {
      const text = squeezed(textOf(label));
      for (const part of [
        content.name,
        content.contents,
        content.lot,
        ...content.facts.map((fact) => fact.text),
        content.supplier,
      ])
        expect(text, label.slug).toContain(squeezed(part));
    }
  });
});

/** Source: README, `labels` and `languages`; who buys a tube reads its fire caution in that language. */
describe("lines of ours are in the languages of the label", () => {
  const bought = (languages: Language[]) => {
    const size = sized({ kind: "jar", ml: 120, widthMm: 150, heightMm: 100, languages });
    const label = laidOf("bone-black", size);
    if (label === undefined) throw new Error("Unexpected jar without room");
    return textOf(label);
  };
  const RAGS = {
    en: /Oily rags can self-ignite/,
    fr: /chiffons/,
    de: /Lappen/,
    es: /trapos/i,
  } as const;
  const FACTS = {
    en: /Vehicle: /,
    fr: /Liant/,
    de: /Bindemittel: /,
    es: /Aglutinante: /,
  } as const;

  test.each(LANGUAGES)("all of it in %s where that is the only one", (language) => {
    const text = bought([language]);
    for (const other of LANGUAGES) {
      const expected = other === language ? expect(text) : expect(text).not;
      expected.toMatch(RAGS[other]);
      expected.toMatch(FACTS[other]);
    }
  });

  test("each line in each of several, the lot once", () => {
    const text = bought(["de", "fr"]);
    for (const language of ["de", "fr"] as const) {
      expect(text).toMatch(RAGS[language]);
      expect(text).toMatch(FACTS[language]);
    }
    expect(text).not.toMatch(RAGS.en);
    expect(text.match(/Charge \/ Lot: /g)).toHaveLength(1);
  });
});

/** A number that was broken is dialled wrong, a UFI or CAS number is not found; a word is parted at its own hyphen alone. */
describe("on a label however narrow", () => {
  const PHONE = "+44 (0)1632-960-199";
  const [UFI, CAS] = ["QX3T-VA7K-KOOC-NPQR", "1314-13-2"];
  const LONG = "Farbenmanufakturgesellschaft";
  const content = {
    ...labelContentOf("zinc-white", sized({ kind: "jar", ml: 40, widthMm: 60, heightMm: 60 })),
    ufi: `UFI: ${UFI}`,
    supplier: unbrokenNumber(`${LONG}, Ferry Lane, ${PHONE}, CAS ${CAS}`),
    price: "\u00a318.00 (\u00a3150.00/l)",
  };
  const tried = [16, 20, 24, 28, 32, 40, 60].map((widthMm) => ({
    widthMm,
    label: packageLabel(content, sized({ kind: "jar", ml: 40, widthMm, heightMm: 300 })),
  }));

  test("telephone, UFI, CAS number, price and a word stay whole, or there is no label", () => {
    expect(tried[0]?.label).toBeUndefined();
    expect(tried.at(-1)?.label).toBeDefined();
    for (const { widthMm, label } of tried) {
      if (label === undefined) continue;
      const lines = marksOf(label).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
      for (const code of [LONG, unbrokenNumber(PHONE), UFI, CAS, "\u00a318.00", "(\u00a3150.00/l)"])
        expect(
          lines.some((line) => line.includes(code)),
          `${code} on ${widthMm} mm`,
        ).toBe(true);
    }
  });
});

describe("a label that is too small", () => {
  const size = sized({ kind: "tube", ml: 40, languages: [...LANGUAGES] as Language[] });

  test("is refused, and the tube that is named holds it while the next smaller does not", () => {
    const slug = "zinc-white";
    expect(laidOf(slug, size)).toBeUndefined();
    const { refusals, runs } = rangeLabels([textsOf(slug)], [size], CONTEXT);
    expect(runs).toEqual([]);
    const [line = ""] = refusals;
    expect(line).toMatch(
      /^Zinc White, tried: no label\. 81\.5 x 80 mm are too small for it in English, French, German and Spanish/,
    );
    const named = Number(/is one of (\d+) ml/.exec(line)?.[1]);
    const tubes = largerTubes(size);
    const at = tubes.findIndex(({ ml }) => ml === named);
    const content = { ...labelContentOf(slug, size), mayLeaveOut: [] };
    expect(at).toBeGreaterThanOrEqual(0);
    expect(tubes.map((tube) => packageLabel(content, tube) !== undefined).indexOf(true)).toBe(at);
  });

  const low = { ...sized({ kind: "tube", ml: 40, languages: ["en", "de"] }), heightMm: 20 };

  // The statements of the law and the tube's measures stand in each alike; else nothing of one is said in another.
  test.each([
    [
      "de",
      /^Zinc White, tried: kein Etikett\. 81,5 x 20\u00a0mm sind auf Englisch und Deutsch .* zu klein: /,
      "Faltetikett",
    ],
    [
      "fr",
      /^Zinc White, tried\u202f: pas d’étiquette\. 81,5 x 20\u00a0mm ne suffisent pas en anglais et allemand /,
      "étiquette dépliante",
    ],
    [
      "es",
      /^Zinc White, tried: sin etiqueta\. 81,5 x 20\u00a0mm no bastan en inglés y alemán /,
      "etiqueta desplegable",
    ],
  ] as const)("is told in the workshop's language, %s", (language, begins, foldOut) => {
    const { refusals } = rangeLabels([textsOf("zinc-white")], [low], {
      ...CONTEXT,
      words: WORDED[language],
    });
    const [line = ""] = refusals;
    expect(line).toMatch(begins);
    expect(line).toContain(foldOut);
    expect(line).not.toMatch(/\b(?:the|label|with|tube that|fold-out)\b/);
  });

  test("is told without the law where the paint bears no hazards", () => {
    const lineOf = (slug: string): string =>
      rangeLabels([textsOf(slug)], [low], CONTEXT).refusals.join(" ");
    expect(lineOf("bone-black")).toContain("It bears no hazards, so that no law sets its letters");
    expect(lineOf("bone-black")).not.toContain("CLP");
    expect(lineOf("zinc-white")).toContain("(CLP, Annex I, 1.5.1)");
  });

  // basis: published. CLP, Annex I, 1.2.1.4 is of labels that Article 17 asks for: of hazardous mixtures.
  test("is held against the law's size where the paint is classified, and not where it bears nothing", () => {
    const narrow = { ...sized({ kind: "tube", ml: 40 }), heightMm: 40 };
    const bears = (slug: string): boolean => labelContentOf(slug, narrow).cautions.length > 0;
    const told = (slug: string): boolean =>
      rangeLabels([textsOf(slug)], [narrow], CONTEXT).remarks.some((line) =>
        line.includes("is less than the 52 x 74 mm"),
      );
    expect([bears("zinc-white"), told("zinc-white")]).toEqual([true, true]);
    expect([bears("bone-black"), told("bone-black")]).toEqual([false, false]);
  });

  test("says what the law has for it, the whole elsewhere before a part left out", () => {
    const small = sized({ kind: "tube", ml: 60, heightMm: 74, symbol: "ean", price: "code" });
    const [line = ""] = rangeLabels([textsOf("lead-white")], [small], CONTEXT).refusals;
    expect(line).toMatch(
      /A fold-out label, a tie-on tag or a box may bear the whole instead \(CLP, Annex I, 1\.5\.1\)\. With foldOut: true of this label in workshop\.yaml it is printed as a fold-out label of 3 pages\. Where none of these can be had, give this label reduced: true in workshop\.yaml: it is then printed without H410, P273 \(1\.5\.2\)$/,
    );
  });

  test("is reduced where its record says so, by what may go alone, and it is told", () => {
    const small = sized({
      kind: "tube",
      ml: 60,
      heightMm: 74,
      symbol: "ean",
      price: "code",
      reduced: true,
    });
    const { runs, remarks, refusals } = rangeLabels([textsOf("lead-white")], [small], CONTEXT);
    expect(refusals).toEqual([]);
    const [label] = runs[0]?.labels ?? [];
    expect(label?.leftOut).toEqual(["H410", "P273"]);
    expect(remarks.join("\n")).toContain("without H410, P273, which a package of 60 ml may");
    const model = labelModel(textsOf("lead-white").sheet.cautions, "en", CONTEXT.words);
    const text = squeezed(label === undefined ? "" : textOf(label));
    for (const { code, text: said } of [...model.hazards, ...model.precautions])
      if (label?.leftOut.includes(code ?? "")) expect(text, code).not.toContain(squeezed(said));
      else expect(text, code).toContain(squeezed(said));
  });

  test("of more than 125 ml is never reduced", () => {
    const { leftOut } = laidOf("lead-white", sized({ kind: "tube", ml: 150, reduced: true })) ?? {
      leftOut: [],
    };
    expect(leftOut).toEqual([]);
    const content = labelContentOf("lead-white", sized({ kind: "tube", ml: 150, reduced: true }));
    expect(content.mayLeaveOut).toEqual([]);
  });
});

test("a price on a label has that of a litre beside it, in the label's own language", () => {
  const priced = (language: Language) =>
    labelContentOf(
      "bone-black",
      sized({ kind: "jar", ml: 120, price: "price", languages: [language] }),
    ).price?.replaceAll("\u00a0", " ");
  // 18 / .120 = 150
  expect(priced("en")).toBe("\u00a318.00 (\u00a3150.00/l)");
  expect(priced("de")).toBe("18,00 \u00a3 (150,00 \u00a3/l)");
});

test("labels of one size have letters of one height, the roomiest that all of them hold", () => {
  const size = sized({ kind: "tube", ml: 40, symbol: "ean", price: "code" });
  const alone = ["bone-black", "titanium-zinc-white"].map((slug) => laidOf(slug, size)?.xHeightMm);
  expect(alone).toEqual([1.44, 1.2]);
  const { runs } = rangeLabels(CONTEXT.sheets, [size], CONTEXT);
  const labels = runs[0]?.labels ?? [];
  expect(labels.length).toBeGreaterThan(15);
  expect(new Set(labels.map(({ xHeightMm }) => xHeightMm))).toEqual(new Set([1.2]));
  const roomy = rangeLabels([textsOf("bone-black")], [size], CONTEXT).runs[0]?.labels ?? [];
  expect(roomy.map(({ xHeightMm }) => xHeightMm)).toEqual([1.44]);
});

/** Of each paragraph of a label's faces, where it begins and what it says. */
const paragraphsOf = ({ faces }: LaidLabel) =>
  faces.flatMap(({ blocks }, side) =>
    blocks.flatMap(({ marks = [] }) => {
      const texts = marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));
      const [first] = texts;
      return first === undefined
        ? []
        : [{ side, ...first, text: texts.map(({ text }) => text).join(" ") }];
    }),
  );

// basis: published. CLP, Article 32(3): signal word and statements stand together; apart, the word would be another language's.
test.each<[label: Parameters<typeof sized>[0]]>([
  [{ kind: "tube", ml: 120, languages: ["de", "fr"], symbol: "ean" }],
  [{ kind: "tube", ml: 150, languages: ["en", "de", "fr"] }],
  [{ kind: "jar", ml: 120, widthMm: 92, heightMm: 64, languages: ["en", "de"], symbol: "qr" }],
  [{ kind: "jar", ml: 250, widthMm: 105, heightMm: 74, languages: ["de", "fr", "es"] }],
])("%j parts no signal word from its statements, in no column", (label) => {
  const size = sized(label);
  let words = 0;
  for (const slug of ["titanium-zinc-white", "zinc-white", "lead-white"])
    for (const symbolPlace of SYMBOL_PLACES[size.kind]) {
      const content = labelContentOf(slug, size);
      const laid = packageLabel(content, size, { symbolPlace });
      if (laid === undefined) continue;
      const paragraphs = paragraphsOf(laid);
      for (const { signalWord, statements } of content.cautions) {
        const first = squeezed(statements[0]?.text ?? "none");
        const at = paragraphs.findIndex(({ text }) => squeezed(text).startsWith(first));
        const [own, said] = [paragraphs[at - 1], paragraphs[at]];
        if (own === undefined || said === undefined)
          throw new Error(`Unexpected label of ${slug} without ${first}`);
        words++;
        expect(own.text, slug).toBe(signalWord);
        expect([said.side, said.xMm], `${slug}, ${own.text}`).toEqual([own.side, own.xMm]);
        expect(said.yMm - own.yMm, `${slug}, ${own.text}`).toBeGreaterThan(0);
        expect(said.yMm - own.yMm, `${slug}, ${own.text}`).toBeLessThan(8);
      }
    }
  expect(words).toBeGreaterThan(0);
});

// Two columns on a jar of this size have some 34 letters in a line, three some 22. CLP, Annex I, Table 1.3 asks for 16 mm.
test("a jar's symbol goes to the front where the back is crowded by it", () => {
  const size = sized({
    kind: "jar",
    ml: 120,
    widthMm: 92,
    heightMm: 64,
    languages: ["en", "de"],
    symbol: "qr",
    price: "price",
  });
  const [run] = rangeLabels(CONTEXT.sheets, [size], CONTEXT).runs;
  const labels = run?.labels ?? [];
  expect(labels.length).toBeGreaterThan(4);
  for (const { slug, faces } of labels)
    expect(
      faces.map(
        ({ blocks }) =>
          blocks.filter(({ tag, alt }) => tag === "Figure" && alt?.includes("https:")).length,
      ),
      slug,
    ).toEqual([1, 0]);
  const white = labels.find(({ slug }) => slug === "titanium-zinc-white");
  expect(white?.pictogramMm).toBe(16);
  const lefts = new Set(
    (white?.faces[1]?.blocks ?? []).flatMap(({ marks = [] }) =>
      marks.flatMap((mark) => (mark.kind === "text" ? [Math.round(mark.xMm)] : [])),
    ),
  );
  expect(lefts.size).toBe(2);
});

describe("the symbol of labels of one size", () => {
  const leftOf = ({ faces }: LaidLabel): number | undefined =>
    faces
      .flatMap(({ blocks }) => blocks)
      .find(({ alt }) => alt?.startsWith("EAN ") === true)
      ?.marks?.flatMap((mark) => (mark.kind === "box" ? [Math.round(mark.xMm)] : []))[0];

  // A shop finds it where it was on the tube before. Source: practice.
  test.each<[label: Parameters<typeof sized>[0], corner: "left" | "right"]>([
    [{ kind: "tube", ml: 40, languages: ["en"] }, "right"],
    [{ kind: "tube", ml: 40, languages: ["de"] }, "right"],
    // Lead White alone is put up in it, and finds room in German only with its symbol at the left.
    [{ kind: "tube", ml: 60, heightMm: 90, languages: ["de"] }, "left"],
  ])("%j stands in one corner of all of them, at the %s", (label, corner) => {
    const size = sized({ symbol: "ean", price: "code", ...label });
    const { runs } = rangeLabels(CONTEXT.sheets, [size], CONTEXT);
    const lefts = (runs[0]?.labels ?? []).flatMap((laid) => leftOf(laid) ?? []);
    expect(lefts.length).toBeGreaterThan(0);
    expect(new Set(lefts).size).toBe(1);
    if (corner === "left") expect(lefts[0]).toBe(2);
    else expect(lefts[0]).toBeGreaterThan(size.widthMm / 2);
  });
});

test("no label of the demonstration parts its supplier's address where a line holds it whole", () => {
  const whole = CONTEXT.records.workshop.contact ?? "";
  for (const ml of [40, 120]) {
    const size = sized({ kind: "tube", ml });
    const content = labelContentOf("bone-black", size);
    const label = packageLabel(content, size);
    const texts = (label === undefined ? [] : marksOf(label)).flatMap((mark) =>
      mark.kind === "text" ? mark.text : [],
    );
    expect(texts.some((text) => text.includes(whole))).toBe(true);
    expect(texts.filter((text) => text.endsWith("@"))).toEqual([]);
  }
});

test("a label has one face, without serifs (clp-letter-sizes, 1.2.1.5)", () => {
  const label = laidOf("lead-white", sized({ kind: "tube", ml: 150 }));
  const faces = label && marksOf(label).flatMap((mark) => (mark.kind === "text" ? mark.face : []));
  expect(new Set(faces)).toEqual(new Set(["sans", "sans bold"]));
});

test("what records type on a keyboard is typeset, and a telephone number stays in one line", () => {
  const { workshop } = CONTEXT.records;
  const content = packageLabelContent(textsOf("zinc-white"), sized({ kind: "tube", ml: 40 }), {
    ...CONTEXT,
    records: {
      ...CONTEXT.records,
      workshop: { ...workshop, name: "L'atelier d'Anna", telephone: "+44 (0)1632 960 123" },
    },
  });
  expect(content).toMatchObject({
    supplier: expect.stringMatching(
      /^L’atelier d’Anna, .*\+44\u00a0\(0\)1632\u00a0960\u00a0123/,
    ) as string,
  });
});

test("an ingredient without hazard data has no label", () => {
  const size = sized({ kind: "tube", ml: 40 });
  const content = packageLabelContent(textsOf("vine-black"), size, CONTEXT);
  expect(content).toHaveProperty("refusal");
});

test("a classified paint of a supplier without telephone has none either", () => {
  const { telephone: _telephone, ...workshop } = CONTEXT.records.workshop;
  const content = packageLabelContent(textsOf("zinc-white"), sized({ kind: "tube", ml: 40 }), {
    ...CONTEXT,
    records: { ...CONTEXT.records, workshop },
  });
  expect(content).toEqual({
    refusal: "workshop.yaml gives no telephone, which a label has to have",
  });
});

test("a tube that is neither generic nor measured is told of in one line", () => {
  expect(() => sized({ kind: "tube", ml: 250 })).toThrow(
    "The label tried is for a tube of 250 ml, and generic tubes hold 15 to 200 ml: give its diameterMm and heightMm",
  );
});

describe("a sheet of labels cut beforehand", () => {
  const sheet = { columns: 2, rows: 3, leftMm: 8, topMm: 12, gutterXMm: 4, gutterYMm: 2 };
  const size = sized({ kind: "jar", ml: 120, widthMm: 90, heightMm: 60, sheet });

  test("has its labels where its measures say", () => {
    const { place, perSheet, bleedMm, cuts } = labelSheet(size);
    expect([perSheet, bleedMm, cuts]).toEqual([6, 1, undefined]);
    // 8 + 90 + 4; 12 + 2 x (60 + 2)
    expect(place(5)).toEqual({ xMm: 102, yMm: 136 });
  });

  test("that the paper does not hold is refused in one line", () => {
    expect(() => labelSheet({ ...size, sheet: { ...sheet, columns: 3 } })).toThrow(
      "The sheet of the label tried reaches 286 x 196 mm from its top left corner, and A4 is 210 x 297 mm",
    );
  });
});

test("the PDF has each label at real size where its sheet says, as another program finds it", async () => {
  const size = sized({ kind: "tube", ml: 40, symbol: "ean" });
  const labels = ["bone-black", "lamp-black"].flatMap((slug) => laidOf(slug, size) ?? []);
  const { bytes, pages } = labelsPdf([{ size, labels }], {
    workshop: "Test",
    date: "2026-05-18",
    words: CONTEXT.words,
  });
  const read = await readPdf(bytes);
  expect([pages, read.pages.length]).toEqual([1, 1]);
  const { place, paperMm } = labelSheet(size);
  labels.forEach((label, i) => {
    const [name] = marksOf(label).flatMap((mark) => (mark.kind === "text" ? [mark] : []));
    const found = read.pages[0]?.texts.find(({ text }) => text === name?.text);
    expect((found?.x ?? 0) * (25.4 / 72)).toBeCloseTo(place(i).xMm + (name?.xMm ?? 0), 2);
    expect(paperMm.height - (found?.y ?? 0) * (25.4 / 72)).toBeCloseTo(
      place(i).yMm + (name?.yMm ?? 0),
      2,
    );
  });
});

test("a pictogram's box is as wide as its diamond", () => {
  // 10 mm by the root of 2 is 14.142 mm from point to point, 98 % of the box.
  expect(pictogramBoxMm(10)).toBeCloseTo(14.142 / 0.98, 2);
});
