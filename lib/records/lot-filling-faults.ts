import { isPackedSize, isShort, packedMasses } from "../formulation/packed-quantity.ts";
import { takenVolumeMl } from "../formulation/container-fill.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { warningAt, type Faults } from "./fault.ts";
import { PAINT_DENSITY } from "./lot-weights.ts";
import { paintDensityGPerCm3 } from "../formulation/paint-volume.ts";
import { amountEnds } from "./amount-ends.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { LotRecord } from "./schema/lot.ts";

/** A tube is filled to a little more than stands on it; past this share of that [1] it holds no more. Our own limit. */
const MOST_FILLED = 1.12;

/** Mass of an empty tube, jar or tin beside the paint in it [1]: foil is light, and glass weighs as much as a light paint. Our own limits. */
const TARE_OF_PAINT = [0.02, 1.5] as const;

/** Where a density follows from the weights alone, a tube holds so much of what stands on it [1]: air, and densities of pigments, move it by less. Our own limits. */
const FILLED_BY_WEIGHTS = [0.8, 1.25] as const;

/** What the tubes of a lot were weighed to hold, beside what stands on them. */
export function* lotFillingFaults(lot: Parsed<LotRecord>, files: ParsedFiles): Faults {
  const { densityGPerCm3: measured } = lot.record;
  const [least, most] = PAINT_DENSITY;
  const byWeights = densityByWeights(lot.record, files);
  if (measured === undefined) {
    if (byWeights !== undefined) yield* tareFaults(lot, byWeights);
    yield* fillingByWeights(lot, byWeights);
  }
  // A density that no paint has is told by itself.
  else if (measured >= least && measured <= most) {
    yield* tareFaults(lot, measured);
    yield* fillingByDensity(lot, measured);
  }
}

function* fillingByDensity(
  { record: { tubes = [] }, yaml }: Parsed<LotRecord>,
  densityGPerCm3: number,
): Faults {
  for (const [i, { ml, massG, tareG }] of tubes.entries()) {
    if (massG === undefined) continue;
    const heldMl = takenVolumeMl(massG, densityGPerCm3);
    const told = `The tubes of ${ml} ml hold ${massG} g, which at ${densityGPerCm3} g/cm3 are ${heldMl.toPrecision(3)} ml`;
    const meanG = isPackedSize(ml) ? packedMasses(ml, densityGPerCm3).meanG : ml * densityGPerCm3;
    const place = yaml.place(["tubes", i, "massG"]);
    if (isPackedSize(ml) && isShort(heldMl, ml))
      yield warningAt(place, "records/lot-filling", {
        message: `${told}: less on the mean than stands on them, and so they may not be sold`,
        actual: String(massG),
        expected: `${Number(meanG.toFixed(1))} or more`,
        hint:
          tareG !== undefined && tareG >= meanG && tareG <= meanG * MOST_FILLED
            ? "massG and tareG exchanged?"
            : undefined,
        source: "packed-quantity-76-211-eec",
      });
    if (heldMl > ml * MOST_FILLED)
      yield warningAt(place, "records/lot-filling", {
        message: `${told}: more than such a tube takes`,
        actual: String(massG),
        expected: `about ${Number(meanG.toFixed(1))}`,
        hint: overfilledHint(
          massG,
          tareG,
          (netG, sizeMl) => {
            const volumeMl = takenVolumeMl(netG, densityGPerCm3);
            return volumeMl <= sizeMl * MOST_FILLED && volumeMl >= sizeMl / MOST_FILLED;
          },
          ml,
        ),
      });
  }
}

