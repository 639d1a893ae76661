import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import { munsellOfLab } from "../../colorimetry/munsell.ts";
import { DRIFT_LIGHTNESS } from "../../optics/mixtures/component-loss.ts";
import {
  mixedRatioAt,
  mixedTint,
  type MixedTint,
  type Mixture,
} from "../../optics/mixtures/mixture.ts";
import { paintMassRatio } from "../../optics/mixtures/paint-parts.ts";
import { knownValue, notStated, type RecordRoot } from "../../quantities/figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Colour, Records, TintReading } from "../../records/records.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { labFigures, notationFigure, type Origin } from "../notations/lab-figures.ts";
import { componentDrifts, MIXTURE_DRIFT, singleBlackDrift } from "./component-loss.ts";
import type { MixtureComponent } from "./mixture-components.ts";
import { MIXTURE_PAIR, mixturePair } from "./mixture-pair.ts";
import { DAY_LAB } from "./picture-points.ts";
import * as d from "../declaration.ts";
import { MUNSELL, SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { MASS_RATIO } from "../tints/tint-figures.ts";
import { munsellFigures, screenFigures } from "../notations/munsell-figures.ts";
import { dayLab } from "../notations/reading-figures.ts";
import type { Fits } from "../tints/strength.ts";
import { axisUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import { median } from "../../quantities/median.ts";

/** How everything of a mixture comes about: rests on the components' drawdowns, and never on the mixture's own. */
const MIXED: Origin = {
  inputs: [],
  standing: "derived",
  method: "K and S of its components' own paints, added",
  source: "duncan-1940",
};

const MIXTURE_STEP = d.section({
  /** Mixture to white by mass, "1:20"; "1:0" is the mixture itself. */
  massRatio: MASS_RATIO,
  lab: DAY_LAB,
  munsell: d.optional(MUNSELL),
  /** About 68 %, in Delta-E00. */
  uncertainty: d.plainNumber,
  /** How far the drawdown of the mixture itself lies from it; absent where none was read. */
  missDeltaE00: d.optional(d.number({ ...d.ONE_PLACE, word: "mixtureMiss" })),
  ...SCREEN_IF_KNOWN,
});
export type MixtureStep = d.SectionOf<typeof MIXTURE_STEP>;

export const MIXTURE_WHITE = d.section({
  white: d.NAMED,
  steps: d.list(MIXTURE_STEP),
  /** Middle one of the misses of the steps that were read, Delta-E00. */
  middleMissDeltaE00: d.number({ ...d.ONE_PLACE, word: "mixtureMiddleMiss" }),
  /** The tint at L* 50 that drift starts from; absent of a mixture too pale or too dark to reach it. */
  fresh: d.optional(
    d.section({
      massRatio: d.number({ unit: "1", kind: "significant", digits: 2, word: "massRatio" }),
      lab: DAY_LAB,
      uncertainty: d.plainNumber,
      ...SCREEN_IF_KNOWN,
    }),
  ),
  pair: d.optional(MIXTURE_PAIR),
  drifts: d.list(MIXTURE_DRIFT),
  /** A black of one pigment that loses as much, to hold beside it. */
  singleBlack: d.optional(MIXTURE_DRIFT),
});
export type MixtureWhite = d.SectionOf<typeof MIXTURE_WHITE>;

/** Let-downs that are predicted where the mixture itself was not drawn down. */
const USUAL_STEPS = ["1:1", "1:5", "1:20", "1:100"];

export interface MixedInWhite {
  readonly white: string;
  readonly colour: Colour;
  readonly components: readonly MixtureComponent[];
  readonly mixed: Mixture;
  /** Component paints by mass that one of the mixture's own paint stands for [1]. */
  readonly massScale: number;
  /** Pigment by mass of the mixture's paint, and of the white's [1], where both are known. */
  readonly ownFraction?: number;
  readonly whiteFraction?: number;
  /** Drawdowns of the components' paints and of the mixture itself, which it is held against. */
  readonly drawn: readonly RecordRoot[];
  readonly fits: Fits;
  readonly records: Records;
}

function mixedFrom({ drawn }: Pick<MixedInWhite, "drawn">): Origin {
  return { ...MIXED, inputs: drawn };
}

/** What a mixture does in one white, and why it has no drift there where it has none. */
export interface WorkedWhite {
  readonly white: MixtureWhite;
  readonly refusal?: Statement;
}

/** Predicted let-downs beside those that were read, the greys of a pair, and drift from the tint at L* 50, in one white. */
export function mixtureWhite(at: MixedInWhite): WorkedWhite {
  const { white, colour, mixed, records } = at;
  const origin = mixedFrom(at);
  const steps = mixtureSteps(at);
  const ratio = mixedRatioAt(mixed, DRIFT_LIGHTNESS);
  const misses = steps
    .flatMap(({ missDeltaE00 }) => knownValue(missDeltaE00) ?? [])
    .toSorted((one, other) => one - other);
  const pair = mixturePair(mixed.parts, at.components, origin);
  const singleBlack = singleBlackDrift(at);
  const figures = {
    white: { slug: white, name: whiteColour(white, records).name },
    steps,
    middleMissDeltaE00:
      misses.length === 0
        ? notStated(
            "the mixture itself was not let down in this white",
            [`colours.${colour.slug}.tints`],
            at.drawn,
          )
        : notationFigure(median(misses), "1", {
            ...origin,
            method: "middle one of the misses of its drawdowns",
          }),
    ...(pair !== undefined && { pair }),
    drifts: componentDrifts(at),
    ...(singleBlack !== undefined && { singleBlack }),
  };
  return isStatement(ratio)
    ? { white: figures, refusal: ratio }
    : {
        white: {
          ...figures,
          fresh: freshTint(mixedTint(mixed, ratio), ratio / at.massScale, origin),
        },
      };
}

function freshTint(
  { lab, spectrum, uncertainty: { p68 } }: MixedTint,
  massRatio: number,
  origin: Origin,
) {
  return {
    massRatio: notationFigure(massRatio, "1", origin),
    uncertainty: p68,
    lab: { "D65/10": labFigures(lab, origin, axisUncertainty(p68, lab)) },
    ...screenFigures(readingNotations(spectrum).screen, origin),
  };
}

function mixtureSteps(at: MixedInWhite): MixtureStep[] {
  const { colour, white, mixed, massScale, ownFraction, whiteFraction } = at;
  const areKnown = ownFraction !== undefined && whiteFraction !== undefined;
  const read = colour.tints.filter(
    (tint) => tint.white === white && (tint.ratioKind === "paint" || areKnown),
  );
  const byPaint = (ratio: number, kind: TintReading["ratioKind"]): number =>
    kind === "pigment" && areKnown ? paintMassRatio(ratio, ownFraction, whiteFraction) : ratio;
  const masstone = colour.masstone && dayLab(colour.masstone);
  const step = (
    massRatio: string,
    ratio: number,
    measured: ReturnType<typeof dayLab>,
  ): MixtureStep => {
    const tint = mixedTint(mixed, ratio * massScale);
    return {
      massRatio,
      ...predicted(tint, mixedFrom(at)),
      ...(measured !== undefined && {
        missDeltaE00: notationFigure(deltaE00(tint.lab, measured), "1", {
          ...mixedFrom(at),
          method: "\u0394E00 between what its components predict and its own drawdown",
        }),
      }),
    };
  };
  return [
    step("1:0", Infinity, masstone),
    ...(read.length > 0
      ? read.map(({ massRatio, colourParts, whiteParts, ratioKind, reading }) =>
          step(massRatio, byPaint(colourParts / whiteParts, ratioKind), dayLab(reading)),
        )
      : USUAL_STEPS.map((massRatio) =>
          step(massRatio, 1 / Number(massRatio.split(":")[1]), undefined),
        )),
  ];
}

function predicted(
  { lab, spectrum, uncertainty: { p68 } }: MixedTint,
  origin: Origin,
): Omit<MixtureStep, "massRatio"> {
  const notations = readingNotations(spectrum);
  const u = axisUncertainty(p68, lab);
  const munsell = munsellOfLab(notations.lab["C/2"], u);
  return {
    lab: { "D65/10": labFigures(lab, origin, u) },
    uncertainty: p68,
    ...(!isStatement(munsell) && { munsell: munsellFigures(munsell, origin) }),
    ...screenFigures(notations.screen, origin),
  };
}
