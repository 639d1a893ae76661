import type { LeftOutStatement } from "../../hazard/classify/applicable-classifications.ts";
import type { TraceStatement, TraceShare } from "../../hazard/classify/finding.ts";
import type { GapStatement, UnknownToxicityStatement } from "../../hazard/label/label-elements.ts";
import type { PackagingStatement } from "../../hazard/label/packaging.ts";
import type { PrecautionStatement } from "../../hazard/label/precautionary-choice.ts";
import type { SmallPackageStatement } from "../../hazard/label/small-package.ts";
import type { LabelDifference } from "../../hazard/label/stated-label.ts";
import type { MarketStatement } from "../../hazard/markets/market-statements.ts";
import type { StudioCaution } from "../../hazard/studio/studio-cautions.ts";
import type { ContainsMetalStatement } from "../../hazard/studio/studio-material.ts";
import { LANGUAGES, type Language } from "../../quantities/languages.ts";
import {
  MARKETS,
  UNITS_OF_PRICE_ML,
  type Market,
  type UnitOfPriceMl,
} from "../../records/schema/terms.ts";
import * as d from "../declaration.ts";
import { closed, listOf, maybe, NUMBER, open, TEXT, type Schema } from "../json-schema.ts";

/** A statement's own line: why it stands on a label, or why it does not. */
interface OfStatement {
  readonly statement: string;
  /** The ingredients that decided, each with its fraction and what its supplier states. */
  readonly shares?: readonly TraceShare[];
}
export type StatementRuling = (TraceStatement | LeftOutStatement | PrecautionStatement) &
  OfStatement;

/** Sentences that each belong to a statement, market or operation. */
function belongingTo(key: string): Schema {
  return listOf(open({ [key]: TEXT, rule: TEXT, text: TEXT }));
}

const MARKET_LIST = d.plain<readonly Market[]>(listOf({ enum: MARKETS }));

/** Elements of one label, in full, with their reasons. */
const LABEL = {
  /** Classes and categories, as the frame names them. */
  classification: d.texts,
  signalWord: d.oneOf(["Danger", "Warning", null]),
  pictograms: d.texts,
  hazardStatements: d.texts,
  precautionaryStatements: d.texts,
  supplemental: d.texts,
  /** Substances that EUH208 names. */
  sensitisers: d.texts,
  /** Text of signal word and statements in the workshop's languages, English always; a language without a text of its own is left out. */
  texts: d.plain<Readonly<Record<string, Partial<Record<Language, string>>>>>({
    type: "object",
    additionalProperties: {
      type: "object",
      required: ["en"],
      properties: Object.fromEntries(LANGUAGES.map((language) => [language, TEXT])),
      additionalProperties: false,
    },
  }),
  /** Why each statement stands there: ingredient, fraction, limit, source. */
  traces: d.plain<readonly StatementRuling[]>(belongingTo("statement")),
  /** What ingredients state and the label does not carry, with the cause. */
  leftOut: d.plain<readonly StatementRuling[]>(belongingTo("statement")),
  /** Ingredients without hazard data: to be treated as hazardous. */
  unknown: d.texts,
  /** The same in a sentence each, and what of the whole nobody accounts for. */
  gaps: d.statementsAmong<GapStatement>(),
  unknownAcuteToxicity: d.statementsAmong<UnknownToxicityStatement>(),
  /** Metals that the label itself names, with what to leave, since no statement on it tells of them. */
  notClassified: d.statementsAmong<ContainsMetalStatement>(),
  /** Substances that bring the classification about: the label names them. */
  substances: d.texts,
  /** What the package has to have where the public can buy it. */
  packaging: d.statementsAmong<PackagingStatement>(),
};
export type LabelPart = d.PartsOf<typeof LABEL>;

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

const HANDLED_PARTS = d.plain<readonly HandledPart[]>({
  type: "array",
  items: {
    type: "object",
    required: [
      "slug",
      "name",
      "known",
      "signalWord",
      "pictograms",
      "hazardStatements",
      "precautionaryStatements",
      "supplemental",
      "texts",
    ],
  },
});

/** One size of a paint, and what it costs. */
export interface SizeOnOffer {
  readonly ml: number;
  /** In the offer's currency. */
  readonly price?: number;
  /** What one unit of measurement costs; absent where that is the price. @source price-indication-98-6-ec Article 3 */
  readonly unitPrice?: { readonly ml: UnitOfPriceMl; readonly price: number };
}

/** Sizes, and prices only where no market of the workshop forbids the sale: a page is read in all of them. */
export const OFFER = d.section({
  currency: d.optional(d.text),
  sizes: d.plain<readonly SizeOnOffer[]>(
    listOf(
      closed({
        ml: NUMBER,
        price: maybe(NUMBER),
        unitPrice: maybe(closed({ ml: { enum: UNITS_OF_PRICE_ML }, price: NUMBER })),
      }),
    ),
  ),
  /** Markets for whose sake no price stands here. */
  withheldFor: MARKET_LIST,
  /** Ingredients without hazard data: not classified, so not offered anywhere. */
  notClassified: d.optional(d.texts),
});
export type OfferSection = d.SectionOf<typeof OFFER>;

/** Label elements as the maker states them, else worked out; markets; cautions of the studio by operation. */
export const CAUTIONS = d.section({
  frame: d.text,
  edition: d.text,
  basis: d.oneOf(["stated by the maker", "worked out"]),
  ...LABEL,
  /** Where the maker's label and the worked-out one differ. */
  checks: d.statementsAmong<LabelDifference>(),
  /** What the label of a small package may leave out; a sheet never does. */
  smallPackage: d.optional(d.plain<SmallPackageStatement>(TEXT)),
  restrictions: d.plain<
    readonly (MarketStatement & {
      readonly market: Market;
      readonly effect: string;
      readonly met: boolean;
    })[]
  >(belongingTo("market")),
  /** Markets of the workshop where it may not be sold, for want of a legal basis on record. */
  notForSale: MARKET_LIST,
  /** Markets where it is sold on a legal basis alone, and so without price, card or offer. */
  onLegalBasis: MARKET_LIST,
  studio: d.plain<readonly StudioCaution[]>(belongingTo("operation")),
  dryPigment: HANDLED_PARTS,
  /** Oils, driers and thinners that carry a hazard of their own, or of which nothing is known. */
  additions: HANDLED_PARTS,
  /** Unique formula identifier, of a stated label or a worked-out one. */
  ufi: d.optional(d.text),
  /** Of a label that the maker states. */
  maker: d.optional(
    d.section({
      date: d.text,
      dataSheet: d.optional(d.section({ url: d.text, date: d.optional(d.text) })),
      /** A toxicologist's review that took place; `wording` quotes it. */
      review: d.optional(d.section({ by: d.text, date: d.text, wording: d.optional(d.text) })),
      /** Unique formula identifier. */
      ufi: d.optional(d.text),
    }),
  ),
});
export type CautionsSection = d.SectionOf<typeof CAUTIONS>;
