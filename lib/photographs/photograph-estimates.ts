import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { given } from "../quantities/given.ts";
import { warningAt } from "../records/fault.ts";
import type { Photograph } from "../records/photographs.ts";
import type { Colour, LabReading, Records } from "../records/records.ts";
import { MOST_MEDIAN_DELTA_E00 } from "../patches/left-out.ts";

/** Records in which a colour that nobody has read is estimated from its first photograph that tells it. */
export function withEstimates(records: Records): Records {
  const colours = new Map(
    [...records.colours].map(([slug, colour]): [string, Colour] => {
      const masstone =
        colour.masstone === undefined ? estimateOf(slug, records.photographs) : undefined;
      return [slug, masstone === undefined ? colour : { ...colour, masstone }];
    }),
  );
  return { ...records, colours };
}

function estimateOf(slug: string, photographs: readonly Photograph[]): LabReading | undefined {
  for (const { owner, record, source, known, taken } of photographs) {
    const { colour, patches, medianDeltaE00 = 0 } = taken?.correction ?? {};
    if (owner.folder !== "colours" || owner.slug !== slug || colour === undefined) continue;
    return {
      form: "lab",
      lab: colour.lab,
      viewing: "D65/2",
      // What the patches were read in is what the picture was brought to.
      geometry: known?.patches[0]?.reading.geometry ?? "45/0",
      photographed: colour.range,
      origin: `estimated from a photograph, ${source.name}, corrected by ${patches} read patches that it misses by Delta-E00 ${medianDeltaE00.toFixed(1)} (median) when they are left out`,
      ...(record.date !== undefined && { date: record.date }),
    };
  }
  return undefined;
}

/** Why a photograph is shown as it came, and patches that look exchanged. */
export function correctionWarnings({ known, taken, source, place }: Photograph): Diagnostic[] {
  if (known === undefined || taken === undefined) return [];
  const warning = (message: string, expected: string): Diagnostic =>
    warningAt(place(["correctedBy"]), "photographs/correction", {
      message,
      expected,
    });
  const { correction } = taken;
  if (correction === undefined)
    return [
      warning(
        `${source.name} is not colour-corrected: fewer than two of its patches can be seen as they are, the others are too light for the camera`,
        "a shorter exposure",
      ),
    ];
  const { suspected, isUsed, medianDeltaE00, worst, largestDeltaE00 } = correction;
  return given([
    ...suspected.map(({ name, deltaE00 }) =>
      warning(
        `The patch ${name} of ${source.name} is missed by Delta-E00 ${deltaE00.toFixed(1)} when it is left out, the others by ${medianDeltaE00.toFixed(1)} (median): it is another one, or lies in a reflection`,
        "each patch where the record says it is",
      ),
    ),
    !isUsed &&
      warning(
        `${source.name} is not colour-corrected: patches left out are missed by Delta-E00 ${medianDeltaE00.toFixed(1)} (median), ${worst} by ${largestDeltaE00.toFixed(1)}`,
        `${MOST_MEDIAN_DELTA_E00} or less`,
      ),
  ]);
}
