/** How far predictions of the demonstration lie from what its script knows to be true. */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import type { PredictionUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { ladderModel, ladderSteps, predictedTint } from "../../lib/optics/tints/ladder.ts";
import { isKnown, type Bound, type Figure } from "../../lib/quantities/figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import type { Records } from "../../lib/records/records.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
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

/** How much stronger [1] than a let-down that was read one is asked for, beside which the prediction is held. */
const BESIDE_READ = [0.95, 1, 1.05];

/** Predictions at let-downs that were read and just beside them, against the same let-downs made without bench or instrument. */
export function nearReadErrors(records: Records): TruthError[] {
  return [...allFits(records)].flatMap(([slug, fit]) =>
    fit.kind === "refused" || !isPaint(slug)
      ? []
      : fit.whites.flatMap(({ slug: white, ratioKind: kind }) => {
          if (!isPaint(white)) return [];
          const ladder = ladderModel(fit, white);
          return ladder.used.flatMap((step) =>
            BESIDE_READ.map((times): TruthError => {
              const massRatio = times * step.massRatio;
              const { lab, uncertainty } = predictedTint(ladder, massRatio);
              const into = { white, parts: 1 / massRatio, kind };
              const truth = trueLab({ paint: slug, geometry: fit.geometry, into }, fit);
              return {
                id: `${slug} in ${white} ${massRatio}`,
                deltaE00: deltaE00(truth, lab),
                predicted: lab,
                truth,
                uncertainty,
              };
            }),
          );
        }),
  );
}

/** A printed figure beside the truth, in units of its own ±. */
export interface FigureError {
  readonly id: string;
  readonly printed: number;
  readonly truth: number;
  readonly uncertainty: number;
  readonly bound?: Bound;
}

/** L*, a* and b* of every let-down that was read, against the same let-down made without bench or instrument. */
export function readTintErrors(
  sheets: readonly Sheet[],
): Record<"L" | "a" | "b", readonly FigureError[]> {
  const errors = sheets.flatMap(({ slug, tints }) =>
    tints.flatMap(({ white, massRatioKind: kind, steps }) =>
      steps.flatMap(({ standing, geometry, lab, massRatio, colourShare, suspect }) => {
        const figures = lab["D65/10"];
        if (standing !== "measured" || figures === undefined || suspect !== undefined) return [];
        if (geometry === undefined || !isPaint(slug) || !isPaint(white.slug)) return [];
        const into = { white: white.slug, parts: 1 / colourShare, kind };
        const truth = trueLab({ paint: slug, geometry, into }, { grid: GRID });
        return [{ id: `${slug} in ${white.slug} ${massRatio}`, figures, truth }];
      }),
    ),
  );
  const on = (axis: "L" | "a" | "b"): FigureError[] =>
    errors.flatMap(({ id, figures, truth }) => figureError(id, figures[axis], truth[axis]));
  return { L: on("L"), a: on("a"), b: on("b") };
}

/** Colour to white at each L*, against that at which the true let-down is as light. */
export function massRatioErrors(sheets: readonly Sheet[]): FigureError[] {
  return sheets.flatMap(({ slug, tints }) =>
    tints.flatMap((tint) =>
      Object.entries(tint.atL).flatMap(([L, { massRatio }]) => {
        const truth = isPaint(slug) ? trueMassRatio(slug, tint, Number(L)) : undefined;
        return truth === undefined
          ? []
          : figureError(`${slug} in ${tint.white.slug} at ${L}`, massRatio, truth);
      }),
    ),
  );
}

/** Colour to white, in the kind that was weighed, at which the true let-down is as light; undefined of a white without truth. */
function trueMassRatio(
  paint: PaintKey,
  { white: { slug: white }, massRatioKind: kind, steps }: Sheet["tints"][number],
  L: number,
): number | undefined {
  const geometry = steps.find(({ standing }) => standing === "measured")?.geometry;
  if (geometry === undefined || !isPaint(white)) return undefined;
  return crossing(1e-5, 1e3, (ratio) => {
    const into = { white, parts: 1 / ratio, kind };
    return L - trueLab({ paint, geometry, into }, { grid: GRID }).L;
  });
}

/**
 * Strength by mass of paint beside the reference's in one white, against what it takes of the true
 * paints: strength is one colour's mass over the other's where both bring the white to L* 50.
 */
export function strengthErrors(sheets: readonly Sheet[], reference: PaintKey): FigureError[] {
  return sheets.flatMap(({ slug, tints, optics }) => {
    const against = sheets.find((sheet) => sheet.slug === reference)?.tints ?? [];
    const tint = tints.find(({ white }) => against.some((one) => one.white.slug === white.slug));
    const beside = against.find(({ white }) => white.slug === tint?.white.slug);
    if (tint === undefined || beside === undefined || !isPaint(slug) || slug === reference)
      return [];
    const [own, other] = [trueMassRatio(slug, tint, 50), trueMassRatio(reference, beside, 50)];
    return own === undefined || other === undefined
      ? []
      : figureError(slug, optics.tintingStrength, other / own);
  });
}

/** Contrast ratio of a film of 75 um and the film that hides, gloss included, against those of films made without bench or instrument. */
export function hidingErrors(
  sheets: readonly Sheet[],
): Record<"contrastRatio" | "hidingFilmUm", readonly FigureError[]> {
  const paints = sheets.flatMap(({ slug, optics }) =>
    isPaint(slug)
      ? [{ slug, optics, contrast: (um: number): number => trueContrast(slug, um) }]
      : [],
  );
  return {
    contrastRatio: paints.flatMap(({ slug, optics: { contrastRatio }, contrast }) =>
      figureError(slug, contrastRatio, contrast(75)),
    ),
    hidingFilmUm: paints.flatMap(({ slug, optics: { hidingFilmUm }, contrast }) =>
      figureError(
        slug,
        hidingFilmUm,
        crossing(0.1, 5000, (um) => contrast(um) - 0.98),
      ),
    ),
  };
}

function figureError(id: string, figure: Figure<Quantity>, truth: number): FigureError[] {
  if (!isKnown(figure) || typeof figure.value !== "number") return [];
  const { value: printed, uncertainty = 0, bound } = figure;
  return [{ id, printed, truth, uncertainty, ...(bound === undefined ? {} : { bound }) }];
}

/** Where a function that rises crosses 0, by halving the logarithm. */
function crossing(from: number, to: number, of: (x: number) => number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 50; i++) {
    const middle = Math.sqrt(low * high);
    if (of(middle) < 0) low = middle;
    else high = middle;
  }
  return low;
}

const GRID = { startNm: 380, stepNm: 10, count: 36 } as const;

function trueContrast(paint: PaintKey, thicknessUm: number): number {
  const [black = NaN, white = NaN] = (["black", "white"] as const).map((ground) => {
    const film = { thicknessUm, ground };
    const values = trueReflectance({ paint, geometry: "d/8 included", film }, wavelengthsNm(GRID));
    return tristimulus({ grid: GRID, values }, "D65/10").Y;
  });
  return black / white;
}

function trueLab(
  drawdown: Parameters<typeof trueReflectance>[0],
  { grid }: Pick<ColourFit, "grid">,
): Lab {
  return spectrumLab({ grid, values: trueReflectance(drawdown, wavelengthsNm(grid)) });
}

function isPaint(slug: string): slug is PaintKey {
  return slug in INVENTED_PAINTS;
}
