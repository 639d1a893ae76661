import type {
  DoesNotHide,
  ContrastByGlossStatement,
  FilmsHidStatement,
  MasstoneFilmStatement,
} from "./films/hiding.ts";
import type { FilmStatement } from "./films/film-coefficients.ts";
import type { OpacityStatement } from "./films/opacity.ts";
import type { FitRefusalStatement, NotLeftOut } from "./fit/colour-fit.ts";
import type { ExpectedDispersion, MeasuredDispersion } from "./fit/dispersion.ts";
import type { FitQualityStatement, SurfaceStatement } from "./fit/fit-remarks.ts";
import type { SuspectStatement } from "./fit/outlier-drawdown.ts";
import type { ScatteringStatement } from "./fit/scattering-statement.ts";
import type { DriftStatement } from "./mixtures/component-loss.ts";
import type { ExtenderStatement, NoSuchWhite } from "./mixtures/mixed-coefficients.ts";
import type { GlossDepthStatement } from "./surface/gloss-depth.ts";
import type { GeometryStatement } from "./surface/measurement-in-geometry.ts";
import type { ParticleStatement } from "./theory/particle-model.ts";
import type {
  AllBluerStatement,
  BlueStatement,
  LeanStatement,
} from "./theory/theory-statements.ts";
import type { NotMixed, OilNotKnown } from "./tints/common-whites.ts";
import type { NotAtLightness } from "./tints/equal-lightness.ts";
import type { ExpectedStatement } from "./tints/expected-ladder.ts";
import type { NotLetDown, TintStatement, WhitesStatement } from "./tints/tint-statement.ts";
import type { OpacityContradiction } from "./films/expected-opacity.ts";
import type { SurfacesDiffer } from "./unlike-readings.ts";
import type { NotCompared, StrengthResidualStatement } from "./tints/tinting-strength.ts";

/** What drawdowns carry, and how well a fit meets them. */
export type DrawdownStatement =
  | FitRefusalStatement
  | NotLeftOut
  | SurfaceStatement
  | FitQualityStatement
  | SuspectStatement
  | ScatteringStatement
  | GeometryStatement
  | NotAtLightness
  | FilmStatement
  | NoSuchWhite;

/** What a colour does in whites, how strong it is, what it hides, what gloss, mulling and a medium do to it. */
export type PaintStatement =
  | TintStatement
  | WhitesStatement
  | NotLetDown
  | Exclude<NotCompared, SurfacesDiffer>
  | StrengthResidualStatement
  | ContrastByGlossStatement
  | DoesNotHide
  | FilmsHidStatement
  | MasstoneFilmStatement
  | GlossDepthStatement
  | MeasuredDispersion
  | ExpectedDispersion
  | ExtenderStatement;

/** What becomes of a mixture, and what theory allows to be said. */
export type MixtureStatement =
  | NotMixed
  | OilNotKnown
  | DriftStatement
  | ParticleStatement
  | BlueStatement
  | AllBluerStatement
  | LeanStatement;

/** Everything that this science says. */
export type OpticsStatement =
  | DrawdownStatement
  | PaintStatement
  | MixtureStatement
  | ExpectedStatement
  | OpacityStatement
  | OpacityContradiction;
