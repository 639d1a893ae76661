import { describe, expect, test } from "vitest";
import { contrastRange, contrastText, hidesText } from "../../lib/present/mix-facts-text.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";

const hides = (ratio: number, uncertainty: number): string =>
  hidesText({ ratio, uncertainty }, ENGLISH.pages.mixing);

/** ISO 6504-3 and ASTM D2805, memory: from a contrast ratio of 0.98 on a film is taken to hide. */
describe("whether a film of a mixture hides", () => {
  test.each([
    [0.997, 0.004, "hides a chart at 75\u00a0µm (contrast ratio 0.99\u20131)"],
    [0.985, 0.005, "hides a chart at 75\u00a0µm (contrast ratio 0.98\u20130.99)"],
    [0.98, 0.02, "may hide a chart at 75\u00a0µm (contrast ratio 0.96\u20131)"],
    [0.979, 0.0, "may hide a chart at 75\u00a0µm (contrast ratio 0.97\u20130.98)"],
    [0.94, 0.02, "does not hide a chart at 75\u00a0µm (contrast ratio 0.92\u20130.96)"],
    [0.974, 0.005, "does not hide a chart at 75\u00a0µm (contrast ratio 0.96\u20130.97)"],
  ])("%s ±%s: %s", (ratio, uncertainty, said) => {
    expect(hides(ratio, uncertainty)).toBe(said);
  });

  /** Derived: over white a film reflects at least as much as over black, as far as reading goes. */
  test("no contrast ratio is said to pass 1", () => {
    expect(contrastText(contrastRange({ ratio: 1.02, uncertainty: 0.01 }))).toBe("1");
  });

  test("is not known where no film could be worked out", () => {
    expect(hidesText(undefined, ENGLISH.pages.mixing)).toBe("not known");
  });
});
