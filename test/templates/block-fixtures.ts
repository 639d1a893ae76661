/** Invented pages that are made of blocks: one block of each kind at least. No figure here is anybody's reading. */
import type { AnyPageView } from "../../lib/site/all-pages.ts";
import type { Block, SectionBlock } from "../../lib/blocks/block.ts";
import type { BenchView, WorkshopPageView, SheetView } from "../../lib/blocks/page-kinds.ts";
import type { ReplyView } from "../../lib/present/answer-views.ts";
import type { HazardView, LabelView } from "../../lib/present/handling-views.ts";
import {
  type ColourCardView,
  type PhotographView,
  type PictureView,
  asMarkup,
} from "../../lib/present/views.ts";
import { WORDS } from "../../lib/words/languages.ts";

const PAGE = { title: "A page – Saltreach Colourworks", description: "An invented page." };
const MEASURED = { kind: "measured", word: "measured" } as const;
const STATED = { kind: "stated", word: "stated" } as const;
const NOT_STATED = { kind: "not stated", word: "not stated" } as const;
const INK = { hex: "#211f1e", displayP3: "color(display-p3 0.13 0.12 0.12)" };
const GREY = { hex: "#73777e" };

export const PHOTOGRAPH: PhotographView = {
  alt: "A drawdown of bone black over the black and the white half of a chart.",
  language: "de",
  sources: [
    {
      type: "image/avif",
      srcset: "../../photographs/bone-black-480-p3.avif 480w",
      media: "(color-gamut: p3)",
    },
    { type: "image/webp", srcset: "../../photographs/bone-black-480.webp 480w" },
  ],
  src: "../../photographs/bone-black-480.jpg",
  srcset: "../../photographs/bone-black-480.jpg 480w",
  sizes: "100vw",
  widthPx: 480,
  heightPx: 320,
  caption: [{ text: "Drawdown." }, { text: "Fensterlicht.", language: "de" }],
  remarks: ["Not colour-corrected."],
  isLazy: false,
  paper: { widthPx: 480, heightPx: 320, hash: "00" },
};
const TERMS: Block = {
  kind: "terms",
  terms: [{ term: "Masstone", gloss: "the colour of the paint alone" }],
};
const KEY: Block = {
  kind: "key",
  heading: "How each figure is known",
  standings: [{ ...MEASURED, gloss: "read by an instrument" }],
};

export interface FixtureParts {
  readonly label: LabelView;
  readonly hazard: HazardView;
  readonly card: ColourCardView;
  readonly drawing: PictureView;
  readonly reply: ReplyView;
}

