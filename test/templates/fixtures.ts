/**
 * Invented pages, typed by the views: enough of each kind to lay out and check
 * the templates without records. No figure here is anybody's reading.
 */
import type { HazardView, LabelView } from "../../lib/present/handling-views.ts";
import type { AnswerPageView } from "../../lib/answers/answer-pages.ts";
import type { CatalogueGridView, CatalogueTableView } from "../../lib/pages/catalogue-pages.ts";
import type { PigmentPageView } from "../../lib/pages/pigment-pages.ts";
import type { WhitesPageView } from "../../lib/pages/whites-page.ts";
import type { CardsPageView } from "../../lib/print/cards-page.ts";
import type { AnyPageView } from "../../lib/site/all-pages.ts";
import type { BatchSheetView } from "../../lib/workshop/batch-sheet-page.ts";
import type { ReplyView } from "../../lib/present/answer-views.ts";
import { pictogramSvg } from "../../lib/plots/pictogram.ts";
import {
  asMarkup,
  type CellView,
  type ColourCardView,
  type PropertyView,
  type SiteView,
  type StandingView,
  type TableView,
} from "../../lib/present/views.ts";
import type { StandingKind } from "../../lib/quantities/figure.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { blockPages, PHOTOGRAPH, type FixtureParts } from "./block-fixtures.ts";
import { cellSwatch, swatch, trail } from "./drawings.ts";

const known = (kind: StandingKind, restsOn?: string): StandingView => ({
  kind,
  word: kind,
  ...(restsOn === undefined ? {} : { restsOn }),
});
const NOT_STATED = { kind: "not stated", word: "not stated" } as const;

export function site(root: string, current?: string): SiteView {
  const link = (text: string, path: string) => ({
    text,
    href: `${root}${path}`,
    ...(text === current ? { current: true } : {}),
  });
  return {
    workshop: "Saltreach Colourworks",
    language: "en",
    ownTexts: new Map(),
    root,
    top: root,
    home: {
      text: "Saltreach Colourworks",
      href: `${root}index.html`,
      ...(current === "home" ? { current: true } : {}),
    },
    nav: [
      link("Colours", "colours/"),
      link("Pigments", "pigments/"),
      link("Answers", "answers/"),
      link("Methods", "methods/"),
    ],
    search: {
      text: "Find a colour",
      href: `${root}colours/`,
      nothing: "Nothing found.",
      count: "{count} found.",
      kinds: { pigment: "Pigment", answer: "Question", comparison: "Side by side" },
    },
    more: [link("Sources", "sources/"), link("About", "about/")],
    words: WORDS.en.pages.frame,
    demonstration: "Demonstration: this workshop, its colours and its readings are invented.",
    ragLine:
      "Oily rags can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can.",
    cautionLine:
      "The maker’s label and safety data sheet come first; so do local rules and licensed practice.",
    build: "Built from records of 3 November 2026, revision 3f2a91c0.",
    contact: "Saltreach Colourworks, an invented address",
    standings: [
      { ...known("measured"), gloss: "the workshop’s own reading" },
      { ...known("derived"), gloss: "worked out from other figures" },
      {
        ...known("estimated"),
        gloss: "from a rule, a handbook range or memory: a range or a class",
      },
      { ...known("stated"), gloss: "a supplier’s word" },
      { ...NOT_STATED, gloss: "nothing known, and what would be needed" },
    ],
    translations: [
      { text: "English", href: "./", language: "en", alternate: "./", current: true },
      { text: "Français", href: `${root}fr/`, language: "fr", alternate: `${root}fr/` },
    ],
  };
}

const PAGE = { title: "A page – Saltreach Colourworks", description: "An invented page." };

const card = (
  name: string,
  pigments: string,
  fill: string,
  tint: string,
  line: string,
  more: Partial<ColourCardView> = {},
): ColourCardView => ({
  name,
  href: "bone-black/",
  pigments,
  swatch: swatch(fill, `${name}, masstone and tint`, tint),
  line,
  ...more,
});

