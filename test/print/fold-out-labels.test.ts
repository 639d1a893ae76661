import { describe, expect, test } from "vitest";
import { labelModel } from "../../lib/present/label-model.ts";
import { foldOutPages, type FoldedStrip, type LaidLabel } from "../../lib/print/laid-label.ts";
import { labelSheet } from "../../lib/print/label-sheet.ts";
import { labelsPdf } from "../../lib/print/labels-pdf.ts";
import type { PackageLabelContent } from "../../lib/print/package-label-content.ts";
import { packageLabel } from "../../lib/print/package-label-layout.ts";
import type { PackageSize } from "../../lib/print/package-size.ts";
import { labelNotes } from "../../lib/site/label-notes.ts";
import { rangeLabels } from "../../lib/print/range-labels.ts";
import type { PackageLabelRecord } from "../../lib/records/schema/package-label.ts";
import { readPdf, type FoundText } from "../support/read-pdf.ts";
import { CONTEXT } from "./demonstration-cards.ts";
import { labelContentOf, labelSize, textsOf } from "./demonstration-labels.ts";

const MM = 25.4 / 72;

const sized = (label: Partial<PackageLabelRecord>): PackageSize =>
  labelSize({ kind: "tube", ml: 40, foldOut: true, ...label });
const squeezed = (text: string): string => text.replace(/[\s\u00a0\u2002-]+/g, "");

interface Folded {
  readonly label: LaidLabel;
  readonly content: PackageLabelContent;
  readonly strip: FoldedStrip;
  /** What a reader of the PDF finds on each page of the strip, from its upper left corner [mm]. */
  readonly pages: readonly (readonly FoundText[])[];
  readonly outside: readonly FoundText[];
  /** From the left edge of the paper to the strip, and the width of the paper [mm]. */
  readonly cornerMm: number;
  readonly paperMm: number;
}

/** One fold-out label as another program reads it from the PDF. */
const folded = async (slug: string, size: PackageSize): Promise<Folded> => {
  const content = labelContentOf(slug, size);
  const label = packageLabel(content, size);
  const strip = label?.faces.at(-1)?.strip;
  if (label === undefined || strip === undefined)
    throw new Error(`Unexpected label of ${slug} without folds`);
  const { bytes } = labelsPdf([{ size, labels: [label] }], {
    workshop: "Test",
    date: "2026-05-18",
    words: CONTEXT.words,
  });
  const read = (await readPdf(bytes)).pages.at(-1);
  const sheet = labelSheet({ ...size, widthMm: strip.widthMm, heightMm: strip.heightMm });
  const corner = sheet.place(0);
  const texts = (read?.texts ?? []).map((found) => ({
    ...found,
    x: found.x * MM - corner.xMm,
    y: sheet.paperMm.height - found.y * MM - corner.yMm,
    width: found.width * MM,
  }));
  const along = ({ x, y }: FoundText): number => (strip.runs === "across" ? x : y);
  const isOn = ({ x, y }: FoundText): boolean =>
    x >= 0 && y >= 0 && x <= strip.widthMm && y <= strip.heightMm;
  const starts = [0, ...strip.foldsMm, Infinity];
  return {
    label,
    content,
    strip,
    pages: starts
      .slice(0, -1)
      .map((from, i) =>
        texts.filter(
          (found) => isOn(found) && along(found) >= from && along(found) < (starts[i + 1] ?? 0),
        ),
      ),
    outside: texts.filter((found) => !isOn(found)),
    cornerMm: corner.xMm,
    paperMm: sheet.paperMm.width,
  };
};
/** A label is laid out and read once for all that is asked of it. */
const once = <T>(make: () => Promise<T>): (() => Promise<T>) => {
  let made: Promise<T> | undefined;
  return () => (made ??= make());
};
const nameOf = (slug: string): string => squeezed(textsOf(slug).sheet.name);
const textOf = (texts: readonly FoundText[]): string =>
  squeezed(texts.map(({ text }) => text).join(" "));

