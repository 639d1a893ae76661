import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";

/** What went into a lot and what came out [g]. */
export interface LotMasses {
  readonly weighedG: number;
  readonly yieldG: number;
}

/**
 * Share of a batch that does not reach a tube [1], as a workshop's own lots show it: least and most of them.
 * @returns undefined for no lot.
 * @throws RangeError for masses that are not above 0, or a yield above what was weighed in.
 */
export function learntLoss(lots: readonly LotMasses[]): Interval | undefined {
  const shares = lots.map(({ weighedG, yieldG }) => {
    if (!(weighedG > 0 && yieldG > 0 && yieldG <= weighedG))
      throw domainError("yield of a lot", yieldG, `0 < yield <= ${weighedG} g`);
    return 1 - yieldG / weighedG;
  });
  return shares.length === 0 ? undefined : [Math.min(...shares), Math.max(...shares)];
}

/** Tubes of a nominal size as they were filled: mean net mass [g]. */
export interface FilledTubes {
  readonly ml: number;
  readonly massG: number;
  readonly densityGPerCm3: number;
}

/**
 * What a tube of a nominal size really takes [ml], mean of the lots that weighed theirs.
 * @returns undefined where none did.
 */
export function learntFillMl(filled: readonly FilledTubes[], ml: number): number | undefined {
  const own = filled.filter((one) => one.ml === ml);
  if (own.length === 0) return undefined;
  return own.reduce((sum, one) => sum + one.massG / one.densityGPerCm3, 0) / own.length;
}
