/** The tint bench, and what the pages that mix have in common; their scripts carry these words too. */
import { COLON, SEMICOLON, dayCount, decimals, listed, micrometres, within } from "./phrases.ts";
import type { ByLamp, Lamp } from "../../colorimetry/lamps.ts";
import type { OpacityClass } from "../../optics/films/opacity.ts";
import type { Interval } from "../../quantities/interval.ts";

const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "lamplight",
  led: "white LED light",
  fluorescent: "fluorescent tube",
};

export const MIXING_PAGES = {
  ways: {
    bench: "Tint bench",
    recipes: "Find a recipe",
    map: "Map of the range",
    palette: "Palette",
    label: "Mixing",
  },
  offered: (offered: number, all: number) =>
    `Of ${all} paints, ${offered} can be chosen here, those that lie farthest apart; any other comes along from its own sheet.`,
  notPredicted: (names: readonly string[]) =>
    `Not here, since neither fluorescent pigments nor flakes can be predicted: ${listed(names)}.`,
  without:
    "Mixing here needs the page\u2019s script. What we worked out beforehand is in the table below.",
  olderData:
    "The figures here are from another version of the page than its script. Load the page again; if that does not help, only the table below holds.",
  noData: "The figures did not load. Load the page again; the table below needs no script.",
  demonstration: "Invented figures, to show how it works.",
  lamps: LAMP_NAMES,
  bench: {
    heading: "Tint bench",
    lead: "Mix up to three of our colours with a white and see what you would get, and how sure we are.",
    description:
      "Mix colours of the range with a white, and see the colour, its notations and how far it can be trusted.",
    swatch: (what: string) => `The mixture: ${what}`,
    colourHeads: ["First colour", "Second colour", "Third colour", "Fourth colour"],
    partHeads: [
      "Parts of the first colour",
      "Parts of the second colour",
      "Parts of the third colour",
      "Parts of the fourth colour",
    ],
    whiteHead: "Parts of white",
    noPaint: "none",
    partsShort: "parts",
    white: "White",
    by: { legend: "Parts by", volume: "volume, tube to tube", mass: "weight" },
    medium: "Extender medium",
    volumes: "Parts of medium to one of the mixture",
    film: "Film thickness in \u00b5m (empty: a coat that hides)",
    finish: { legend: "Surface", glossy: "glossy", matte: "matte" },
    light: {
      legend: "Light",
      daylight: "daylight",
      incandescent: "lamplight",
      led: "white LED",
      fluorescent: "fluorescent tube",
    },
    controls: "The mixture",
    view: "How it is looked at",
    halo: "Or it could be",
    ways: {
      paler: "paler",
      darker: "darker",
      redder: "redder",
      greener: "greener",
      yellower: "yellower",
      bluer: "bluer",
    },
    read: (p68: string) => `As we read it, within \u0394E00\u00a0${p68}.`,
    predicted: (p68: string, p90: string) =>
      `A prediction. Two times in three it lies within \u0394E00\u00a0${p68}, nine times in ten within \u0394E00\u00a0${p90}.`,
    beyond:
      "Much paler than any mixture that we tried; nobody has looked how well that is predicted.",
    outOfGamut: "Your screen cannot show this colour; the swatch is the nearest it can.",
    lampNote: (lamp: string) => `Shown as an eye that is used to ${lamp} sees it.`,
    matteNote: "A matte film throws its surface light to all sides and looks paler.",
    overBlack: "over black",
    overWhite: "over white",
    filmSentence: (um: string, ratio: string, p68: string) =>
      `${um} of dried paint: contrast ratio ${ratio}, colour within \u0394E00\u00a0${p68} two times in three.`,
    asCoat: "Shown as a coat that hides.",
    notations: {
      munsell: "Munsell",
      lab: "L*a*b* (D65, 10\u00b0)",
      name: "In words",
      lasts: "Lasts",
      dries: "Dries to the touch",
      hides: "Hides",
      warning: "Warning",
      price: "Price of 10 ml",
    },
    munsellNone: "outside the notation",
    munsellUncertain: (value: string, chroma: string) =>
      `\u00b1${value} value, \u00b1${chroma} chroma`,
    lab: (L: string, a: string, b: string) => `${L}, ${a}, ${b}`,
    spectrumTitle: "Reflectance of the mixture",
    wavelength: "wavelength, nm",
    reflectance: "reflectance",
    reflectanceTo: (end: string) => `reflectance, 0 to ${end}`,
    find: "Other mixtures of this colour",
    copy: "Copy its address",
    copied: "The address is copied.",
    copyFailed: "The address could not be copied: it stands in the browser\u2019s address line.",
    print: "Print as a recipe card",
    keep: "Add to the palette",
    card: {
      heading: "Recipe card",
      byVolume: "by volume",
      byMass: "by weight",
      share: (text: string) => `${text}\u00a0%`,
      part: "Paint",
      madeOn: "Mixed on",
      notes: "Notes",
      from: (workshop: string, revision: string) => `${workshop}, figures of revision ${revision}`,
      paperNote: "The swatch is only as true as your printer.",
    },
    static: {
      heading: (white: string) => `Worked out beforehand: each colour in ${within(white)}`,
      note: (white: string) =>
        `Parts by weight of colour to ${within(white)}. Predicted from what we read; beside each row stands how far the palest may be off.`,
      caption: (white: string) => `Each colour let down in ${within(white)}`,
      colour: "Colour",
      said: "At 1:20, and how sure",
      finding: (munsell: string, p68: string) => `${munsell}, within \u0394E00 ${p68}`,
    },
    fromSheet: "Let it down on the tint bench",
  },
  facts: {
    semicolon: SEMICOLON,
    weakest: (word: string, of: string) => `${word} (by ${within(of)})`,
    unknown: (names: readonly string[]) => `not known of ${listed(names.map(within))}`,
    notKnown: "not known",
    days: (days: Interval) => dayCount(days),
    daysEstimate: "an estimate from its tubes",
    /** @param ratio of the film, from the least to the most that it may be. */
    hiding: {
      hides: (ratio: string, um: string) => `hides a chart at ${um} (contrast ratio ${ratio})`,
      "may hide": (ratio: string, um: string) =>
        `may hide a chart at ${um} (contrast ratio ${ratio})`,
      "does not hide": (ratio: string, um: string) =>
        `does not hide a chart at ${um} (contrast ratio ${ratio})`,
    },
    /** Of a film so dark that its contrast ratio tells only of its darkness. */
    dark: (word: OpacityClass, um: string, hides: boolean) =>
      `${word} at ${um}${hides ? ", though its darkness hides a chart" : ""}`,
    warning: (signal: string | null, metals: readonly string[]) =>
      signal === null && metals.length === 0
        ? "none needed"
        : [
            ...(signal === null ? [] : [signal]),
            ...(metals.length === 0 ? [] : [`contains ${listed(metals)}`]),
          ].join("; "),
    restricted: (names: readonly string[]) => `${listed(names)}: not sold to everybody`,
    price: (text: string) => `about ${text}`,
    /** @param p68 of the mixture; under a lamp as in daylight, at most. */
    lampsPart: (worst: Lamp, of: ByLamp, p68: number) =>
      of[worst] < 2
        ? "matches under lamps too"
        : `parts from it by \u0394E00\u00a0${decimals(of[worst], 1)} \u00b1${decimals(p68, 1)} in ${LAMP_NAMES[worst]}`,
    lampsShift: (worst: Lamp, of: ByLamp, p68: number) =>
      of[worst] < 2
        ? "holds its colour under lamps"
        : `changes by \u0394E00\u00a0${decimals(of[worst], 1)} \u00b1${decimals(p68, 1)} in ${LAMP_NAMES[worst]}`,
  },
  micrometres,
  recipes: {
    colon: COLON,
    heading: "Find a recipe",
    lead: "Name a colour; we look through every mixture of our paints for those that come near it.",
    description:
      "All mixtures of a few colours of the range that come near a colour, with what lasts, dries and hides.",
    without:
      "Looking for recipes needs the page\u2019s script. What we looked up beforehand is in the tables below.",
    target: "The colour that is wanted",
    text: "A notation: 5PB 4/2, or L*a*b* 42 \u22121 \u22127, or a screen colour #6b6f76",
    colour: "Or a colour of the range",
    file: "Or a reading of your own (.csv, .cgats, .txt, .cxf)",
    column: "Which reading of the file",
    percent: "The file gives percent",
    choose: "choose",
    origin: {
      range: "as we read it",
      reading: "as your file reads",
      munsell: "a chip by eye",
      lab: "D65, 10\u00b0",
      screen: "a screen\u2019s colour: only near",
    },
    targetName: (name: string, origin: string) => `${name} (${origin})`,
    limits: "What it has to be",
    white: "White",
    anyWhite: "any of our whites",
    withoutMetals: "Without",
    metals: { lead: "lead", cadmium: "cadmium", cobalt: "cobalt", nickel: "nickel" },
    unlabelled: "no paint that carries a hazard warning",
    lightfastness: "Lasts at least",
    lightfastnessChoices: ["", "excellent", "very good", "fair", "poor"],
    any: "any",
    days: "Touch dry within (days)",
    opacity: "Hides at least",
    opacityChoices: ["", "opaque", "semi-opaque", "semi-transparent"],
    price: "At most, for 10 ml",
    four: "up to four colours (slower)",
    whiteFree: "also without white",
    leaveOut: "Leave out",
    mustHold: "Must hold",
    order: "First come",
    orders: {
      fewest: "the fewest paints",
      nearest: "the nearest",
      drying: "the quickest to dry",
      lightfastness: "the most lightfast",
      lamps: "those that hold under lamps",
      price: "the cheapest",
    },
    find: "Look for recipes",
    looking: (tried: number) => `Looking\u2026 ${tried} mixtures tried.`,
    found: (within: number, near: number, tried: number, isAtLeast: boolean) =>
      within > 0
        ? `${within === 1 ? "One mixture" : `${isAtLeast ? "At least " : ""}${within} mixtures`} may be this colour, as far as we can tell; ${near === 1 ? "one more comes" : `${near} more come`} near. ${tried} were tried.`
        : near > 0
          ? `None is this colour; ${near === 1 ? "one comes" : `${near} come`} near. ${tried} were tried.`
          : `None comes near. ${tried} were tried.`,
    quickest: (days: Interval) =>
      `The quickest that comes near and keeps to your other wishes is touch dry in ${dayCount(days)}, an estimate.`,
    shown: (shown: number) => `The first ${shown} are listed.`,
    nothingMixes: "No colours are left to mix with these wishes.",
    within: "These may be it: nearer than we can tell",
    near: "These come near",
    none: "No mixture of our paints comes near this colour with these wishes.",
    tryIt: "On the tint bench",
    failed: "The search stopped by an error of ours. Load the page again.",
    more: "Show more",
    lamps: "Lamps",
    lightfast: "Lasts",
    parts: "Parts by volume",
    partsMass: "Parts by weight",
    replaces: {
      heading: "What replaces it",
      onRecipes: (name: string) => `In place of ${within(name)}`,
      because: (name: string, metals: readonly string[], isNone: boolean) =>
        `${name} contains ${listed(metals)}.${isNone ? "" : " Nearest to it among our paints without lead and cadmium:"}`,
      discontinued: (name: string, date: string, isNone: boolean) =>
        `${name} is discontinued from ${date}.${isNone ? "" : " Nearest to it among our paints:"}`,
      caption: (name: string) => `In place of ${within(name)}, and what changes`,
      columns: {
        what: "Instead",
        difference: "How far off",
        lasts: "Lasts",
        dries: "Dries to the touch",
        hides: "Opacity",
      },
      itself: "itself",
      single: "alone",
      none: "Nothing of ours comes near it.",
      noneKnown:
        "We have no colour near it that is known to be free of lead and cadmium; what is not classified yet was left out.",
      note: "Compared are the masstones: a \u0394E00 of about 1 is hard to see side by side. In tints the strength may be another. Single tubes are as read, mixtures predicted.",
      more: "Other recipes, by your own wishes",
    },
  },
  map: {
    heading: "Map of the range",
    headingIn: (white: string) => `Map of the range, in ${within(white)}`,
    lead: "Where our colours lie, how they turn as they are let down, and how far mixtures of them reach.",
    description:
      "The colours of the range by hue, chroma and lightness, and the outline of what can be mixed of them.",
    title: (white: string) =>
      `The range in a* and b*, each colour with its trail in ${within(white)}`,
    describe: (count: number, white: string, area: string) =>
      count === 1
        ? `One colour, with its way from the tube to a pale tint in ${within(white)}. The outlines go around everything that it and the white can be mixed to, at L* 30, 50 and 70; at L* 50 they hold an area of ${area}.`
        : `${count} colours, each with its way from the tube to a pale tint in ${within(white)}. The outlines go around everything that any two of them and the white can be mixed to, at L* 30, 50 and 70; at L* 50 they hold an area of ${area}.`,
    axes: { a: "a* (to the right: redder)", b: "b* (upwards: yellower)" },
    outline: (L: number) => `L* ${L}`,
    whites: "In which white",
    nearNeutral: "near the middle:",
    key: (p68: string) =>
      `Lines without a gap: L* 30; long dashes: L* 50; short dashes: L* 70. What lies inside a line can be mixed; the line itself is a prediction, within \u0394E00 ${p68} two times in three.`,
    without: "Without which colour?",
    withoutSaid: (name: string, shares: readonly string[]) =>
      `Without ${within(name)} the range is smaller (dotted lines) by ${listed(shares)}: areas, right two times in three within the \u00b1.`,
    withoutAt: (share: string, L: number) => `${share} at L* ${L}`,
    withoutNothing: (name: string) =>
      `Without ${within(name)} the range reaches as far: others make its hues.`,
    adds: {
      heading: "What each tube adds",
      caption: "How much smaller the range would be without it",
      colour: "Without",
      column: (L: number) => `at L* ${L}`,
      note: "Share of the area within the outline that only this colour reaches; two times in three within the \u00b1. No less: less than we can tell.",
      none: "no less",
      others: (names: readonly string[]) =>
        `As far as we can tell, the range reaches as far without ${names.length === 1 ? "" : "any one of "}${listed(names)}.`,
    },
    absent: "Not on the map",
    notMapped: (untried: readonly string[], otherwise: readonly string[]) =>
      [
        ...(untried.length === 0
          ? []
          : [`Not let down in this white, and so not on the map: ${listed(untried)}.`]),
        ...(otherwise.length === 0
          ? []
          : [`Read in another way than the others, and so not on the map: ${listed(otherwise)}.`]),
      ].join(" "),
  },
  palette: {
    heading: "Palette",
    lead: "Choose your tubes: what they reach, what is missing, and in which order to paint with them.",
    description: "A chosen set of colours: its map, its gaps, and the order of layering.",
    without:
      "Choosing a palette needs the page\u2019s script. The order of layering of the whole range is in the table below.",
    choose: "Your tubes",
    reach: "What they reach",
    reachTitle: "Your tubes and what can be mixed of them",
    white: "In which white",
    level: "The map at",
    levelName: (L: number) => `L* ${L}`,
    share: (shares: readonly string[]) =>
      `Of what the whole range reaches, yours reach ${listed(shares)}.`,
    shown: (white: string, L: number) => `Mixed with ${within(white)}; the map at L* ${L}.`,
    shareAt: (share: string, L: number) => `${share} at L* ${L}`,
    unlike: (names: readonly string[], white: string) =>
      `${listed(names)}: not tried in ${within(white)} or read otherwise, so not counted in what is reached.`,
    gaps: "What is missing",
    gapsCaption: "Hues in which the range goes further than your tubes",
    gapColumns: { hue: "Nothing near", bring: "What would bring it" },
    gapHue: (hue: string) => `a clean ${hue}`,
    gapAt: (L: number) => `L* ${L}`,
    gapNone: "near",
    gapBy: (names: readonly string[]) => listed(names, "or"),
    gapByNone: "several together",
    gapsNote:
      "How far yours stop short of the range; two times in three within the \u00b1. Near: by less than \u0394E00\u00a08.",
    noGaps: "No gap that another of our tubes would fill.",
    tooFew: "Choose two colours or more.",
    hues: [
      "red",
      "orange",
      "yellow",
      "yellow green",
      "green",
      "blue green",
      "blue",
      "violet",
      "purple",
      "pink",
    ],
    order: "In which order to paint",
    orderNote:
      "Fast and lean below, slow and fat above: in layers put a colour over one that stands before it, not under. Over one that holds more oil add a little medium to it.",
    columns: {
      colour: "Colour",
      dries: "Dries to the touch",
      oil: "Oil of the dry film, by volume",
      lasts: "Lasts",
    },
    /** @param below a tube that lies below in the order and is fatter. */
    leaner: (below: string) => `leaner than ${below} below it: add a little medium`,
    print: "Print this palette",
    yours: "yours",
    wholeRange: "the range",
  },
};

export type MixingWords = typeof MIXING_PAGES;
