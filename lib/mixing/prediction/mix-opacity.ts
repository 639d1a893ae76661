import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { opacityRuling, OPACITY_FILM, type OpacityClass } from "../../optics/films/opacity.ts";
import { scatteringPowerSeen, seenWeights } from "../../optics/films/scattering-power.ts";
import { masstoneReflectance } from "../../optics/kubelka-munk.ts";
import { at } from "../../quantities/at.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { MixingRange } from "../mixing-range.ts";
import { mixFilm } from "./mix-film.ts";
import type { PredictedMix } from "./predicted-mix.ts";

/** How a film of a mix hides, as thick as sheets judge opacity by. */
export interface MixOpacity {
  /** By contrast ratio of a light film, by how much a dark one scatters, as a sheet has it. */
  readonly class: OpacityClass;
  /** Whether it is so dark that its contrast ratio gives no class. */
  readonly isDark: boolean;
  /** Y over black to Y over white [1], and its 68 %. */
  readonly contrastRatio: number;
  readonly contrastUncertainty: number;
}

/** @returns undefined where films of the mix do not follow from what was read. */
export function mixOpacity(mix: PredictedMix, range: MixingRange): MixOpacity | undefined {
  const { um: filmUm } = OPACITY_FILM;
  const film = mixFilm(mix, { filmUm }, range);
  if (isStatement(film)) return undefined;
  const { coefficients: paint, contrastRatio, contrastUncertainty } = film;
  const masstone = paint.K.map((K, i) => masstoneReflectance(K / at(paint.S, i)));
  const power = scatteringPowerSeen(paint.S, seenWeights(paint.grid, masstone), filmUm);
  const trust = 1 + paint.scaleUncertainty;
  const { class: word, reason } = opacityRuling({
    filmUm,
    luminance: tristimulus(film.overWhite, "D65/10").Y / 100,
    contrastRatio: Math.min(contrastRatio, 1),
    scatteringPower: [power / trust, power * trust],
  });
  if (word === undefined) return undefined;
  return {
    class: word,
    isDark: reason?.rule !== "opacity-by-contrast-ratio",
    contrastRatio,
    contrastUncertainty,
  };
}
