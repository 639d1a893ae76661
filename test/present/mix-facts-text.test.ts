import { describe, expect, test } from "vitest";
import {
  contrastRange,
  contrastText,
  hidesText,
  percentText,
} from "../../lib/present/mix-facts-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";

const hides = (contrastRatio: number, contrastUncertainty: number, isDark = false): string =>
  hidesText(
    { class: "transparent", isDark, contrastRatio, contrastUncertainty },
    ENGLISH.pages.mixing,
    ENGLISH.numbers,
  );

/** ISO 6504-3 and ASTM D2805, memory: from a contrast ratio of 0.98 on a film is taken to hide. */
describe("whether a film of a mixture hides", () => {
  test.each([
    [0.997, 0.004, "hides a chart at 75\u00a0µm (contrast ratio 0.99\u20131)"],
    [0.985, 0.005, "hides a chart at 75\u00a0µm (contrast ratio 0.98\u20130.99)"],
    [0.98, 0.02, "may hide a chart at 75\u00a0µm (contrast ratio 0.96\u20131)"],
    [0.979, 0.0, "may hide a chart at 75\u00a0µm (contrast ratio 0.97\u20130.98)"],
    [0.975, 0.005, "may hide a chart at 75\u00a0µm (contrast ratio 0.97\u20130.98)"],
    [0.94, 0.02, "does not hide a chart at 75\u00a0µm (contrast ratio 0.92\u20130.96)"],
    [0.974, 0.005, "does not hide a chart at 75\u00a0µm (contrast ratio 0.96\u20130.97)"],
  ])("%s ±%s: %s", (ratio, uncertainty, said) => {
    expect(hides(ratio, uncertainty)).toBe(said);
  });

  /** Derived: over white a film reflects at least as much as over black, as far as reading goes. */
  test("no contrast ratio is said to pass 1", () => {
    expect(
      contrastText(
        contrastRange({ contrastRatio: 1.02, contrastUncertainty: 0.01 }),
        ENGLISH.numbers,
      ),
    ).toBe("1");
  });

  /** ISO 6504-3: up to Y 0.25 over white the contrast ratio of a film tells of its darkness alone. */
  test("of a dark film is told by its class, whatever chart its darkness hides", () => {
    expect(hides(0.997, 0.004, true)).toBe(
      "transparent at 75\u00a0µm, though it swallows enough light to hide a chart",
    );
    expect(hides(0.9, 0.004, true)).toBe("transparent at 75\u00a0µm");
  });

  test("is not known where no film could be worked out", () => {
    expect(hidesText(undefined, ENGLISH.pages.mixing, ENGLISH.numbers)).toBe("not known");
  });
});

/** Derived: no part is more than the whole. */
test.each([
  [0.12, 0.02, "12\u00a0% \u00b12"],
  [0.12, 0.001, "12\u00a0% \u00b11"],
  [0.87, 0.13, "87\u00a0% \u00b113"],
  [0.88, 0.29, "88\u00a0% +12 \u221229"],
  [0.99, 0.13, "99\u00a0% +1 \u221213"],
  [1, 0.13, "100\u00a0% \u221213"],
])("a share of %s \u00b1%s is told as %s", (value, p68, said) => {
  expect(percentText({ value, p68 })).toBe(said);
});
