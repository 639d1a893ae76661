/**
 * Invented pages, typed by the views: enough of each kind to lay out and check
 * the templates without records. No figure here is anybody's reading.
 */
import type { HazardView, LabelView } from "../../lib/present/handling-views.ts";
import type { ComparePairView, CompareView } from "../../lib/present/comparison-types.ts";
import type { AnswerIndexView, AnswerPageView, ReplyView } from "../../lib/present/answer-views.ts";
import type {
  LabelPageView,
  LabelTextView,
  OilSectionView,
} from "../../lib/present/paint-views.ts";
import { pictogramSvg } from "../../lib/plots/pictogram.ts";
import { asMarkup } from "../../lib/present/views.ts";
import type {
  AboutView,
  AnyPageView,
  CatalogueGridView,
  CatalogueTableView,
  CellView,
  ColourCardView,
  HomeView,
  MethodsView,
  NotFoundView,
  PigmentIndexView,
  PigmentPageView,
  PropertyView,
  SectionView,
  SheetView,
  SiteView,
  SourcesView,
  StandingView,
  TableView,
} from "../../lib/present/views.ts";
import type { StandingKind } from "../../lib/quantities/figure.ts";
import { cellSwatch, curve, familyStrip, ladder, panel, place, swatch, trail } from "./drawings.ts";

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
    root,
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
      link("Sources", "sources/"),
      link("About", "about/"),
    ],
    words: {
      skip: "Skip to the text",
      mainNavigation: "Site",
      onThisPage: "On this page",
      property: "Property",
      value: "Value",
      standing: "Standing",
      method: "Method and source",
      source: "Source",
      standingsHeading: "How each figure is known",
      termsHeading: "Terms",
      downloadsHeading: "Data",
      handlingLink: "Handling in full",
      orders: "Order",
      coloursMade: "Colours made from it",
      languages: "Languages",
      usedIn: "Used in",
    },
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
      { text: "English", href: "./", language: "en", current: true },
      { text: "Français", href: `${root}fr/`, language: "fr" },
    ],
  };
}

const PAGE = { title: "A page – Saltreach Colourworks", description: "An invented page." };

const TINTS = [
  ["#a7acb3", "#73777e", "#45484e"],
  ["#b0aea9", "#7b7875", "#4a4847"],
  ["#acadae", "#77777a", undefined],
];
const LADDER = ["#211f1e", "#4b4e54", "#5d6169", "#73777e", "#8b9097", "#a7acb3", "#c2c6cb"];
const WARM_LADDER = ["#211f1e", "#504d4b", "#625f5c", "#7b7875", "#94918c", "#b0aea9", "#cac8c2"];

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
const labelWithout = (heading: string, remark: string): LabelView => ({
  heading,
  remarks: [remark],
  precautionaryHeading: "Precautions",
  precautionary: [],
});

const row = (
  name: string,
  value: string,
  unit: string | undefined,
  standing: StandingView,
  more: Partial<PropertyView> = {},
): PropertyView => ({ name, value, standing, ...(unit === undefined ? {} : { unit }), ...more });

const NOTHING = { summary: [], pictures: [], tables: [], lists: [], terms: [] } as const;

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

const section = (id: string, heading: string, parts: Partial<SectionView>): SectionView => ({
  ...NOTHING,
  id,
  heading,
  ...parts,
});

const oilSection = (
  parts: Partial<SectionView>,
  more: Partial<OilSectionView>,
): OilSectionView => ({ ...section("oil", "Oil and finish", parts), ...more });

const LABEL_TEXT: LabelTextView = {
  id: "label",
  heading: "Label text",
  lead: "To copy onto a label, the lot to be written in.",
  link: { text: "What each line means", href: "../../label/" },
  text: "Bone black\nSaltreach Colourworks\n\nPigment: Bone black (PBk 9)\nVehicle: linseed oil\nLightfastness not tested here.\n\nLot: ______",
};

