import { deltaE00 } from "../../colorimetry/difference.ts";
import { labNotations } from "../../colorimetry/lab-notations.ts";
import { readingNotations } from "../../colorimetry/reading-notations.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import type { SurfaceConstants } from "../../optics/fit/measurement.ts";
import {
  EQUAL_LIGHTNESSES,
  interpolatedAtLightness,
  predictedAtLightness,
  type TintAtLightness,
} from "../../optics/tints/equal-lightness.ts";
import { ladderModel, predictedTint, type LadderModel } from "../../optics/tints/ladder.ts";
import { massRatioUncertainty } from "../../optics/tints/mass-ratio-uncertainty.ts";
import { axisUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import {
  greyTintRuling,
  groundShownRuling,
  tintRuling,
  type JudgedTint,
  type TintStatement,
} from "../../optics/tints/tint-statement.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Colour, Records, TintReading } from "../../records/records.ts";
import { colourFamily } from "../colour-family.ts";
import { whiteColour } from "./drawdown-set.ts";
import { drawdownFilm, tintContrast } from "./films-over-both.ts";
import { masstoneSurface, tintWithoutGloss } from "../notations/gloss-excluded.ts";
import { labFigures, notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import { dayLab } from "../notations/reading-figures.ts";
import { knownLab } from "../notations/known-lab.ts";
import type { AtLightness, EqualLightness, TintSection, TintStep } from "./tint-figures.ts";
import { drawdownRecords, tintRecords } from "../record-inputs.ts";
import { strengthParts } from "./strength-parts.ts";
import { weighedPaint, type WeighedPaint } from "./paint-conversion.ts";
import { measuredStep, predictedFrom, predictedSteps, TOLD_FROM_MASSTONE } from "./tint-steps.ts";

/** Whose tints are judged as greys, even where nobody has read the colour itself. */
const NEUTRAL_FAMILIES: ReadonlySet<ReturnType<typeof colourFamily>> = new Set(["black", "grey"]);

const INTERPOLATED: Origin = {
  standing: "derived",
  inputs: [],
  method: "straight between measured neighbours",
  source: "optics-practice",
};

/** What a colour does in each white it was let down in, in the order of the record. */
export function tintSections(
  colour: Colour,
  fit: ColourFit | FitRefusal,
  paint: WeighedPaint,
  records: Records,
): TintSection[] {
  const whites = [...new Set(colour.tints.map(({ white }) => white))];
  return whites.map((white) =>
    tintSection(
      white,
      colour.tints.filter((tint) => tint.white === white),
      colour,
      fit,
      paint,
      records,
    ),
  );
}

function tintSection(
  slug: string,
  tints: readonly TintReading[],
  colour: Colour,
  fit: ColourFit | FitRefusal,
  paint: WeighedPaint,
  records: Records,
): TintSection {
  const white = whiteColour(slug, records);
  const ladder =
    fit.kind === "fit" && fit.whites.some((fitted) => fitted.slug === slug)
      ? ladderModel(fit, slug)
      : undefined;
  const { masstone: ownMasstone } = colour;
  const drawdowns = drawdownRecords(colour, records);
  const predicted = predictedFrom(drawdowns);
  const masstone = ownMasstone && dayLab(ownMasstone);
  const ends = {
    white: white.masstone,
    masstone: ownMasstone?.form === "spectrum" ? ownMasstone : undefined,
  };
  const surface = masstoneSurface(ownMasstone);
  const measured = tints.map((tint) =>
    measuredStep(
      tint,
      fit.kind === "fit" ? fit : undefined,
      { ...ends, surface, film: drawdownFilm(tint.reading, tint.overBlack, records) },
      tintRecords(colour, slug, tint.massRatio),
      predicted,
    ),
  );
  const reached = atEqualLightness(ladder, tints, measured, masstone);
  const atL = Object.fromEntries(
    reached.map((tint) => [String(tint.L), atLightness(tint, ladder, surface, drawdowns)]),
  ) as Partial<Record<EqualLightness, AtLightness>>;
  const kind = tints[0]?.ratioKind ?? "paint";
  const shown = groundShownRuling(
    white.name,
    tints.flatMap((tint) => tintContrast(tint) ?? []),
  );
  const parts =
    shown === undefined
      ? strengthParts(kind, atL["50"], paint, weighedPaint(slug, records))
      : undefined;
  const refusal = ladder === undefined ? refusalOf(slug, fit) : undefined;
  const sentence: TintStatement =
    shown ??
    (masstone !== undefined
      ? tintRuling(white.name, judged(reached, measured), masstone)
      : NEUTRAL_FAMILIES.has(colourFamily(colour, records))
        ? greyTintRuling(white.name, judged(reached, measured))
        : { rule: "no-tint-to-judge", values: { white: white.name } });
  return {
    white: {
      slug,
      name: white.name,
      ...(white.colourIndexName !== undefined && { colourIndexName: white.colourIndexName }),
    },
    standing: "measured",
    massRatioKind: kind,
    steps: [
      ...measured,
      ...(ladder === undefined ? [] : predictedSteps(ladder, surface, predicted)),
    ].toSorted((one, other) => other.colourShare - one.colourShare),
    atL,
    sentence,
    ...(parts !== undefined && { strengthParts: parts }),
    ...(refusal !== undefined && { refusal }),
  };
}

/** From the fit where there is one, else straight between measured neighbours that nothing contradicts; what is practically the masstone is left out. */
function atEqualLightness(
  ladder: LadderModel | undefined,
  tints: readonly TintReading[],
  measured: readonly TintStep[],
  masstone: Lab | undefined,
): TintAtLightness[] {
  const points = tints.flatMap(({ reading, colourParts, whiteParts }, i) => {
    const lab = dayLab(reading);
    return lab === undefined || measured[i]?.suspect !== undefined
      ? []
      : [{ massRatio: colourParts / whiteParts, lab }];
  });
  const found = EQUAL_LIGHTNESSES.map((L) =>
    ladder === undefined ? interpolatedAtLightness(points, L) : predictedAtLightness(ladder, L),
  );
  const own = ladder?.fit.masstone.lab ?? masstone;
  return found.filter(
    (tint): tint is TintAtLightness =>
      !isStatement(tint) && (own === undefined || deltaE00(tint, own) >= TOLD_FROM_MASSTONE),
  );
}

function atLightness(
  tint: TintAtLightness,
  ladder: LadderModel | undefined,
  surface: SurfaceConstants | undefined,
  drawdowns: readonly RecordRoot[],
): AtLightness {
  const origin =
    tint.basis === "predicted" ? predictedFrom(drawdowns) : { ...INTERPOLATED, inputs: drawdowns };
  const { a, b } = axisUncertainty(tint.uncertainty.p68, tint);
  return {
    a: notationFigure(tint.a, "1", origin, a),
    b: notationFigure(tint.b, "1", origin, b),
    massRatio: notationFigure(
      tint.massRatio,
      "1",
      origin,
      ladder && tint.massRatio * massRatioUncertainty(ladder, tint.massRatio),
    ),
    ...otherNotations(tint, ladder, surface, origin),
  };
}

/** For screen and print: of a predicted spectrum, else for the screen alone, adapted. */
function otherNotations(
  { L, a, b, massRatio }: TintAtLightness,
  ladder: LadderModel | undefined,
  surface: SurfaceConstants | undefined,
  origin: Origin,
): Partial<AtLightness> {
  if (ladder !== undefined) {
    const { spectrum } = predictedTint(ladder, massRatio);
    const notations = readingNotations(spectrum);
    return {
      lab: { "D50/2": labFigures(notations.lab["D50/2"], origin) },
      ...screenFigures(notations.screen, origin),
      ...tintWithoutGloss({ spectrum, geometry: ladder.fit.geometry }, surface, origin),
    };
  }
  const { screen } = labNotations({ L, a, b }, "D65/10");
  return isStatement(screen)
    ? {}
    : screenFigures(screen.notation, {
        standing: "estimated",
        inputs: origin.inputs,
        method: "CSS colour, approximate: adapted from D65/10",
        source: "css-color-4",
      });
}

function judged(reached: readonly TintAtLightness[], measured: readonly TintStep[]): JudgedTint[] {
  const readings = measured.flatMap(({ lab, colourShare, suspect }): JudgedTint[] => {
    const read = knownLab(lab["D65/10"]);
    return suspect !== undefined || read === undefined
      ? []
      : [{ lab: read, basis: "measured", massRatio: colourShare }];
  });
  return [
    ...reached.map(({ L, a, b, massRatio, basis, uncertainty }): JudgedTint => ({
      lab: { L, a, b },
      basis,
      massRatio,
      uncertainty: uncertainty.p68,
    })),
    ...readings,
  ];
}

/** Why nothing is predicted in this white. */
function refusalOf(white: string, fit: ColourFit | FitRefusal): Statement | undefined {
  const reasons = fit.kind === "refused" ? fit.reasons : fit.leftOut;
  return (
    reasons.find(({ values }) => "white" in values && values.white === white) ??
    (fit.kind === "refused" ? reasons[0] : undefined)
  );
}
