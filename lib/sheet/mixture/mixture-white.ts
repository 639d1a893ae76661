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
import { pairGreys } from "../../optics/mixtures/mixture.ts";
import { pairNeutral } from "../../optics/mixtures/pair-neutral.ts";
import { isKnown, notStated } from "../../quantities/figure.ts";
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

/** How everything of a mixture comes about: rests on the components' drawdowns, and never on the mixture's own. */
export const MIXED: Origin = {
  standing: "derived",
  restsOn: "measured",
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
  /** Pigment by mass of the mixture's paint, and of the white's [1]. */
  readonly ownFraction: number;
  readonly whiteFraction: number;
  readonly fits: Fits;
  readonly records: Records;
}

/** What a mixture does in one white, and why it has no drift there where it has none. */
export interface WorkedWhite {
  readonly white: MixtureWhite;
  readonly refusal?: Statement;
}

/** Predicted let-downs beside those that were read, the greys of a pair, and drift from the tint at L* 50, in one white. */
export function mixtureWhite(at: MixedInWhite): WorkedWhite {
  const { white, colour, mixed, records } = at;
  const steps = mixtureSteps(at);
  const ratio = mixedRatioAt(mixed, DRIFT_LIGHTNESS);
  const misses = steps
    .flatMap(({ missDeltaE00 }) =>
      missDeltaE00 !== undefined && isKnown(missDeltaE00) ? [missDeltaE00.value] : [],
    )
    .toSorted((one, other) => one - other);
  const path = `mixture.whites.${white}`;
  const pair = mixturePair(at, path);
  const singleBlack = singleBlackDrift(at);
  const figures = {
    white: { slug: white, name: whiteColour(white, records).name },
    steps,
    middleMissDeltaE00:
      misses.length === 0
        ? notStated("the mixture itself was not let down in this white", [
            `colours.${colour.slug}.tints`,
          ])
        : notationFigure(middleOf(misses), "1", {
            ...MIXED,
            method: "middle one of the misses of its drawdowns",
          }),
    ...(pair === undefined ? {} : { pair }),
    drifts: componentDrifts(at),
    ...(singleBlack === undefined ? {} : { singleBlack }),
  };
  return isStatement(ratio)
    ? { white: figures, refusal: ratio }
    : { white: { ...figures, fresh: freshTint(mixedTint(mixed, ratio), ratio / at.massScale) } };
}

function freshTint({ lab, spectrum, uncertainty: { p68 } }: MixedTint, massRatio: number) {
  return {
    massRatio: notationFigure(massRatio, "1", MIXED),
    uncertainty: p68,
    lab: { "D65/10": labFigures(lab, MIXED, axisUncertainty(p68, lab)) },
    ...screenFigures(readingNotations(spectrum).screen, MIXED),
  };
}

function mixtureSteps(at: MixedInWhite): MixtureStep[] {
  const { colour, white, mixed, massScale, ownFraction, whiteFraction } = at;
  const read = colour.tints.filter((tint) => tint.white === white);
  const byPaint = (ratio: number, kind: TintReading["ratioKind"]): number =>
    kind === "paint" ? ratio : paintMassRatio(ratio, ownFraction, whiteFraction);
  const masstone = colour.masstone && dayLab(colour.masstone);
  const step = (
    massRatio: string,
    ratio: number,
    measured: ReturnType<typeof dayLab>,
  ): MixtureStep => {
    const tint = mixedTint(mixed, ratio * massScale);
    return {
      massRatio,
      ...predicted(tint),
      ...(measured === undefined
        ? {}
        : {
            missDeltaE00: notationFigure(deltaE00(tint.lab, measured), "1", {
              ...MIXED,
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

function predicted({
  lab,
  spectrum,
  uncertainty: { p68 },
}: MixedTint): Omit<MixtureStep, "massRatio"> {
  const notations = readingNotations(spectrum);
  const u = axisUncertainty(p68, lab);
  const munsell = munsellOfLab(notations.lab["C/2"], u);
  return {
    lab: { "D65/10": labFigures(lab, MIXED, u) },
    uncertainty: p68,
    ...(isStatement(munsell) ? {} : { munsell: munsellFigures(munsell, MIXED) }),
    ...screenFigures(notations.screen, MIXED),
  };
}

const GREY_STEPS = 20;

function mixturePair(
  { mixed: { parts }, components }: MixedInWhite,
  path: string,
): MixturePair | undefined {
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
  const greys = pairGreys(one.ladder, other.ladder, DRIFT_LIGHTNESS, GREY_STEPS);
  const neutral = pairNeutral(one.ladder, other.ladder, DRIFT_LIGHTNESS);
  if (isStatement(greys) || isStatement(neutral)) return undefined;
  const neutralShare = notationFigure(neutral.share, "1", {
    ...MIXED,
    method: "share of paint by mass at which C*ab is least, at L* 50",
  });
  const volumes = [first, second].map(({ paintVolumeFraction, paintMassFraction, slug }) => ({
    paintVolumeFraction,
    paintMassFraction,
    slug,
  }));
  const placed = (i: number, key: "paintVolumeFraction" | "paintMassFraction") => ({
    path: `mixture.components.${volumes[i]?.slug ?? ""}.${key}`,
    figure: volumes[i]?.[key] ?? notStated("no such component"),
  });
  return {
    first: first.paint?.name ?? first.name,
    second: second.paint?.name ?? second.name,
    neutralShare,
    neutralVolumeShare: derivedFigure(
      { name: "the same by volume of paint", unit: "1" },
      {
        share: { path: `${path}.pair.neutralShare`, figure: neutralShare },
        firstVolume: placed(0, "paintVolumeFraction"),
        firstMass: placed(0, "paintMassFraction"),
        secondVolume: placed(1, "paintVolumeFraction"),
        secondMass: placed(1, "paintMassFraction"),
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
      ...MIXED,
      method: "C*ab (D65/10) of that grey",
    }),
    greys: greys.map(({ share, lab: { a, b } }) => ({ share, a, b })),
  };
}

function middleOf(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? NaN) + (sorted[Math.floor(half)] ?? NaN)) / 2;
}
