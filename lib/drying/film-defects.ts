/**
 * What may go wrong with a film of this paint, where chemistry or recipe gives
 * cause: brittleness, soaps, wrinkling, sinking-in.
 *
 * @source practice-drying
 */
import { ends, type Quantity } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";
import type { AddedDrier } from "./added-drier.ts";
import type { Chemistry } from "./chemistry-drying.ts";
import type { DryingPigment } from "./drying-estimate.ts";
import type { DryingNoteRow } from "./drying-notes.ts";
import type { OilPart } from "./oils.ts";
import { mayHaveOilToSpare, type ExpectedFinish } from "./sinking-in.ts";

export interface FilmPigment extends DryingPigment {
  readonly notes: readonly DryingNoteRow[];
}

export interface Film {
  readonly pigments: readonly FilmPigment[];
  readonly oils: readonly OilPart[];
  /** Names of mediums in it of which no drying oil, drier or solvent is recorded: wax paste, resin, egg. */
  readonly mediums: readonly string[];
  readonly addedDriers: readonly AddedDrier[];
  /** 1 - PVC [1]. */
  readonly oilVolumeFraction: Quantity | undefined;
  readonly finish: ExpectedFinish | undefined;
}

export const HEALTH_RULES = [
  "zinc-makes-brittle",
  "zinc-soaps-may-part-layers",
  "lead-makes-tough",
  "lead-soaps",
] as const;
export type HealthRule = (typeof HEALTH_RULES)[number];

/** A row of `film-health.csv`. */
export interface HealthRow {
  readonly chemistry: Chemistry;
  readonly rule: HealthRule;
  readonly source: SourceKey;
  /** Least share of the dry pigment by mass [1] at which it is said; a share not recorded counts as enough. */
  readonly fromMassFraction: number;
}

export type PigmentFilmStatement = StatementOf<
  HealthRule,
  { readonly pigment: string; readonly massFraction?: number }
>;
export type WrinklingStatement = StatementOf<
  "oil-rich-wrinkles-when-thick",
  { readonly oilVolumeFraction: Quantity; readonly from: number }
>;

/** Oil volume fraction [1] from which a thick stroke may wrinkle. */
const WRINKLES_FROM_OIL = 0.68;

/** What a pigment makes of a film, by its chemistry and share. */
export function pigmentFilmStatements(
  { name, chemistry, massFraction }: DryingPigment,
  rows: readonly HealthRow[],
): PigmentFilmStatement[] {
  return rows
    .filter(
      (row) =>
        row.chemistry === chemistry?.chemistry &&
        (massFraction === undefined || massFraction >= row.fromMassFraction),
    )
    .map(({ rule, source }) =>
      estimated(
        rule,
        { pigment: name, ...(massFraction !== undefined && { massFraction }) },
        source,
      ),
    );
}

/**
 * Of a film so rich in oil that a thick stroke may wrinkle. What its pigment holds does not run, so that it
 * wrinkles where oil is to spare: by the measure that sinking-in goes by.
 */
export function wrinkling({
  oilVolumeFraction,
  finish,
}: Pick<Film, "oilVolumeFraction" | "finish">): WrinklingStatement[] {
  return oilVolumeFraction !== undefined &&
    ends(oilVolumeFraction)[1] >= WRINKLES_FROM_OIL &&
    (finish === undefined || mayHaveOilToSpare(finish))
    ? [
        estimated(
          "oil-rich-wrinkles-when-thick",
          { oilVolumeFraction, from: WRINKLES_FROM_OIL },
          "practice-drying",
        ),
      ]
    : [];
}