export const CARDS: readonly ColourCardView[] = [
  card("Bone black", "PBk 9", "#211f1e", "#77777a", "N 1.3/, a bluish tint"),
  card("Spinel black", "PBk 28", "#1d1e1f", "#77766f", "N 1.2/, a warm tint"),
  card("Lamp black", "PBk 6", "#1b1c1f", "#70757e", "N 1.1/, a blue tint"),
  card("Black iron oxide", "PBk 11", "#262425", "#7a7778", "N 1.6/, a neutral tint"),
  card(
    "Manganese black spinel, deep, from the lower quarry",
    "PBk 26, PBk 14",
    "#231f1c",
    "#7b746b",
    "5YR 1.4/0.4",
    { signalWord: "Warning" },
  ),
  { name: "Vine black", href: "vine-black/", pigments: "PBk 8", noSwatch: "No reading yet" },
];

const EARTHS: readonly ColourCardView[] = [
  card("Yellow ochre", "PY 43", "#b57f35", "#d9bd8d", "9YR 5.7/6.4"),
  card("Raw sienna", "PBr 7", "#8a5a2b", "#c6a27c", "6YR 4.3/5.6"),
  card("Burnt sienna", "PBr 7", "#5d2c1a", "#b5836f", "1YR 2.5/4.2"),
  card("Raw umber", "PBr 7", "#3d3226", "#99907f", "10YR 2.2/1.6", { signalWord: "Warning" }),
  card("Venetian red", "PR 102", "#83301f", "#c98670", "9R 3.2/7.0"),
];

const BLUES: readonly ColourCardView[] = [
  card("Ultramarine", "PB 29", "#1a1b6e", "#6d78bd", "7.5PB 1.6/9.5"),
  card("Cobalt blue", "PB 28", "#0d3b91", "#6f93ca", "5PB 2.9/10"),
  card("Phthalocyanine blue", "PB 15:3", "#12183a", "#4f8bb9", "5PB 1.2/3"),
];

const BAND: HazardView = {
  signalWord: "Danger",
  pictograms: (
    [
      ["GHS08", "Health hazard"],
      ["GHS07", "Exclamation mark"],
      ["GHS09", "Environment"],
    ] as const
  ).map(([code, name]) => ({ code, name, svg: asMarkup(pictogramSvg(code)) })),
  statements: [
    { code: "H302", text: "Harmful if swallowed." },
    { code: "H360Df", text: "May damage the unborn child. Suspected of damaging fertility." },
    { code: "H373", text: "May cause damage to organs through prolonged or repeated exposure." },
    { code: "H410", text: "Very toxic to aquatic life with long lasting effects." },
  ],
  basis: "Worked out from the pigment’s data under EU CLP. The maker’s label prevails.",
};
const HAZARD: HazardView = { ...BAND, handlingHref: "#handling" };

const LABEL_BLOCK: LabelView = {
  heading: "Label elements, worked out",
  remarks: [],
  hazard: BAND,
  classification: "Classified as Acute Tox. 4, Repr. 1A, STOT RE 2, Aquatic Chronic 1.",
  precautionaryHeading: "Precautions",
  precautionary: [
    { code: "P201", text: "Obtain special instructions before use." },
    { code: "P280", text: "Wear protective gloves." },
  ],
  languages: {
    summary: "The same in German",
    note: "Review before it goes on a label.",
    list: [
      {
        language: "de",
        name: "Deutsch",
        signalWord: "Gefahr",
        statements: [
          { code: "H302", text: "Gesundheitsschädlich bei Verschlucken." },
          {
            code: "P201",
            text: "Obtain special instructions before use.",
            language: "en",
            remark: "translation to be reviewed",
          },
        ],
      },
    ],
  },
  traces: {
    summary: "Why each statement stands here",
    leftOutHeading: "What suppliers state and this label does not carry",
    list: [
      {
        statement: "H360Df",
        text: "Basic lead carbonate, 88 % of the paint, against a limit of 0.3 %.",
        sources: [{ text: "CLP Table 3.7.2", href: "../../sources/#source-clp" }],
      },
    ],
    leftOut: [{ statement: "H332", text: "No dust comes out of a paste.", sources: [] }],
  },
};
const row = (
  name: string,
  value: string,
  unit: string | undefined,
  standing: StandingView,
  more: Partial<PropertyView> = {},
): PropertyView => ({ name, value, standing, ...(unit === undefined ? {} : { unit }), ...more });

