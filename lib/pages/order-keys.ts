import { middleOfOil } from "../collection/oil-order.ts";
import { shownStrength } from "../collection/shown-strength.ts";
import { DRYING_LIMITS } from "../drying/drying-class.ts";
import { EXPECTATIONS } from "../permanence/expected-lightfastness.ts";
import type { PermanenceBasis } from "../permanence/permanence-rules.ts";
import { isKnown, knownValue, type Figure } from "../quantities/figure.ts";
import { midpoint, type Quantity } from "../quantities/interval.ts";
import { classText } from "../present/figure-text.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { upperFirst } from "../words/letter-case.ts";
import type { Words } from "../words/words.ts";
import type { OrderKeys } from "./colour-row.ts";
import { hueGiven, munsellPlace } from "./munsell-place.ts";

/** What a colour is put in order by in the tables of the range. */
export function orderKeys(sheet: Sheet, words: Words): OrderKeys {
  const { notations, drying, oil } = sheet;
  const strength = shownStrength(sheet);
  return {
    value: number(notations.masstone?.munsell?.value),
    hue: hueNumber(sheet),
    dryingRank: dryingRank(sheet),
    drying: isKnown(drying.class)
      ? upperFirst(classText(drying.class, (each) => words.terms[each] ?? each, words))
      : "",
    permanenceRank: permanenceRank(sheet),
    permanence: permanenceWord(sheet, words),
    oilByMass: middleOfOil(oil.oilIndexGPer100g),
    oilByVolume: middleOfOil(oil.oilGPer100cm3),
    strength: strength && midpoint(strength.figure.value),
  };
}

/** An estimate stands at its middle, as it is classed: it never ranks below a measured colour only because it is a range. */
function number(figure: Figure<Quantity> | Figure<number> | undefined): number | undefined {
  return figure !== undefined && isKnown<Quantity>(figure) ? midpoint(figure.value) : undefined;
}

function hueNumber(sheet: Sheet): number | undefined {
  const place = munsellPlace(sheet);
  return place === undefined ? undefined : (hueGiven(place) ?? -1);
}

/** By the classes that its days reach into, those of two between the two; within these by the days, an estimate at its middle. */
function dryingRank({ drying }: Sheet): number | undefined {
  const days = number(drying.touchDryDays);
  if (!isKnown(drying.class) || days === undefined) return undefined;
  const { value, reaches = [value] } = drying.class;
  const ranks = reaches.map((each) =>
    DRYING_LIMITS.findIndex(({ dryingClass }) => dryingClass === each),
  );
  return (Math.min(...ranks) + Math.max(...ranks) + days / (1 + days)) / 2;
}

const CATEGORIES: readonly string[] = EXPECTATIONS.map(({ category }) => category);
const EXPECTATION_WORDS: readonly string[] = EXPECTATIONS.map(({ expectation }) => expectation);

/** Of one category the standard's test comes first, then the workshop's own, then what is stated of it, then what is expected. */
const OF_ONE_CATEGORY: Readonly<Partial<Record<PermanenceBasis, number>>> = {
  "own exposure": 0.25,
  stated: 0.5,
  expected: 0.75,
};

function permanenceRank({
  permanence: { basis, category, expectation },
}: Sheet): number | undefined {
  const [steps, step] = isKnown(category)
    ? [CATEGORIES, category.value]
    : [EXPECTATION_WORDS, knownValue(expectation)];
  return step === undefined ? undefined : steps.indexOf(step) + (OF_ONE_CATEGORY[basis] ?? 0);
}

function permanenceWord(
  { permanence: { basis, category, expectation } }: Sheet,
  { pages: { sheet, sheetPage, paint } }: Words,
): string {
  if (isKnown(category)) {
    const { own, stated } = paint.permanence.orders;
    return basis === "own exposure"
      ? own(category.value)
      : basis === "stated"
        ? stated(category.value)
        : upperFirst(sheetPage.detail.exposed(category.value));
  }
  return isKnown(expectation)
    ? upperFirst(sheet.expectation[expectation.value] ?? expectation.value)
    : "";
}
