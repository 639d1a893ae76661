/**
 * What every colourman knows, as common practice, no source: it has to come out
 * of the rules. The pigments' figures are invented, and plausible for their kind.
 */
import { describe, expect, test } from "vitest";
import { KNOWN } from "../support/known.ts";
import { criticalPigmentVolumeConcentration } from "../../lib/formulation/cpvc.ts";
import {
  dispersionFactorRuling,
  effectiveCpvc,
  type Dispersion,
} from "../../lib/formulation/dispersion.ts";
import { jarFillStatement } from "../../lib/formulation/container-fill.ts";
import { finishRuling, type FinishRuling } from "../../lib/formulation/finish.ts";
import { massAndVolumeRuling, oilGPer100cm3 } from "../../lib/formulation/oil-by-volume.ts";
import { particleClass } from "../../lib/formulation/particle-class.ts";
import { pigmentVolumeConcentration, reducedPvc } from "../../lib/formulation/pvc.ts";
import { certain } from "../../lib/quantities/at.ts";
import { estimatedOilIndex } from "../../lib/formulation/working-oil.ts";

interface Sample {
  readonly colourIndexName: string;
  readonly densityGPerCm3: number;
  readonly oilAbsorptionGPer100g: number;
  readonly oilIndexGPer100g: number;
}
const LAMP_BLACK: Sample = {
  colourIndexName: "PBk 6",
  densityGPerCm3: 1.8,
  oilAbsorptionGPer100g: 70,
  oilIndexGPer100g: 96,
};
const IRON_BLACK: Sample = {
  colourIndexName: "PBk 11",
  densityGPerCm3: 4.8,
  oilAbsorptionGPer100g: 22,
  oilIndexGPer100g: 33,
};

function finish(
  { colourIndexName, densityGPerCm3, oilAbsorptionGPer100g, oilIndexGPer100g }: Sample,
  dispersion: Dispersion,
): FinishRuling {
  const cpvc = criticalPigmentVolumeConcentration(oilAbsorptionGPer100g, densityGPerCm3);
  const pvc = pigmentVolumeConcentration(100, densityGPerCm3, oilIndexGPer100g, 0.93);
  const {
    factor: [worse, better],
  } = dispersionFactorRuling(
    dispersion,
    particleClass({ isFineCarbon: KNOWN.pigment(colourIndexName).isFineCarbon }),
  );
  return finishRuling([
    reducedPvc(pvc, effectiveCpvc(cpvc, better)),
    reducedPvc(pvc, effectiveCpvc(cpvc, worse)),
  ]);
}

describe("lamp black beside black iron oxide (common practice, no source)", () => {
  test("takes about three times the oil by mass", () => {
    expect(LAMP_BLACK.oilIndexGPer100g / IRON_BLACK.oilIndexGPer100g).toBeGreaterThan(2.5);
    expect(massAndVolumeRuling(LAMP_BLACK, IRON_BLACK).statement.rule).toBe(
      "oil-differs-by-mass-alone",
    );
  });
  test("and about the same by volume", () => {
    const ratio =
      oilGPer100cm3(LAMP_BLACK.oilIndexGPer100g, LAMP_BLACK.densityGPerCm3) /
      oilGPer100cm3(IRON_BLACK.oilIndexGPer100g, IRON_BLACK.densityGPerCm3);
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThan(1.25);
  });
  test("so says the rub-out alone too, through the estimate", () => {
    const [lamp, iron] = [LAMP_BLACK, IRON_BLACK].map((black) => {
      const [least, most] = estimatedOilIndex(black.oilAbsorptionGPer100g).estimate;
      expect(black.oilIndexGPer100g).toBeGreaterThan(least);
      expect(black.oilIndexGPer100g).toBeLessThan(most);
      return least;
    });
    expect(certain(lamp) / certain(iron)).toBeGreaterThan(2.5);
    expect(certain(lamp) / certain(iron)).toBeLessThan(4);
  });
  test("mulled, is matte where the iron oxide is glossy", () => {
    expect(finish(LAMP_BLACK, "mulled")).toMatchObject({ finish: "matte", spans: ["matte"] });
    expect(finish(IRON_BLACK, "mulled")).toMatchObject({ finish: "gloss", spans: ["gloss"] });
  });
  test("milled, is no longer matte", () =>
    expect(finish(LAMP_BLACK, "milled").finish).toBe("gloss"));
  test("100 g of black iron oxide do not fill 118 ml, poured or settled; of lamp black they overfill it", () => {
    expect(
      jarFillStatement("pigment", 100, 118, { looseGPerMl: 0.95, tappedGPerMl: 1.35 }).rule,
    ).toBe("does-not-fill-the-jar");
    expect(
      jarFillStatement("pigment", 100, 118, { looseGPerMl: 0.17, tappedGPerMl: 0.28 }).rule,
    ).toBe("fills-the-jar");
  });
});
