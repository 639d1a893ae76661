/** K and S of colours from their drawdowns, with every verdict on them; or why there are none. */
import { certain } from "../../quantities/at.ts";
import { isStatement } from "../../quantities/statement.ts";
import {
  readingGroup,
  surfaceCandidates,
  type ReadingGroup,
  type SurfaceChoice,
} from "../surface/workshop-surface.ts";
import type { ColourFit, FitRefusal, FitRefusalStatement } from "./colour-fit.ts";
import { onCommonGrid } from "./common-grid.ts";
import { allFilms, type DrawdownSet, type UsableDrawdowns } from "./drawdown.ts";
import { finishedFit } from "./finished-fit.ts";
import type { FitChoices } from "./fit-problem.ts";
import type { Measurement, SurfaceConstants } from "./measurement.ts";
import { surfaceTrial, type SurfaceRefusal, type SurfaceTrial } from "./surface-trial.ts";
import { leftOutMisses, workshopExperience } from "./workshop-experience.ts";
import { usableDrawdowns, type LeftOutStatement } from "./usable-drawdowns.ts";
import { median } from "../../quantities/median.ts";

/**
 * K and S of one colour relative to its whites, by its own drawdowns alone:
 * {@link fittedColours} of a workshop that has no other.
 * @source kubelka-munk-1931, duncan-1940, saunderson-1942, walowit-1987
 */
export function fittedColour(set: DrawdownSet): ColourFit | FitRefusal {
  const [fit] = fittedColours(new Map([["", set]])).values();
  return certain(fit);
}

/**
 * K and S of a workshop's colours relative to their whites, by two-constant Kubelka-Munk
 * over all drawdowns of each at once; whites first, each from its own masstone with S = 1.
 * Readings on unlike grids are brought to one, where all overlap, in the coarsest of their steps.
 *
 * The surface is one for all colours read alike, so that any two of them mix: the constants
 * stated with the readings; where none are stated, those of the candidates that predict
 * left-out let-downs of all of them best. A let-down that the others contradict is flagged
 * and not fitted.
 *
 * @param trial another that gives the same, as one that remembers what it gave; `finished` likewise.
 * @param kept of each colour what was made of the same drawdowns before.
 * @returns by key of the set the fit, or the refusal with its reasons: what usableDrawdowns refuses,
 *   `geometry-mixed`, `surfaces-differ`, `reflectance-not-above-surface`.
 * @validity opaque, matte or glossy drawdowns of one lot; not fluorescent, metallic or pearlescent.
 * @source kubelka-munk-1931, duncan-1940, saunderson-1942, walowit-1987
 */
export function fittedColours<K>(
  sets: ReadonlyMap<K, DrawdownSet>,
  choices: FitChoices = {},
  trial: typeof surfaceTrial = surfaceTrial,
  finished: typeof finishedFit = finishedFit,
  kept: KeptFits = MADE_EACH_TIME,
): Map<K, ColourFit | FitRefusal> {
  const selected = [...onCommonGrid(sets)].map(([key, set]) => ({ key, ...usableDrawdowns(set) }));
  const colours = selected.map(({ usable }, i) => ({
    usable,
    readings: usable === undefined ? readingsOfSet([...sets.values()][i]) : readingsOf(usable),
  }));
  const trialOf = rememberedTrials((usable, surface) => trial(usable, surface, choices));
  const tried = triedColours(colours, (usable, surface) =>
    kept.tried([usable, surface], () => triedSurface(trialOf(usable, surface))),
  );
  return withExperience(
    selected.map(({ key, usable, leftOut }, i): [K, FittedAlone | FitRefusal] => {
      const choice = tried[i];
      if (usable === undefined || choice === undefined)
        return [key, { kind: "refused", reasons: leftOut }];
      if (isStatement(choice)) return [key, { kind: "refused", reasons: [choice] }];
      const made = (): FittedAlone => {
        const tried = trialOf(usable, choice.surface);
        const chosen = certain(tried.kind === "refused" ? undefined : tried);
        const fit = finished(usable, chosen, choice, leftOut);
        return { kind: "fitted", fit, misses: leftOutMisses(fit) };
      };
      return [key, kept.fitted([usable, choice, leftOut], made)];
    }),
  );
}

