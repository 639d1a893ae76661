import { earthChemistry } from "../../drying/brown-earth.ts";
import type { Chemistry, ChemistryRow } from "../../drying/chemistry-drying.ts";
import type { DryingPigment } from "../../drying/drying-estimate.ts";
import type { DryingNoteRow } from "../../drying/drying-notes.ts";
import { isKnown } from "../../quantities/figure.ts";
import { amountValue } from "../recorded-figure.ts";
import type { Records } from "../../records/records.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";

/** A pigment of a paint as far as drying and film go. */
export interface DryingPart extends DryingPigment {
  readonly slug: string;
  readonly notes: readonly DryingNoteRow[];
}

export function dryingParts(parts: readonly PigmentPart[], records: Records): DryingPart[] {
  return parts.map((part) => ({
    slug: part.slug,
    name: part.name,
    chemistry: chemistryRow(dryingChemistry(part, records), records),
    massFraction: isKnown(part.massFraction) ? part.massFraction.value : undefined,
    notes: records.knowledge.pigment(part.colourIndexName).dryingNotes,
  }));
}

/** What a pigment is as far as drying goes; undefined for one that no table knows. */
function dryingChemistry(
  { slug, colourIndexName }: PigmentPart,
  { knowledge, pigments }: Records,
): Chemistry | undefined {
  const { manganeseDioxideFraction, earth } = pigments.get(slug)?.record ?? {};
  return earthChemistry(knowledge.pigment(colourIndexName).chemistry, {
    earth,
    manganeseDioxideFraction:
      manganeseDioxideFraction === undefined ? undefined : amountValue(manganeseDioxideFraction),
  });
}

function chemistryRow(
  chemistry: Chemistry | undefined,
  { knowledge: { tables } }: Records,
): ChemistryRow | undefined {
  return tables.chemistryDrying.find((row) => row.chemistry === chemistry);
}
