import * as jsqr from "jsqr";
import { beforeAll, describe, expect, test } from "vitest";
import { forbiddenWords } from "../support/known.ts";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { imposition } from "../../lib/print/imposition.ts";
import { headedPieces } from "../../lib/print/layout-tree.ts";
import { laidOutSheet } from "../../lib/print/sheet-paper.ts";
import { marksOf, type Tagged } from "../../lib/print/mark.ts";
import { completeCards } from "../../lib/print/range-cards.ts";
import { QR_QUIET_MODULES } from "../../lib/print/qr-figure.ts";
import {
  dictionaries,
  labFills,
  pageText,
  readPdf,
  solid,
  type FoundPdf,
} from "../support/read-pdf.ts";
import { CARDS, CONTEXT, laidIn, printedIn, SIZES } from "./demonstration-cards.ts";
import { PRINTS, printOf } from "./demonstration-prints.ts";
import { painted } from "./painted-modules.ts";

type Plain = {
  readonly notations: {
    readonly masstone?: {
      readonly lab: Record<string, { readonly L: number; readonly a: number; readonly b: number }>;
    };
  };
  readonly tints: readonly {
    readonly atL: Record<
      string,
      {
        readonly lab?: Record<
          string,
          { readonly L: number; readonly a: number; readonly b: number }
        >;
      }
    >;
  }[];
};
const decoded = (
  jsqr as unknown as {
    default: (
      data: Uint8ClampedArray,
      width: number,
      height: number,
    ) => { readonly data: string } | null;
  }
).default;
const MM = 72 / 25.4;
const FEW = [
  "bone-black",
  "burnt-sienna",
  "titanium-zinc-white",
  "perylene-black",
  "viridian-quinacridone-black",
  "slate-grey",
  "lamp-black",
  "green-earth",
  "zinc-white",
];

