import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { sameGrid } from "../../quantities/spectrum.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { NotPredicted } from "../special-effect.ts";
import type { DrawdownSet, Tint, UsableDrawdowns, UsableTint, White } from "./drawdown.ts";
import type { Measurement } from "./measurement.ts";

/** Share of luminous reflectance by which a let-down may pass its masstone or its white: reading noise. */
const Y_MARGIN = 0.03;

type NamedTint = { readonly tint: string; readonly white: string };

/** Why a let-down, or all of them, can't be fitted. */
export type LeftOutStatement =
  | StatementOf<"no-masstone" | "masstone-without-spectrum", { tints: number }>
  | StatementOf<"no-tint", Record<string, never>>
  | StatementOf<
      | "tint-without-spectrum"
      | "white-without-masstone"
      | "ratio-kind-missing"
      | "ratio-kinds-mixed"
      | "white-not-predicted",
      NamedTint
    >
  | StatementOf<"ratio-not-positive", NamedTint & { readonly massRatio: number }>
  | LightnessFault
  | NotPredicted;

/** A let-down that does not lie between its masstone and its white, by their luminous reflectances [1]. */
type LightnessFault = StatementOf<
  | "masstone-lighter-than-tint"
  | "white-lighter-than-tint"
  | "tint-lighter-than-white"
  | "tint-lighter-than-masstone",
  NamedTint & { readonly masstoneY: number; readonly tintY: number; readonly whiteY: number }
>;

/** What a fit may use, and what it had to leave out and why. */
export interface DrawdownSelection {
  /** Absent when nothing can be fitted: the reasons are then the refusal. */
  readonly usable?: UsableDrawdowns;
  readonly leftOut: readonly LeftOutStatement[];
}

/**
 * Drawdowns that can carry a fit of K and S.
 *
 * Refuses what they can't carry, rather than give K and S that look like figures:
 * without a masstone two let-downs give negative K or S over most of the spectrum.
 *
 * @returns rules `pigment-fluoresces`, `pigment-is-flakes`, `white-not-predicted`, `no-masstone`, `no-tint`, `masstone-without-spectrum`, `tint-without-spectrum`,
 *   `white-without-masstone`,
 *   `ratio-kind-missing`, `ratio-kinds-mixed`, `ratio-not-positive`,
 *   `masstone-lighter-than-tint`, `tint-lighter-than-white` (of a colour paler than its
 *   white `white-lighter-than-tint`, `tint-lighter-than-masstone`), each with its values.
 * @throws RangeError when masstone, let-down and white are not on one grid.
 * @source oil-paint-outs : a fit without the masstone
 */
export function usableDrawdowns({
  notPredicted,
  masstone,
  film,
  films,
  whites,
  tints,
  withoutSpectrum,
}: DrawdownSet): DrawdownSelection {
  if (notPredicted !== undefined) return { leftOut: [notPredicted] };
  const spectrumless = (withoutSpectrum?.tints ?? []).map(({ id, white }): LeftOutStatement => ({
    rule: "tint-without-spectrum",
    values: { tint: id, white },
  }));
  if (masstone === undefined && withoutSpectrum?.masstone === true)
    return { leftOut: [{ rule: "masstone-without-spectrum", values: { tints: tints.length } }] };
  if (masstone === undefined)
    return {
      leftOut: [
        {
          rule: "no-masstone",
          values: { tints: tints.length + spectrumless.length },
          source: "oil-paint-outs",
        },
      ],
    };
  if (tints.length === 0)
    return { leftOut: spectrumless.length > 0 ? spectrumless : [{ rule: "no-tint", values: {} }] };

  const kept: UsableTint[] = [];
  const leftOut: LeftOutStatement[] = [...spectrumless];
  for (const tint of tints) {
    const white = whites.find(({ slug }) => slug === tint.white);
    const reason = faultOf(tint, masstone, white, tints);
    if (reason === undefined && tint.ratioKind !== undefined)
      kept.push({ ...tint, ratioKind: tint.ratioKind });
    if (reason !== undefined) leftOut.push(reason);
  }
  if (kept.length === 0) return { leftOut };
  const used = whites.filter(({ slug }) => kept.some((tint) => tint.white === slug));
  return {
    usable: {
      masstone,
      ...(film !== undefined && { film }),
      ...(films !== undefined && { films }),
      whites: used,
      tints: kept,
    },
    leftOut,
  };
}

function faultOf(
  tint: Tint,
  masstone: Measurement,
  paint: White | undefined,
  tints: readonly Tint[],
): LeftOutStatement | undefined {
  const named = { tint: tint.id, white: tint.white };
  if (paint === undefined) return { rule: "white-without-masstone", values: named };
  if (paint.notPredicted !== undefined) return { rule: "white-not-predicted", values: named };
  const white = paint.masstone;
  if (
    !sameGrid(tint.reading.spectrum.grid, masstone.spectrum.grid) ||
    !sameGrid(white.spectrum.grid, masstone.spectrum.grid)
  )
    throw new RangeError(
      `Masstone, let-down ${tint.id} and white are of several grids; right would be one`,
    );
  if (tint.ratioKind === undefined) return { rule: "ratio-kind-missing", values: named };
  const kinds = new Set(
    tints
      .filter((other) => other.white === tint.white && other.ratioKind !== undefined)
      .map((other) => other.ratioKind),
  );
  if (kinds.size > 1) return { rule: "ratio-kinds-mixed", values: named };
  if (!(tint.massRatio > 0 && tint.massRatio < Infinity)) {
    return { rule: "ratio-not-positive", values: { ...named, massRatio: tint.massRatio } };
  }
  return lightnessFault(named, tint.reading, masstone, white);
}

/** A let-down lies between its masstone and its white, whichever of the two is the lighter. */
function lightnessFault(
  named: NamedTint,
  tint: Measurement,
  masstone: Measurement,
  white: Measurement,
): LightnessFault | undefined {
  const [tintY, masstoneY, whiteY] = [luminance(tint), luminance(masstone), luminance(white)];
  const values = { ...named, masstoneY, tintY, whiteY };
  const isDark = masstoneY <= whiteY;
  if (tintY < Math.min(masstoneY, whiteY) * (1 - Y_MARGIN))
    return { rule: isDark ? "masstone-lighter-than-tint" : "white-lighter-than-tint", values };
  if (tintY > Math.max(masstoneY, whiteY) * (1 + Y_MARGIN))
    return { rule: isDark ? "tint-lighter-than-white" : "tint-lighter-than-masstone", values };
  return undefined;
}

function luminance({ spectrum }: Measurement): number {
  return tristimulus(spectrum, "D65/10").Y / 100;
}
