import { blendOilAbsorptionGPer100g } from "../../formulation/blend.ts";
import { oilAbsorptionMethodStatement } from "../../formulation/oil-absorption-method.ts";
import {
  estimatedOilAbsorption,
  estimatedOilIndex,
  WORKING_OIL_RATIO,
  workingOilContradiction,
} from "../../formulation/working-oil.ts";
import { isKnown, restated, sourceFigure, type Figure } from "../../quantities/figure.ts";
import { isInterval, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { blendedFigure } from "../pigments/blended-figure.ts";
import { colourRecord } from "../record-inputs.ts";
import { recordedFigure } from "../recorded-figure.ts";
import type { AdditionPart, PigmentPart } from "../pigments/pigment-figures.ts";
import { addedOils, ofMainOil, oilInAll } from "./main-oil.ts";

export interface OilDemand {
  readonly oilAbsorption: Figure<Quantity>;
  /** Of all its oils. */
  readonly oilIndex: Figure<Quantity>;
  /** What of it the vehicle alone is: the same figure where no other oil was added. */
  readonly mainOil: Figure<Quantity>;
  /** Which of the two is estimated from the other, and by what ratio of main oil to absorption. */
  readonly between?: {
    readonly estimated: "oilAbsorption" | "oilIndex";
    readonly ratio: Figure<Quantity>;
  };
  readonly reasons: readonly Statement[];
  /** Where the two can't belong to one paint. */
  readonly contradiction?: Statement;
}

/**
 * Rub-out figure and oil index of the paint as made; when only one is known the other is estimated from it.
 * @param additions of which oils count as oil of it: records give the index of the vehicle alone.
 * @param ofTubes main oil, where it was weighed from tubes.
 */
export function oilDemand(
  colour: Colour,
  parts: readonly PigmentPart[],
  additions: readonly AdditionPart[],
  records: Records,
  ofTubes?: Figure<Quantity>,
): OilDemand {
  const blend = blendedFigure(
    parts,
    "oilAbsorptionGPer100g",
    ["densityGPerCm3", "oilAbsorptionGPer100g"],
    { name: "blend by pigment volume", unit: "g/100 g", source: "asbeck-van-loo-1949" },
    blendOilAbsorptionGPer100g,
  );
  const oilAbsorption = parts.length === 1 ? restated(blend) : blend;
  const recorded = recordedFigure(colour.record.oilIndexGPer100g, {
    unit: "g/100 g",
    wanting: `colours.${colour.slug}.oilIndexGPer100g`,
    inputs: colourRecord(colour, "oilIndexGPer100g"),
  });
  const main = ofTubes !== undefined && !isKnown(recorded) ? ofTubes : recorded;
  const oils = addedOils(additions);
  const oilIndex = oilInAll(main, oils);
  const reasons =
    isKnown(oilAbsorption) && parts.length === 1
      ? [oilAbsorptionMethodStatement(methodOf(parts[0]?.slug, records))]
      : [];

  if (isKnown(oilIndex) && isKnown(oilAbsorption)) {
    const { value: index } = oilIndex;
    const { value: absorption } = oilAbsorption;
    const contradiction =
      isInterval(index) || isInterval(absorption)
        ? undefined
        : workingOilContradiction(index, absorption);
    return {
      oilAbsorption,
      oilIndex,
      mainOil: main,
      reasons,
      ...(contradiction !== undefined && { contradiction }),
    };
  }
  if (isKnown(oilAbsorption)) {
    const { estimate, reason } = estimatedOilIndex(oilAbsorption.value);
    const all = estimated(estimate, "rub-out figure x 1.1 to 2", oilAbsorption, reason);
    return {
      oilAbsorption,
      oilIndex: all,
      mainOil: ofMainOil(all, oils, "g/100 g"),
      between: { estimated: "oilIndex", ratio: ofMainOil(workingRatio(reason), oils, "1") },
      reasons: [...reasons, reason],
    };
  }
  if (isKnown(oilIndex)) {
    const { estimate, reason } = estimatedOilAbsorption(oilIndex.value);
    return {
      oilAbsorption: estimated(estimate, "oil index / 1.1 to 2", oilIndex, reason),
      oilIndex,
      mainOil: main,
      between: { estimated: "oilAbsorption", ratio: ofMainOil(workingRatio(reason), oils, "1") },
      reasons: [reason],
    };
  }
  return { oilAbsorption, oilIndex, mainOil: main, reasons: [] };
}

function estimated(
  estimate: Quantity,
  method: string,
  input: Figure<Quantity>,
  reason: Statement,
): Figure<Quantity> {
  return sourceFigure("estimated", estimate, {
    unit: "g/100 g",
    method,
    source: reason.source,
    inputs: [input],
  });
}

function workingRatio(reason: Statement): Figure<Quantity> {
  return sourceFigure<Quantity>("estimated", WORKING_OIL_RATIO, {
    unit: "1",
    method: "oil index / rub-out figure",
    source: reason.source,
    inputs: [],
  });
}

/** The method as the record gives it, not the figure's "as recorded". */
function methodOf(slug: string | undefined, records: Records): string | undefined {
  const amount =
    slug === undefined ? undefined : records.pigments.get(slug)?.record.oilAbsorptionGPer100g;
  return typeof amount === "object" ? amount.method : undefined;
}
