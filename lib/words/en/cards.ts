/** What a shelf card says beside what its sheet says, and the page of all cards. */
export const CARDS = {
  /** Under a tint, where its neighbours are whites as well. */
  white: (name: string) => name.replace(/\s+white$/i, ""),
  tint: (white: string, level: string) => `${white}, ${level}`,
  masstone: "Masstone",
  noColour: "not read yet",
  chip: "painted drawdown",
  noTint: "What it does in a white is not stated.",
  extender: "An extender medium.",
  isWhite: (count: number) =>
    count === 1
      ? "A white: one colour of the range was let down in it."
      : `A white: ${count} colours of the range were let down in it.`,
  overleaf: "Statements overleaf.",
  ragLead: "Oily rags can catch fire by themselves: see overleaf.",
  ragShort: "Oily rags can self-ignite.",
  basisWorkedOut: (frame: string, edition: string) => `Label by ${frame}: ${edition}.`,
  drawdown: "Printed colour only comes near: a painted drawdown rules.",
  approximateNote: "This one was read under another light and adapted.",
  lot: (number: string) => `Lot\u00a0${number}`,
  revision: (revision: string) => `Card\u00a0${revision}`,
  address: (address: string) => `QR code of the sheet\u2019s address, ${address}`,
  continued: (name: string) => `${name}, continued`,
  document: {
    title: (workshop: string, size: string) => `${workshop}: shelf cards, ${size}`,
    subject: (count: number) => `${count} shelf card${count === 1 ? "" : "s"}`,
    card: (name: string) => `Card of ${name}`,
  },
  page: {
    heading: "Shelf cards",
    lead: (size: string, width: string, height: string) =>
      `Every card as it prints in the size ${size}, ${width} \u00d7 ${height} mm: front and back. A screen does not show a paint; nor does a printer quite.`,
    sizes: "Sizes",
    front: "front",
    back: "back",
    leaf: (leaf: number, side: string) => `leaf ${leaf}, ${side}`,
    withoutHeading: "Without a card",
    without: (markets: readonly string[]) =>
      `may be sold in ${markets.join(", ")} on a legal basis alone, or not at all: no card, no price`,
    lacks: (lacks: readonly ("colour" | "price")[]) =>
      lacks.map((lack) => (lack === "colour" ? "no colour read yet" : "no price")).join(", "),
    notClassified:
      "is not classified yet, for want of a safety data sheet, and so is not for sale: no card, no price",
    pdf: (size: string) => `these cards to print and cut, ${size}`,
    link: "shelf cards, each as it prints",
  },
  /** The list of reprints. */
  reprint: {
    fresh: "a new card",
    gone: "no card any more: take it off the shelf",
    changed: (what: string, before: string, now: string) =>
      `${what}: \u201c${before}\u201d is now \u201c${now}\u201d`,
    added: (what: string, now: string) => `${what}: now \u201c${now}\u201d`,
    removed: (what: string, before: string) => `${what}: no longer \u201c${before}\u201d`,
  },
  /** Names of what a card states, as the list of reprints has them. */
  states: {
    name: "Name",
    madeOf: "Made of",
    masstone: "Masstone",
    tints: "Tints",
    sentence: "In the whites",
    lightfastness: "Lasts",
    opacity: "Opacity",
    drying: "Dries",
    strength: "Strength",
    signalWord: "Signal word",
    pictograms: "Pictograms",
    statements: "Statements",
    precautions: "Precautions",
    unknown: "Contents and hazard data",
    rags: "Rags",
    sizes: "Sizes and prices",
    poisonCentre: "Poison centre",
    basis: "Ground of the label",
    address: "Address",
    lot: "Lot",
    imprint: "Imprint",
  },
} as const;
