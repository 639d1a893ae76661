import { DRIER_METALS } from "../drying/added-drier.ts";
import { isOneOf } from "../quantities/members.ts";
import { amountEnds } from "./amount-ends.ts";
import { drierMetals } from "./drier-metals.ts";
import { errorAt, fractionHint, warningAt, type Faults } from "./fault.ts";
import type { Parsed } from "./parsed-record.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";

/** Densities that no vehicle or no oil has, oils called after another plant, driers that dry nothing. */
export function* vehicleFaults(vehicle: Parsed<VehicleRecord>): Faults {
  yield* densityFaults(vehicle);
  yield* oilDensityFaults(vehicle);
  yield* oilFaults(vehicle);
  yield* metalFaults(vehicle);
}

/** Densities [g/cm3] that oils, mediums, driers and thinners reach. Memory of the trade. */
const VEHICLE_DENSITY = [0.6, 1.4] as const;

function* densityFaults({ record, yaml }: Parsed<VehicleRecord>): Faults {
  const [least, most] = VEHICLE_DENSITY;
  const end = amountEnds(record.densityGPerCm3, ["densityGPerCm3"]).find(
    ({ value }) => !(value >= least && value <= most),
  );
  if (end === undefined) return;
  yield errorAt(yaml.place(end.path), "records/vehicle-density", {
    message: `The density of this vehicle is ${end.value} g/cm3, and vehicles lie between ${least} and ${most} g/cm3`,
    actual: String(end.value),
    expected: `${least} to ${most} g/cm3`,
    hint:
      end.value >= 1000 * least && end.value <= 1000 * most
        ? `${end.value / 1000} g/cm3, if it was given in kg/m3`
        : undefined,
  });
}

/** Densities [g/cm3] of fatty drying oils, stand oils too. Memory of the trade, wide. */
const OIL_DENSITY = [0.88, 1] as const;

/** A density that a vehicle may have, and no oil has. */
function* oilDensityFaults({ record, yaml }: Parsed<VehicleRecord>): Faults {
  const [least, most] = OIL_DENSITY;
  const [vehicleLeast, vehicleMost] = VEHICLE_DENSITY;
  const end = amountEnds(record.densityGPerCm3, ["densityGPerCm3"]).find(
    ({ value }) =>
      value >= vehicleLeast && value <= vehicleMost && !(value >= least && value <= most),
  );
  if (record.kind !== "oil" || end === undefined) return;
  yield warningAt(yaml.place(end.path), "records/vehicle-density", {
    message: `The density of this oil is ${end.value} g/cm3, and drying oils lie between ${least} and ${most} g/cm3`,
    actual: `${end.value} g/cm3`,
    expected: `${least} to ${most} g/cm3`,
    hint: "two digits exchanged, or is it a medium?",
  });
}

/** What oils are called in names: parts of words that no other oil's name has. */
const OIL_NAMES: Readonly<Record<string, RegExp>> = {
  linseed: /linseed|flax|\blein|\blin\b|\blino\b|linaza/i,
  walnut: /walnut|walnuss|noix|nuez|nogal/i,
  safflower: /safflower|saflor|f\u00e4rberdistel|distel\u00f6l|carthame|c\u00e1rtamo/i,
  poppy: /poppy|mohn|\u0153illette|oeillette|adormidera/i,
};

/** An oil that does not say which it is, or whose name speaks of another: days to dry and yellowing go by the key. */
function* oilFaults({ record: { name, kind, oil }, yaml }: Parsed<VehicleRecord>): Faults {
  const named = Object.keys(OIL_NAMES).filter((one) => OIL_NAMES[one]?.test(name) === true);
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
}

/** Metal in a drier as sold [%] below which the figure was most likely a fraction. Common practice. */
export const LEAST_DRIER_METAL_PERCENT = 0.5;

function* metalFaults({ record, yaml }: Parsed<VehicleRecord>): Faults {
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
}
