import { noLaterThanAlone } from "../../drying/days-of-parts.ts";
import { dryingEstimate, type DryingQuestion } from "../../drying/drying-estimate.ts";
import type { OilPart } from "../../drying/oils.ts";
import { isKnown, takenFrom, type Figure, type RecordRoot } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { contributionFigures, expectedDays } from "./drying-days.ts";
import { dryingParts, type DryingPart } from "./drying-parts.ts";
import { addedDriers, dryingQuestion, type DryingPaint } from "./drying-question.ts";
import { decidingTrial, recordedTrials, type RecordedTrial } from "./drying-trials.ts";
import { daysFromTrials, standingTrial } from "./days-from-trials.ts";
import { oilDemand } from "../oil/oil-demand.ts";
import { colourRecord, ingredientRecords, paintOfWhite, pigmentRecord } from "../record-inputs.ts";
import { filled } from "../found.ts";
import { TINT_DRYING, type TintDrying } from "./drying-figures.ts";
import { pigmentParts } from "../pigments/pigment-parts.ts";
import { paintAsMade } from "../paint-as-made.ts";
import { mainOil } from "../oil/main-oil.ts";
import type { AdditionPart, VehiclePart } from "../pigments/pigment-figures.ts";

/** Paint of the white to one of the colour, by mass: a middling tint, for which drying in a white is reckoned. */
const WHITE_PARTS = 20;

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
    const white = whitePaint(slug, records);
    const question = mixtureQuestion(paint, white, WHITE_PARTS);
    const ofParts = (isWhite: boolean): DryingPart[] =>
      question.pigments.filter((part) => part.white === isWhite);
    const tried = daysFromTrials(
      [
        {
          name: colour.record.name,
          pigments: ofParts(false),
          question: dryingQuestion(paint),
          trial: standingTrial(trials),
        },
        {
          name,
          pigments: ofParts(true),
          question: dryingQuestion(white),
          trial: standingTrial(whiteTrials(slug, records)),
        },
      ],
      made,
      records,
    );
    const expected = mixedEstimate(question, [paint, white], records);
    const contributions = tried === undefined ? contributionFigures(expected, () => made) : [];
    const trial = decidingTrial(trials.filter(({ figures }) => figures.tintedWith?.slug === slug));
    const touchDryDays =
      trial === undefined || !isKnown(trial.figures.touchDryDays)
        ? (tried?.days ??
          expectedDays(
            expected,
            [linseedDays, ...contributions.map(({ factor }) => factor), ...made],
            `colours.${colour.slug}.dryingTrials`,
          ))
        : takenFrom(trial.figures.touchDryDays);
    return filled(TINT_DRYING, {
      white: { slug, name, ...(colourIndexName !== undefined && { colourIndexName }) },
      whiteParts: WHITE_PARTS,
      touchDryDays,
      contributions,
    });
  });
}

/** By the rules; no later than the slower of the two paints alone. */
function mixedEstimate(
  question: MixtureQuestion,
  paints: readonly DryingPaint[],
  { knowledge: { tables } }: Records,
): ReturnType<typeof dryingEstimate> {
  const mixed = dryingEstimate(question, tables);
  const alone = paints.map((paint) => dryingEstimate(dryingQuestion(paint), tables));
  const days = alone.flatMap((one) => (one.known ? [one.touchDryDays] : []));
  return !mixed.known || days.length < alone.length
    ? mixed
    : { ...mixed, touchDryDays: noLaterThanAlone(mixed.touchDryDays, days) };
}

/** What of the records drying goes by. */
export function paintRecords(colour: Colour, records: Records): RecordRoot[] {
  return [
    ...colourRecord(colour, "dryingTrials", "additions", "pigments", "oilIndexGPer100g"),
    ...ingredientRecords(colour, records),
  ];
}

/** The trials of a white, where it is a paint of the workshop's. */
function whiteTrials(slug: string, records: Records): readonly RecordedTrial[] {
  const white = records.colours.get(slug);
  return white === undefined ? [] : recordedTrials(white, records);
}

function whitePaint(slug: string, records: Records): DryingPaint {
  const own = records.colours.get(slug);
  if (own !== undefined) {
    const { pigments, vehicle, additions, oil } = paintAsMade(own, records);
    const mainOilGPer100g = mainOil(oil);
    return { parts: dryingParts(pigments, records), vehicle, additions, mainOilGPer100g };
  }
  // A white recorded as a pigment alone has no oil of its own: the workshop's would be a guess.
  const colour: Colour = {
    slug,
    file: "",
    record: { name: slug, pigments: [{ pigment: slug, parts: 1 }] },
    notes: "",
    tints: [],
    films: [],
    sizes: [],
    lotDensities: [],
    lotYields: [],
    place: (path) => ({ file: "", line: 1, column: 1, path: path.join(".") }),
  };
  const parts = pigmentParts(colour, undefined, records);
  return {
    parts: dryingParts(parts, records),
    vehicle: undefined,
    additions: [],
    mainOilGPer100g: oilDemand(colour, parts, [], records).oilIndex,
  };
}

/** What drying is asked of two paints mixed. */
export interface MixtureQuestion extends DryingQuestion {
  readonly pigments: readonly DryingPart[];
}

/** Two paints mixed by mass: pigments, oils and driers each by their share of the mixture, as far as the oil in each is known. */
export function mixtureQuestion(
  colour: DryingPaint,
  white: DryingPaint,
  whiteParts: number,
): MixtureQuestion {
  const [one, other] = [shares(colour), shares(white)];
  const pigmentOf = (share: number | undefined, whole: number | undefined): number | undefined =>
    share === undefined || whole === undefined ? undefined : share / whole;
  const pigmentWhole = one && other && one.pigment + whiteParts * other.pigment;
  const oilWhole = one && other && one.oil + whiteParts * other.oil;
  const colourOil = pigmentOf(one?.oil, oilWhole);
  return {
    pigments: [
      ...pigments(colour.parts, pigmentOf(one?.pigment, pigmentWhole), false),
      ...pigments(white.parts, pigmentOf(other && whiteParts * other.pigment, pigmentWhole), true),
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
  mainOilGPer100g,
  additions,
}: DryingPaint): { readonly pigment: number; readonly oil: number } | undefined {
  if (!isKnown(mainOilGPer100g)) return undefined;
  const oilPerPigment = midpoint(mainOilGPer100g.value) / 100;
  const added = additions.reduce(
    (sum, { percentOfOil }) => sum + (isKnown(percentOfOil) ? percentOfOil.value : 0) / 100,
    0,
  );
  const whole = 1 + oilPerPigment * (1 + added);
  return { pigment: 1 / whole, oil: oilPerPigment / whole };
}

function pigments(
  parts: readonly DryingPart[],
  share: number | undefined,
  white: boolean,
): DryingPart[] {
  return parts.map((part) => ({
    ...part,
    white,
    massFraction:
      share === undefined || part.massFraction === undefined
        ? undefined
        : part.massFraction * share,
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
  if (share === undefined) return [];
  return [
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
  return addedDriers(additions).map(({ metal, percentOnOil }) => ({
    metal,
    percentOnOil: percentOnOil * share,
  }));
}
