/** One fit of one set under one surface, with the models that predict from it. */
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import {
  allFilms,
  type PaintFilm,
  type RatioKind,
  type UsableDrawdowns,
  type UsableTint,
  type White,
} from "./drawdown.ts";
import { closedContribution } from "./initial-estimate.ts";
import type { ClosedContribution, FitChoices, FitColumn } from "./fit-problem.ts";
import type { Measurement, SurfaceConstants } from "./measurement.ts";
import { hidingReading, type HidingReading } from "./hiding-reading.ts";
import { filmScattering, type FilmScale, type FilmScattering } from "./film-scattering.ts";
import { filmsOptics, type FilmsOptics } from "../films/several-films.ts";
import { surfaceForm } from "../surface/surface.ts";
import { internalOf, keptRatio, keptReflectance, readingOf } from "../tints/tint-reading.ts";
import {
  plainReadings,
  tintModel,
  tintReadings,
  type PlainModel,
  type TintModel,
} from "../tints/tint-model.ts";
import { twoConstantFit, type FitSolution } from "./two-constant-fit.ts";

/** A drawdown made ready: its fit column, and how it reads in the geometry of the masstone. */
interface ReadyDrawdown {
  readonly column: FitColumn;
  readonly measured: readonly number[];
  /** As it would read if it hid its ground, where it does not. */
  readonly hiding?: readonly number[];
  readonly lab: Lab;
  /** Of the reading that its fit column holds: what the plain model is to meet. */
  readonly fittedLab: Lab;
  /** Y over black by Y over white of the film that it is, where it does not hide. */
  readonly filmContrast?: number;
}

export interface ReadyTint extends ReadyDrawdown {
  readonly tint: UsableTint;
  readonly contribution: ClosedContribution;
}

/** A set under one surface, with what every fit of any part of it needs. */
export interface ReadySet {
  readonly choices: FitChoices;
  readonly grid: WavelengthGrid;
  readonly masstone: ReadyDrawdown;
  /** Contrast ratio of the film that stands for a masstone, where it does not hide. */
  readonly masstoneContrast?: number;
  readonly whites: readonly (ReadyDrawdown & {
    readonly slug: string;
    readonly ratio: Float64Array;
    /** S of the colour by films of both. */
    readonly scattering?: FilmScattering;
  })[];
  readonly tints: readonly ReadyTint[];
}

/** A set made ready for fitting under a surface. */
export function readySet(
  usable: UsableDrawdowns,
  surface: SurfaceConstants,
  choices: FitChoices = {},
): ReadySet {
  const { masstone, whites, tints } = usable;
  const home = surfaceForm(masstone.geometry, surface);
  const ready = (reading: Measurement, hiding: HidingReading): ReadyDrawdown => {
    const form = surfaceForm(reading.geometry, surface);
    const column = { form, measured: hiding.measured, sigma: hiding.sigma };
    const atHome = (values: readonly number[]): readonly number[] =>
      reading.geometry === masstone.geometry
        ? values
        : values.map((value) => readingOf(home, keptReflectance(internalOf(form, value))));
    const measured = atHome(reading.spectrum.values);
    return {
      column,
      measured,
      ...(hiding.filmContrast !== undefined && {
        hiding: atHome(hiding.measured),
        filmContrast: hiding.filmContrast,
      }),
      lab: spectrumLab({ grid: reading.spectrum.grid, values: measured }),
      fittedLab: spectrumLab({
        grid: reading.spectrum.grid,
        values: atHome(hiding.measured),
      }),
    };
  };
  const { grid } = masstone.spectrum;
  const films = allFilms(usable);
  const optics = films.length === 0 ? undefined : filmsOptics(films, surface, hidingCoat(usable));
  const hiding = hidingReading(masstone, usable.film, optics, surface);
  const ownMasstone = ready(masstone, hiding);
  const readyWhites = whites.map((white) => {
    const { slug, masstone: reading } = white;
    const ofWhite = allFilms(white);
    const whiteOptics =
      ofWhite.length === 0 ? undefined : filmsOptics(ofWhite, surface, hidingCoat(white));
    const made = ready(reading, hidingReading(reading, white.film, whiteOptics, surface));
    const kind = tints.find((tint) => tint.white === slug)?.ratioKind ?? "paint";
    const scattering =
      optics === undefined || whiteOptics === undefined
        ? undefined
        : filmScattering(
            grid,
            optics,
            filmScale(films, optics, kind),
            whiteOptics,
            filmScale(ofWhite, whiteOptics, kind),
          );
    return {
      ...made,
      slug,
      ratio: Float64Array.from(
        made.column.measured.map((value) => keptRatio(internalOf(made.column.form, value))),
      ),
      ...(scattering !== undefined && { scattering }),
    };
  });
  return {
    choices,
    grid,
    masstone: ownMasstone,
    ...(hiding.filmContrast !== undefined && { masstoneContrast: hiding.filmContrast }),
    whites: readyWhites,
    tints: tints.map((tint) => {
      const { film: tintFilm, reading } = tint;
      const made = ready(
        reading,
        hidingReading(reading, tintFilm, tintFilm && filmsOptics([tintFilm], surface), surface),
      );
      const ratio =
        readyWhites.find(({ slug }) => slug === tint.white)?.ratio ?? new Float64Array(0);
      return {
        ...made,
        tint,
        contribution: closedContribution(ownMasstone.column, ratio, {
          ...made.column,
          massRatio: tint.massRatio,
        }),
      };
    }),
  };
}

