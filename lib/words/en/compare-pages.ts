import { listed, within } from "./phrases.ts";

/** The pages that set colours side by side; the page's script carries these words too, so nothing else is imported here. */
export const COMPARE_PAGES = {
  heading: "Colours side by side",
  lead: "Two to four colours, alone and in each white; then what differs, what is too close to call, and what is the same.",
  description: (names: readonly string[]) =>
    `${listed(names)} side by side: in the whites, strength, oil, drying, permanence, cautions and pigments.`,
  pairHeading: (names: readonly string[]) => listed(names),
  panelTitle: (names: readonly string[]) => `Side by side: ${listed(names)}`,
  missing: "not stated",
  swatches: {
    alone: "Alone",
    notRead: "not read",
    notTried: "not tried",
    notReached: "not reached",
    differs: undefined,
    "not told": undefined,
    same: "The same.",
    "not stated": undefined,
  },
  /** @param differs @param notTold keys of rows. */
  summary: (differs: readonly string[], notTold: readonly string[]) => {
    const different = inShort(differs);
    const close = inShort(notTold).filter((name) => !different.includes(name));
    return [
      different.length === 0
        ? "Nothing that we know tells them apart."
        : `They differ in ${listed(different)}.`,
      close.length === 0 ? "" : `Too close to call: ${listed(close)}.`,
    ]
      .join(" ")
      .trim();
  },
  parts: {
    differs: { id: "differs", heading: "What differs" },
    "not told": { id: "not-told", heading: "Too close to call" },
    same: { id: "same", heading: "What is the same" },
    "not stated": { id: "not-stated", heading: "Not known of one of them" },
    figures: { id: "in-figures", heading: "The swatches in figures" },
  },
  foldedFigures: "Munsell notations, a* and b*, parts of white",
  folded: (heads: readonly string[]) =>
    heads
      .map((head, i) => (i === 0 ? head : head.charAt(0).toLowerCase() + head.slice(1)))
      .join(", "),
  unstated: (heads: readonly string[]) =>
    `Not known of any of them: ${listed(heads.map((head) => head.charAt(0).toLowerCase() + head.slice(1)))}.`,
  property: "Property",
  finding: "What that means",
  rows: {
    masstone: { head: "Alone", unit: "Munsell" },
    strength: { head: "Strength" },
    whitens: { head: "Whitens" },
    opacity: { head: "Opacity" },
    oilByMass: { head: "Oil", unit: "to 100 g of pigment" },
    oilByVolume: { head: "Oil by volume", unit: "to 100 cm\u00b3 of pigment" },
    finish: { head: "Finish" },
    drying: { head: "Dries", unit: "to the touch" },
    lightfastness: { head: "Lasts" },
    label: { head: "Warning" },
    sale: { head: "Limits on sale" },
    pigments: { head: "Pigments" },
    vehicle: { head: "Vehicle" },
    dispersion: { head: "Ground" },
  } as Readonly<Record<string, { readonly head: string; readonly unit?: string }>>,
  white: {
    head: (white: string) => `In ${within(white)}`,
    unit: (level: string) => `at L*\u00a0${level}`,
  },
  partsOfWhite: {
    head: "White for a middle tone",
    unit: (white: string) => `parts of ${within(white)} to 1 part of the colour, tube to tube`,
  },
  cells: {
    tint: (a: string, b: string) => `a*\u00a0${a}, b*\u00a0${b}`,
    strength: (reference: string) => `of ${within(reference)}, tube to tube`,
    isReference: "the reference itself",
    gloss: (gloss: string) => `${gloss} at 60\u00b0`,
    nothingClassified: "None needed",
    noData: "No hazard data",
    noLimit: "None recorded",
    limited: (markets: readonly string[]) =>
      `Only on a legal basis in ${listed(markets.map(withThe))}`,
    asked: (markets: readonly string[]) => `Conditions in ${listed(markets.map(withThe))}`,
    share: (name: string, share: string) => `${name}, ${share}`,
    dispersion: { mulled: "Mulled by hand", milled: "Milled" } as Readonly<Record<string, string>>,
    pictograms: (names: readonly string[]) =>
      `Pictograms: ${listed(names.map((name) => name.toLowerCase()))}`,
  },
  form: {
    heading: "Press two, three or four colours",
    fold: "Choose other colours",
    result: "Side by side",
    without:
      "Choosing colours here needs the page\u2019s script and a web server. The comparisons below need neither.",
    tooFew: (first: string | undefined) =>
      first === undefined ? "Press two colours or more." : `${first}, and which other?`,
    unknown: (slug: string, near: string | undefined) =>
      `There is no colour \u201c${slug}\u201d here${near === undefined ? "" : `; perhaps ${near} was meant`}.`,
    some: (shown: number, all: number) =>
      `Here are ${shown} of ${all} colours. Any other comes along from its own sheet, by its way to comparing.`,
    tooMany: "Four fit side by side; take one away first.",
    leftOut: "Four fit side by side; the others are left out.",
    failed:
      "The figures could not be fetched. Opened from a folder, a page may not read other files: open the site through a web server.",
  },
  pairs: "Often asked about",
  more: "Choose other colours",
  besides: "Compare",
  beside: (name: string) => `With ${within(name)}`,
  besideAny: "With another colour",
  fromCatalogue: "Set two to four of them side by side",
};

/** What rows are about, in a word within a sentence, each once. */
const IN_SHORT: Readonly<Record<string, string>> = {
  masstone: "masstone",
  white: "what they do in white",
  strength: "strength",
  whitens: "whitening",
  parts: "strength",
  opacity: "hiding",
  oilByMass: "oil",
  oilByVolume: "oil",
  finish: "finish",
  drying: "drying",
  lightfastness: "how well they last",
  label: "warnings",
  sale: "where they may be sold",
  pigments: "pigments",
  vehicle: "vehicle",
  dispersion: "how they are ground",
};

function inShort(keys: readonly string[]): string[] {
  return [...new Set(keys.map((key) => IN_SHORT[key.split(".")[0] ?? key] ?? key))];
}

function withThe(market: string): string {
  return /^(?:European|United)/.test(market) ? `the ${market}` : market;
}
