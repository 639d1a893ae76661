import * as d from "../declaration.ts";
import { MUNSELL, SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { MASS_RATIO, RATIO_KIND } from "./tint-figures.ts";

/** Within which nine of ten would lie. */
const LAB_RANGE = d.section({
  L: d.quantity({ ...d.ONE_PLACE, word: "labL" }),
  a: d.quantity({ ...d.ONE_PLACE, word: "labA" }),
  b: d.quantity({ ...d.ONE_PLACE, word: "labB" }),
});
export type LabRange = d.SectionOf<typeof LAB_RANGE>;

const EXPECTED_STEP = d.section({
  massRatio: MASS_RATIO,
  /** The same as a number, 1:20 is .05. */
  colourShare: d.plainNumber,
  lab: d.fullMap(["D65/10"], LAB_RANGE),
  /** Of the middle of those ranges. */
  munsell: d.optional(MUNSELL),
  ...SCREEN_IF_KNOWN,
  /** About 68 %, in Delta-E00. */
  uncertainty: d.plainNumber,
});
export type ExpectedStep = d.SectionOf<typeof EXPECTED_STEP>;

/** What the colour is expected to do in a white that it was not let down in. */
export const EXPECTED_TINT = d.section({
  white: d.section({ slug: d.text, name: d.text }),
  massRatioKind: RATIO_KIND,
  steps: d.list(EXPECTED_STEP),
  /** By whose let-downs it goes, and how far off it may be. */
  sentence: d.statement,
});
export type ExpectedTintSection = d.SectionOf<typeof EXPECTED_TINT>;
