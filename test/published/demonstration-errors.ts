/** How far predictions of the demonstration lie from what its script knows to be true. */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import { labOf } from "../../lib/optics/fit/fitted-drawdown-set.ts";
import type { PredictionUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { ladderModel, ladderSteps } from "../../lib/optics/tints/ladder.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import type { Records } from "../../lib/records/records.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";
import { trueReflectance } from "../demonstration/drawdown-reflectance.ts";
import { INVENTED_PAINTS, type PaintKey } from "../demonstration/invented-paints.ts";

export interface TruthError {
  readonly id: string;
  readonly deltaE00: number;
  readonly predicted: Lab;
  readonly truth: Lab;
  readonly uncertainty: PredictionUncertainty;
}

/** Every predicted step of every ladder against the same let-down made without bench or instrument. */
export function ladderTruthErrors(records: Records): TruthError[] {
  return [...allFits(records)].flatMap(([slug, fit]) =>
    fit.kind === "refused"
      ? []
      : fit.whites.flatMap(({ slug: white, ratioKind }) =>
          ladderSteps(ladderModel(fit, white)).flatMap((step): TruthError[] => {
            if (step.standing !== "predicted" || !isPaint(slug) || !isPaint(white)) return [];
            const into = { white, parts: 1 / step.massRatio, kind: ratioKind };
            const truth = trueLab({ paint: slug, geometry: fit.geometry, into }, fit);
            return [
              {
                id: `${slug} in ${white} ${step.massRatio}`,
                deltaE00: deltaE00(truth, step.lab),
                predicted: step.lab,
                truth,
                uncertainty: step.uncertainty,
              },
            ];
          }),
        ),
  );
}

function trueLab(drawdown: Parameters<typeof trueReflectance>[0], { grid }: ColourFit): Lab {
  return labOf(grid, trueReflectance(drawdown, wavelengthsNm(grid)));
}

function isPaint(slug: string): slug is PaintKey {
  return slug in INVENTED_PAINTS;
}
