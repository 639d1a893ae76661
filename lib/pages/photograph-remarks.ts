import { deltaE00 } from "../colorimetry/difference.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import type { PhotographStatement } from "../patches/statements.ts";
import { MOST_MEDIAN_DELTA_E00 } from "../patches/left-out.ts";
import type { Interval } from "../quantities/interval.ts";
import type { Photograph } from "../records/photographs.ts";
import type { PhotographedColour } from "../records/taken-photograph.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { knownLab } from "../sheet/notations/known-lab.ts";

/** How far a light is called even. */
const EVEN = 0.98;

/** What is to be known of a photograph's colours. @param sheet of the colour that it is of. */
export function photographRemarks(
  { taken }: Photograph,
  sheet: Sheet | undefined,
): PhotographStatement[] {
  const { correction } = taken ?? {};
  if (correction === undefined) return [{ rule: "photograph-as-it-came", values: {} }];
  const { isUsed, patches, medianDeltaE00, largestDeltaE00, lightShare, colour } = correction;
  if (!isUsed)
    return [
      {
        rule: "photograph-not-corrected",
        values: { median: medianDeltaE00, limit: MOST_MEDIAN_DELTA_E00 },
      },
    ];
  return [
    {
      rule: "photograph-corrected",
      values: { patches, median: medianDeltaE00, largest: largestDeltaE00 },
    },
    ...(lightShare === undefined || lightShare > EVEN
      ? []
      : [{ rule: "light-evened", values: { percent: 100 * lightShare } } as const]),
    ...(colour === undefined || sheet === undefined ? [] : besideReading(colour, sheet)),
  ];
}

/** The colour as photographed where nobody has read it; else how far it lies from the reading. */
function besideReading(colour: PhotographedColour, { notations }: Sheet): PhotographStatement[] {
  const { masstone } = notations;
  const read = knownLab(masstone?.lab["D65/2"]);
  if (masstone === undefined || masstone.standing === "estimated")
    return [
      {
        rule: "colour-of-photograph",
        values: { L: ends(colour, "L"), a: ends(colour, "a"), b: ends(colour, "b") },
      },
    ];
  return read === undefined
    ? []
    : [{ rule: "photograph-beside-reading", values: { deltaE00: deltaE00(colour.lab, read) } }];
}

function ends({ lab, range }: PhotographedColour, axis: keyof Lab): Interval {
  return [lab[axis] - range[axis], lab[axis] + range[axis]];
}
