import { EQUAL_LIGHTNESSES } from "../../optics/tints/equal-lightness.ts";
import {
  notLetDownRuling,
  whitesRuling,
  type NotLetDown,
  type WhitesStatement,
} from "../../optics/tints/tint-statement.ts";
import { isKnown } from "../../quantities/figure.ts";
import { slugOrder } from "../../quantities/name-order.ts";
import type { Records } from "../../records/records.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { HARDLY_ANY_WHITE } from "../tints/strength-parts.ts";
import type { EqualLightness, TintSection } from "../tints/tint-figures.ts";
import { whitesOfTheRange } from "../tints/whites-of-the-range.ts";
import { given } from "../../quantities/given.ts";

/** What the white makes of the colour at each L* that two whites reach, and in which whites of the range it was not let down. */
export function acrossWhites(
  tints: readonly TintSection[],
  records: Records,
): (WhitesStatement | NotLetDown)[] {
  if (tints.length === 0) return [];
  const compared = EQUAL_LIGHTNESSES.flatMap((L): WhitesStatement[] => {
    const reached = tints.flatMap(({ white, atL, sentence }) => {
      const at = atL[String(L) as EqualLightness];
      if (
        at === undefined ||
        "contrast" in sentence.values ||
        !isKnown(at.a) ||
        !isKnown(at.b) ||
        !isKnown(at.massRatio) ||
        at.massRatio.value > HARDLY_ANY_WHITE
      )
        return [];
      return {
        white: white.name,
        a: at.a.value,
        b: at.b.value,
        uncertainty: { a: at.a.uncertainty ?? 0, b: at.b.uncertainty ?? 0 },
      };
    });
    return reached.length < 2 ? [] : [whitesRuling(L, reached)];
  });
  const letDownIn = new Set(tints.map(({ white }) => white.name));
  const without = notLetDownRuling(
    [...new Set(whitesOfTheRange(records).map((slug) => whiteColour(slug, records).name))]
      .filter((name) => !letDownIn.has(name))
      .sort(slugOrder),
  );
  return given([...compared, without]);
}
