import type { Spectrum } from "../quantities/spectrum.ts";
import type { Figure, Standing } from "../quantities/figure.ts";
import type { Interval, Quantity } from "../quantities/interval.ts";
import type { Statement } from "../quantities/statement.ts";
import type { LabViewing } from "../colorimetry/viewing.ts";
import type { DrierMetal } from "../drying/added-drier.ts";
import type { Oil } from "../formulation/vehicle-density.ts";
import type {
  Dispersion,
  Family,
  Geometry,
  RatioKind,
  VehicleKind,
} from "../records/schema/terms.ts";
import type { CautionsSection, OfferSection } from "./handling/handling-sections.ts";
import type {
  DispersionFigures,
  ExtenderFigures,
  FitFigures,
  GlossDepthFigures,
} from "./optics/optics-figures.ts";
import type { MixtureSection } from "./mixture/mixture-figures.ts";
import type {
  BatchSection,
  DryingSection,
  FillSection,
  OilSection,
  PermanenceSection,
} from "./paint-section-types.ts";

/**
 * A colour's sheet: everything that is worked out of its records. A leaf is a
 * {@link Figure}, a {@link Statement} (a sentence not yet worded) or a plain fact of
 * the record; the walk in walk.ts turns it into sheet.json and its evidence.
 */
export interface Sheet {
  readonly slug: string;
  readonly name: string;
  readonly family: Family | undefined;
  readonly recordDate: string | undefined;
  readonly vehicle: VehiclePart | undefined;
  readonly dispersion: Dispersion | undefined;
  readonly pigments: readonly PigmentPart[];
  /** Driers, mediums and thinners on top of pigment and oil. */
  readonly additions: readonly AdditionPart[];
  readonly notations: { readonly masstone?: MasstoneNotations };
  readonly tints: readonly TintSection[];
  readonly optics: OpticsSection;
  /** Of colours of two pigments or more. */
  readonly mixture?: MixtureSection;
  readonly oil: OilSection;
  /** Absent where oil, density or parts are not known: then nothing can be weighed out. */
  readonly batch?: BatchSection;
  readonly fill: FillSection;
  readonly drying: DryingSection;
  readonly permanence: PermanenceSection;
  readonly cautions: CautionsSection;
  /** What it is put up in; absent where no size is recorded. */
  readonly offer?: OfferSection;
}

export interface PigmentPart {
  readonly slug: string;
  readonly name: string;
  readonly colourIndexName?: string;
  readonly colourIndexNumber?: string;
  readonly casNumber?: string;
  readonly massFraction: Figure<number>;
  readonly densityGPerCm3: Figure<Quantity>;
  readonly oilAbsorptionGPer100g: Figure<Quantity>;
  readonly bulkDensityLooseGPerMl: Figure<Quantity>;
  readonly bulkDensityTappedGPerMl: Figure<Quantity>;
  readonly particleSizeUm: Figure<Quantity>;
  /** Only where the record has one. */
  readonly pricePerKg?: Figure<number>;
}

export interface VehiclePart {
  readonly slug: string;
  readonly name: string;
  readonly oil: Oil | undefined;
  readonly densityGPerCm3: Figure<Quantity>;
  readonly pricePerKg?: Figure<number>;
}

export interface AdditionPart {
  readonly slug: string;
  readonly name: string;
  readonly kind: VehicleKind;
  readonly oil: Oil | undefined;
  /** By mass on the oil [%]. */
  readonly percentOfOil: Figure<number>;
  readonly densityGPerCm3: Figure<Quantity>;
  /** Of a drier, each metal that bears on drying, by mass on the oil [%]. */
  readonly metals: readonly {
    readonly slug: DrierMetal;
    readonly percentOfOil: Figure<Quantity>;
  }[];
  readonly pricePerKg?: Figure<number>;
}

export interface XyzFigures {
  readonly X: Figure<number>;
  readonly Y: Figure<number>;
  readonly Z: Figure<number>;
}
export interface LabFigures {
  readonly L: Figure<number>;
  readonly a: Figure<number>;
  readonly b: Figure<number>;
}
/** Hue is null below chroma .05: a neutral has none. */
export interface MunsellFigures {
  readonly hue: Figure<string> | null;
  readonly value: Figure<number>;
  readonly chroma: Figure<number>;
  readonly text: Figure<string>;
}

/** What a screen can show of it, from D65/2; `inGamut` false says that the screen shows the nearest it can. */
export interface ScreenFigures {
  readonly srgb: { readonly hex: Figure<string>; readonly inGamut: boolean };
  readonly displayP3: { readonly css: Figure<string>; readonly inGamut: boolean };
  readonly oklch: { readonly css: Figure<string> };
}

