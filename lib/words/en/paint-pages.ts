import { listed } from "./phrases.ts";

/** What the sheet says of the paint as made: batch, fill, drying in figures, lightfastness by what it rests on, label text. */
export const PAINT_PAGES = {
  oilLists: { paste: "The paste, as seen", slab: "At slab and mill", range: "In the range" },
  places: (name: string, byMass: number, byVolume: number, of: number) =>
    `Counted from the leanest, ${name} is ${ordinal(byMass)} of ${of} colours by weight, and ${ordinal(byVolume)} by volume.`,
  batch: {
    caption: "What to weigh, and what comes out",
    columns: {
      what: "Pigment",
      size: (pigmentG: number) =>
        pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
    },
    rows: {
      pigment: (name: string) => `${name}, g`,
      oil: (name: string) => `${name}, g`,
      atFirst: "Oil to start with, g",
      heldBack: "Oil to keep back, g",
      addition: (name: string) => `${name}, g`,
      paintG: "Paint, g",
      paintMl: "Paint, ml",
      loss: "Lost at slab or mill, ml",
      yield: "To fill, ml",
      tubes: (ml: string) => `Tubes of ${ml}\u00a0ml`,
      cost: (currency: string) => `Cost, ${currency}`,
      tubesAny: "Tubes",
    },
    ofTubes: (parts: readonly string[]) =>
      `Its record weighs it from tubes: for 100\u00a0g, ${listed(parts)}, with nothing to grind. The weights here are of the same paint made from dry pigment.`,
    unpriced: (names: readonly string[]) =>
      `The cost leaves out ${names.join(", ")}: we have no price for it.`,
    noTubes: "No size of tube is on record, so tubes are not counted.",
    none: (because: string) => `No batch can be worked out. ${because}`,
    any: {
      heading: "Any size",
      amount: "Amount",
      by: "Unit",
      tube: "Tube, ml",
      caption: "This batch",
      fault: "Give an amount above 0.",
      sizes: {
        pigmentG: "g of pigment",
        paintG: "g of paint",
        paintMl: "ml of paint",
        tubes: "tubes",
      },
      figure: "To weigh, and what comes out",
      value: "Amount",
    },
  },
  fill: {
    caption: "What jars and tubes hold, in grams",
    columns: {
      filling: "Filling",
      takes: "100 g take, ml",
      container: (ml: string) => `${ml}\u00a0ml`,
    },
    fillings: {
      paint: "Paint",
      poured: (name: string) => `${name}, dry, as poured`,
      tapped: (name: string) => `${name}, dry, tapped`,
    },
    note: "118 ml is a jar of 4 US fluid ounces. Dry pigment settles: a jar poured full is no longer full a week later.",
  },
  drying: {
    contributions: "What speeds or slows it",
    columns: { what: "What", effect: "Effect", times: "Factor", standing: "Standing" },
    signs: {
      faster: "faster",
      none: "no\u00a0change",
      slower: "slower",
      "either way": "either\u00a0way",
    },
    base: "Linseed oil alone",
    baseValue: (days: string) => `${days} to touch`,
    note: "Multiply, and you get the expected days.",
    trials: {
      caption: "Our own trials",
      alone: "The colour alone",
      inWhite: (white: string) => `In ${white}`,
      columns: {
        of: "Film of",
        touch: "Touch dry",
        through: "Through dry",
        film: "Wet film",
        temperature: "Temperature",
        humidity: "Humidity",
        date: "Date",
      },
      none: "\u2013",
    },
    inWhites: {
      caption: "Mixed with white",
      columns: { white: "White", class: "Drying", days: "Touch dry" },
      note: (parts: number) =>
        `Worked out for 1 part of the colour to ${parts} of white by weight of paint, the oils and any drier in proportion. Our own trial replaces the estimate.`,
    },
    grounds: "Grounds",
  },
  permanence: {
    ownExposure: (category: string) =>
      `It changed as much as category ${category} allows, in our own exposure; that is not the full standard test.`,
    names: { "own exposure": "Colour change as in category" } as Readonly<Record<string, string>>,
    orders: {
      own: (category: string) => `As category ${category}, in our own test`,
      stated: (category: string) => `Category ${category}, as stated; not tested here`,
    },
    cell: "own test",
    forms: {
      caption: "The colour alone and in a tint",
      columns: {
        form: "Form",
        change: "Change, \u0394E*ab",
        category: "As in category",
        standard: "Standard",
        exposure: "Exposure",
      },
      names: { masstone: "Alone", tint: "In a tint" } as Readonly<Record<string, string>>,
      stated: "as stated",
      notExposed: "not exposed",
      note: "A rating holds for what was exposed; the other may differ by a category or more.",
    },
    contradictions: "Where our exposure and the supplier\u2019s word disagree",
  },
  labelText: {
    lead: "To copy onto a label: see that the lot is the one that is filled. Worked out from these records: the maker answers for the label, the law of each market decides what it must carry.",
    vehicle: "Vehicle: ",
    pigment: "Pigment: ",
    pigments: "Pigments: ",
    with: ", ",
    contents: "Contents: ",
    ml: " ml",
    blank: "______",
    lot: "Lot: ",
    notForSale: "Not yet classified, so not yet for sale.",
    pictograms: "Pictograms: ",
    frame: (frame: string) => `Label elements by ${frame}.`,
  },
  byOil: {
    mass: "By mass of pigment",
    volume: "By volume of pigment",
    lead: "The leanest first. By weight light pigments look greedy; by volume they are much alike.",
    columns: { place: "Place", colour: "Colour", oilIndex: "By mass", byVolume: "By volume" },
    notStated: "Oil not known yet",
  },
} as const;

function ordinal(place: number): string {
  const tens = place % 100;
  const ending = tens > 10 && tens < 14 ? "th" : (["th", "st", "nd", "rd"][place % 10] ?? "th");
  return `${place}${ending}`;
}