/** Source: clp-fold-out, what front, inside and back pages bear. */
describe.each([
  { kind: "tube", ml: 40, slug: "zinc-white", symbol: "ean", isTold: true },
  { kind: "tube", ml: 40, slug: "lead-white", symbol: "none", isTold: true },
  { kind: "jar", ml: 120, slug: "zinc-white", symbol: "none", isTold: false },
] as const)("a $kind of $ml ml, $slug in two languages", ({ slug, isTold, ...label }) => {
  const size = sized({ ...label, languages: ["en", "de"] });
  const { cautions } = textsOf(slug).sheet;
  const models = (["en", "de"] as const).map((language) =>
    labelModel(cautions, language, CONTEXT.words),
  );

  const read = once(() => folded(slug, size));

  test("goes onto an odd number of pages, so that front and back lie with their print outwards", async () => {
    const { label, strip } = await read();
    expect(foldOutPages(label) % 2).toBe(1);
    expect(strip.foldsMm.length + 1).toBe(foldOutPages(label));
    const [one = 0, two = 0] = strip.foldsMm;
    expect(two - one).toBeCloseTo(one, 9);
  });

  test("has on its front what is asked for, and in words, or by its codes beside an arrow, what languages are inside", async () => {
    const { pages, content } = await read();
    const front = textOf(pages[0] ?? []);
    for (const part of [
      content.name,
      content.contents,
      content.supplier,
      ...models.map(({ signalWord }) => signalWord ?? "no signal word"),
      ...(isTold
        ? ["EN Full safety information inside", "DE Alle Sicherheitshinweise innen"]
        : ["EN \u00b7 DE"]),
    ])
      expect(front).toContain(squeezed(part));
    for (const { hazards } of models)
      for (const { text } of hazards) expect(front).not.toContain(squeezed(text));
  });

  test("has on its back page the same, without the languages", async () => {
    const { pages, content } = await read();
    const back = textOf(pages.at(-1) ?? []);
    for (const part of [
      content.name,
      content.contents,
      content.supplier,
      ...models.map(({ signalWord }) => signalWord ?? "no signal word"),
    ])
      expect(back).toContain(squeezed(part));
    expect(back).not.toContain(squeezed("Full safety information inside"));
  });

  test("has inside every statement of each language behind its code, and the code atop each page", async () => {
    const { pages } = await read();
    const inside = pages.slice(1, -1).filter((texts) => texts.length > 0);
    const whole = inside.map(textOf).join("");
    const [english = "", german = ""] = whole.split(/(?=DE[A-Z])/);
    for (const [i, text] of [english, german].entries())
      for (const { text: said } of [
        { text: models[i]?.signalWord ?? "" },
        ...(models[i]?.hazards ?? []),
        ...(models[i]?.precautions ?? []),
        ...(models[i]?.metals ?? []),
      ])
        expect(text).toContain(squeezed(said));
    expect(english).not.toContain(squeezed(models[1]?.hazards[0]?.text ?? "none"));
    for (const texts of inside) {
      const top = [...texts].sort((one, other) => one.y - other.y || one.x - other.x)[0];
      expect(top?.text).toMatch(/^(EN|DE)\b/);
    }
  });

  test("has every pictogram on front and back, its side 10 mm or more", async () => {
    const { label, content, strip } = await read();
    const frames = label.faces
      .at(-1)
      ?.blocks.flatMap(({ marks = [] }) => marks)
      .flatMap((mark) => (mark.kind === "path" && "srgb" in mark.ink ? [mark] : []));
    expect(frames).toHaveLength(2 * content.pictograms.length);
    for (const { scale } of frames ?? [])
      expect((98 * scale) / Math.SQRT2).toBeGreaterThanOrEqual(10 - 1e-9);
    const along = (mark: { readonly xMm: number; readonly yMm: number }): number =>
      strip.runs === "across" ? mark.xMm : mark.yMm;
    expect(frames?.filter((mark) => along(mark) < (strip.foldsMm[0] ?? 0))).toHaveLength(
      content.pictograms.length,
    );
  });

  test("keeps text off its cuts and folds, and says outside them what is folded how", async () => {
    const { pages, strip, outside, cornerMm, paperMm } = await read();
    const across = strip.runs === "across";
    const edges = across ? [0, ...strip.foldsMm, strip.widthMm - 3] : [0, strip.widthMm];
    for (const { x, width, text } of pages.flat()) {
      const from = edges.filter((edge) => edge <= x).at(-1) ?? 0;
      const to = edges.find((edge) => edge > x) ?? 0;
      // Of a tube's last page, the fold lies over its middle.
      expect(x - from, text).toBeGreaterThanOrEqual(1.9);
      expect(to - (x + width), text).toBeGreaterThanOrEqual(1.8);
    }
    // In turn, the print of the front page outwards: the first fold is bent backwards.
    const folds = strip.foldsMm.map((_, i) => (i % 2 === 0 ? "fold back" : "fold over"));
    const said = outside.map(({ text }) => text.trim());
    for (const { x, width, text } of outside) {
      expect(x + cornerMm, text).toBeGreaterThan(4);
      expect(x + width + cornerMm, text).toBeLessThan(paperMm - 4);
    }
    if (across) {
      expect(said[0]).toBe("front page");
      expect(said).toContain("back page: stick down");
      const found = outside
        .filter(({ text }) => /^fold /.test(text.trim()))
        .sort((one, other) => one.x - other.x)
        .map(({ text }) => text.trim());
      expect(found).toEqual(folds);
      return;
    }
    // Beside strips that run down there is room for numbers alone, which a line above tells.
    const last = strip.foldsMm.length + 1;
    const inside = folds.slice(1).flatMap((fold, i) => [`page ${i + 2}`, fold]);
    expect(said[0]).toBe(
      ["1 front page", folds[0], ...inside, `${last} back page: stick down`].join(" \u00b7 "),
    );
    expect(said.slice(1)).toEqual(Array.from({ length: last }, (_, i) => String(i + 1)));
  });
});

