import type { Colour, Records } from "../records/records.ts";
import { batchSection } from "./oil/batch-section.ts";
import { cautionsSection } from "./handling/cautions-section.ts";
import { dryingSection } from "./drying/drying-section.ts";
import { filled } from "./found.ts";
import { FILL } from "./oil/fill-figures.ts";
import { placeFigures } from "./figure-places.ts";
import { masstoneRecords } from "./record-inputs.ts";
import { masstoneNotations } from "./notations/masstone-figures.ts";
import { lotsSection } from "./lots/lots-section.ts";
import { offerSection } from "./handling/offer-section.ts";
import { mixtureSection } from "./mixture/mixture-section.ts";
import { expectedFinish } from "./oil/finish-figure.ts";
import { paintAsMade } from "./paint-as-made.ts";
import { opticsSection } from "./optics/optics-figures.ts";
import { permanenceSection } from "./permanence/permanence-section.ts";
import { colourFamily } from "./colour-family.ts";
import type { Sheet } from "./sheet.ts";
import type { Fits } from "./tints/strength.ts";
import { expectedSections } from "./tints/expected-section.ts";
import { effectOfPigments } from "./pigments/special-effects.ts";
import { paintFilms } from "./tints/films-over-both.ts";
import { tintsAsDrawn } from "./tints/tints-as-drawn.ts";

/** A colour's sheet from its checked record and its fit; each section is worked out in its own file. */
export function colourSheet(colour: Colour, fits: Fits, records: Records): Sheet {
  const { slug, record } = colour;
  const { pigments, vehicle, additions, oil, inFilm } = paintAsMade(colour, records);
  const batch = batchSection(colour, pigments, vehicle, additions, oil, records);
  const mixture = mixtureSection(colour, pigments, fits, records);
  const cautions = cautionsSection(colour, pigments, vehicle, oil, records);
  const lots = lotsSection(slug, records);
  const offer = offerSection(colour, cautions, records);
  const family = colourFamily(colour, records);
  const tints = tintsAsDrawn(colour, fits, records);
  const sheet: Sheet = {
    slug,
    name: record.name,
    family,
    recordDate: record.date,
    ...(record.discontinued === undefined ? {} : { discontinued: record.discontinued }),
    vehicle,
    dispersion: record.dispersion,
    pigments,
    additions,
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
    optics: opticsSection(colour, pigments, tints, { oil, inFilm }, family, fits, records),
    ...(mixture === undefined ? {} : { mixture }),
    oil,
    ...(batch === undefined ? {} : { batch }),
    fill: filled(FILL, { colour, parts: pigments, oil }),
    drying: dryingSection(colour, pigments, vehicle, additions, oil, expectedFinish(oil), records),
    permanence: permanenceSection(colour, pigments, records),
    cautions,
    ...(lots === undefined ? {} : { lots }),
    ...(offer === undefined ? {} : { offer }),
  };
  placeFigures(slug, sheet);
  return sheet;
}
