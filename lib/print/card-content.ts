import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { StandingKind } from "../quantities/figure.ts";
import type { Language } from "../records/schema/terms.ts";
import type { PrintedLab } from "./printed-lab.ts";

/** What a shelf card says of one colour, worded and complete; how it is laid out is another matter. */
export interface CardContent {
  readonly slug: string;
  readonly name: string;
  readonly family: string | undefined;
  /** "Bone black (PBk 9), milled in cold-pressed linseed oil" */
  readonly madeOf: string;
  /** "PBk 9", "PB 29, PBk 9". */
  readonly indexNames: string;
  /** Absent where no colour is known. */
  readonly masstone?: CardSwatch;
  /** At most two, at equal L*. */
  readonly tints: readonly CardSwatch[];
  /** To 60 characters. */
  readonly sentence: string;
  readonly facts: Readonly<Record<CardFactName, CardFact>>;
  readonly label: CardLabel;
  /** Of a paint in drying oil, or in an oil that is not on record. */
  readonly rags?: string;
  readonly sizes: readonly { readonly size: string; readonly price?: string }[];
  /** Of the sheet; absent where the workshop's records give no address. */
  readonly address?: string;
  readonly poisonCentre: string;
  /** Defers to label, safety data sheet, local codes and licensed practice. */
  readonly deference: string;
  readonly drawdownNote: string;
  /** Workshop, contact, and that it is a demonstration. */
  readonly imprint: readonly string[];
}

export type CardFactName = "lightfastness" | "opacity" | "drying" | "strength" | "munsell";
export const CARD_FACTS: readonly CardFactName[] = [
  "lightfastness",
  "opacity",
  "drying",
  "strength",
  "munsell",
];

export interface CardFact {
  readonly name: string;
  readonly text: string;
  readonly standing: StandingKind;
}

export interface CardSwatch extends PrintedLab {
  readonly screen: ScreenColour;
  /** "Masstone", "Titanium white, L* 50"; of a tint its white and its lightness apart. */
  readonly caption: string;
  readonly white?: string;
  readonly level?: string;
  readonly standing: StandingKind;
}

export interface CardLabel {
  /** In each language, the leading one first; empty when there is none. */
  readonly signalWords: readonly string[];
  readonly pictograms: readonly { readonly code: PictogramCode; readonly name: string }[];
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
