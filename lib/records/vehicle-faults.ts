import { DRIER_METALS } from "../drying/added-drier.ts";
import { namedMaterials } from "../knowledge/material-names.ts";
import { isOneOf } from "../quantities/members.ts";
import { amountEnds } from "./amount-ends.ts";
import { drierMetals } from "./drier-metals.ts";
import { errorAt, fractionHint, warningAt } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";

/** Densities [g/cm3] that oils, mediums, driers and thinners reach. Memory of the trade. */
const VEHICLE_DENSITY = [0.6, 1.4] as const;
/** Of fatty drying oils, stand oils too. Memory of the trade, wide. */
const OIL_DENSITY = [0.88, 1] as const;

/** A density that no vehicle has, or that a vehicle may have and no oil has. */
export const densityFaults: OwnRule<VehicleRecord> = function* ({ record, yaml }) {
  const found = amountEnds(record.densityGPerCm3, ["densityGPerCm3"]);
  const [least, most] = VEHICLE_DENSITY;
  const isVehicles = ({ value }: (typeof found)[number]): boolean =>
    value >= least && value <= most;
  const beyond = found.find((end) => !isVehicles(end));
  if (beyond !== undefined)
    yield errorAt(yaml.place(beyond.path), "records/vehicle-density", {
      message: `The density of this vehicle is ${beyond.value} g/cm3, and vehicles lie between ${least} and ${most} g/cm3`,
      actual: String(beyond.value),
      expected: `${least} to ${most} g/cm3`,
      hint:
        beyond.value >= 1000 * least && beyond.value <= 1000 * most
          ? `${beyond.value / 1000} g/cm3, if it was given in kg/m3`
          : undefined,
    });
  const [light, heavy] = OIL_DENSITY;
  const odd = found.find((end) => isVehicles(end) && !(end.value >= light && end.value <= heavy));
  if (record.kind === "oil" && odd !== undefined)
    yield warningAt(yaml.place(odd.path), "records/vehicle-density", {
      message: `The density of this oil is ${odd.value} g/cm3, and drying oils lie between ${light} and ${heavy} g/cm3`,
      actual: `${odd.value} g/cm3`,
      expected: `${light} to ${heavy} g/cm3`,
      hint: "two digits exchanged, or is it a medium?",
    });
};

/** An oil that does not say which it is, or whose name speaks of another: days to dry and yellowing go by the key. */
export const oilFaults: OwnRule<VehicleRecord> = function* (
  { record: { name, kind, oil }, yaml },
  { knowledge: { tables } },
) {
  const named = namedMaterials(name, "oil", tables.materialNames);
  const [only] = named;
  if (oil === undefined) {
    // A name of two oils, or of none, may well be all that anybody knows.
    if (kind !== "oil" || only === undefined || named.length > 1) return;
    yield warningAt(yaml.place(["kind"]), "records/oil-name", {
      message: `${name} is an oil, and its record does not say which: how it dries and yellows is not told`,
      actual: "no oil",
      expected: `oil: ${only}`,
    });
    return;
  }
  const own = oil.split(" ").at(-1) ?? oil;
  if (only === undefined || named.includes(own)) return;
  yield warningAt(yaml.place(["oil"]), "records/oil-name", {
    message: `${name} is called after ${only}, and its oil says ${oil}: how it dries and yellows goes by that`,
    actual: oil,
    expected: only,
  });
};

/** Metal in a drier as sold [%] below which the figure was most likely a fraction. Common practice. */
export const LEAST_DRIER_METAL_PERCENT = 0.5;
/** Past which no drier goes [%]: lead, the most, up to 36. Common practice. */
const MOST_DRIER_METAL_PERCENT = 40;

/** A drier that dries nothing, or that holds more metal than any. */
export const drierFaults: OwnRule<VehicleRecord> = function* ({ record, yaml }) {
  if (record.kind !== "drier") return;
  if (drierMetals(record).length === 0)
    yield warningAt(yaml.place(["kind"]), "records/drier-metal", {
      message: `${record.name} names no metal that dries: days to dry are worked out as if no drier were in the paint`,
      actual: (record.metals ?? []).map(({ metal }) => metal).join(", ") || "no metals",
      expected: `metals, with one of ${DRIER_METALS.join(", ")}`,
      hint: "of a metal that is not among them only a drying trial tells what it does",
    });
  for (const [i, { metal, percent }] of (record.metals ?? []).entries())
    if (percent === undefined && isOneOf(DRIER_METALS, metal))
      yield warningAt(yaml.place(["metals", i]), "records/drier-metal", {
        message: `How much ${metal} is in ${record.name} is not told: days to dry are worked out as if none were`,
        actual: "no percent",
        expected: "the metal's share in percent, as its data sheet gives it",
      });
    else if (percent !== undefined && percent < LEAST_DRIER_METAL_PERCENT)
      yield warningAt(yaml.place(["metals", i, "percent"]), "records/drier-metal", {
        message: `A drier of ${percent} % metal hardly dries: driers are sold with ${LEAST_DRIER_METAL_PERCENT} % or more`,
        actual: `${percent} %`,
        expected: `${LEAST_DRIER_METAL_PERCENT} % or more`,
        hint: fractionHint(percent),
      });
    else if (percent !== undefined && percent >= MOST_DRIER_METAL_PERCENT)
      yield warningAt(yaml.place(["metals", i, "percent"]), "records/drier-metal", {
        message: `No drier is sold with ${percent} % of one metal: all have less than ${MOST_DRIER_METAL_PERCENT} %`,
        actual: `${percent} %`,
        expected: `less than ${MOST_DRIER_METAL_PERCENT} %`,
        hint: `${percent / 10} %, if the decimal point slipped`,
      });
};
