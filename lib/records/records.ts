import type { ReadingNoise } from "../colorimetry/reading-noise.ts";
import type { Lab, LabViewing } from "../colorimetry/viewing.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import type { Source } from "../sources/source.ts";
import type { OfferedSize } from "./offered-sizes.ts";
import type { Photograph } from "./photographs.ts";
import type { AnswerRecord } from "./schema/answer.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { LotRecord } from "./schema/lot.ts";
import type { TrialRecord } from "./schema/trial.ts";
import type { PigmentRecord } from "./schema/pigment.ts";
import type { Language } from "../quantities/languages.ts";
import type { Geometry, RatioKind } from "./schema/terms.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Surface constants of Saunderson's correction [1]. */
export interface Surface {
  readonly k1: number;
  readonly k2: number;
}

/** Where a reading came from, as evidence prints it. */
interface ReadingOrigin {
  readonly origin: string;
  readonly date?: string;
}

/** A spectrum with all that belongs to it: geometry always, surface constants where known. */
export interface SpectrumReading extends ReadingOrigin {
  readonly form: "spectrum";
  /** Reflectance factors to compute with: slightly negative readings of a black are 0 here. */
  readonly spectrum: Spectrum;
  /** How many readings were averaged. */
  readonly count: number;
  readonly geometry: Geometry;
  readonly surface?: Surface;
  /** What the workshop states of its instrument, else by the replicates read by it; of the mean where several were averaged. */
  readonly noise: ReadingNoise;
  /** Diameter of the spot that was read, where its file tells it: "8 mm". */
  readonly aperture?: string;
  /** Day of the calibration that it was read under, YYYY-MM-DD: the day of the reading unless it says otherwise. */
  readonly calibration?: string;
}

export interface LabReading extends ReadingOrigin {
  readonly form: "lab";
  readonly lab: Lab;
  readonly viewing: LabViewing;
  readonly geometry: Geometry;
  readonly uncertainty?: number;
  /** Not read at all but taken from a corrected photograph: what lies within, on either side of each axis. */
  readonly photographed?: Lab;
}

/** The nearest Munsell chip, judged by eye. */
export interface ChipReading extends ReadingOrigin {
  readonly form: "chip";
  readonly munsell: string;
}

export type Reading = SpectrumReading | LabReading | ChipReading;

export interface TintReading {
  readonly white: string;
  /** As written, colour to white by mass: "1:20". */
  readonly massRatio: string;
  readonly colourParts: number;
  readonly whiteParts: number;
  readonly ratioKind: RatioKind;
  readonly reading: Reading;
  /** The same drawdown over the black half of a chart: `reading` is then over its white half. */
  readonly overBlack?: SpectrumReading;
}

export interface FilmReading {
  readonly ground: "black" | "white";
  readonly filmThicknessUm: number;
  readonly reading: Reading;
}

/** What films are drawn down on, as read by itself. */
export interface ChartGrounds {
  readonly black: SpectrumReading;
  readonly white: SpectrumReading;
}

/** A checked record with its slug and the file it was read from. */
export interface Checked<R> {
  readonly slug: string;
  readonly file: string;
  readonly record: R;
  /** Where in its file a value stands, for a complaint that only a worked-out sheet brings up. */
  readonly place: (path: RecordPath) => Diagnostic["place"];
}

export interface Colour extends Checked<ColourRecord> {
  /** The notes below the front matter, Markdown as written. */
  readonly notes: string;
  /** The language of the notes, where it is not that of the page. */
  readonly notesLanguage?: Language;
  /** What it is put up in, by its record and prices.csv. */
  readonly sizes: readonly OfferedSize[];
  readonly masstone?: Reading;
  /** The masstone's own drawdown over the black half of a chart: `masstone` is then over its white half. */
  readonly masstoneOverBlack?: SpectrumReading;
  readonly tints: readonly TintReading[];
  readonly films: readonly FilmReading[];
  /** What its lots came out as, the oldest first; none that is planned. */
  readonly lotDensities: readonly LotDensity[];
  readonly lotYields: readonly LotYield[];
}

/** A colour as its own file and its readings tell it, without what prices.csv and its lots do. */
export type ReadColour = Omit<Colour, "sizes" | "lotDensities" | "lotYields">;

/** Density of a lot's paint [g/cm3]. */
interface LotDensity {
  readonly lot: string;
  readonly densityGPerCm3: number;
}

/** What went into a lot and what came off slab or mill [g]; no more than went in. */
interface LotYield {
  readonly lot: string;
  readonly weighedG: number;
  readonly yieldG: number;
}

/** A let-down of a lot; `replicates` hold each drawdown where several were averaged. */
export interface LotLetDown extends TintReading {
  readonly replicates: readonly Spectrum[];
}

/** One lot of a colour as it was made and read. */
export interface Lot extends Checked<LotRecord> {
  readonly masstone?: Reading;
  readonly letDowns: readonly LotLetDown[];
  /** The retained standard as it was read again beside this lot. */
  readonly standard?: { readonly masstone?: Reading; readonly letDowns: readonly LotLetDown[] };
}

/** An answer to a customers' question, with the places of what it says, since its claims are held only when the sheets are there. */
export interface Answer extends Checked<AnswerRecord> {
  /** Markdown with shortcodes, as written, and the line of the file on which it begins. */
  readonly body: string;
  readonly bodyLine: number;
  /** Its language, where it is not that of the page. */
  readonly language?: Language;
}

/** A workshop's checked records: every reference in them leads somewhere. Maps are in order of slug. */
export interface Records {
  /** What the hazard room knows by its tables. */
  readonly hazardKnowledge: HazardKnowledge;
  readonly workshop: WorkshopRecord;
  /** The language that names stand in: that of the records as they are written, or of the page that they are told on. */
  readonly language: Language;
  /** The folder of its host that the site stands in: `/`, or `/colours/`. */
  readonly siteBase: string;
  /** Where in workshop.yaml a value stands. */
  readonly workshopPlace: Checked<WorkshopRecord>["place"];
  /** The bare halves of the workshop's own opacity chart. */
  readonly grounds?: ChartGrounds;
  readonly pigments: ReadonlyMap<string, Checked<PigmentRecord>>;
  readonly vehicles: ReadonlyMap<string, Checked<VehicleRecord>>;
  readonly colours: ReadonlyMap<string, Colour>;
  readonly sources: ReadonlyMap<string, Source>;
  readonly answers: ReadonlyMap<string, Answer>;
  /** In order of date, of one date by slug. */
  readonly lots: ReadonlyMap<string, Lot>;
  readonly trials: ReadonlyMap<string, Checked<TrialRecord>>;
  /** In order of folder and slug, of one record as written. */
  readonly photographs: readonly Photograph[];
  /** What the engine knows beside the records: its tables, and the look-up by Colour Index name. */
  readonly knowledge: Knowledge;
  /** The newest date in any record; absent when none is dated. */
  readonly newestDate?: string;
}
