/** What a painter has to know beside the days: touch dry is not through dry, what skins over, where driers are customary. */
import type { Interval } from "../quantities/interval.ts";
import type { Statement } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

/** Months [month] that a painting is customarily left before it is varnished. @source practice-drying */
export const MONTHS_BEFORE_VARNISH: Interval = [6, 12];

export interface DryingNoteRow {
  readonly rule: string;
  readonly colourIndexNames: readonly string[];
  readonly source: SourceKey;
}

export const DRYING_NOTES: readonly DryingNoteRow[] = [
  { rule: "skins-and-stays-soft", colourIndexNames: ["PBk 6"], source: "toch-1911" },
  {
    rule: "driers-customary",
    colourIndexNames: ["PBk 6", "PBk 7", "PBk 9"],
    source: "practice-drying",
  },
];

/**
 * Notes on a paint of these pigments; that touch dry is not through dry holds of every one.
 * @param colourIndexNames of its pigments, as far as known.
 */
export function dryingNotes(colourIndexNames: readonly string[]): Statement[] {
  const notes = DRYING_NOTES.map((row) => ({
    row,
    pigments: colourIndexNames.filter((name) => row.colourIndexNames.includes(name)),
  }))
    .filter(({ pigments }) => pigments.length > 0)
    .map(({ row, pigments }): Statement => ({
      rule: row.rule,
      values: { pigments },
      standing: "estimated",
      source: row.source,
    }));
  return [
    {
      rule: "touch-dry-is-not-through-dry",
      values: { monthsBeforeVarnish: MONTHS_BEFORE_VARNISH },
      standing: "estimated",
      source: "practice-drying",
    },
    ...notes,
  ];
}