/** Fit of some of a set's let-downs; whites without any of them are left out. */
export interface SetFit {
  readonly solution: FitSolution;
  /** By slug of the white: the plain model, and the model drawn through the let-downs fitted. */
  readonly models: ReadonlyMap<string, TintModel>;
}

export function setFit(set: ReadySet, tints: readonly ReadyTint[]): SetFit {
  const whites = set.whites.filter(({ slug }) => tints.some(({ tint }) => tint.white === slug));
  const solution = twoConstantFit({
    grid: set.grid,
    masstone: set.masstone.column,
    whiteRatios: whites.map(({ ratio }) => ratio),
    films: whites.map(({ scattering }) => scattering),
    ...(set.choices.priorWidth !== undefined && { priorWidth: set.choices.priorWidth }),
    tints: tints.map(({ column, tint, contribution }) => ({
      ...column,
      contribution,
      massRatio: tint.massRatio,
      white: whites.findIndex(({ slug }) => slug === tint.white),
    })),
  });
  const models = new Map(
    whites.map((white, j) => {
      const plain: PlainModel = {
        form: set.masstone.column.form,
        masstone: solution.masstone,
        whiteRatio: white.ratio,
        extinction: solution.whites[j]?.extinction ?? [],
        carriedShare: set.choices.carriedShare,
      };
      const own = tints
        .filter(({ tint }) => tint.white === white.slug)
        .map(({ tint, measured, hiding }) => ({
          massRatio: tint.massRatio,
          measured,
          ...(hiding !== undefined && { hiding }),
        }));
      return [
        white.slug,
        tintModel(plain, [
          { massRatio: 0, measured: white.measured },
          ...own,
          { massRatio: Infinity, measured: set.masstone.measured },
        ]),
      ];
    }),
  );
  return { solution, models };
}

/** Lab (D65/10) of the plain two-constant model of a let-down. */
export function plainLab(set: ReadySet, model: PlainModel, massRatio: number): Lab {
  return spectrumLab({ grid: set.grid, values: plainReadings(model, massRatio) });
}

/** Lab (D65/10) of a let-down as predicted. */
export function predictedLab(set: ReadySet, model: TintModel, massRatio: number): Lab {
  return spectrumLab({ grid: set.grid, values: tintReadings(model, massRatio) });
}

/** A masstone is a coat that hides, unless its own drawdown over black and white was read. */
function hidingCoat({ masstone, film }: Pick<White, "masstone" | "film">): Measurement | undefined {
  return film === undefined ? masstone : undefined;
}

/** Thickness of films, and mass of what was weighed in a volume of their paint, as far as known. */
export function filmScale(
  films: readonly PaintFilm[],
  { filmUm }: FilmsOptics,
  kind: RatioKind,
): FilmScale {
  const massPerVolume = films.find((film) => film.massPerVolume?.[kind] !== undefined)
    ?.massPerVolume?.[kind];
  return {
    ...(massPerVolume !== undefined && { massPerVolume }),
    ...(filmUm !== undefined && { filmUm }),
  };
}
