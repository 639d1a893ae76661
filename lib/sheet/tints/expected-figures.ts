import {
  fullMap,
  list,
  optional,
  plainNumber,
  quantity,
  section,
  statement,
  text,
  type SectionOf,
  ONE_PLACE,
} from "../declaration.ts";
import { MUNSELL, SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { MASS_RATIO, RATIO_KIND } from "./tint-figures.ts";

/** Within which nine of ten would lie. */
const LAB_RANGE = section({
  L: quantity({ ...ONE_PLACE, word: "labL" }),
  a: quantity({ ...ONE_PLACE, word: "labA" }),
  b: quantity({ ...ONE_PLACE, word: "labB" }),
});
export type LabRange = SectionOf<typeof LAB_RANGE>;

const EXPECTED_STEP = section({
  massRatio: MASS_RATIO,
  /** The same as a number, 1:20 is .05. */
  colourShare: plainNumber,
  lab: fullMap(["D65/10"], LAB_RANGE),
  /** Of the middle of those ranges. */
  munsell: optional(MUNSELL),
  ...SCREEN_IF_KNOWN,
  /** About 68 %, in Delta-E00. */
  uncertainty: plainNumber,
});
export type ExpectedStep = SectionOf<typeof EXPECTED_STEP>;

/** What the colour is expected to do in a white that it was not let down in. */
export const EXPECTED_TINT = section({
  white: section({ slug: text, name: text }),
  massRatioKind: RATIO_KIND,
  steps: list(EXPECTED_STEP),
  /** By whose let-downs it goes, and how far off it may be. */
  sentence: statement,
});
export type ExpectedTintSection = SectionOf<typeof EXPECTED_TINT>;
