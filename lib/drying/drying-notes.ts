/** What a painter has to know beside the days: touch dry is not through dry, what skins over, where driers are customary. */
import type { Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

/** Months [month] that a painting is customarily left before it is varnished. @source practice-drying */
const MONTHS_BEFORE_VARNISH: Interval = [6, 12];

export const DRYING_NOTES = ["skins-and-stays-soft", "driers-customary"] as const;
export type DryingNote = (typeof DRYING_NOTES)[number];

/** A row of `drying-notes.csv`. */
export interface DryingNoteRow {
  readonly note: DryingNote;
  /** Least share of the dry pigment by mass [1] at which it is said. */
  readonly fromMassFraction: number;
  readonly source: SourceKey;
}

export interface NotedPigment {
  readonly name: string;
  /** Undefined when the parts are not recorded: then nothing is said of it. */
  readonly massFraction?: number | undefined;
  readonly notes?: readonly DryingNoteRow[] | undefined;
}

export type NoteStatement = StatementOf<
  DryingNote,
  { readonly pigment: string; readonly massFraction: number }
>;
export type ThroughDryStatement = StatementOf<
  "touch-dry-is-not-through-dry",
  { readonly monthsBeforeVarnish: Interval }
>;

/** Holds of every paint. */
export const THROUGH_DRY: ThroughDryStatement = estimated(
  "touch-dry-is-not-through-dry",
  { monthsBeforeVarnish: MONTHS_BEFORE_VARNISH },
  "practice-drying",
);

/** Where a note is due: of a pigment that makes up enough of the paint. */
export function noteStatements(
  note: DryingNote,
  pigments: readonly NotedPigment[],
): NoteStatement[] {
  return pigments.flatMap(({ name, massFraction, notes = [] }) =>
    notes
      .filter((row) => row.note === note && (massFraction ?? 0) >= row.fromMassFraction)
      .map(({ source }) => ({
        rule: note,
        values: { pigment: name, massFraction: massFraction ?? 0 },
        standing: "estimated" as const,
        source,
      })),
  );
}
