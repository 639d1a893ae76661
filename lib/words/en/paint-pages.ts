/** What the sheet says of the paint as made: batch, fill, drying in figures, lightfastness by what it rests on, label text. */
export const PAINT_PAGES = {
  oilLists: { paste: "The paste, as seen", slab: "At slab and mill", range: "Beside the range" },
  places: (name: string, byMass: number, byVolume: number, of: number) =>
    `${name} is ${ordinal(byMass)} of ${of} colours by oil to a mass of pigment, and ${ordinal(byVolume)} by oil to a volume of it, the leanest first.`,
  batch: {
    heading: "A batch",
    caption: "What to weigh, and what comes out",
    columns: {
      what: "Pigment",
      size: (pigmentG: number) =>
        pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
    },
    rows: {
      pigment: (name: string) => `${name}, g`,
      oil: (name: string) => `${name}, g`,
      atFirst: "of it at first, g",
      heldBack: "of it held back, g",
      addition: (name: string) => `${name}, g`,
      paintMl: "Paint, ml",
      loss: "Lost at slab or mill, ml",
      yield: "To fill, ml",
      tubes: (ml: string) => `Tubes of ${ml}\u00a0ml`,
      cost: (currency: string) => `Cost, ${currency}`,
      tubesAny: "Tubes",
    },
    unpriced: (names: readonly string[]) =>
      `The cost leaves out ${names.join(", ")}: no price is recorded.`,
    noTubes: "No size of tube is recorded, so tubes are not counted.",
    none: (because: string) => `No batch can be reckoned. ${because}`,
    any: {
      heading: "Any size",
      amount: "Amount",
      by: "Of",
      tube: "Tube, ml",
      caption: "This batch",
      fault: "Give an amount above 0.",
      sizes: { pigmentG: "g of pigment", paintMl: "ml of paint", tubes: "tubes" },
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
    note: "118 ml is a jar of 4 US fluid ounces. Dry pigment settles: what is poured full on the shelf is less than full a week later.",
  },
  drying: {
    contributions: "What moves the days",
    columns: { what: "What", effect: "Effect", times: "Times the days", standing: "Standing" },
    signs: { faster: "faster", none: "no\u00a0change", slower: "slower" },
    base: "Linseed oil alone",
    baseValue: (days: string) => `${days} to touch`,
    note: "The days of linseed oil alone times all of these are what the rules expect.",
    trials: {
      caption: "The workshop's trials",
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
      caption: "Let down with a white",
      columns: { white: "White", class: "Drying", days: "Touch dry" },
      note: (parts: number) =>
        `Reckoned for 1 part of the colour to ${parts} of white by mass of paint, the two oils and any drier mixed in proportion. Where the workshop tried it in a white, the trial stands.`,
    },
    grounds: "Grounds",
  },
  permanence: {
    ownExposure: (category: string) =>
      `Its colour change lies in the range of category ${category}, in an exposure of the workshop's own. That is no category under the standard.`,
    names: { "own exposure": "Colour change as in category" } as Readonly<Record<string, string>>,
    fact: (category: string) =>
      `in our own exposure, as much as category ${category} allows; not the standard's test`,
    order: (category: string) => `As in category ${category}, by the workshop's own exposure`,
    cell: "own exposure",
    forms: {
      caption: "Masstone and tint apart",
      columns: {
        form: "Form",
        change: "Change, \u0394E*ab",
        category: "As in category",
        standard: "Standard",
        exposure: "Exposure",
      },
      names: { masstone: "Masstone", tint: "Tint" } as Readonly<Record<string, string>>,
      stated: "as stated",
      notExposed: "not exposed",
      note: "The form that was exposed is the form that is rated; the other may differ by a category or more.",
    },
    contradictions: "Where exposure and word disagree",
  },
  labelText: {
    heading: "Label text",
    lead: "To copy onto a label, the lot to be written in. Worked out from these records: the maker answers for the label, the law of each market decides what it must carry.",
    link: "What each line means",
    vehicle: "Vehicle: ",
    pigment: "Pigment: ",
    pigments: "Pigments: ",
    with: " with ",
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
    lead: "From the leanest to the one that takes most oil, by mass of pigment and then by volume of it. By mass a light pigment seems to drink far more than a heavy one; by volume most of that goes.",
    columns: { place: "Place", colour: "Colour", oilIndex: "By mass", byVolume: "By volume" },
    notStated: "Oil not stated",
  },
} as const;

function ordinal(place: number): string {
  const tens = place % 100;
  const ending = tens > 10 && tens < 14 ? "th" : (["th", "st", "nd", "rd"][place % 10] ?? "th");
  return `${place}${ending}`;
}
