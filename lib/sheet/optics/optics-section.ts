import { EQUAL_LIGHTNESSES } from "../../optics/tints/equal-lightness.ts";
import { notLetDownRuling, whitesRuling } from "../../optics/tints/tint-statement.ts";
import { EXPECTED_OPACITIES, opacityContradiction } from "../../optics/films/expected-opacity.ts";
import type { OpacityStatement } from "../../optics/films/opacity.ts";
import { isKnown } from "../../quantities/figure.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { dispersionFigures } from "./dispersion-section.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { extenderFigures } from "./extender-section.ts";
import { fitFigures } from "../tints/fit-section.ts";
import { glossFigures, glossReasons } from "./gloss-section.ts";
import { hiding } from "./hiding.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import type { PaintAsMade } from "../paint-as-made.ts";
import type { EqualLightness, TintSection } from "../tints/tint-figures.ts";
import type { OpticsSection } from "./optics-figures.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { drawdownRecords } from "../record-inputs.ts";
import { HARDLY_ANY_WHITE } from "../tints/strength-parts.ts";
import { tintingStrength, type Fits } from "../tints/strength.ts";
import { whitesOfTheRange } from "../tints/whites-of-the-range.ts";
import { weighedAs } from "../tints/paint-conversion.ts";
import { slugOrder } from "../../quantities/name-order.ts";

/** Strength, hiding, glaze, what gloss does to depth, and how K and S were fitted. */
export function opticsSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  tints: readonly TintSection[],
  { oil, inFilm }: Pick<PaintAsMade, "oil" | "inFilm">,
  family: string | undefined,
  fits: Fits,
  records: Records,
): OpticsSection {
  const strength = tintingStrength(colour, weighedAs(oil), fits, records);
  const { reasons, judgedBy, ...hidden } = hiding(
    colour,
    oil.volumeSolids,
    inFilm.paintDensityGPerCm3,
    fits.get(colour.slug),
    records,
  );
  const gloss = glossFigures(colour);
  const extender = extenderFigures(colour, family, fits, records);
  const dispersion = dispersionFigures(colour, parts, fits, records);
  const fit = fits.get(colour.slug);
  const notPredicted = effectOfPigments(colour, records);
  return {
    ...(notPredicted === undefined ? {} : { notPredicted }),
    tintingStrength: strength.byMass,
    tintingStrengthByVolume: strength.byVolume,
    ...hidden,
    ...(gloss === undefined ? {} : { gloss }),
    ...(extender === undefined ? {} : { extender }),
    ...(dispersion.figures === undefined ? {} : { dispersion: dispersion.figures }),
    acrossWhites: acrossWhites(tints, records),
    ...(fit?.kind === "fit"
      ? { fit: fitFigures(fit, drawdownRecords(colour, records), records) }
      : {}),
    reasons: [
      ...strength.reasons,
      ...reasons,
      ...unlikePigment(judgedBy, parts),
      ...dispersion.reasons,
      ...glossReasons(colour),
    ],
  };
}

/** That a paint of one pigment hides otherwise than is to be expected of the pigment. */
function unlikePigment(
  judgedBy: OpacityStatement | undefined,
  [part, ...others]: readonly PigmentPart[],
): Statement[] {
  const expected = part?.expectedOpacity;
  if (judgedBy === undefined || expected === undefined || !isKnown(expected) || others.length > 0)
    return [];
  const word = EXPECTED_OPACITIES.find((one) => one === expected.value);
  const found = word && opacityContradiction(judgedBy, word);
  return found === undefined ? [] : [found];
}

/** What the white makes of the colour at each L* that two whites reach, and in which whites of the range it was not let down. */
function acrossWhites(tints: readonly TintSection[], records: Records): Statement[] {
  if (tints.length === 0) return [];
  const compared = EQUAL_LIGHTNESSES.flatMap((L): Statement[] => {
    const reached = tints.flatMap(({ white, atL, sentence }) => {
      const at = atL[String(L) as EqualLightness];
      return at === undefined ||
        "contrast" in sentence.values ||
        !isKnown(at.a) ||
        !isKnown(at.b) ||
        !isKnown(at.massRatio) ||
        at.massRatio.value > HARDLY_ANY_WHITE
        ? []
        : [
            {
              white: white.name,
              a: at.a.value,
              b: at.b.value,
              uncertainty: { a: at.a.uncertainty ?? 0, b: at.b.uncertainty ?? 0 },
            },
          ];
    });
    return reached.length < 2 ? [] : [whitesRuling(L, reached)];
  });
  const letDownIn = new Set(tints.map(({ white }) => white.name));
  const without = notLetDownRuling(
    [...new Set(whitesOfTheRange(records).map((slug) => whiteColour(slug, records).name))]
      .filter((name) => !letDownIn.has(name))
      .sort(slugOrder),
  );
  return [...compared, ...(without === undefined ? [] : [without])];
}
