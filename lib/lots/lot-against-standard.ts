/** A lot beside its standard, reading against reading, and figure against figure. */
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import type { Geometry, Measurement } from "../optics/fit/measurement.ts";
import type { NotPredicted } from "../optics/special-effect.ts";
import { given } from "../quantities/given.ts";
import type { Interval } from "../quantities/interval.ts";
import { said, type StatementOf } from "../quantities/statement.ts";
import { COMPARISON_NOTES, type ComparisonNote, type Part } from "./comparison-notes.ts";
import { differenceParts, type DifferenceParts } from "./difference-parts.ts";
import {
  colourUncertainty,
  strengthUncertainty,
  type LotReading,
  type WorkshopSpread,
} from "./difference-uncertainty.ts";
import { judged, worstVerdict, type Judged, type Tolerances, type Verdict } from "./judgement.ts";
import { lotStrength, type LotStrength } from "./lot-strength.ts";
import { commonBench, onBench } from "./read-alike.ts";

export interface LetDownReading {
  /** Slug of the white. */
  readonly white: string;
  /** Colour to white as written: "1:20". */
  readonly massRatio: string;
  readonly ratioKind: "pigment" | "paint";
  readonly reading: LotReading;
}

/** What was read and measured of a lot, or of the standard that lots are held against. */
export interface LotFigures {
  readonly masstone?: LotReading;
  readonly letDowns: readonly LetDownReading[];
  readonly finenessUm?: number;
  readonly oilIndexGPer100g?: number;
  readonly densityGPerCm3?: number;
}

export interface LotComparison {
  readonly masstone?: DifferenceParts;
  readonly letDown?: {
    readonly white: string;
    readonly massRatio: string;
    readonly difference: DifferenceParts;
    /** Not of a paint or white that fluoresces or is made of flakes. */
    readonly strength?: LotStrength;
  };
  readonly judged: readonly Judged[];
  /** The worst of those judged; none where neither masstone nor let-down was, or where all agree that were and not all was that was read. */
  readonly verdict?: Verdict;
  /** Why something was not judged, or is not to be: no correction follows from such a comparison. */
  readonly remarks: readonly ComparisonStatement[];
  /** What a reader of the verdict should know. */
  readonly notes: readonly ComparisonNote[];
}

export type ComparisonStatement =
  | StatementOf<
      "reads-as-in-another-white",
      { readonly white: string; readonly other: string; readonly deltaE00: number }
    >
  | StatementOf<
      "lot-not-read-as-standard",
      { readonly what: Part; readonly lot: Geometry; readonly standard: Geometry }
    >
  | StatementOf<"standard-has-no-masstone", Record<string, never>>
  /** Strength is a ratio of K/S, which no reading of such pigments gives. */
  | StatementOf<
      "strength-not-judged",
      { readonly since: NotPredicted["rule"]; readonly pigments: readonly string[] }
    >
  | StatementOf<
      "lot-has-no-let-down-of-standard",
      { readonly white: string; readonly ratio: string }
    >;

/** A let-down that lies so much nearer to another white's than to its own was made in that one. Our own limit. */
const OTHER_WHITE_SHARE = 1 / 3;

/**
 * @param whites the whites alone, read as the standard was, by slug.
 * @param notPredicted why theory does not hold for the colour in a white, by the white's slug.
 * @param spread of the workshop's replicates, used in place of the instrument's noise once it rests on enough of them.
 */
