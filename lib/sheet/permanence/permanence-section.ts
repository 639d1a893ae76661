import { permanenceRuling, type PermanencePigment } from "../../permanence/permanence-ruling.ts";
import type { FadingComponent } from "../../permanence/least-lightfast.ts";
import type { Records } from "../../records/records.ts";
import { filled } from "../found.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { colourRecord, pigmentRecord } from "../record-inputs.ts";
import { foundSoFar } from "../trials/found-so-far.ts";
import { fadingComponents, fadingRecords, recordedExposure } from "./fading-components.ts";
import { PERMANENCE, type PermanenceSection } from "./permanence-figures.ts";

/** Lightfastness from the colour's own exposures, else as stated, else as its pigments lead one to expect; and what else harms it. */
export function permanenceSection(ofColour: PaintOfColour): PermanenceSection {
  const { colour, pigments: parts, records } = ofColour;
  const isMixture = parts.length > 1;
  // What the paints of its single pigments did in light holds of a mixture before any word.
  const pigments = isMixture
    ? fadingComponents(parts, records).map(componentPigment)
    : parts.map((part) => statedPigment(part, records));
  const stated = colour.record.lightfastness;
  const exposures = (colour.record.exposures ?? []).map(recordedExposure);
  return filled(PERMANENCE, {
    ...ofColour,
    facts: {
      pigments: parts.map(({ name, colourIndexName }) => ({
        name,
        sensitivities: records.knowledge.pigment(colourIndexName).sensitivities,
      })),
      exposures,
      changes: foundSoFar(colour.slug, records).changes,
      ruling: permanenceRuling({
        pigments,
        exposures,
        ...(stated !== undefined && { stated }),
      }),
      byPigments: permanenceRuling({ pigments, exposures: [] }),
      stated,
    },
    read: [
      ...colourRecord(colour, "exposures", "lightfastness"),
      ...(isMixture ? fadingRecords(parts, records) : parts.map(({ slug }) => pigmentRecord(slug))),
    ],
  });
}

function statedPigment(
  { slug, name, colourIndexName }: PigmentPart,
  records: Records,
): PermanencePigment {
  const { category, form, source } = records.pigments.get(slug)?.record.lightfastness ?? {};
  return {
    name,
    colourIndexName,
    expected: records.knowledge.pigment(colourIndexName).lightfastness,
    ...(category !== undefined && { stated: { category, form, source } }),
  };
}

function componentPigment({
  name,
  pigments: [pigment],
  exposures,
  stated,
}: FadingComponent): PermanencePigment {
  return {
    name,
    colourIndexName: pigment?.colourIndexName,
    expected: pigment?.expected,
    stated: stated ?? pigment?.stated,
    exposures,
  };
}
