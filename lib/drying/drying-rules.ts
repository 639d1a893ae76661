/**
 * What is said of a paint as it dries, in layers and as a film. A rule that is new is a function
 * of the facts, named in the list whose heading its sentence is read under.
 */
import type { Interval } from "../quantities/interval.ts";
import { withCases } from "../quantities/statement.ts";
import { drierWarnings } from "./added-drier.ts";
import type { DryingKnowledge } from "./drying-knowledge.ts";
import { noteStatements, THROUGH_DRY } from "./drying-notes.ts";
import { pigmentFilmStatements, wrinkling, type Film } from "./film-defects.ts";
import { keptPaintStatements } from "./kept-in-the-tube.ts";
import { mediumStatements } from "./medium-in-paint.ts";
import { fatnessRuling } from "./oil-richness.ts";
import { sinkingInStatements } from "./sinking-in.ts";
import type { DryingTrial } from "./drying-trial.ts";
import { wetFilmStatements, type WetFilm } from "./wet-film.ts";
import { yellowingStatement } from "./yellowing.ts";

/** A paint, and what is known of how it dries. */
export interface DryingFacts extends Film {
  /** Days to touch dry [d]: as tried, else as expected; undefined where neither is known. */
  readonly touchDryDays: Interval | undefined;
  /** Whether a drier is among what was added to it, its metals known or not. */
  readonly hasDrier: boolean;
  /** Trials on record of the paint as it is, and films of it that are touched day by day. */
  readonly recordedTrials: readonly DryingTrial[];
  readonly wetFilms: readonly WetFilm[];
  readonly tables: DryingKnowledge;
}

/** How it dries, below what moves its days. */
export const DRYING_REASONS = [
  ({ wetFilms, recordedTrials }: DryingFacts) =>
    wetFilms.flatMap((film) => wetFilmStatements(film, recordedTrials)),
  ({ mediums }: DryingFacts) => mediumStatements(mediums, "drying"),
  () => [THROUGH_DRY],
  ({ hasDrier, pigments }: DryingFacts) =>
    hasDrier ? [] : noteStatements("driers-customary", pigments),
  ({ addedDriers, pigments, tables }: DryingFacts) =>
    keptPaintStatements(addedDriers, pigments, tables.driers),
] as const;

/** Where in a painting it belongs. */
export const LAYERING_REASONS = [
  ({ oilVolumeFraction: oil }: Film) => (oil === undefined ? [] : [fatnessRuling(oil).reason]),
  ({ mediums }: Film) => mediumStatements(mediums, "fat over lean"),
] as const;

/** The film with age: pigments first, then oil, driers, recipe. */
export const FILM_HEALTH = [
  ({ pigments, tables }: DryingFacts) =>
    pigments.flatMap((pigment) => pigmentFilmStatements(pigment, tables.filmHealth)),
  ({ pigments }: DryingFacts) => noteStatements("skins-and-stays-soft", pigments),
  ({ oils, tables }: DryingFacts) => yellowingStatement(oils, tables.oils),
  ({ mediums }: DryingFacts) => mediumStatements(mediums, "yellowing"),
  ({ addedDriers, tables }: DryingFacts) => drierWarnings(addedDriers, tables.driers),
  // As fat as a paint is called fat; by the definition of the two a film cannot sink in and wrinkle.
  withCases(wrinkling, {
    "oil-rich-wrinkles-when-thick": {
      said: [
        { oilVolumeFraction: 0.68 },
        { oilVolumeFraction: [0.5, 0.68] },
        { oilVolumeFraction: 0.68, finish: { spans: ["gloss"], reducedPvc: 0.899 } },
        { oilVolumeFraction: 0.68, finish: { spans: ["gloss"], reducedPvc: [0.65, 0.93] } },
      ],
      unsaid: [
        { oilVolumeFraction: 0.679 },
        { oilVolumeFraction: [0.5, 0.679] },
        { oilVolumeFraction: 0.68, finish: { spans: ["semi-gloss"], reducedPvc: 0.9 } },
      ],
    },
  }),
  ({ finish }: DryingFacts) => (finish === undefined ? [] : sinkingInStatements(finish)),
] as const;