export function lotAgainstStandard(
  standard: LotFigures,
  lot: LotFigures,
  whites: ReadonlyMap<string, Measurement>,
  tolerances: Tolerances,
  spread: WorkshopSpread,
  notPredicted: (white: string) => NotPredicted | undefined,
): LotComparison {
  const remarks: ComparisonStatement[] = [];
  const found: Judged[] = [];
  const masstone = masstoneDifference(standard, lot, remarks);
  if (masstone !== undefined)
    found.push(
      judged(
        "masstone",
        masstone.deltaE00,
        [0, tolerances.masstoneDeltaE00],
        colourUncertainty([standard.masstone, lot.masstone], spread),
      ),
    );
  const pair = letDownPair(standard, lot);
  const [unpaired] = pair === undefined ? lot.letDowns : [];
  if (unpaired !== undefined)
    remarks.push({
      rule: "lot-has-no-let-down-of-standard",
      values: { white: unpaired.white, ratio: unpaired.massRatio },
    });
  const without = pair && notPredicted(pair.of.white);
  const compared =
    pair &&
    comparedLetDown(
      standard,
      pair,
      whites.get(pair.of.white),
      tolerances,
      spread,
      without === undefined,
    );
  if (compared !== undefined && "rule" in compared) remarks.push(compared);
  const letDown = compared === undefined || "rule" in compared ? undefined : compared;
  if (letDown !== undefined) found.push(...letDown.judged);
  if (letDown !== undefined && without !== undefined)
    remarks.push({
      rule: "strength-not-judged",
      values: { since: without.rule, pigments: without.values.pigments },
      ...(without.source !== undefined && { source: without.source }),
    });
  found.push(...figuresJudged(standard, lot, tolerances));
  const worst = worstVerdict(found.map((one) => one.verdict));
  const verdict = worst === "pass" && isLeftOpen(lot, masstone, letDown?.of) ? undefined : worst;
  return {
    ...(masstone !== undefined && { masstone }),
    ...(letDown !== undefined && { letDown: letDown.of }),
    ...(verdict !== undefined && { verdict }),
    judged: found,
    remarks,
    notes: said(COMPARISON_NOTES, {
      lot,
      readings: [
        [standard.masstone, lot.masstone],
        [pair?.of.reading, pair?.lot.reading],
      ],
    }),
  };
}

/** A let-down held against the standard's, or why it tells nothing of the lot: read otherwise, or made in another white than is written down. */
function comparedLetDown(
  standard: LotFigures,
  pair: LetDownPair,
  white: Measurement | undefined,
  tolerances: Tolerances,
  spread: WorkshopSpread,
  hasStrength: boolean,
):
  | {
      readonly of: NonNullable<LotComparison["letDown"]>;
      readonly judged: readonly Judged[];
    }
  | ComparisonStatement {
  const isWhiteAlike = white?.geometry === pair.of.reading.geometry;
  const bench = commonBench(
    pair.of.reading,
    pair.lot.reading,
    ...(white !== undefined && isWhiteAlike ? [white] : []),
  );
  const [of, own] = [pair.of.reading, pair.lot.reading].map(
    (reading) => bench && onBench(reading, bench),
  );
  if (bench === undefined || of === undefined || own === undefined)
    return notReadAlike("let-down", pair.of.reading, pair.lot.reading);
  const difference = differenceParts(spectrumLab(of.spectrum), spectrumLab(own.spectrum));
  const elsewhere = inAnotherWhite(standard, pair, difference.deltaE00);
  if (elsewhere !== undefined) return elsewhere;
  const ofColour = colourUncertainty([pair.of.reading, pair.lot.reading], spread);
  const { white: slug, massRatio } = pair.of;
  const apart = judged("letDown", difference.deltaE00, [0, tolerances.letDownDeltaE00], ofColour);
  if (!hasStrength) return { of: { white: slug, massRatio, difference }, judged: [apart] };
  const strength = lotStrength(of, own, white && onBench(white, bench), bench);
  return {
    of: { white: slug, massRatio, difference, strength },
    judged: [
      apart,
      judged(
        "strength",
        strength.weightedPercent,
        tolerances.strengthPercent,
        strengthUncertainty([pair.of.reading, pair.lot.reading], spread),
      ),
      judged("residual", strength.residual.deltaE00, [0, tolerances.residualDeltaE00], ofColour),
    ],
  };
}

/** Whether masstone and let-down were both held against the standard, each as it is written down: a correction follows from both together. */
export function isWhollyCompared({ masstone, letDown, remarks }: LotComparison): boolean {
  return masstone !== undefined && letDown !== undefined && remarks.length === 0;
}

/**
 * What was read of a lot and not held against the standard keeps it from passing: what else agrees can't stand for
 * it. A lot of which no colour was compared does not pass by its weights alone.
 */
