import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { DRIER_REACH_PERCENT, type DrierRow } from "../drying/added-drier.ts";
import { trialComplaints } from "../drying/trial-complaints.ts";
import { partsComplaint } from "../formulation/mass-fractions.ts";
import { reachComplaint, type ReachedFigure } from "../formulation/plausibility.ts";
import type { Tables } from "../knowledge/tables.ts";
import { nameComplaint } from "../permanence/traditional-names.ts";
import { midpoint, type Quantity } from "../quantities/interval.ts";
import { drierMetals } from "./drier-metals.ts";
import { errorAt, faultAt, firstFault, type Faults } from "./fault.ts";
import { humidityFault } from "./humidity-fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { AmountRecord } from "./schema/amount.ts";
import type { ColourRecord } from "./schema/colour.ts";

/** Paints by the name of another pigment, and driers beyond reach. */
export function* paintFaults(files: ParsedFiles, tables: Tables): Faults {
  for (const colour of files.colours.values()) {
    yield* nameFaults(colour, files, tables);
    yield* additionFaults(colour, files, tables);
  }
}

type OfColour = Parsed<ColourRecord>;

function* nameFaults(
  { record: { name, pigments }, yaml }: OfColour,
  files: ParsedFiles,
  { traditionalNames }: Tables,
): Faults {
  const complaint = nameComplaint(
    name,
    pigments.map(({ pigment }) => files.pigments.get(pigment)?.record.colourIndexName),
    traditionalNames,
  );
  if (complaint !== undefined) yield faultAt(yaml.place(["name"]), complaint);
}

const REACHED = [
  "oilIndexGPer100g",
  "gloss60",
  "finenessOfGrindUm",
] as const satisfies readonly ReachedFigure[];

/** Figures of a paint that none can have. */
export const paintReachFaults: OwnRule<ColourRecord> = function* ({ record, yaml }, { knowledge }) {
  for (const field of REACHED)
    yield* firstFault(yaml, record[field], [field], (value) =>
      reachComplaint(field, value, knowledge.tables.reaches),
    );
};

/** Parts that make no whole. */
export const partsSumFaults: OwnRule<ColourRecord> = function* ({ record: { pigments }, yaml }) {
  const complaint = partsComplaint(pigments.map(({ parts, paintParts = parts }) => paintParts));
  if (complaint !== undefined) yield faultAt(yaml.place(["pigments"]), complaint);
};

/** Trials of drying beyond reach, or without what their days hold for. */
export const dryingTrialFaults: OwnRule<ColourRecord> = function* ({
  record: { dryingTrials = [] },
  yaml,
}) {
  const days = (amount: AmountRecord): Quantity =>
    typeof amount === "number" ? amount : amount.value;
  const one = (amount: AmountRecord | undefined): number | undefined =>
    amount === undefined ? undefined : midpoint(days(amount));
  for (const [i, trial] of dryingTrials.entries()) {
    const humidityPercent = one(trial.humidityPercent);
    const at = (field: string): Diagnostic["place"] => yaml.place(["dryingTrials", i, field]);
    const dry = humidityFault(humidityPercent);
    if (dry !== undefined) yield faultAt(at("humidityPercent"), dry);
    for (const { field, ...complaint } of trialComplaints({
      touchDryDays: days(trial.touchDryDays),
      throughDryDays: trial.throughDryDays && days(trial.throughDryDays),
      filmThicknessUm: one(trial.filmThicknessUm),
      temperatureC: one(trial.temperatureC),
      humidityPercent,
    }))
      yield faultAt(field === undefined ? yaml.place(["dryingTrials", i]) : at(field), complaint);
  }
};

/** Times [1] the upper end of what is customary that no drier is dosed at. Our own limit. */
const DOSE_TIMES = 10;

/** Metal on oil [%] that is out of reach: of each metal by what is customary for it. */
function doseReach(metal: string, driers: readonly DrierRow[]): number {
  const customary = driers.find((row) => row.metal === metal)?.customaryPercent[1];
  return Math.min(
    DRIER_REACH_PERCENT,
    customary === undefined ? Infinity : Number((DOSE_TIMES * customary).toPrecision(3)),
  );
}

/** A drier so strong that the soap's mass was most likely taken for the metal's; one addition named twice. */
function* additionFaults(
  { record: { additions = [] }, yaml }: OfColour,
  { vehicles }: ParsedFiles,
  { driers }: Tables,
): Faults {
  for (const [i, { vehicle, percentOfOil }] of additions.entries()) {
    if (additions.findIndex((other) => other.vehicle === vehicle) < i)
      yield errorAt(yaml.place(["additions", i, "vehicle"]), "records/duplicate", {
        message: `${vehicle} is added twice`,
        actual: vehicle,
        expected: "each addition once",
      });
    const drier = vehicles.get(vehicle)?.record;
    const overdosed = (drier === undefined ? [] : drierMetals(drier))
      .map(({ metal, percent = 0 }) => ({
        metal,
        onOil: Number(((percentOfOil * percent) / 100).toPrecision(3)),
        most: doseReach(metal, driers),
      }))
      .find(({ onOil, most }) => onOil > most);
    if (overdosed !== undefined)
      yield errorAt(yaml.place(["additions", i, "percentOfOil"]), "drying/drier-reach", {
        message: `The drier's ${overdosed.metal} comes to ${overdosed.onOil} % of the oil, and more than ${overdosed.most} % of it does not occur`,
        actual: `${overdosed.onOil} %`,
        expected: `at most ${overdosed.most} %`,
        hint: "the record of the drier gives the metal in it, percentOfOil the drier on the oil",
        source: "memory-drying",
      });
  }
}
