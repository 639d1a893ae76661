import { expect, test } from "vitest";
import { oilLine } from "../../lib/pages/oil-line.ts";
import { pagePlace } from "../../lib/pages/page-context.ts";
import { pageOfSheet } from "../../lib/pages/page-of-sheet.ts";
import { certain } from "../../lib/quantities/at.ts";
import { derivedFigure } from "../../lib/quantities/derived-figure.ts";
import { mainOil } from "../../lib/sheet/oil/main-oil.ts";
import { worked } from "../support/demonstration.ts";

/** By the records: bone black's oil index was weighed, spinel black's stands there without a word on it. */
function pageOf(slug: string): Parameters<typeof oilLine>[0] {
  const { context, published } = worked();
  const own = published.find(({ worded }) => worded.sheet.slug === slug);
  return pageOfSheet(certain(own).worded, context, pagePlace(`colours/${slug}/index.html`));
}

const lineOf = (page: Parameters<typeof oilLine>[0]): string | undefined =>
  oilLine(page)?.replace(/\s/g, " ");

test("the oil of a paint is told with who found it", () => {
  expect(lineOf(pageOf("bone-black"))).toBe("78 g/100 g of pigment, as we make it.");
  expect(lineOf(pageOf("spinel-black"))).toBe(
    "27 g/100 g of pigment by our record, which does not say how we know.",
  );
});

test("the oil that a mixture brings along in its tubes is worked out, and on no record", () => {
  const page = pageOf("spinel-black");
  const { oil } = page.sheet;
  const mainOilGPer100g = derivedFigure(
    { name: "what of the paints that it was weighed from is not pigment", unit: "g/100 g" },
    { tube: mainOil(oil) },
    ({ tube }) => tube,
  );
  expect(lineOf({ ...page, sheet: { ...page.sheet, oil: { ...oil, mainOilGPer100g } } })).toBe(
    "27 g/100 g of pigment, worked out from the paints it is mixed of.",
  );
});
