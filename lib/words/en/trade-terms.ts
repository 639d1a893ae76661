/** Gloss of a trade term, where a page first meets it. */
export const TRADE = {
  masstone: "the colour as it comes from the tube, in a film thick enough to hide its ground",
  undertone: "the colour of a thin film over white",
  tint: "the paint mixed with white, or let down",
  "L* a* b*":
    "lightness from 0 to 100, then green to red and blue to yellow; C* is the distance from grey",
  Munsell: "hue, value from 0 (black) to 10 (white), chroma; N is a neutral",
  "oil index": "grams of oil to 100 g of pigment, in the paint as made",
  "tinting strength": "how far a little of the colour goes in a white",
  specular:
    "of the shine: a glossy black looks deeper, and an instrument can take the shine in or leave it out",
  "d/8": "lit from all sides and read at 8° from upright, the shine taken in or shut out",
  "categories I\u2013V":
    "lightfastness, by how much a colour changes in a standard test; I is the best",
  "blue wool": "eight dyed wools that fade one after another, number 8 last",
  "fat over lean": "more oil in each layer than in the one below",
} as const satisfies Record<string, string>;
