import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import { TERMS as EXPECTED } from "./terms.ts";
import { CARDS } from "./cards.ts";
import { HANDLING } from "./handling.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { ANSWER_PAGES } from "./answer-pages.ts";
import { LABEL_PAGE } from "./label-page.ts";
import { OPTICS_PAGES } from "./optics-pages.ts";
import { BLACKS_PAGES } from "./blacks-pages.ts";
import { MIXTURE_PAGES } from "./mixture-pages.ts";
import { PAINT_PAGES } from "./paint-pages.ts";
import { PIGMENT_INDEX } from "./pigment-index.ts";
import { SHEET_PAGE } from "./sheet-page.ts";
import { SHEET_PAPER } from "./sheet-paper.ts";

/** Headings, captions and sentences of the pages that do not come from a science. */
export const PAGES = {
  nav: {
    colours: "Colours",
    answers: "Questions",
    compare: "Compare",
    pigments: "Pigments",
    methods: "How we know",
    label: "Labels",
    sources: "Sources",
    about: "About",
  },
  frame: {
    skip: "Skip to the text",
    mainNavigation: "Site",
    more: "More",
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
  },
  demonstration: "Demonstration: everything here is invented.",
  ragLine:
    "Rags soaked in drying oil can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can. Never in a bin or a heap.",
  cautionLine:
    "From our suppliers\u2019 data. The label, the safety data sheet, local codes and licensed practice come first.",
  build: (date: string | undefined, revision: string) =>
    `${date === undefined ? "Built from undated records" : `Built from records to ${date}`}, revision ${revision}.`,
  title: (page: string, workshop: string) =>
    page === workshop ? workshop : `${page} \u2013 ${workshop}`,

  sheet: {
    description: (name: string, madeOf: string) =>
      `${name}: ${madeOf}. What it does in each white, whether it lasts, when it dries and how to handle it.`,
    madeOf: {
      mulled: ", mulled in ",
      milled: ", milled in ",
      plain: " in ",
      and: " and ",
      comma: ", ",
    },
    noPanel: "No colour is shown: no drawdown of it has been read or matched yet.",
    panelTitle: (name: string) => `${name}: masstone, and tints at equal lightness in each white`,
    panelTitleAlone: (name: string) => `${name}: masstone`,
    panelDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    masstone: "Masstone",
    tintDescription: (white: string, level: string, a: string, b: string) =>
      `in ${white} at L* ${level}, a* ${a}, b* ${b}`,
    level: (level: string) => `L* ${level}`,
    missing: "not stated",
    approximateColour: "On screen approximate: worked out from a reading under another light.",
    outOfGamut: "A common screen cannot show this colour; the swatch is the nearest it can.",
    facts: {
      munsell: "Munsell",
      lightfastness: "Lightfastness",
      opacity: "Opacity",
      drying: "Drying",
      strength: "Strength",
      oil: "Oil",
    },
    factDetail: {
      munsell: (geometry: string | undefined) =>
        geometry === undefined ? "by eye" : (GEOMETRY_WORDS[geometry] ?? geometry),
      category: (category: string) => `category ${category}`,
      exposed: (category: string) => `own exposure: changed as in category ${category}`,
      stated: (category: string) => `category ${category}, as stated`,
      strength: (reference: string) => `of ${reference}, by mass`,
      isReference: "the reference itself",
      drying: (days: string) => `${days} to touch`,
      oil: (grams: string) => `${grams} of pigment`,
      contrast: (ratio: string) => `contrast ratio ${ratio}`,
      notTested: "not tested here",
      notTestedInTints: "by its tints, where it is weaker; not tested here",
    },
    expectation: EXPECTED as Record<string, string>,
    /** A category in a word. */
    categories: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, expectation]),
    ) as Record<string, string>,
    revision: (revision: string, date: string | undefined) =>
      `Revision ${revision}${date === undefined ? "" : `, from records of ${date}`}`,
    whiteSentence: (count: number) =>
      count === 1
        ? "A white. One colour of the range was let down in it: see its sheet."
        : `A white. ${count} colours of the range were let down in it: see their sheets.`,
    noSentence: "No tint has been recorded, so what it does in a white is not stated.",
  },
  sections: {
    whites: "In the whites",
    strength: "Strength, hiding, glaze",
    drying: "Drying and layering",
    permanence: "Permanence",
    mixture: "As a mixture",
    oil: "Oil and finish",
    handling: "Handling",
    pigment: "The pigment",
    notes: "From the workshop",
    range: "Among the range",
    questions: "Questions about this colour",
    reply: "Reply",
    label: "Label text",
    notations: "Notations in full",
    evidence: "Evidence",
  },
  whites: {
    none: "No tint has been recorded: what it does in a white is not stated. A let-down of 1:20 and one of 1:100 in a white would tell.",
    ofAWhite: (names: readonly string[]) => `Let down in it: ${names.join(", ")}.`,
    heading: (name: string, index: string | undefined) =>
      `In ${inSentence(name)}${index === undefined ? "" : ` (${index})`}`,
    ladderTitle: (white: string) =>
      `Let-downs in ${inSentence(white)}, from the strongest to the palest`,
    ladderDescription: (steps: readonly string[]) => `${steps.join("; ")}.`,
    stepDescription: (ratio: string, standing: string, L: string, a: string, b: string) =>
      `${ratio}, ${standing}, L* ${L}, a* ${a}, b* ${b}`,
    suspect: "doubtful",
    steps: (count: number) => `Figures of this ladder: ${count} steps`,
    stepsCaption: (white: string, kind: "pigment" | "paint") =>
      `Colour to ${inSentence(white)} by mass of ${kind === "paint" ? "paint" : "dry pigment"}`,
    columns: {
      ratio: "Colour : white",
      L: "L*",
      a: "a*",
      b: "b*",
      munsell: "Munsell",
      misfit: "\u00b1 or missed by",
    },
    note: "L* a* b* under D65, 10\u00b0 observer. Last column in \u0394E00: of a predicted step what about 68 % lie within; of a drawdown how far the fit through all of them misses it, and in brackets when it is left out.",
    trailEnds: { plusA: "red", minusA: "green", plusB: "yellow", minusB: "blue" },
    trailTitle: "a* and b* of the let-downs: where each white takes the colour",
    trailDescription: (whites: readonly string[]) =>
      `One trail a white, from masstone to the palest tint: ${whites.join(", ")}.`,
  },
  strength: {
    caption: "Strength and hiding",
    why: "Why",
    tubeCaption: "Parts of white to one of the colour, to reach L* 50",
    tubeColumns: {
      white: "White",
      byVolume: "Tube to tube, by volume",
      byMass: "By mass of paint",
    },
    tubeNote:
      "A strong colour needs much white to bring it to a middle grey. By volume is how paint is squeezed out; it rests on the densities.",
    glazeTitle: "Undertone: in films of growing thickness over white",
    glazeAxis: "Dried film, \u00b5m",
    glazeLabel: (filmUm: number) => `${filmUm}`,
    glazeDescription: (films: readonly string[]) => `Films over white: ${films.join("; ")}.`,
    hidingTitle: "How thick a film covers black and white alike",
    hidingFilm: "Dried film, \u00b5m",
    hidingRatio: "Contrast ratio",
    hides: "hides",
    hidingDescription: (points: readonly string[]) =>
      `Contrast ratio by film: ${points.join("; ")}.`,
    curveTitle: (name: string) => `How film thickness hides: ${name}`,
  },
  drying: {
    caption: "Drying",
    why: "Why",
    layering: "Layering",
    film: "The film, with age",
    trials: "The workshop's trials",
    contradictions: "Where trial and rule disagree",
    summary: (dryingClass: string, days: string) =>
      `${upperFirst(dryingClass)}: touch dry in ${days}. Touch dry is not through dry.`,
    none: "Not stated: neither a trial nor what its pigment does to drying oil is known here.",
  },
  permanence: {
    exposed: (word: string, category: string) =>
      `${upperFirst(word)}: category ${category} by the colour change of its own exposure.`,
    stated: (word: string, category: string) =>
      `${upperFirst(word)}: category ${category}, as stated; not tested here.`,
    expected: (word: string) => `${upperFirst(word)}; not tested here.`,
    caption: "Lightfastness",
    why: "Why",
    sensitivities: "Beside light",
    note: "Limits of the categories are quoted from memory of the standard; a category needs the standard's own exposures.",
    none: "Not stated: no exposure, no supplier's word and no expectation for its pigments.",
  },
  oil: {
    caption: "Oil, packing and finish",
    why: "Why",
    contradictions: "Where the record and the rule disagree",
    summary: (oilClass: string, grams: string) =>
      `${upperFirst(oilClass)} in oil: ${grams} in the paint as made.`,
    none: "Not stated: neither a rub-out figure nor the oil of a batch is in the records.",
  },
  handling: HANDLING,
  pigmentIndex: PIGMENT_INDEX,
  pigment: {
    share: (share: string) => `${share} of the dry pigment`,
    whole: "the only pigment",
    noShare: "parts not recorded",
    caption: (name: string) => `${name}, dry`,
    facts: {
      origin: "Origin",
      chemistry: "Chemistry",
      particle: "Particle",
      benchTest: "At the bench",
    },
    particle: (size: string | undefined, shape: string | undefined, index?: string) =>
      [shape, size, index === undefined ? undefined : `refractive index ${index}`]
        .filter((part) => part !== undefined)
        .join(", "),
    size: (um: string) => `${um} \u00b5m`,
    nothing: "Nothing is recorded of what it is.",
  },
  range: {
    ends: { low: "least", high: "most" },
    sameColour: "Same colour, other pigment",
    samePigment: "Same pigment, other colour",
    metameric: "Beside it in two lights",
    metamericPair: (name: string, sentence: string) => `${name}: ${lowerFirst(sentence)}`,
    hueTitle: "The range by hue and chroma",
    hueDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    neutral: "neutral",
    chroma: "Munsell chroma",
    value: "Munsell value",
    valueTitle: "The range by value and chroma",
    difference: (deltaE: string) => `\u0394E00 ${deltaE}`,
    oilTitle: "Where it stands in oil among the range",
    dryingTitle: "Where it stands in drying among the range",
    placeDescription: (
      name: string,
      value: string,
      count: number,
      lowest: string,
      highest: string,
    ) => `${name}: ${value}. ${count} colours of the range lie between ${lowest} and ${highest}.`,
  },
  notations: {
    readBy: (geometry: string) => `Read ${GEOMETRY_WORDS[geometry] ?? geometry}.`,
    included: (L: string) =>
      `Read with gloss included; with gloss excluded L* would be about ${L}.`,
    byEye:
      "Matched to a Munsell chip by eye: the eye places no finer than half a step of value and one of chroma.",
    none: "None: no drawdown has been read or matched.",
    labCaption: "Masstone under each light",
    light: "Light, observer",
    viewings: {
      "C/2": "C, 2\u00b0",
      "D65/2": "D65, 2\u00b0",
      "D65/10": "D65, 10\u00b0",
      "D50/2": "D50, 2\u00b0",
      "A/10": "A (lamplight), 10\u00b0",
      "A/2": "A (lamplight), 2\u00b0",
      "C/10": "C, 10\u00b0",
      "D50/10": "D50, 10\u00b0",
    } as Record<string, string>,
    caption: "Names and screen colours",
    curveTitle: "Reflectance of the masstone over the spectrum",
    curveDescription: (low: string, high: string, lowNm: string, highNm: string) =>
      `Between ${low} at ${lowNm} nm and ${high} at ${highNm} nm.`,
    curveLabel: (geometry: string) => `masstone, ${GEOMETRY_WORDS[geometry] ?? geometry}`,
    excludedLabel: "worked out for gloss excluded",
    wavelength: "Wavelength, nm",
    reflectance: {
      "0.1": "Reflectance factor, enlarged ten times",
      "1": "Reflectance factor",
      "1.2": "Reflectance factor",
    },
  },
  evidence: {
    summary: "Every figure of this sheet, how it was come by and what it rests on.",
    caption: "Figures and their working",
    columns: {
      figure: "Figure",
      value: "Value",
      standing: "Standing",
      method: "Method",
      inputs: "From",
    },
    notStated: "Not stated",
    notStatedCaption: "What is not stated, and what it would take",
    reason: "Why",
    wanting: "Needs",
    sources: "Sources",
  },
  downloads: {
    sheet: "every figure of this sheet with its evidence",
    reading: "the masstone as read, reflectance factor by wavelength",
    csv: "one line a colour",
    json: "the list of sheets, for programs",
  },
  catalogue: {
    heading: "Colours",
    filters: {
      search: "Find a colour, a pigment, PBk 9",
      heading: "Only those that",
      found: "{count} of {all} colours",
      nothing: "No colour is all of that.",
    },
    filterNames: {
      opaque: "hide",
      transparent: "are transparent",
      fast: "dry fast",
      slow: "dry slowly",
      lightfast: "last (category I or II)",
      unwarned: "need no warning",
    },
    inThisWhite: (white: string) => `were let down in ${inSentence(white)}`,
    gridLead:
      "Every colour with its masstone, and its tint at L* 50 in the first white that reaches it.",
    orders: {
      grid: "Swatches by family",
      family: "Table by family",
      value: "By value",
      hue: "By hue",
      drying: "By drying",
      permanence: "By permanence",
      oil: "By oil",
      strength: "By strength",
      whites: OPTICS_PAGES.inTheWhites.orders,
    },
    leads: {
      family: "By family, then by name.",
      value: "From the darkest masstone to the lightest.",
      hue: "Round the Munsell hue circle; neutrals first.",
      drying: "From the fastest to the slowest, by the later end of the days.",
      permanence: "From the category known or expected best to the least.",
      oil: PAINT_PAGES.byOil.lead,
      strength: OPTICS_PAGES.byStrength.lead,
    },
    columns: {
      colour: "Colour",
      pigments: "Pigments",
      munsell: "Munsell",
      lightfastness: "Lightfastness",
      opacity: "Opacity",
      drying: "Drying",
      oil: "Oil index",
    },
    notRead: "not read",
    count: (count: number) => `${count} colour${count === 1 ? "" : "s"}`,
    groups: { neutral: "Neutrals", notStated: "Not stated" },
    noSwatch: "not read yet",
    caption: (heading: string) => `Colours: ${heading}`,
    value: (from: number) => `Value ${from} to ${from + 1}`,
  },
  pigments: {
    heading: "Pigments",
    columns: {
      pigment: "Pigment",
      index: "Colour Index",
      chemistry: "Chemistry",
      density: "Density",
      oil: "Oil absorption",
      colours: "Colours",
    },
    properties: "Figures of the dry pigment",
    bench: "At the bench",
    details: "Origin, chemistry and particle",
    handling: "Handling the dry pigment",
    noColours: "No colour is made from it.",
    caption: "Dry pigments",
  },
  home: {
    promise: (count: number) =>
      `${count} oil colours, each shown as we measured it: alone, and let down in white.`,
    press:
      "Press a colour for its sheet: what it does in a white, whether it lasts, when it dries, what is in the tube.",
    ask: "Ask",
    allQuestions: (count: number) => `All ${count} questions`,
    beside: "Put side by side",
    choose: "Choose your own",
    know: "How we know",
    knowText:
      "Each figure is measured here, worked out, estimated, or a supplier\u2019s word, and says which.",
    knowLink: "What we do and do not know",
    wall: "The range",
  },
  methods: {
    heading: "Methods",
    lead: "How each figure comes about and how far to trust it.",
    sections: [
      [
        "colour",
        "Colour",
        "A reading is a list of reflectance factors. It is summed against the CIE tables to X, Y, Z and L*, a*, b* for each light and observer, scaled so that a perfect white on the reading's own grid comes out as the CIE white. Munsell notations are of the renotation, interpolated in LCHab. Screen colours come from D65 and the 2\u00b0 observer alone. The geometry of the reading is named beside it, since gloss moves a black by 13 to 23 units of L*.",
      ],
      [
        "tints",
        "Tints",
        "What a colour does in a white comes from the workshop's own drawdowns. Two constants, absorption K and scattering S, are fitted to all of a colour's drawdowns at once (Kubelka and Munk), with the surface taken off by geometry. Steps between are predicted from them and marked as such, with an uncertainty that grows with the distance from the nearest drawdown. Nothing is predicted from a masstone alone. A drawdown that the others contradict is shown and not used.",
      ],
      [
        "oil",
        "Oil and finish",
        "The oil index is what was weighed in; the rub-out figure is what just binds. CPVC follows from rub-out and density, PVC from the batch; the ratio of the two leads one to expect gloss or matte. A gloss meter overrides the expectation.",
      ],
      [
        "drying",
        "Drying",
        "The days of linseed oil alone, moved by oil, pigment, added drier, film and room, each with its own factor, give a class and a range. A trial of the workshop's own overrides it and is shown with its conditions.",
      ],
      [
        "permanence",
        "Permanence",
        "A category comes from an exposure and its colour change, or from a supplier's word, and else there is only an expectation from the kind of pigment. The three are never mixed up. Blue wool is a scale of its own. No years are given: no exposure says how many.",
      ],
      [
        "handling",
        "Handling",
        "Where the maker states label elements they stand first. Else they are worked out from the suppliers' classifications by the rules for mixtures, each statement traced to ingredient, share and limit. This is not a safety data sheet.",
      ],
    ] as const,
  },
  sources: {
    heading: "Sources",
    lead: "The texts that figures rest on, and how far each was used: read, worked from, or quoted from memory.",
    groups: { used: "Used on these sheets", other: "Of the engine, not used here" },
    standings: {
      read: "read",
      derived: "worked from",
      memory: "quoted from memory",
      practice: "common practice",
    } as Record<string, string>,
  },
  about: {
    heading: "About",
    lead: (workshop: string) => `What ${workshop} is, and what these sheets are.`,
    sections: [
      [
        "sheets",
        "What a sheet is",
        "A sheet is worked out from the workshop's records: what went into the batch, rub-outs, drawdowns read with an instrument or matched by eye, drying trials, exposures, suppliers' papers. Each figure says how it is known. What nobody knows is not stated, with what it would take.",
      ],
      [
        "limits",
        "What it is not",
        "A sheet is not a safety data sheet and not a certificate. A screen does not show a paint: a painted drawdown rules.",
      ],
    ] as const,
  },
  blacks: BLACKS_PAGES,
  mixture: MIXTURE_PAGES,
  paint: PAINT_PAGES,
  optics: OPTICS_PAGES,
  labelPage: LABEL_PAGE,
  sheetPage: SHEET_PAGE,
  sheetPaper: SHEET_PAPER,
  cards: CARDS,
  compare: COMPARE_PAGES,
  answers: ANSWER_PAGES,
  notFound: {
    heading: "No such page",
    lead: "There is nothing at this address. A colour may have been renamed or taken out of the range.",
    link: "All colours",
  },
};

const GEOMETRY_WORDS: Record<string, string> = {
  "45/0": "45/0, gloss out of sight",
  "d/8 excluded": "gloss excluded (d/8)",
  "d/8 included": "gloss included (d/8)",
};

/** Names that keep their capital inside a sentence. */
const PROPER = /^(Prussian|Venetian|Indian|Naples|Mars|Cologne|Pozzuoli|Verona|Paris)\b/;

export function lowerFirst(text: string): string {
  return /^\p{Lu}\p{Ll}/u.test(text) && !PROPER.test(text)
    ? text.charAt(0).toLowerCase() + text.slice(1)
    : text;
}

/** A colour's name, which may be written with capitals throughout, as it stands inside a sentence: "titanium white". */
export function inSentence(name: string): string {
  return name
    .split(" ")
    .map((word) => word.split("-").map(lowerFirst).join("-"))
    .join(" ");
}
export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export type PageWords = typeof PAGES;
