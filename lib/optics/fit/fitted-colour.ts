/** A colour's K and S from its drawdowns, with every verdict on them; or why there are none. */
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Statement } from "../../quantities/statement.ts";
import { wavelengthNm } from "../../quantities/spectrum.ts";
import type { ColourFit, DrawdownVerdict, FitRefusal, FittedWhite } from "./colour-fit.ts";
import { onCommonGrid } from "./common-grid.ts";
import type { DrawdownSet, UsableDrawdowns } from "./drawdown.ts";
import {
  geometriesOf,
  readingsOf,
  surfaceCandidates,
  type SurfaceChoice,
} from "../surface/fitted-surface.ts";
import { leftOutFits, leftOutTints, type LeftOutFit } from "./leave-one-out.ts";
import type { Measurement, SurfaceConstants } from "./measurement.ts";
import { scatteringRuling } from "./scattering-statement.ts";
import { plainLab, readySet, setFit, type ReadySet, type SetFit } from "./fitted-drawdown-set.ts";
import { surfaceForm } from "../surface/surface.ts";
import { suspects } from "./outlier-drawdown.ts";
import { shares } from "../tints/tint-reading.ts";
import { usableDrawdowns } from "./usable-drawdowns.ts";

/** Share of wavelengths at which a masstone may read no more than the surface before the set is refused. */
const HIDDEN_SHARE_MAX = 0.5;

/**
 * K and S of a colour relative to its whites, by two-constant Kubelka-Munk over
 * all its drawdowns at once; whites first, each from its own masstone with S = 1.
 * Readings on unlike grids are brought to the coarsest of them.
 *
 * The surface is taken off by the constants stated with the readings; where none
 * are stated, by those of the candidates that predict left-out let-downs best. A
 * let-down that the others contradict is flagged and not fitted.
 *
 * @returns the fit, or the refusal with its reasons: what usableDrawdowns refuses,
 *   `geometry-mixed`, `surfaces-differ`, `reflectance-not-above-surface`.
 * @validity opaque, matte or glossy drawdowns of one lot; not fluorescent, metallic or pearlescent.
 * @source kubelka-munk-1931, duncan-1940, saunderson-1942, walowit-1987
 */
export function fittedColour(set: DrawdownSet): ColourFit | FitRefusal {
  const { usable, leftOut } = usableDrawdowns(onCommonGrid(set));
  if (usable === undefined) return { kind: "refused", reasons: leftOut };
  const candidates = surfaceCandidates(usable);
  if (candidates.length === 0) return { kind: "refused", reasons: [surfaceRefusal(usable)] };
  const faults = candidates.map((surface) => belowSurface(usable, surface));
  const tried = candidates.flatMap((surface, i) =>
    faults[i]?.refusal === undefined ? [trial(usable, surface, faults[i]?.remarks ?? [])] : [],
  );
  const [first, ...others] = tried;
  if (first === undefined)
    return { kind: "refused", reasons: faults.flatMap(({ refusal }) => refusal ?? []) };

  const best = others.reduce((one, other) => (other.error < one.error ? other : one), first);
  const stated = readingsOf(usable).some((reading) => reading.surface !== undefined);
  const by: SurfaceChoice["by"] = stated
    ? "stated"
    : tried.length > 1 && best.error < Infinity
      ? "leave-one-out"
      : "default";
  return finishedFit(usable, best, { surface: best.surface, by }, leftOut);
}

/** One surface tried on a set. */
interface Trial {
  readonly surface: SurfaceConstants;
  readonly set: ReadySet;
  readonly leftOut: readonly LeftOutFit[];
  /** Median leave-one-out Delta-E00; Infinity when no let-down can be left out. */
  readonly error: number;
  readonly remarks: readonly Statement[];
}

function trial(
  usable: UsableDrawdowns,
  surface: SurfaceConstants,
  remarks: readonly Statement[],
): Trial {
  const set = readySet(usable, surface);
  const leftOut = leftOutFits(set, set.tints);
  return { surface, set, leftOut, error: median(leftOut.map((left) => left.deltaE00)), remarks };
}

function finishedFit(
  usable: UsableDrawdowns,
  chosen: Trial,
  surface: SurfaceChoice,
  leftOut: readonly Statement[],
): ColourFit {
  const { set } = chosen;
  const held = leftOutTints(set, chosen.leftOut);
  const found = new Map(
    set.whites.flatMap(({ slug }) => [...suspects(held.filter(({ white }) => white === slug))]),
  );
  const isUsed = (id: string): boolean => found.get(id)?.rule !== "suspect-drawdown";
  const used = set.tints.filter(({ tint }) => isUsed(tint.id));
  const fit = setFit(set, used);
  const verdicts = used.length === set.tints.length ? chosen.leftOut : leftOutFits(set, used);
  return {
    kind: "fit",
    grid: set.grid,
    geometry: usable.masstone.geometry,
    surface,
    masstone: {
      measured: set.masstone.measured,
      lab: set.masstone.lab,
      internal: [...fit.solution.masstone],
    },
    whites: fittedWhites(set, fit, found),
    drawdowns: drawdownVerdicts(set, fit, verdicts, found),
    scattering: scatteringRuling(usable.masstone, fit.solution),
    chiSquare: fit.solution.chiSquare,
    remarks: chosen.remarks,
    leftOut,
  };
}