describe.each(SIZES.map((size) => ({ name: size.name, size })))("cards of $name", ({ size }) => {
  const { laid, faults } = laidIn(size, FEW);
  const pdf = printedIn(size, FEW);
  const layout = imposition(size);
  const leaves = laid.flatMap(({ slug, leaves: own }) => own.map((_, i) => ({ slug, leaf: i })));
  let found: FoundPdf;
  beforeAll(async () => {
    found = await readPdf(pdf.bytes);
  });

  test("are all there, on as many pages as their leaves take, each of the paper's size", () => {
    expect(faults).toEqual([]);
    expect(laid.map(({ slug }) => slug).sort()).toEqual([...FEW].sort());
    expect(found.pages.length).toBe(
      Math.ceil(leaves.length / layout.perSheet) * (size.twoSided ? 2 : 1),
    );
    for (const { widthPt, heightPt } of found.pages)
      expect([widthPt / MM, heightPt / MM].map(Math.round)).toEqual(
        [layout.paperMm.width, layout.paperMm.height].map(Math.round),
      );
  });

  test("have each its name at its place, within the safe area", () => {
    leaves.forEach(({ slug, leaf }, i) => {
      if (leaf > 0) return;
      const page = found.pages[Math.floor(i / layout.perSheet) * (size.twoSided ? 2 : 1)];
      const { xMm, yMm } = layout.place(i % layout.perSheet, "front");
      const within =
        page?.texts.filter(
          ({ x, y }) =>
            x >= xMm * MM &&
            x < (xMm + size.widthMm) * MM &&
            page.heightPt - y >= yMm * MM &&
            page.heightPt - y <= (yMm + size.heightMm) * MM,
        ) ?? [];
      const name = CARDS.cards.find((card) => card.slug === slug)?.name ?? "";
      expect(solid(within.map(({ text }) => text).join("")), slug).toContain(solid(name));
      for (const { x, width, text } of within)
        expect(x + width, text).toBeLessThanOrEqual((xMm + size.widthMm - 2.5) * MM);
    });
  });

  test("bear their sheet's Lab, to four decimals", () => {
    const fills = found.pages.flatMap(labFills);
    for (const {
      slug,
      worded: { plain },
    } of CARDS.cards.filter((card) => FEW.includes(card.slug))) {
      const values = plain.values as unknown as Plain;
      const own = values.notations.masstone?.lab["D50/2"];
      if (own !== undefined)
        expect(fills, slug).toContainEqual({
          L: expect.closeTo(own.L, 3) as number,
          a: expect.closeTo(own.a, 3) as number,
          b: expect.closeTo(own.b, 3) as number,
        });
      const at = values.tints
        .map(({ atL }) => atL["50"]?.lab?.["D50/2"])
        .filter((lab) => lab !== undefined)
        .slice(0, 3);
      if (at.length > 1)
        for (const lab of at)
          expect(fills, slug).toContainEqual({
            L: expect.closeTo(lab.L, 3) as number,
            a: expect.closeTo(lab.a, 3) as number,
            b: expect.closeTo(lab.b, 3) as number,
          });
    }
  });

  test("say what the sheet says: label in full, rags, poison centre, deference", () => {
    const text = solid(found.pages.map(pageText).join(" "));
    for (const {
      worded: { sheet },
      revision,
    } of CARDS.cards.filter(({ slug }) => FEW.includes(slug))) {
      expect(text).toContain(solid(sheet.name));
      expect(text).toContain(revision);
      for (const { colourIndexName } of sheet.pigments)
        expect(text).toContain(solid(colourIndexName ?? ""));
      for (const code of [
        ...sheet.cautions.hazardStatements,
        ...sheet.cautions.precautionaryStatements,
      ])
        expect(text, `${sheet.slug} ${code}`).toContain(
          solid(sheet.cautions.texts[code]?.en ?? code),
        );
      if (sheet.cautions.signalWord !== null) expect(text).toContain(sheet.cautions.signalWord);
    }
    expect(text).toContain(
      solid(
        "Hazards: from our suppliers\u2019 papers. The label, the safety data sheet, your local rules and licensed practice come first.",
      ),
    );
    expect(text).toContain(solid(CONTEXT.words.pages.ragLine));
    expect(text).toContain(solid("020 7946 0123"));
    expect(text).not.toContain("\u2026");
    expect(forbiddenWords(found.pages.map(pageText).join(" "), "en")).toEqual([]);
  });

  test("set no caution under 7 point, and nothing under 6.5", () => {
    const cautions = laid
      .flatMap(({ leaves: own }) => own.flatMap(({ back }) => back))
      .flatMap(marksOf)
      .filter(
        (mark) =>
          mark.kind === "text" &&
          /rags|swallowed|suppliers' data|May |Very toxic|^[HP]\d{3}/i.test(mark.text) &&
          !/^Label by|As the maker/.test(mark.text),
      );
    expect(cautions.length).toBeGreaterThan(FEW.length);
    for (const mark of cautions)
      if (mark.kind === "text") expect(mark.sizePt, mark.text).toBeGreaterThanOrEqual(7);
    for (const { texts } of found.pages)
      for (const { sizePt, text } of texts) expect(sizePt, text).toBeGreaterThan(6.49);
  });

  test("lead to their sheets: another reader finds the address in the modules", () => {
    for (const {
      slug,
      leaves: [leaf],
    } of laid) {
      const qr = leaf?.front.find(({ alt }) => alt?.startsWith("QR code") === true);
      const path = qr?.marks?.find(({ kind }) => kind === "path");
      const box = qr?.marks?.find(({ kind }) => kind === "box");
      if (path?.kind !== "path" || box?.kind !== "box")
        throw new Error(`Unexpected card of ${slug} without its code`);
      const modules = Math.round(box.widthMm / path.scale) - 2 * QR_QUIET_MODULES;
      const { data, side } = painted(path.d, modules, 4);
      expect(decoded(data, side, side)?.data).toBe(`https://saltreach.example/colours/${slug}/`);
      // Common practice, no source: a module below a quarter of a millimetre is lost on many telephones.
      expect(path.scale).toBeGreaterThan(0.25);
    }
  });

  test("embed their fonts, say their language and are the same twice", () => {
    expect(found).toMatchObject({
      isTagged: true,
      language: "en",
      title: `Saltreach Colourworks: shelf cards, ${size.name}`,
    });
    for (const descriptor of dictionaries(pdf.bytes, "FontDescriptor"))
      expect(descriptor).toMatch(/\/FontFile2 \d+ 0 R/);
    expect(Buffer.compare(printedIn(size, FEW).bytes, pdf.bytes)).toBe(0);
  });
});