/** Every kind of block, so that each macro is drawn and tried with hostile text. */
export function everyBlock({
  label,
  card,
  drawing,
}: Omit<FixtureParts, "hazard" | "reply">): Block[] {
  return [
    {
      kind: "heading",
      level: 3,
      text: "Bone black",
      index: "PBk 9",
      href: "../../pigments/bone-black/",
    },
    { kind: "statement", role: "lead", text: "Slow: touch dry in 10 days.", standing: MEASURED },
    {
      kind: "statement",
      role: "body",
      text: "Reviewed.",
      quote: "as reviewed",
      link: { text: "Data sheet", href: "https://supplier.example/sds.pdf" },
    },
    { kind: "statement", role: "note", text: "In a room of 20 °C." },
    {
      kind: "figures",
      table: {
        caption: "Oil",
        rows: [{ name: "Oil index", value: "78", unit: "g/100 g", standing: MEASURED }],
      },
    },
    {
      kind: "table",
      table: {
        caption: "Batch",
        columns: [{ head: "What" }, { head: "Amount", numeric: true }],
        rows: [[{ text: "Oil, g" }, { text: "78" }]],
      },
    },
    {
      kind: "swatches",
      description: "Bone black in titanium white: pale, dark not reached.",
      rows: ["pale", "dark"],
      columns: [{ head: "Titanium White", cells: [{ colour: GREY }, { missing: "not reached" }] }],
    },
    {
      kind: "ladder",
      id: "in-titanium-white",
      name: "Titanium White",
      sentence: "Clearly blue in titanium white.",
      description: "Let-downs from strong to pale.",
      steps: [
        { label: "1:1", measured: true, colour: INK },
        { label: "1:20", measured: false, colour: GREY },
      ],
      remarks: ["One drawdown is doubtful."],
    },
    { kind: "plots", plots: [drawing] },
    {
      kind: "list",
      list: { heading: "Why", items: [{ text: "Carbon holds it back.", standing: STATED }] },
    },
    {
      kind: "lines",
      lines: [{ name: "Dries", sentences: [{ text: "Ten days.", standing: MEASURED }] }],
    },
    {
      kind: "fold",
      summary: "More",
      blocks: [{ kind: "statement", role: "body", text: "Inside." }],
    },
    { kind: "label", label },
    {
      kind: "cautions",
      operations: [
        {
          operation: "Cleaning up",
          cautions: [{ sentences: ["Wipe up wet."], reason: "Dust goes up again." }],
        },
        { operation: "Sanding", cautions: [{ sentences: ["Never sand the film dry."] }] },
      ],
    },
    { kind: "links", links: [{ text: "Beside lamp black", href: "../../compare/" }] },
    { kind: "cards", cards: [card] },
    {
      kind: "wall",
      form: "tints",
      tiles: [
        {
          name: "Bone Black",
          href: "../bone-black/",
          colours: [{ hex: "#211f1e" }],
          tints: [{ colour: { hex: "#4a4846" } }, { missing: "" }],
        },
        { name: "Vine Black", href: "../vine-black/", colours: [], missing: "not read" },
      ],
    },
    {
      kind: "entries",
      entries: [{ heading: "Two blacks", href: "../../compare/two/", text: "Why?", colours: [] }],
    },
    { kind: "photographs", photographs: [PHOTOGRAPH, { ...PHOTOGRAPH, isLazy: true }] },
    {
      kind: "board",
      caption: "Blacks in each white",
      heads: ["Colour", "Alone", "In words"],
      rows: [
        {
          name: "Bone Black",
          href: "../bone-black/",
          cells: [{ colour: { hex: "#211f1e" }, text: "N 0.4/" }],
          said: "Neutral.",
        },
      ],
    },
    TERMS,
    KEY,
    { kind: "prose", body: asMarkup("<p>Weak enough to steer a grey with.</p>") },
    {
      kind: "sources",
      entries: [{ id: "source-x", citation: "A text", standing: "read", usedBy: [] }],
    },
    {
      kind: "reckoner",
      reckoner: {
        words: WORDS.en.pages.paint.batch.any,
        recipe: `{"pigments":[]}`,
        sizes: [{ value: "pigmentG", text: "g of pigment" }],
        tubeMl: "40",
        rows: [{ name: "Oil, g", figure: "oilG" }],
      },
    },
    {
      kind: "group",
      id: "group",
      flow: "columns",
      blocks: [{ kind: "list", list: { heading: "Beside light", items: [{ text: "Acid." }] } }],
    },
  ];
}

const section = (id: string, heading: string, blocks: readonly Block[]): SectionBlock => ({
  kind: "section",
  id,
  heading,
  blocks,
});

export function sheet(parts: FixtureParts, more: Partial<SheetView> = {}): SheetView {
  return {
    ...PAGE,
    kind: "sheet",
    heading: "Bone black",
    name: "Bone black",
    canonical: "https://colours.example/colours/bone-black/",
    jsonLd: asMarkup(`{"@context":"https://schema.org","@type":"Product","name":"Bone black"}`),
    madeOf: [
      { text: "Bone black", href: "../../pigments/bone-black/" },
      { text: " (" },
      { text: "PBk 9", index: true },
      { text: "), mulled in cold-pressed linseed oil" },
    ],
    masstone: { colour: INK, caption: "alone" },
    tints: {
      kind: "swatches",
      description: "Bone black let down.",
      rows: ["pale"],
      columns: [{ head: "Titanium White", cells: [{ colour: GREY }] }],
    },
    sentence: "Clearly blue in titanium white.",
    offer: [{ text: "40 ml £8.00", size: "40 ml", price: "£8.00" }],
    actions: [{ text: "Compare", href: "../../compare/" }],
    facts: [
      {
        name: "Lasts",
        word: "Excellent",
        detail: "a supplier's word",
        standing: STATED,
        href: "#handling",
      },
      { name: "Opacity", word: "Opaque", standing: MEASURED },
      { name: "Strength", word: "–", detail: "not known yet", standing: NOT_STATED },
    ],
    asOf: "As of 3 November 2026.",
    contents: [{ text: "Safety", href: "#handling" }],
    sections: [
      section("whites", "Let it down", everyBlock(parts)),
      section("handling", "Safety", [{ kind: "label", label: parts.label }]),
    ],
    standingsFold: "What the marks mean",
    ...more,
  };
}

