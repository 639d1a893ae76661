import { expect, test } from "vitest";
import { propertyView } from "../../lib/present/property-view.ts";
import { sourceFigure } from "../../lib/quantities/figure.ts";
import { figureRow } from "../../lib/sheet/figure-table.ts";
import { WORDS } from "../../lib/words/languages.ts";

function toldUncertainty(path: string, unit: string, value: number, uncertainty: number): unknown {
  const figure = sourceFigure("measured", value, {
    unit,
    method: "as recorded",
    inputs: [],
    uncertainty,
  });
  const view = propertyView({ path, row: figureRow(path), figure }, WORDS.en, (key) => ({
    text: key,
    href: "",
  }));
  return "note" in view ? view.note : undefined;
}

test("the uncertainty of a share is printed in percent, as the share is", () => {
  expect(toldUncertainty("optics.tintingStrength", "1", 3.45, 0.197)).toBe("\u00b1\u00a020");
  expect(toldUncertainty("optics.tintingStrength", "1", 1.09, 0.06)).toBe("\u00b1\u00a06");
  expect(toldUncertainty("optics.tintingStrength", "1", 0.4, 0.005)).toBe("\u00b1\u00a00.5");
});

test("an uncertainty is not printed where it lies below what the figure is rounded to", () => {
  expect(toldUncertainty("optics.tintingStrength", "1", 0.4, 0.0049)).toBeUndefined();
  expect(toldUncertainty("optics.tintingStrength", "1", 3.45, 0.034)).toBeUndefined();
  expect(toldUncertainty("oil.oilAbsorptionGPer100g", "g/100 g", 3, 0.049)).toBeUndefined();
  expect(toldUncertainty("oil.oilAbsorptionGPer100g", "g/100 g", 52, 3)).toBe("\u00b1\u00a03");
});