const STEPS: TableView = {
  caption: "Bone black in titanium white, by mass of paint",
  compact: true,
  columns: [
    { head: "Colour : white" },
    { head: "L*", numeric: true },
    { head: "a*", numeric: true },
    { head: "b*", numeric: true },
    { head: "Munsell" },
    { head: "±", unit: "ΔE00", numeric: true },
  ],
  rows: [
    ["1:1", "34.2", "−0.3", "−4.1", "5PB 3.3/0.9", "–"],
    ["1:2", "41.0", "−0.5", "−4.9", "5PB 4.0/1.1", "1.3"],
    ["1:5", "50.6", "−0.7", "−5.8", "4PB 4.9/1.3", "–"],
    ["1:20", "66.8", "−0.9", "−5.2", "3PB 6.6/1.2", "1.6"],
    ["1:50", "77.3", "−0.9", "−3.9", "2PB 7.6/0.9", "–"],
  ].map((cells) =>
    cells.map((text, i): CellView =>
      i === 0 ? { text, standing: known(cells.at(-1) === "–" ? "measured" : "derived") } : { text },
    ),
  ),
  note: "Delta-E00 at about 68 %. L* a* b* under D65, 10° observer, 45/0.",
};

const ORDERS = (current: string) =>
  ["Swatches by family", "By family", "By value", "By hue", "By drying", "By permanence"].map(
    (text) => ({ text, href: "./", ...(text === current ? { current: true } : {}) }),
  );

export const GRID: CatalogueGridView = {
  ...PAGE,
  kind: "catalogue-grid",
  heading: "Colours",
  lead: ["Every colour with its masstone above and its tint at L* 50 in titanium white below."],
  compare: { text: "Set two to four of them side by side", href: "../compare/" },
  filters: {
    label: "Narrow the range",
    families: "Only",
    heading: "that",
    choices: [{ tag: "fast", text: "dry fast" }],
    found: "{count} of {all} colours",
    nothing: "No colour is all of that.",
  },
  orders: ORDERS("Swatches by family"),
  parts: [
    { text: "1", href: "./", current: true },
    { text: "2", href: "2/" },
  ],
  contents: [{ text: "Blacks", href: "./#black" }],
  families: [
    { id: "black", heading: "Blacks", count: "6 colours", colours: CARDS },
    { id: "earth", heading: "Earths", count: "5 colours", colours: EARTHS },
    { id: "blue", heading: "Blues", count: "3 colours", colours: BLUES },
  ],
  downloads: [
    { text: "catalogue.csv", href: "../catalogue.csv", note: "14 kB: one line a colour" },
  ],
};

const CATALOGUE_COLUMNS = [
  { head: "Colour" },
  { head: "Pigments" },
  { head: "Munsell" },
  { head: "Value", numeric: true },
  { head: "Lightfastness" },
  { head: "Opacity" },
  { head: "Drying" },
  { head: "Oil", unit: "g/100 g", numeric: true },
];
const catalogueRow = (
  name: string,
  pigments: string,
  fill: string,
  munsell: string,
  value: string,
  oil: string,
): readonly CellView[] => [
  { text: name, href: "../bone-black/", swatch: cellSwatch(fill) },
  { text: pigments },
  { text: munsell },
  { text: value },
  { text: "excellent", standing: known("estimated") },
  { text: "semi-opaque", standing: known("measured") },
  { text: "slow", standing: known("estimated") },
  oil === "–" ? { text: "–", reason: "needs a rub-out" } : { text: oil, standing: known("stated") },
];

