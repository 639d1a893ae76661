import { asMarkup, type Markup } from "../present/views.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { madeOfText } from "./made-of.ts";
import type { PageContext } from "./page-context.ts";

/** What a sheet says of its paint in the terms of schema.org; `<` escaped, so that no record can end the element. */
export function jsonLd(
  sheet: Sheet,
  { records, words }: PageContext,
  head: { readonly canonical?: string; readonly description: string },
): Markup {
  const data = {
    "@context": "https://schema.org",
    "@type": "Product",
    name: sheet.name,
    description: madeOfText(sheet, words),
    brand: { "@type": "Brand", name: records.workshop.name },
    ...(head.canonical === undefined ? {} : { url: head.canonical }),
    material: sheet.pigments.map(({ name, colourIndexName }) =>
      colourIndexName === undefined ? name : `${name} (${colourIndexName})`,
    ),
  };
  return asMarkup(JSON.stringify(data).replace(/</g, "\\u003c"));
}