export const SHEET: SheetView = {
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
  panel: panel("panel", "#211f1e", TINTS),
  sentence:
    "A deep neutral black that turns clearly blue in titanium white and stays a warm grey in lead white; it dries slowly and wants much oil.",
  facts: [
    {
      name: "Munsell",
      word: "N 1.3/",
      detail: "masstone, gloss excluded",
      standing: known("derived"),
      href: "#notations",
    },
    {
      name: "Lightfastness",
      word: "Excellent",
      detail: "expected; not tested here",
      standing: known("estimated"),
      href: "#permanence",
    },
    {
      name: "Opacity",
      word: "Semi-opaque",
      detail: "contrast ratio 0.94",
      standing: known("measured"),
      href: "#strength",
    },
    {
      name: "Drying",
      word: "Slow",
      detail: "6–12 days to touch",
      standing: known("estimated"),
      href: "#drying",
    },
    {
      name: "Strength",
      word: "–",
      detail: "needs a tint of the reference black",
      standing: NOT_STATED,
      href: "#strength",
    },
    {
      name: "Oil",
      word: "High",
      detail: "92 g to 100 g of pigment",
      standing: known("stated"),
      href: "#oil",
    },
  ],
  ragLine:
    "Oily rags can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can.",
  revision: "Revision 3f2a91c0, from records of 3 November 2026",
  terms: [
    {
      term: "Masstone",
      gloss: "the colour of the paint alone, in a film thick enough to hide its ground.",
    },
    { term: "Tint", gloss: "the paint let down with a white." },
    {
      term: "Munsell",
      gloss: "hue, then value from 0 (black) to 10 (white), then chroma; N is a neutral.",
    },
    { term: "Oil index", gloss: "grams of oil to 100 g of pigment, in the paint as made." },
  ],
  contents: [
    { text: "In the whites", href: "#whites" },
    { text: "Strength and hiding", href: "#strength" },
    { text: "Drying and layering", href: "#drying" },
    { text: "Permanence", href: "#permanence" },
    { text: "Oil and finish", href: "#oil" },
    { text: "Handling", href: "#handling" },
    { text: "The pigment", href: "#pigment" },
    { text: "Among the range", href: "#range" },
    { text: "Notations", href: "#notations" },
    { text: "Evidence", href: "#evidence" },
  ],
  whites: {
    ...section("whites", "In the whites", {
      summary: [
        "At equal lightness it is bluer in titanium white than in lead white, by about 5 units of b*.",
      ],
      terms: [
        { term: "L* a* b*", gloss: "lightness from 0 to 100, green to red, blue to yellow." },
      ],
    }),
    whites: [
      {
        id: "whites-titanium",
        heading: "In titanium white (PW 6)",
        sentence: "It turns clearly blue, most at middle greys.",
        standing: known("derived", "rests on measured tints"),
        ladder: ladder(
          "ladder-titanium",
          "Titanium white",
          LADDER,
          "Bluest at middle greys, about 1:5",
        ),
        remarks: [],
        steps: { summary: "Figures of this ladder: 5 steps", table: STEPS },
      },
      {
        id: "whites-lead",
        heading: "In lead white (PW 1)",
        sentence: "It stays a warm grey.",
        standing: known("measured"),
        ladder: ladder("ladder-lead", "Lead white", WARM_LADDER, "Warm at every step"),
        remarks: [
          "Nothing is predicted between the steps: the masstone was read in another geometry.",
        ],
        steps: {
          summary: "Figures of this ladder: 5 steps",
          table: { ...STEPS, caption: "Bone black in lead white, by mass of paint" },
        },
      },
    ],
    trail: trail(
      "trail",
      "The two ladders part at once: blue in titanium white, warm in lead white",
    ),
  },
  strength: section("strength", "Strength, hiding, glaze", {
    summary: ["It hides a ground in an ordinary coat, and gives a cool grey when scraped thin."],
    properties: {
      caption: "Strength, hiding and glaze",
      rows: [
        {
          name: "Tinting strength",
          gloss:
            "how much white it takes to bring it to a set grey, against the workshop’s reference black.",
          standing: NOT_STATED,
          reason: "Needs a tint of the reference black in the same white.",
        },
        row("Contrast ratio", "0.94", undefined, known("measured"), {
          note: "±0.01, film of 75 µm",
          method: "ISO 6504-3",
          gloss: "light thrown back over black against over white: 1 hides wholly.",
        }),
        row("Hiding film", "110–150", "µm", known("derived", "rests on an estimate"), {
          method: "Kubelka–Munk",
          source: { text: "Kubelka 1948", href: "../../sources/#source-kubelka-1948" },
        }),
        row("Opacity", "Semi-opaque", undefined, known("derived"), {
          method: "class of the contrast ratio",
        }),
      ],
    },
    pictures: [
      place(
        "place-strength",
        "Hiding film, µm",
        "It hides in thinner films than most of the range",
      ),
    ],
  }),
  drying: section("drying", "Drying and layering", {
    summary: [
      "Slow: touch dry in 6 to 12 days in a thin film at 20 °C. Keep it out of the under layers, or paint over it with a longer oil.",
    ],
    properties: {
      caption: "Drying",
      rows: [
        row("Touch dry", "6–12", "days", known("estimated"), {
          method: "class of pigment in linseed oil",
          note: "75 µm, 20 °C",
        }),
        { name: "Through dry", standing: NOT_STATED, reason: "Needs a drying trial of its own." },
      ],
    },
    lists: [
      {
        heading: "Why",
        items: [
          {
            text: "Carbon holds back the drying of oil and takes up driers.",
            standing: known("estimated"),
          },
          {
            text: "No lead, cobalt or manganese compound is there to catalyse it.",
            standing: known("derived"),
            source: { text: "Wehlte 1975", href: "../../sources/#source-wehlte-1975" },
          },
        ],
      },
      {
        heading: "Layering",
        items: [
          { text: "Let it dry for weeks, not days, before a quicker colour goes over it." },
          { text: "More oil in each layer than in the one below." },
        ],
      },
      {
        heading: "The film",
        items: [{ text: "Much oil: it may wrinkle where thick.", standing: known("estimated") }],
      },
    ],
  }),
  permanence: section("permanence", "Permanence", {
    summary: ["Expected excellent; not tested here."],
    properties: {
      caption: "Lightfastness",
      rows: [
        {
          name: "Category",
          gloss: "I (excellent) to V, by the colour change in a standard’s own exposures.",
          standing: NOT_STATED,
          reason: "Needs an exposure after the standard.",
        },
        row("Blue wool", "8", undefined, known("stated"), {
          gloss: "1 (most fugitive) to 8, on another scale than the categories.",
        }),
      ],
    },
    lists: [
      {
        heading: "Why",
        items: [{ text: "Carbon does not fade in light.", standing: known("estimated") }],
      },
    ],
  }),
  label: LABEL_TEXT,
  oil: oilSection(
    {
      summary: ["By mass it takes much oil; by volume no more than most blacks."],
      properties: {
        caption: "Oil and finish",
        rows: [
          row("Oil absorption", "52", "g/100 g", known("measured"), {
            method: "ISO 787-5",
            note: "±2",
          }),
          row("Oil index", "92", "g/100 g", known("stated")),
          row("Oil by volume", "211", "g/100 cm³ of pigment", known("derived")),
          row("CPVC", "43.9", "%", known("derived", "rests on a stated density"), {
            gloss: "the share of pigment by volume at which the oil only just fills the gaps.",
            method: "from oil absorption and density",
            source: { text: "Asbeck & Van Loo 1949", href: "../../sources/#source-asbeck-1949" },
          }),
          row("Finish", "Gloss", undefined, known("estimated")),
        ],
      },
    },
    {
      batch: {
        heading: "A batch",
        table: {
          caption: "What to weigh, and what comes out",
          compact: true,
          columns: [
            { head: "Pigment" },
            { head: "100 g", numeric: true },
            { head: "1 kg", numeric: true },
          ],
          rows: [
            ["Bone black, g", "100", "1000"],
            ["Linseed oil, g", "92", "920"],
            ["of it held back, g", "9.2–18", "92–180"],
            ["To fill, ml", "132–139", "1320–1390"],
          ].map((cells) => cells.map((text) => ({ text }))),
        },
        remarks: ["The cost leaves out linseed oil: no price is recorded."],
        reckoner: {
          heading: "Any size",
          recipe: `{"recipe":{"name":"it's \"quoted\""}}`,
          amount: "Amount",
          by: "Of",
          sizes: [
            { value: "pigmentG", text: "g of pigment" },
            { value: "tubes", text: "tubes" },
          ],
          tube: "Tube, ml",
          tubeMl: "40",
          caption: "This batch",
          columns: ["To weigh", "Amount"],
          rows: [
            { name: "Bone black, g", figure: "pigments.0" },
            { name: "Linseed oil, g", figure: "oilG" },
          ],
          fault: "Give an amount above 0.",
        },
      },
      fill: {
        caption: "What jars and tubes hold, in grams",
        compact: true,
        columns: [
          { head: "Filling" },
          { head: "40 ml", numeric: true },
          { head: "100 g take, ml", numeric: true },
        ],
        rows: [[{ text: "Paint" }, { text: "52" }, { text: "77", standing: known("derived") }]],
      },
      fillRemarks: [
        "100 g of dry bone black take 180–260 ml, from settled to poured: it fills a jar of 118 ml even when it has settled.",
      ],
    },
  ),
  handling: {
    ...section("handling", "Handling", {
      summary: [
        "Nothing is classified on the suppliers’ data; keep the dry pigment out of the air all the same.",
      ],
    }),
    label: labelWithout("Label elements, worked out", "Nothing is classified."),
    maker: [],
    parts: [
      labelWithout(
        "Bone black, dry",
        "None classified on the supplier’s data. A fine dust all the same.",
      ),
    ],
    studioHeading: "In the studio",
    studio: [
      {
        operation: "Mulling",
        cautions: [
          {
            sentences: [
              "Weigh and wet the powder under captured exhaust, without draught.",
              "A fitted FFP2 or N95 mask is the least; it does not replace extraction.",
            ],
            reason: "Dust is breathed in.",
          },
        ],
      },
      {
        operation: "Painting",
        cautions: [
          { sentences: ["No food in the room; wash hands."], reason: "Dust is breathed in." },
        ],
      },
      {
        operation: "Rags",
        cautions: [
          {
            sentences: [
              "Spread singly outdoors to dry hard, or soak in water in a closed metal can, emptied daily.",
            ],
            reason: "Drying oil gives off heat.",
          },
        ],
      },
    ],
    studioGeneral: { text: "As with every colour.", link: { text: "Why", href: "../label/" } },
    marketsHeading: "Where it may be sold",
    markets: [
      {
        market: "EU",
        lines: [
          {
            text: "No restriction known to the records.",
            source: { text: "REACH Annex XVII", href: "../../sources/#source-reach" },
          },
        ],
      },
    ],
    poisonCentre: "If it is swallowed or breathed in: the poison centre, an invented number.",
    deference:
      "The maker’s label and safety data sheet prevail; local codes and licensed practice come first.",
  },
  pigment: {
    ...section("pigment", "The pigment", {}),
    pigments: [
      {
        name: "Bone black",
        href: "../../pigments/bone-black/",
        colourIndexName: "PBk 9",
        share: "all of the dry pigment",
        text: ["Charred bone, washed and ground: a little carbon on much calcium phosphate."],
        properties: {
          caption: "Bone black, dry",
          rows: [
            row("Density", "2.29", "g/cm³", known("stated"), {
              source: { text: "Gettens & Stout 1942", href: "../../sources/#source-gettens-1942" },
            }),
            row(
              "At the bench",
              "Does not cling to a magnet; leaves white ash when burnt",
              undefined,
              known("stated"),
            ),
          ],
        },
      },
    ],
  },
  range: {
    ...section("range", "Among the range", {
      pictures: [
        place(
          "place-oil",
          "Oil index, g of oil to 100 g of pigment",
          "Among the thirstier colours of the range",
        ),
      ],
    }),
    groups: [{ heading: "Nearest in colour, of other pigment", cards: CARDS.slice(1, 4) }],
    compare: {
      heading: "Side by side",
      links: [{ text: "Beside lamp black", href: "../../compare/?colours=bone-black,lamp-black" }],
    },
  },
  notations: section("notations", "Notations in full", {
    summary: ["From a reading 45/0 of the workshop’s own drawdown."],
    tables: [
      {
        caption: "Masstone under each light",
        columns: [
          { head: "Light, observer" },
          { head: "L*", numeric: true },
          { head: "a*", numeric: true },
          { head: "b*", numeric: true },
          { head: "C*", numeric: true },
          { head: "h", unit: "°", numeric: true },
        ],
        rows: [
          ["D65, 10°", "12.1", "0.2", "0.4", "0.4", "–"],
          ["D50, 2°", "12.1", "0.2", "0.5", "0.5", "–"],
          ["A, 10°", "12.2", "0.3", "0.5", "0.6", "–"],
        ].map((cells) => cells.map((text) => ({ text }))),
      },
    ],
    properties: {
      caption: "For screen and page",
      rows: [
        row("ISCC–NBS name", "black", undefined, known("derived")),
        row("sRGB", "#211f1e", undefined, known("derived")),
        row("Display P3", "color(display-p3 0.129 0.122 0.118)", undefined, known("derived")),
        row("OKLCH", "oklch(0.24 0.004 60)", undefined, known("derived")),
      ],
    },
  }),
  evidence: {
    ...section("evidence", "Evidence", {
      summary: ["Every figure of this sheet, how it was come by and what it rests on."],
      pictures: [
        curve("curve-masstone", "The masstone reflects little more red than blue"),
        curve("curve-tint", "A second curve beside it"),
      ],
      tables: [
        {
          caption: "Figures and their working",
          columns: [
            { head: "Figure" },
            { head: "Value", numeric: true },
            { head: "Unit" },
            { head: "Standing" },
            { head: "Method" },
            { head: "From" },
          ],
          rows: Array.from({ length: 12 }, (_, i) => [
            { text: `tints.titanium-white.steps.${i + 1}.lab.D65/10.L` },
            { text: `${34.2 + i}` },
            { text: "1" },
            {
              text: "",
              standing: known(
                i % 2 === 0 ? "measured" : "derived",
                i % 2 === 0 ? undefined : "rests on measured tints",
              ),
            },
            { text: "two-constant fit, least squares" },
            { text: "masstone reading, 3 tints" },
          ]),
        },
      ],
    }),
    sourcesHeading: "Sources",
    sources: [
      {
        id: "source-kubelka-1948",
        citation:
          "Kubelka, P. (1948). New contributions to the optics of intensely light-scattering materials. Journal of the Optical Society of America, 38, 448.",
        standing: "quoted from memory",
        usedBy: [],
      },
    ],
  },
  downloads: [
    { text: "sheet.json", href: "sheet.json", note: "38 kB: every figure with its evidence" },
    { text: "bone-black.csv", href: "bone-black.csv", note: "2 kB: the reading of the masstone" },
  ],
};

