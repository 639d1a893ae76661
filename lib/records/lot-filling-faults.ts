import { isPackedSize, isShort, packedMasses } from "../formulation/packed-quantity.ts";
import { takenVolumeMl } from "../formulation/container-fill.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { warningAt, type Faults } from "./fault.ts";
import { PAINT_DENSITY } from "./lot-weights.ts";
import type { Parsed } from "./parsed-record.ts";
import type { LotRecord } from "./schema/lot.ts";

/** A tube is filled to a little more than stands on it; past this share of that [1] it holds no more. Our own limit. */
const MOST_FILLED = 1.12;

/** Mass of an empty tube, jar or tin beside the paint in it [1]: foil is light, and glass weighs as much as a light paint. Our own limits. */
const TARE_OF_PAINT = [0.02, 1.5] as const;

/** What the tubes of a lot were weighed to hold, beside what stands on them. */
export function* lotFillingFaults({
  record: { densityGPerCm3, tubes = [] },
  yaml,
}: Parsed<LotRecord>): Faults {
  const [leastDensity, mostDensity] = PAINT_DENSITY;
  // A density that no paint has is told by itself.
  if (
    densityGPerCm3 === undefined ||
    !(densityGPerCm3 >= leastDensity && densityGPerCm3 <= mostDensity)
  )
    return;
  for (const [i, { ml, massG, tareG }] of tubes.entries()) {
    if (tareG !== undefined)
      yield* tareFaults(tareG, ml * densityGPerCm3, yaml.place(["tubes", i, "tareG"]));
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

/** An empty tube, jar or tin beside the paint that it takes [g]. */
function* tareFaults(tareG: number, paintG: number, place: Diagnostic["place"]): Faults {
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
