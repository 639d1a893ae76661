import { expect, test } from "vitest";
import { LABEL_PAGE } from "../../lib/words/pages/label-page.ts";
import { saidIn } from "../../lib/words/texts.ts";
import { LABELS_PAGE } from "../../lib/pages/label-page.ts";
import { at } from "../../lib/quantities/at.ts";
import { orderKeys } from "../../lib/pages/order-keys.ts";
import { pagePlace } from "../../lib/pages/page-context.ts";
import { sixFacts } from "../../lib/pages/six-facts.ts";
import { RECORDS, worked } from "../support/demonstration.ts";

/** Spaces that no line is broken at are taken for any other. */
function factOf(slug: string, named: string): readonly (string | undefined)[] {
  const { context, published } = worked();
  const own = published.find(({ worded }) => worded.sheet.slug === slug);
  const facts = own === undefined ? [] : sixFacts(own.worded, context);
  const told = facts.find(({ name }) => name === named);
  return [told?.word, told?.detail, told?.brief].map((text) => text?.replace(/\s/g, " "));
}

function strengthOf(slug: string): readonly (string | undefined)[] {
  return factOf(slug, "Strength").slice(0, 2);
}

/** By the records: lamp black hung in the workshop's window, bone black has its supplier's word, slate grey is a mixture of that with a white of which neither is on record for the grey itself. */
test("whether it lasts says whose finding that is", () => {
  expect(factOf("lamp-black", "Lasts")).toEqual([
    "Hardly changed",
    "our own window test: no more change than category I of five allows; not the full standard test",
    "our own test",
  ]);
  expect(factOf("bone-black", "Lasts")).toEqual([
    "Excellent",
    "category I of five, the supplier’s word for its pigment; not tested here",
    "stated, not tested",
  ]);
  expect(factOf("slate-grey", "Lasts")).toEqual([
    "Excellent",
    "category I of five, taken from its pigments; the mixture was not tested here",
    "by its pigments",
  ]);
});

/** An extender has no colour of its own to measure a strength by. */
test("what only lengthens a paint has no strength, and says so in a word", () => {
  for (const medium of ["chalk-medium", "barytes-medium"])
    expect(strengthOf(medium)).toEqual(["None", "it lengthens the paint"]);
});

/** Both are of category I: the window's finding stands before the word, and either before what is only expected. */
test("of one category what was tested stands before what is stated, and that before what is expected", () => {
  const { context, published } = worked();
  const rank = (slug: string): number | undefined => {
    const own = published.find(({ worded }) => worded.sheet.slug === slug);
    return own && orderKeys(own.worded.sheet, context.words).permanenceRank;
  };
  expect(rank("lamp-black")).toBeLessThan(rank("bone-black") ?? NaN);
  expect(rank("bone-black")).toBe(rank("slate-grey"));
  expect(rank("bone-black")).toBeLessThan(rank("barytes-medium") ?? NaN);
  expect(rank("barytes-medium")).toBeLessThan(rank("quinacridone-rose") ?? NaN);
});

test("what strength is measured against has 100 %, and says of itself what white it takes", () => {
  expect(RECORDS.workshop.strengthReference).toBe("lamp-black");
  const [word, detail] = strengthOf("lamp-black");
  expect(word).toBe("100 %");
  expect(detail).toMatch(
    /^others are measured against it; 1 part to \d+ of Titanium White for a middle tone, by volume$/,
  );
  expect(strengthOf("bone-black")[0]).toMatch(/^\d+ % of Lamp Black$/);
});

/** By arithmetic: at one middle tone a black twice as strong, tube for tube, takes twice the white. */
test("strength and the white that a tube takes go by one measure", () => {
  const parts = (slug: string): number =>
    Number(/1 part to ([\d.]+) of Titanium White/.exec(strengthOf(slug)[1] ?? "")?.[1]);
  for (const slug of ["iron-oxide-black", "spinel-black", "bone-black", "furnace-black"]) {
    const percent = Number.parseFloat(strengthOf(slug)[0] ?? "");
    const byWhite = parts(slug) / parts("lamp-black");
    // Both are printed with two digits.
    expect(Math.abs(Math.log(byWhite / (percent / 100)))).toBeLessThan(0.1);
  }
});

test("a colour that does not compare has its parts of white under a name of their own", () => {
  expect(strengthOf("ultramarine-blue")).toEqual([undefined, undefined]);
});

/** By arithmetic: 0.62 parts of white to one of the colour are one to 1/0.62 = 1.6 of it, and 0.25 one to 4. */
test("a colour that takes less white than itself is told as so many parts of it to one of white", () => {
  expect(factOf("cadmium-red", "Middle tone").slice(0, 2)).toEqual([
    "1.6 parts to 1 of white",
    "with Titanium White, by volume",
  ]);
  expect(factOf("burnt-sienna", "Middle tone")[0]).toBe("4.0 parts to 1 of white");
  expect(factOf("phthalocyanine-blue", "Middle tone")[0]).toBe("1 part to 2.6 of white");
});

test("a page that tells what lines of a first screen say has one of its own for what a white does", () => {
  const { context } = worked();
  const rows = (slug: string): readonly (string | undefined)[] => {
    const leadingPair: [string, string] = [slug, "lamp-black"];
    const workshop = { ...context.records.workshop, leadingPair };
    const site = {
      published: [],
      context: { ...context, records: { ...context.records, workshop } },
    };
    return at(LABELS_PAGE.pages(site), 0)
      .view(pagePlace("label/index.html"))
      .sections.flatMap(({ id, blocks }) =>
        id === "sheet"
          ? blocks.flatMap((block) =>
              block.kind === "table" ? block.table.rows.map(([, says]) => says?.text) : [],
            )
          : [],
      );
  };
  const { facts, whitens } = saidIn(context.words.language, LABEL_PAGE).sheet;
  expect(rows("bone-black")).toContain(facts.strength);
  expect(rows("bone-black")).not.toContain(whitens);
  expect(rows("zinc-white")).toContain(whitens);
  expect(rows("zinc-white")).not.toContain(facts.strength);
});
