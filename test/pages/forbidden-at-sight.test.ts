import { expect, test } from "vitest";
import { pagePlace } from "../../lib/pages/page-context.ts";
import { pageOfSheet } from "../../lib/pages/page-of-sheet.ts";
import { safetyBlocks } from "../../lib/pages/safety-blocks.ts";
import { CONTEXT } from "../print/demonstration-cards.ts";

function cautionsOf(slug: string) {
  const worded = CONTEXT.sheets.find(({ sheet }) => sheet.slug === slug);
  if (worded === undefined) throw new Error(`Unexpected range without ${slug}`);
  const page = pageOfSheet(worded, CONTEXT, pagePlace(`colours/${slug}/index.html`));
  const blocks = safetyBlocks(page);
  const seen = blocks.flatMap((block) =>
    block.kind === "cautions" ? block.operations.map(({ operation }) => operation) : [],
  );
  const folded = blocks.flatMap((block) => (block.kind === "fold" ? [block.summary] : []));
  const reasons = blocks.flatMap((block) =>
    block.kind === "cautions"
      ? block.operations.flatMap(({ cautions }) => cautions.map(({ reason }) => reason))
      : [],
  );
  return { seen, folded, reasons };
}

/** Common practice: who sands a lead paint does not unfold a line first. */
test.each(["lead-white", "cadmium-red", "cobalt-blue", "yellow-ochre"])(
  "what %s forbids is not under a fold",
  (slug) => {
    const { seen, folded } = cautionsOf(slug);
    expect(seen).toContain("Sanding");
    expect(folded.join(" ")).not.toContain("Sanding");
  },
);

test("what is only rarely done stays under one", () => {
  const { seen, folded } = cautionsOf("cobalt-blue");
  expect(seen).not.toContain("Heating or spraying");
  expect(folded).toContain("Heating or spraying");
});

test("why is said once, of all that it is the reason for", () => {
  expect(cautionsOf("cadmium-red").reasons).toEqual([
    "It holds cadmium.",
    ...[1, 2, 3].map(() => undefined),
    "Under strong acid it can give off hydrogen sulphide and hydrogen selenide, deadly gases (Cadmium sulphoselenide).",
    undefined,
  ]);
});

test("what a strong heat or acid sets free of Prussian blue is not under one", () => {
  const { seen, reasons } = cautionsOf("prussian-blue");
  expect(seen).toContain("Heating or spraying");
  expect(reasons.join(" ")).toContain("hydrogen cyanide, a deadly gas (Prussian blue)");
});
