import { expect, test } from "vitest";
import { typesetText } from "../../lib/words/typeset-text.ts";
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

test("a page's text is typeset, its markup and what is copied from it are not", () => {
  expect(
    typeset(`<p title="maker's">maker's</p><pre>maker's</pre><textarea rows="2">b* 3</textarea>`),
  ).toBe(`<p title="maker's">maker\u2019s</p><pre>maker's</pre><textarea rows="2">b* 3</textarea>`);
});
