import { statedContradiction } from "../permanence/exposure.ts";
import { expectedContradiction } from "../permanence/expected-contradiction.ts";
import type { Expectation } from "../permanence/expected-lightfastness.ts";
import { lightfastnessRuling, type LightfastnessCategory } from "../permanence/lightfastness.ts";
import { openResults, type OpenResult } from "../planning/trial-results.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Records } from "../records/records.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { decimalText } from "../words/number-text.ts";

/** Where the result of a trial belongs in its colour's record. */
const KEYS = { exposure: "exposures", drying: "dryingTrials" } as const;

/** Trials that are over and found a colour worse than its sheet tells it. */
export function trialsToldBetter(
  sheet: Sheet,
  records: Records,
): { readonly key: (typeof KEYS)[keyof typeof KEYS]; readonly message: string }[] {
  return openResults(records, sheet.slug).flatMap((open) => {
    const told = betterInRecord(open) ?? betterWithoutExposure(open, sheet);
    return told === undefined
      ? []
      : [
          {
            key: KEYS[open.result.kind],
            message: `The trial trials/${open.slug} ended on ${open.ended}${told}: the sheet tells it better than it was found`,
          },
        ];
  });
}

function betterInRecord({ result, better }: OpenResult): string | undefined {
  if (better === undefined) return undefined;
  return result.kind === "exposure"
    ? `${changed(result)}, and the record says ${decimalText(better, 1)} (${lightfastnessRuling(better).category})`
    : `, still wet or tacky on day ${result.touchDryDays[0]}, and the record says dry to the touch in ${better} days`;
}

/** Of a colour without an exposure on record, its supplier's word or what its pigments lead one to expect is told. */
function betterWithoutExposure(
  { trial, result }: OpenResult,
  { permanence: { deltaEab, category, expectation } }: Sheet,
): string | undefined {
  if (result.kind !== "exposure" || trial.kind !== "exposure" || isKnown(deltaEab))
    return undefined;
  const found = {
    form: trial.form,
    category: result.category,
    meanDeltaEab: result.deltaEab,
  };
  if (
    isKnown(category) &&
    statedContradiction(category.value as LightfastnessCategory, found)?.rule ===
      "exposure-worse-than-stated"
  )
    return `${changed(result)}, and category ${category.value} is stated`;
  if (
    isKnown(expectation) &&
    expectedContradiction(expectation.value as Expectation, found)?.rule ===
      "exposure-worse-than-expected"
  )
    return `${changed(result)}, and by its pigments alone ${expectation.value} is expected`;
  return undefined;
}

function changed({
  deltaEab,
  category,
}: {
  readonly deltaEab: number;
  readonly category: LightfastnessCategory;
}): string {
  return ` at a change of ${decimalText(deltaEab, 1)} (as in category ${category})`;
}