/** A colour that can hurt: the band on the first screen, and handling in full. */
export const HAZARDOUS_SHEET: SheetView = {
  ...SHEET,
  heading: "Flake white",
  name: "Flake white",
  madeOf: [
    { text: "Basic lead carbonate", href: "../../pigments/basic-lead-carbonate/" },
    { text: " (" },
    { text: "PW 1", index: true },
    { text: "), milled in walnut oil" },
  ],
  panel: panel("panel", "#edeae0", []),
  sentence:
    "A warm, dense white that dries fast to a tough film; poisonous, and sold only where the law allows.",
  hazard: HAZARD,
  handling: {
    ...SHEET.handling,
    summary: ["Poisonous when swallowed or breathed. Never mull it dry without captured exhaust."],
    label: LABEL_BLOCK,
    maker: [
      { text: "Reviewed by a toxicologist.", quote: "as reviewed" },
      {
        text: "",
        link: {
          text: "Supplier’s safety data sheet, 2 May 2025",
          href: "https://supplier.example/sds.pdf",
        },
      },
    ],
    checks: {
      heading: "Where the maker's label and the reckoning part",
      items: [{ text: "The maker states H411, the reckoning H410." }],
    },
    parts: [
      {
        ...LABEL_BLOCK,
        heading: "Basic lead carbonate, dry",
        dataSheet: { text: "Safety data sheet", href: "https://supplier.example/sds.pdf" },
      },
    ],
  },
};