describe("of four languages on a tube of 40 ml", () => {
  const size = sized({ languages: ["en", "fr", "de", "es"] });

  test("one that goes on over to a further page has its code said again there", async () => {
    const { pages } = await folded("zinc-white", size);
    const inside = pages.slice(1, -1).filter((texts) => texts.length > 0);
    const codes = inside.flatMap((texts) =>
      texts.flatMap(({ text, x }) =>
        /^(EN|FR|DE|ES)\b/.test(text) ? [`${text.slice(0, 2)} ${Math.floor(x / 20)}`] : [],
      ),
    );
    expect(codes.length).toBeGreaterThan(4);
    expect(new Set(codes.map((code) => code.slice(0, 2)))).toEqual(
      new Set(["EN", "FR", "DE", "ES"]),
    );
    for (const texts of inside) {
      const top = [...texts].sort((one, other) => one.y - other.y || one.x - other.x)[0];
      expect(top?.text).toMatch(/^(EN|FR|DE|ES)\b/);
    }
  });
});

/** What a reader turns to is one language whole. Source: practice. */
test.each(["bone-black", "cadmium-red", "cobalt-blue"])(
  "%s in four languages on a low tube of 40 ml has each of them whole on one page, and no page blank",
  async (slug) => {
    const size = sized({ heightMm: 70, languages: ["en", "fr", "de", "es"] });
    const { pages } = await folded(slug, size);
    const inside = pages.slice(1, -1).map((texts) => textOf(texts));
    const heads = inside.map((text) =>
      (["EN", "FR", "DE", "ES"] as const).filter((code) => text.includes(`${code}${nameOf(slug)}`)),
    );
    expect(heads.flat()).toEqual(["EN", "FR", "DE", "ES"]);
    for (const languages of heads) expect(languages.length).toBeGreaterThan(0);
  },
);

test("a jar's label in four languages has its inside in two columns where one does not hold it", async () => {
  const size = sized({
    kind: "jar",
    ml: 120,
    widthMm: 92,
    heightMm: 64,
    languages: ["en", "fr", "de", "es"],
  });
  const { pages, strip } = await folded("bone-black", size);
  expect(strip.foldsMm).toHaveLength(2);
  const edges = (pages[1] ?? []).flatMap(({ x, text }) =>
    /^(EN|FR|DE|ES)\b/.test(text) ? [Math.round(x)] : [],
  );
  expect(edges).toEqual([2, 2, 47, 47]);
});

describe("which labels are folded", () => {
  const languages: PackageLabelRecord["languages"] = ["en", "de"];

  test("is told of a label without room that its record does not have folded", () => {
    const size = sized({ ml: 60, languages, symbol: "ean", foldOut: false });
    const { refusals, runs, noRoom } = rangeLabels([textsOf("lead-white")], [size], CONTEXT);
    expect(runs).toEqual([]);
    expect(noRoom).toEqual([{ size: size.name, colour: "Lead White", foldOutPages: 5 }]);
    expect(refusals[0]).toContain(
      "With foldOut: true of this label in workshop.yaml it is printed as a fold-out label of 5 pages",
    );
  });

  test("is said of each that is, and whom to ask", () => {
    const size = sized({ ml: 60, languages, symbol: "ean" });
    const { refusals, remarks } = rangeLabels([textsOf("lead-white")], [size], CONTEXT);
    expect(refusals).toEqual([]);
    expect(remarks.join("\n")).toMatch(
      /^Lead White, tried: as a fold-out label of 5 pages .* the authority of the country of sale/m,
    );
  });

  test("is proposed by check, once for each size, at its entry", () => {
    const labels: PackageLabelRecord[] = [
      { name: "wide", kind: "tube", ml: 60, widthMm: 120, heightMm: 160, languages: ["en"] },
      { name: "tried", kind: "tube", ml: 60, languages },
    ];
    const context = {
      ...CONTEXT,
      sheets: [textsOf("lead-white"), textsOf("bone-black")],
      records: { ...CONTEXT.records, workshop: { ...CONTEXT.records.workshop, labels } },
    };
    const notes = labelNotes({ context, steps: context.steps });
    expect(notes.map(({ severity, message, hint }) => [severity, message, hint])).toEqual([
      [
        "note",
        "The label tried (60 ml) has no room for Lead White",
        "with foldOut: true it would be printed as a fold-out label of 5 pages; npm run labels says what else would hold it",
      ],
    ]);
  });

  test("what finds room on one page stays there", () => {
    const size = sized({ languages: ["en"] });
    const label = packageLabel(labelContentOf("bone-black", size), size);
    expect(label && foldOutPages(label)).toBe(0);
  });

  test("one that no strip on the paper holds is refused all the same", () => {
    const size = sized({ ml: 60, heightMm: 60, languages: ["en", "fr", "de", "es"] });
    const { refusals, noRoom } = rangeLabels([textsOf("lead-white")], [size], CONTEXT);
    expect(refusals[0]).toContain("A fold-out label on A4 does not hold it either");
    expect(noRoom).toEqual([{ size: size.name, colour: "Lead White", foldOutPages: 0 }]);
  });
});
