import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import { munsellOfLab } from "../../colorimetry/munsell.ts";
import { DRIFT_LIGHTNESS } from "../../optics/mixtures/component-loss.ts";
import {
  mixedRatioAt,
  mixedTint,
  type MixedTint,
  type Mixture,
  pairGreys,
} from "../../optics/mixtures/mixture.ts";
import { paintMassRatio } from "../../optics/mixtures/paint-parts.ts";
import type { LadderModel } from "../../optics/tints/ladder.ts";
import { rememberedOfTwo } from "../../quantities/remembered.ts";
import { pairNeutral } from "../../optics/mixtures/pair-neutral.ts";
import { isKnown, notStated, type RecordRoot } from "../../quantities/figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour, Records, TintReading } from "../../records/records.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { labFigures, notationFigure, type Origin } from "../notations/lab-figures.ts";
import { componentDrifts, singleBlackDrift } from "./component-loss.ts";
import type {
  MixtureComponent,
  MixturePair,
  MixtureStep,
  MixtureWhite,
} from "./mixture-figures.ts";
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
    .flatMap(({ missDeltaE00 }) =>
      missDeltaE00 !== undefined && isKnown(missDeltaE00) ? [missDeltaE00.value] : [],
    )
    .toSorted((one, other) => one - other);
  const pair = mixturePair(at);
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
    ...(pair === undefined ? {} : { pair }),
    drifts: componentDrifts(at),
    ...(singleBlack === undefined ? {} : { singleBlack }),
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
      ...(measured === undefined
        ? {}
        : {
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
    ...(isStatement(munsell) ? {} : { munsell: munsellFigures(munsell, origin) }),
    ...screenFigures(notations.screen, origin),
  };
}

const GREY_STEPS = 20;
/** Share of one of a pair [1] that is none of it. */
const LEAST_SHARE = 0.01;

/** Of a pair whose ladders stay as they are while anything else is tried. */
const greysOfPair = rememberedOfTwo((one: LadderModel, other: LadderModel) => ({
  greys: pairGreys(one, other, DRIFT_LIGHTNESS, GREY_STEPS),
  neutral: pairNeutral(one, other, DRIFT_LIGHTNESS),
}));

function mixturePair(at: MixedInWhite): MixturePair | undefined {
  const {
    mixed: { parts },
    components,
  } = at;
  const origin = mixedFrom(at);
  const [one, other] = parts;
  const [first, second] = components;
  if (
    one === undefined ||
    other === undefined ||
    first === undefined ||
    second === undefined ||
    parts.length !== 2
  )
    return undefined;
  const { greys, neutral } = greysOfPair(one.ladder, other.ladder);
  if (isStatement(greys) || isStatement(neutral)) return undefined;
  // Where one of the two is the most neutral by itself, no mixture leads to a grey.
  if (Math.min(neutral.share, 1 - neutral.share) < LEAST_SHARE) return undefined;
  const neutralShare = notationFigure(neutral.share, "1", {
    ...origin,
    method: "share of paint by mass at which C*ab is least, at L* 50",
  });
  return {
    first: first.paint?.name ?? first.name,
    second: second.paint?.name ?? second.name,
    neutralShare,
    neutralVolumeShare: derivedFigure(
      { name: "the same by volume of paint", unit: "1" },
      {
        share: neutralShare,
        firstVolume: first.paintVolumeFraction,
        firstMass: first.paintMassFraction,
        secondVolume: second.paintVolumeFraction,
        secondMass: second.paintMassFraction,
      },
      (v) => {
        const [a, b] = [
          (v.share * v.firstVolume) / v.firstMass,
          ((1 - v.share) * v.secondVolume) / v.secondMass,
        ];
        return a / (a + b);
      },
    ),
    neutralChroma: notationFigure(neutral.chroma, "1", {
      ...origin,
      method: "C*ab (D65/10) of that grey",
    }),
    greys: greys.map(({ share, lab: { a, b } }) => ({ share, a, b })),
  };
}
