/** What a mix reads, by the same models as the sheets: as read, a let-down between its drawdowns, or K and S added. */
import { at } from "../../quantities/at.ts";
import { NINETY_PERCENT } from "../../quantities/coverage.ts";
import { uncertaintyDeltaE00 } from "../../colorimetry/difference.ts";
import { labUncertainty } from "../../colorimetry/lab-uncertainty.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../../optics/fit/measurement.ts";
import type { PredictionUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import { mixedTint, mixture } from "../../optics/mixtures/mixture.ts";
import { OIL_SURFACE } from "../../optics/surface/surface.ts";
import { LADDER_BEYOND, predictedTint, type LadderModel } from "../../optics/tints/ladder.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { Mix, MixStatement } from "../mix.ts";
import { paintName, type MixingRange } from "../mixing-range.ts";
import { massMix } from "./mass-mix.ts";

export interface PredictedMix {
  /** `read`: one paint alone, as it was drawn down. */
  readonly standing: "read" | "predicted";
  readonly spectrum: Spectrum;
  /** How that spectrum would be read, and the surface over it. */
  readonly geometry: Geometry;
  readonly surface: SurfaceConstants;
  /** D65/10. */
  readonly lab: Lab;
  /** Delta-E00. */
  readonly uncertainty: PredictionUncertainty;
  /** Much paler than any let-down of its colours that was read: the model goes on where nobody looked. */
  readonly isBeyond: boolean;
  /** By mass of paint, colours of no part left out. */
  readonly mass: Mix;
}

/**
 * What a mix reads, with its uncertainty.
 *
 * @param mix parts >= 0.
 * @returns the prediction, or why there is none.
 * @source duncan-1940
 */
export function predictedMix(mix: Mix, range: MixingRange): PredictedMix | MixStatement {
  const mass = massMix(mix, range);
  if (isStatement(mass)) return mass;
  const { colours, white } = mass;
  const [first, ...others] = colours;
  if (first === undefined)
    return white.parts > 0
      ? paintAlone(white.slug, mass, range)
      : { rule: "nothing-mixed", values: {} };
  if (others.length === 0 && !(white.parts > 0)) return paintAlone(first.slug, mass, range);
  const ladders = colours.map(({ slug }) => range.ladder(slug, white.slug));
  const refused = ladders.find((ladder) => isStatement(ladder));
  if (refused !== undefined) return refused;
  const ready = ladders.filter((ladder): ladder is LadderModel => !isStatement(ladder));
  const total = colours.reduce((sum, { parts }) => sum + parts, 0);
  const massRatio = white.parts > 0 ? total / white.parts : Infinity;
  return others.length === 0
    ? letDown(ready[0], massRatio, mass)
    : mixed(ready, massRatio, mass, range);
}

function letDown(
  ladder: LadderModel | undefined,
  massRatio: number,
  mass: Mix,
): PredictedMix | MixStatement {
  if (ladder === undefined) return { rule: "nothing-mixed", values: {} };
  const { spectrum, lab, uncertainty } = predictedTint(ladder, massRatio);
  return {
    standing: "predicted",
    spectrum,
    lab,
    uncertainty,
    ...readAs(ladder),
    isBeyond: isBeyond(ladder, massRatio),
    mass,
  };
}

function mixed(
  ladders: readonly LadderModel[],
  massRatio: number,
  mass: Mix,
  range: MixingRange,
): PredictedMix | MixStatement {
  const found = mixture(ladders.map((ladder, i) => ({ ladder, parts: at(mass.colours, i).parts })));
  if (isStatement(found)) return readUnlike(ladders, mass, range);
  const { spectrum, lab, uncertainty } = mixedTint(found, massRatio);
  const [first] = ladders;
  if (first === undefined) return { rule: "nothing-mixed", values: {} };
  return {
    standing: "predicted",
    spectrum,
    lab,
    uncertainty,
    ...readAs(first),
    isBeyond: ladders.every((ladder) => isBeyond(ladder, massRatio)),
    mass,
  };
}

function readUnlike(
  ladders: readonly LadderModel[],
  { colours }: Mix,
  range: MixingRange,
): MixStatement {
  const geometry = ladders[0]?.fit.geometry;
  const other = ladders.findIndex(({ fit }) => fit.geometry !== geometry);
  const name = (i: number): string => paintName(colours[i]?.slug ?? "", range);
  return {
    rule: "paints-read-unlike",
    values: { first: name(0), other: name(other < 0 ? 1 : other) },
  };
}

function readAs({ fit }: LadderModel): Pick<PredictedMix, "geometry" | "surface"> {
  return { geometry: fit.geometry, surface: fit.surface.surface };
}

function isBeyond({ used }: LadderModel, massRatio: number): boolean {
  return massRatio < (used[0]?.massRatio ?? 0) / LADDER_BEYOND;
}

/** One paint as it was drawn down. */
function paintAlone(slug: string, mass: Mix, range: MixingRange): PredictedMix | MixStatement {
  const paint = range.paint(slug);
  const reading = range.masstone(slug);
  if (reading === undefined)
    return paint?.kind === "white"
      ? { rule: "white-not-read", values: { white: paint.name } }
      : {
          rule: "paint-not-fitted",
          values: { paint: paint?.name ?? slug, reason: paint?.refusal ?? "" },
        };
  const { spectrum, geometry, surface = OIL_SURFACE } = reading;
  return {
    standing: "read",
    spectrum,
    geometry,
    surface,
    lab: spectrumLab(spectrum),
    uncertainty: readingUncertainty(reading),
    isBeyond: false,
    mass,
  };
}

/** What a reading's own noise moves, Delta-E00. */
function readingUncertainty({ spectrum }: Measurement): PredictionUncertainty {
  const lab = spectrumLab(spectrum);
  const p68 = uncertaintyDeltaE00(lab, labUncertainty(spectrum, "D65/10"));
  return { p68, p90: NINETY_PERCENT * p68 };
}
