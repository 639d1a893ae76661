import { expectedDispersionRuling } from "../optics/dispersion.ts";
import { glossDepth, type Depth } from "../optics/gloss-depth.ts";
import { FINE_CARBON_NAMES } from "../formulation/particle-class.ts";
import { isRuling } from "../quantities/ruling.ts";
import type { Colour, Records } from "../records/records.ts";
import { opticsReading } from "./drawdown-set.ts";
import { hiding } from "./hiding.ts";
import { notationFigure, type Origin } from "./lab-figures.ts";
import type { GlossDepthFigures, OpticsSection, PigmentPart } from "./sheet.ts";
import { tintingStrength, type Fits } from "./strength.ts";

/** Strength, hiding, glaze, and what gloss does to depth. */
export function opticsSection(colour: Colour, parts: readonly PigmentPart[], fits: Fits, records: Records): OpticsSection {
  const strength = tintingStrength(colour, fits, records);
  const { reasons, ...hidden } = hiding(colour);
  const gloss = glossFigures(colour);
  const carbon = parts.some(({ colourIndexName }) => colourIndexName !== undefined && FINE_CARBON_NAMES.includes(colourIndexName));
  return {
    tintingStrength: strength.figure, ...hidden,
    ...(gloss === undefined ? {} : { gloss }),
    reasons: [...strength.reasons, ...reasons, ...(colour.record.dispersion === "mulled" ? [expectedDispersionRuling(carbon)] : [])],
  };
}

/** Glossy against matte, gloss excluded as the eye does it; nothing where the reading can't tell. */
function glossFigures({ masstone }: Colour): GlossDepthFigures | undefined {
  if (masstone?.form !== "spectrum") return undefined;
  const depths = glossDepth(opticsReading(masstone));
  if (isRuling(depths)) return undefined;
  const origin: Origin = { standing: "derived", restsOn: "measured", method: "surface light of an oil film taken off and put on", source: "saunderson-1942" };
  const seen = (finish: Depth["finish"]): Depth | undefined => depths.depths.find((depth) => depth.finish === finish && depth.specular === "excluded");
  const [glossy, matte] = [seen("glossy"), seen("matte")];
  if (glossy === undefined || matte === undefined) return undefined;
  return {
    sentence: depths.ruling,
    glossyL: notationFigure(glossy.L[0], "1", origin), matteL: notationFigure(matte.L[0], "1", origin),
    glossyValue: notationFigure(glossy.value[0], "1", origin), matteValue: notationFigure(matte.value[0], "1", origin),
  };
}
