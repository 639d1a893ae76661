import { at, certain } from "../../quantities/at.ts";
import { commonWhites, unknownOilRuling } from "../../optics/tints/common-whites.ts";
import { ladderInPaint } from "../../optics/tints/ladder-in-paint.ts";
import { ladderModel, type LadderModel } from "../../optics/tints/ladder.ts";
import { mixture, paintParts, type Mixture } from "../../optics/mixtures/mixture.ts";
import { leastLightfast, type LeastLightfastStatement } from "../../permanence/least-lightfast.ts";
import { isKnown } from "../../quantities/figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { fadingComponents } from "../permanence/fading-components.ts";
import {
  componentPaints,
  MIXTURE_COMPONENT,
  mixtureComponents,
  paintFacts,
  pigmentFraction,
  type ComponentPaint,
} from "./mixture-components.ts";
import { colourRecord, drawdownRecords } from "../record-inputs.ts";
import * as d from "../declaration.ts";
import { MIXTURE_WHITE, mixtureWhite, type WorkedWhite } from "./mixture-white.ts";
import { readingBeyondReach, type BeyondReach } from "./reading-beyond-reach.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import { weighedTubes } from "../pigments/parts-of-paint.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import type { Fits } from "../tints/strength.ts";

/** A colour of two pigments or more, as the paints of its single pigments predict it; and where it goes when one of them fades. */
export const MIXTURE = d.headed("mixtureSection", {
  components: d.list(MIXTURE_COMPONENT),
  /** Whites in which every component was let down. */
  whites: d.list(MIXTURE_WHITE),
  /** Why nothing is predicted, or why a white is missing. */
  refusals: d.statements,
  leastLightfast: d.statementAmong<LeastLightfastStatement>(),
  /** Where its own masstone is on record as what its pigments do not give. */
  beyondReach: d.workshopAlone(d.optional(d.plain<BeyondReach>({ type: "object" }))),
});
export type MixtureSection = d.SectionOf<typeof MIXTURE>;

/** What the paints of its single pigments predict for a colour of several, in each white that all of them were let down in. */
export function mixtureSection({
  colour,
  pigments: parts,
  fits,
  records,
}: PaintOfColour): MixtureSection | undefined {
  if (parts.length < 2) return undefined;
  const paints = componentPaints(parts, weighedTubes(colour, records), fits, records);
  const components = mixtureComponents(colour, paints);
  const common =
    effectOfPigments(colour, records) ??
    commonWhites(
      paints.map(({ part, paintParts, fit }) => ({
        name: part.name,
        parts: paintParts ?? partOf(part),
        fit,
      })),
    );
  const worked = isStatement(common)
    ? [common]
    : common.map((white) => inWhite(white, colour, paints, components, fits, records));
  const whites = worked.flatMap((one) => (isStatement(one) ? [] : [one.white]));
  const beyondReach = readingBeyondReach({ colour, paints, whites, records });
  return {
    components,
    whites,
    refusals: worked.flatMap((one) => (isStatement(one) ? [one] : (one.refusal ?? []))),
    leastLightfast: leastLightfast(fadingComponents(parts, records)),
    ...(beyondReach !== undefined && { beyondReach }),
  };
}

function partOf({ massFraction }: PigmentPart): number | undefined {
  return isKnown(massFraction) ? massFraction.value : undefined;
}

function inWhite(
  white: string,
  colour: Colour,
  paints: readonly ComponentPaint[],
  components: MixtureSection["components"],
  fits: Fits,
  records: Records,
): WorkedWhite | Statement {
  const whiteColour = records.colours.get(white);
  const whitePart = whiteColour && pigmentFraction(paintFacts(whiteColour, records));
  const areTubes = paints.every(({ paintParts }) => paintParts !== undefined);
  const ladders = paints.flatMap(({ fit }): LadderModel[] =>
    fit?.kind === "fit" ? [ladderModel(fit, white)] : [],
  );
  const arePaints = areTubes && ladders.every((ladder) => ladder.white.ratioKind === "paint");
  const own = pigmentFraction(paintFacts(colour, records));
  const fractions = paints.map(({ paint }) => paint && pigmentFraction(paint));
  const noOil = arePaints
    ? undefined
    : unknownOilRuling([
        ...paints.map(({ part }, i) => ({ name: part.name, pigmentFraction: fractions[i] })),
        ...(areTubes ? [] : [{ name: colour.record.name, pigmentFraction: own }]),
        { name: whiteColour?.record.name ?? white, pigmentFraction: whitePart },
      ]);
  if (noOil !== undefined) return noOil;
  const { parts, massScale } = areTubes
    ? { parts: paints.map(({ paintParts: own }) => certain(own)), massScale: 1 }
    : paintParts(
        paints.map(({ part }) => certain(partOf(part))),
        fractions.map((fraction) => certain(fraction)),
        certain(own),
      );
  const mixed: Mixture | Statement = mixture(
    ladders.map((ladder, i) => ({
      ladder: arePaints ? ladder : ladderInPaint(ladder, certain(fractions[i]), certain(whitePart)),
      parts: at(parts, i),
    })),
  );
  if (isStatement(mixed)) return mixed;
  return mixtureWhite({
    white,
    colour,
    components,
    mixed,
    massScale,
    ...(own === undefined || whitePart === undefined
      ? {}
      : { ownFraction: own, whiteFraction: whitePart }),
    drawn: [colour, ...paints.flatMap((one) => one.colour ?? [])].flatMap((paint) => [
      ...drawdownRecords(paint, records),
      ...colourRecord(paint, "pigments", "oilIndexGPer100g"),
    ]),
    fits,
    records,
  });
}
