import type { Colour, Records } from "../records/records.ts";
import type { CautionsSection, OfferSection } from "./handling-sections.ts";

/**
 * What a paint is put up in and what it costs. A page is read in every market: as
 * soon as one of the workshop's forbids the general sale there is no price on it.
 */
export function offerSection({ record: { sizes = [] } }: Colour, { notForSale, onLegalBasis }: CautionsSection, { workshop: { currency } }: Records): OfferSection | undefined {
  if (sizes.length === 0) return undefined;
  const withheldFor = [...notForSale, ...onLegalBasis];
  const priced = withheldFor.length === 0 && currency !== undefined;
  return {
    ...(priced ? { currency } : {}),
    sizes: sizes.map(({ ml, price }) => ({ ml, ...(priced && price !== undefined ? { price } : {}) })),
    withheldFor,
  };
}
