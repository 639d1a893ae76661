import { expect, test } from "vitest";
import { pagePlace } from "../../lib/pages/page-context.ts";
import { pageOfSheet } from "../../lib/pages/page-of-sheet.ts";
import { dryPigmentBlocks } from "../../lib/pages/safety-blocks.ts";
import { worked } from "../support/demonstration.ts";

function masks(slug: string): readonly string[] {
  const { context, published } = worked();
  const own = published.find(({ worded }) => worded.sheet.slug === slug);
  if (own === undefined) throw new Error(`No sheet of ${slug}`);
  const page = pageOfSheet(own.worded, context, pagePlace(`colours/${slug}/bench/index.html`));
  return JSON.stringify(dryPigmentBlocks(page)).match(/FFP\d/g) ?? [];
}

/** Common practice, no source: for lead, cadmium, manganese and their like the lighter filter is not enough. */
test("a page names one mask: the stronger one where a dust calls for it", () => {
  for (const slug of ["cadmium-red", "lead-white", "burnt-umber", "cobalt-blue"])
    expect(new Set(masks(slug)), slug).toEqual(new Set(["FFP3"]));
  expect(new Set(masks("quinacridone-magenta"))).toEqual(new Set(["FFP2"]));
});
