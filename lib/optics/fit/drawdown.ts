import type { TwoGroundFilm } from "../films/two-ground-film.ts";
import type { NotPredicted } from "../special-effect.ts";
import type { Measurement } from "./measurement.ts";

/** Whether dry pigment or made paint was weighed: the two strengths differ by the oil in each paint. */
export const RATIO_KINDS = ["pigment", "paint"] as const;
export type RatioKind = (typeof RATIO_KINDS)[number];

/** A white with its own masstone, against which a let-down in it is judged. */
export interface White {
  readonly slug: string;
  readonly masstone: Measurement;
  /** The masstone's own drawdown over black and white. */
  readonly film?: PaintFilm;
  /** Further films of it over black and white, which tell its S. */
  readonly films?: readonly PaintFilm[];
  /** That it fluoresces, or is made of flakes. */
  readonly notPredicted?: NotPredicted;
}

/** A film of a paint alone over both halves of a chart. */
export interface PaintFilm extends TwoGroundFilm {
  /** Mass of what was weighed, paint or dry pigment, in a volume of paint [g/cm3], by kind of ratio. */
  readonly massPerVolume?: Readonly<Partial<Record<RatioKind, number>>>;
}

/** Films of a paint alone: its masstone's own drawdown over both halves, and further ones. */
export type PaintFilms = Pick<White, "film" | "films">;

/** All of them, the masstone's own first. */
export function allFilms({ film, films = [] }: PaintFilms): readonly PaintFilm[] {
  return film === undefined ? films : [film, ...films];
}

/** A let-down of a colour in a white. */
export interface Tint {
  /** Name that verdicts and refusals call it by, such as "titanium-white 1:20"; no two of a set are alike. */
  readonly id: string;
  /** Slug of its white. */
  readonly white: string;
  /** Colour to white by mass [1], > 0: 1:20 is .05. */
  readonly massRatio: number;
  readonly ratioKind?: RatioKind;
  readonly reading: Measurement;
  /** The same film over black and white, where the let-down does not hide. */
  readonly film?: TwoGroundFilm;
}

/** All that was drawn down of one colour. */
export interface DrawdownSet {
  /** That a pigment of it fluoresces, or is flakes: nothing is fitted then. */
  readonly notPredicted?: NotPredicted;
  readonly masstone?: Measurement;
  /** The masstone's own drawdown over black and white, which tells whether it hides, and its R-infinity where it does not. */
  readonly film?: PaintFilm;
  /** Further films of the colour alone over black and white, which tell its S. */
  readonly films?: readonly PaintFilm[];
  readonly whites: readonly White[];
  readonly tints: readonly Tint[];
  /** What was read without a spectrum, as L*a*b* or against a chip: a fit cannot use it, and has to say that it is there. */
  readonly withoutSpectrum?: {
    readonly masstone: boolean;
    readonly tints: readonly Pick<Tint, "id" | "white">[];
  };
}

/** A let-down that a fit can use. */
export interface UsableTint extends Tint {
  readonly ratioKind: RatioKind;
}

/** Drawdowns that hang together: a masstone, and let-downs each with its white. */
export interface UsableDrawdowns {
  readonly masstone: Measurement;
  readonly film?: PaintFilm;
  readonly films?: readonly PaintFilm[];
  readonly whites: readonly White[];
  readonly tints: readonly UsableTint[];
}
