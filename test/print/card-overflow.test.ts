import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { statementText } from "../../lib/hazard/texts/statement-texts.ts";
import { KNOWLEDGE } from "../hazard/knowledge.ts";
import { CARD_FACTS, type CardContent } from "../../lib/print/card-content.ts";
import { CardTooLarge } from "../../lib/print/card-fault.ts";
import { cardLayout, type LaidCard } from "../../lib/print/card-layout.ts";
import type { CardSize } from "../../lib/print/card-size.ts";
import { marksOf, MM_PER_PT, type Tagged, type TextMark } from "../../lib/print/mark.ts";
import { measureText } from "../../lib/print/print-document.ts";
import { FACE_HEIGHTS } from "../../lib/print/print-font.ts";
import { qrMatrix } from "../../lib/print/qr-figure.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import type { Language } from "../../lib/quantities/languages.ts";
import { solid } from "../support/read-pdf.ts";
import { SIZES } from "./demonstration-cards.ts";

const STATEMENTS = ["H302", "H317", "H334", "H360D", "H373", "H410"];
const PRECAUTIONS = ["P201", "P261", "P273", "P280", "P308+P313", "P501"];

interface Load {
  readonly name: string;
  readonly pigments: number;
  readonly statements: number;
  readonly pictograms: number;
  readonly languages: readonly Language[];
  readonly sizes: number;
}
const HEAVIEST: Load = {
  name: "Transparent Quinacridone Ultramarine and Viridian Shadow Grey",
  pigments: 4,
  statements: 6,
  pictograms: 4,
  languages: ["en", "fr", "de", "es"],
  sizes: 4,
};

function content({ name, pigments, statements, pictograms, languages, sizes }: Load): CardContent {
  const statement = (code: string): CardContent["label"]["statements"][number] => ({
    code,
    texts: languages
      .map((language) => statementText(KNOWLEDGE.texts, code, language))
      .filter(({ translationMissing }, i) => i === 0 || !translationMissing)
      .map(({ language, text }) => ({ language, text })),
  });
  const colour = { hex: "#445566", lab: { L: 30, a: 5, b: -10 } };
  const names = [
    "Quinacridone magenta (PR\u00a0122)",
    "sodium aluminium sulphosilicate (PB\u00a029)",
    "hydrated chromium oxide (PG\u00a018)",
    "furnace black (PBk\u00a07)",
  ].slice(0, pigments);
  return {
    slug: "heavy",
    name,
    madeOf: `${names.join(", ")}, milled in cold-pressed linseed oil`,
    indexNames: "PR\u00a0122, PB\u00a029, PG\u00a018, PBk\u00a07",
    masstone: colour,
    tints: [
      { colour, caption: "Titanium-zinc white, middle", white: "Titanium-zinc" },
      { colour, caption: "Lead white, middle", white: "Lead" },
      { colour, caption: "Zinc white, middle", white: "Zinc" },
    ],
    sentence: "Keeps its chroma and turns towards green in titanium white.",
    facts: Object.fromEntries(
      CARD_FACTS.map((fact) => [
        fact,
        {
          name: "Strength",
          text: "Very slowly, 14\u201331 days, estimated",
        },
      ]),
    ) as unknown as CardContent["facts"],
    label: {
      signalWords: ["Danger", "Gefahr", "Peligro"],
      pictograms: (["GHS07", "GHS08", "GHS09", "GHS05"] as const)
        .slice(0, pictograms)
        .map((code) => ({ code, name: code })),
      statements: STATEMENTS.slice(0, statements).map(statement),
      precautions: PRECAUTIONS.slice(0, statements).map(statement),
      overleaf: ENGLISH.pages.cards.overleaf,
      basis: "Label by EU CLP.",
    },
    rags: {
      full: ENGLISH.pages.ragLine,
      lead: ENGLISH.pages.cards.ragLead,
      short: ENGLISH.pages.cards.ragShort,
    },
    sizes: Array.from({ length: sizes }, (_, i) => ({
      text: `${40 * (i + 1)}\u00a0ml \u00a3${8 * (i + 1)}.00`,
      size: `${40 * (i + 1)}\u00a0ml`,
      price: `\u00a3${8 * (i + 1)}.00`,
    })),
    address: "https://saltreach.example/colours/heavy/",
    poisonCentre: "If it is swallowed or breathed in: the poison centre, 020 7946 0123",
    deference: ENGLISH.pages.cautionLine,
    drawdownNote: ENGLISH.pages.cards.drawdown,
    imprint: ["Saltreach Colourworks"],
  };
}

const ADDRESS_CODE = qrMatrix("https://saltreach.example/colours/heavy/");
const laid = (load: Load, size: CardSize): LaidCard =>
  cardLayout({
    content: content(load),
    revision: "0123abcd",
    qr: ADDRESS_CODE,
    size,
    words: ENGLISH,
  });

interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly what: string;
}

function textArea({ text, xMm, yMm, face, sizePt }: TextMark): Area {
  const { ascender, descender } = FACE_HEIGHTS[face];
  return {
    left: xMm,
    right: xMm + measureText(text, face, sizePt),
    top: yMm - ascender * sizePt * MM_PER_PT,
    bottom: yMm + descender * sizePt * MM_PER_PT,
    what: text,
  };
}