function bench(parts: FixtureParts): BenchView {
  return {
    ...PAGE,
    kind: "bench",
    heading: "Bone black at the bench",
    back: { text: "Bone black, for the painter", href: "../" },
    contents: [{ text: "Oil", href: "#oil" }],
    sections: [section("oil", "Oil", everyBlock(parts))],
    downloads: [{ text: "sheet.json", href: "../sheet.json", note: "every figure" }],
    revision: "Revision 3f2a91c0, from records of 3 November 2026",
  };
}

function workshop(parts: FixtureParts): WorkshopPageView {
  return {
    ...PAGE,
    kind: "workshop",
    heading: "Bone black in the workshop",
    back: { text: "The workshop", href: "../../" },
    lead: ["For the workshop alone."],
    contents: [{ text: "A batch", href: "#batch" }],
    sections: [section("batch", "A batch", everyBlock(parts))],
    reply: parts.reply,
    label: {
      id: "label",
      heading: "Label text",
      lead: "To copy.",
      text: "Bone black\nLot: ______",
      remark: "A small package may leave some of it out.",
    },
  };
}

function withoutTints(view: SheetView): SheetView {
  return Object.fromEntries(
    Object.entries(view).filter(([key]) => key !== "tints"),
  ) as unknown as SheetView;
}

export function blockPages(
  parts: FixtureParts,
): { readonly name: string; readonly root: string; readonly view: AnyPageView }[] {
  const bare = sheet(parts);
  return [
    { name: "sheet", root: "../../", view: sheet(parts) },
    { name: "sheet-hazardous", root: "../../", view: sheet(parts, { hazard: parts.hazard }) },
    {
      name: "sheet-bare",
      root: "../../",
      view: {
        ...withoutTints(bare),
        masstone: { missing: "No drawdown has been read yet.", caption: "alone" },
        offer: [],
        unknownHazard: "No hazard data recorded; treat as hazardous.",
        sections: [section("handling", "Safety", [])],
      },
    },
    { name: "bench", root: "../../../", view: bench(parts) },
    {
      name: "text",
      root: "../../../",
      view: {
        ...PAGE,
        kind: "text",
        heading: "Evidence for Bone black",
        back: { text: "Bone black at the bench", href: "../bench/" },
        lead: ["Every figure of this sheet."],
        opening: [KEY],
        contents: [
          { text: "Oil", href: "#oil" },
          { text: "Drying", href: "#drying" },
        ],
        sections: [
          section("oil", "Oil", everyBlock(parts)),
          section("drying", "Drying", [{ kind: "statement", role: "body", text: "Slow." }]),
        ],
        close: [TERMS],
        revision: "Revision 3f2a91c0, from records of 3 November 2026",
      },
    },
    {
      name: "text-bare",
      root: "../",
      view: {
        ...PAGE,
        kind: "text",
        heading: "No such page",
        lead: ["The colour may have been renamed."],
        opening: [{ kind: "links", links: [{ text: "All colours", href: "/colours/" }] }],
        contents: [],
        sections: [],
        close: [],
      },
    },
    { name: "workshop", root: "../../", view: workshop(parts) },
  ].map((page) => page as { name: string; root: string; view: AnyPageView });
}