function isLeftOpen(
  lot: LotFigures,
  masstone: DifferenceParts | undefined,
  letDown: LotComparison["letDown"],
): boolean {
  return (
    (masstone === undefined && letDown === undefined) ||
    (masstone === undefined && lot.masstone !== undefined) ||
    (letDown === undefined && lot.letDowns.length > 0)
  );
}

function notReadAlike(
  what: Part,
  { geometry: standard }: Measurement,
  { geometry: lot }: Measurement,
): ComparisonStatement {
  return { rule: "lot-not-read-as-standard", values: { what, lot, standard } };
}

export interface LetDownPair {
  readonly of: LetDownReading;
  readonly lot: LetDownReading;
}

/** The first let-down of a lot that the standard has of the same white, ratio and kind; of several those read under one calibration. */
export function letDownPair(standard: LotFigures, lot: LotFigures): LetDownPair | undefined {
  for (const own of lot.letDowns) {
    const alike = standard.letDowns.filter(
      ({ white, massRatio, ratioKind }) =>
        white === own.white && massRatio === own.massRatio && ratioKind === own.ratioKind,
    );
    const of =
      alike.find(
        ({ reading: { calibration } }) =>
          calibration !== undefined && calibration === own.reading.calibration,
      ) ?? alike[0];
    if (of !== undefined) return { of, lot: own };
  }
  return undefined;
}

function masstoneDifference(
  standard: LotFigures,
  lot: LotFigures,
  remarks: ComparisonStatement[],
): DifferenceParts | undefined {
  if (lot.masstone === undefined) return undefined;
  if (standard.masstone === undefined) {
    remarks.push({ rule: "standard-has-no-masstone", values: {} });
    return undefined;
  }
  const difference = readDifference(standard.masstone, lot.masstone);
  if (difference === undefined)
    remarks.push(notReadAlike("masstone", standard.masstone, lot.masstone));
  return difference;
}

/** By the colours of both on one grid; undefined where they were read in two geometries. */
function readDifference(standard: LotReading, lot: LotReading): DifferenceParts | undefined {
  const bench = commonBench(standard, lot);
  const [one, other] = [standard, lot].map((reading) => bench && onBench(reading, bench));
  return one && other && differenceParts(spectrumLab(one.spectrum), spectrumLab(other.spectrum));
}

function inAnotherWhite(
  standard: LotFigures,
  { of, lot }: LetDownPair,
  off: number,
): ComparisonStatement | undefined {
  const [nearest] = standard.letDowns
    .filter(
      ({ white, massRatio, ratioKind }) =>
        white !== of.white && massRatio === of.massRatio && ratioKind === of.ratioKind,
    )
    .flatMap(({ white, reading }) => {
      const difference = readDifference(reading, lot.reading);
      return difference === undefined ? [] : [{ white, deltaE00: difference.deltaE00 }];
    })
    .toSorted((one, other) => one.deltaE00 - other.deltaE00);
  return nearest === undefined || nearest.deltaE00 > off * OTHER_WHITE_SHARE
    ? undefined
    : {
        rule: "reads-as-in-another-white",
        values: { white: of.white, other: nearest.white, deltaE00: nearest.deltaE00 },
        standing: "derived",
      };
}

function figuresJudged(standard: LotFigures, lot: LotFigures, tolerances: Tolerances): Judged[] {
  const around = (middle: number, percent: number): Interval => [
    middle * (1 - percent / 100),
    middle * (1 + percent / 100),
  ];
  return given([
    lot.finenessUm !== undefined &&
      tolerances.finenessUm !== undefined &&
      judged("fineness", lot.finenessUm, [0, tolerances.finenessUm], 0),
    lot.oilIndexGPer100g !== undefined &&
      standard.oilIndexGPer100g !== undefined &&
      judged(
        "oilIndex",
        lot.oilIndexGPer100g,
        around(standard.oilIndexGPer100g, tolerances.oilIndexPercent),
        0,
      ),
    lot.densityGPerCm3 !== undefined &&
      standard.densityGPerCm3 !== undefined &&
      judged(
        "density",
        lot.densityGPerCm3,
        around(standard.densityGPerCm3, tolerances.densityPercent),
        0,
      ),
  ]);
}
