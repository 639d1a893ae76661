import { keysOf } from "../quantities/members.ts";
import type { Complaint } from "../diagnostics/complaint.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { originComplaint } from "../formulation/black-origin.ts";
import { handbookEstimate, type HandbookRow } from "../formulation/handbook-estimate.ts";
import {
  bulkDensityComplaints,
  handbookComplaint,
  reachComplaint,
  type ReachedFigure,
} from "../formulation/plausibility.ts";
import { specialEffect } from "../optics/special-effect.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { nameComplaint } from "../permanence/traditional-names.ts";
import { amountEnds } from "./amount-ends.ts";
import { errorAt, faultAt, firstFault, noteAt, warningAt, type Faults } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { AmountRecord } from "./schema/amount.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

type Field =
  "densityGPerCm3" | "oilAbsorptionGPer100g" | "bulkDensityLooseGPerMl" | "bulkDensityTappedGPerMl";

const REACHES: Readonly<Record<Field, ReachedFigure>> = {
  densityGPerCm3: "densityGPerCm3",
  oilAbsorptionGPer100g: "oilAbsorptionGPer100g",
  bulkDensityLooseGPerMl: "bulkDensityGPerMl",
  bulkDensityTappedGPerMl: "bulkDensityGPerMl",
};

type Rule = OwnRule<PigmentRecord>;

/** A delivery's rub-out may lie so many times [1] from the pigment's own. Our own limit, wide. */
const DELIVERIES_WITHIN = 1.6;

/** Deliveries of one number, and one whose rub-out is that of another powder. */
const deliveryFaults: Rule = function* ({
  record: { supplierLots = [], oilAbsorptionGPer100g },
  yaml,
}) {
  const [least, most = least] = amountEnds(oilAbsorptionGPer100g, []).map(({ value }) => value);
  for (const [i, { number, oilAbsorptionGPer100g: own }] of supplierLots.entries()) {
    if (supplierLots.findIndex((one) => one.number === number) < i)
      yield errorAt(yaml.place(["supplierLots", i, "number"]), "records/duplicate", {
        message: `The delivery ${number} stands above already, and lots that name it could mean either`,
        actual: number,
        expected: "a number that no other delivery has",
      });
    if (least === undefined || most === undefined) continue;
    if (own >= least / DELIVERIES_WITHIN && own <= most * DELIVERIES_WITHIN) continue;
    const usual = least === most ? String(least) : `${least} to ${most}`;
    yield warningAt(
      yaml.place(["supplierLots", i, "oilAbsorptionGPer100g"]),
      "records/delivery-rub-out",
      {
        message: `The delivery ${number} was rubbed out with ${own} g/100 g, and this pigment takes ${usual} g/100 g: batch sheets of lots made of it go by that`,
        actual: `${own} g/100 g`,
        expected: `about ${usual} g/100 g`,
        hint: "a decimal point, two digits exchanged, or another pigment's figure?",
      },
    );
  }
};

/** Each figure against the reach of any pigment, and where that passes against the handbook's range for this one. */
const reachFaults: Rule = function* ({ record, yaml }, { knowledge }) {
  for (const field of keysOf(REACHES))
    yield* firstFault(
      yaml,
      record[field],
      [field],
      (value) =>
        reachComplaint(REACHES[field], value, knowledge.tables.reaches) ??
        againstHandbook(field, value, record, knowledge),
    );
};

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
const bulkFaults: Rule = function* ({ record, yaml }) {
  const { bulkDensityLooseGPerMl, bulkDensityTappedGPerMl, densityGPerCm3 } = record;
  const least = (amount: AmountRecord | undefined): number | undefined =>
    amountEnds(amount, [])[0]?.value;
  const most = (amount: AmountRecord | undefined): number | undefined =>
    amountEnds(amount, []).at(-1)?.value;
  const [loose, tapped] = [least(bulkDensityLooseGPerMl), most(bulkDensityTappedGPerMl)];
  for (const { about, ...complaint } of [
    ...bulkDensityComplaints({ looseGPerMl: loose, tappedGPerMl: tapped }),
    ...bulkDensityComplaints({
      looseGPerMl: loose,
      tappedGPerMl: least(bulkDensityTappedGPerMl),
      densityGPerCm3: most(densityGPerCm3),
    }).filter((one) => one.about === "bulk density"),
  ]) {
    const isOfLoose = about === "loose bulk density" || bulkDensityTappedGPerMl === undefined;
    yield faultAt(
      yaml.place([isOfLoose ? "bulkDensityLooseGPerMl" : "bulkDensityTappedGPerMl"]),
      complaint,
    );
  }
};

/** Refractive index against air under which no mineral or organic solid lies, and that of a drying oil. Memory of optics. */
const LEAST_INDEX = 1.3;
const INDEX_OF_OIL = 1.48;

/** An index that is one against oil, as theory takes it, and not against air. */
const indexFaults: Rule = function* ({ record: { particle }, yaml }) {
  const [end] = amountEnds(particle?.refractiveIndex, ["particle", "refractiveIndex"]);
  if (end === undefined || end.value >= LEAST_INDEX) return;
  yield warningAt(yaml.place(end.path), "records/refractive-index", {
    message: `A refractive index of ${end.value} is lower than that of any pigment, ${LEAST_INDEX} and more against air`,
    actual: String(end.value),
    expected: `${LEAST_INDEX} or more`,
    hint: `${(end.value * INDEX_OF_OIL).toFixed(2)}, if it was given against oil`,
  });
};

