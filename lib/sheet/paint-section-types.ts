import type { DryingSign } from "../drying/contribution.ts";
import type { ExposedForm } from "../permanence/exposure.ts";
import type { Figure, Standing } from "../quantities/figure.ts";
import type { Quantity, Interval } from "../quantities/interval.ts";
import type { Statement } from "../quantities/statement.ts";

/** Oil demand, packing and finish of the paint as made. */
export interface OilSection {
  readonly oilAbsorptionGPer100g: Figure<Quantity>;
  readonly oilIndexGPer100g: Figure<Quantity>;
  readonly oilIndexClass: Figure<string>;
  /** Of the dry pigment, mixed where there are several. */
  readonly pigmentDensityGPerCm3: Figure<Quantity>;
  readonly oilGPer100cm3: Figure<Quantity>;
  readonly cpvc: Figure<Quantity>;
  readonly finenessOfGrindUm: Figure<Quantity>;
  /** How much of its CPVC the paste acts by: clumps hold oil. */
  readonly dispersionFactor: Figure<Quantity>;
  readonly effectiveCpvc: Figure<Quantity>;
  readonly pvc: Figure<Quantity>;
  /** Oil of the dry film, 1 - PVC: what fat and lean are judged by. */
  readonly oilVolumeFraction: Figure<Quantity>;
  /** PVC over CPVC. */
  readonly reducedPvc: Figure<Quantity>;
  /** PVC over effective CPVC: what the finish is judged by. */
  readonly effectiveReducedPvc: Figure<Quantity>;
  readonly paintDensityGPerCm3: Figure<Quantity>;
  /** Share of the wet paint's mass that is dry pigment: between a ratio of paints and one of pigments. */
  readonly pigmentMassFraction: Figure<Quantity>;
  /** Share of the wet paint's volume that stays in the film. */
  readonly volumeSolids: Figure<Quantity>;
  readonly finish: Figure<string>;
  readonly gloss60: Figure<Quantity>;
  readonly body: Figure<string>;
  readonly oilSeparation: Figure<string>;
  readonly reasons: readonly Statement[];
  /** A measurement and an estimate, or two of the record's own figures, that disagree beyond tolerance. */
  readonly contradictions: readonly Statement[];
}

/** What to weigh for a batch, what to hold back, what comes out. */
export interface BatchSection {
  /** Share of the oil [1]. */
  readonly holdBack: Figure<Quantity>;
  /** Share of the batch [1] that does not reach a tube. */
  readonly loss: Figure<Quantity>;
  readonly reasons: readonly Statement[];
  readonly sizes: readonly BatchSize[];
}

export interface BatchSize {
  /** "100-g": by it a path finds the size. */
  readonly slug: string;
  readonly pigmentG: number;
  readonly pigments: readonly { readonly slug: string; readonly massG: Figure<Quantity> }[];
  readonly oilG: Figure<Quantity>;
  readonly oilAtFirstG: Figure<Quantity>;
  readonly oilHeldBackG: Figure<Quantity>;
  readonly additions: readonly { readonly slug: string; readonly massG: Figure<Quantity> }[];
  readonly paintG: Figure<Quantity>;
  readonly paintMl: Figure<Quantity>;
  readonly lossMl: Figure<Quantity>;
  readonly yieldMl: Figure<Quantity>;
  /** Whole tubes of each size that it is sold in. */
  readonly tubes: readonly {
    readonly slug: string;
    readonly ml: number;
    readonly count: Figure<Quantity>;
  }[];
  /** Of what is priced; absent when nothing is. */
  readonly cost?: Figure<Quantity>;
  /** What the cost leaves out, by slug. */
  readonly unpriced: readonly string[];
}

/** What jars and tubes hold, and the reverse. */
export interface FillSection {
  readonly fillings: readonly Filling[];
  /** Whether 100 g of a dry pigment fill a jar. */
  readonly sentences: readonly Statement[];
}

