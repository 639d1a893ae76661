import type { LabFigures, MunsellFigures, ScreenFigures } from "../sheet.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";

/** A colour of two pigments or more, as the paints of its single pigments predict it; and where it goes when one of them fades. */
export interface MixtureSection {
  readonly components: readonly MixtureComponent[];
  /** Whites in which every component was let down. */
  readonly whites: readonly MixtureWhite[];
  /** Why nothing is predicted, or why a white is missing. */
  readonly refusals: readonly Statement[];
  readonly leastLightfast: Statement;
}

export interface MixtureComponent {
  /** Of the pigment. */
  readonly slug: string;
  readonly name: string;
  /** The paint of this pigment alone that it is reckoned from. */
  readonly paint?: { readonly slug: string; readonly name: string };
  /** Shares of the dry pigment, and of the component paints that squeezed out together make it: by mass and by volume [1]. */
  readonly pigmentVolumeFraction: Figure<Quantity>;
  readonly paintMassFraction: Figure<Quantity>;
  readonly paintVolumeFraction: Figure<Quantity>;
}

export interface MixtureWhite {
  readonly white: { readonly slug: string; readonly name: string };
  readonly steps: readonly MixtureStep[];
  /** Middle one of the misses of the steps that were read, Delta-E00. */
  readonly middleMissDeltaE00: Figure<number>;
  /** The tint at L* 50 that drift starts from. */
  readonly fresh: {
    readonly massRatio: Figure<number>;
    readonly lab: { readonly "D65/10": LabFigures };
    readonly uncertainty: number;
  } & Partial<ScreenFigures>;
  readonly pair?: MixturePair;
  readonly drifts: readonly MixtureDrift[];
  /** A black of one pigment that loses as much, to hold beside it. */
  readonly singleBlack?: MixtureDrift;
}

export interface MixtureStep extends Partial<ScreenFigures> {
  /** Mixture to white by mass, "1:20"; "1:0" is the mixture itself. */
  readonly massRatio: string;
  readonly lab: { readonly "D65/10": LabFigures };
  readonly munsell?: MunsellFigures;
  /** About 68 %, in Delta-E00. */
  readonly uncertainty: number;
  /** How far the drawdown of the mixture itself lies from it; absent where none was read. */
  readonly missDeltaE00?: Figure<number>;
}

/** Greys of a pair at L* 50, from all of the second to all of the first. */
export interface MixturePair {
  readonly first: string;
  readonly second: string;
  readonly neutralShare: Figure<number>;
  readonly neutralVolumeShare: Figure<Quantity>;
  readonly neutralChroma: Figure<number>;
  /** For the picture: share of the first paint by mass, and the grey's a* and b*. */
  readonly greys: readonly { readonly share: number; readonly a: number; readonly b: number }[];
}

export interface MixtureDrift {
  /** Of the pigment. */
  readonly slug: string;
  readonly name: string;
  readonly losses: readonly MixtureLoss[];
  readonly sentences: readonly Statement[];
  /** For the picture: share of strength lost, a* and b*. */
  readonly path: readonly { readonly loss: number; readonly a: number; readonly b: number }[];
}

export interface MixtureLoss extends Partial<ScreenFigures> {
  /** Percent of its strength: "30". */
  readonly slug: string;
  readonly lab: { readonly "D65/10": LabFigures };
  readonly deltaE00: Figure<number>;
}
