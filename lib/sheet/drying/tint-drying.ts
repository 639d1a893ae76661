import {
  dryingEstimate,
  type DryingPigment,
  type DryingQuestion,
} from "../../drying/drying-estimate.ts";
import { chemistryRow } from "../../drying/chemistry-drying.ts";
import { mixedDays, type MixedPart } from "../../drying/mixed-days.ts";
import type { OilPart } from "../../drying/vehicle-drying.ts";
import {
  isKnown,
  sourceFigure,
  takenFrom,
  type Figure,
  type RecordRoot,
} from "../../quantities/figure.ts";
import { midpoint, type Interval, type Quantity } from "../../quantities/interval.ts";
import type { Knowledge } from "../../knowledge/pigment-knowledge.ts";
import type { Colour, Records } from "../../records/records.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { dryingChemistry } from "./drying-chemistry.ts";
import { contributionFigures, dryingClassFigure, expectedDays } from "./drying-days.ts";
import { decidingTrial, recordedTrials, type RecordedTrial } from "./drying-trials.ts";
import { oilDemand } from "../oil/oil-demand.ts";
import { colourRecord, ingredientRecords, paintOfWhite, pigmentRecord } from "../record-inputs.ts";
import type { TintDrying } from "../paint-section-types.ts";
import { additionParts, pigmentParts, vehiclePart } from "../pigments/pigment-parts.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../sheet.ts";

/** Paint of the white to one of the colour, by mass: a middling tint, for which drying in a white is reckoned. */
export const WHITE_PARTS = 20;

/** What of a paint bears on drying. */
export interface DryingPaint {
  readonly parts: readonly PigmentPart[];
  readonly vehicle: VehiclePart | undefined;
  readonly additions: readonly AdditionPart[];
  readonly oilIndexGPer100g: Figure<Quantity>;
}

/** How fast a colour dries let down with each white that it was tinted or tried with; a trial in that white decides. */
export function tintDrying(
  colour: Colour,
  paint: DryingPaint,
  trials: readonly RecordedTrial[],
  linseedDays: Figure,
  records: Records,
): TintDrying[] {
  const whites = [
    ...new Set([
      ...colour.tints.map(({ white }) => white),
      ...trials.flatMap(({ figures }) => figures.tintedWith?.slug ?? []),
    ]),
  ];
  return whites.map((slug) => {
    const { name, colourIndexName } = whiteColour(slug, records);
    const own = paintOfWhite(slug, records);
    const made = [
      ...paintRecords(colour, records),
      ...(own === undefined ? [pigmentRecord(slug)] : paintRecords(own, records)),
    ];
    const question = mixtureQuestion(
      paint,
      whitePaint(slug, records),
      WHITE_PARTS,
      records.knowledge,
    );
    const expected = dryingEstimate(question);
    const alone = {
      colour: decidingTrial(trials.filter(({ figures }) => figures.tintedWith === undefined)),
      white: whiteTrial(slug, records),
    };
    const mixed = daysOfParts(question, alone.colour, alone.white);
    const contributions = mixed === undefined ? contributionFigures(expected, () => made) : [];
    const trial = decidingTrial(trials.filter(({ figures }) => figures.tintedWith?.slug === slug));
    const estimate =
      mixed === undefined
        ? expectedDays(
            expected,
            [linseedDays, ...contributions.map(({ factor }) => factor), ...made],
            `colours.${colour.slug}.dryingTrials`,
          )
        : sourceFigure("estimated", mixed, {
            unit: "d",
            method: "between what the two paints take alone, as tried, each by its share",
            source: "practice-drying",
            inputs: [
              ...[alone.colour, alone.white].flatMap((tried) => tried?.figures.touchDryDays ?? []),
              ...made,
            ],
          });
    const touchDryDays =
      trial === undefined || !isKnown(trial.figures.touchDryDays)
        ? estimate
        : takenFrom(trial.figures.touchDryDays);
    return {
      white: { slug, name, ...(colourIndexName === undefined ? {} : { colourIndexName }) },
      whiteParts: WHITE_PARTS,
      class: dryingClassFigure(touchDryDays),
      touchDryDays,
      contributions,
    };
  });
}

/** What of the records drying goes by. */
export function paintRecords(colour: Colour, records: Records): RecordRoot[] {
  return [
    ...colourRecord(colour, "dryingTrials", "additions", "pigments", "oilIndexGPer100g"),
    ...ingredientRecords(colour, records),
  ];
}

/** From the trials of the two paints; undefined where one of them was not tried, or its share is not known. */
function daysOfParts(
  { pigments: all }: DryingQuestion,
  colour: RecordedTrial | undefined,
  white: RecordedTrial | undefined,
): Interval | undefined {
  if (colour === undefined || white === undefined) return undefined;
  const part = (ofWhite: boolean, { trial }: RecordedTrial): MixedPart | undefined => {
    const own = all.filter(({ white: isWhite }) => isWhite === ofWhite);
    const shares = own.flatMap(({ massFraction }) => massFraction ?? []);
    const chemistries = own.flatMap(({ chemistry }) => chemistry ?? []);
    if (shares.length < own.length || chemistries.length < own.length) return undefined;
    return {
      touchDryDays: trial.touchDryDays,
      massFraction: shares.reduce((sum, share) => sum + share, 0),
      fullFromMassFraction: Math.min(
        ...chemistries.map((chemistry) => chemistryRow(chemistry).fullFromMassFraction),
      ),
    };
  };
  const [one, other] = [part(true, white), part(false, colour)];
  return one === undefined || other === undefined ? undefined : mixedDays(one, other);
}

