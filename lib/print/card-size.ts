import type { Language } from "../quantities/languages.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";

export const PAPER_SIZES = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof PAPER_SIZES;

/** A size of card with everything settled that its record leaves open. */
export interface CardSize {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly paper: Paper;
  /** Else front and back lie on one side, with a fold between them. */
  readonly twoSided: boolean;
  /** A marked box for a painted chip. */
  readonly chip: boolean;
  /** Of the label's statements, the first one leading. */
  readonly languages: readonly Language[];
}

/** For a workshop that records none: a card of a business card's size, one of A7, a strip for a shelf's rail. */
const BUILT_IN: NonNullable<WorkshopRecord["cards"]> = [
  { name: "90x55", widthMm: 90, heightMm: 55 },
  { name: "105x74", widthMm: 105, heightMm: 74 },
  { name: "strip", widthMm: 110, heightMm: 38 },
];

/** Sizes of a workshop, the leading one first. */
export function cardSizes({
  cards = BUILT_IN,
  paper,
  languages = ["en"],
}: Pick<WorkshopRecord, "cards" | "paper" | "languages">): CardSize[] {
  return cards.map((size) => ({
    name: size.name,
    widthMm: size.widthMm,
    heightMm: size.heightMm,
    paper: size.paper ?? paper ?? "A4",
    twoSided: size.twoSided ?? true,
    chip: size.chip ?? false,
    languages: size.languages ?? languages,
  }));
}
