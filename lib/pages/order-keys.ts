import { middleOfOil } from "../collection/oil-order.ts";
import { shownStrength } from "../collection/shown-strength.ts";
import { EXPECTATIONS } from "../permanence/expected-lightfastness.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { midpoint, type Quantity } from "../quantities/interval.ts";
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
    dryingDays: number(drying.touchDryDays),
    drying: isKnown(drying.class)
      ? upperFirst(words.terms[drying.class.value] ?? drying.class.value)
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

const CATEGORIES: readonly string[] = EXPECTATIONS.map(({ category }) => category);
const EXPECTATION_WORDS: readonly string[] = EXPECTATIONS.map(({ expectation }) => expectation);

function permanenceRank({ permanence }: Sheet): number | undefined {
  if (isKnown(permanence.category))
    return (
      CATEGORIES.indexOf(permanence.category.value) +
      (permanence.basis === "own exposure" ? 0.25 : 0)
    );
  return isKnown(permanence.expectation)
    ? EXPECTATION_WORDS.indexOf(permanence.expectation.value) + 0.5
    : undefined;
}

function permanenceWord({ permanence }: Sheet, { pages: { sheet: text, paint } }: Words): string {
  if (isKnown(permanence.category) && permanence.basis === "own exposure")
    return paint.permanence.order(permanence.category.value);
  if (isKnown(permanence.category))
    return upperFirst(text.factDetail.category(permanence.category.value));
  return isKnown(permanence.expectation)
    ? upperFirst(text.expectation[permanence.expectation.value] ?? permanence.expectation.value)
    : "";
}
