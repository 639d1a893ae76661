/** What changed on a site: its feed, and what a publish tells before anything moves. */
export const CHANGES = {
  feedTitle: (workshop: string) => `${workshop}: what changed`,
  new: { colour: "A new colour.", answer: "A new question, answered." },
  gone: { colour: "No longer among the colours.", answer: "No longer among the questions." },
  otherwise: {
    colour: "Something else on its sheet changed.",
    answer: "The answer changed.",
  },
  discontinued: (date: string) => `Discontinued from ${date}.`,
  renamed: (before: string, now: string) => `\u201c${before}\u201d is now \u201c${now}\u201d.`,
  figure: (what: string, before: string, now: string) => `${what}: ${now}; it was ${before}.`,
  figureCame: (what: string, now: string) => `${what}: now ${now}.`,
  figureWent: (what: string, before: string) => `${what}: no longer stated; it was ${before}.`,
  sizes: "Sizes and prices",
  photographs: "Photographs",
  said: {
    madeOf: "Made of",
    sentence: "In white",
    lightfastness: "Lightfastness",
    summary: "The short answer",
  },
  signalWord: "Signal word",
  noSignalWord: "none",
  cautions: {
    pictograms: "Pictogram",
    hazardStatements: "Hazard statement",
    precautionaryStatements: "Precautionary statement",
    supplemental: "Supplemental statement",
    studio: "Caution for the studio",
  },
  came: (what: string, text: string) => `${what}: now ${text}.`,
  went: (what: string, text: string) => `${what}: no longer ${text}.`,
};
