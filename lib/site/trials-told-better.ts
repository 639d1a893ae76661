import { statedContradiction } from "../permanence/exposure.ts";
import { expectedContradiction } from "../permanence/expected-contradiction.ts";
import type { Expectation } from "../permanence/expected-lightfastness.ts";
import { lightfastnessRuling, type LightfastnessCategory } from "../permanence/lightfastness.ts";
import { openResults, type OpenResult } from "../planning/trial-results.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Records } from "../records/records.ts";
import type { RecordPath } from "../records/yaml-record.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { decimalText } from "../words/number-text.ts";

/** A trial that is over, with the line of its record that tells the colour worse than its sheet does. */
export interface ToldBetter {
  readonly trial: string;
  readonly path: RecordPath;
  readonly message: string;
}

/** Trials that are over and found a colour worse than its sheet tells it. */
export function trialsToldBetter(sheet: Sheet, records: Records): ToldBetter[] {
  return openResults(records, sheet.slug).flatMap((open) => {
    const told = betterInRecord(open) ?? betterWithoutExposure(open, sheet);
    return told === undefined
      ? []
      : [
          {
            trial: open.slug,
            path: worstPath(open),
            message: `The trial ended on ${open.ended}${told}: the sheet tells it better than it was found`,
          },
        ];
  });
}

/** The reading that changed most, or the last look at a film that was still wet. */
function worstPath({ trial }: OpenResult): RecordPath {
  if (trial.kind !== "exposure")
    return [
      "touched",
      trial.touched.findLastIndex(({ found }) => found === "wet" || found === "tacky"),
    ];
  const changes = trial.readings.map(({ deltaEab }) => deltaEab);
  return ["readings", changes.indexOf(Math.max(...changes)), "deltaEab"];
}

function betterInRecord({ trial, result, better }: OpenResult): string | undefined {
  if (better === undefined) return undefined;
  return result.kind === "exposure"
    ? `${changed(result)}, and colours/${trial.colour} says ${decimalText(better, 1)} (${lightfastnessRuling(better).category})`
    : `, still wet or tacky on day ${result.touchDryDays[0]}, and colours/${trial.colour} says dry to the touch in ${better} days`;
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
