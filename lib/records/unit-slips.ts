import { amountEnds } from "./amount-ends.ts";
import { faultAt, noteAt, warningAt, type Faults } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import { filmThicknessFault } from "./film-thickness.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import { statementsOf } from "./schema/hazard-form.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";

/** Grain [um] from which on few pigments are ground so coarse: azurite, malachite, smalt. Common practice. */
const COARSE_GRAIN_UM = 20;
/** Grain [um] from which on a powder is fine sand, which no muller makes a paint of. @source practice-formulation */
const SAND_UM = 125;
/** Of flammable liquids, by their statement [degrees C, closed cup]: from and below or up to. @source clp-1272-2008-memory */
const FLASH_POINTS: Readonly<Record<string, readonly [from: number, to: number, words: string]>> = {
  H224: [-Infinity, 23, "below 23 C"],
  H225: [-Infinity, 23, "below 23 C"],
  H226: [23, 60, "23 to 60 C"],
};

/** A film of all drawdowns that is most likely given in another unit. */
export const usualFilmFaults: OwnRule<WorkshopRecord> = function* ({ record, yaml }) {
  const { filmThicknessUm: um } = record;
  const film = um === undefined ? undefined : filmThicknessFault(um);
  if (film !== undefined) yield faultAt(yaml.place(["filmThicknessUm"]), film);
};

/** To be looked at again: a grain so coarse that it most likely was given in nm. */
export function* grainNotes({ pigments }: ParsedFiles): Faults {
  for (const { record, yaml } of pigments.values()) {
    const [least] = amountEnds(record.particle?.sizeUm, ["particle", "sizeUm"]);
    if (least === undefined || least.value < COARSE_GRAIN_UM) continue;
    const isSand = least.value >= SAND_UM;
    yield (isSand ? warningAt : noteAt)(yaml.place(least.path), "records/grain", {
      message: isSand
        ? `A grain of ${least.value} um is that of sand, and no pigment is so coarse`
        : `A grain of ${least.value} um is coarser than all but a few pigments, such as azurite`,
      actual: `${least.value} um`,
      expected: `under ${COARSE_GRAIN_UM} um`,
      hint: `${Number((least.value / 1000).toPrecision(3))} um if it was given in nm`,
    });
  }
}

/** Past this [mm2/s at 40 degrees C] a liquid is no aspiration hazard. @source clp-1272-2008-memory */
const ASPIRED_TO_MM2_PER_S = 20.5;

/** A viscosity that its own statement H304 rules out. */
export const viscosityFaults: OwnRule<VehicleRecord> = function* ({ record, yaml }) {
  const { kinematicViscosityMm2PerS: viscosity } = record;
  if (viscosity === undefined || !(viscosity > ASPIRED_TO_MM2_PER_S)) return;
  if (!statementsOf(record).includes("H304")) return;
  yield warningAt(yaml.place(["kinematicViscosityMm2PerS"]), "records/viscosity", {
    message: `A viscosity of ${viscosity} mm2/s is not that of a liquid with H304, which is ${ASPIRED_TO_MM2_PER_S} mm2/s or less at 40 C`,
    actual: `${viscosity} mm2/s`,
    expected: `${ASPIRED_TO_MM2_PER_S} mm2/s or less, or no H304`,
    hint: viscosity / 100 <= ASPIRED_TO_MM2_PER_S ? "a decimal point lost?" : undefined,
    source: "clp-1272-2008-memory",
  });
};

/** Up to this flash point [degrees C] a liquid is flammable. @source clp-1272-2008-memory */
const FLAMMABLE_TO_C = 60;

/** A flash point that its own hazard statement rules out, or that no statement goes with. */
export const flashFaults: OwnRule<VehicleRecord> = function* ({ record, yaml }) {
  const { flashPointC, hazards } = record;
  const stated = statementsOf(record).find((one) => Object.hasOwn(FLASH_POINTS, one)) ?? "";
  if (stated === "" && hazards !== undefined && flashPointC !== undefined) {
    if (flashPointC > FLAMMABLE_TO_C) return;
    yield warningAt(yaml.place(["hazards"]), "records/flash-point", {
      message: `A liquid with a flash point of ${flashPointC} C is flammable, and its hazards name none of H224, H225 and H226`,
      actual: "no statement on flammability",
      expected: flashPointC < 23 ? "H224 or H225" : "H226",
      hint: "ask its supplier for section 2 of a newer safety data sheet",
      source: "clp-1272-2008-memory",
    });
    return;
  }
  const [from, to, words] = FLASH_POINTS[stated] ?? [-Infinity, Infinity, ""];
  if (flashPointC === undefined || (flashPointC >= from && flashPointC <= to)) return;
  const celsius = ((flashPointC - 32) * 5) / 9;
  yield warningAt(yaml.place(["flashPointC"]), "records/flash-point", {
    message: `A flash point of ${flashPointC} C is not that of a liquid with ${stated}, which is ${words}`,
    actual: `${flashPointC} C`,
    expected: words,
    hint:
      celsius >= from && celsius <= to
        ? `${Math.round(celsius)} C if it was given in degrees Fahrenheit`
        : undefined,
    source: "clp-1272-2008-memory",
  });
};