/** What is made of one colour's drawdowns, or was made of the same before. */
export interface KeptFits {
  readonly tried: (
    of: readonly [UsableDrawdowns, SurfaceConstants],
    made: () => TriedSurface | SurfaceRefusal,
  ) => TriedSurface | SurfaceRefusal;
  readonly fitted: (
    of: readonly [UsableDrawdowns, SurfaceChoice, readonly LeftOutStatement[]],
    made: () => FittedAlone,
  ) => FittedAlone;
}

const MADE_EACH_TIME: KeptFits = { tried: (_, made) => made(), fitted: (_, made) => made() };

/** How far off a surface has the let-downs that are left out of its fit, Delta-E00. */
export interface TriedSurface {
  readonly kind: "tried";
  readonly leftOutDeltaE00: readonly number[];
}

/** A colour's fit by its own drawdowns, with its left-out misses in units of the usual 68 % [1]. */
export interface FittedAlone {
  readonly kind: "fitted";
  readonly fit: ColourFit;
  readonly misses: readonly number[];
}

function triedSurface(trial: SurfaceTrial | SurfaceRefusal): TriedSurface | SurfaceRefusal {
  return trial.kind === "refused"
    ? trial
    : { kind: "tried", leftOutDeltaE00: trial.leftOut.map(({ deltaE00 }) => deltaE00) };
}

/** The surface that is chosen has been tried. */
function rememberedTrials(
  trial: (usable: UsableDrawdowns, surface: SurfaceConstants) => SurfaceTrial | SurfaceRefusal,
): typeof trial {
  const known = new Map<UsableDrawdowns, Map<SurfaceConstants, SurfaceTrial | SurfaceRefusal>>();
  return (usable, surface) => {
    const own = known.get(usable) ?? new Map<SurfaceConstants, SurfaceTrial | SurfaceRefusal>();
    known.set(usable, own);
    const tried = own.get(surface) ?? trial(usable, surface);
    own.set(surface, tried);
    return tried;
  };
}

/** Fits with what left-out let-downs of all that were read alike show. */
function withExperience<K>(
  fits: readonly (readonly [K, FittedAlone | FitRefusal])[],
): Map<K, ColourFit | FitRefusal> {
  const fitted = fits.flatMap(([, one]) => (one.kind === "fitted" ? [one] : []));
  const byGeometry = new Map(
    [...new Set(fitted.map(({ fit: { geometry } }) => geometry))].map((geometry) => {
      const alike = fitted.filter(({ fit }) => fit.geometry === geometry);
      return [geometry, workshopExperience(alike.flatMap(({ misses }) => misses))];
    }),
  );
  return new Map(
    fits.map(([key, one]): [K, ColourFit | FitRefusal] => {
      if (one.kind === "refused") return [key, one];
      const experience = byGeometry.get(one.fit.geometry);
      return [key, experience === undefined ? one.fit : { ...one.fit, experience }];
    }),
  );
}

interface ColourReadings {
  readonly usable: UsableDrawdowns | undefined;
  readonly readings: readonly Measurement[];
}

/** A colour fitted under a surface. */
type Trial = (usable: UsableDrawdowns, surface: SurfaceConstants) => TriedSurface | SurfaceRefusal;

