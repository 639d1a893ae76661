import { remembered } from "../../quantities/remembered.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import { munsellOfLab } from "../../colorimetry/munsell.ts";
import { readingNotations } from "../../colorimetry/reading-notations.ts";
import type { ColourFit, PredictingFit } from "../../optics/fit/colour-fit.ts";
import type { SurfaceConstants } from "../../optics/fit/measurement.ts";
import { thicknessShift } from "../../optics/films/thickness-shift.ts";
import type { TwoGroundFilm } from "../../optics/films/two-ground-film.ts";
import { ladderSteps, type LadderModel, type PredictedTint } from "../../optics/tints/ladder.ts";
import { weighingShift } from "../../optics/tints/weighing-shift.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import { axisUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { SpectrumReading, TintReading } from "../../records/records.ts";
import { tintId } from "./drawdown-set.ts";
import { opticsReading } from "./optics-reading.ts";
import { tintWithoutGloss } from "../notations/gloss-excluded.ts";
import { labFigures, notationFigure, type Origin } from "../notations/lab-figures.ts";
import { munsellFigures, screenFigures } from "../notations/munsell-figures.ts";
import { readingFigures } from "../notations/reading-figures.ts";
import type { TintStep } from "./tint-figures.ts";
import { given } from "../../quantities/given.ts";

/** The method of everything that the fit of K and S predicts. */
export function predictedFrom(drawdowns: readonly RecordRoot[]): Origin {
  return {
    standing: "derived",
    method: "two-constant fit through all drawdowns",
    source: "kubelka-munk-1931",
    inputs: drawdowns,
  };
}

/** What tells how a let-down answers to the bench: spectra that it lies between, its surface, and its film over both grounds. */
export interface DrawnLetDown {
  readonly white: SpectrumReading | undefined;
  readonly masstone: SpectrumReading | undefined;
  readonly surface: SurfaceConstants | undefined;
  readonly film: TwoGroundFilm | undefined;
}

/** A let-down as it was drawn down, with how far the fit misses it; its weighing and its thickness count into its uncertainty. */
export function measuredStep(
  tint: TintReading,
  fit: ColourFit | undefined,
  { white, masstone, surface, film }: DrawnLetDown,
  read: readonly RecordRoot[],
  origin: Origin,
): TintStep {
  const { reading } = tint;
  const moved =
    reading.form === "spectrum"
      ? given([
          weighingShift(
            opticsReading(reading),
            white && opticsReading(white),
            masstone && opticsReading(masstone),
          ),
          film !== undefined && thicknessShift(film),
        ])
      : [];
  const { lab, munsell, srgb, displayP3, oklch } = readingFigures(
    reading,
    read,
    [],
    ["D65/10"],
    moved,
  );
  const verdict = fit?.drawdowns.find(({ drawdown }) => drawdown === tintId(tint));
  return {
    massRatio: tint.massRatio,
    colourShare: tint.colourParts / tint.whiteParts,
    standing: "measured",
    ...(tint.reading.form !== "chip" && { geometry: tint.reading.geometry }),
    lab,
    ...(munsell !== undefined && { munsell }),
    ...(srgb === undefined || displayP3 === undefined || oklch === undefined
      ? {}
      : { srgb, displayP3, oklch }),
    ...(reading.form === "spectrum" &&
      tintWithoutGloss(reading, surface, {
        standing: "derived",
        inputs: read,
      })),
    ...(verdict !== undefined && {
      residualDeltaE00: notationFigure(verdict.residualDeltaE00, "1", origin),
    }),
    ...(verdict === undefined || isStatement(verdict.leaveOneOutDeltaE00)
      ? {}
      : { leaveOneOutDeltaE00: notationFigure(verdict.leaveOneOutDeltaE00, "1", origin) }),
    ...(verdict?.suspect !== undefined && { suspect: verdict.suspect }),
  };
}

/** Nearer than this to the masstone [Delta-E00] a let-down tells nothing that the masstone does not. */
export const TOLD_FROM_MASSTONE = 3;

/** The steps that the fit predicts in one white, between the measured ones and a little beyond. */
export function predictedSteps(
  ladder: LadderModel,
  surface: SurfaceConstants | undefined,
  origin: Origin,
): TintStep[] {
  return ladderSteps(ladder).flatMap((step) =>
    step.standing === "predicted" &&
    deltaE00(step.lab, ladder.fit.masstone.lab) >= TOLD_FROM_MASSTONE
      ? [predictedStep(step, ladder.fit, surface, origin)]
      : [],
  );
}

const notationsOf = remembered(({ spectrum, uncertainty, lab }: PredictedTint) => {
  const { lab: labs, screen } = readingNotations(spectrum);
  const u = axisUncertainty(uncertainty.p68, lab);
  return { u, screen, munsell: munsellOfLab(labs["C/2"], u) };
});

function predictedStep(
  tint: PredictedTint,
  { geometry }: PredictingFit,
  surface: SurfaceConstants | undefined,
  origin: Origin,
): TintStep {
  const { u, screen, munsell } = notationsOf(tint);
  return {
    massRatio: ratioText(tint.massRatio),
    colourShare: tint.massRatio,
    standing: "derived",
    geometry,
    lab: { "D65/10": labFigures(tint.lab, origin, u) },
    ...(!isStatement(munsell) && { munsell: munsellFigures(munsell, origin) }),
    ...screenFigures(screen, origin),
    ...tintWithoutGloss({ spectrum: tint.spectrum, geometry }, surface, origin),
    uncertainty: tint.uncertainty.p68,
  };
}

/** 0.05 as "1:20", 2 as "2:1". */
function ratioText(ratio: number): string {
  const tidy = (value: number): string => String(Number(value.toPrecision(3)));
  return ratio >= 1 ? `${tidy(ratio)}:1` : `1:${tidy(1 / ratio)}`;
}
