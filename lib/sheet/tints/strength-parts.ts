import {
  paintMassRatio,
  paintVolumeRatio,
  partsOfWhite,
  pigmentMassRatio,
} from "../../optics/mixtures/paint-parts.ts";
import type { RatioKind } from "../../optics/fit/drawdown.ts";
import { isKnown, type Figure } from "../../quantities/figure.ts";
import { ends } from "../../quantities/interval.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { quantity, section, type SectionOf } from "../declaration.ts";
import type { WeighedPaint } from "./paint-conversion.ts";

/** Colour to white beyond which hardly any white is in it: the masstone itself is about as light. */
export const HARDLY_ANY_WHITE = 20;

const PARTS = { unit: "1", kind: "significant", digits: 2 } as const;

/** White to one part of the colour at L* 50: of paint by mass and by volume, and of the dry pigment in them by mass. */
export const STRENGTH_PARTS = section({
  byMass: quantity({ ...PARTS, word: "strengthByMass" }),
  byVolume: quantity({ ...PARTS, word: "strengthByVolume" }),
  byPigmentMass: quantity({ ...PARTS, word: "strengthByPigmentMass" }),
});
type StrengthParts = SectionOf<typeof STRENGTH_PARTS>;

/**
 * Parts of white that bring a part of the colour to L* 50: of paint by mass and
 * by volume, tube to tube, and of the dry pigment in the two by mass, whichever
 * of them was weighed.
 */
export function strengthParts(
  kind: RatioKind,
  at50: { readonly massRatio: Figure<number> } | undefined,
  colour: WeighedPaint,
  white: WeighedPaint,
): StrengthParts | undefined {
  if (
    at50 === undefined ||
    !isKnown(at50.massRatio) ||
    ends(at50.massRatio.value)[0] > HARDLY_ANY_WHITE
  )
    return undefined;
  const { massRatio } = at50;
  const fractions = {
    colourFraction: colour.pigmentFraction,
    whiteFraction: white.pigmentFraction,
  };
  const densities = { colourDensity: colour.density, whiteDensity: white.density };
  const parts = { unit: "1", middleOfNarrow: true } as const;
  const own = { name: "one over colour to white at L* 50", ...parts };
  const asVolumes = { name: "the same by volume of paint", ...parts };
  const asPigments = { name: "the same of the dry pigment in the paints", ...parts };
  const asPaints = { name: "the same of the paints that hold the pigment", ...parts };
  if (kind === "paint") {
    return {
      byMass: derivedFigure(own, { massRatio }, (v) => partsOfWhite(v.massRatio)),
      byVolume: derivedFigure(asVolumes, { massRatio, ...densities }, (v) =>
        partsOfWhite(paintVolumeRatio(v.massRatio, v.colourDensity, v.whiteDensity)),
      ),
      byPigmentMass: derivedFigure(asPigments, { massRatio, ...fractions }, (v) =>
        partsOfWhite(pigmentMassRatio(v.massRatio, v.colourFraction, v.whiteFraction)),
      ),
    };
  }
  return {
    byMass: derivedFigure(asPaints, { massRatio, ...fractions }, (v) =>
      partsOfWhite(paintMassRatio(v.massRatio, v.colourFraction, v.whiteFraction)),
    ),
    byVolume: derivedFigure(asVolumes, { massRatio, ...fractions, ...densities }, (v) =>
      partsOfWhite(
        paintVolumeRatio(
          paintMassRatio(v.massRatio, v.colourFraction, v.whiteFraction),
          v.colourDensity,
          v.whiteDensity,
        ),
      ),
    ),
    byPigmentMass: derivedFigure(own, { massRatio }, (v) => partsOfWhite(v.massRatio)),
  };
}
