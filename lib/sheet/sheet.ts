import type { Spectrum } from "../quantities/spectrum.ts";
import type { Figure, Standing } from "../quantities/figure.ts";
import type { Quantity, Range } from "../quantities/range.ts";
import type { Ruling } from "../quantities/ruling.ts";
import type { Viewing } from "../colorimetry/viewing.ts";
import type { Contribution } from "../drying/contribution.ts";
import type { Oil } from "../formulation/vehicle-density.ts";
import type { Dispersion, Family, Geometry, Market, RatioKind } from "../records/schema/terms.ts";

/**
 * A colour's sheet: everything that is worked out of its records. A leaf is a
 * {@link Figure}, a {@link Ruling} (a sentence not yet worded) or a plain fact of
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
  readonly notations: { readonly masstone?: MasstoneNotations };
  readonly tints: readonly TintSection[];
  readonly optics: OpticsSection;
  readonly oil: OilSection;
  readonly drying: DryingSection;
  readonly permanence: PermanenceSection;
  readonly cautions: CautionsSection;
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
}

export interface VehiclePart {
  readonly slug: string;
  readonly name: string;
  readonly oil: Oil | undefined;
  readonly densityGPerCm3: Figure<Quantity>;
}

export interface XyzFigures { readonly X: Figure<number>; readonly Y: Figure<number>; readonly Z: Figure<number> }
export interface LabFigures { readonly L: Figure<number>; readonly a: Figure<number>; readonly b: Figure<number> }
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
  readonly xyz: Partial<Record<Viewing, XyzFigures>>;
  readonly lab: Partial<Record<Viewing, LabFigures>>;
  readonly munsell?: MunsellFigures;
  readonly nbsName?: Figure<string>;
  /** Only an included reading: the darker value that follows for gloss excluded. */
  readonly glossExcludedL?: Figure<number>;
  /** Colour change from daylight to lamplight after adaptation, Delta-E00, with its sentence. */
  readonly lamplight?: { readonly deltaE00: Figure<number>; readonly sentence: Ruling };
  /** For the spectral curve: the readings as drawn. */
  readonly curve?: Spectrum;
}

export interface TintStep extends Partial<ScreenFigures> {
  /** Colour to white by mass, as the record says it: "1:20". */
  readonly massRatio: string;
  /** The same as a number, 1:20 is .05; orders the ladder. */
  readonly colourShare: number;
  readonly standing: Standing;
  readonly geometry?: Geometry;
  readonly lab: Partial<Record<Viewing, LabFigures>>;
  readonly munsell?: MunsellFigures;
  /** About 68 %, in Delta-E00; on predicted steps. */
  readonly uncertainty?: number;
  /** On measured steps: how far the fit misses it, and how far it would if left out. */
  readonly residualDeltaE00?: Figure<number>;
  readonly leaveOneOutDeltaE00?: Figure<number>;
  /** On a measured step that the other drawdowns contradict. */
  readonly suspect?: Ruling;
}

export type EqualLightness = "70" | "50" | "30";

export interface AtLightness extends Partial<ScreenFigures> {
  readonly a: Figure<number>;
  readonly b: Figure<number>;
  readonly massRatio: Figure<number>;
}

export interface TintSection {
  readonly white: { readonly slug: string; readonly name: string; readonly colourIndexName?: string };
  readonly standing: Standing;
  readonly massRatioKind: RatioKind;
  readonly steps: readonly TintStep[];
  readonly atL: Partial<Record<EqualLightness, AtLightness>>;
  readonly sentence: Ruling;
  /** Why nothing is predicted between the measured steps, where nothing is. */
  readonly refusal?: Ruling;
  readonly strengthParts?: { readonly byMass: Figure<Quantity>; readonly byVolume: Figure<Quantity> };
}

export interface OpticsSection {
  readonly tintingStrength: Figure<Quantity>;
  readonly contrastRatio: Figure<Quantity>;
  readonly hidingFilmUm: Figure<Quantity>;
  readonly opacityClass: Figure<string>;
  /** The colour in films over white, thinnest first: its undertone. */
  readonly glaze?: readonly GlazeStep[];
  /** For the hiding curve, as worked out from its films. */
  readonly hidingCurve?: readonly { readonly filmUm: number; readonly contrastRatio: number }[];
  readonly gloss?: GlossDepthFigures;
  readonly reasons: readonly Ruling[];
}