test("a colour that is sold on a legal basis alone gets no card", () => {
  expect(CARDS.without).toEqual([
    { slug: "lead-white", name: "Lead White", markets: ["EU", "GB"], notClassified: [] },
    {
      slug: "vine-black",
      name: "Vine Black",
      markets: [],
      notClassified: expect.arrayContaining(["Vine black"]) as unknown,
    },
  ]);
  expect(CARDS.cards.map(({ slug }) => slug)).not.toContain("lead-white");
  expect(CARDS.cards.length).toBe(CONTEXT.sheets.length - 2);
});

test("a card without a colour or a price is not among those that are printed, and says what it lacks", () => {
  const complete = completeCards(CARDS.cards);
  for (const { slug, lacks, worded } of CARDS.cards) {
    const { notations, offer } = worded.sheet;
    expect(lacks.includes("colour"), slug).toBe(notations.masstone?.srgb === undefined);
    expect(lacks.includes("price"), slug).toBe(
      offer?.sizes.some(({ price }) => price !== undefined) !== true,
    );
    expect(complete.some((card) => card.slug === slug)).toBe(lacks.length === 0);
  }
  expect(CARDS.cards.find(({ slug }) => slug === "slate-grey")?.lacks).toContain("colour");
});

describe("the front of a card of 90 x 55", () => {
  const [size] = SIZES;
  if (size === undefined) throw new Error("Unexpected workshop without sizes");
  const bone = laidIn(size, ["bone-black"]).laid[0]?.leaves[0]?.front ?? [];
  const marks = bone.flatMap(marksOf);

  test("gives the paint 40 % of its width, off three edges", () => {
    const paint = bone.find(({ alt }) => alt === CONTEXT.words.pages.cards.masstone)?.marks?.[0];
    if (paint?.kind !== "box") throw new Error("Unexpected card without its paint");
    expect(paint.xMm).toBe(-3);
    expect(paint.yMm).toBe(-3);
    expect(paint.xMm + paint.widthMm).toBeCloseTo(0.4 * 90, 6);
  });

  test("has its name in 18 to 20 point and its prices in 11 to 15", () => {
    const sizeOf = (text: string): number | undefined =>
      marks.flatMap((mark) =>
        mark.kind === "text" && mark.text.startsWith(text) ? [mark.sizePt] : [],
      )[0];
    expect(sizeOf("Bone Black")).toBeGreaterThanOrEqual(17);
    expect(sizeOf("Bone Black")).toBeLessThanOrEqual(20);
    for (const price of ["\u00a38.00", "\u00a318.00"]) {
      expect(sizeOf(price)).toBeGreaterThanOrEqual(11);
      expect(sizeOf(price)).toBeLessThanOrEqual(15);
    }
  });

  test("says beside each price what a litre costs: 8 / .040 and 18 / .120", () => {
    const text = marks.map((mark) => (mark.kind === "text" ? mark.text : "")).join("");
    expect(text).toContain("(\u00a3200.00/l)");
    expect(text).toContain("(\u00a3150.00/l)");
  });

  test("sets its tints side by side without a gap, each over the name of its white", () => {
    const tints = bone.flatMap(({ tag, alt, marks: own = [] }) =>
      tag === "Figure" && alt !== undefined && /White/.test(alt) && own[0]?.kind === "box"
        ? [own[0]]
        : [],
    );
    expect(tints.length).toBe(3);
    for (const [i, tint] of tints.entries())
      if (i > 0) {
        const before = tints[i - 1];
        expect(tint.xMm).toBeCloseTo((before?.xMm ?? 0) + (before?.widthMm ?? 0), 6);
      }
  });
});