/** The trial of a white alone, where it is a paint of the workshop's. */
function whiteTrial(slug: string, records: Records): RecordedTrial | undefined {
  const white = records.colours.get(slug);
  return white === undefined
    ? undefined
    : decidingTrial(
        recordedTrials(white, records).filter(({ figures }) => figures.tintedWith === undefined),
      );
}

function whitePaint(slug: string, records: Records): DryingPaint {
  const own = records.colours.get(slug);
  const colour: Colour = own ?? {
    slug,
    file: "",
    record: { name: slug, pigments: [{ pigment: slug, parts: 1 }] },
    notes: "",
    tints: [],
    films: [],
    place: (path) => ({ file: "", line: 1, column: 1, path: path.join(".") }),
  };
  const parts = pigmentParts(colour, records);
  // A white recorded as a pigment alone has no oil of its own: the workshop's would be a guess.
  const vehicle = own === undefined ? undefined : vehiclePart(colour, records);
  return {
    parts,
    vehicle,
    additions: additionParts(colour, records),
    oilIndexGPer100g: oilDemand(colour, parts, records).oilIndex,
  };
}

/** Two paints mixed by mass: pigments, oils and driers each by their share of the mixture, as far as the oil in each is known. */
export function mixtureQuestion(
  colour: DryingPaint,
  white: DryingPaint,
  whiteParts: number,
  knowledge: Knowledge,
): DryingQuestion {
  const [one, other] = [shares(colour), shares(white)];
  const pigmentOf = (share: number | undefined, whole: number | undefined): number | undefined =>
    share === undefined || whole === undefined ? undefined : share / whole;
  const pigmentWhole = one && other && one.pigment + whiteParts * other.pigment;
  const oilWhole = one && other && one.oil + whiteParts * other.oil;
  const colourOil = pigmentOf(one?.oil, oilWhole);
  return {
    pigments: [
      ...pigments(colour.parts, pigmentOf(one?.pigment, pigmentWhole), false, knowledge),
      ...pigments(
        white.parts,
        pigmentOf(other && whiteParts * other.pigment, pigmentWhole),
        true,
        knowledge,
      ),
    ],
    oils: oils(colour.vehicle, white.vehicle, colourOil),
    addedDriers: [
      ...driers(colour.additions, colourOil),
      ...driers(white.additions, colourOil === undefined ? undefined : 1 - colourOil),
    ],
  };
}

/** Pigment and oil in a gram of paint. */
function shares({
  oilIndexGPer100g,
  additions,
}: DryingPaint): { readonly pigment: number; readonly oil: number } | undefined {
  if (!isKnown(oilIndexGPer100g)) return undefined;
  const oilPerPigment = midpoint(oilIndexGPer100g.value) / 100;
  const added = additions.reduce(
    (sum, { percentOfOil }) => sum + (isKnown(percentOfOil) ? percentOfOil.value : 0) / 100,
    0,
  );
  const whole = 1 + oilPerPigment * (1 + added);
  return { pigment: 1 / whole, oil: oilPerPigment / whole };
}

function pigments(
  parts: readonly PigmentPart[],
  share: number | undefined,
  white: boolean,
  knowledge: Knowledge,
): DryingPigment[] {
  return parts.map((part) => ({
    name: part.name,
    chemistry: dryingChemistry(part, knowledge),
    white,
    massFraction:
      share === undefined || !isKnown(part.massFraction)
        ? undefined
        : part.massFraction.value * share,
  }));
}

/** By share of the whole oil; of two oils whose shares are not known nothing is said. */
function oils(
  one: VehiclePart | undefined,
  other: VehiclePart | undefined,
  share: number | undefined,
): OilPart[] {
  if (one?.oil === undefined || other?.oil === undefined) return [];
  if (one.oil === other.oil) return [{ oil: one.oil, massFraction: 1 }];
  return share === undefined
    ? []
    : [
        { oil: one.oil, massFraction: share },
        { oil: other.oil, massFraction: 1 - share },
      ];
}

/** A drier of one paint is thinned by the other's oil; nothing where by how much is not known. */
function driers(
  additions: readonly AdditionPart[],
  share: number | undefined,
): NonNullable<DryingQuestion["addedDriers"]> {
  if (share === undefined) return [];
  return additions.flatMap(({ metals }) =>
    metals.flatMap(({ slug, percentOfOil }) =>
      isKnown(percentOfOil)
        ? [{ metal: slug, percentOnOil: midpoint(percentOfOil.value) * share }]
        : [],
    ),
  );
}