/** Texts, swatches, pictograms (as the diamonds that they are, by their middle half) and the code; the paint and its band are the ground of what stands on them. */
function areas(elements: readonly Tagged[]): Area[] {
  return elements.flatMap(({ tag, alt, marks = [], children = [] }): Area[] => {
    if (tag === "Artifact" || alt === ENGLISH.pages.cards.masstone) return [];
    if (tag !== "Figure")
      return [
        ...marks.flatMap((mark) => (mark.kind === "text" ? [textArea(mark)] : [])),
        ...areas(children),
      ];
    const [first] = marks;
    const what = alt ?? "";
    if (first?.kind === "box")
      return [
        {
          left: first.xMm,
          right: first.xMm + first.widthMm,
          top: first.yMm,
          bottom: first.yMm + first.heightMm,
          what,
        },
      ];
    return first?.kind === "path"
      ? [
          {
            left: first.xMm + first.scale * 25,
            right: first.xMm + first.scale * 75,
            top: first.yMm + first.scale * 25,
            bottom: first.yMm + first.scale * 75,
            what,
          },
        ]
      : [];
  });
}

function overlaps(elements: readonly Tagged[]): string[] {
  const all = areas(elements);
  // Lines of type may touch: an ascender meets a descender without harm, so each gives way by a seventh of its height.
  const inside = ({ left, right, top, bottom, what }: Area): Area => ({
    left: left + 0.05,
    right: right - 0.05,
    top: top + (bottom - top) / 7,
    bottom: bottom - (bottom - top) / 7,
    what,
  });
  return all.flatMap((one, i) =>
    all.slice(i + 1).flatMap((other) => {
      const [a, b] = [inside(one), inside(other)];
      return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
        ? [`${a.what} / ${b.what}`]
        : [];
    }),
  );
}

describe.each(SIZES.map((size) => ({ name: size.name, size })))(
  "the heaviest card in $name",
  ({ size }) => {
    // A strip of this height has no room for so long a name, nor for four sizes: it says so, by name.
    const load =
      size.heightMm < 48
        ? {
            ...HEAVIEST,
            name: "Quinacridone Ultramarine Viridian",
            languages: ["en"] as const,
            sizes: 3,
          }
        : HEAVIEST;
    const card = laid(load, size);
    const faces = card.leaves.flatMap(({ front, back }) => [front, back]);
    const said = (elements: readonly Tagged[]): string =>
      solid(
        elements
          .flatMap(marksOf)
          .flatMap((mark) => (mark.kind === "text" ? [mark.text] : []))
          .join(" "),
      );

    test("overlaps nowhere and stays clear of the cut", () => {
      for (const face of faces) {
        expect(overlaps(face)).toEqual([]);
        for (const { left, right, top, bottom, what } of areas(face).filter(
          ({ what: said }) => !said.startsWith("QR"),
        ))
          expect(
            [left >= 2.5, right <= size.widthMm - 2.5, top >= 2, bottom <= size.heightMm - 2],
            what,
          ).toEqual([true, true, true, true]);
      }
    });

    const alts = ({ alt, children = [] }: Tagged): string[] => [
      ...(alt === undefined ? [] : [alt]),
      ...children.flatMap(alts),
    ];

    test("has name, symbols, signal word and rags on its front", () => {
      const [front = []] = faces;
      expect(said(front)).toContain(solid(load.name));
      expect(front.flatMap(alts).filter((alt) => alt.startsWith("GHS"))).toHaveLength(4);
      expect(said(front)).toContain("Danger");
      expect(said(front)).toMatch(/self-ignite|catchfire/);
    });

    test("has every statement in every language, the rags and the deference in full, cut short nowhere", () => {
      const text = said(faces.flat());
      for (const { texts } of [
        ...content(load).label.statements,
        ...content(load).label.precautions,
      ])
        for (const one of texts) expect(withoutHeads(text)).toContain(solid(one.text));
      for (const line of [ENGLISH.pages.ragLine, ENGLISH.pages.cautionLine])
        expect(withoutHeads(text)).toContain(solid(line));
      expect(text).not.toMatch(/\u2026|\.\.\./);
    });

    /** The head of a further leaf may stand inside a sentence that goes on over. */
    function withoutHeads(text: string): string {
      return text.replaceAll(solid(ENGLISH.pages.cards.continued(load.name)), "");
    }

    test("sets no statement under 7 point", () => {
      for (const mark of faces.slice(1).flat().flatMap(marksOf))
        if (mark.kind === "text" && /^[HP]\d|toxic|gloves|Gefahr/.test(mark.text))
          expect(mark.sizePt).toBeGreaterThanOrEqual(7);
    });
  },
);

test("no card of any load overlaps: it holds everything, or is refused by name", () => {
  const load = fc.record({
    name: fc.constantFrom(
      "Umber",
      "Lamp Black, milled",
      "Viridian-Quinacridone Black",
      HEAVIEST.name,
    ),
    pigments: fc.integer({ min: 1, max: 4 }),
    statements: fc.integer({ min: 0, max: 6 }),
    pictograms: fc.integer({ min: 0, max: 4 }),
    languages: fc.constantFrom<Load["languages"]>(["en"], ["de", "en"], HEAVIEST.languages),
    sizes: fc.integer({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(load, fc.constantFrom(...SIZES), fc.boolean(), (one, size, chip) => {
      try {
        for (const { front, back } of laid(one, { ...size, chip }).leaves)
          expect([...overlaps(front), ...overlaps(back)]).toEqual([]);
      } catch (error) {
        if (!(error instanceof CardTooLarge)) throw error;
        expect(error.message).toMatch(
          /^The card of heavy does not fit in \S+: its front has to hold /,
        );
      }
    }),
    { seed: 1, numRuns: 120 },
  );
});
