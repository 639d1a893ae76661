import type { Colour, Records } from "../records/records.ts";
import { batchSection } from "./oil/batch-figures.ts";
import { cautionsSection } from "./handling/cautions-section.ts";
import { dryingSection } from "./drying/drying-section.ts";
import { filled } from "./found.ts";
import { placeFigures } from "./figure-places.ts";
import { masstoneRecords } from "./record-inputs.ts";
import { masstoneNotations } from "./notations/masstone-figures.ts";
import { lotsSection } from "./lots/lots-section.ts";
import { offerSection } from "./handling/offer-section.ts";
import { mixtureSection } from "./mixture/mixture-figures.ts";
import { paintAsMade, type PaintOfColour } from "./paint-as-made.ts";
import { opticsSection } from "./optics/optics-figures.ts";
import { permanenceSection } from "./permanence/permanence-section.ts";
import { colourFamily } from "./colour-family.ts";
import { SHEET, type Sheet } from "./sheet.ts";
import type { Fits } from "./tints/strength.ts";
import { expectedSections } from "./tints/expected-section.ts";
import { effectOfPigments } from "./pigments/special-effects.ts";
import { paintFilms } from "./tints/films-over-both.ts";
import { tintsAsDrawn } from "./tints/tints-as-drawn.ts";

/** A colour's sheet from its checked record and its fit; each section is worked out in its own file. */
export function colourSheet(colour: Colour, fits: Fits, records: Records): Sheet {
  const { slug, record } = colour;
  const made = paintAsMade(colour, records);
  const family = colourFamily(colour, records);
  const paint: PaintOfColour = { ...made, colour, family, fits, records };
  const cautions = cautionsSection(paint);
  const tints = tintsAsDrawn(colour, fits, records);
  const sheet = filled(SHEET, {
    paint,
    slug,
    name: record.name,
    family,
    recordDate: record.date,
    discontinued: record.discontinued,
    vehicle: made.vehicle,
    dispersion: record.dispersion,
    pigments: made.pigments,
    additions: made.additions,
    notations:
      colour.masstone === undefined
        ? {}
        : {
            masstone: masstoneNotations(
              colour.masstone,
              masstoneRecords(colour),
              records.knowledge.tables.isccNbsBlocks,
              records.workshop.observer,
              paintFilms(colour, records).film,
              effectOfPigments(colour, records)?.rule === "pigment-fluoresces",
            ),
          },
    tints,
    expectedTints: expectedSections(colour, fits, records),
    optics: opticsSection(paint, tints),
    mixture: mixtureSection(paint),
    oil: made.oil,
    batch: batchSection(paint),
    drying: dryingSection(paint),
    permanence: permanenceSection(paint),
    cautions,
    lots: lotsSection(slug, records),
    offer: offerSection(colour, cautions, records),
  });
  placeFigures(slug, sheet);
  return sheet;
}