/** A colour known by name and pigment alone: every gap said. */
export const BARE_SHEET: SheetView = {
  ...PAGE,
  kind: "sheet",
  heading: "Vine black",
  name: "Vine black",
  madeOf: [{ text: "Vine black" }],
  noPanel: "No colour is shown: nobody has read or matched a drawdown yet.",
  sentence: "A black of which the workshop has not yet recorded more than its pigment.",
  facts: ["Munsell", "Lightfastness", "Opacity", "Drying", "Strength", "Oil"].map((name) => ({
    name,
    word: "–",
    detail: "not recorded",
    standing: NOT_STATED,
  })),
  revision: "Revision 00c0ffee, from records of 3 November 2026",
  terms: [],
  contents: [{ text: "Handling", href: "#handling" }],
  whites: {
    ...section("whites", "In the whites", { summary: ["No tint has been recorded."] }),
    whites: [],
  },
  strength: section("strength", "Strength, hiding, glaze", { summary: ["Nothing recorded."] }),
  drying: section("drying", "Drying and layering", { summary: ["Nothing recorded."] }),
  permanence: section("permanence", "Permanence", { summary: ["Nothing recorded."] }),
  oil: oilSection({ summary: ["Nothing recorded."] }, { noBatch: "No batch can be reckoned." }),
  label: { ...LABEL_TEXT, text: "Vine black" },
  handling: {
    ...section("handling", "Handling", { summary: [] }),
    label: labelWithout("Label elements", "No hazard data: treat as hazardous."),
    maker: [],
    parts: [],
    studioHeading: "In the studio",
    studio: [],
    studioGeneral: { text: "As with every colour.", link: { text: "Why", href: "../label/" } },
    marketsHeading: "Where it may be sold",
    markets: [],
    poisonCentre: "Ask the poison centre of your country.",
    deference:
      "The maker’s label and safety data sheet prevail; local codes and licensed practice come first.",
  },
  pigment: { ...section("pigment", "The pigment", {}), pigments: [] },
  notations: section("notations", "Notations in full", { summary: ["None."] }),
  evidence: { ...section("evidence", "Evidence", {}), sourcesHeading: "Sources", sources: [] },
  downloads: [],
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
  orders: ORDERS("Swatches by family"),
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
  heading: "Colours by value",
  lead: ["From the darkest masstone to the lightest."],
  orders: ORDERS("By value"),
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

export const HOME: HomeView = {
  ...PAGE,
  kind: "home",
  heading: "Saltreach Colourworks",
  about: [
    "Oil colours from single dry pigments, mulled in small batches. Every colour has a sheet that says what it does in each white, whether it lasts, when it dries and whether it can hurt, and how each of those figures is known.",
  ],
  pair: {
    heading: "Two blacks, two greys",
    sentence:
      "In the tube they can hardly be told apart. In titanium white at the same lightness, bone black is bluer by 6 units of b*.",
    colours: [
      {
        name: "Bone black",
        href: "colours/bone-black/",
        madeOf: "PBk 9 in linseed oil",
        panel: panel("first", "#211f1e", TINTS.slice(0, 2)),
        sentence: "Turns clearly blue in titanium white.",
      },
      {
        name: "Spinel black",
        href: "colours/spinel-black/",
        madeOf: "PBk 28 in linseed oil",
        panel: panel("second", "#1d1e1f", [
          ["#aeaca5", "#77766f", "#484742"],
          ["#b1aea4", "#7c786e", "#4b4842"],
        ]),
        sentence: "Stays warm in every white.",
      },
    ],
    comparison: {
      caption: "The two side by side",
      columns: [{ head: "" }, { head: "Bone black" }, { head: "Spinel black" }].map((column, i) =>
        i === 0 ? { head: "Property" } : column,
      ),
      rows: [
        [
          { text: "Drying" },
          { text: "slow", standing: known("estimated") },
          { text: "medium", standing: known("measured") },
        ],
        [
          { text: "Oil to 100 g" },
          { text: "92 g", standing: known("stated") },
          { text: "38 g", standing: known("measured") },
        ],
      ],
    },
  },
  questionsHeading: "What the sheets answer",
  questions: [
    {
      question: "What does this black do in each white, and why?",
      answer: [
        { text: "Each sheet shows tints at equal lightness; see " },
        { text: "bone black in the whites", href: "colours/bone-black/#whites" },
        { text: "." },
      ],
    },
    {
      question: "Why did it stay wet?",
      answer: [
        { text: "Drying is given as a class with its reasons: " },
        { text: "colours by drying", href: "colours/by-drying/" },
        { text: "." },
      ],
    },
    {
      question: "Is it one pigment, and will it last?",
      answer: [
        { text: "Colour Index names stand on the first line; see " },
        { text: "colours by permanence", href: "colours/by-permanence/" },
        { text: "." },
      ],
    },
    {
      question: "Is it safe to mull?",
      answer: [{ text: "Hazards stand on the first screen, handling below by operation." }],
    },
  ],
  familiesHeading: "Colours by family",
  families: [
    {
      name: "Blacks",
      href: "colours/#black",
      count: "6 colours",
      strip: familyStrip(["#211f1e", "#1d1e1f", "#1b1c1f", "#262425", "#231f1c"]),
    },
    {
      name: "Earths",
      href: "colours/#earth",
      count: "5 colours",
      strip: familyStrip(["#b57f35", "#8a5a2b", "#5d2c1a", "#3d3226", "#83301f"]),
    },
    { name: "Extenders", href: "colours/#extender", count: "2 mediums" },
  ],
  answersHeading: "Lately answered",
  answers: [
    {
      question: "Why is my black blue in one white and brown in another?",
      href: "answers/blue-black/",
      summary: "The white scatters short waves more than long ones.",
      date: "1 November 2026",
    },
  ],
};

export const PIGMENT_INDEX: PigmentIndexView = {
  ...PAGE,
  kind: "pigment-index",
  heading: "Pigments",
  lead: ["The dry pigments behind the colours."],
  groups: [
    {
      id: "black",
      heading: "Blacks",
      table: {
        caption: "Black pigments",
        columns: [
          { head: "Pigment" },
          { head: "Colour Index" },
          { head: "What it is" },
          { head: "Colours made", numeric: true },
        ],
        rows: [
          [
            { text: "Bone black", href: "bone-black/" },
            { text: "PBk 9" },
            { text: "charred bone" },
            { text: "2" },
          ],
          [
            { text: "Unnamed black", href: "unnamed/" },
            { text: "–", reason: "not stated" },
            { text: "–", reason: "not stated" },
            { text: "0" },
          ],
        ],
      },
    },
  ],
};

export const PIGMENT: PigmentPageView = {
  ...PAGE,
  kind: "pigment",
  heading: "Bone black",
  name: "Bone black",
  colourIndexName: "PBk 9",
  whatItIs: ["Charred bone, washed and ground: a little carbon on much calcium phosphate."],
  benchTest: {
    heading: "At the bench",
    text: "Does not cling to a magnet; leaves white ash when burnt in a crucible.",
  },
  properties: {
    caption: "The dry pigment",
    rows: [
      row("Density", "2.29", "g/cm³", known("stated")),
      row("Oil absorption", "40–60", "g/100 g", known("estimated")),
      { name: "Particle size", standing: NOT_STATED, reason: "Needs a sizing." },
    ],
  },
  lists: [
    { heading: "Origin and chemistry", items: [{ text: "Cattle bone, charred without air." }] },
  ],
  handlingHeading: "Handling the dry pigment",
  label: { ...LABEL_BLOCK, heading: "Bone black, dry" },
  cautionsHeading: "Weighing and mulling",
  cautions: [{ sentences: ["Weigh it under captured exhaust."], reason: "A light powder." }],
  handling: ["A fine dust: keep it out of the air."],
  colours: CARDS.slice(0, 2),
  terms: [
    { term: "Oil absorption", gloss: "grams of oil that 100 g of pigment take up in a rub-out." },
  ],
  revision: "From records of 3 November 2026",
};

export const ANSWER_INDEX: AnswerIndexView = {
  ...PAGE,
  kind: "answer-index",
  heading: "Answers",
  lead: ["Questions that customers have asked."],
  answers: HOME.answers,
};
const REPLY: ReplyView = {
  heading: "A reply to send",
  lead: "Plain text, ready to paste.",
  text: "Thank you for asking.\n\nIt is the white.",
  textLabel: "Reply",
  rows: 4,
  copy: "Copy",
  copied: "Copied.",
  notCopied: "Not copied.",
  question: "Why?",
  questionLabel: "What was asked",
  coloursLabel: "Colours",
  figuresLabel: "Figures",
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
  parts: [
    {
      kind: "prose",
      body: asMarkup(
        "<p>A grey is what a black leaves of a white’s light. <strong>At equal lightness</strong> the difference is the white’s.</p><h2>What to do</h2><p>Choose the white first, and <em>then</em> the black.</p><ul><li>Titanium white: bluer.</li><li>Lead white: warmer.</li></ul>",
      ),
    },
    { kind: "picture", picture: trail("answer-trail", "Two ladders part") },
    { kind: "table", table: STEPS },
  ],
  claims: {
    heading: "What this answer rests on",
    lead: "Held against the records.",
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
  colours: CARDS.slice(0, 2),
  reply: REPLY,
  revision: "Checked against the records of 3 November 2026.",
  all: { text: "All answers", href: "../" },
};
export const METHODS: MethodsView = {
  ...PAGE,
  kind: "methods",
  heading: "Methods",
  lead: ["How each figure is come by, and how far to trust it."],
  standingsHeading: "How each figure is known",
  contents: [
    { text: "Colour", href: "#colour" },
    { text: "Tints", href: "#tints" },
  ],
  sections: [
    {
      id: "colour",
      heading: "Colour from a reading",
      body: asMarkup(
        "<p>The reflectance factors are summed against the observer and the light on the reading’s own grid.</p><p><code>K/S = (1 − R)² / 2R</code></p>",
      ),
      tables: [STEPS],
      sources: [{ text: "CIE 15", href: "../sources/#source-cie-15" }],
    },
    {
      id: "tints",
      heading: "Tints",
      body: asMarkup("<p>Two constants, fitted to masstone and tints together.</p>"),
      tables: [],
      sources: [],
    },
  ],
  terms: [],
};
export const SOURCES: SourcesView = {
  ...PAGE,
  kind: "sources",
  heading: "Sources",
  lead: [
    "Every text that a figure of this site leans on, and whether it was read or is quoted from memory.",
  ],
  groups: [
    {
      id: "optics",
      heading: "Optics",
      entries: [
        {
          id: "source-kubelka-1948",
          citation:
            "Kubelka, P. (1948). New contributions to the optics of intensely light-scattering materials. Part I. Journal of the Optical Society of America, 38, 448.",
          standing: "quoted from memory",
          usedBy: [
            { text: "Bone black", href: "../colours/bone-black/" },
            { text: "Lamp black", href: "../colours/lamp-black/" },
          ],
        },
        {
          id: "source-wehlte-1975",
          citation: "Wehlte, K. (1975). The Materials and Techniques of Painting.",
          standing: "read",
          note: "p. 65 on driers",
          usedBy: [],
        },
      ],
    },
  ],
};
export const ABOUT: AboutView = {
  ...PAGE,
  kind: "about",
  heading: "About",
  lead: ["Who makes these colours, and how these pages are made."],
  sections: [
    {
      id: "workshop",
      heading: "The workshop",
      body: asMarkup("<p>Invented, for demonstration.</p>"),
      tables: [],
      sources: [],
    },
  ],
};
export const LABEL: LabelPageView = {
  ...PAGE,
  kind: "label",
  heading: "Reading a label",
  lead: ["What each line says."],
  contents: [{ text: "The lines of a label", href: "#lines" }],
  standingsHeading: "How each figure is known",
  standings: site("").standings,
  sections: [
    {
      id: "lines",
      heading: "The lines of a label",
      body: asMarkup("<p>What no label has room for.</p>"),
      sources: [],
      tables: [
        {
          caption: "Line by line",
          columns: [{ head: "Line" }, { head: "What it says" }, { head: "On Bone black" }],
          rows: [[{ text: "Name" }, { text: "The maker's own." }, { text: "Bone black" }]],
        },
      ],
    },
  ],
};
export const NOT_FOUND: NotFoundView = {
  ...PAGE,
  kind: "not-found",
  heading: "No such page",
  lead: ["The colour may have been renamed or withdrawn."],
  links: [
    { text: "All colours", href: "/colours/" },
    { text: "First page", href: "/" },
  ],
};

/** Every page kind, and how deep below the root it stands. */
const COMPARE: CompareView = {
  ...PAGE,
  kind: "compare",
  heading: "Colours side by side",
  lead: ["Any two to four colours."],
  form: {
    heading: "Choose colours",
    without: "To choose colours here, the page needs its script.",
    fields: ["First", "Second"],
    empty: "none",
    submit: "Set side by side",
    families: [
      {
        name: "Blacks",
        colours: [
          { slug: "bone-black", name: "Bone Black" },
          { slug: "lamp-black", name: "Lamp Black" },
        ],
      },
    ],
  },
  pairsHeading: "Often asked about",
  pairs: [
    {
      heading: "Bone Black and Lamp Black",
      href: "bone-black-and-lamp-black/",
      why: "Two blacks of carbon.",
      strip: familyStrip(["#211f1e", "#1b1c1f"]),
    },
    { heading: "Two that nobody read", href: "two-that-nobody-read/" },
  ],
};

const COMPARE_PAIR: ComparePairView = {
  ...PAGE,
  kind: "compare-pair",
  heading: "Bone Black and Lamp Black",
  lead: ["Two blacks of carbon."],
  panel: panel("pair", "#211f1e", TINTS),
  comparison: asMarkup(`<p class="comparison__summary">Of what is known, 1 thing differs.</p>`),
  more: { text: "Choose other colours", href: "../?colours=bone-black,lamp-black" },
};

export const PAGES: readonly {
  readonly name: string;
  readonly root: string;
  readonly current?: string;
  readonly view: AnyPageView;
}[] = [
  { name: "home", root: "", current: "home", view: HOME },
  { name: "catalogue-grid", root: "../", current: "Colours", view: GRID },
  { name: "catalogue-table", root: "../../", current: "Colours", view: CATALOGUE_TABLE },
  { name: "sheet", root: "../../", view: SHEET },
  { name: "sheet-hazardous", root: "../../", view: HAZARDOUS_SHEET },
  { name: "sheet-bare", root: "../../", view: BARE_SHEET },
  { name: "pigment-index", root: "../", current: "Pigments", view: PIGMENT_INDEX },
  { name: "pigment", root: "../../", view: PIGMENT },
  { name: "answer-index", root: "../", current: "Answers", view: ANSWER_INDEX },
  { name: "answer", root: "../../", view: ANSWER },
  { name: "methods", root: "../", current: "Methods", view: METHODS },
  { name: "sources", root: "../", current: "Sources", view: SOURCES },
  { name: "about", root: "../", current: "About", view: ABOUT },
  { name: "label", root: "../", current: "Labels", view: LABEL },
  { name: "compare", root: "../", current: "Compare", view: COMPARE },
  { name: "compare-pair", root: "../../", view: COMPARE_PAIR },
  { name: "not-found", root: "/", view: NOT_FOUND },
];