/** What a tube holds of a lot whose density nobody measured: by what was weighed in, or else by what paints weigh at all. */
function* fillingByWeights(
  { record: { tubes = [] }, yaml }: Parsed<LotRecord>,
  density: number | undefined,
): Faults {
  const [least, most] =
    density === undefined
      ? PAINT_DENSITY
      : ([FILLED_BY_WEIGHTS[0] * density, FILLED_BY_WEIGHTS[1] * density] as const);
  const usual =
    density === undefined
      ? `paints weigh ${PAINT_DENSITY.join(" to ")} g`
      : `what was weighed in comes to ${density.toPrecision(3)} g`;
  const fills = (netG: number, sizeMl: number): boolean =>
    netG >= least * sizeMl && netG <= most * sizeMl;
  for (const [i, { ml, massG, tareG }] of tubes.entries()) {
    if (massG === undefined || fills(massG, ml)) continue;
    yield warningAt(yaml.place(["tubes", i, "massG"]), "records/lot-filling", {
      message: `The tubes of ${ml} ml hold ${massG} g, ${Number((massG / ml).toPrecision(3))} g to the millilitre, and ${usual}`,
      actual: `${massG} g`,
      expected: `${Number((least * ml).toPrecision(3))} to ${Number((most * ml).toPrecision(3))} g`,
      hint:
        massG > most * ml
          ? overfilledHint(massG, tareG, fills, ml)
          : tareG !== undefined && fills(tareG, ml)
            ? "massG and tareG exchanged?"
            : fills(1000 * massG, ml)
              ? `${1000 * massG} g, if it was given in kg`
              : undefined,
    });
  }
}

/** Density that pigments, oil and additions come to by their weights [g/cm3]; nothing where one of them has none, or a range. */
export function densityByWeights(
  { pigments, oil, additions = [] }: LotRecord,
  files: Pick<ParsedFiles, "pigments" | "vehicles">,
): number | undefined {
  const weighed = [
    ...pigments.map(({ pigment, massG }) => ({ massG, of: files.pigments.get(pigment) })),
    ...[...(oil === undefined ? [] : [oil]), ...additions].map(({ vehicle, massG }) => ({
      massG,
      of: files.vehicles.get(vehicle),
    })),
  ].map(({ massG, of }) => ({ massG, ends: amountEnds(of?.record.densityGPerCm3, []) }));
  const parts = weighed.flatMap(({ massG, ends: [one, other] }) =>
    one === undefined || other !== undefined ? [] : [{ massG, densityGPerCm3: one.value }],
  );
  return oil === undefined || parts.length < weighed.length
    ? undefined
    : paintDensityGPerCm3(parts);
}

function* tareFaults({ record, yaml }: Parsed<LotRecord>, densityGPerCm3: number): Faults {
  for (const [i, { ml, tareG }] of (record.tubes ?? []).entries())
    if (tareG !== undefined)
      yield* tareFault(tareG, ml * densityGPerCm3, yaml.place(["tubes", i, "tareG"]));
}

/** An empty tube, jar or tin beside the paint that it takes [g]. */
function* tareFault(tareG: number, paintG: number, place: Diagnostic["place"]): Faults {
  const [least, most] = TARE_OF_PAINT;
  if (tareG >= least * paintG && tareG <= most * paintG) return;
  const slip = [
    { meantG: tareG * 1000, hint: "in kilograms" },
    { meantG: tareG / 10, hint: "with a decimal point lost" },
    { meantG: tareG - paintG, hint: "with the paint in it" },
  ].find(({ meantG }) => meantG >= least * paintG && meantG <= paintG);
  yield warningAt(place, "records/lot-tare", {
    message: `An empty tube of ${tareG} g is ${tareG < paintG ? "hardly anything beside" : "far heavier than"} the ${Number(paintG.toFixed(1))} g of paint that it takes`,
    actual: `${tareG} g`,
    expected: `${Number((least * paintG).toPrecision(2))} to ${Number((most * paintG).toPrecision(2))} g`,
    hint: slip && `${Number(slip.meantG.toPrecision(3))} g, if it was given ${slip.hint}`,
  });
}

/** The slip by which a tube seems to hold more than it takes. @param fits whether so much [g] fills such a size [ml]. */
function overfilledHint(
  massG: number,
  tareG: number | undefined,
  fits: (netG: number, sizeMl: number) => boolean,
  ml: number,
): string | undefined {
  if (fits(massG, 10 * ml)) return `a digit of ${10 * ml} ml lost?`;
  if (tareG === undefined)
    return "massG is what is in the tube; was the empty tube weighed with it? its own mass goes into tareG";
  return massG > tareG && fits(massG - tareG, ml)
    ? `${Number((massG - tareG).toFixed(1))} g without the empty tube`
    : undefined;
}