export interface Filling {
  /** "paint", "lamp-black-poured", "lamp-black-tapped". */
  readonly slug: string;
  /** The pigment, where it is a dry one. */
  readonly pigment?: string;
  readonly packing: "paint" | "poured" | "tapped";
  readonly holds: readonly {
    readonly slug: string;
    readonly ml: number;
    readonly massG: Figure<Quantity>;
  }[];
  readonly takesMlPer100g: Figure<Quantity>;
}

export interface DryingSection {
  readonly class: Figure<string>;
  readonly touchDryDays: Figure<Interval>;
  readonly throughDryDays: Figure<Interval>;
  readonly standing: Standing | "not stated";
  /** What the rules expect, beside a trial too. */
  readonly expectedDays: Figure<Interval>;
  /** Days of linseed oil alone, which the estimate starts from. */
  readonly linseedDays: Figure<Interval>;
  readonly reasons: readonly Statement[];
  readonly contributions: readonly ContributionFigure[];
  /** Every trial with the conditions it was made under. */
  readonly trials: readonly TrialFigures[];
  /** Let down with each of its whites: mixtures of the two paints. */
  readonly inWhites: readonly TintDrying[];
  readonly layering: readonly Statement[];
  readonly grounds: readonly Statement[];
  readonly filmHealth: readonly Statement[];
  readonly contradictions: readonly Statement[];
}

/** One thing that moves the days, with its sign and what it multiplies them by. */
export interface ContributionFigure {
  readonly sentence: Statement;
  readonly sign: DryingSign;
  /** Days over days without it [1]. */
  readonly factor: Figure<Interval>;
}

export interface TrialFigures {
  readonly sentence: Statement;
  /** The white that the colour was let down with; absent for the colour alone. */
  readonly tintedWith?: { readonly slug: string; readonly name: string };
  readonly method?: string;
  readonly date?: string;
  readonly touchDryDays: Figure<Interval>;
  readonly throughDryDays?: Figure<Interval>;
  readonly filmThicknessUm?: Figure<Quantity>;
  readonly temperatureC?: Figure<Quantity>;
  readonly humidityPercent?: Figure<Quantity>;
}

export interface TintDrying {
  readonly white: {
    readonly slug: string;
    readonly name: string;
    readonly colourIndexName?: string;
  };
  /** White to one part of the colour by mass of paint, of the estimate. */
  readonly whiteParts: number;
  readonly class: Figure<string>;
  readonly touchDryDays: Figure<Interval>;
  readonly contributions: readonly ContributionFigure[];
}

export type PermanenceBasis =
  "exposed under the standard" | "own exposure" | "stated" | "expected" | "not known";

export interface PermanenceSection {
  /** By its own exposure, or stated; what it rests on is `basis`, and only the first is a category under the standard. */
  readonly category: Figure<string>;
  readonly basis: PermanenceBasis;
  /** For an estimate, which is worded as an expectation and never as a category. */
  readonly expectation: Figure<string>;
  readonly blueWool: Figure<Quantity>;
  readonly deltaEab: Figure<number>;
  readonly standing: Standing | "not stated";
  /** Masstone and tint apart, each as it was exposed or stated. */
  readonly forms: readonly FormFigures[];
  /** Of a mixture, the pigments that decide, by name. */
  readonly weakest: readonly string[];
  readonly reasons: readonly Statement[];
  readonly sensitivities: readonly Statement[];
  /** What a label may say of it. */
  readonly label: Statement;
  /** An exposure and a stated or expected lightfastness that disagree. */
  readonly contradictions: readonly Statement[];
}

export interface FormFigures {
  readonly slug: ExposedForm;
  readonly underStandard: boolean;
  readonly category: Figure<string>;
  readonly deltaEab?: Figure<number>;
  /** As the record names them. */
  readonly standards: readonly string[];
  readonly exposures: readonly string[];
}
