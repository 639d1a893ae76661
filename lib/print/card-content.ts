import type { PaintColour } from "../blocks/block.ts";
import type { OfferView } from "../blocks/page-kinds.ts";
import type { Language } from "../quantities/languages.ts";

/** What a shelf card says of one colour, worded and complete; how it is laid out is another matter. */
export interface CardContent {
  readonly slug: string;
  readonly name: string;
  /** "Bone black (PBk 9), milled in cold-pressed linseed oil" */
  readonly madeOf: string;
  /** "PBk 9", "PB 29, PBk 9": where there is no room for more. */
  readonly indexNames: string;
  /** Absent where no colour is known. */
  readonly masstone?: PaintColour;
  /** That the masstone was read in a thicker layer than any that is painted; absent of what hides. */
  readonly masstoneNote?: string;
  /** At one lightness in each white, at most three. */
  readonly tints: readonly CardTint[];
  /** To 60 characters. */
  readonly sentence: string;
  readonly facts: Readonly<Record<CardFactName, CardFact>>;
  readonly label: CardLabel;
  /** Of a paint in drying oil, or in an oil that is not on record. */
  readonly rags?: CardRags;
  readonly sizes: readonly OfferView[];
  /** Of the sheet; absent where the workshop's records give no address. */
  readonly address?: string;
  /** Where in a painting it belongs, on a back that has room; absent where its drying is not known. */
  readonly layers?: string;
  /** How strong it is beside the reference, on the back; absent where it is not of one kind with that. */
  readonly strength?: string;
  readonly poisonCentre: string;
  /** Defers to label, safety data sheet, local codes and licensed practice. */
  readonly deference: string;
  readonly drawdownNote: string;
  /** "Lot BB-2602": of the paint that stands beside it; absent where no lot is on record. */
  readonly lot?: string;
  /** Workshop, contact, and that it is a demonstration. */
  readonly imprint: readonly string[];
}

/** What is said of oily rags, in each language of the card. */
export interface CardRags {
  /** On the back. */
  readonly full: string;
  /** On the front, where a sentence finds room, and where it does not. */
  readonly lead: string;
  readonly short: string;
}

/** In the order in which every card says them; strength as what makes a middle tone, which is told of every colour alike: beside the reference only those of one kind with it are. */
export const CARD_FACTS = ["lightfastness", "opacity", "drying", "strength"] as const;
export type CardFactName = (typeof CARD_FACTS)[number];

export interface CardFact {
  /** "Lasts" */
  readonly name: string;
  /** "Excellent, stated, not tested" */
  readonly text: string;
}

export interface CardTint {
  readonly colour: PaintColour;
  /** "Titanium" */
  readonly white: string;
  /** "Titanium White, middle" */
  readonly caption: string;
}

export interface CardLabel {
  /** In each language, the leading one first; empty when there is none. */
  readonly signalWords: readonly string[];
  readonly pictograms: readonly { readonly code: string; readonly name: string }[];
  /** In place of statements that are on the back alone. */
  readonly overleaf: string;
  /** H and EUH, in the label's order. */
  readonly statements: readonly CardStatement[];
  readonly precautions: readonly CardStatement[];
  /** What is not known, and metals that no statement tells of. */
  readonly notice?: string;
  /** "Worked out from the suppliers' data by EU CLP ..."; absent where the label is empty. */
  readonly basis?: string;
}

export interface CardStatement {
  /** Absent of a line that has none. */
  readonly code?: string;
  /** One a language; a language without an official text stays out, since English always stands there. */
  readonly texts: readonly { readonly language: Language; readonly text: string }[];
}
