import { DRIFT_LIGHTNESS } from "../../optics/mixtures/component-loss.ts";
import { pairGreys, type PairGrey } from "../../optics/mixtures/mixture.ts";
import { pairNeutral, type PairNeutral } from "../../optics/mixtures/pair-neutral.ts";
import type { LadderModel } from "../../optics/tints/ladder.ts";
import { rememberedOfTwo } from "../../quantities/remembered.ts";
import { isStatement } from "../../quantities/statement.ts";
import * as d from "../declaration.ts";
import { filled, foundFrom, type Amounts } from "../found.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import type { MixtureComponent } from "./mixture-components.ts";
import { drawnFrom } from "./picture-points.ts";

/** The two components of a mixture, and the most neutral grey that they come to in the white. */
interface Pair {
  readonly components: readonly [MixtureComponent, MixtureComponent];
  readonly neutral: PairNeutral;
  readonly told: readonly PairGrey[];
  readonly origin: Origin;
}
const pair = foundFrom<Pair & Amounts<"neutralShare">>();

/** Greys of a pair at L* 50, from all of the second to all of the first. */
export const MIXTURE_PAIR = d.section({
  first: pair.found(d.text, ({ components: [{ paint, name }] }) => paint?.name ?? name),
  second: pair.found(d.text, ({ components: [, { paint, name }] }) => paint?.name ?? name),
  neutralShare: pair.found(d.number({ ...d.SHARE, word: "neutralShare" }), ({ neutral, origin }) =>
    notationFigure(neutral.share, "1", {
      ...origin,
      method: "share of paint by mass at which C*ab is least, at L* 50",
    }),
  ),
  neutralVolumeShare: pair.derived(
    d.quantity({ ...d.SHARE, word: "neutralVolumeShare" }),
    ({ neutralShare, components: [first, second] }) => ({
      share: neutralShare,
      firstVolume: first.paintVolumeFraction,
      firstMass: first.paintMassFraction,
      secondVolume: second.paintVolumeFraction,
      secondMass: second.paintMassFraction,
    }),
    {
      name: "the same by volume of paint",
      example: [
        { share: 0.5, firstVolume: 0.6, firstMass: 0.5, secondVolume: 0.4, secondMass: 0.5 },
        0.6,
      ],
    },
    (v) => {
      const first = (v.share * v.firstVolume) / v.firstMass;
      return first / (first + ((1 - v.share) * v.secondVolume) / v.secondMass);
    },
  ),
  neutralChroma: pair.found(
    d.number({ ...d.ONE_PLACE, word: "neutralChroma" }),
    ({ neutral, origin }) =>
      notationFigure(neutral.chroma, "1", { ...origin, method: "C*ab (D65/10) of that grey" }),
  ),
  /** For the picture: share of the first paint by mass, and the grey's a* and b*. */
  greys: pair.found(drawnFrom("share", "a", "b"), ({ told }) =>
    told.map(({ share, lab: { a, b } }) => ({ share, a, b })),
  ),
});
type MixturePair = d.SectionOf<typeof MIXTURE_PAIR>;

const GREY_STEPS = 20;
/** Share of one of a pair [1] that is none of it. */
const LEAST_SHARE = 0.01;

/** Of a pair whose ladders stay as they are while anything else is tried. */
const greysOfPair = rememberedOfTwo((one: LadderModel, other: LadderModel) => ({
  greys: pairGreys(one, other, DRIFT_LIGHTNESS, GREY_STEPS),
  neutral: pairNeutral(one, other, DRIFT_LIGHTNESS),
}));

/** Nothing of a mixture of more than two, or where the two come to no grey. */
export function mixturePair(
  parts: readonly { readonly ladder: LadderModel }[],
  [first, second]: readonly MixtureComponent[],
  origin: Origin,
): MixturePair | undefined {
  const [one, other] = parts;
  if (
    one === undefined ||
    other === undefined ||
    first === undefined ||
    second === undefined ||
    parts.length !== 2
  )
    return undefined;
  const { greys: told, neutral } = greysOfPair(one.ladder, other.ladder);
  if (isStatement(told) || isStatement(neutral)) return undefined;
  // Where one of the two is the most neutral by itself, no mixture leads to a grey.
  if (Math.min(neutral.share, 1 - neutral.share) < LEAST_SHARE) return undefined;
  return filled(MIXTURE_PAIR, { components: [first, second], neutral, told, origin });
}