/** Of each colour the surface that it is fitted under; undefined where it has nothing to fit. */
function triedColours(
  colours: readonly ColourReadings[],
  trial: Trial,
): (SurfaceChoice | FitRefusalStatement | undefined)[] {
  const found = new Map<number, SurfaceChoice | FitRefusalStatement>();
  const homes = new Set(colours.flatMap(({ readings: [first] }) => first?.geometry ?? []));
  for (const home of homes) {
    const alike = colours.map((colour, i) => ({ ...colour, i }));
    const group = alike.filter(({ readings: [first] }) => first?.geometry === home);
    const members = group.flatMap(({ usable, readings, i }) =>
      usable === undefined ? [] : [{ i, usable, readings }],
    );
    const shared = sharedCandidates(readingGroup(group.flatMap(({ readings }) => readings)));
    // A colour whose readings state constants that others contradict goes by its own.
    const states = (readings: readonly Measurement[]): boolean =>
      readings.some(({ surface }) => surface !== undefined);
    const alone = shared[0]?.by === "stated" ? [] : members.filter((one) => states(one.readings));
    for (const { i, usable, readings } of alone)
      for (const [at, one] of chosen([{ i, usable }], ownCandidates(readings), trial))
        found.set(at, one);
    const together = members.filter((one) => !alone.includes(one));
    for (const [at, one] of chosen(together, shared, trial)) found.set(at, one);
  }
  return colours.map((_, i) => found.get(i));
}

function sharedCandidates(group: ReadingGroup): SurfaceChoice[] {
  const candidates = surfaceCandidates(group);
  if (candidates.length > 0) return candidates;
  const unstated = group.readings.filter(({ surface }) => surface === undefined);
  return surfaceCandidates({ ...group, readings: unstated });
}

function ownCandidates(readings: readonly Measurement[]): SurfaceChoice[] {
  return surfaceCandidates(readingGroup(readings));
}

/** The candidate under which left-out let-downs of all members are predicted best, the first where none can be left out. */
function chosen(
  members: readonly { readonly i: number; readonly usable: UsableDrawdowns }[],
  candidates: readonly SurfaceChoice[],
  trial: Trial,
): Map<number, SurfaceChoice | FitRefusalStatement> {
  const trials = candidates.map((choice) => {
    const tried = members.map(({ i, usable }) => ({
      i,
      trial: trial(usable, choice.surface),
    }));
    const errors = tried.flatMap(({ trial }) =>
      trial.kind === "tried" ? trial.leftOutDeltaE00 : [],
    );
    const refused = tried.filter(({ trial }) => trial.kind === "refused").length;
    return { choice, tried, error: errors.length === 0 ? Infinity : median(errors), refused };
  });
  const [first, ...others] = trials;
  if (first === undefined)
    return new Map(members.map(({ i, usable }) => [i, surfaceRefusal(usable)]));
  const best = others.reduce(
    (one, other) =>
      other.refused < one.refused || (other.refused === one.refused && other.error < one.error)
        ? other
        : one,
    first,
  );
  const isByError = trials.length > 1 && best.error < Infinity;
  const choice: SurfaceChoice = isByError ? { ...best.choice, by: "leave-one-out" } : best.choice;
  return new Map(
    best.tried.map(({ i, trial }) => [i, trial.kind === "tried" ? choice : reasonOf(trial)]),
  );
}

function reasonOf({ reason }: SurfaceRefusal): FitRefusalStatement {
  return reason;
}

function surfaceRefusal(usable: UsableDrawdowns): FitRefusalStatement {
  const geometries = [...new Set(readingsOf(usable).map(({ geometry }) => geometry))];
  return geometries.length > 1
    ? { rule: "geometry-mixed", values: { geometries }, source: "saunderson-1942" }
    : { rule: "surfaces-differ", values: {}, source: "saunderson-1942" };
}

/** All readings that a fit takes its surface off, the masstone first: masstone, whites, let-downs, films. */
function readingsOf(usable: UsableDrawdowns): Measurement[] {
  const { masstone, whites, tints } = usable;
  return [
    masstone,
    ...allFilms(usable).flatMap(({ overBlack, overWhite }) => [overBlack, overWhite]),
    ...whites.map((white) => white.masstone),
    ...tints.map((tint) => tint.reading),
  ];
}

function readingsOfSet(set: DrawdownSet | undefined): Measurement[] {
  if (set === undefined) return [];
  return [
    ...(set.masstone === undefined ? [] : [set.masstone]),
    ...set.tints.map(({ reading }) => reading),
  ];
}
