import {
  fullMap,
  list,
  number,
  optional,
  plain,
  plainNumber,
  quantity,
  section,
  statement,
  statements,
  text,
  type Schema,
  type SectionOf,
  ONE_PLACE,
  SHARE,
} from "../declaration.ts";
import { LAB, MUNSELL, SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { NAMED } from "../optics/optics-parts.ts";
import { MASS_RATIO } from "../tints/tint-figures.ts";

/** Points that a picture is drawn from. */
function drawnFrom(...keys: readonly string[]): Schema {
  return {
    type: "array",
    items: {
      type: "object",
      required: keys,
      additionalProperties: false,
      properties: Object.fromEntries(keys.map((key) => [key, { type: "number" }])),
    },
  };
}

const DAY_LAB = fullMap(["D65/10"], LAB);

const MIXTURE_COMPONENT = section({
  /** Of the pigment. */
  slug: text,
  name: text,
  /** The paint of this pigment alone that it is reckoned from. */
  paint: optional(NAMED),
  /** Shares of the dry pigment, and of the component paints that squeezed out together make it: by mass and by volume [1]. */
  pigmentVolumeFraction: quantity({ ...SHARE, word: "pigmentVolumeShare" }),
  paintMassFraction: quantity({ ...SHARE, word: "paintMassShare" }),
  paintVolumeFraction: quantity({ ...SHARE, word: "paintVolumeShare" }),
});
export type MixtureComponent = SectionOf<typeof MIXTURE_COMPONENT>;

const MIXTURE_STEP = section({
  /** Mixture to white by mass, "1:20"; "1:0" is the mixture itself. */
  massRatio: MASS_RATIO,
  lab: DAY_LAB,
  munsell: optional(MUNSELL),
  /** About 68 %, in Delta-E00. */
  uncertainty: plainNumber,
  /** How far the drawdown of the mixture itself lies from it; absent where none was read. */
  missDeltaE00: optional(number({ ...ONE_PLACE, word: "mixtureMiss" })),
  ...SCREEN_IF_KNOWN,
});
export type MixtureStep = SectionOf<typeof MIXTURE_STEP>;

/** Greys of a pair at L* 50, from all of the second to all of the first. */
const MIXTURE_PAIR = section({
  first: text,
  second: text,
  neutralShare: number({ ...SHARE, word: "neutralShare" }),
  neutralVolumeShare: quantity({ ...SHARE, word: "neutralVolumeShare" }),
  neutralChroma: number({ ...ONE_PLACE, word: "neutralChroma" }),
  /** For the picture: share of the first paint by mass, and the grey's a* and b*. */
  greys: plain<readonly { readonly share: number; readonly a: number; readonly b: number }[]>(
    drawnFrom("share", "a", "b"),
  ),
});
export type MixturePair = SectionOf<typeof MIXTURE_PAIR>;

const MIXTURE_LOSS = section({
  /** Percent of its strength: "30". */
  slug: text,
  lab: DAY_LAB,
  deltaE00: number({ ...ONE_PLACE, word: "driftDeltaE00" }),
  ...SCREEN_IF_KNOWN,
});

const MIXTURE_DRIFT = section({
  /** Of the pigment. */
  slug: text,
  name: text,
  losses: list(MIXTURE_LOSS),
  sentences: statements,
  /** For the picture: share of strength lost, a* and b*. */
  path: plain<readonly { readonly loss: number; readonly a: number; readonly b: number }[]>(
    drawnFrom("loss", "a", "b"),
  ),
});
export type MixtureDrift = SectionOf<typeof MIXTURE_DRIFT>;

const MIXTURE_WHITE = section({
  white: NAMED,
  steps: list(MIXTURE_STEP),
  /** Middle one of the misses of the steps that were read, Delta-E00. */
  middleMissDeltaE00: number({ ...ONE_PLACE, word: "mixtureMiddleMiss" }),
  /** The tint at L* 50 that drift starts from; absent of a mixture too pale or too dark to reach it. */
  fresh: optional(
    section({
      massRatio: number({ unit: "1", kind: "significant", digits: 2, word: "massRatio" }),
      lab: DAY_LAB,
      uncertainty: plainNumber,
      ...SCREEN_IF_KNOWN,
    }),
  ),
  pair: optional(MIXTURE_PAIR),
  drifts: list(MIXTURE_DRIFT),
  /** A black of one pigment that loses as much, to hold beside it. */
  singleBlack: optional(MIXTURE_DRIFT),
});
export type MixtureWhite = SectionOf<typeof MIXTURE_WHITE>;

/** A colour of two pigments or more, as the paints of its single pigments predict it; and where it goes when one of them fades. */
export const MIXTURE = section({
  components: list(MIXTURE_COMPONENT),
  /** Whites in which every component was let down. */
  whites: list(MIXTURE_WHITE),
  /** Why nothing is predicted, or why a white is missing. */
  refusals: statements,
  leastLightfast: statement,
});
export type MixtureSection = SectionOf<typeof MIXTURE>;