/** A metal's line stands in full on the front, so that the back has room for what the front left to it. */
test("what a front says in full its back does not repeat, and what the front left out is there", () => {
  const [first] = SIZES;
  const textOf = (side: readonly Tagged[]): string =>
    side
      .flatMap(marksOf)
      .flatMap((mark) => (mark.kind === "text" ? [mark.text] : []))
      .join(" ");
  for (const slug of ["burnt-umber", "cadmium-red"]) {
    const [leaf] = (first === undefined ? [] : laidIn(first, [slug]).laid)[0]?.leaves ?? [];
    const [front, back] = [leaf?.front ?? [], leaf?.back ?? []].map(textOf);
    const metal = slug === "burnt-umber" ? /Contains manganese/ : /Contains cadmium/;
    expect(front, slug).toMatch(metal);
    expect(back, slug).not.toMatch(metal);
    for (const fact of ["Lasts", "Opacity", "Dries"])
      expect(
        [front, back].filter((side) => side?.includes(fact)),
        `${slug}, ${fact}`,
      ).toHaveLength(1);
    expect(back, slug).toContain("Layers: ");
  }
});

const textsIn = (element: Tagged): string[] =>
  marksOf(element).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

/** Pictogram, word and rags leave no room for more on a front of 38 mm. */
const WITHOUT_FACTS: Readonly<Record<string, readonly string[]>> = {
  strip: ["titanium-zinc-white"],
};

test.each(SIZES.map((size) => ({ name: size.name, size })))(
  "every front of $name says the same four facts in the same order",
  ({ name, size }) => {
    const { laid } = laidIn(size);
    expect(laid.length).toBeGreaterThan(30);
    const names = ["Lasts", "Opacity", "Dries", "Middle tone"];
    for (const { slug, leaves } of laid) {
      const texts = (leaves[0]?.front ?? [])
        .flatMap(textsIn)
        .map((text) => text.replaceAll("\u00a0", " ").trim());
      const said = names.filter((one) => texts.some((text) => text.includes(one)));
      expect(said, slug).toEqual(WITHOUT_FACTS[name]?.includes(slug) === true ? [] : names);
    }
  },
);

/** In German a back says more: 73 leaves were cut for 37 cards, half of them for two lines. */
test("few backs of a strip go on over to a second leaf, in the language with the longest words too", () => {
  const size = SIZES.find(({ name }) => name === "strip");
  if (size === undefined) throw new Error("no strip");
  for (const languages of [["en"], ["de"]] as const) {
    const { laid } = laidIn({ ...size, languages });
    expect(laid.flatMap(({ leaves }) => leaves).length).toBeLessThan(1.1 * laid.length);
  }
});

test("how strong a colour is beside the reference stands on the back of those of its kind alone", () => {
  const [, roomy] = SIZES;
  if (roomy === undefined) throw new Error("no second size of cards");
  const { laid } = laidIn(roomy);
  const said = (slug: string): boolean =>
    (laid.find((card) => card.slug === slug)?.leaves ?? []).some(({ back }) =>
      back.flatMap(textsIn).join(" ").includes("as strong as Lamp Black"),
    );
  expect(said("bone-black")).toBe(true);
  expect(said("spinel-black")).toBe(true);
  // The reference itself, and another hue.
  expect(said("lamp-black")).toBe(false);
  expect(said("cadmium-red")).toBe(false);
});

/** A picture is believed before the word beside it: a thick layer of chalk looks opaque. Source: practice. */
test("the same is said on its page and on its sheet, and of no other", () => {
  const said = PRINTS.sheets
    .filter(({ sheet }) => sheet.masstone.caption.startsWith("In a thick layer"))
    .map(({ slug }) => slug);
  expect(said.toSorted()).toEqual(["barytes-medium", "chalk-medium"]);
  for (const slug of [...said, "bone-black"]) {
    const { flow, placed } = laidOutSheet(printOf(slug), PAPER_SIZES.A4);
    const onFirst = headedPieces(flow)
      .filter(({ piece }) => placed.get(piece)?.page === 0)
      .flatMap(({ piece }) => textsIn(piece.content));
    expect(onFirst.join(" ").includes("In a thick layer"), slug).toBe(said.includes(slug));
  }
});

test("a swatch of what no coat hides with says that it is a thick layer, and no other does", () => {
  const [first] = SIZES;
  if (first === undefined) throw new Error("no size of cards");
  const { laid } = laidIn(first);
  const thick = laid
    .filter(({ leaves }) =>
      (leaves[0]?.front ?? []).flatMap(textsIn).join(" ").includes("In a thick layer"),
    )
    .map(({ slug }) => slug);
  expect(thick).toEqual(["barytes-medium", "chalk-medium"]);
});
