import type { ContributionStatement } from "./contribution.ts";
import type { PartStatement } from "./days-of-parts.ts";
import type { DryingClassStatement } from "./drying-class.ts";
import type { BaseStatement, UnknownDryingStatement } from "./drying-estimate.ts";
import type { NoteStatement, ThroughDryStatement } from "./drying-notes.ts";
import type { TrialContradiction, TrialStatement } from "./drying-trial.ts";
import type { FilmHealthStatement } from "./film-defects.ts";
import type { GroundStatement } from "./layering-advice.ts";
import type { KeptPaintStatement } from "./kept-in-the-tube.ts";
import type { LayeringLine } from "./layering-line.ts";
import type { MediumStatement } from "./medium-in-paint.ts";
import type { FatnessStatement } from "./oil-richness.ts";
import type { WetFilmStatement } from "./wet-film.ts";

/** Everything that this science says. */
export type DryingStatement =
  | BaseStatement
  | UnknownDryingStatement
  | ContributionStatement
  | PartStatement
  | DryingClassStatement
  | TrialStatement
  | TrialContradiction
  | WetFilmStatement
  | ThroughDryStatement
  | NoteStatement
  | KeptPaintStatement
  | MediumStatement
  | FatnessStatement
  | LayeringLine
  | GroundStatement
  | FilmHealthStatement;
