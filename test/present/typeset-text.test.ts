import { expect, test } from "vitest";
import { typesetText, unbrokenNumber } from "../../lib/words/typeset-text.ts";
import { typeset } from "../../lib/site/typeset.ts";

/** Apostrophes and non-breaking spaces as typesetters set them: common practice, no source. */
test.each([
  ["the maker's label, suppliers' data", "the maker\u2019s label, suppliers\u2019 data"],
  ["the maker&#39;s label", "the maker\u2019s label"],
  ["6' by 4'", "6' by 4'"],
  ["b* \u22127.3 at L* 50", "b*\u00a0\u22127.3 at L*\u00a050"],
  ["C*ab 1.2, a* and b*", "C*ab\u00a01.2, a* and b*"],
  [
    "alike (\u0394E00 1.3), PVC 0.78, category II",
    "alike (\u0394E00\u00a01.3), PVC\u00a00.78, category\u00a0II",
  ],
  ["oil index x density, 1/(1 + OA rho/93.5)", "oil index \u00d7 density, 1/(1 + OA \u03c1/93.5)"],
  ["nothing to set", "nothing to set"],
])("%s", (typed, set) => {
  expect(typesetText(typed)).toBe(set);
});

test.each([
  ["020 7946 0123 (an invented number)", "020\u00a07946\u00a00123 (an invented number)"],
  ["+44 (0)1632-960 199, or a doctor", "+44\u00a0(0)1632-960\u00a0199, or a doctor"],
  ["030 / 901 82-0", "030\u00a0/\u00a0901\u00a082-0"],
])("a telephone number stays in one line: %s", (written, set) =>
  expect(unbrokenNumber(written)).toBe(set),
);

test("a range on a page stays in one line, in whatever language", () => {
  expect(typeset("<p>8–10 Tage, 1,5–4 jours; Titanium – white, a–b</p>")).toBe(
    "<p>8–\u206010 Tage, 1,5–\u20604 jours; Titanium – white, a–b</p>",
  );
});

test("a page's text is typeset, its markup and what is copied from it are not", () => {
  expect(
    typeset(`<p title="maker's">maker's</p><pre>maker's</pre><textarea rows="2">b* 3</textarea>`),
  ).toBe(`<p title="maker's">maker\u2019s</p><pre>maker's</pre><textarea rows="2">b* 3</textarea>`);
});
