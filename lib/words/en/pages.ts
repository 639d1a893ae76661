import { GEOMETRY_WORDS } from "./geometry-names.ts";
import { lowerFirst as lowered, upperFirst } from "../letter-case.ts";
import type { RangeCounts } from "../range-counts.ts";
import type { MeasuredErrors } from "../../optics/fit/measured-errors.ts";
import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import { TERMS as EXPECTED } from "./terms.ts";
import { CARDS } from "./cards.ts";
import { CHANGES } from "./changes.ts";
import { NEXT_STEPS } from "./next-steps.ts";
import { PACKAGE_LABELS } from "./package-labels.ts";
import { HANDLING } from "./handling.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { ANSWER_PAGES } from "./answer-pages.ts";
import { LABEL_PAGE } from "./label-page.ts";
import { OPTICS_PAGES } from "./optics-pages.ts";
import { BLACKS_PAGES } from "./blacks-pages.ts";
import { MIXING_PAGES } from "./mixing-pages.ts";
import { MIXTURE_PAGES } from "./mixture-pages.ts";
import { PAINT_PAGES } from "./paint-pages.ts";
import { LISTING } from "./listing.ts";
import { PHOTOGRAPHS } from "./photographs.ts";
import { PIGMENT_INDEX } from "./pigment-index.ts";
import { SHEET_PAGE } from "./sheet-page.ts";
import { SHEET_PAPER } from "./sheet-paper.ts";
import { NUMBERS, listed } from "./phrases.ts";
import { LOT_PAGES } from "./lot-pages.ts";
import { WORKSHOP_PAGES } from "./workshop-pages.ts";

