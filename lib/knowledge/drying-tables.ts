/** The tables that drying goes by. */
import { z } from "zod";
import { DRIER_METALS, DRIER_PLACES, type DrierRow } from "../drying/added-drier.ts";
import {
  CHEMISTRIES,
  DRYING_CAUSES,
  DRYING_EFFECTS,
  type ChemistryRow,
} from "../drying/chemistry-drying.ts";
import { DRYING_NOTES, type DryingNoteRow } from "../drying/drying-notes.ts";
import { HEALTH_RULES, type HealthRow } from "../drying/film-defects.ts";
import { OILS, YELLOWING_RULES, type OilRow } from "../drying/oils.ts";
import { ends } from "../quantities/interval.ts";
import { evidence, listCell, numberCell, quantityCell } from "./cells.ts";
import type { EvidencedRow, TableForm } from "./loaded-table.ts";

const share = numberCell(0.001, 1, "of the pigment by mass");

export const DRYING_TABLES = {
  oils: {
    file: "drying/oils.csv",
    row: z.strictObject({
      oil: z.enum(OILS),
      touchDryDays: quantityCell(0.5, 60, "days").transform(ends),
      yellowing: z.enum(YELLOWING_RULES),
      yellowingSource: evidence.source,
      ...evidence,
    }),
    names: ({ oil }) => [oil],
    all: OILS,
  } satisfies TableForm<OilRow & EvidencedRow>,
  driers: {
    file: "drying/driers.csv",
    row: z.strictObject({
      metal: z.enum(DRIER_METALS),
      acts: z.enum(DRIER_PLACES),
      customaryPercent: quantityCell(0.001, 2, "% of metal on oil").transform(ends),
      factor: quantityCell(0.05, 3, "times the days").transform(ends),
      ...evidence,
    }),
    names: ({ metal }) => [metal],
    all: DRIER_METALS,
  } satisfies TableForm<DrierRow & EvidencedRow>,
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
