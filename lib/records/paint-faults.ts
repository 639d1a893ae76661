import type { Complaint } from "../diagnostics/complaint.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { DRIER_REACH_PERCENT, type DrierRow } from "../drying/added-drier.ts";
import { trialComplaints } from "../drying/trial-complaints.ts";
import { partsComplaint } from "../formulation/mass-fractions.ts";
import { reachComplaint, type ReachedFigure } from "../formulation/plausibility.ts";
import type { Tables } from "../knowledge/tables.ts";
import { nameComplaint } from "../permanence/traditional-names.ts";
import { midpoint } from "../quantities/interval.ts";
import { amountEnds } from "./amount-ends.ts";
import { drierMetals } from "./drier-metals.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { AmountRecord } from "./schema/amount.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { RecordPath } from "./yaml-record.ts";

interface Placed {
  readonly path: RecordPath;
  readonly complaint: Complaint;
}

/** Figures of a paint that none can have, parts that make no whole, trials and driers beyond reach. */
export function paintFaults(files: ParsedFiles, tables: Tables): Diagnostic[] {
  return [...files.colours.values()].flatMap(({ record, yaml }) =>
    [
      ...nameFaults(record, files, tables),
      ...reachFaults(record, tables),
      ...sumFaults(record),
      ...trialFaults(record),
      ...additionFaults(record, files, tables),
    ].map(({ path, complaint }): Diagnostic => ({ ...complaint, place: yaml.place(path) })),
  );
}

function nameFaults(
  { name, pigments }: ColourRecord,
  files: ParsedFiles,
  { traditionalNames }: Tables,
): Placed[] {
  const complaint = nameComplaint(
    name,
    pigments.map(({ pigment }) => files.pigments.get(pigment)?.record.colourIndexName),
    traditionalNames,
  );
  return complaint === undefined ? [] : [{ path: ["name"], complaint }];
}

const REACHED = [
  "oilIndexGPer100g",
  "gloss60",
  "finenessOfGrindUm",
] as const satisfies readonly ReachedFigure[];

function reachFaults(record: ColourRecord, { reaches }: Tables): Placed[] {
  return REACHED.flatMap((field) => {
    const found = amountEnds(record[field], [field]).flatMap(({ value, path }): Placed[] => {
      const complaint = reachComplaint(field, value, reaches);
      return complaint === undefined ? [] : [{ path, complaint }];
    });
    return found.slice(0, 1);
  });
}

function sumFaults({ pigments }: ColourRecord): Placed[] {
  const complaint = partsComplaint(pigments.map(({ parts, paintParts = parts }) => paintParts));
  return complaint === undefined ? [] : [{ path: ["pigments"], complaint }];
}

function trialFaults({ dryingTrials = [] }: ColourRecord): Placed[] {
  const one = (amount: AmountRecord | undefined): number | undefined =>
    amount === undefined ? undefined : typeof amount === "number" ? amount : midpoint(amount.value);
  return dryingTrials.flatMap(
    ({ touchDryDays, throughDryDays, filmThicknessUm, temperatureC, humidityPercent }, i) => [
      ...humidityFaults(one(humidityPercent), ["dryingTrials", i, "humidityPercent"]),
      ...trialComplaints({
        touchDryDays: typeof touchDryDays === "number" ? touchDryDays : touchDryDays.value,
        throughDryDays:
          throughDryDays === undefined || typeof throughDryDays === "number"
            ? throughDryDays
            : throughDryDays.value,
        filmThicknessUm: one(filmThicknessUm),
        temperatureC: one(temperatureC),
        humidityPercent: one(humidityPercent),
      }).map(({ field, ...complaint }): Placed => ({
        complaint,
        path: ["dryingTrials", i, ...(field === undefined ? [] : [field])],
      })),
    ],
  );
}

/** A room so dry that its humidity was most likely written as a fraction. */
function humidityFaults(percent: number | undefined, path: RecordPath): Placed[] {
  if (percent === undefined || percent > 1) return [];
  return [
    {
      path,
      complaint: {
        severity: "error",
        rule: "records/humidity",
        message: `The humidity is ${percent} %, and no room is so dry`,
        actual: `${percent} %`,
        expected: "a relative humidity in percent, such as 55",
        ...(percent > 0
          ? { hint: `${Number((100 * percent).toPrecision(3))} %, if it was given as a fraction` }
          : {}),
      },
    },
  ];
}

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
function additionFaults(
  { additions = [] }: ColourRecord,
  { vehicles }: ParsedFiles,
  { driers }: Tables,
): Placed[] {
  return additions.flatMap(({ vehicle, percentOfOil }, i): Placed[] => {
    const twice = additions.findIndex((other) => other.vehicle === vehicle) < i;
    const drier = vehicles.get(vehicle)?.record;
    const overdosed = (drier === undefined ? [] : drierMetals(drier))
      .map(({ metal, percent = 0 }) => ({
        metal,
        onOil: Number(((percentOfOil * percent) / 100).toPrecision(3)),
      }))
      .find(({ metal, onOil }) => onOil > doseReach(metal, driers));
    return [
      ...(twice
        ? [
            {
              path: ["additions", i, "vehicle"],
              complaint: {
                severity: "error" as const,
                rule: "records/duplicate" as const,
                message: `${vehicle} is added twice`,
                actual: vehicle,
                expected: "each addition once",
              },
            },
          ]
        : []),
      ...(overdosed === undefined
        ? []
        : [
            {
              path: ["additions", i, "percentOfOil"],
              complaint: {
                severity: "error" as const,
                rule: "drying/drier-reach" as const,
                message: `The drier's ${overdosed.metal} comes to ${overdosed.onOil} % of the oil, and more than ${doseReach(overdosed.metal, driers)} % of it does not occur`,
                actual: `${overdosed.onOil} %`,
                expected: `at most ${doseReach(overdosed.metal, driers)} %`,
                hint: "the record of the drier gives the metal in it, percentOfOil the drier on the oil",
                source: "memory-drying",
              },
            },
          ]),
    ];
  });
}
