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
import type { FoundChange } from "../words/pages/found.ts";
import type { Words } from "../words/words.ts";

/** A trial, with the line of its record that tells the colour worse than its sheet does. */
export interface ToldBetter {
  readonly trial: string;
  readonly path: RecordPath;
  readonly message: string;
}

/** Trials that found a colour worse than its sheet tells it, be they over or not: what they found so far stays. */
export function trialsToldBetter(sheet: Sheet, records: Records, words: Words): ToldBetter[] {
  const { toldBetter } = words.pages.found;
  const over = openResults(records, sheet.slug).map((open) => ({
    ...open,
    message: betterInRecord(open, toldBetter) ?? betterWithoutExposure(open, sheet, toldBetter),
  }));
  const goingOn = foundSoFar(records, sheet.slug).map((so) => ({
    ...so,
    message:
      betterSoFar(so, toldBetter) ??
      betterWithoutExposure(
        { trial: so.trial, result: so.found, ended: so.trial.ended },
        sheet,
        toldBetter,
      ),
  }));
  return [...over, ...goingOn].flatMap(({ message, slug, trial }) =>
    message === undefined ? [] : [{ trial: slug, path: worstPath({ trial }), message }],
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

type Told = Words["pages"]["found"]["toldBetter"];

function betterInRecord(
  { trial, result, ended, better }: OpenResult,
  told: Told,
): string | undefined {
  if (better === undefined) return undefined;
  return result.kind === "exposure"
    ? told.exposureInRecord(ended, result, recordOf(trial), categorised(better))
    : told.stillWet(ended, "wet or tacky", result.touchDryDays[0], recordOf(trial), better);
}

function betterSoFar({ trial, contradiction }: FoundSoFar, told: Told): string | undefined {
  if (contradiction === undefined) return undefined;
  const { rule, values } = contradiction;
  return rule === "change-beyond-record"
    ? told.exposureInRecord(
        trial.ended,
        values,
        recordOf(trial),
        categorised(values.recordedDeltaEab),
      )
    : told.stillWet(trial.ended, values.found, values.day, recordOf(trial), values.recordedDays);
}

function recordOf({ colour }: OpenResult["trial"]): string {
  return `colours/${colour}`;
}

function categorised(deltaEab: number): FoundChange {
  return { deltaEab, category: lightfastnessRuling(deltaEab).category };
}

interface Found {
  readonly trial: OpenResult["trial"];
  readonly result: OpenResult["result"] | FoundSoFar["found"];
  readonly ended: string | undefined;
}

/** Of a colour without an exposure on record, its supplier's word or what its pigments lead one to expect is told. */
function betterWithoutExposure(
  { trial, result, ended }: Found,
  { permanence: { deltaEab, category, expectation } }: Sheet,
  told: Told,
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
    return told.categoryStated(ended, result, category.value);
  if (
    isKnown(expectation) &&
    expectedContradiction(expectation.value as Expectation, found)?.rule ===
      "exposure-worse-than-expected"
  )
    return told.expected(ended, result, expectation.value as Expectation);
  return undefined;
}
