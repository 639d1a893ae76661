import { oilHeldBack, type HoldBackRuling } from "../formulation/oil-held-back.ts";
import { workingOilContradiction } from "../formulation/working-oil.ts";
import { isKnown, knownValue } from "../quantities/figure.ts";
import { midpoint } from "../quantities/interval.ts";
import type { Lot, Records } from "../records/records.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** A delivery that goes into a lot and was rubbed out by itself. */
interface RubbedOut {
  readonly pigment: string;
  readonly number: string;
  readonly oilAbsorptionGPer100g: number;
}

/** What a lot's own deliveries of pigment change of its batch sheet. */
interface OilOfDeliveries {
  readonly rubbedOut: readonly RubbedOut[];
  readonly held: HoldBackRuling;
  readonly contradiction: ReturnType<typeof workingOilContradiction>;
}

/**
 * Oil to hold back by the rub-out figures of the deliveries that a lot names, weighed by the mass
 * that goes in of each; of a pigment whose delivery was not rubbed out, by that of its record.
 * @returns undefined where no delivery was, or where one of several pigments has no single figure.
 * @source asbeck-van-loo-1949 : each grain brings its own coat of oil.
 */
export function oilOfDeliveries(
  { record }: Lot,
  { pigments, oil }: Sheet,
  { pigments: known }: Pick<Records, "pigments">,
): OilOfDeliveries | undefined {
  if (!isKnown(oil.oilIndexGPer100g)) return undefined;
  const parts = record.pigments.map(({ pigment, massG, supplierLot }) => {
    const delivery = known
      .get(pigment)
      ?.record.supplierLots?.find(({ number }) => number === supplierLot);
    const figure = pigments.find(({ slug }) => slug === pigment)?.oilAbsorptionGPer100g;
    const absorption = delivery?.oilAbsorptionGPer100g ?? knownValue(figure);
    return { pigment, massG, delivery, absorption };
  });
  const rubbedOut = parts.flatMap(({ pigment, delivery }) =>
    delivery === undefined ? [] : [{ pigment, ...delivery }],
  );
  const massG = parts.reduce((sum, part) => sum + part.massG, 0);
  const absorption = parts.reduce(
    (sum, part) =>
      sum +
      (typeof part.absorption === "number" ? (part.absorption * part.massG) / massG : Number.NaN),
    0,
  );
  if (rubbedOut.length === 0 || !(absorption > 0)) return undefined;
  const oilIndex = midpoint(oil.oilIndexGPer100g.value);
  return {
    rubbedOut,
    held: oilHeldBack(oilIndex, absorption),
    contradiction: workingOilContradiction(oilIndex, absorption),
  };
}
