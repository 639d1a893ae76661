import type { DryingClass } from "../../drying/drying-class.ts";
import type { OilIndexClass } from "../../formulation/oil-index-class.ts";
import type { StatedOf } from "../../permanence/permanence-ruling.ts";
import { listed } from "./phrases.ts";

/** What a colour's page says to a painter, and its bench page to whoever makes the paint. */
export const SHEET_PAGE = {
  asOf: (date: string) => `As of ${date}.`,
  alone: "alone",
  levels: { "70": "pale", "50": "middle", "30": "dark" },
  notReached: "not reached",
  tintsDescription: (name: string, parts: readonly string[]) =>
    `${name} with white, by lightness: ${parts.join("; ")}.`,
  tintCell: (level: string, white: string, munsell: string) => `${level} in ${white}, ${munsell}`,
  whiteSentence: (count: number) =>
    count === 0
      ? "A white. None of our colours has been tried in it yet."
      : count === 1
        ? "A white. One colour of the range was tried in it."
        : `A white. ${count} colours of the range were tried in it.`,
  extenderSentence: "A medium for glazes and for body, not a white.",
  notTried: "Not yet tried in white.",
  noPrice: (markets: readonly string[]) =>
    `No price here: it may not be sold freely in ${listed(markets)}.`,
  notForSale: "Not yet for sale.",
  discontinued: (date: string) => `Discontinued from ${date}.`,
  unknownHazard: "Not classified yet: treat as hazardous.",
  print: "Sheet to print",
  compare: "Compare",
  facts: {
    lasts: "Lasts",
    hides: "Opacity",
    dries: "Dries",
    strength: "Strength",
    whitens: "Whitens",
    middleTone: "To a middle tone",
    oil: "Oil",
    safety: "Safety",
  },
  asDrawn: {
    "coat-hides-as-drawn": "Hides as drawn",
    "masstone-by-both-grounds": "Shows through as drawn",
    "masstone-is-a-film": "Shows through as drawn",
  } as Readonly<Record<string, string>>,
  dries: {
    fast: "Fast",
    medium: "Moderately fast",
    slow: "Slowly",
    "very slow": "Very slowly",
  } satisfies Readonly<Record<DryingClass, string>>,
  oil: {
    "very low": "Very low",
    low: "Low",
    medium: "Medium",
    high: "High",
    "very high": "Very high",
  } satisfies Readonly<Record<OilIndexClass, string>>,
  /** In place of a class, where an estimate reaches over several. */
  estimatedOil: "Not weighed",
  detail: {
    stated: {
      paint: (category: string) => `category ${category}, stated for the paint; not tested here`,
      pigment: (category: string) =>
        `category ${category}, the supplier\u2019s word for its pigment; not tested here`,
      mixture: (category: string) =>
        `category ${category}, taken from its pigments; the mixture was not tested here`,
    } satisfies Readonly<Record<StatedOf, (category: string) => string>>,
    exposed: (category: string) => `category ${category}, tested by the standard`,
    own: (category: string) =>
      `our own window test: it changed as category ${category} allows; worth more than a supplier\u2019s word, less than the standard\u2019s test`,
    expected: "what its pigment leads us to expect; not tested here",
    film: (film: string) => `${film} of dry film hides black and white`,
    filmUnknown: "a thick film hides black and white",
    byDarkness: (hides: string) => `${hides}, by its darkness`,
    contrast: (ratio: string) => `contrast ratio ${ratio}`,
    asDrawn: "over a black-and-white chart; how thick the film was is not recorded",
    days: (touch: string, through: string | undefined) =>
      through === undefined ? `${touch} to the touch` : `${touch} to the touch, ${through} through`,
    trial: (days: string) => `${days}; our trial`,
    trialInDoubt: (days: string) => `${days}; our trial, but another film took longer`,
    parts: (parts: string, white: string, by: string) =>
      `${parts} parts of ${white} to a middle tone, by ${by}`,
    reference: "others are measured against it",
    oil: (grams: string) => `${grams} of pigment`,
    unknown: "not known yet",
    noStrength: "none of its own: it lengthens the paint",
    lighter: "lighter than a middle tone by itself",
    never: "no film that anybody lays hides black and white",
    noWarning: "keep the dry pigment out of the air; oily rags can catch fire",
    noWarningDryOil: "keep the dry pigment out of the air",
    seeLabel: "the whole label is under Safety",
    unknownHazard: (names: readonly string[]) => `no hazard data for ${listed(names)}`,
  },
  brief: {
    stated: "stated, not tested",
    fromPigments: "from its pigments, not tested",
    exposed: "tested by the standard",
    own: "our own test",
  },
  white: {
    names: { use: "Good for", whitens: "Whitens", bright: "Bright", yellow: "Yellow" },
    uses: {
      strongest:
        "The strongest of our whites: for pale tints and for covering. A little floods a weak colour.",
      weakest:
        "The gentlest of our whites: for thin veils, and for tints that a strong white would flood.",
      fastest: "The first of our whites to dry: for the layers below.",
      slowest: "The last of our whites to dry: for the layers on top, and for working wet.",
    },
    whitens: (parts: string, reference: string, by: string) =>
      `${parts} parts bring one of ${reference} to a middle tone, by ${by}; the fewer, the stronger.`,
    bright: (L: string) => `Lightness L*\u00a0${L} of 100.`,
    yellow: (b: string) => `b*\u00a0${b}: 0 is neutral, above it is yellow.`,
    others: (parts: string) => `Of the others: ${parts}.`,
    other: (white: string, value: string) => `${white} ${value}`,
    tints: "Each from the tube, then its dark, middle and pale tint in this white.",
    tintsMissing: "An empty frame: no reading comes near that lightness.",
  },
  strengthOf: (percent: string, reference: string) => `${percent} of ${reference}`,
  strengthByWeight: (percent: string, reference: string) => `${percent} of ${reference} by weight`,
  whitens: (parts: string) => `${parts} parts`,
  whitensDetail: (reference: string, by: string) =>
    `of it bring one of ${reference} to a middle tone, by ${by}`,
  partsOfWhite: (parts: string) => `${parts} parts of white`,
  toMiddle: (white: string, by: string) => `of ${white} to one of the colour, by ${by}`,
  safe: {
    Danger: "Danger",
    Warning: "Warning",
    care: "Take care",
    none: "No warning",
    unknown: "Treat as hazardous",
  },
  sections: {
    whites: "Let it down",
    ofWhite: "As a white",
    painting: "Painting with it",
    permanence: "Will it last",
    handling: "Safety",
    range: "Beside others",
    questions: "Asked about it",
    unknown: "Not known yet, and what it would take",
    bench: "For the bench",
  },
  ladder: {
    key: "Colour to white, by weight of paint. A dot marks what we painted out and read; the steps between are worked out.",
    keyPigment:
      "Colour to white, by weight of dry pigment. A dot marks what we painted out and read; the steps between are worked out.",
    noSentence: "Tried in white; the reading is not enough to say more.",
    notDrawn: (whites: readonly string[]) => `Not tried in ${listed(whites)}.`,
    expected: (whites: readonly string[]) => `What to expect in ${listed(whites)}, not painted out`,
    expectedIn: (white: string) => `${white}, not painted out`,
  },
  lines: {
    dries: "Dries",
    layers: "Layers",
    hides: "Hides",
    finish: "Finish",
    age: "With age",
    whites: "In white",
    mixing: "Mixing",
    oil: "Oil",
  },
  /** Where it would take more paint than anybody lays. */
  hidesNever: "It never hides by itself: not even a coat of half a millimetre would.",
  hidesLine: (film: string) => `It takes a dry film of ${film} to hide a black-and-white chart.`,
  /** Of a dark colour of little body. */
  hidesByDarkness: (film: string) =>
    `A dry film of ${film} hides a black-and-white chart, but by its darkness, not its body: spread thinner, it glazes.`,
  /** @param area with its unit, "360 cm²/ml". */
  covers: (area: string) => `One millilitre from the tube hides ${area.replace(/\/ml$/, "")}.`,
  finishLine: (finish: string) => `${finish} as it dries.`,
  inWhite: (white: string, days: string, isTried: boolean) =>
    `${days} to the touch in ${white}${isTried ? ", as tried" : ""}`,
  inWhiteParts: (parts: number) => `Worked out for one part to ${parts} of white.`,
  /** By who found it; a record may give a figure and not say how. */
  oilLine: {
    weighed: (grams: string) => `${grams} of pigment, as we make it.`,
    recorded: (grams: string) =>
      `${grams} of pigment by our record, which does not say how we know.`,
    told: (grams: string) => `${grams} of pigment, as others state it; not weighed here.`,
    expected: (grams: string) => `${grams} of pigment is to be expected; not weighed here.`,
  },
  unknown: {
    colour: ["Its colour", "A drawdown read with an instrument, or matched to a Munsell chip."],
    whites: ["In white", "Three mixtures with a white, 1:1, 1:5 and 1:20, painted out and read."],
    opacity: ["How it hides", "A film of known thickness over a black-and-white chart, read."],
    filmSpectra: [
      "How it hides",
      "The spectra of its films over a black-and-white chart: these were read without one.",
    ],
    oil: ["Its oil", "A rub-out, or the oil weighed in for a batch."],
    drying: [
      "When it dries",
      "A film of known thickness, and the days until it is dry to the touch.",
    ],
    permanence: [
      "Whether it lasts",
      "An exposure in the window with a half kept dark, or the supplier\u2019s word.",
    ],
    hazard: [
      "Its hazards",
      "The supplier\u2019s safety data sheet, sections 2 and 3. Until then treat it as hazardous.",
    ],
  },
  standingsFold: "What the marks mean",
  benchLead: "Oil and packing, the pigment, notations, spectra, and how we came by every figure.",
  benchLink: (name: string) => `${name} at the bench`,
  dryPigment: "Weighing, mulling and dry pigment are on the bench page.",
  bench: {
    heading: (name: string) => `${name} at the bench`,
    description: (name: string) =>
      `${name} for whoever makes such paint: oil, packing, pigment, notations and spectra.`,
    back: (name: string) => `${name}, for the painter`,
    evidenceLead: "Every figure, how we came by it, what it was worked out from, and the sources:",
    evidenceLink: (name: string) => `the evidence for ${name}`,
    sections: {
      ladders: "In the whites, in figures",
      strength: "Strength, hiding, glaze",
      drying: "Drying in figures",
      permanence: "Permanence in figures",
      mixture: "As a mixture",
      oil: "Oil and packing",
      dry: "Dry pigment and additions",
      pigment: "The pigment",
      range: "In the range",
      notations: "Notations",
      evidence: "Evidence",
      downloads: "Data",
    },
    weighing: "Weighing and mulling",
  },
  evidence: {
    heading: (name: string) => `Evidence for ${name}`,
    description: (name: string) =>
      `Every figure on the sheet of ${name}, how it was found and what it was worked out from.`,
    back: (name: string) => `${name} at the bench`,
  },
} as const;
