import { asMarkup, type Markup } from "../present/views.ts";
import { coinDigits } from "../quantities/coin-digits.ts";
import type { SizeOnOffer } from "../sheet/handling/handling-sections.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { madeOfText } from "./made-of.ts";
import { pictureAddress, type PageContext } from "./page-context.ts";
import { SHARED_PICTURES } from "./shared-picture.ts";
import { ownColour } from "./screen-swatch.ts";
import { pigmentName } from "./pigment-name.ts";

/** What a sheet says of its paint in the terms of schema.org; `<` escaped, so that no record can end the element. */
export function jsonLd(
  sheet: Sheet,
  context: PageContext,
  head: { readonly canonical?: string; readonly description: string },
): Markup {
  const { records, words } = context;
  const pictures = [SHARED_PICTURES.wide, SHARED_PICTURES.square].flatMap(
    (name) => pictureAddress(context, `colours/${sheet.slug}/${name}`) ?? [],
  );
  const data = {
    "@context": "https://schema.org",
    "@type": "Product",
    name: sheet.name,
    description: madeOfText(sheet, words),
    brand: { "@type": "Brand", name: records.workshop.name },
    ...(head.canonical !== undefined && { url: head.canonical }),
    ...(pictures.length > 0 &&
      ownColour(sheet.notations.masstone) !== undefined && { image: pictures }),
    ...offers(sheet, head.canonical),
    material: sheet.pigments.map(pigmentName),
  };
  return asMarkup(JSON.stringify(data).replace(/</g, "\\u003c"));
}

/** One a size with a price; none where a market forbids the general sale. */
function offers({ offer }: Sheet, url: string | undefined): object {
  if (offer?.currency === undefined) return {};
  const { currency } = offer;
  const digits = coinDigits(currency);
  const priced = offer.sizes.flatMap(({ ml, price, unitPrice }) =>
    price === undefined
      ? []
      : {
          "@type": "Offer",
          name: `${ml} ml`,
          price: price.toFixed(digits),
          priceCurrency: currency,
          ...(unitPrice !== undefined && {
            priceSpecification: unitPriceSpecification(unitPrice, currency, digits),
          }),
          ...(url !== undefined && { url }),
        },
  );
  return priced.length === 0 ? {} : { offers: priced };
}

/** What so many millilitres cost; MLT is the millilitre of UN/CEFACT's codes, which schema.org goes by. */
function unitPriceSpecification(
  { ml, price }: NonNullable<SizeOnOffer["unitPrice"]>,
  currency: string,
  digits: number,
): object {
  return {
    "@type": "UnitPriceSpecification",
    price: price.toFixed(digits),
    priceCurrency: currency,
    referenceQuantity: { "@type": "QuantitativeValue", value: ml, unitCode: "MLT" },
  };
}
