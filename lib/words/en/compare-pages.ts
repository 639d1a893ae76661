import { listed, within } from "./statements-phrases.ts";

/** The pages that set colours side by side; the page's script carries these words too, so nothing else is imported here. */
export const COMPARE_PAGES = {
  heading: "Colours side by side",
  lead: "Any two to four colours: what differs first, then what is too close to call, then what is the same.",
  description: (names: readonly string[]) =>
    `${listed(names)} side by side: in the whites, strength, oil, drying, permanence, cautions and pigments.`,
  pairHeading: (names: readonly string[]) => listed(names),
  panelTitle: (names: readonly string[]) => `Side by side: ${listed(names)}`,
  panelDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
  masstone: "Masstone",
  level: (level: string) => `L* ${level}`,
  inWhite: (white: string) => `In ${within(white)}`,
  missing: "not stated",
  order: "In each strip the colours stand in this order.",
  summary: (differs: readonly string[], notTold: readonly string[]) =>
    [
      differs.length === 0
        ? "No difference is proved."
        : `They differ in ${listed(differs.map(lowered))}.`,
      notTold.length === 0 ? "" : `Too close to call: ${listed(notTold.map(lowered))}.`,
    ]
      .join(" ")
      .trim(),
  parts: {
    differs: { id: "differs", heading: "What differs" },
    "not told": { id: "not-told", heading: "Too close to call" },
    same: { id: "same", heading: "What is the same" },
    "not stated": { id: "not-stated", heading: "Not known of one of them" },
  },
  folded: (heads: readonly string[]) =>
    heads
      .map((head, i) => (i === 0 ? head : head.charAt(0).toLowerCase() + head.slice(1)))
      .join(", "),
  unstated: (heads: readonly string[]) =>
    `Not stated for any of them: ${listed(heads.map((head) => head.charAt(0).toLowerCase() + head.slice(1)))}.`,
  property: "Property",
  finding: "What that means",
  rows: {
    masstone: { head: "Masstone", unit: "Munsell" },
    strength: { head: "Tinting strength" },
    opacity: { head: "Opacity" },
    oilByMass: { head: "Oil index", unit: "to 100 g of pigment" },
    oilByVolume: { head: "Oil by volume", unit: "to 100 cm\u00b3 of pigment" },
    finish: { head: "Finish" },
    drying: { head: "Drying", unit: "touch dry" },
    lightfastness: { head: "Lightfastness" },
    label: { head: "Label elements" },
    sale: { head: "Limits on sale" },
    nearest: { head: "Nearest in colour", unit: "masstones of the range" },
    pigments: { head: "Pigments" },
    vehicle: { head: "Oil" },
    dispersion: { head: "Mulled or milled" },
  } as Readonly<Record<string, { readonly head: string; readonly unit?: string }>>,
  white: {
    head: (white: string) => `In ${within(white)}`,
    unit: (level: string) => `at L*\u00a0${level}`,
  },
  partsOfWhite: {
    head: (white: string) => `Parts of ${within(white)} to one`,
    unit: "by volume, to L*\u00a050",
  },
  cells: {
    tint: (a: string, b: string) => `a*\u00a0${a}, b*\u00a0${b}`,
    strength: (reference: string) => `of ${within(reference)}, by mass`,
    isReference: "the reference itself",
    gloss: (gloss: string) => `${gloss} at 60\u00b0`,
    nothingClassified: "Nothing classified",
    noData: "No hazard data",
    noLimit: "None recorded",
    limited: (markets: readonly string[]) =>
      `Only on a legal basis in ${listed(markets.map((market) => (/^(?:European|United)/.test(market) ? `the ${market}` : market)))}`,
    difference: (deltaE: string) => `\u0394E00 ${deltaE}`,
    share: (name: string, share: string) => `${name}, ${share}`,
    dispersion: { mulled: "Mulled", milled: "Milled" } as Readonly<Record<string, string>>,
    pictograms: (names: readonly string[]) =>
      `Pictograms: ${listed(names.map((name) => name.toLowerCase()))}`,
  },
  form: {
    heading: "Choose colours",
    fields: ["First", "Second", "Third", "Fourth"],
    empty: "\u2013 none \u2013",
    submit: "Compare",
    without:
      "To choose colours here, the page needs its script and a web server: it does not work with scripts turned off, nor opened from a folder. The comparisons below need neither.",
    tooFew: "Choose two colours or more.",
    unknown: (slug: string, near: string | undefined) =>
      `There is no colour \u201c${slug}\u201d here${near === undefined ? "" : `; perhaps ${near} was meant`}.`,
    tooMany: "Four can stand side by side; the others are left out.",
    failed:
      "The figures could not be fetched. Opened from a folder, a page may not read other files: open the site through a web server.",
  },
  pairs: "Often asked about",
  more: "Choose other colours",
  besides: "Compare",
  beside: (name: string) => `With ${within(name)}`,
  besideAny: "With another colour",
  fromCatalogue: "Set two to four of them side by side",
  fromPair: "Side by side in full",
};

/** A row's head within a sentence. */
function lowered(head: string): string {
  if (head.startsWith("In ")) return `what they do i${head.slice(1)}`;
  return head.charAt(0).toLowerCase() + head.slice(1);
}

export type CompareWords = typeof COMPARE_PAGES;