/** Headings, captions and sentences of the pages that do not come from a science. */
export const PAGES = {
  nav: {
    colours: "Colours",
    answers: "Questions",
    compare: "Compare",
    mix: "Mix",
    pigments: "Pigments",
    methods: "How we know",
    label: "Labels",
    sources: "Sources",
    about: "About",
  },
  search: {
    text: "Find a colour",
    nothing: "Nothing found.",
    count: "{count} found.",
    kinds: { pigment: "Pigment", answer: "Question", comparison: "Side by side" },
  },
  frame: {
    skip: "Skip to the text",
    mainNavigation: "Site",
    more: "More",
    onThisPage: "On this page",
    toContents: "Back to contents",
    property: "Property",
    value: "Value",
    standing: "Standing",
    method: "Method and source",
    source: "Source",
    standingsHeading: "How each figure is known",
    termsHeading: "Terms",
    downloadsHeading: "Data",
    handlingLink: "All about safety",
    orders: "Order",
    parts: "Page",
    families: "Family",
    coloursMade: "Colours made from it",
    languages: "Languages",
  },
  demonstration: "Demonstration: everything here is invented.",
  ragLine:
    "Rags soaked in drying oil can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can. Never in a bin or a heap.",
  fromPapers: "Hazards: from our suppliers\u2019 papers.",
  cautionLine:
    "The label, the safety data sheet, your local rules and licensed practice come first.",
  build: (date: string | undefined) =>
    date === undefined ? "Built from undated records." : `Built from records to ${date}.`,
  title: (page: string, workshop: string) =>
    page === workshop ? workshop : `${page} \u2013 ${workshop}`,

  sheet: {
    description: (name: string, madeOf: string) =>
      `${name}: ${madeOf}. What it does in each white, whether it lasts, when it dries and how to handle it.`,
    madeOf: {
      mulled: (vehicle: string) => `; ${vehicle}, mulled`,
      milled: (vehicle: string) => `; ${vehicle}, milled`,
      plain: (vehicle: string) => `; ${vehicle}`,
      comma: ", ",
      withAdditions: (names: readonly string[]) => `; also in it: ${listed(names)}`,
    },
    holdsMediums: (mediums: readonly string[]) =>
      `It also holds ${listed(mediums)}: what that does to drying, finish and yellowing we have not tried.`,
    noPanel: "No colour is shown: no drawdown of it has been read or matched yet.",
    tintDescription: (level: string, a: string, b: string) => `L* ${level}, a* ${a}, b* ${b}`,
    missing: "not stated",
    approximateColour: "Only near on screen: worked out from a reading under another light.",
    outOfGamut: "A common screen cannot show this colour; the swatch is the nearest it can.",
    factDetail: {
      category: (category: string) => `category ${category}`,
      asCategory: (category: string) => `as category ${category}`,
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
        ? "A white. One colour of the range was tried in it."
        : `A white. ${count} colours of the range were tried in it.`,
    noSentence: "Not yet tried in white.",
  },
  sections: {
    reply: "Reply",
    label: "Label text",
  },
  whites: {
    heading: (name: string, index: string | undefined) =>
      `In ${name}${index === undefined ? "" : ` (${index})`}`,
    ladderTitle: (white: string) => `With ${white}, from the strongest mixture to the palest`,
    ladderDescription: (steps: readonly string[]) => `${steps.join("; ")}.`,
    stepDescription: (ratio: string, standing: string, L: string, a: string, b: string) =>
      `${ratio}, ${standing}, L* ${L}, a* ${a}, b* ${b}`,
    suspect: "doubtful",
    steps: (count: number) =>
      count === 1 ? "The one step in figures" : `The ${count} steps in figures`,
    stepsCaption: (white: string, kind: "pigment" | "paint") =>
      `Colour to ${white} by mass of ${kind === "paint" ? "paint" : "dry pigment"}`,
    columns: {
      ratio: "Colour : white",
      L: "L*",
      a: "a*",
      b: "b*",
      munsell: "Munsell",
      misfit: "\u00b1 or missed by",
    },
    note: "L* a* b* under D65, 10\u00b0 observer. Last column, in \u0394E00: for a predicted step, what about 68\u00a0% of predictions stay within; for a drawdown, how far the fit misses it, and in brackets how far when that drawdown is left out.",
    expectedNote:
      "Expected, not painted out: L* a* b* (D65, 10\u00b0 observer) as the range in which nine of ten such let-downs lie, Munsell in the middle of it. Last column, in \u0394E00: what about 68\u00a0% stay within.",
    range: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
    trailEnds: { plusA: "red", minusA: "green", plusB: "yellow", minusB: "blue" },
    trailTitle: "Where each white takes the colour: a* and b* of the mixtures",
    trailDescription: (whites: readonly string[]) =>
      `One line for each white, from the colour alone to the palest mixture: ${whites.join(", ")}.`,
  },
  strength: {
    caption: "Strength and hiding",
    why: "Why",
    tubeCaption: "How much white to one part, to get a middle tone (L* 50)",
    tubeColumns: {
      white: "White",
      byVolume: "Tube to tube, by volume",
      byMass: "By mass of paint",
    },
    tubeNote:
      "A strong colour takes much white. By volume is how paint is squeezed out; it is worked out from the weights and the densities.",
    glazeTitle: "Undertone: thicker and thicker films over white",
    glazeAxis: "Dried film, \u00b5m",
    glazeLabel: (filmUm: number) => `${filmUm}`,
    glazeDescription: (films: readonly string[]) => `Films over white: ${films.join("; ")}.`,
    hidingTitle: "How thick a film has to be to hide",
    hidingFilm: "Dried film, \u00b5m",
    hidingRatio: "Contrast ratio",
    hides: "hides",
    hidingDescription: (points: readonly string[]) =>
      `Contrast ratio by film: ${points.join("; ")}.`,
  },
  drying: {
    caption: "Drying",
    why: "Why",
    layering: "Layering",
    film: "The film, with age",
    contradictions: "Where our trial and the rule of thumb disagree",
    summary: (dryingClass: string, days: string, through: string | undefined) =>
      through === undefined
        ? `${upperFirst(dryingClass)}: dry to the touch in ${days}. That is not dry right through.`
        : `${upperFirst(dryingClass)}: dry to the touch in ${days}, through in ${through}. A thicker film takes longer.`,
    none: "Not known yet: we have no trial of it, and do not know what its pigment does to drying oil.",
  },
  permanence: {
    exposed: (word: string, category: string) =>
      `${upperFirst(word)}: it changed as much as category ${category} allows, in our own exposure.`,
    /** @param told by whom, and of what. */
    stated: (word: string, told: string) => `${upperFirst(word)}: ${told}.`,
    expected: (word: string) => `${upperFirst(word)}; not tested here.`,
    caption: "Lightfastness",
    why: "Why",
    sensitivities: "Other risks",
    note: "The limits of the categories are quoted from memory of the standard. A category proper needs the standard\u2019s own exposures.",
    none: "Not known yet: no exposure, no word from the supplier, and nothing to expect from its pigments.",
  },
  oil: {
    caption: "Oil, packing and finish",
    why: "Why",
    contradictions: "Where our record and the rule of thumb disagree",
    /** @param line how much oil, and who says so: a sentence. */
    summary: (oilClass: string, line: string) => `${upperFirst(oilClass)} in oil: ${line}`,
    notClassed: (grams: string) =>
      `Its oil is not weighed yet, and the estimate is too wide for a word: ${grams}.`,
    none: "Not known yet: we have neither a rub-out figure nor the oil of a batch.",
  },
  handling: HANDLING,
  pigmentIndex: PIGMENT_INDEX,
  pigment: {
    share: (share: string) => `${share} of the dry pigment`,
    whole: "single pigment",
    noShare: "share not recorded",
    caption: (name: string) => `${name}, dry`,
    facts: {
      origin: "Origin",
      chemistry: "Chemistry",
      particle: "Particle",
      benchTest: "A bench test",
    },
    particle: (size: string | undefined, shape: string | undefined, index?: string) =>
      [shape, size, index === undefined ? undefined : `refractive index ${index}`]
        .filter((part) => part !== undefined)
        .join(", "),
    size: (um: string) => `${um} \u00b5m`,
    nothing: "We have written down nothing more about it.",
  },
  range: {
    ends: { low: "least", high: "most" },
    sameColour: "Alike from the tube",
    samePigment: "Made from the same pigment",
    metameric: "From the tube, by daylight and by lamplight",
    metamericPair: (name: string, sentence: string) => `${name}: ${sentence}`,
    hueTitle: "The range by hue and chroma",
    hueDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    neutral: "neutral",
    chroma: "Munsell chroma",
    value: "Munsell value",
    valueTitle: "The range by value and chroma",
    difference: (deltaE: string, inWhite?: { white: string; deltaE: string }) =>
      inWhite === undefined
        ? `alone \u0394E00 ${deltaE}`
        : `alone \u0394E00 ${deltaE}; in ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    oilTitle: "Its oil beside the rest of the range",
    dryingTitle: "Its drying beside the rest of the range",
    placeDescription: (
      name: string,
      value: string,
      count: number,
      [lowest, lower, upper, highest]: readonly [string, string, string, string],
    ) =>
      `${name}: ${value}. The ${count} colours with a figure lie between ${lowest} and ${highest}, the middle half of them between ${lower} and ${upper}.`,
    box: (count: number) => `box: the middle half of ${count} colours`,
  },
  notations: {
    readBy: (geometry: string) => `Read ${GEOMETRY_WORDS[geometry] ?? geometry}.`,
    included: (L: string) => `Read with the shine included; without it L* would be about ${L}.`,
    byEye:
      "Matched to a Munsell chip by eye, which is good to half a step of value and one of chroma.",
    none: "None yet: no drawdown has been read or matched by eye.",
    labCaption: "The colour alone, under each light",
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
      "D65/2006": "D65, 10\u00b0 of CIE 2006",
    } as Record<string, string>,
    caption: "Names and screen colours",
    curveTitle: "Reflectance of the masstone over the spectrum",
    curveDescription: (low: string, high: string, lowNm: string, highNm: string) =>
      `Between ${low} at ${lowNm} nm and ${high} at ${highNm} nm.`,
    curveLabel: (geometry: string) => `masstone, ${GEOMETRY_WORDS[geometry] ?? geometry}`,
    excludedLabel: "worked out without the shine",
    wavelength: "Wavelength, nm",
    reflectance: "Reflectance factor",
    reflectanceTo: (end: string) => `Reflectance factor, enlarged: the axis ends at ${end}`,
  },
  evidence: {
    summary:
      "Every figure of this sheet, how we came by it and what it was worked out from. Figures go by the names that the sheet’s data and the claims of answers use.",
    caption: "Figures and how each was found",
    columns: {
      figure: "Figure",
      value: "Value",
      standing: "Standing",
      method: "Method",
      inputs: "From",
    },
    part: (part: string, count: number) =>
      `${part}: ${count} ${count === 1 ? "figure" : "figures"}`,
    parts: {
      pigments: "The pigment",
      notations: "Notations",
      tints: "In the whites",
      mixture: "As a mixture",
      optics: "Strength, hiding, gloss and the fit",
      oil: "Oil and finish",
      batch: "A batch",
      fill: "Jars and tubes",
      drying: "Drying",
      permanence: "Lightfastness",
      additions: "Additions",
      vehicle: "Vehicle",
      cautions: "Safety",
      offer: "Sizes and prices",
    } as Readonly<Record<string, string>>,
    notStated: "Not known yet",
    notStatedCaption: "Not known yet, and what it would take",
    reason: "Why",
    wanting: "Needs",
    sources: "Sources",
  },
  downloads: {
    sheet: "every figure of this sheet and how it is known",
    reading: "the masstone as read, reflectance factor by wavelength",
    csv: "one line a size, for a shop to load",
    figures: "one line a colour, each figure with its standing",
    json: "the list of sheets, for programs",
  },
  parts: {
    heading: (heading: string, page: number, pages: number) =>
      `${heading}, page ${page} of ${pages}`,
    onThisPage: (what: string) => `${what}, on this page`,
    someOf: (shown: number, all: number) =>
      `${shown} of ${all} are shown, taken evenly out of all of them.`,
  },
  catalogue: {
    heading: "Colours",
    filters: {
      label: "Narrow the range",
      families: "Only",
      heading: "that",
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
    inThisWhite: (white: string) => `were tried in ${white}`,
    gridLead: "Every colour, alone above and with white below, brought to a middle tone.",
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
      value: "From the darkest to the lightest, as they come from the tube.",
      hue: "Neutrals first, then round the hue circle.",
      drying:
        "The fastest first. Where the days are a range, its middle decides the order; count on the later day.",
      permanence:
        "Most lightfast first. Of one category what was tested stands first: our own test counts for more than a supplier\u2019s word, and that for more than what is only expected.",
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
    groups: { neutral: "Neutrals", notStated: "Not known yet" },
    noSwatch: "not read yet",
    madeNoMore: "discontinued",
    caption: (heading: string) => `Colours: ${heading}`,
    value: (from: number) => `Value ${from} to ${from + 1}`,
  },
  pigments: {
    heading: "Pigments",
    columns: {
      pigment: "Pigment",
      index: "Colour Index",
      density: "Density",
      oil: "Oil absorption",
      colours: "Colours",
    },
    properties: "Figures of the dry pigment",
    handling: "Handling the dry pigment",
    noColours: "No colour is made from it.",
    caption: "Dry pigments",
  },
  home: {
    promise: ({ measured, mediums, byEye, unread, tinted }: RangeCounts) =>
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} oil colours, each shown as we measured it: alone, and mixed with white.`
        : [
            `${measured} oil colours${mediums === 0 ? "" : ` and ${mediums} ${mediums === 1 ? "medium" : "mediums"}`} as we measured them`,
            ...(tinted === measured + mediums
              ? ["alone and mixed with white"]
              : tinted === 0
                ? []
                : [`${tinted} of them mixed with white as well`]),
          ].join(", ") + ".",
    /** What is shown beside those, and how it is known. */
    besides: ({ byEye, unread }: RangeCounts) =>
      [
        ...(byEye === 0 ? [] : [`${byEye} more by eye or by figures of others`]),
        ...(unread === 0 ? [] : [`${unread} still to measure`]),
      ].join(", "),
    pressFamily:
      "Press a family for its colours, and a colour for its sheet: what it does in white, whether it lasts, when it dries, what is in the tube.",
    press:
      "Press a colour for its sheet: what it does in white, whether it lasts, when it dries, what is in the tube.",
    ask: "Ask",
    allQuestions: (count: number) => `All ${count} questions`,
    beside: "Put side by side",
    choose: "Choose your own",
    know: "How we know",
    knowText:
      "We measured it, worked it out, estimated it, or took a supplier\u2019s word. Every sheet says which.",
    knowLink: "How to read a label",
    wall: "The range",
  },
  methods: {
    heading: "Methods",
    lead: "How we came by each figure, and how far to trust it.",
    /** Below the section on tints. */
    measured: (rows: readonly MeasuredErrors[], areInvented: boolean): string =>
      [
        "How far such predictions lie from measured oil paints, in \u0394E00. Each let-down is left out and predicted from the others; a mixture is predicted from its two colours, and a colour in barytes or chalk from its let-downs in zinc white, through one other colour that was let down in both. With films: drawdowns over black and white told the fit how each paint scatters. The last two columns count those that lie within the 68 and the 90 % that we print beside a prediction.",
        "",
        "| | | how many | middle one | nine of ten within | inside 68\u00a0% | inside 90\u00a0% |",
        "|---|---|---|---|---|---|---|",
        ...rows.map(
          ({ what, films, count, median, p90, inside68, inside90 }) =>
            `| ${what} | ${films ? "with films" : "without films"} | ${count} | ${NUMBERS.decimal(median, 1)} | ${NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
        ),
        "",
        `A \u00b1 on a sheet goes by that colour\u2019s own readings, so it is narrower or wider than these.${areInvented ? " The readings of this demonstration were made by a program and agree far better than drawdowns of paint do: of paint expect the errors of this table, not the small \u00b1 of these sheets." : ""}`,
      ].join("\n"),
    sections: [
      [
        "colour",
        "Colour",
        "A reading is a list of reflectance factors. It is summed against the CIE tables to X, Y, Z and L*, a*, b* for each light and observer, scaled so that a perfect white comes out as the CIE white. Munsell notations are those of the renotation, interpolated in LCHab. Screen colours are for D65 and the 2\u00b0 observer. We name the geometry beside each reading: with the shine in it, a black reads 13 to 23 units of L* lighter.",
      ],
      [
        "tints",
        "Tints",
        "What a colour does in a white comes from our own drawdowns. Two constants, absorption K and scattering S, are fitted to all of a colour\u2019s drawdowns together (Kubelka and Munk), after the surface has been taken off. The steps between are predicted and marked so; the farther from a drawdown, the less certain. Nothing is predicted from the colour alone. In a white that a colour was not tried in, we say what to expect where other colours were tried in both: how strongly the two whites scatter follows from these. It is an estimate, and a range. A drawdown that the others contradict is shown and not used.",
      ],
      [
        "oil",
        "Oil and finish",
        "The oil index is what we weighed in; the rub-out figure is what just binds the pigment. The rub-out and the density give the CPVC, the batch gives the PVC, and the two together say whether to expect a gloss or a matte film. A reading with a gloss meter replaces the expectation.",
      ],
      [
        "drying",
        "Drying",
        "We start from the days that linseed oil takes alone, and multiply by a factor each for the oil, the pigment, any drier, the film and the room. That gives a range of days. Our own trial replaces the estimate and is shown with its conditions.",
      ],
      [
        "permanence",
        "Permanence",
        "A category comes from an exposure, or from a supplier\u2019s word; without either there is only what the kind of pigment leads us to expect. The sheet says which of the three it is. Blue wool is another scale. We give no years: no exposure can say how many.",
      ],
      [
        "handling",
        "Handling",
        "Where a label has been stated it comes first. If not, it is worked out from the suppliers\u2019 classifications by the rules for mixtures, and each statement names the ingredient, its share and the limit. This is not a safety data sheet.",
      ],
    ] as const,
  },
  sources: {
    heading: "Sources",
    lead: "The texts behind the figures, and how far we used each: read, worked from, or quoted from memory.",
    groups: { used: "Used on these sheets", other: "At hand, not used here" },
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
    revision: (revision: string) => `All sheets together: revision ${revision}.`,
    sections: [
      [
        "sheets",
        "What a sheet is",
        "A sheet is worked out from our records: what went into the batch, rub-outs, drawdowns read with an instrument or matched by eye, drying trials, exposures, suppliers\u2019 papers. Each figure says how it is known. Where we do not know, it says what it would take.",
      ],
      [
        "limits",
        "What it is not",
        "A sheet is not a safety data sheet and not a certificate. Trust a painted sample, not the screen.",
      ],
    ] as const,
  },
  blacks: BLACKS_PAGES,
  mixture: MIXTURE_PAGES,
  mixing: MIXING_PAGES,
  paint: PAINT_PAGES,
  listing: LISTING,
  photographs: PHOTOGRAPHS,
  workshop: WORKSHOP_PAGES,
  lots: LOT_PAGES,
  optics: OPTICS_PAGES,
  labelPage: LABEL_PAGE,
  sheetPage: SHEET_PAGE,
  sheetPaper: SHEET_PAPER,
  cards: CARDS,
  changes: CHANGES,
  packageLabels: PACKAGE_LABELS,
  nextSteps: NEXT_STEPS,
  compare: COMPARE_PAGES,
  answers: ANSWER_PAGES,
  former: {
    gone: (name: string, date: string | undefined) =>
      date === undefined
        ? `${name} is no longer on this site.`
        : `${name} is no longer on this site, since ${date}.`,
    replacedBy: (name: string) => `In its place: ${name}`,
  },
  notFound: {
    heading: "No such page",
    lead: "There is nothing at this address. A colour may have been renamed or taken out of the range.",
    link: "All colours",
  },
};

/** Names that keep their capital inside a sentence. */
const PROPER = /^(Prussian|Venetian|Indian|Naples|Mars|Cologne|Pozzuoli|Verona|Paris)\b/;

export function lowerFirst(text: string): string {
  return PROPER.test(text) ? text : lowered(text);
}

export type PageWords = typeof PAGES;
