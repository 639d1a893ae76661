import type { TintStatement } from "../../optics/tints/tint-statement.ts";
import { RATIO_KINDS } from "../../records/schema/terms.ts";
import * as d from "../declaration.ts";
import { GLOSS_EXCLUDED } from "../notations/gloss-excluded.ts";
import {
  GEOMETRY,
  LAB_BY_VIEWING,
  MUNSELL,
  SCREEN_IF_KNOWN,
  STANDING,
} from "../notations/notation-figures.ts";
import { STRENGTH_PARTS } from "./strength-parts.ts";

/** Colour to white by mass, as the record says it: "1:20". */
export const MASS_RATIO = d.plain<string>({ type: "string", pattern: "^[0-9.]+:[0-9.]+$" });
export const RATIO_KIND = d.oneOf(RATIO_KINDS);

const TINT_STEP = d.section({
  massRatio: MASS_RATIO,
  /** The same as a number, 1:20 is .05; orders the ladder. */
  colourShare: d.plainNumber,
  standing: STANDING,
  geometry: d.optional(GEOMETRY),
  lab: LAB_BY_VIEWING,
  munsell: d.optional(MUNSELL),
  ...SCREEN_IF_KNOWN,
  glossExcluded: d.optional(GLOSS_EXCLUDED),
  /** About 68 %, in Delta-E00; on predicted steps. */
  uncertainty: d.optional(d.plainNumber),
  /** On measured steps: how far the fit misses it, and how far it would if left out. */
  residualDeltaE00: d.optional(d.number({ ...d.ONE_PLACE, word: "residual" })),
  leaveOneOutDeltaE00: d.optional(d.number({ ...d.ONE_PLACE, word: "leaveOneOut" })),
  /** On a measured step that the other drawdowns contradict. */
  suspect: d.optional(d.statement),
});
export type TintStep = d.SectionOf<typeof TINT_STEP>;

const AT_LIGHTNESS = d.section({
  a: d.number({ ...d.ONE_PLACE, word: "labA" }),
  b: d.number({ ...d.ONE_PLACE, word: "labB" }),
  massRatio: d.number({ unit: "1", kind: "significant", digits: 2, word: "massRatio" }),
  /** For print; only where a spectrum is predicted. */
  lab: d.optional(LAB_BY_VIEWING),
  ...SCREEN_IF_KNOWN,
  glossExcluded: d.optional(GLOSS_EXCLUDED),
});
export type AtLightness = d.SectionOf<typeof AT_LIGHTNESS>;

/** L* at which colours are compared in a white, from the palest: keys of `atL`. */
export const LIGHTNESS_KEYS = ["70", "50", "30"] as const;
export type EqualLightness = (typeof LIGHTNESS_KEYS)[number];

/** What the colour does in one white. */
export const TINT = d.headed("tintsSection", {
  white: d.section({ slug: d.text, name: d.text, colourIndexName: d.optional(d.text) }),
  standing: STANDING,
  massRatioKind: RATIO_KIND,
  steps: d.list(TINT_STEP),
  atL: d.map(LIGHTNESS_KEYS, AT_LIGHTNESS),
  sentence: d.statementAmong<TintStatement>(),
  /** Why nothing is predicted between the measured steps, where nothing is. */
  refusal: d.optional(d.statement),
  /** White to one part of the colour at L* 50: of paint by mass and by volume, and of the dry pigment in them by mass. */
  strengthParts: d.optional(STRENGTH_PARTS),
});
export type TintSection = d.SectionOf<typeof TINT>;