export interface MasstoneNotations extends Partial<ScreenFigures> {
  /** Absent for a chip judged by eye. */
  readonly geometry?: Geometry;
  readonly standing: Standing;
  readonly xyz: Partial<Record<LabViewing, XyzFigures>>;
  readonly lab: Partial<Record<LabViewing, LabFigures>>;
  readonly munsell?: MunsellFigures;
  readonly nbsName?: Figure<string>;
  /** Only an included reading: the darker value that follows for gloss excluded. */
  readonly glossExcludedL?: Figure<number>;
  /** Colour change from daylight to lamplight after adaptation, Delta-E00, with its sentence. */
  readonly lamplight?: { readonly deltaE00: Figure<number>; readonly sentence: Statement };
  /** For the spectral curve: the readings as drawn. */
  readonly curve?: Spectrum;
  readonly glossExcludedCurve?: Spectrum;
}

export interface TintStep extends Partial<ScreenFigures> {
  /** Colour to white by mass, as the record says it: "1:20". */
  readonly massRatio: string;
  /** The same as a number, 1:20 is .05; orders the ladder. */
  readonly colourShare: number;
  readonly standing: Standing;
  readonly geometry?: Geometry;
  readonly lab: Partial<Record<LabViewing, LabFigures>>;
  readonly munsell?: MunsellFigures;
  /** About 68 %, in Delta-E00; on predicted steps. */
  readonly uncertainty?: number;
  /** On measured steps: how far the fit misses it, and how far it would if left out. */
  readonly residualDeltaE00?: Figure<number>;
  readonly leaveOneOutDeltaE00?: Figure<number>;
  /** On a measured step that the other drawdowns contradict. */
  readonly suspect?: Statement;
}

export type EqualLightness = "70" | "50" | "30";

export interface AtLightness extends Partial<ScreenFigures> {
  readonly a: Figure<number>;
  readonly b: Figure<number>;
  readonly massRatio: Figure<number>;
  /** For print; only where a spectrum is predicted. */
  readonly lab?: Partial<Record<LabViewing, LabFigures>>;
}

export interface TintSection {
  readonly white: {
    readonly slug: string;
    readonly name: string;
    readonly colourIndexName?: string;
  };
  readonly standing: Standing;
  readonly massRatioKind: RatioKind;
  readonly steps: readonly TintStep[];
  readonly atL: Partial<Record<EqualLightness, AtLightness>>;
  readonly sentence: Statement;
  /** Why nothing is predicted between the measured steps, where nothing is. */
  readonly refusal?: Statement;
  /** White to one part of the colour at L* 50: of paint by mass and by volume, and of the dry pigment in them by mass. */
  readonly strengthParts?: {
    readonly byMass: Figure<Quantity>;
    readonly byVolume: Figure<Quantity>;
    readonly byPigmentMass: Figure<Quantity>;
  };
}

export interface OpticsSection {
  /** Beside the workshop's reference: by mass, and tube to tube. */
  readonly tintingStrength: Figure<Quantity>;
  readonly tintingStrengthByVolume: Figure<Quantity>;
  readonly contrastRatio: Figure<Quantity>;
  readonly hidingFilmUm: Figure<Quantity>;
  /** Of a millilitre from the tube, in a film that just hides. */
  readonly coverageCm2PerMl: Figure<Quantity>;
  /** S X of the film that opacity is judged by: what a dark paint's transparency goes by. */
  readonly scatteringPower: Figure<Interval>;
  readonly opacityClass: Figure<string>;
  /** The colour in films over white, thinnest first: its undertone. */
  readonly glaze?: readonly GlazeStep[];
  /** For the hiding curve, as worked out from its films. */
  readonly hidingCurve?: readonly { readonly filmUm: number; readonly contrastRatio: number }[];
  readonly gloss?: GlossDepthFigures;
  /** Of an extender medium: how little it lightens. */
  readonly extender?: ExtenderFigures;
  /** Where the same pigment was drawn down mulled and milled. */
  readonly dispersion?: DispersionFigures;
  /** What the white makes of it, at each L* that two whites reach; and whites of the range it was not let down in. */
  readonly acrossWhites: readonly Statement[];
  /** Absent where the drawdowns carry none: then each tint says why. */
  readonly fit?: FitFigures;
  readonly reasons: readonly Statement[];
}

export interface GlazeStep extends Partial<ScreenFigures> {
  readonly filmUm: number;
}