export interface GlazeStep extends Partial<ScreenFigures> {
  readonly filmUm: number;
}

/** The masstone glossy and matte, to an eye that looks past the glare. */
export interface GlossDepthFigures {
  readonly sentence: Ruling;
  readonly glossyL: Figure<number>;
  readonly matteL: Figure<number>;
  readonly glossyValue: Figure<number>;
  readonly matteValue: Figure<number>;
}

export interface OilSection {
  readonly oilAbsorptionGPer100g: Figure<Quantity>;
  readonly oilIndexGPer100g: Figure<Quantity>;
  readonly oilIndexClass: Figure<string>;
  /** Of the dry pigment, mixed where there are several. */
  readonly pigmentDensityGPerCm3: Figure<Quantity>;
  readonly oilGPer100cm3: Figure<Quantity>;
  readonly cpvc: Figure<Quantity>;
  /** How much of its CPVC the paste acts by: clumps hold oil. */
  readonly dispersionFactor: Figure<Quantity>;
  readonly effectiveCpvc: Figure<Quantity>;
  readonly pvc: Figure<Quantity>;
  /** PVC over CPVC. */
  readonly reducedPvc: Figure<Quantity>;
  /** PVC over effective CPVC: what the finish is judged by. */
  readonly effectiveReducedPvc: Figure<Quantity>;
  readonly paintDensityGPerCm3: Figure<Quantity>;
  readonly finish: Figure<string>;
  readonly gloss60: Figure<Quantity>;
  readonly reasons: readonly Ruling[];
  /** A measurement and an estimate, or two of the record's own figures, that disagree beyond tolerance. */
  readonly contradictions: readonly Ruling[];
}

export interface DryingSection {
  readonly class: Figure<string>;
  readonly touchDryDays: Figure<Range>;
  readonly throughDryDays: Figure<Range>;
  readonly standing: Standing | "not stated";
  readonly reasons: readonly Ruling[];
  /** What moves the estimate, each with its sign and what it multiplies the days by. */
  readonly contributions: readonly Contribution[];
  /** Every trial with the conditions it was made under. */
  readonly trials: readonly (Ruling & { readonly tintedWith?: string })[];
  readonly layering: readonly Ruling[];
  readonly filmHealth: readonly Ruling[];
  readonly contradictions: readonly Ruling[];
}

export interface PermanenceSection {
  readonly category: Figure<string>;
  /** For an estimate, which is worded as an expectation and never as a category. */
  readonly expectation: Figure<string>;
  readonly blueWool: Figure<Quantity>;
  readonly deltaEab: Figure<number>;
  readonly standing: Standing | "not stated";
  readonly reasons: readonly Ruling[];
  readonly sensitivities: readonly Ruling[];
}

export interface CautionsSection {
  readonly frame: string;
  readonly edition: string;
  readonly basis: "stated by the maker" | "worked out";
  readonly signalWord: "Danger" | "Warning" | null;
  readonly pictograms: readonly string[];
  readonly hazardStatements: readonly string[];
  readonly precautionaryStatements: readonly string[];
  readonly supplemental: readonly string[];
  /** Substances that EUH208 names. */
  readonly sensitisers: readonly string[];
  /** Why each statement stands there: ingredient, fraction, limit, source. */
  readonly traces: readonly (Ruling & { readonly statement: string })[];
  /** Ingredients without hazard data: to be treated as hazardous. */
  readonly unknown: readonly string[];
  /** Where the maker's label and the worked-out one differ. */
  readonly checks: readonly Ruling[];
  readonly unknownAcuteToxicity: readonly Ruling[];
  readonly restrictions: readonly (Ruling & { readonly market: Market; readonly effect: string; readonly met: boolean })[];
  /** Markets of the workshop where it may not be sold, for want of a legal basis on record. */
  readonly notForSale: readonly Market[];
  readonly studio: readonly (Ruling & { readonly operation: string; readonly reason: Ruling })[];
  /** Label elements of each dry pigment alone; `known` false: no hazard data. */
  readonly dryPigment: readonly { readonly slug: string; readonly known: boolean; readonly signalWord: "Danger" | "Warning" | null; readonly pictograms: readonly string[]; readonly hazardStatements: readonly string[] }[];
  readonly dataSheet?: { readonly url?: string; readonly date: string };
}
