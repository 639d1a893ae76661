import { dispersionFactorRuling, dispersionRuling } from "../../formulation/dispersion.ts";
import { particleClass, type ParticleClass } from "../../formulation/particle-class.ts";
import { isKnown, sourceFigure, type Figure } from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { AmountRecord } from "../../records/schema/amount.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { Amounts } from "../found.ts";
import { colourRecord, pigmentRecord } from "../record-inputs.ts";
import { amountValue } from "../recorded-figure.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { given } from "../../quantities/given.ts";

interface Paste extends Amounts<"finenessOfGrindUm"> {
  readonly colour: Colour;
  readonly parts: readonly PigmentPart[];
  readonly records: Records;
}

export interface OpenedPaste {
  /** Effective CPVC over CPVC. */
  readonly factor: Figure<Quantity>;
  readonly reasons: readonly Statement[];
}

/** From the hardest to open to the easiest: a blend counts as its hardest pigment. */
const HARDEST_FIRST: readonly ParticleClass[] = ["fine carbon", "fine", "coarse"];

/** How far the pigment's clumps were opened, by the record's word, its fineness of grind and the grain. */
export function openedPaste({ colour, parts, finenessOfGrindUm, records }: Paste): OpenedPaste {
  const classes = colour.record.pigments.map(({ pigment }) => {
    const record = records.pigments.get(pigment)?.record;
    return particleClass({
      isFineCarbon: records.knowledge.pigment(record?.colourIndexName).isFineCarbon,
      sizeUm: middle(record?.particle?.sizeUm),
    });
  });
  const particle = HARDEST_FIRST.find((known) => classes.includes(known)) ?? "fine";
  const opened = dispersionRuling(
    colour.record.dispersion,
    isKnown(finenessOfGrindUm) ? midpoint(finenessOfGrindUm.value) : undefined,
    particle,
  );
  const inputs = [
    ...(isKnown(finenessOfGrindUm) ? [finenessOfGrindUm] : []),
    ...parts.flatMap(({ particleSizeUm }) => (isKnown(particleSizeUm) ? [particleSizeUm] : [])),
    ...colourRecord(colour, "dispersion"),
    ...parts.map(({ slug }) => pigmentRecord(slug)),
  ];
  const {
    factor: [lower, upper],
    reason,
  } = dispersionFactorRuling(opened.dispersion, particle);
  return {
    factor: sourceFigure<Quantity>("estimated", lower === upper ? lower : [lower, upper], {
      unit: "1",
      method: "clumps hold oil: factor by pigment and dispersion",
      source: reason.source,
      inputs,
    }),
    reasons: given([opened.reason, reason]),
  };
}

function middle(amount: AmountRecord | undefined): number | undefined {
  return amount === undefined ? undefined : midpoint(amountValue(amount));
}
