import type { PhotographStatement } from "../../patches/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { NUMBERS } from "./phrases.ts";

const ends = ([low, high]: Interval): string =>
  `${NUMBERS.decimal(low, 0)} to ${NUMBERS.decimal(high, 0)}`;

export const PATCH_RULINGS: WordingsOf<PhotographStatement> = {
  "photograph-corrected": ({ patches, median, largest }) =>
    `Colours corrected by ${patches} patches that were read. A patch left out is missed by \u0394E00 ${NUMBERS.decimal(median, 1)} (median), the worst by ${NUMBERS.decimal(largest, 1)}.`,
  "photograph-not-corrected": ({ median, limit }) =>
    `Not colour-corrected: patches left out are missed by \u0394E00 ${NUMBERS.decimal(median, 1)} (median), and at most ${NUMBERS.decimal(limit, 0)} would do.`,
  "photograph-as-it-came": () => "Not colour-corrected.",
  "light-evened": ({ percent }) =>
    `Its light is evened by the bare ground: its darkest corner had ${NUMBERS.decimal(percent, 0)} % of the light of its brightest.`,
  "colour-of-photograph": ({ L, a, b }) =>
    `Estimated from this photograph: L* ${ends(L)}, a* ${ends(a)}, b* ${ends(b)} (D65, 2\u00b0).`,
  "photograph-beside-reading": ({ deltaE00 }) =>
    `The paint as read and as photographed differ by \u0394E00 ${NUMBERS.decimal(deltaE00, 1)}; the reading counts.`,
  "texture-in-read-colour": () =>
    "The film alone: its texture as photographed, its colour as read.",
};
