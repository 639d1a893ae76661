import {
  list,
  oneOf,
  optional,
  plainNumber,
  quantity,
  section,
  statements,
  text,
  type SectionOf,
} from "../declaration.ts";

const FILLING = section({
  /** "paint", "lamp-black-poured", "lamp-black-tapped". */
  slug: text,
  /** The pigment, where it is a dry one. */
  pigment: optional(text),
  packing: oneOf(["paint", "poured", "tapped"]),
  holds: list(
    section({
      slug: text,
      ml: plainNumber,
      massG: quantity({ unit: "g", kind: "significant", digits: 3, word: "fillHolds" }),
    }),
  ),
  takesMlPer100g: quantity({ unit: "ml", kind: "significant", digits: 3, word: "fillTakes" }),
});
export type Filling = SectionOf<typeof FILLING>;

/** What jars and tubes hold, and the reverse. */
export const FILL = section({
  fillings: list(FILLING),
  /** Whether 100 g of a dry pigment fill a jar. */
  sentences: statements,
});
export type FillSection = SectionOf<typeof FILL>;
