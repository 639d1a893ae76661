import type { Colour, Records } from "../../records/records.ts";
import type { Market } from "../../records/schema/terms.ts";
import { colourRecord, restingOn, WORKSHOP } from "../record-inputs.ts";
import type { CautionsSection, OfferSection } from "./handling-sections.ts";

/** Markets for whose sake a paint has no price and no card: no sale there, or on a legal basis alone. */
export function marketsWithoutOffer({
  notForSale,
  onLegalBasis,
}: Pick<CautionsSection, "notForSale" | "onLegalBasis">): Market[] {
  return [...new Set([...notForSale, ...onLegalBasis])];
}

/**
 * What a paint is put up in and what it costs. A page is read in every market: as
 * soon as one of the workshop's forbids the general sale there is no price on it.
 */
export function offerSection(
  colour: Colour,
  cautions: CautionsSection,
  { workshop: { currency } }: Records,
): OfferSection | undefined {
  const { sizes = [] } = colour.record;
  if (sizes.length === 0) return undefined;
  const withheldFor = marketsWithoutOffer(cautions);
  const priced = withheldFor.length === 0 && currency !== undefined;
  return restingOn([...colourRecord(colour, "sizes", "legalBasis"), WORKSHOP], {
    ...(priced ? { currency } : {}),
    sizes: sizes.map(({ ml, price }) => ({
      ml,
      ...(priced && price !== undefined ? { price } : {}),
    })),
    withheldFor,
  });
}
