import { notStated, sourceFigure, type Figure } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { Colour } from "../records/records.ts";
import type { AmountRecord } from "../records/schema/amount.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import { figureForm, type Declared } from "./declaration.ts";
import type { Found } from "./found.ts";
import { colourRecord } from "./record-inputs.ts";
import { recordedFigure } from "./recorded-figure.ts";

/** Keys of a colour's record whose value is a `V`. */
type KeyOf<V> = {
  [K in keyof ColourRecord]-?: ColourRecord[K] extends V | undefined ? K : never;
}[keyof ColourRecord];

interface OfColour {
  readonly colour: Colour;
}

/** A part of a sheet that says what a key of the colour's record says, which so holds it. */
export type Recorded<D extends Declared> = Found<D, OfColour> & {
  readonly recordKey: keyof ColourRecord;
};

/** A figure as a key of the colour's record gives it, in the unit of its declaration. */
export function recorded<D extends Declared<Figure<Quantity>>>(
  part: D,
  key: KeyOf<AmountRecord>,
): Recorded<D> {
  const { unit } = figureForm(part);
  return { ...part, recordKey: key, found: ({ colour }) => recordedAmount(colour, key, unit) };
}

/** The same of a key, for what needs it before its section is there. */
export function recordedAmount(
  colour: Colour,
  key: KeyOf<AmountRecord>,
  unit: string,
): Figure<Quantity> {
  return recordedFigure(colour.record[key], {
    unit,
    wanting: `colours.${colour.slug}.${key}`,
    inputs: colourRecord(colour, key),
  });
}

/** A word of the workshop's own, as it saw it and a key of the colour's record says. */
export function seen<D extends Declared<Figure<string>>>(
  part: D,
  key: "body" | "oilSeparation",
): Recorded<D> {
  return {
    ...part,
    recordKey: key,
    found: ({ colour }): Figure<string> => {
      const value = colour.record[key];
      const inputs = colourRecord(colour, key);
      return value === undefined
        ? notStated("not in the records", [`colours.${colour.slug}.${key}`], inputs)
        : sourceFigure<string>("measured", value, {
            unit: "",
            method: "as seen by the workshop",
            inputs,
          });
    },
  };
}
