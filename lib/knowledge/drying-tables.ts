/** The tables that drying goes by. */
import { z } from "zod";
import {
  CHEMISTRIES,
  DRYING_CAUSES,
  DRYING_EFFECTS,
  type ChemistryRow,
} from "../drying/chemistry-drying.ts";
import { DRYING_NOTES, type DryingNoteRow } from "../drying/drying-notes.ts";
import { HEALTH_RULES, type HealthRow } from "../drying/film-defects.ts";
import { ends } from "../quantities/interval.ts";
import { evidence, listCell, numberCell, quantityCell } from "./cells.ts";
import type { EvidencedRow, TableForm } from "./loaded-table.ts";

const share = numberCell(0.001, 1, "of the pigment by mass");

export const DRYING_TABLES = {
  chemistryDrying: {
    file: "drying/chemistry-drying.csv",
    row: z.strictObject({
      chemistry: z.enum(CHEMISTRIES),
      effect: z.enum(DRYING_EFFECTS),
      daysInLinseed: quantityCell(0.1, 60, "days").transform(ends),
      fullFromMassFraction: share,
      cause: z.enum(DRYING_CAUSES),
      effectSource: evidence.source,
      ...evidence,
    }),
    names: ({ chemistry }) => [chemistry],
  } satisfies TableForm<ChemistryRow & EvidencedRow>,
  dryingNotes: {
    file: "drying/drying-notes.csv",
    row: z.strictObject({
      note: z.enum(DRYING_NOTES),
      pigments: listCell(z.string().min(1)),
      fromMassFraction: share,
      ...evidence,
    }),
    names: ({ note, pigments }) => pigments.map((name) => `${name}, ${note}`),
    pigments: ({ pigments }) => pigments,
  } satisfies TableForm<DryingNoteRow & EvidencedRow & { readonly pigments: readonly string[] }>,
  filmHealth: {
    file: "drying/film-health.csv",
    row: z.strictObject({
      chemistry: z.enum(CHEMISTRIES),
      rule: z.enum(HEALTH_RULES),
      fromMassFraction: share,
      ...evidence,
    }),
    names: ({ chemistry, rule }) => [`${chemistry}, ${rule}`],
  } satisfies TableForm<HealthRow & EvidencedRow>,
};
