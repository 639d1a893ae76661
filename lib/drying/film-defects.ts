/**
 * What may go wrong with a film of this paint, where chemistry or recipe gives
 * cause: brittleness, soaps, wrinkling, sinking-in.
 *
 * @source practice-drying
 */
import { ends, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";
import { drierWarnings, type AddedDrier, type DrierWarning } from "./added-drier.ts";
import type { Chemistry } from "./chemistry-drying.ts";
import type { DryingKnowledge } from "./drying-knowledge.ts";
import { noteStatements, type DryingNoteRow, type NoteStatement } from "./drying-notes.ts";
import { mediumStatements, type MediumStatement } from "./medium-in-paint.ts";
import { mayHaveOilToSpare, sinkingInStatements, type ExpectedFinish, type SinkingStatement } from "./sinking-in.ts";
import type { OilPart } from "./oils.ts";
import { yellowingStatement, type YellowingStatement } from "./yellowing.ts";

export interface FilmPigment {
  readonly name: string;
  /** Undefined for a pigment that no table knows. */
  readonly chemistry?: Chemistry | undefined;
  readonly massFraction?: number | undefined;
  readonly notes?: readonly DryingNoteRow[] | undefined;
}

export interface Film {
  readonly pigments: readonly FilmPigment[];
  readonly oils: readonly OilPart[];
  /** Names of mediums in it of which no drying oil, drier or solvent is recorded: wax paste, resin, egg. */
  readonly mediums?: readonly string[] | undefined;
  readonly addedDriers?: readonly AddedDrier[] | undefined;
  /** 1 - PVC [1]. */
  readonly oilVolumeFraction?: Quantity | undefined;
  readonly finish?: ExpectedFinish | undefined;
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

export type FilmHealthStatement =
  | StatementOf<HealthRule, { readonly pigment: string; readonly massFraction?: number }>
  | StatementOf<
      "oil-rich-wrinkles-when-thick",
      { readonly oilVolumeFraction: Quantity; readonly from: number }
    >
  | NoteStatement
  | MediumStatement
  | YellowingStatement
  | DrierWarning
  | SinkingStatement;

/** Oil volume fraction [1] from which a thick stroke may wrinkle. */
const WRINKLES_FROM_OIL = 0.68;

/**
 * Every statement that the paint gives cause for: pigments' first, then oil, driers, recipe.
 * @throws RangeError when a drier's dose lies beyond reach.
 */
export function filmHealthStatements(
  film: Film,
  { filmHealth, oils, driers }: DryingKnowledge,
): FilmHealthStatement[] {
  const yellowing = yellowingStatement(film.oils, oils);
  return [
    ...film.pigments.flatMap((pigment) => pigmentStatements(pigment, filmHealth)),
    ...noteStatements("skins-and-stays-soft", film.pigments),
    ...(yellowing === undefined ? [] : [yellowing]),
    ...mediumStatements(film.mediums ?? [], "yellowing"),
    ...drierWarnings(film.addedDriers ?? [], driers),
    ...wrinkling(film),
    ...(film.finish === undefined ? [] : sinkingInStatements(film.finish)),
  ];
}

function pigmentStatements(
  { name, chemistry, massFraction }: FilmPigment,
  rows: readonly HealthRow[],
): FilmHealthStatement[] {
  return rows
    .filter(
      (row) =>
        row.chemistry === chemistry &&
        (massFraction === undefined || massFraction >= row.fromMassFraction),
    )
    .map(({ rule, source }) => ({
      rule,
      values: { pigment: name, ...(massFraction === undefined ? {} : { massFraction }) },
      standing: "estimated",
      source,
    }));
}

/** What its pigment holds does not run, so that it wrinkles where oil is to spare: by the measure that sinking-in goes by. */
function wrinkling({ oilVolumeFraction, finish }: Film): FilmHealthStatement[] {
  return oilVolumeFraction !== undefined &&
    ends(oilVolumeFraction)[1] >= WRINKLES_FROM_OIL &&
    (finish === undefined || mayHaveOilToSpare(finish))
    ? [
        {
          rule: "oil-rich-wrinkles-when-thick",
          values: { oilVolumeFraction, from: WRINKLES_FROM_OIL },
          standing: "estimated",
          source: "practice-drying",
        },
      ]
    : [];
}
