import type { ColourFit, FitRefusal } from "../optics/colour-fit.ts";
import { predictedAtLightness } from "../optics/equal-lightness.ts";
import { ladderModel } from "../optics/ladder.ts";
import { partsOfWhite, paintVolumeRatio } from "../optics/paint-parts.ts";
import { relativeStrength, type RelativeStrength } from "../optics/tinting-strength.ts";
import { isKnown, notStated, type Figure, type Placed } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/range.ts";
import { isRuling, type Ruling } from "../quantities/ruling.ts";
import { workedOut } from "../quantities/worked-out.ts";
import type { Colour, Records } from "../records/records.ts";
import { whiteColour } from "./drawdown-set.ts";
import { notationFigure } from "./lab-figures.ts";
import type { AtLightness, TintSection } from "./sheet.ts";
import { PREDICTED } from "./tint-steps.ts";

export type Fits = ReadonlyMap<string, ColourFit | FitRefusal>;

/** Tinting strength beside the workshop's reference, in the first white that both were let down in. */
export function tintingStrength(colour: Colour, fits: Fits, records: Records): { readonly figure: Figure<Quantity>; readonly reasons: readonly Ruling[] } {
  const reference = records.workshop.strengthReference;
  const wanting = [`colours.${colour.slug}.tints`];
  if (reference === undefined) return { figure: notStated("the workshop names no colour to reckon strength against", ["workshop.strengthReference"]), reasons: [] };
  const [own, other] = [fits.get(colour.slug), fits.get(reference)];
  if (own?.kind !== "fit" || other?.kind !== "fit") return { figure: notStated("no let-downs from which strength can be fitted", wanting), reasons: [] };
  const white = other.whites.find(({ slug }) => own.whites.some((fitted) => fitted.slug === slug))?.slug;
  if (white === undefined) return { figure: notStated("no let-down in a white of the reference", wanting), reasons: [] };

  const [sample, against] = [ladderModel(own, white), ladderModel(other, white)];
  const at = predictedAtLightness(against, 50);
  const strength: RelativeStrength | Ruling = isRuling(at) ? at : relativeStrength(sample, against, at.massRatio);
  const name = records.colours.get(reference)?.record.name ?? reference;
  if (isRuling(strength)) return { figure: notStated(`its strength does not compare with ${name}'s`, wanting), reasons: [strength] };
  return {
    figure: notationFigure(strength.byMass, "1", { ...PREDICTED, method: `K/S of equal let-downs by mass in ${whiteColour(white, records).name}, against ${name} = 1` }),
    reasons: [],
  };
}

/** Parts of white that bring a part of the colour to L* 50, by mass of paint and tube to tube. */
export function strengthParts(kind: TintSection["massRatioKind"], at50: AtLightness | undefined, tintPath: string, colourDensity: Placed<Quantity>, whiteDensity: Placed<Quantity>): NonNullable<TintSection["strengthParts"]> | undefined {
  if (at50 === undefined || kind !== "paint" || !isKnown(at50.massRatio)) return undefined;
  const massRatio: Placed<Quantity> = { path: `${tintPath}.atL.50.massRatio`, figure: at50.massRatio };
  return {
    byMass: workedOut({ name: "one over colour to white at L* 50", unit: "1" }, { massRatio }, (v) => partsOfWhite(v.massRatio)),
    byVolume: workedOut({ name: "the same by volume of paint", unit: "1" }, { massRatio, colourDensity, whiteDensity }, (v) => partsOfWhite(paintVolumeRatio(v.massRatio, v.colourDensity, v.whiteDensity))),
  };
}
