import type { Quantity } from "../../quantities/interval.ts";
import type { LeftOutStatement } from "../../hazard/classify/applicable-classifications.ts";
import type { TraceStatement } from "../../hazard/classify/finding.ts";
import type { GapStatement, UnknownToxicityStatement } from "../../hazard/label/label-elements.ts";
import type { PackagingStatement } from "../../hazard/label/packaging.ts";
import type { PrecautionStatement } from "../../hazard/label/precautionary-choice.ts";
import type { SmallPackageStatement } from "../../hazard/label/small-package.ts";
import type { LabelDifference } from "../../hazard/label/stated-label.ts";
import type { MarketStatement } from "../../hazard/markets/market-statements.ts";
import type { CautionStatement } from "../../hazard/studio/studio-cautions.ts";
import type { ContainsMetalStatement, StudioReason } from "../../hazard/studio/studio-material.ts";
import type { Language, Market } from "../../records/schema/terms.ts";
import type { SourceKey } from "../../sources/source.ts";

/** A statement's own line: why it stands on a label, or why it does not. */
interface OfStatement {
  readonly statement: string;
  /** The ingredients that decided, each with its fraction and what its supplier states. */
  readonly shares?: readonly {
    readonly slug: string;
    readonly name: string;
    readonly massFraction: Quantity;
    readonly statement?: string;
    readonly source?: SourceKey;
  }[];
}
export type StatementRuling = (TraceStatement | LeftOutStatement | PrecautionStatement) &
  OfStatement;

/** Elements of one label, in full, with their reasons. */
export interface LabelPart {
  /** Classes and categories, as the frame names them. */
  readonly classification: readonly string[];
  readonly signalWord: "Danger" | "Warning" | null;
  readonly pictograms: readonly string[];
  readonly hazardStatements: readonly string[];
  readonly precautionaryStatements: readonly string[];
  readonly supplemental: readonly string[];
  /** Substances that EUH208 names. */
  readonly sensitisers: readonly string[];
  /** Text of signal word and statements in the workshop's languages, English always; a language without a text of its own is left out. */
  readonly texts: Readonly<Record<string, Partial<Record<Language, string>>>>;
  /** Why each statement stands there: ingredient, fraction, limit, source. */
  readonly traces: readonly StatementRuling[];
  /** What ingredients state and the label does not carry, with the cause. */
  readonly leftOut: readonly StatementRuling[];
  /** Ingredients without hazard data: to be treated as hazardous. */
  readonly unknown: readonly string[];
  /** The same in a sentence each, and what of the whole nobody accounts for. */
  readonly gaps: readonly GapStatement[];
  readonly unknownAcuteToxicity: readonly UnknownToxicityStatement[];
  /** Metals that the label itself names, with what to leave, since no supplier classifies them. */
  readonly notClassified: readonly ContainsMetalStatement[];
  /** Substances that bring the classification about: the label names them. */
  readonly substances: readonly string[];
  /** What the package has to have where the public can buy it. */
  readonly packaging: readonly PackagingStatement[];
}

/** A dry pigment, drier or thinner on its own, as the studio meets it before it is paint. */
export interface HandledPart extends LabelPart {
  readonly slug: string;
  readonly name: string;
  /** False: no hazard data. */
  readonly known: boolean;
  /** Address of its supplier's safety data sheet. */
  readonly dataSheet?: string;
  readonly frame: string;
  readonly edition: string;
}

/** Sizes, and prices only where no market of the workshop forbids the sale: a page is read in all of them. */
export interface OfferSection {
  readonly currency?: string;
  readonly sizes: readonly { readonly ml: number; readonly price?: number }[];
  /** Markets for whose sake no price stands here. */
  readonly withheldFor: readonly Market[];
  /** Ingredients without hazard data: not classified, so not offered anywhere. */
  readonly notClassified?: readonly string[];
}

export interface CautionsSection extends LabelPart {
  readonly frame: string;
  readonly edition: string;
  readonly basis: "stated by the maker" | "worked out";
  /** Where the maker's label and the worked-out one differ. */
  readonly checks: readonly LabelDifference[];
  /** What the label of a small package may leave out; a sheet never does. */
  readonly smallPackage?: SmallPackageStatement;
  readonly restrictions: readonly (MarketStatement & {
    readonly market: Market;
    readonly effect: string;
    readonly met: boolean;
  })[];
  /** Markets of the workshop where it may not be sold, for want of a legal basis on record. */
  readonly notForSale: readonly Market[];
  /** Markets where it is sold on a legal basis alone, and so without price, card or offer. */
  readonly onLegalBasis: readonly Market[];
  readonly studio: readonly (CautionStatement & {
    readonly operation: string;
    readonly reason: StudioReason;
    /** Whether it holds for every colour alike. */
    readonly general: boolean;
  })[];
  readonly dryPigment: readonly HandledPart[];
  /** Oils, driers and thinners that carry a hazard of their own, or of which nothing is known. */
  readonly additions: readonly HandledPart[];
  /** Of a label that the maker states. */
  readonly maker?: {
    readonly date: string;
    readonly dataSheet?: { readonly url: string; readonly date?: string };
    /** A toxicologist's review that took place; `wording` quotes it. */
    readonly review?: { readonly by: string; readonly date: string; readonly wording?: string };
    /** Unique formula identifier. */
    readonly ufi?: string;
  };
}
