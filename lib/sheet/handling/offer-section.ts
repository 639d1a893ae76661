import { unitPrice } from "../../formulation/unit-price.ts";
import { coinDigits } from "../../quantities/coin-digits.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { Market, UnitOfPriceMl } from "../../records/schema/terms.ts";
import { colourRecord, restingOn, WORKSHOP } from "../record-inputs.ts";
import type { CautionsSection, SizeOnOffer, OfferSection } from "./handling-sections.ts";

/** Markets for whose sake a paint has no price and no card: no sale there, or on a legal basis alone. */
export function marketsWithoutOffer({
  notForSale,
  onLegalBasis,
}: Pick<CautionsSection, "notForSale" | "onLegalBasis">): Market[] {
  return [...new Set([...notForSale, ...onLegalBasis])];
}

/**
 * Whether a paint has a price, a card and an offer. What holds an ingredient without
 * hazard data is not classified, and so may not be placed on a market
 * (CLP, Article 4(1)).
 */
export function isOffered(
  cautions: Pick<CautionsSection, "notForSale" | "onLegalBasis" | "unknown">,
): boolean {
  return cautions.unknown.length === 0 && marketsWithoutOffer(cautions).length === 0;
}

/**
 * What a paint is put up in and what it costs. A page is read in every market: as
 * soon as one of the workshop's forbids the general sale there is no price on it,
 * nor on a paint that is made no more.
 */
export function offerSection(
  colour: Colour,
  cautions: CautionsSection,
  { workshop: { currency, prices } }: Records,
): OfferSection | undefined {
  const { sizes } = colour;
  const { unknown } = cautions;
  if (sizes.length === 0 && unknown.length === 0) return undefined;
  const isMade = colour.record.discontinued === undefined;
  const priced = isMade && isOffered(cautions) && currency !== undefined;
  return restingOn([...colourRecord(colour, "sizes", "legalBasis", "discontinued"), WORKSHOP], {
    ...(priced && { currency }),
    sizes:
      unknown.length > 0
        ? []
        : sizes.map(({ ml, price }) => ({
            ml,
            ...(priced &&
              price !== undefined && {
                price,
                ...unitPriceOf(price, ml, prices?.unitMl ?? LITRE_ML, currency),
              }),
          })),
    withheldFor: marketsWithoutOffer(cautions),
    ...(unknown.length > 0 && { notClassified: unknown }),
  });
}

const LITRE_ML = 1000;

/** Beside a price what a unit of measurement costs, but where the package holds just that. @source price-indication-98-6-ec Article 3 */
function unitPriceOf(
  price: number,
  ml: number,
  unitMl: UnitOfPriceMl,
  currency: string,
): Pick<SizeOnOffer, "unitPrice"> {
  return ml === unitMl
    ? {}
    : { unitPrice: { ml: unitMl, price: unitPrice(price, ml, unitMl, coinDigits(currency)) } };
}
