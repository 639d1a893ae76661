/**
 * A colour in a white that it was never let down in, by what other colours do in that white and
 * in one that it shares with them: K and S are the colour's own, and only the white's S changes.
 *
 *     (K + S)/S_new = (K + S)/S_old x q,  q = S_old/S_new
 *
 * @source duncan-1940
 */
import { requirePositive } from "../../quantities/positive.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Spectrum, WavelengthGrid } from "../../quantities/spectrum.ts";
import { estimated, type StatementOf } from "../../quantities/statement.ts";
import type { PredictingFit } from "../fit/colour-fit.ts";
import {
  predictionUncertainty,
  withOwn,
  type Doubts,
  type PredictionUncertainty,
} from "../fit/prediction-uncertainty.ts";
import { LADDER_BEYOND, ladderModel, type LadderModel } from "./ladder.ts";
import { tintModel, tintReadings, type TintModel } from "./tint-model.ts";
import type { WhiteChange } from "./white-change.ts";
import { at } from "../../quantities/at.ts";
import { median } from "../../quantities/median.ts";

/** A colour in a white that it was not let down in. */
export interface ExpectedLadder {
  readonly grid: WavelengthGrid;
  /** The white that it is expected in, and the one that it was let down in. */
  readonly white: string;
  readonly from: LadderModel;
  readonly model: TintModel;
  /** The white as read, D65/10. */
  readonly whiteLab: Lab;
  /** ln q and its standard uncertainty, in the middle of the spectrum. */
  readonly logChange: number;
  readonly changeUncertainty: number;
  readonly doubts: Doubts;
}

/** A let-down as it is expected. */
export interface ExpectedTint {
  readonly massRatio: number;
  readonly spectrum: Spectrum;
  /** D65/10. */
  readonly lab: Lab;
  readonly uncertainty: PredictionUncertainty;
  /** Delta-E00 to the nearer of white and masstone, and what a standard error of q moves. */
  readonly distance: number;
  readonly own: number;
}

/** Why a ladder is there though none was painted out. */
export type ExpectedStatement = StatementOf<
  "expected-in-white",
  { white: string; from: string; through: readonly string[]; deltaE00: number }
>;

/**
 * The ladder that a colour is expected to have in a white.
 * @param change of the white, from one that the colour was let down in, told by colours read like it.
 */
export function expectedLadder(fit: PredictingFit, change: WhiteChange): ExpectedLadder {
  const { white, own, logChange } = change;
  const from = ladderModel(fit, own);
  const plain = {
    form: from.model.form,
    masstone: from.model.masstone,
    whiteRatio: change.whiteRatio,
    extinction: Array.from(from.model.extinction, (E, i) => E * Math.exp(at(logChange, i))),
  };
  const middle = median(logChange);
  const ends = tintModel(plain, [
    { massRatio: 0, measured: change.measured },
    { massRatio: Infinity, measured: fit.masstone.measured },
  ]);
  // Its strength drifts along the ladder as it does in its own white: at ratios as strong.
  const strengths = from.model.strengths.map(({ logRatio, change: strength }) => ({
    logRatio: logRatio - middle,
    change: strength,
  }));
  return {
    grid: fit.grid,
    white,
    from,
    model: { ...ends, strengths },
    whiteLab: change.lab,
    logChange: middle,
    changeUncertainty: change.uncertainty,
    doubts: {
      ...from.doubts,
      hasFilms: from.white.hasFilms && change.hasFilms,
      isOtherWhite: true,
    },
  };
}

/**
 * A let-down as it is expected.
 * @param massRatio colour to white by mass [1], of the kind that was weighed in the colour's own white, > 0.
 * @throws RangeError when the ratio is not positive, NaN or infinite.
 */
export function expectedTint(ladder: ExpectedLadder, massRatio: number): ExpectedTint {
  requirePositive("mass ratio", massRatio, "", "ratio");
  const { grid, model, from, whiteLab, doubts, changeUncertainty } = ladder;
  const values = tintReadings(model, massRatio);
  const lab = spectrumLab({ grid, values });
  const distance = Math.min(...[whiteLab, from.fit.masstone.lab].map((end) => deltaE00(end, lab)));
  // An error of q is one of strength, and so of the ratio.
  const moved = spectrumLab({
    grid,
    values: tintReadings(model, massRatio * Math.exp(changeUncertainty)),
  });
  const own = deltaE00(lab, moved);
  return {
    massRatio,
    spectrum: { grid, values },
    lab,
    uncertainty: withOwn(predictionUncertainty(distance, doubts), own),
    distance,
    own,
  };
}

/** Palest ratio that is told: as strong as the palest in its own white, and a little beyond. */
export function palestExpected({ from, logChange }: ExpectedLadder): number {
  return (from.used[0]?.massRatio ?? Infinity) / LADDER_BEYOND / Math.exp(logChange);
}

/** That nobody painted these let-downs out: whose they go by, and what about nine of ten lie within. */
export function expectedRuling(
  white: string,
  from: string,
  through: readonly string[],
  tints: readonly ExpectedTint[],
): ExpectedStatement {
  const deltaE00 = Math.max(...tints.map(({ uncertainty }) => uncertainty.p90));
  return estimated("expected-in-white", { white, from, through, deltaE00 }, "duncan-1940");
}