function fittedWhites(
  set: ReadySet,
  { solution, models }: SetFit,
  found: ReadonlyMap<string, Statement>,
): FittedWhite[] {
  const inflation = Math.max(1, solution.chiSquare);
  const fitted = set.whites.filter(({ slug }) => models.has(slug));
  return fitted.flatMap((white, j): FittedWhite[] => {
    const own = solution.whites[j];
    const tints = set.tints.filter(({ tint }) => tint.white === white.slug);
    const ratioKind = tints[0]?.tint.ratioKind;
    if (own === undefined || ratioKind === undefined) return [];
    const S = Array.from(own.extinction, (E, i) => E * shares(solution.masstone[i] ?? NaN).s);
    const SUncertainty = Array.from(own.varianceS, (variance) => Math.sqrt(variance * inflation));
    return [
      {
        slug: white.slug,
        ratioKind,
        measured: white.measured,
        whiteRatio: [...white.ratio],
        lab: white.lab,
        S,
        SUncertainty,
        K: Array.from(own.extinction, (E, i) => E * shares(solution.masstone[i] ?? NaN).k),
        KUncertainty: Array.from(own.varianceK, (variance) => Math.sqrt(variance * inflation)),
        SUpper: S.map((value, i) => value * Math.exp(2 * (SUncertainty[i] ?? NaN))),
        steps: tints.map(({ tint, measured, lab }) => {
          const suspect = found.get(tint.id);
          return {
            tint: tint.id,
            massRatio: tint.massRatio,
            measured,
            lab,
            ...(suspect === undefined ? {} : { suspect }),
          };
        }),
      },
    ];
  });
}

function drawdownVerdicts(
  set: ReadySet,
  { models }: SetFit,
  leftOut: readonly LeftOutFit[],
  found: ReadonlyMap<string, Statement>,
): DrawdownVerdict[] {
  const anyModel = [...models.values()][0];
  const masstone: DrawdownVerdict[] =
    anyModel === undefined
      ? []
      : [
          {
            drawdown: "masstone",
            residualDeltaE00: deltaE00(set.masstone.lab, plainLab(set, anyModel, Infinity)),
            leaveOneOutDeltaE00: { rule: "fit-needs-masstone", values: {} },
          },
        ];
  const tints = set.tints.flatMap(({ tint, lab }): DrawdownVerdict[] => {
    const model = models.get(tint.white);
    if (model === undefined) return [];
    const suspect = found.get(tint.id);
    const isUsed = suspect?.rule !== "suspect-drawdown";
    const residual = deltaE00(lab, plainLab(set, model, tint.massRatio));
    const own = leftOut.find(({ left }) => left.tint.id === tint.id)?.deltaE00;
    return [
      {
        drawdown: tint.id,
        white: tint.white,
        massRatio: tint.massRatio,
        residualDeltaE00: residual,
        // A suspect is left out of the fit already: its residual is its leave-one-out figure.
        leaveOneOutDeltaE00: isUsed
          ? (own ?? { rule: "only-let-down-in-its-white", values: { white: tint.white } })
          : residual,
        ...(suspect === undefined ? {} : { suspect }),
      },
    ];
  });
  return [...masstone, ...tints];
}

/** Readings that the instrument can't tell from the surface over them. */
function belowSurface(
  { masstone, whites, tints }: UsableDrawdowns,
  surface: SurfaceConstants,
): { refusal?: Statement; remarks: readonly Statement[] } {
  const below = (reading: Measurement): number[] => {
    const { offset } = surfaceForm(reading.geometry, surface);
    // Without gloss a black may read 0: that is its darkness, not the surface's.
    return offset === 0
      ? []
      : reading.spectrum.values.flatMap((value, i) => (value <= offset ? [i] : []));
  };
  const refusal = (drawdown: string, reading: Measurement, at: readonly number[]): Statement => ({
    rule: "reflectance-not-above-surface",
    source: "saunderson-1942",
    values: {
      drawdown,
      k1: surface.k1,
      wavelengthNm: wavelengthNm(reading.spectrum.grid, at[0] ?? NaN),
      reflectance: reading.spectrum.values[at[0] ?? NaN] ?? NaN,
      wavelengths: at.length,
    },
  });
  for (const [name, reading] of [
    ...whites.map((white) => [white.slug, white.masstone] as const),
    ...tints.map((tint) => [tint.id, tint.reading] as const),
  ]) {
    const at = below(reading);
    if (at.length > 0) return { refusal: refusal(name, reading, at), remarks: [] };
  }
  const at = below(masstone);
  if (at.length > HIDDEN_SHARE_MAX * masstone.spectrum.grid.count)
    return { refusal: refusal("masstone", masstone, at), remarks: [] };
  if (at.length === 0) return { remarks: [] };
  return {
    remarks: [
      {
        rule: "masstone-not-told-from-surface",
        values: { k1: surface.k1, wavelengths: at.length },
        source: "saunderson-1942",
      },
    ],
  };
}

function surfaceRefusal(usable: UsableDrawdowns): Statement {
  const geometries = geometriesOf(usable);
  return geometries.length > 1
    ? { rule: "geometry-mixed", values: { geometries }, source: "saunderson-1942" }
    : { rule: "surfaces-differ", values: {}, source: "saunderson-1942" };
}

/** Middle value; Infinity for none. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length === 0
    ? Infinity
    : ((sorted[Math.ceil(half) - 1] ?? NaN) + (sorted[Math.floor(half)] ?? NaN)) / 2;
}
