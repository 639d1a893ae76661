import { readOnce, type RememberedReads } from "../kept/reads.ts";
import type { Colour, Records } from "../records/records.ts";
import { placeFigures } from "./figure-places.ts";
import { oilSection } from "./oil/oil-section.ts";
import { asWeighed } from "./oil/weighed-paint.ts";
import { notStated } from "../quantities/figure.ts";
import {
  mainOilOfTubes,
  oilDensityOfTubes,
  weighedTubes,
  type KnownTube,
} from "./pigments/parts-of-paint.ts";
import { additionParts, pigmentParts, vehiclePart } from "./pigments/pigment-parts.ts";
import type { OilSection } from "./oil/oil-figures.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "./pigments/pigment-figures.ts";
import type { Family } from "../records/schema/terms.ts";
import { pigmentRecord } from "./record-inputs.ts";
import type { Fits } from "./tints/strength.ts";

/** What a paint is made from and what it is like as made. */
export interface PaintAsMade {
  readonly pigments: readonly PigmentPart[];
  readonly vehicle: VehiclePart | undefined;
  readonly additions: readonly AdditionPart[];
  /** As lots were weighed. */
  readonly oil: OilSection;
  /** The same as it lies in a film: the air that lots are weighed with has gone, and its density is that of its parts. */
  readonly inFilm: OilSection;
}

/** What the sections of a colour's sheet are found from: its record, its paint as lots were weighed, fits and records of the range. */
export interface PaintOfColour extends PaintAsMade {
  readonly colour: Colour;
  readonly family: Family | undefined;
  readonly fits: Fits;
  readonly records: Records;
}

const PAINTS: RememberedReads<Records, PaintAsMade> = new WeakMap();

/** A colour's paint, the same for its own sheet and for every other that is reckoned with it: so a figure is one thing wherever it is used. */
export function paintAsMade(colour: Colour, records: Records): PaintAsMade {
  return readOnce(PAINTS, records, colour.slug, () => paintOf(colour, records));
}

function paintOf(colour: Colour, records: Records): PaintAsMade {
  const tubes = knownTubes(colour, records);
  const pigments = pigmentParts(colour, tubes, records);
  const vehicle = vehiclePart(colour, records);
  const additions = additionParts(colour, records);
  const inFilm = oilSection(
    colour,
    pigments,
    vehicle,
    additions,
    records,
    tubes && {
      mainOil: mainOilOfTubes(colour, tubes, additions),
      oilDensity: oilDensityOfTubes(
        colour,
        tubes,
        [vehicle, ...additions].flatMap((one) => one?.slug ?? []),
      ),
    },
  );
  const paint = { pigments, vehicle, additions, oil: asWeighed(inFilm, colour, records) };
  placeFigures(colour.slug, paint);
  return { ...paint, inFilm };
}

/** What it was weighed from, where that was tubes of paint. */
function knownTubes(colour: Colour, records: Records): KnownTube[] | undefined {
  return weighedTubes(colour, records)?.map((tube) => {
    const made = tube.paint && paintAsMade(tube.paint, records);
    return {
      ...tube,
      vehicle: made?.vehicle,
      additions: made?.additions ?? [],
      pigmentFraction:
        made?.oil.pigmentMassFraction ??
        notStated(
          `no paint is made of ${tube.pigment} alone`,
          ["colours"],
          [pigmentRecord(tube.pigment)],
        ),
    };
  });
}
