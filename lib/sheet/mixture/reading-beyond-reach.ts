import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { commonGrid, spectrumOnGrid } from "../../optics/fit/common-grid.ts";
import { usualUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import { nearestBetween } from "../../optics/mixtures/reach-of-masstones.ts";
import { nearestMixed } from "../../optics/mixtures/reach-of-let-downs.ts";
import { ladderModel } from "../../optics/tints/ladder.ts";
import { isStatement } from "../../quantities/statement.ts";
import { NINETY_PERCENT } from "../../quantities/coverage.ts";
import { knownValue } from "../../quantities/figure.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { Colour, Reading, Records } from "../../records/records.ts";
import { dayLab } from "../notations/reading-figures.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { paintOfWhite, paintsOfPigment } from "../record-inputs.ts";
import type { ComponentPaint } from "./mixture-components.ts";
import type { MixtureWhite } from "./mixture-white.ts";

/** A mixture's masstone as recorded, and the nearest that its pigments can give; D65/10. */
export interface BeyondReach {
  readonly recorded: Lab;
  readonly nearest: Lab;
  readonly deltaE00: number;
  /** What such a prediction is missed by nine times in ten [Delta-E00]. */
  readonly p90: number;
  /** Whether its pigments give it in no parts at all, and not only in those on record. */
  readonly inAnyParts: boolean;
}

/**
 * How often its 90 % a prediction for the parts on record may be missed by before a reading is doubted.
 * Of 18 predictions of measured mixtures none was missed by more than 1.02 times as much.
 * @source reconstructed-oil-paints
 */
const TIMES = 2;
/** Delta-E00 to a drawdown from where the law of predictions grows no wider. */
const FAR = 100;
/** 68 % of a mixture far from any drawdown [Delta-E00]: of what masstones alone tell, and at the least where let-downs do. */
const OF_MASSTONES = usualUncertainty(FAR, { isMixture: true });
const AT_BEST = usualUncertainty(FAR, { isMixture: true, hasFilms: true });

/** What a mixture's reading is held against: the colour, its pigments' paints, and what whites predict of the parts on record. */
interface Asked {
  readonly colour: Colour;
  readonly paints: readonly ComponentPaint[];
  readonly whites: readonly MixtureWhite[];
  readonly records: Records;
}

/**
 * Whether a mixture's masstone was recorded as a colour that its pigments do not give: as the paints of its
 * single pigments predict it from their let-downs, in the parts on record or else in any, and as it lies
 * between their masstones.
 * @returns undefined where they give it, or where it is not known: with a pigment of which no paint is made alone and
 *   read as a spectrum in that geometry; of what was matched with a Munsell chip; of pigments with an effect of
 *   their own; of three pigments and more in parts that nobody wrote down what lies between their masstones is let be.
 */
export function readingBeyondReach({
  colour,
  paints,
  whites,
  records,
}: Asked): BeyondReach | undefined {
  const { masstone } = colour;
  const recorded = masstone && dayLab(masstone);
  if (masstone === undefined || recorded === undefined || masstone.form === "chip")
    return undefined;
  const masstones = masstonesOf(colour, masstone.geometry, records);
  if (masstones === undefined || effectOfPigments(colour, records) !== undefined) return undefined;
  const own = "uncertainty" in masstone ? (masstone.uncertainty ?? 0) : 0;
  const beyond = (
    { lab: nearest, p68 }: Predicted,
    times: number,
    inAnyParts: boolean,
  ): BeyondReach | undefined => {
    const [apart, p90] = [deltaE00(recorded, nearest), NINETY_PERCENT * Math.hypot(p68, own)];
    return apart > times * p90
      ? { recorded, nearest, deltaE00: apart, p90, inAnyParts }
      : undefined;
  };
  const between = { lab: nearestBetween(masstones, recorded), p68: OF_MASSTONES };
  const inThese = whites.flatMap(masstoneIn);
  const byLetDowns = (inThese.length > 0 ? inThese : inAnyParts(paints, recorded, records)).map(
    ({ lab, p68 }) => beyond({ lab, p68: Math.max(p68, AT_BEST) }, TIMES, inThese.length === 0),
  );
  // Several whites may predict it: one that lets it be is enough.
  return beyond(between, 1, true) ?? (byLetDowns.includes(undefined) ? undefined : byLetDowns[0]);
}

interface Predicted {
  readonly lab: Lab;
  /** 68 % [Delta-E00]. */
  readonly p68: number;
}

/** The mixture itself, as a white predicts it that all its pigments were let down in. */
function masstoneIn({ steps }: MixtureWhite): Predicted[] {
  return steps
    .filter(({ massRatio }) => massRatio === "1:0")
    .flatMap(({ lab: { "D65/10": axes }, uncertainty: p68 }) => {
      const [L, a, b] = [axes.L, axes.a, axes.b].map(knownValue);
      return L === undefined || a === undefined || b === undefined
        ? []
        : [{ lab: { L, a, b }, p68 }];
    });
}

/** The nearest in any parts, in each white that all its pigments were let down in, or all but that white itself. */
function inAnyParts(paints: readonly ComponentPaint[], lab: Lab, records: Records): Predicted[] {
  const fits = paints.map(({ part, fit }) => ({ pigment: part.slug, fit }));
  const whites = new Set(
    fits.flatMap(({ fit }) => (fit?.kind === "fit" ? fit.whites.map(({ slug }) => slug) : [])),
  );
  return [...whites].flatMap((white): Predicted[] => {
    const { pigments } = paintOfWhite(white, records)?.record ?? { pigments: [] };
    const isWhite = (pigment: string): boolean =>
      pigments.length === 1 && pigments[0]?.pigment === pigment;
    const others = fits.filter(({ pigment }) => !isWhite(pigment));
    const ladders = others.flatMap(({ fit }) =>
      fit?.kind === "fit" && fit.whites.some(({ slug }) => slug === white)
        ? [ladderModel(fit, white)]
        : [],
    );
    if (ladders.length < others.length || ladders.length === 0 || ladders.length > 2) return [];
    const found = nearestMixed(ladders, lab, others.length < fits.length);
    return isStatement(found) ? [] : [{ lab: found.lab, p68: found.uncertainty.p68 }];
  });
}

/** Masstones of all paints of its pigments alone, over either half of a chart; undefined where a pigment has none in that geometry. */
function masstonesOf(
  { record }: Colour,
  geometry: Exclude<Reading, { form: "chip" }>["geometry"],
  { colours }: Records,
): Spectrum[] | undefined {
  const ofEach = record.pigments.map(({ pigment }) =>
    paintsOfPigment(pigment, colours).flatMap(({ masstone, masstoneOverBlack }) =>
      [masstone, masstoneOverBlack].flatMap((reading) =>
        reading?.form === "spectrum" && reading.geometry === geometry ? [reading.spectrum] : [],
      ),
    ),
  );
  if (ofEach.some((spectra) => spectra.length === 0)) return undefined;
  const spectra = ofEach.flat();
  const grid = commonGrid(spectra.map((spectrum) => spectrum.grid));
  return grid && spectra.flatMap((spectrum) => spectrumOnGrid(spectrum, grid) ?? []);
}