export const CATALOGUE_TABLE: CatalogueTableView = {
  ...PAGE,
  kind: "catalogue-table",
  contents: [],
  heading: "Colours by value",
  lead: ["From the darkest masstone to the lightest."],
  orders: ORDERS("By value"),
  parts: [
    { text: "1", href: "./", current: true },
    { text: "2", href: "2/" },
  ],
  groups: [
    {
      id: "all",
      heading: "Value 1 to 2",
      table: {
        caption: "Colours of value 1 to 2",
        columns: CATALOGUE_COLUMNS,
        rows: [
          catalogueRow("Lamp black", "PBk 6", "#1b1c1f", "N 1.1/", "1.1", "120"),
          catalogueRow("Bone black", "PBk 9", "#211f1e", "N 1.3/", "1.3", "92"),
          catalogueRow(
            "Manganese black spinel, deep",
            "PBk 26, PBk 14",
            "#231f1c",
            "5YR 1.4/0.4",
            "1.4",
            "–",
          ),
          catalogueRow("Ultramarine", "PB 29", "#1a1b6e", "7.5PB 1.6/9.5", "1.6", "41"),
        ],
      },
    },
    {
      id: "rest",
      heading: "Value 2 to 6",
      table: {
        caption: "Colours of value 2 to 6",
        columns: CATALOGUE_COLUMNS,
        rows: [
          catalogueRow("Burnt sienna", "PBr 7", "#5d2c1a", "1YR 2.5/4.2", "2.5", "110"),
          catalogueRow("Yellow ochre", "PY 43", "#b57f35", "9YR 5.7/6.4", "5.7", "60"),
        ],
      },
    },
  ],
  downloads: [],
};

export const PIGMENT: PigmentPageView = {
  ...PAGE,
  kind: "pigment",
  heading: "Bone black",
  name: "Bone black",
  colourIndexName: "PBk 9",
  whatItIs: ["Charred bone, washed and ground: a little carbon on much calcium phosphate."],
  properties: {
    caption: "The dry pigment",
    rows: [
      row("Density", "2.29", "g/cm³", known("stated")),
      row("Oil absorption", "40–60", "g/100 g", known("estimated")),
      { name: "Particle size", standing: NOT_STATED, reason: "Needs a sizing." },
    ],
  },
  photographs: { heading: "Pictures", list: [PHOTOGRAPH] },
  handlingHeading: "Handling the dry pigment",
  label: { ...LABEL_BLOCK, heading: "Bone black, dry" },
  cautionsHeading: "Weighing and mulling",
  cautions: [{ sentences: ["Weigh it under captured exhaust."], reason: "A light powder." }],
  handling: ["A fine dust: keep it out of the air."],
  colours: CARDS.slice(0, 2),
};

const REPLY: ReplyView = {
  heading: "A reply to send",
  words: WORDS.en.pages.answers.reply,
  text: "Thank you for asking.\n\nIt is the white.",
  rows: 4,
  question: "Why?",
  material: `{"thanks":"Thank you for asking."}`,
  colours: [
    { value: "bone-black", text: "Bone black", chosen: true },
    { value: "lamp-black", text: "Lamp black", chosen: false },
  ],
  figures: [{ value: "drying.class", text: "Drying", chosen: true }],
};
export const ANSWER: AnswerPageView = {
  ...PAGE,
  kind: "answer",
  heading: "Why is my black blue in one white and brown in another?",
  summary: {
    body: asMarkup(
      "Because the white scatters blue light more than red, and the black takes away what is left.",
    ),
  },
  blocks: [
    {
      kind: "prose",
      body: asMarkup(
        "<p>A grey is what a black leaves of a white’s light. <strong>At equal lightness</strong> the difference is the white’s.</p><h2>What to do</h2><p>Choose the white first, and <em>then</em> the black.</p><ul><li>Titanium white: bluer.</li><li>Lead white: warmer.</li></ul>",
      ),
    },
    { kind: "plots", plots: [trail("answer-trail", "Two ladders part")] },
    { kind: "table", table: STEPS },
  ],
  claims: {
    heading: "What this answer rests on",
    table: {
      caption: "Statements",
      columns: [{ head: "Statement" }, { head: "Today" }, { head: "Records to" }],
      rows: [
        [
          { text: "Bone black: b* in titanium white at L* 50 is below −3" },
          { text: "−5.8", standing: known("derived") },
          { text: "3 November 2026", note: "does not hold today" },
        ],
      ],
    },
  },
  coloursHeading: "Colours named",
  colours: [
    { name: "Bone black", href: "../../colours/bone-black/", colours: [{ hex: "#211f1e" }] },
    { name: "Vine black", href: "../../colours/vine-black/", colours: [], missing: "not read yet" },
  ],
  revision: "Checked against the records of 3 November 2026.",
  all: { text: "All answers", href: "../" },
};

