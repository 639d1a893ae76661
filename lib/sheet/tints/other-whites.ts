import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import { changeOfWhite, type WhiteChange } from "../../optics/tints/white-change.ts";

/** What others tell of a white that a colour was not let down in. */
export interface OtherWhite {
  readonly change: WhiteChange;
  /** Whose let-downs tell it, by slug. */
  readonly through: readonly string[];
}

/**
 * A colour's fit with what its sheet asks of the fits of others. That stands here, so that a fit
 * which has moved changes no other sheet but by this.
 */
export interface FitAmongOthers extends ColourFit {
  /** Each white of the range that it was not let down in and of which others tell. */
  readonly otherWhites: readonly OtherWhite[];
}

/** Fits of a range, each with what all of them tell of further whites. */
export function fitsAmongOthers(
  fits: ReadonlyMap<string, ColourFit | FitRefusal>,
): Map<string, FitAmongOthers | FitRefusal> {
  const found = [...fits].flatMap(([slug, fit]) => (fit.kind === "fit" ? [{ slug, fit }] : []));
  // One list for all: no colour tells of a white that it was not let down in itself.
  const others = found.map(({ fit }) => fit);
  const whites = new Set(others.flatMap((fit) => fit.whites.map(({ slug }) => slug)));
  const told = (fit: ColourFit): OtherWhite[] =>
    [...whites].flatMap((white) => {
      const change = changeOfWhite(fit, white, others);
      if (change === undefined) return [];
      return [{ change, through: change.through.flatMap((index) => found[index]?.slug ?? []) }];
    });
  return new Map(
    [...fits].map(([slug, fit]) => [
      slug,
      fit.kind === "fit" ? { ...fit, otherWhites: told(fit) } : fit,
    ]),
  );
}
