import { keysOf } from "../quantities/members.ts";
import type { Complaint } from "../diagnostics/complaint.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { originComplaint } from "../formulation/black-origin.ts";
import { handbookEstimate, type HandbookRow } from "../formulation/handbook-estimate.ts";
import {
  bulkDensityComplaints,
  handbookComplaint,
  reachComplaint,
  type ReachedFigure,
} from "../formulation/plausibility.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { amountEnds } from "./amount-ends.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { AmountRecord } from "./schema/amount.ts";
import type { PigmentRecord } from "./schema/pigment.ts";
import type { RecordPath } from "./yaml-record.ts";

type Field =
  "densityGPerCm3" | "oilAbsorptionGPer100g" | "bulkDensityLooseGPerMl" | "bulkDensityTappedGPerMl";

const REACHES: Readonly<Record<Field, ReachedFigure>> = {
  densityGPerCm3: "densityGPerCm3",
  oilAbsorptionGPer100g: "oilAbsorptionGPer100g",
  bulkDensityLooseGPerMl: "bulkDensityGPerMl",
  bulkDensityTappedGPerMl: "bulkDensityGPerMl",
};

/** Figures of a dry pigment that none can have, or that its kind is not known to have; an origin that speaks of another pigment. */
export function pigmentFaults(files: ParsedFiles, knowledge: Knowledge): Diagnostic[] {
  return [...files.pigments.values()].flatMap((pigment) => {
    const place = ({ path, complaint }: Placed): Diagnostic => ({
      ...complaint,
      place: pigment.yaml.place(path),
    });
    return [
      ...reachFaults(pigment, knowledge),
      ...bulkFaults(pigment.record),
      ...originFaults(pigment.record, knowledge),
      ...nameFaults(pigment.record, knowledge),
    ].map(place);
  });
}

interface Placed {
  readonly path: RecordPath;
  readonly complaint: Complaint;
}

/** Each figure against the reach of any pigment, and where that passes against the handbook's range for this one. */
function reachFaults({ record }: Parsed<PigmentRecord>, knowledge: Knowledge): Placed[] {
  return keysOf(REACHES).flatMap((field) =>
    firstFault(
      record[field],
      [field],
      (value) =>
        reachComplaint(REACHES[field], value, knowledge.tables.reaches) ??
        againstHandbook(field, value, record, knowledge),
    ),
  );
}

/** One complaint an amount: its other end says no more. */
function firstFault(
  amount: AmountRecord | undefined,
  path: RecordPath,
  complaintOf: (value: number) => Complaint | undefined,
): Placed[] {
  for (const end of amountEnds(amount, path)) {
    const complaint = complaintOf(end.value);
    if (complaint !== undefined) return [{ path: end.path, complaint }];
  }
  return [];
}

function againstHandbook(
  field: Field,
  value: number,
  { name, colourIndexName }: PigmentRecord,
  knowledge: Knowledge,
): Complaint | undefined {
  if (
    colourIndexName === undefined ||
    (field !== "densityGPerCm3" && field !== "oilAbsorptionGPer100g")
  )
    return undefined;
  const { densities, oilAbsorptions } = knowledge.pigment(colourIndexName);
  const [rows, figure]: [readonly HandbookRow[], "density" | "oilAbsorption"] =
    field === "densityGPerCm3" ? [densities, "density"] : [oilAbsorptions, "oilAbsorption"];
  const handbook = handbookEstimate(rows, { colourIndexName, kind: name.toLowerCase() });
  return handbook === undefined
    ? undefined
    : handbookComplaint(figure, value, handbook.estimate, colourIndexName);
}

/** Poured, settled and solid in their order; of an estimate the end that leaves most room. */
function bulkFaults({
  bulkDensityLooseGPerMl,
  bulkDensityTappedGPerMl,
  densityGPerCm3,
}: PigmentRecord): Placed[] {
  const least = (amount: AmountRecord | undefined): number | undefined =>
    amountEnds(amount, [])[0]?.value;
  const most = (amount: AmountRecord | undefined): number | undefined =>
    amountEnds(amount, []).at(-1)?.value;
  const [loose, tapped] = [least(bulkDensityLooseGPerMl), most(bulkDensityTappedGPerMl)];
  return [
    ...bulkDensityComplaints({ looseGPerMl: loose, tappedGPerMl: tapped }),
    ...bulkDensityComplaints({
      looseGPerMl: loose,
      tappedGPerMl: least(bulkDensityTappedGPerMl),
      densityGPerCm3: most(densityGPerCm3),
    }).filter(({ about }) => about === "bulk density"),
  ].map(({ about, ...complaint }) => ({
    complaint,
    path: [
      about === "loose bulk density" || bulkDensityTappedGPerMl === undefined
        ? "bulkDensityLooseGPerMl"
        : "bulkDensityTappedGPerMl",
    ],
  }));
}

function originFaults({ colourIndexName, origin }: PigmentRecord, { tables }: Knowledge): Placed[] {
  const complaint =
    colourIndexName === undefined || origin === undefined
      ? undefined
      : originComplaint(colourIndexName, origin, tables.blackOrigins);
  return complaint === undefined ? [] : [{ path: ["origin"], complaint }];
}

/** A Colour Index name that no table knows: rare, or a slip of the pen. */
function nameFaults({ colourIndexName }: PigmentRecord, knowledge: Knowledge): Placed[] {
  if (colourIndexName === undefined || knowledge.pigment(colourIndexName).identity !== undefined)
    return [];
  const nearest =
    nearestWord(colourIndexName, knowledge.names.filter(isNumberedAs(colourIndexName))) ??
    nearestWord(colourIndexName, knowledge.names);
  return [
    {
      path: ["colourIndexName"],
      complaint: {
        severity: "warning",
        rule: "records/unknown-colour-index-name",
        message: `Nothing is known here of a pigment by the Colour Index name ${colourIndexName}`,
        actual: colourIndexName,
        ...(nearest === undefined ? {} : { hint: `nearest: ${nearest}` }),
      },
    },
  ];
}

/** Whether a name has the same number, and the same letters but for some that one of the two leaves out: PB 6 is PBk 6. */
function isNumberedAs(name: string): (other: string) => boolean {
  const [letters = "", number] = name.split(" ");
  return (other) => {
    const [otherLetters = "", otherNumber] = other.split(" ");
    return (
      otherNumber === number &&
      (letters.startsWith(otherLetters) || otherLetters.startsWith(letters))
    );
  };
}
