import { expect, test } from "vitest";
import { sixFacts } from "../../lib/pages/six-facts.ts";
import { RECORDS, worked } from "../support/demonstration.ts";

/** Spaces that no line is broken at are taken for any other. */
function strengthOf(slug: string): readonly (string | undefined)[] {
  const { context, published } = worked();
  const own = published.find(({ worded }) => worded.sheet.slug === slug);
  const facts = own === undefined ? [] : sixFacts(own.worded, context);
  const told = facts.find(({ name }) => name === "Strength");
  return [told?.word, told?.detail].map((text) => text?.replace(/\s/g, " "));
}

test("what strength is measured against has 100 %, and says of itself what white it takes", () => {
  expect(RECORDS.workshop.strengthReference).toBe("lamp-black");
  const [word, detail] = strengthOf("lamp-black");
  expect(word).toBe("100 %");
  expect(detail).toMatch(
    /^others are measured against it; \d+ parts of Titanium White to a middle grey, by volume$/,
  );
  expect(strengthOf("bone-black")[0]).toMatch(/^\d+ % of Lamp Black$/);
});