const originFaults: Rule = function* (
  { record: { colourIndexName, origin }, yaml },
  { knowledge },
) {
  if (colourIndexName === undefined || origin === undefined) return;
  const complaint = originComplaint(colourIndexName, origin, knowledge.tables.blackOrigins);
  if (complaint !== undefined) yield faultAt(yaml.place(["origin"]), complaint);
};

/** A Colour Index name that no table knows: rare, or a slip of the pen. */
const nameFaults: Rule = function* ({ record: { colourIndexName }, yaml }, { knowledge }) {
  if (
    colourIndexName === undefined ||
    knowledge.pigment(colourIndexName).identity !== undefined ||
    // Of metals no table is needed to know what they are: nothing is estimated of flakes.
    specialEffect(undefined, colourIndexName) === "metallic"
  )
    return;
  yield warningAt(yaml.place(["colourIndexName"]), "records/unknown-colour-index-name", {
    message: `Nothing is known here of a pigment by the Colour Index name ${colourIndexName}`,
    actual: colourIndexName,
    hint:
      nearestHint(colourIndexName, knowledge.names.filter(isNumberedAs(colourIndexName))) ??
      nearestHint(colourIndexName, knowledge.names),
  });
};

/** A suffix that no table has, to be looked at again: all that is told of it is its parent's. */
export function* suffixNotes({ pigments }: ParsedFiles, { names }: Knowledge): Faults {
  for (const { record, yaml } of pigments.values()) {
    const { colourIndexName = "" } = record;
    const [parent = "", suffix] = colourIndexName.split(":");
    if (suffix === undefined || names.includes(colourIndexName) || !names.includes(parent))
      continue;
    const known = names.filter((name) => name.startsWith(`${parent}:`));
    yield noteAt(yaml.place(["colourIndexName"]), "records/colour-index-suffix", {
      message: `Nothing is known here of ${colourIndexName} by itself: what is told of it is that of ${parent}`,
      actual: colourIndexName,
      expected: [parent, ...known].join(" | "),
      ...(known.length > 0 && { hint: `known with a suffix: ${known.join(", ")}` }),
    });
  }
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

/** A name of the trade that another pigment bears by right. */
const calledFaults: Rule = function* ({ record: { name, colourIndexName }, yaml }, { knowledge }) {
  // A Colour Index name that no table knows is told by itself.
  if (colourIndexName === undefined || knowledge.pigment(colourIndexName).identity === undefined)
    return;
  const complaint = nameComplaint(name, [colourIndexName], knowledge.tables.traditionalNames);
  if (complaint === undefined) return;
  yield faultAt(yaml.place(["name"]), {
    ...complaint,
    message: `${name} is the name of another pigment than ${colourIndexName}`,
    actual: `${name}, ${colourIndexName}`,
    hint: undefined,
  });
};

/** The round of hues, each beside its neighbours: "red" of a violet may be meant, and "blue" of a red is not. */
const ROUND: readonly string[] = ["red", "orange", "yellow", "green", "blue", "violet"];
/** Families without a hue of their own. */
const NEUTRAL: readonly string[] = ["white", "black"];
/** Iron oxides run from yellow to violet and to black, and there are green earths; no earth is blue or white, since chalk and clays are extenders. */
const EARTHS: readonly string[] = ["earth", "brown"];
const NO_EARTHS: readonly string[] = ["blue", "white"];

/** A family that the letters of the Colour Index name rule out: lists, neighbours and the check of the masstone go by it. */
const familyFaults: Rule = function* (
  { record: { family, colourIndexName }, yaml },
  { knowledge },
) {
  const known = knowledge.pigment(colourIndexName).family;
  if (family === undefined || known === undefined || !areOpposed(family, known)) return;
  yield warningAt(yaml.place(["family"]), "records/family", {
    message: `The family is ${family}, and ${colourIndexName ?? ""} is among the ${known} pigments`,
    actual: family,
    expected: known,
    hint: "a record that was copied?",
  });
};

function areOpposed(one: string, other: string): boolean {
  if ([one, other].some((of) => EARTHS.includes(of)))
    return [one, other].some((of) => NO_EARTHS.includes(of));
  const [at, beside] = [ROUND.indexOf(one), ROUND.indexOf(other)];
  if (at >= 0 && beside >= 0) {
    const steps = Math.abs(at - beside);
    return Math.min(steps, ROUND.length - steps) > 1;
  }
  return (
    one !== other &&
    [one, other].some((of) => NEUTRAL.includes(of)) &&
    [one, other].every((of) => NEUTRAL.includes(of) || ROUND.includes(of))
  );
}

/** Umber or sienna told of a pigment that is neither. */
const earthFaults: Rule = function* ({ record: { earth, colourIndexName }, yaml }) {
  if (earth === undefined || colourIndexName === undefined || colourIndexName === "PBr 7") return;
  yield warningAt(yaml.place(["earth"]), "records/earth", {
    message: `${earth === "umber" ? "An umber" : "A sienna"} is PBr 7, and this pigment is ${colourIndexName}: nothing is worked out from it`,
    actual: earth,
    expected: "earth beside PBr 7 alone",
  });
};

/** Figures of a dry pigment that none can have, or that its kind is not known to have; an origin or a name that speaks of another pigment. */
export const PIGMENT_RULES: readonly Rule[] = [
  reachFaults,
  bulkFaults,
  indexFaults,
  originFaults,
  nameFaults,
  calledFaults,
  familyFaults,
  earthFaults,
  deliveryFaults,
];
