import { statedContradiction } from "../permanence/exposure.ts";
import { expectedContradiction } from "../permanence/expected-contradiction.ts";
import type { Expectation } from "../permanence/expected-lightfastness.ts";
import { lightfastnessRuling, type LightfastnessCategory } from "../permanence/lightfastness.ts";
import {
  foundSoFar,
  openResults,
  type FoundSoFar,
  type OpenResult,
} from "../planning/trial-results.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Records } from "../records/records.ts";
import type { RecordPath } from "../records/yaml-record.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { decimalText } from "../words/number-text.ts";

/** A trial, with the line of its record that tells the colour worse than its sheet does. */
export interface ToldBetter {
  readonly trial: string;
  readonly path: RecordPath;
  readonly message: string;
}

/** Trials that found a colour worse than its sheet tells it, be they over or not: what they found so far stays. */
export function trialsToldBetter(sheet: Sheet, records: Records): ToldBetter[] {
  const over = openResults(records, sheet.slug).map((open) => ({
    ...open,
    told: betterInRecord(open) ?? betterWithoutExposure(open, sheet),
  }));
  const goingOn = foundSoFar(records, sheet.slug).map((so) => ({
    ...so,
    ended: so.trial.ended,
    told: betterSoFar(so) ?? betterWithoutExposure({ ...so, result: so.found }, sheet),
  }));
  return [...over, ...goingOn].flatMap(({ told, slug, trial, ended }) =>
    told === undefined
      ? []
      : [
          {
            trial: slug,
            path: worstPath({ trial }),
            message: `The trial ${ended === undefined ? "goes on" : `ended on ${ended}`}${told}: the sheet tells it better than it was found`,
          },
        ],
  );
}

/** The reading that changed most, or the last look at a film that was still wet. */
function worstPath({ trial }: Pick<OpenResult, "trial">): RecordPath {
  if (trial.kind !== "exposure")
    return [
      "touched",
      trial.touched.findLastIndex(({ found }) => found === "wet" || found === "tacky"),
    ];
  const changes = trial.readings.map(({ deltaEab }) => deltaEab);
  return ["readings", changes.indexOf(Math.max(...changes)), "deltaEab"];
}

interface Found {
  readonly trial: OpenResult["trial"];
  readonly result: OpenResult["result"] | FoundSoFar["found"];
}

function betterInRecord({ trial, result, better }: OpenResult): string | undefined {
  if (better === undefined) return undefined;
  return result.kind === "exposure"
    ? `${changed(result)}, and colours/${trial.colour} says ${decimalText(better, 1)} (${lightfastnessRuling(better).category})`
    : `, still wet or tacky on day ${result.touchDryDays[0]}, and colours/${trial.colour} says dry to the touch in ${better} days`;
}

function betterSoFar({ trial: { colour }, contradiction }: FoundSoFar): string | undefined {
  if (contradiction === undefined) return undefined;
  const { rule, values } = contradiction;
  return rule === "change-beyond-record"
    ? `${changed(values)}, and colours/${colour} says ${decimalText(values.recordedDeltaEab, 1)} (${lightfastnessRuling(values.recordedDeltaEab).category})`
    : `, still ${values.found} on day ${values.day}, and colours/${colour} says dry to the touch in ${values.recordedDays} days`;
}

/** Of a colour without an exposure on record, its supplier's word or what its pigments lead one to expect is told. */
function betterWithoutExposure(
  { trial, result }: Found,
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