const IN_THE_WHITES: WhitesPageView = {
  ...PAGE,
  kind: "in-the-whites",
  heading: "Blacks and greys in the whites",
  lead: ["White by white."],
  orders: [
    { text: "By hue", href: "../hue/" },
    { text: "In the whites", href: "./", current: true },
  ],
  parts: [
    { text: "1", href: "./", current: true },
    { text: "2", href: "2/" },
  ],
  sections: [
    {
      kind: "section",
      id: "titanium-white",
      heading: "In titanium white",
      blocks: [{ kind: "statement", role: "body", text: "Bone black goes blue." }],
    },
  ],
};

const SHELF_CARDS: CardsPageView = {
  ...PAGE,
  kind: "cards",
  heading: "Shelf cards",
  lead: ["As they will print."],
  sizesLabel: "Sizes",
  sizes: [{ text: "A7", href: "../a7/" }],
  parts: [
    { text: "1", href: "./", current: true },
    { text: "2", href: "2/" },
  ],
  cards: [
    {
      id: "bone-black",
      name: "Bone black",
      href: "../colours/bone-black/",
      faces: [asMarkup(`<svg role="img" aria-label="Bone black"></svg>`)],
    },
  ],
  withoutHeading: "Without a card",
  colon: ": ",
  without: [{ name: "Spinel black", href: "../colours/spinel-black/", reason: "no price" }],
  downloads: [{ text: "Cards as PDF", href: "../cards.pdf", note: "2 pages" }],
};

const BATCH_SHEET: BatchSheetView = {
  ...PAGE,
  kind: "batch-sheet",
  heading: "A batch of bone black",
  back: { text: "Bone black", href: "../" },
  sheet: {
    reckoner: {
      plan: "{}",
      amountValue: "500",
      units: [{ value: "pigmentG", text: "g of pigment" }],
    },
    words: WORDS.en.pages.lots.batchSheet,
    rows: [{ name: "Bone black", figure: "pigment-0", planned: "500.0" }],
    comesOut: "320 to 350 ml come out",
    remarks: ["A tenth is lost."],
    order: ["Oil first, a tenth held back."],
    cautionsHeading: "Cautions",
    cautions: ["Do not breathe the dust."],
    fields: [{ name: "Lot", value: "BB-2611" }, { name: "Name" }],
  },
};

/** What pages of blocks are filled with. */
export const BLOCK_PARTS: FixtureParts = {
  label: LABEL_BLOCK,
  hazard: HAZARD,
  card: card("Lamp black", "PBk 6", "#1b1c1f", "#77777a", "N 1.1/"),
  drawing: trail("trail", "Where each white takes it"),
  reply: REPLY,
};

/** Pages with what the demonstration has not, and how deep below the root they stand. */
export const PAGES: readonly {
  readonly name: string;
  readonly root: string;
  readonly current?: string;
  readonly view: AnyPageView;
}[] = [
  { name: "catalogue-grid", root: "../", current: "Colours", view: GRID },
  { name: "catalogue-table", root: "../../", current: "Colours", view: CATALOGUE_TABLE },
  ...blockPages(BLOCK_PARTS),
  { name: "pigment", root: "../../", view: PIGMENT },
  { name: "answer", root: "../../", view: ANSWER },
  { name: "in-the-whites", root: "../../", current: "Colours", view: IN_THE_WHITES },
  { name: "cards", root: "../", view: SHELF_CARDS },
  { name: "batch-sheet", root: "../../../", view: BATCH_SHEET },
];
